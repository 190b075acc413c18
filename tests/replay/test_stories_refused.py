"""A story that cannot be played is refused with the line's number, and nothing is written."""

import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from bot.replay.story import BadStory, read_story

ENROL: dict[str, Any] = {
    "at": "2026-03-02T07:00:00+02:00",
    "enrol": {"id": "ana", "unit": "mg/dL", "zone": "Africa/Johannesburg"},
}
WRITE: dict[str, Any] = {"at": "2026-03-02T12:00:00+02:00", "from": "ana", "text": "118, rice"}
PASS: dict[str, Any] = {"at": "2026-03-02T23:00:00+02:00", "pass": True}


def changed(line: dict[str, Any], **fields: Any) -> dict[str, Any]:
    return {**line, **fields}


def enrolled(**fields: Any) -> dict[str, Any]:
    return changed(ENROL, enrol={**ENROL["enrol"], **fields})


REFUSED = {
    "an unknown field": ([ENROL, changed(WRITE, mood="fine")], 2, "mood"),
    "an unknown field of a participant": ([enrolled(age=60)], 1, "age"),
    "a missing text": ([ENROL, {"at": WRITE["at"], "from": "ana"}], 2, "text"),
    "a missing time": ([ENROL, {"from": "ana", "text": "118"}], 2, "at"),
    "a missing unit": ([changed(ENROL, enrol={"id": "ana", "zone": "UTC"})], 1, "unit"),
    "a time out of order": ([ENROL, PASS, WRITE], 3, "earlier"),
    "a time without offset": ([ENROL, changed(WRITE, at="2026-03-02T12:00:00")], 2, "offset"),
    "an unknown zone": ([enrolled(zone="Africa/Nowhere")], 1, "zone"),
    "an unknown unit": ([enrolled(unit="mg")], 1, "unit"),
    "an unknown participant": ([ENROL, changed(WRITE, **{"from": "bo"})], 2, "bo"),
    "an edit of nothing": ([ENROL, changed(WRITE, edits="m9")], 2, "m9"),
    "a goal that is no number": ([enrolled(goals={"after_high": "low"})], 1, "after_high"),
    "a quiet time without an end": ([enrolled(quiet=["22:30"])], 1, "quiet"),
    "a list": ([[1, 2]], 1, "object"),
}


@pytest.mark.parametrize("name", REFUSED)
def test_refused(name: str) -> None:
    lines, number, what = REFUSED[name]
    with pytest.raises(BadStory, match=what) as refusal:
        read_story(json.dumps(line) for line in lines)
    assert refusal.value.line == number


def test_the_command_says_which_line_writes_nothing_and_ends_with_1(tmp_path: Path) -> None:
    story = tmp_path / "story.jsonl"
    story.write_text(json.dumps(ENROL) + "\nnot json\n", encoding="utf-8")
    out = tmp_path / "out"
    ended = subprocess.run(
        [sys.executable, "-m", "bot", "replay", str(story), "--out", str(out)],
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )
    assert ended.returncode == 1
    assert "line 2" in ended.stderr
    assert len(ended.stderr.strip().splitlines()) == 1
    assert not out.exists()
