"""What happened around an activity: the last reading before it against the first after it."""

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from bot.entries import Activity, Reading
from bot.glucose.readings import any_up_to, eaten_instants, settled
from bot.glucose.scatter import rise_limit
from bot.record import Noted, Record

MINUTE = 60.0

#: Project rules (contract, "An activity effect").
BEFORE_WITHIN = 120 * MINUTE
AFTER_WITHIN = 60 * MINUTE
FOOD_WORKS_FOR = 120 * MINUTE


@dataclass(frozen=True, slots=True, kw_only=True)
class Effect:
    """An activity with the readings around it; `change` in mg/dL, negative when it fell.

    `change` and `beyond_meter_scatter` are None where a reading is off the scale. While
    `food_still_working` no change is to be spoken of or averaged.
    """

    activity: Noted[Activity]
    before: Noted[Reading]
    after: Noted[Reading]
    change: float | None
    beyond_meter_scatter: bool | None
    food_still_working: bool


# A turn asks several times about one record; records are equal if they are the same one.
@lru_cache(maxsize=8)
def effects(record: Record) -> tuple[Effect, ...]:
    """The effects of all activities that have both readings, in the order of the activities."""
    timed = sorted(
        (one.at.timestamp(), index, one.noted)
        for index, one in enumerate(settled(record))
        if one.at is not None and not one.doubtful
    )
    instants = [instant for instant, _, _ in timed]
    readings = [noted for _, _, noted in timed]
    eaten = eaten_instants(record)
    found = (_effect(activity, instants, readings, eaten) for activity in record.activities)
    return tuple(effect for effect in found if effect is not None)


def _effect(
    activity: Noted[Activity],
    instants: Sequence[float],
    readings: Sequence[Noted[Reading]],
    eaten: Sequence[float],
) -> Effect | None:
    end = activity.entry.ended_at.timestamp()
    start = end - (activity.entry.minutes or 0) * MINUTE
    # What is taken at the very end of an activity of unknown length was taken after it.
    first = bisect_right(instants, start) - 1 if start < end else bisect_left(instants, end) - 1
    last = bisect_left(instants, end)
    if first < 0 or last == len(instants):
        return None
    if start - instants[first] > BEFORE_WITHIN or instants[last] - end > AFTER_WITHIN:
        return None
    before, after = readings[first], readings[last]
    change, beyond = _change(before.entry.mg_dl, after.entry.mg_dl)
    return Effect(
        activity=activity,
        before=before,
        after=after,
        change=change,
        beyond_meter_scatter=beyond,
        food_still_working=any_up_to(eaten, instants[first] - FOOD_WORKS_FOR, instants[last]),
    )


def _change(before: float | None, after: float | None) -> tuple[float | None, bool | None]:
    if before is None or after is None:
        return None, None
    change = after - before
    return change, abs(change) > rise_limit(before, after)
