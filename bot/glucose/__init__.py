"""Sums over a record: settled readings, pairs, effects of activity and food, trend, the week.

What lives here: pure figures, glucose in mg/dL. What it must not know: words, cautions, what is
due, storage, the clock. Nothing here estimates an A1C, names a diagnosis or lets an off-scale
value into a mean.
"""
