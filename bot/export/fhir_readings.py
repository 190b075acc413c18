"""Readings as FHIR Observations, and what all Observations of one participant share."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Any
from uuid import UUID, uuid5

from bot.caution.thresholds import VERY_LOW
from bot.entries import MealName, Moment, OffScale, Reading
from bot.entry_lines import number
from bot.export.fhir_codes import (
    Shape,
    category,
    glucose_code,
    interpretation,
    quantity,
    timing,
)
from bot.glucose.pairs import Pair, pairs
from bot.glucose.readings import settled
from bot.glucose.week import is_very_high
from bot.localtime import in_zone, iso
from bot.participants import Participant
from bot.record import Noted, Record
from bot.record.fold import is_low
from bot.units import limit_in

#: Names all ids of ours (RFC 9562, version 5); drawn once.
NAMESPACE = UUID("5b0f6a52-6a55-4f0e-9f0c-6a3f1d4b7c21")


OVERRULED = "Overruled by a test with washed hands soon after; counted nowhere."


@dataclass(frozen=True, slots=True)
class Subject:
    """The participant whom the Observations are about."""

    person: Participant

    def id_of(self, kind: str, key: int | str = "") -> str:
        """The id of a resource: the same for ever."""
        return str(uuid5(NAMESPACE, f"{self.person.id}/{kind}/{key}"))

    def refers(self, kind: str, key: int | str = "") -> Shape:
        """A reference to another resource of the bundle."""
        return {"reference": f"urn:uuid:{self.id_of(kind, key)}"}

    @property
    def reference(self) -> Shape:
        """A reference to the participant."""
        return self.refers("patient")

    def at(self, instant: datetime) -> str:
        """An instant with the participant's own offset."""
        return iso(in_zone(instant, self.person.zone))

    def observation(self, key: tuple[str, int], code: Shape, at: datetime | None) -> Shape:
        """What every Observation has; `at` None where it is not known when it was."""
        shape: Shape = {
            "resourceType": "Observation",
            "id": self.id_of(*key),
            "status": "final",
            "code": code,
            "subject": self.reference,
            "performer": [self.reference],
        }
        return shape if at is None else {**shape, "effectiveDateTime": self.at(at)}

    def told(self, kind: str, noted: Noted[Any], label: str, text: str, at: datetime) -> Shape:
        """Something told in words."""
        shape = self.observation((kind, noted.id), {"text": label}, at)
        return {**shape, "valueString": text or label}


def reading_observations(record: Record, subject: Subject) -> Iterator[Shape]:
    """Every reading of the record."""
    places = _places(record)
    for one in settled(record):
        shape = _reading(one.noted, places.get(one.noted.id), subject)
        if one.doubtful:
            shape.pop("interpretation", None)
            shape["note"] = [{"text": OVERRULED}]
        yield shape


@dataclass(frozen=True, slots=True, kw_only=True)
class _Place:
    """The place that a reading has in a pair, and whether it is within the goal there."""

    moment: Moment
    meal: MealName | None
    in_goal: bool | None


def _places(record: Record) -> dict[int, _Place]:
    places: dict[int, _Place] = {}
    for pair in pairs(record):
        for reading, place in _of_pair(pair):
            # One reading may end a pair and begin the next: what it was said to be decides.
            if reading.id not in places or reading.entry.moment is place.moment:
                places[reading.id] = place
    return places


def _of_pair(pair: Pair) -> Iterator[tuple[Noted[Reading], _Place]]:
    name = pair.meal.entry.name
    if pair.before is not None:
        yield (
            pair.before,
            _Place(moment=Moment.BEFORE_MEAL, meal=name, in_goal=pair.before_in_goal),
        )
    if pair.after is not None:
        yield (
            pair.after,
            _Place(moment=Moment.AFTER_MEAL, meal=name, in_goal=pair.after_in_goal),
        )


def _reading(noted: Noted[Reading], place: _Place | None, subject: Subject) -> Shape:
    reading = noted.entry
    code = glucose_code(reading.unit)
    shape = subject.observation(("reading", noted.id), code, reading.taken_at)
    shape["category"] = category("laboratory", "Laboratory")
    shape["valueQuantity"] = _value(reading)
    interpreted = _interpreted(reading, place, subject.person)
    if interpreted is not None:
        shape["interpretation"] = interpretation(interpreted)
    if place is not None and place.in_goal is not None:
        shape["referenceRange"] = [_goal(reading, place, subject.person)]
    named = place.meal if place is not None and place.moment is reading.moment else None
    when = timing(reading.moment, named)
    if when is not None:
        part = {"code": {"text": "Moment of the test"}, "valueCodeableConcept": when}
        shape["component"] = [part]
    return shape


def _value(reading: Reading) -> Shape:
    """As typed; off the scale the end of what meters of that unit show, with a comparator."""
    if reading.value is not None:
        return quantity(number(reading.value) or 0, reading.unit)
    lowest, highest = reading.unit.range
    if reading.off_scale is OffScale.HIGH:
        end, comparator = highest, ">"
    else:
        end, comparator = lowest, "<"
    return {**quantity(number(float(end)) or 0, reading.unit), "comparator": comparator}


def _interpreted(reading: Reading, place: _Place | None, person: Participant) -> str | None:
    """LL, L, N, H or HH; None where nothing is judged (project's own mapping)."""
    if _is_very_low(reading):
        return "LL"
    if is_low(reading, person.limits):
        return "L"
    if is_very_high(reading):
        return "HH"
    if place is None or place.in_goal is None or reading.value is None:
        return None
    if place.in_goal:
        return "N"
    # Just under the goal before a meal is neither low nor high.
    under = reading.value < limit_in(person.goals.before_low, reading.unit)
    return None if place.moment is Moment.BEFORE_MEAL and under else "H"


def _is_very_low(reading: Reading) -> bool:
    if reading.value is None:
        return reading.off_scale is OffScale.LOW
    return reading.value < limit_in(VERY_LOW, reading.unit)


def _goal(reading: Reading, place: _Place, person: Participant) -> Shape:
    unit, goals = reading.unit, person.goals
    if place.moment is Moment.BEFORE_MEAL:
        low, high = goals.before_low, goals.before_high
        words = "goal before a meal, both ends included"
    else:
        low, high = person.limits.low, goals.after_high
        words = "goal two hours after the start of a meal, below the high end"
    return {
        "low": quantity(limit_in(low, unit), unit),
        "high": quantity(limit_in(high, unit), unit),
        "text": words,
    }
