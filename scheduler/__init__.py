"""Time: the one clock, and the engines that wake people when something may be due.

What lives here: the only reader of the time, and alarm clocks behind one port. What it must
not know: the bot. A wake-up carries who and when, never a message.
"""
