"""Each meal with the reading before it and the one two hours after its first bite.

Meals choose in the order of their start, each the best reading that is still free: a stated
moment before an unstated one, then the nearest. What a meal gets depends on the instants only,
never on the order in which things were told.
"""

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from functools import lru_cache
from math import floor
from typing import NamedTuple

from bot.entries import Meal, Moment, OffScale, Reading
from bot.glucose.readings import (
    REPEAT_WITHIN,
    Settled,
    any_up_to,
    eaten_instants,
    follow_each_other,
    is_free_drink,
    settled,
)
from bot.participants import Participant
from bot.record import Noted, Record
from bot.record.fold import is_low, when
from bot.units import limit_in

MINUTE = 60.0

#: Project rules (contract, "Pairing"); no tolerance around two hours is published.
BEFORE_EARLIEST, BEFORE_LATEST = -60 * MINUTE, 10 * MINUTE
AFTER_EARLIEST, AFTER_LATEST = 90 * MINUTE, 150 * MINUTE
OFF_TIME_EARLIEST, OFF_TIME_LATEST = 60 * MINUTE, 180 * MINUTE
AFTER_BEST = 120 * MINUTE
LOW_REACHES = 120 * MINUTE

NOT_BEFORE = frozenset({Moment.AFTER_MEAL, Moment.AFTER_ACTIVITY, Moment.BEDTIME, Moment.RECHECK})
NOT_AFTER = frozenset({Moment.BEFORE_MEAL, Moment.FASTING, Moment.BEDTIME, Moment.RECHECK})


class Status(StrEnum):
    """Why a pair does not count, or that it does; the first that fits, in this order."""

    NO_AFTER = "no_after"
    ATE_AGAIN = "ate_again"
    OFF_TIME = "off_time"
    AROUND_LOW = "around_low"
    OFF_SCALE = "off_scale"
    NO_BEFORE = "no_before"
    COMPLETE = "complete"


class Pair(NamedTuple):
    """A meal with its readings; `rise` in mg/dL, None where a number is missing.

    `after_minutes` counts from the meal's start to the after reading's own instant, rounded half
    up. Goals are judged in the unit as typed; None without a number, in pregnancy, and for a
    surprising reading that no later one was near to (`unconfirmed`: one of the two is such).
    """

    meal: Noted[Meal]
    before: Noted[Reading] | None
    after: Noted[Reading] | None
    after_minutes: int | None
    status: Status
    rise: float | None
    before_in_goal: bool | None
    after_in_goal: bool | None
    unconfirmed: bool = False

    @property
    def started_at(self) -> datetime:
        """The first bite, which every pair's meal has."""
        return when(self.meal)

    @property
    def values(self) -> tuple[float, float] | None:
        """Before and after in mg/dL where both are numbers."""
        if self.before is None or self.after is None:
            return None
        before, after = self.before.entry.mg_dl, self.after.entry.mg_dl
        return None if before is None or after is None else (before, after)


#: How well a reading suits a meal that starts at an instant: smaller is better, None not at all.
Rank = tuple[float, ...]
Suits = Callable[[Settled, float], Rank | None]


# A turn asks several times about one record; records are equal if they are the same one.
@lru_cache(maxsize=8)
def pairs(record: Record) -> tuple[Pair, ...]:
    """A pair for every meal with a known start, open ones too, in the order of their start."""
    meals = [noted for noted in record.meals if noted.entry.started_at is not None]
    if not follow_each_other(meals):
        meals.sort(key=lambda noted: (_start(noted), noted.at, noted.entry.text, noted.id))
    places = _places(settled(record))
    # Water never takes a reading away from a plate of food, whichever came first.
    choosers = sorted(meals, key=lambda noted: is_free_drink(noted.entry))
    befores = _assign(choosers, places, _suits_before, (BEFORE_EARLIEST, BEFORE_LATEST))
    afters = _assign(choosers, places, _suits_after, (OFF_TIME_EARLIEST, OFF_TIME_LATEST))
    context = _Context(
        participant=record.participant, eaten=eaten_instants(record), lows=_lows(record)
    )
    return tuple(context.pair(meal, befores.get(meal.id), afters.get(meal.id)) for meal in meals)


def closed_by(record: Record, reading: Noted[Reading]) -> Pair | None:
    """The pair whose after reading this is, if it closes one."""
    # A repeat's place lies up to half an hour before its own instant.
    earliest = reading.seconds - OFF_TIME_LATEST - REPEAT_WITHIN
    latest = reading.seconds - OFF_TIME_EARLIEST
    if not any(earliest <= meal.seconds <= latest for meal in record.meals):
        return None  # most readings: no pair has to be made to know it
    return next((pair for pair in pairs(record) if pair.after is reading), None)


def before_in_goal(reading: Reading, participant: Participant) -> bool | None:
    """Within the goal before a meal, ends included; None without a number or unjudged."""
    if reading.value is None or not participant.judged:
        return None
    low = limit_in(participant.goals.before_low, reading.unit)
    return low <= reading.value <= limit_in(participant.goals.before_high, reading.unit)


def after_in_goal(reading: Reading, participant: Participant) -> bool | None:
    """From the low limit to below the goal after a meal; None without a number or unjudged."""
    if reading.value is None or not participant.judged:
        return None
    low = limit_in(participant.limits.low, reading.unit)
    return low <= reading.value < limit_in(participant.goals.after_high, reading.unit)


def _start(meal: Noted[Meal]) -> float:
    return meal.seconds


def _places(readings: Iterable[Settled]) -> list[Settled]:
    """Readings that may take a place, by the instant of that place."""
    placed = [one for one in readings if one.at is not None and not one.doubtful]
    if follow_each_other(one.place for one in placed):
        return placed
    return sorted(placed, key=_content)


def _content(one: Settled) -> tuple[float, float, datetime, float]:
    """Orders readings by what they are, so that the order of arrival decides nothing."""
    noted = one.noted
    value = noted.entry.mg_dl
    return (one.place.seconds, noted.seconds, noted.at, -1.0 if value is None else value)


def _suits_before(one: Settled, start: float) -> Rank | None:
    if one.moment in NOT_BEFORE:
        return None
    distances = [
        abs(instant - start)
        for instant in _instants(one)
        if BEFORE_EARLIEST <= instant - start <= BEFORE_LATEST
    ]
    if not distances:
        return None
    return (one.moment is not Moment.BEFORE_MEAL, min(distances))


def _suits_after(one: Settled, start: float) -> Rank | None:
    if one.moment in NOT_AFTER:
        return None
    unstated = one.moment is not Moment.AFTER_MEAL
    ranks = [
        (not _in_time(instant - start), unstated, abs(instant - start - AFTER_BEST))
        for instant in _instants(one)
        if OFF_TIME_EARLIEST <= instant - start <= OFF_TIME_LATEST
    ]
    return min(ranks, default=None)


def _in_time(since_start: float) -> bool:
    return AFTER_EARLIEST <= since_start <= AFTER_LATEST


def _assign(
    meals: Iterable[Noted[Meal]],
    places: Sequence[Settled],
    suits: Suits,
    window: tuple[float, float],
) -> dict[int, Settled]:
    """Give each meal in turn the most suitable reading that is still free."""
    instants = [one.place.seconds for one in places]
    taken: set[int] = set()
    chosen: dict[int, Settled] = {}
    for meal in meals:
        start = _start(meal)
        # A repeat's place lies up to half an hour before its own instant.
        first = bisect_left(instants, start + window[0] - REPEAT_WITHIN)
        last = bisect_right(instants, start + window[1])
        best: tuple[Rank, int] | None = None
        for index in range(first, last):
            rank = None if index in taken else suits(places[index], start)
            if rank is not None and (best is None or rank < best[0]):
                best = (rank, index)
        if best is not None:
            taken.add(best[1])
            chosen[meal.id] = places[best[1]]
    return chosen


def _lows(record: Record) -> list[float]:
    return [noted.seconds for noted in record.lows if noted.entry.taken_at is not None]


@dataclass(frozen=True, slots=True, kw_only=True)
class _Context:
    """What else happened: decides the status of a meal's pair. Instants in seconds, ordered."""

    participant: Participant
    eaten: Sequence[float]
    lows: Sequence[float]

    def pair(self, meal: Noted[Meal], before: Settled | None, after: Settled | None) -> Pair:
        earlier, later = _noted(before), _noted(after)
        unconfirmed = [one.unconfirmed if one else False for one in (before, after)]
        minutes = None if after is None else (after.noted.seconds - _start(meal)) / MINUTE
        return Pair(
            meal=meal,
            before=earlier,
            after=later,
            after_minutes=None if minutes is None else floor(minutes + 0.5),
            status=self._status(_start(meal), before, after),
            rise=_rise(earlier, later),
            before_in_goal=(
                None
                if earlier is None or unconfirmed[0]
                else before_in_goal(earlier.entry, self.participant)
            ),
            after_in_goal=(
                None
                if later is None or unconfirmed[1]
                else after_in_goal(later.entry, self.participant)
            ),
            unconfirmed=any(unconfirmed),
        )

    def _status(self, start: float, before: Settled | None, after: Settled | None) -> Status:
        if after is None:
            return Status.NO_AFTER
        readings = [one.noted.entry for one in (before, after) if one is not None]
        if self._ate_again(start, after.noted.seconds):
            return Status.ATE_AGAIN
        if not any(_in_time(instant - start) for instant in _instants(after)):
            return Status.OFF_TIME
        if self.lows and self._around_low(start, readings):
            return Status.AROUND_LOW
        if any(one.off_scale is OffScale.HIGH for one in readings):
            return Status.OFF_SCALE
        return Status.NO_BEFORE if before is None else Status.COMPLETE

    def _around_low(self, start: float, readings: Iterable[Reading]) -> bool:
        if any_up_to(self.lows, start - LOW_REACHES, start):
            return True
        return any(is_low(one, self.participant.limits) for one in readings)

    def _ate_again(self, start: float, until: float) -> bool:
        index = bisect_right(self.eaten, start)
        return index < len(self.eaten) and self.eaten[index] < until


def _instants(one: Settled) -> tuple[float, ...]:
    """The instants (seconds) by which a reading may be chosen: its own, and that of its place."""
    own = one.noted.seconds
    return (own,) if one.place is one.noted else (one.place.seconds, own)


def _noted(one: Settled | None) -> Noted[Reading] | None:
    return None if one is None else one.noted


def _rise(before: Noted[Reading] | None, after: Noted[Reading] | None) -> float | None:
    if before is None or after is None:
        return None
    start, end = before.entry.mg_dl, after.entry.mg_dl
    return None if start is None or end is None else end - start
