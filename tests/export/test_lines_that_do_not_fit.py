"""Lines mended by hand and mended wrongly: each is refused by its number, none reaches a record."""

import json
from typing import Any

import pytest

from bot.export.back import BadExport, restored
from bot.export.jsonl import export_lines
from tests.export.people import everything

LINES = [line for line in export_lines(everything()) if line["type"] not in ("pair",)]
PERSON = {name: value for name, value in LINES[0].items() if name != "kept"}


def line_of(type_: str) -> dict[str, Any]:
    """The first line of this type."""
    return next(dict(line) for line in LINES if line["type"] == type_)


def taken(*lines: dict[str, Any]) -> int:
    """How many people the lines give."""
    return len(restored(json.dumps(line) for line in lines))


@pytest.mark.parametrize(
    ("type_", "field", "value"),
    [
        ("reading", "value", "118"),
        ("reading", "value", True),
        ("reading", "value", float("nan")),
        ("reading", "value", float("inf")),
        ("reading", "value", 9999),
        ("reading", "taken_at", "2026-03-02T12:30:00"),
        ("reading", "taken_at", None),
        ("meal", "text", None),
        ("meal", "text", ["rice"]),
        ("meal", "started_at", None),
        ("activity", "minutes", "20"),
        ("activity", "minutes", False),
        ("treatment", "text", 15),
        ("symptom", "text", {}),
        ("skip", "reason", 3),
        ("strips", "left", None),
        ("answer", "about", 1),
        ("answer", "how", None),
    ],
)
def test_a_value_of_the_wrong_kind_is_refused_by_its_line(
    type_: str, field: str, value: Any
) -> None:
    assert taken(PERSON, line_of(type_)) == 1
    with pytest.raises(BadExport, match=r"^line 2: "):
        taken(PERSON, line_of(type_) | {field: value})


@pytest.mark.parametrize("field", ["week_ends", "rhythm", "zone"])
def test_a_setting_that_would_stop_every_turn_is_refused(field: str) -> None:
    with pytest.raises(BadExport, match=f"line 1: unknown `{field}`"):
        taken(PERSON | {field: "someday"})


@pytest.mark.parametrize(
    ("unit", "goal", "why"),
    [
        ("mg/dL", {"before_low": 60}, "`before_low` must be from 70 to 100 mg/dL"),
        ("mg/dL", {"before_low": -80}, "`before_low` must be from 70 to 100 mg/dL"),
        ("mg/dL", {"before_high": 181}, "`before_high` must be from 95 to 180 mg/dL"),
        ("mg/dL", {"after_high": 260}, "`after_high` must be from 120 to 200 mg/dL"),
        ("mmol/L", {"after_high": 212}, "`after_high` must be from 120 to 200 mg/dL"),
        ("mg/dL", {"before_low": 100, "before_high": 95}, "goals must rise"),
        ("mg/dL", {"before_low": 72, "limits": {"low": 78}}, "below the limit of lows"),
    ],
)
def test_goals_are_held_to_the_bounds_of_goals_set_in_chat(
    unit: str, goal: dict[str, Any], why: str
) -> None:
    person = PERSON | {"unit": unit}
    assert taken(person, line_of("goal")) == 1
    with pytest.raises(BadExport, match=r"^line 2: goals out of bounds: ") as refused:
        taken(person, line_of("goal") | goal)
    assert why in str(refused.value)
    assert "260" not in str(refused.value), "a wrong value is not repeated"


def test_goals_at_the_bounds_come_in_in_either_unit() -> None:
    published = {"before_low": 100, "before_high": 180, "after_high": 200}
    assert taken(PERSON, line_of("goal") | published) == 1
    in_mmol = {"before_low": 90.078, "before_high": 180.156, "after_high": 199.97}
    assert taken(PERSON | {"unit": "mmol/L"}, line_of("goal") | in_mmol) == 1
