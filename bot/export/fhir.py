"""The record as a FHIR R4 bundle (hl7.org/fhir/R4/bundle.html), type `collection`.

For each participant: a Patient, known by the public id alone (and a name only if one was given),
two Goals (and two for each pair of goals that was in force before), and Observations: every
reading; every meal as a group that has its readings as members (`hasMember`); every rise and every
change around an activity, derived from two readings (`derivedFrom`); activities, symptoms, and
what was taken against a low. Ids are worked out from the record, so that the same record gives the
same bytes.
"""

import json
from collections.abc import Iterable, Iterator
from datetime import timedelta
from itertools import groupby, pairwise
from typing import Any

from bot.educator.goal_log import GoalsSet, goals_set
from bot.entries import Activity, Meal
from bot.entry_lines import number
from bot.export.fhir_codes import Shape, category, glucose_code, quantity
from bot.export.fhir_readings import Subject, reading_observations
from bot.export.lines import rounded
from bot.glucose.effects import Effect, effects
from bot.glucose.pairs import Pair, pairs
from bot.localtime import local_date, shifted
from bot.record import Noted, Record
from bot.units import MG_DL_PER_MMOL_L, Unit, limit_in

#: What has no code of LOINC that we could verify is named in words.
RISE = "Rise of glucose from before a meal to after it"
CHANGE = "Change of glucose around an activity"
PAIR = "Paired glucose test: before a meal and after it"


def bundle_bytes(records: Iterable[Record]) -> bytes:
    """One bundle of these records, as JSON in UTF-8."""
    return (json.dumps(bundle(records), ensure_ascii=False, indent=1) + "\n").encode()


def bundle(records: Iterable[Record]) -> Shape:
    """One bundle of these records."""
    resources = [resource for record in records for resource in _resources(record)]
    entries = [{"fullUrl": f"urn:uuid:{one['id']}", "resource": one} for one in resources]
    shape: Shape = {"resourceType": "Bundle", "type": "collection"}
    return shape | ({"entry": entries} if entries else {})


def _resources(record: Record) -> Iterator[Shape]:
    subject = Subject(record.participant)
    yield _patient(subject)
    yield from _goals(record, subject)
    yield from reading_observations(record, subject)
    yield from _meals(record, subject)
    yield from _activities(record, subject)
    for symptom in record.symptoms:
        yield subject.told("symptom", symptom, "Symptom", symptom.entry.text, symptom.at)
    for sugar in record.treatments:
        label = "Sugar taken against a low reading"
        yield subject.told("treatment", sugar, label, sugar.entry.text, sugar.entry.taken_at)


def _patient(subject: Subject) -> Shape:
    person = subject.person
    shape: Shape = {
        "resourceType": "Patient",
        "id": subject.id_of("patient"),
        "identifier": [{"value": person.id}],
    }
    return shape | ({"name": [{"text": person.name}]} if person.name else {})


def _goals(record: Record, subject: Subject) -> Iterator[Shape]:
    """The goals in force, and those that were before, each with its days and who set it."""
    if not subject.person.judged:
        return
    # Only limits may have been set: that is no other goal.
    *earlier, now = (next(same) for _, same in groupby(goals_set(record), lambda one: one.goals))
    yield from _pair_of_goals(now, subject, {"lifecycleStatus": "active"})
    for place, (one, following) in enumerate(pairwise((*earlier, now)), start=1):
        ended = {"lifecycleStatus": "completed", "statusDate": _day(following, subject)}
        yield from _pair_of_goals(one, subject, ended, str(place))


def _day(one: GoalsSet, subject: Subject) -> str:
    return local_date(one.at, subject.person.zone).isoformat()


def _pair_of_goals(
    one: GoalsSet, subject: Subject, status: Shape, number: str = ""
) -> Iterator[Shape]:
    unit, goals = subject.person.unit, one.goals
    before = {
        "low": quantity(limit_in(goals.before_low, unit), unit),
        "high": quantity(limit_in(goals.before_high, unit), unit),
    }
    # A Range holds both its ends: where an end lies outside the goal the words say so.
    after = {"high": quantity(limit_in(goals.after_high, unit), unit)}
    for name, words, span in (
        ("before", "Glucose before a meal, both ends included", before),
        ("after", "Glucose two hours after the start of a meal, below the high end", after),
    ):
        yield {
            "resourceType": "Goal",
            "id": subject.id_of("goal", f"{name}{number}"),
            **status,
            "description": {"text": words},
            "subject": subject.reference,
            "startDate": _day(one, subject),
            **(
                {"expressedBy": {"type": "Practitioner", "identifier": {"value": one.by}}}
                if one.by
                else {}
            ),
            "target": [{"measure": glucose_code(unit), "detailRange": span}],
        }


def _meals(record: Record, subject: Subject) -> Iterator[Shape]:
    paired = {pair.meal.id for pair in pairs(record)}
    for meal in record.meals:
        if meal.id not in paired:  # its start is not known
            yield subject.told("meal", meal, "Meal", meal.entry.text or _name(meal), meal.at)
    for pair in pairs(record):
        yield _pair(pair, subject)
        if pair.before and pair.after and pair.rise is not None:
            yield _difference(
                subject,
                ("rise", pair.meal.id),
                RISE,
                (pair.before, pair.after),
                pair.rise,
            )


def _pair(pair: Pair, subject: Subject) -> Shape:
    readings = [reading for reading in (pair.before, pair.after) if reading is not None]
    parts: list[Shape] = [
        {"code": {"text": "Meal"}, "valueString": pair.meal.entry.text or _name(pair.meal)},
        {"code": {"text": "Whether the pair counts"}, "valueString": pair.status.value},
    ]
    if pair.after_minutes is not None:
        parts.append(
            {
                "code": {"text": "Time from the start of the meal to the test after it"},
                "valueQuantity": quantity(pair.after_minutes, "min"),
            }
        )
    shape = subject.observation(("pair", pair.meal.id), {"text": PAIR}, pair.started_at)
    if readings:
        shape["hasMember"] = [subject.refers("reading", reading.id) for reading in readings]
    return {**shape, "component": parts}


def _name(meal: Noted[Meal]) -> str:
    return meal.entry.name.value if meal.entry.name else "meal"


def _activities(record: Record, subject: Subject) -> Iterator[Shape]:
    for noted in record.activities:
        yield _activity(noted, subject)
    for effect in effects(record):
        if effect.change is not None:
            yield _effect(effect, effect.change, subject)


def _activity(noted: Noted[Activity], subject: Subject) -> Shape:
    activity = noted.entry
    end = subject.at(activity.ended_at)
    shape = subject.told("activity", noted, "Physical activity", activity.text, activity.ended_at)
    shape["category"] = category("activity", "Activity")
    if activity.minutes:
        del shape["effectiveDateTime"]
        start = shifted(activity.ended_at, -timedelta(minutes=activity.minutes))
        shape["effectivePeriod"] = {"start": subject.at(start), "end": end}
    return shape


def _effect(effect: Effect, change: float, subject: Subject) -> Shape:
    readings = (effect.before, effect.after)
    shape = _difference(subject, ("effect", effect.activity.id), CHANGE, readings, change)
    if effect.food_still_working:
        words = "Food was still working: this change does not tell what the activity did."
        shape["note"] = [{"text": words}]
    return shape


def _difference(
    subject: Subject,
    key: tuple[str, int],
    label: str,
    readings: tuple[Noted[Any], Noted[Any]],
    mg_dl: float,
) -> Shape:
    """A rise or a fall, in the unit of its later reading: the difference itself is converted."""
    later = readings[1]
    shape = subject.observation(key, {"text": label}, later.entry.taken_at)
    shape["valueQuantity"] = quantity(_in(mg_dl, later.entry.unit), later.entry.unit)
    shape["derivedFrom"] = [subject.refers("reading", reading.id) for reading in readings]
    return shape


def _in(mg_dl: float, unit: Unit) -> float:
    in_unit = mg_dl if unit is Unit.MG_DL else mg_dl / float(MG_DL_PER_MMOL_L)
    return number(rounded(in_unit)) or 0
