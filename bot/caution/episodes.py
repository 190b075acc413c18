"""Readings out of range gathered into episodes: one low is one low, however often it is tested."""

from collections.abc import Callable, Iterable

from bot.caution.thresholds import EPISODE_GAP, LOW_OPEN
from bot.entries import Moment, Reading
from bot.localtime import minutes_between
from bot.record import Noted
from bot.record.fold import when

Episode = tuple[Noted[Reading], ...]
Out = Callable[[Reading], bool]


def episodes(readings: Iterable[Noted[Reading]], out: Out) -> tuple[Episode, ...]:
    """Gather the readings for which `out` holds; `readings` come in the order of their instant.

    An episode lasts until 30 minutes after its last reading out of range. A recheck that still
    finds the value out of range belongs to it even if it was answered late.
    """
    return _gathered(readings, out, broken_by_range=False)


def unbroken(readings: Iterable[Noted[Reading]], out: Out) -> tuple[Episode, ...]:
    """The same, but a reading in range ends it: what is `still` low was never back."""
    return _gathered(readings, out, broken_by_range=True)


def episode_of(id_: int, found: Iterable[Episode]) -> Episode:
    """The episode that a reading belongs to; empty where it belongs to none."""
    return next((one for one in found if any(noted.id == id_ for noted in one)), ())


def _gathered(
    readings: Iterable[Noted[Reading]], out: Out, *, broken_by_range: bool
) -> tuple[Episode, ...]:
    found: list[list[Noted[Reading]]] = []
    back_in_range = True
    for noted in readings:
        if not out(noted.entry):
            back_in_range = True
            continue
        ended = broken_by_range and back_in_range
        if found and not ended and _goes_on(found[-1][-1], noted, back_in_range=back_in_range):
            found[-1].append(noted)
        else:
            found.append([noted])
        back_in_range = False
    return tuple(tuple(one) for one in found)


def _goes_on(last: Noted[Reading], noted: Noted[Reading], *, back_in_range: bool) -> bool:
    gap = minutes_between(when(last), when(noted))
    if gap < EPISODE_GAP.total_seconds() / 60:
        return True
    late_recheck = noted.entry.moment is Moment.RECHECK and not back_in_range
    return late_recheck and gap <= LOW_OPEN.total_seconds() / 60
