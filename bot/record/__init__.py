"""The record: immutable events, folded into what stands.

What lives here: the kinds of event, and the fold that turns a participant's events into a
`Record`. What it must not know: goals, cautions, what is due, words, storage. A correction or
a removal leaves no trace in a folded record; the order in which late entries arrive makes no
difference to it.
"""

from bot.record.events import Body, Event, Retracted, Spoke, Wondered, Wrote
from bot.record.fold import Noted, Record, fold

__all__ = [
    "Body",
    "Event",
    "Noted",
    "Record",
    "Retracted",
    "Spoke",
    "Wondered",
    "Wrote",
    "fold",
]
