"""What is due, and why; quiet time; the next instant worth waking for.

What lives here: pure functions from a record and an instant to what falls due. A prompt has no
row anywhere until it is due, so nothing ever has to be cancelled: an answer, a correction, a
newer meal or a change of the clock simply makes the next question come out differently.
What it must not know: sentences, the outbox, the alarm clock.
"""
