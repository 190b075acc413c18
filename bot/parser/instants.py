"""Which instant does a written time mean? The latest that fits, never ahead of the message unless
the caller allows it for the start of a meal."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import Enum, auto

from bot.localtime import shifted

#: A clock time names the latest instant within a day; a meal may start a little ahead.
WITHIN = timedelta(hours=24)
AHEAD = timedelta(minutes=60)


class Half(Enum):
    """Which half of the day an hour is in."""

    MORNING = auto()
    AFTERNOON = auto()
    STATED = auto()  # a 24-hour time
    EITHER = auto()


class Day(Enum):
    """A day that is named, seen from the message."""

    TODAY = auto()
    LAST_NIGHT = auto()
    YESTERDAY = auto()
    DAY_BEFORE = auto()
    WEEKDAY = auto()
    SOME_DAYS_AGO = auto()


@dataclass(frozen=True, slots=True, kw_only=True)
class When:
    """A time as written: `ago` in minutes (below 0 for what lies ahead), or an hour with or without
    a day. A day alone is vague."""

    start: int
    end: int
    ago: float | None = None
    hour: int | None = None
    minute: int = 0
    half: Half = Half.EITHER
    day: Day | None = None
    weekday: int = 0
    days: int = 0
    minutes: float | None = None  # `from 5 to 5:30`: how long, and `hour` is the end
    bare_digits: bool = False  # `1:18`: could be a dictated glucose value

    @property
    def vague(self) -> bool:
        """A day without an hour."""
        return self.ago is None and self.hour is None

    @property
    def before_today(self) -> bool:
        """It names a day that is over."""
        return self.day not in {None, Day.TODAY}


def is_today(when: When, at: datetime) -> bool:
    """Whether it names the day of the message and no hour (`tonight`, `happy sunday`)."""
    same = when.day is Day.WEEKDAY and when.weekday == at.weekday()
    return when.vague and (when.day is Day.TODAY or same)


def resolved(
    when: When, at: datetime, *, ahead: bool = False, morning: bool = False
) -> datetime | None:
    """The instant meant, the latest that fits; None for a day alone and where none fits.

    `ahead` lets it lie up to an hour after `at`; `morning` prefers the morning (breakfast).
    """
    if when.ago is not None:
        return shifted(at, timedelta(minutes=-when.ago)) if when.ago < 60 * 24 * 60 else None
    if when.hour is None:
        return None
    latest = at + AHEAD if ahead else at
    earliest = at - WITHIN if when.day is None else at - timedelta(days=8)
    fitting = [moment for moment in _instants(when, at, ahead) if earliest < moment <= latest]
    if morning and when.half is Half.EITHER:
        fitting = [moment for moment in fitting if moment.hour < 12] or fitting
    return max(fitting, default=None)


def _instants(when: When, at: datetime, ahead: bool) -> Iterator[datetime]:
    for hour in _hours(when):
        for back in _days_back(when, at, hour, ahead):
            if -1 <= back <= 8:
                day = at.replace(hour=hour, minute=when.minute, second=0, microsecond=0)
                yield day - timedelta(days=back)


def _hours(when: When) -> tuple[int, ...]:
    hour = when.hour or 0
    if when.half is Half.STATED:
        return (hour % 24,)
    hour %= 12
    if when.half is Half.MORNING:
        return (hour,)
    if when.half is Half.AFTERNOON:
        return (hour + 12,)
    return (hour, hour + 12)


def _days_back(when: When, at: datetime, hour: int, ahead: bool) -> tuple[int, ...]:
    match when.day:
        case None:
            return (-1, 0, 1) if ahead else (0, 1)
        case Day.TODAY:
            return (0,)
        case Day.YESTERDAY:
            return (1,)
        case Day.DAY_BEFORE:
            return (2,)
        case Day.LAST_NIGHT:
            return (1,) if hour >= 17 else (0,) if hour < 5 else ()
        case Day.SOME_DAYS_AGO:
            return (when.days,)
        case Day.WEEKDAY:
            return ((at.weekday() - when.weekday) % 7, (at.weekday() - when.weekday) % 7 + 7)
