"""The programme: steps and how they compare, testing days, strips, what to test next.

What lives here: pure decisions over a record and its figures, as plain values. What it must not
know: words, cautions, prompts, storage, the clock (`now` is always an argument). Nothing here
decides that a step is taken or tests become fewer: it proposes, a person decides.
"""
