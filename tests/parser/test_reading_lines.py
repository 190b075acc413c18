"""`python -m bot read`: one answer a line, in order; one clear word about a line it cannot take."""

import argparse
import io
import json
import sys

import pytest

from bot.commands.read import answer_lines, run
from bot.mendable import Mendable

GOOD = {"id": "a1", "text": "142 before", "at": "2026-03-02T12:31:00+02:00", "unit": "mg/dL"}


def answers(*lines: str) -> list[dict]:
    out = io.StringIO()
    answer_lines(lines, out)
    return [json.loads(line) for line in out.getvalue().splitlines()]


def test_answers_come_in_the_order_of_the_messages() -> None:
    given = [json.dumps({**GOOD, "id": name}) for name in ("z", "a", "m")]
    assert [answer["id"] for answer in answers(*given)] == ["z", "a", "m"]


def test_empty_lines_are_no_messages() -> None:
    assert len(answers("\n", json.dumps(GOOD), "  \n")) == 1


def test_letters_are_printed_as_they_are() -> None:
    out = io.StringIO()
    answer_lines([json.dumps({**GOOD, "text": "jalapeño con arroz"})], out)
    assert "jalapeño" in out.getvalue()


@pytest.mark.parametrize("missing", ["id", "text", "at", "unit"])
def test_a_missing_field_is_named(missing: str) -> None:
    line = json.dumps({name: value for name, value in GOOD.items() if name != missing})
    with pytest.raises(Mendable, match=f"line 1: `{missing}` is missing"):
        answers(line)


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"unit": "mg"}, "`unit` must be one of"),
        ({"asked": "supper"}, "`asked` must be one of"),
        ({"by": "dog"}, "`by` must be one of"),
        ({"at": "yesterday"}, "no ISO 8601 time"),
        ({"at": "2026-03-02T12:31:00"}, "no offset"),
        ({"text": 142}, "`text` must be a string"),
        ({"colour": "red"}, "unknown field `colour`"),
    ],
)
def test_a_wrong_field_is_named(change: dict, says: str) -> None:
    with pytest.raises(Mendable, match=says):
        answers(json.dumps({**GOOD, **change}))


@pytest.mark.parametrize("line", ["{", "[]", "null", '"142"'])
def test_what_is_no_object_is_refused(line: str) -> None:
    with pytest.raises(Mendable, match="line 1: not"):
        answers(line)


def test_what_came_before_a_bad_line_is_answered() -> None:
    out = io.StringIO()
    with pytest.raises(Mendable, match="line 2"):
        answer_lines([json.dumps(GOOD), "{"], out)
    assert json.loads(out.getvalue())["id"] == "a1"


def test_the_command_ends_well(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "stdin", io.StringIO(json.dumps(GOOD)))
    assert run(argparse.Namespace()) == 0
    assert json.loads(capsys.readouterr().out)["entries"][0]["value"] == 142


@pytest.mark.parametrize(
    "piece", ["rice and beans, ", "walked 20 min ", "not dizzy ", "[({", "at 7 "]
)
def test_the_work_of_reading_keeps_step_with_the_length(piece: str) -> None:
    """Calls made for four times the text: counted, so that a busy machine is no matter."""
    short, long = (piece * 4096)[:1024], (piece * 4096)[:4096]
    answers(json.dumps({**GOOD, "text": long}))  # the word trees grow at first use
    assert calls(long) <= 5 * calls(short)


def calls(text: str) -> int:
    line, made = json.dumps({**GOOD, "text": text}), 0

    def count(*_: object) -> None:
        nonlocal made
        made += 1

    sys.setprofile(count)
    try:
        answer_lines([line], io.StringIO())
    finally:
        sys.setprofile(None)
    return made
