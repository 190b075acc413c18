"""The group before and after: each person against themselves, with an interval.

Two spans of seven days are compared: the first after joining, and the last one, which begins at
least a week after joining. A person counts who has enough complete pairs in both. Below five
people nothing is given, so that nobody can be singled out.
"""

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from statistics import fmean, stdev

from bot.glucose.pairs import Pair, Status, pairs
from bot.glucose.week import rise_of
from bot.localtime import shifted
from bot.programme.compare import student_limit
from bot.record import Record

SPAN = timedelta(days=7)
#: Fewer pairs say too little of a person's week (project rule).
PAIRS_EACH = 3
#: contract: below it nothing is given.
PEOPLE = 5


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """Means over people, in mg/dL: first span, last span, and the mean of each person's change
    with its 95 % interval (Student's t for paired differences)."""

    first: float
    last: float
    change: float
    low: float
    high: float

    @property
    def clear(self) -> bool:
        """The interval leaves out no change at all."""
        return self.high < 0 or self.low > 0


@dataclass(frozen=True, slots=True, kw_only=True)
class GroupFigures:
    """What a group shows: two-hour values and rises after meals, and how many people counted."""

    people: int
    of: int
    after: Change
    rise: Change


@dataclass(frozen=True, slots=True, kw_only=True)
class TooFew:
    """Not enough people with enough pairs in both spans."""

    people: int
    of: int
    needed: int = PEOPLE


@dataclass(frozen=True, slots=True)
class _Span:
    after: float
    rise: float


def group_figures(records: Iterable[Record], now: datetime) -> GroupFigures | TooFew:
    """Compare the first and the last seven days of everybody who shares values."""
    shared = [record for record in records if record.participant.tell_educator]
    both = [spans for record in shared if (spans := _spans(record, now)) is not None]
    if len(both) < PEOPLE:
        return TooFew(people=len(both), of=len(shared))
    return GroupFigures(
        people=len(both),
        of=len(shared),
        after=paired([(first.after, last.after) for first, last in both]),
        rise=paired([(first.rise, last.rise) for first, last in both]),
    )


def paired(values: Sequence[tuple[float, float]]) -> Change:
    """The mean change from first to last with its 95 % interval. ValueError below two people."""
    if len(values) < 2:
        raise ValueError("an interval needs at least two people")
    changes = [last - first for first, last in values]
    mean = fmean(changes)
    half = student_limit(len(changes) - 1) * stdev(changes) / math.sqrt(len(changes))
    return Change(
        first=fmean(first for first, _ in values),
        last=fmean(last for _, last in values),
        change=mean,
        low=mean - half,
        high=mean + half,
    )


def _spans(record: Record, now: datetime) -> tuple[_Span, _Span] | None:
    joined = record.participant.joined_at
    last_from = max(shifted(now, -SPAN), shifted(joined, SPAN))
    every = pairs(record)
    first = _span(every, joined, shifted(joined, SPAN))
    last = _span(every, last_from, now)
    return None if first is None or last is None else (first, last)


def _span(every: Sequence[Pair], start: datetime, end: datetime) -> _Span | None:
    counted = [
        pair
        for pair in every
        if pair.status is Status.COMPLETE
        and not pair.unconfirmed
        and start.timestamp() <= pair.started_at.timestamp() < end.timestamp()
    ]
    afters = [pair.values[1] for pair in counted if pair.values is not None]
    if len(afters) < PAIRS_EACH:
        return None
    return _Span(after=fmean(afters), rise=fmean(rise_of(pair) for pair in counted))
