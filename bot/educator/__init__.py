"""What an educator needs of their own participants: alerts, who needs a look, group figures.

Pure: records and instants come in, nouns and figures go out. Words are elsewhere.
"""
