"""The bundle, read by a stranger: fhir.resources (its models of R4B; what the bundle uses of it is
the same in R4)."""

import json
from collections.abc import Iterator
from datetime import datetime
from typing import Any

import pytest
from fhir.resources.R4B.bundle import Bundle

from bot.entries import MealName, Moment
from bot.export.fhir import CHANGE, PAIR, RISE, bundle_bytes
from bot.glucose.effects import effects
from bot.glucose.pairs import pairs
from bot.record import Record
from bot.units import Unit
from demo.diary import Diary, somebody
from tests.export.people import everything, told

RECORDS = [*told(), everything(), everything(unit=Unit.MMOL_L, name="Ana", pregnant=True)]
LOINC, UCUM = "http://loinc.org", "http://unitsofmeasure.org"


def resources(*records: Record) -> list[dict[str, Any]]:
    bundle = json.loads(bundle_bytes(records))
    return [entry["resource"] for entry in bundle["entry"]]


def readings(*records: Record) -> list[dict[str, Any]]:
    return [one for one in resources(*records) if "coding" in one.get("code", {})]


def named(text: str, *records: Record) -> list[dict[str, Any]]:
    return [one for one in resources(*records) if one.get("code", {}).get("text") == text]


@pytest.mark.parametrize("record", RECORDS, ids=lambda record: record.participant.id)
def test_is_valid(record: Record) -> None:
    bundle = Bundle.model_validate_json(bundle_bytes([record]))
    assert bundle.type == "collection"
    assert len(bundle.entry or ()) == len(resources(record)) > len(record.readings)


def test_validator_refuses_what_is_wrong() -> None:
    """Else the test above could not fail."""
    bundle = json.loads(bundle_bytes([everything()]))
    del bundle["entry"][-1]["resource"]["status"]
    with pytest.raises(ValueError, match="status"):
        Bundle.model_validate(bundle)


def test_nobody_is_a_valid_bundle_too() -> None:
    assert Bundle.model_validate_json(bundle_bytes([])).entry is None


def test_all_references_point_into_the_bundle_and_ids_are_used_once() -> None:
    bundle = json.loads(bundle_bytes(RECORDS[:4]))
    urls = [entry["fullUrl"] for entry in bundle["entry"]]
    assert len(set(urls)) == len(urls)
    assert set(references(bundle)) <= set(urls)


def references(part: Any) -> Iterator[str]:
    if isinstance(part, dict):
        if "reference" in part:
            yield part["reference"]
        for value in part.values():
            yield from references(value)
    elif isinstance(part, list):
        for value in part:
            yield from references(value)


@pytest.mark.parametrize(
    ("unit", "code", "value"), [(Unit.MG_DL, "41653-7", 118), (Unit.MMOL_L, "14743-9", 6.5)]
)
def test_a_reading_has_the_code_of_its_unit(unit: Unit, code: str, value: float) -> None:
    """LOINC: 41653-7 is mass, 14743-9 moles per volume in capillary blood by glucometer."""
    first = readings(everything(unit=unit))[0]
    assert first["code"]["coding"][0]["system"] == LOINC
    assert first["code"]["coding"][0]["code"] == code
    assert first["valueQuantity"] == {
        "value": value, "unit": unit.value, "system": UCUM, "code": unit.value
    }  # fmt: skip
    assert first["effectiveDateTime"] == "2026-03-02T12:30:00+03:00"
    assert datetime.fromisoformat(first["effectiveDateTime"]).utcoffset() is not None


def test_every_reading_is_there_once() -> None:
    assert [len(readings(record)) for record in RECORDS] == [
        len(record.readings) for record in RECORDS
    ]


@pytest.mark.parametrize(
    ("value", "unit", "comparator", "end"),
    [
        ("HI", Unit.MG_DL, ">", 600),
        ("LO", Unit.MG_DL, "<", 20),
        ("HI", Unit.MMOL_L, ">", 33.3),
        ("LO", Unit.MMOL_L, "<", 1.1),
    ],
)
def test_off_the_scale_is_a_comparator(value: str, unit: Unit, comparator: str, end: float) -> None:
    [one] = readings(Diary(who=somebody(unit=unit)).reading(0, "07:00", value).record())
    assert one["valueQuantity"]["comparator"] == comparator
    assert one["valueQuantity"]["value"] == end


@pytest.mark.parametrize(
    ("moment", "meal", "code"),
    [
        (Moment.FASTING, None, "WAKE"),
        (Moment.BEDTIME, None, "HS"),
        (Moment.BEFORE_MEAL, None, "AC"),
        (Moment.AFTER_MEAL, None, "PC"),
        (Moment.BEFORE_MEAL, MealName.BREAKFAST, "ACM"),
        (Moment.BEFORE_MEAL, MealName.LUNCH, "ACD"),
        (Moment.AFTER_MEAL, MealName.DINNER, "PCV"),
        (Moment.AFTER_MEAL, MealName.SNACK, "PC"),
    ],
)
def test_moments_are_event_timing(moment: Moment, meal: MealName | None, code: str) -> None:
    """HL7 v3-TimingEvent; M, D and V are the Latin morning, day and evening meals."""
    diary = Diary()
    if meal is None:
        diary.reading(0, "07:00", 118, moment)
    else:
        diary.meal(0, "12:30", "rice", 118, 154, name=meal)
    place = 1 if meal and moment is Moment.AFTER_MEAL else 0
    [part] = readings(diary.record())[place]["component"]
    [coding] = part["valueCodeableConcept"]["coding"]
    assert coding["code"] == code
    assert coding["system"] == "http://terminology.hl7.org/CodeSystem/v3-TimingEvent"


def test_an_unstated_moment_claims_nothing() -> None:
    [one] = readings(Diary().reading(0, "07:00", 118).record())
    assert "component" not in one


@pytest.mark.parametrize("record", RECORDS, ids=lambda record: record.participant.id)
def test_pairs_have_their_readings_as_members_and_rises_come_from_them(record: Record) -> None:
    groups, rises = named(PAIR, record), named(RISE, record)
    assert [len(one.get("hasMember", [])) for one in groups] == [
        (pair.before is not None) + (pair.after is not None) for pair in pairs(record)
    ]
    assert len(rises) == sum(pair.rise is not None for pair in pairs(record)) > 0
    assert all(len(one["derivedFrom"]) == 2 for one in rises)
    assert [one["derivedFrom"] for one in rises] == [
        one["hasMember"]
        for one, pair in zip(groups, pairs(record), strict=True)
        if pair.rise is not None
    ]
    assert len(named(CHANGE, record)) == sum(one.change is not None for one in effects(record))


def test_a_rise_has_its_value_in_the_unit_as_typed() -> None:
    assert named(RISE, everything())[0]["valueQuantity"]["value"] == 36
    [rise, *_] = named(RISE, everything(unit=Unit.MMOL_L))
    assert rise["valueQuantity"]["value"] == 2.0
    assert rise["valueQuantity"]["code"] == "mmol/L"


@pytest.mark.parametrize(
    ("before", "after", "codes"),
    [
        (118, 154, ["N", "N"]),
        (131, 180, ["H", "H"]),
        (78, 179, [None, "N"]),
        (69, 70, ["L", "N"]),
        (53, 300, ["LL", "HH"]),
        (80, "HI", ["N", "HH"]),
        ("LO", 130, ["LL", "N"]),
    ],
)
def test_interpretation_is_by_the_goal_of_the_moment(
    before: float, after: float, codes: list[str | None]
) -> None:
    """Limits: ADA Standards of Care 2026, section 6 (54, 70, 80 to 130, below 180); 300: section
    13. The mapping to v3-ObservationInterpretation is the project's own."""
    found = readings(Diary().meal(0, "12:30", "rice", before, after).record())
    given = [one["interpretation"][0]["coding"][0]["code"] if "interpretation" in one else None
             for one in found]  # fmt: skip
    assert given == codes


def test_a_doubtful_reading_says_so_and_is_not_interpreted() -> None:
    one = next(one for one in readings(everything()) if one["valueQuantity"]["value"] == 310)
    assert "interpretation" not in one
    assert "Overruled" in one["note"][0]["text"]


def test_in_pregnancy_no_goal_stands_and_nothing_is_within_one() -> None:
    found = resources(everything(pregnant=True))
    assert not [one for one in found if one["resourceType"] == "Goal"]
    assert not [one for one in found if "referenceRange" in one]


def test_goals_stand_in_the_persons_unit() -> None:
    before, after = (
        one["target"][0]["detailRange"]
        for one in resources(everything(unit=Unit.MMOL_L))
        if one["resourceType"] == "Goal"
    )
    assert (before["low"]["value"], before["high"]["value"]) == (4.4, 7.2)
    assert after["high"]["value"] == 10.0


def test_a_name_is_there_only_if_one_was_given() -> None:
    anonymous, ana = (resources(everything(**known))[0] for known in ({}, {"name": "Ana"}))
    assert "name" not in anonymous
    assert anonymous["identifier"] == [{"value": "p1"}]
    assert ana["name"] == [{"text": "Ana"}]
