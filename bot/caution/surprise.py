"""Readings that need a second look: the washed repeat overrules, a surprise is asked for again."""

from bot.glucose.readings import settled
from bot.record import Record


def surprise(record: Record, id_: int) -> bool:
    """Tell whether a reading lies below half or above twice the last one within an hour, with
    no food told between. It is asked for again; nothing is concluded from it yet."""
    return any(one.surprising for one in settled(record) if one.noted.id == id_)


def doubtful(record: Record) -> frozenset[int]:
    """The ids of highs that a lower reading within 30 minutes, the washed repeat, overrules."""
    return frozenset(one.noted.id for one in settled(record) if one.doubtful)
