"""The record and the digests as JSON lines, under the contract of the replay."""

from collections.abc import Iterator
from datetime import datetime
from typing import Any

from bot.entry_lines import entry_line, number
from bot.glucose.effects import Effect, effects
from bot.glucose.pairs import Pair, pairs
from bot.glucose.readings import settled
from bot.glucose.week import Week
from bot.localtime import in_zone, iso
from bot.participants import Participant
from bot.record import Noted, Record
from bot.record.fold import when
from bot.units import half_up

Line = dict[str, Any]

#: Lines of one instant stand in this order.
ORDER = (
    "reading",
    "meal",
    "treatment",
    "activity",
    "symptom",
    "skip",
    "step",
    "strips",
    "answer",
    "pair",
    "activity_effect",
)
#: Fields that hold an instant, to be printed in the participant's own offset.
INSTANTS = ("taken_at", "started_at", "ended_at")


def rounded(value: float | None, places: int = 2) -> float | None:
    """Two decimals in print; unrounded inside."""
    return None if value is None else float(half_up(value, places))


def record_lines(record: Record) -> Iterator[Line]:
    """Every line of one participant's record, by time."""
    placed = [(at, line) for at, line, _ in _entries(record)]
    placed.extend(_derived(record))
    placed.sort(key=_order)
    for _, line in placed:
        yield {"participant": record.participant.id, **line}


def entries_in_order(record: Record) -> list[Noted[Any]]:
    """The entries in the order in which `record_lines` gives their lines."""
    placed = sorted(_entries(record), key=lambda one: _order(one[:2]))
    return [noted for _, _, noted in placed]


def _order(placed: tuple[datetime, Line]) -> tuple[datetime, int]:
    at, line = placed
    return at, ORDER.index(line["type"])


def _entries(record: Record) -> Iterator[tuple[datetime, Line, Noted[Any]]]:
    person = record.participant
    doubtful = {one.noted.id: one.doubtful for one in settled(record)}
    for reading in record.readings:
        line = _timed(reading.entry, person)
        line["mg_dl"] = rounded(line["mg_dl"])
        yield when(reading), {**line, "doubtful": doubtful.get(reading.id, False)}, reading
    dated: tuple[Noted[Any], ...] = (*record.meals, *record.treatments, *record.activities)
    for noted in dated:
        yield when(noted), _timed(noted.entry, person), noted
    undated: tuple[Noted[Any], ...] = (
        *record.symptoms,
        *record.skips,
        *record.steps,
        *record.strips,
        *record.answers,
    )
    for told in undated:
        line = {**entry_line(told.entry), "at": iso(in_zone(told.at, person.zone))}
        yield told.at, line, told


def _timed(entry: Any, person: Participant) -> Line:
    line = entry_line(entry)
    for name in INSTANTS:
        instant = getattr(entry, name, None)
        if instant is not None:
            line[name] = iso(in_zone(instant, person.zone))
    return line


def _derived(record: Record) -> Iterator[tuple[datetime, Line]]:
    zone = record.participant.zone
    for pair in pairs(record):
        yield pair.started_at, _pair_line(pair, zone)
    for effect in effects(record):
        yield effect.activity.entry.ended_at, _effect_line(effect, zone)


def _value(noted: Noted[Any] | None) -> float | None:
    return None if noted is None else rounded(noted.entry.mg_dl)


def _pair_line(pair: Pair, zone: str) -> Line:
    return {
        "type": "pair",
        "meal_started_at": iso(in_zone(pair.started_at, zone)),
        "meal": pair.meal.entry.text,
        "before": _value(pair.before),
        "after": _value(pair.after),
        "rise": rounded(pair.rise),
        "after_minutes": pair.after_minutes,
        "status": pair.status.value,
        "before_in_goal": pair.before_in_goal,
        "after_in_goal": pair.after_in_goal,
    }


def _effect_line(effect: Effect, zone: str) -> Line:
    activity = effect.activity.entry
    return {
        "type": "activity_effect",
        "activity": activity.text,
        "minutes": number(activity.minutes),
        "ended_at": iso(in_zone(activity.ended_at, zone)),
        "before": _value(effect.before),
        "after": _value(effect.after),
        "change": rounded(effect.change),
        "beyond_meter_scatter": effect.beyond_meter_scatter,
        "food_still_working": effect.food_still_working,
    }


def digest_line(week: Week, picture: str | None) -> Line:
    """The numbers behind one weekly digest."""
    trend = week.trend
    return {
        "participant": week.participant.id,
        "week_from": week.from_date.isoformat(),
        "week_to": week.to_date.isoformat(),
        "readings": len(week.readings),
        "complete_pairs": len(week.complete),
        "before_in_goal": list(week.before_in_goal),
        "after_in_goal": list(week.after_in_goal),
        "median_before": rounded(week.median_before),
        "median_after": rounded(week.median_after),
        "median_rise": rounded(week.median_rise),
        "lowest": rounded(week.lowest),
        "highest": rounded(week.highest),
        "trend": None
        if trend is None
        else {
            "mg_dl_per_day": rounded(trend.mg_dl_per_day, 4),
            "low": rounded(trend.low, 4),
            "high": rounded(trend.high, 4),
            "clear": trend.clear,
        },
        "largest_rises": [pair.meal.entry.text for pair in week.largest_rises],
        "smallest_rises": [pair.meal.entry.text for pair in week.smallest_rises],
        "steps": [
            {
                "step": step.step.value,
                "pairs": len(step.pairs),
                "mean_rise": rounded(step.mean_rise),
            }
            for step in week.steps
        ],
        "cautions": list(week.cautions),
        "picture": picture,
    }
