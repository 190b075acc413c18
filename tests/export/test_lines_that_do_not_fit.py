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
