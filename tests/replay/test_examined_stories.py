"""Lines of a story that look whole but cannot be meant: refused with their number."""

import json
from typing import Any

import pytest

from bot.replay.story import BadStory, read_story

AT = "2026-03-02T07:00:00+02:00"
ANA: dict[str, Any] = {"id": "ana", "unit": "mg/dL", "zone": "Africa/Johannesburg"}


def _read(*lines: dict[str, Any]) -> None:
    read_story(json.dumps(line) for line in lines)


@pytest.mark.parametrize(
    "settings",
    [
        {"language": 5},
        {"emergency_number": 112},
        {"digest_at": "18:00+02:00"},
        {"quiet": ["22:30Z", "06:30"]},
        {"goals": {"after_high": -1}},
        {"goals": {"after_high": float("nan")}},
    ],
)
def test_a_setting_that_cannot_be_meant_is_refused(settings: dict[str, Any]) -> None:
    with pytest.raises(BadStory, match="line 1"):
        _read({"at": AT, "enrol": {**ANA, **settings}})


def test_nobody_edits_what_somebody_else_wrote() -> None:
    with pytest.raises(BadStory, match="line 4: `edits`"):
        _read(
            {"at": AT, "enrol": ANA},
            {"at": AT, "enrol": {**ANA, "id": "ben"}},
            {"at": AT, "from": "ana", "text": "118 before", "id": "m1"},
            {"at": AT, "from": "ben", "text": "171 after", "edits": "m1"},
        )


@pytest.mark.parametrize("answers", [0, -1])
def test_lines_of_what_was_sent_are_counted_from_one(answers: int) -> None:
    with pytest.raises(BadStory, match="line 2: `answers`"):
        _read(
            {"at": AT, "enrol": ANA}, {"at": AT, "from": "ana", "text": "118", "answers": answers}
        )
