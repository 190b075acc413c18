"""Goals and limits that an educator may set for one participant, within safe bounds.

The bounds hold the published goals of the people that the bot knows of: ADA Standards of Care
2026, section 13 (older people in very poor health: before meals 100 to 180, bedtime to 200) and
section 15 (pregnancy: fasting from 70 to below 95, two hours after below 120).
"""

from dataclasses import replace
from datetime import datetime

from bot.caution.thresholds import HIGH_PLAN
from bot.localtime import shifted
from bot.participants import Goals, Limits, Participant
from bot.units import Unit, in_unit, limit_in, to_mg_dl

BEFORE_LOW = (70.0, 100.0)
BEFORE_HIGH = (95.0, 180.0)
AFTER_HIGH = (120.0, 200.0)
#: Where `low` and `high` may begin (contract; `Limits` refuses any other).
LOW = (70.0, 80.0)
HIGH = (200.0, 250.0)


class OutOfBounds(ValueError):
    """A goal or limit beyond what is safe."""


def with_goals(person: Participant, before: tuple[float, float], after: float) -> Participant:
    """Set goals, told in the participant's own unit. In pregnancy they are judged from now on.

    Raises OutOfBounds.
    """
    low, high = (
        _bounded(value, bounds, person.unit)
        for value, bounds in zip(before, (BEFORE_LOW, BEFORE_HIGH), strict=True)
    )
    after_high = _bounded(after, AFTER_HIGH, person.unit)
    goals = Goals(before_low=low, before_high=high, after_high=after_high)
    _rising(goals)
    _apart(person.limits.low, low)
    return replace(person, goals=goals, pregnant=False)


def check(person: Participant) -> None:
    """Hold goals that came some other way to the bounds of goals that are set in chat.

    Limits have theirs in `Limits` itself. Raises OutOfBounds, whose words name the goal, its
    bounds and the unit, and not the value.
    """
    goals = person.goals
    for name, goal, bounds in (
        ("before_low", goals.before_low, BEFORE_LOW),
        ("before_high", goals.before_high, BEFORE_HIGH),
        ("after_high", goals.after_high, AFTER_HIGH),
    ):
        if not _lies_within(goal, bounds, person.unit):
            raise OutOfBounds(f"`{name}` must be from {bounds[0]:g} to {bounds[1]:g} mg/dL")
    _rising(goals)
    _apart(person.limits.low, goals.before_low)


def with_low(person: Participant, value: float) -> Participant:
    """Raise where `low` begins. Raises OutOfBounds."""
    limits = Limits(low=_bounded(value, LOW, person.unit), high=person.limits.high)
    _apart(limits.low, person.goals.before_low)
    return replace(person, limits=limits)


def with_high(person: Participant, value: float) -> Participant:
    """Lower where `high` begins. Raises OutOfBounds."""
    limits = Limits(low=person.limits.low, high=_bounded(value, HIGH, person.unit))
    return replace(person, limits=limits)


def with_high_plan(person: Participant, now: datetime) -> Participant:
    """For somebody who is high for weeks: 14 days from now."""
    return replace(person, high_plan_until=shifted(now, HIGH_PLAN))


def _rising(goals: Goals) -> None:
    if not goals.before_low < goals.before_high < goals.after_high:
        raise OutOfBounds("goals must rise: `before_low`, `before_high`, `after_high`")


def _lies_within(mg_dl: float, bounds: tuple[float, float], unit: Unit) -> bool:
    """As a goal told in mmol/L is bounded: 10.0 is within, though it is 180.156 mg/dL."""
    if unit is Unit.MG_DL:
        return bounds[0] <= mg_dl <= bounds[1]
    lowest, highest = (limit_in(bound, unit) for bound in bounds)
    return lowest <= float(in_unit(mg_dl, unit)) <= highest


def _apart(limit: float, goal: float) -> None:
    """No value may be a low and within the goal at once."""
    if goal < limit:
        raise OutOfBounds("`before_low` must not be below the limit of lows")


def _bounded(value: float, bounds: tuple[float, float], unit: Unit) -> float:
    """In mg/dL. The bounds are compared as published in the unit in which the value was told."""
    lowest, highest = bounds
    if not limit_in(lowest, unit) <= value <= limit_in(highest, unit):
        raise OutOfBounds(f"{value:g} {unit} is out of bounds")
    return min(max(to_mg_dl(value, unit), lowest), highest)
