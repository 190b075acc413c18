"""Turns: a message or a wake-up becomes what to keep, what to say and when to wake.

What lives here: hearing, waking, enrolling, teaching, each a pure function. What it must not
know: the clock, the database, the chat. `now` is always an argument.
"""
