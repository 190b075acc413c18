"""One intent in many wordings, and the near misses that must not be taken for it.

`is summary`: the message is that request, and nothing else; `is low`: that level of symptom is in
it; `not stop`: that request or kind of entry is not in it; `no symptom`: no symptom is in it. The
wordings are our own, no source; they were written beside the reader and tell whether it slips
back, not how well it does on messages of others.
"""

from collections import defaultdict
from datetime import datetime
from pathlib import Path

import pytest

from bot.entries import Asked, Request, Skip, Suggests, Symptom, Understood, What
from bot.parser import read
from bot.units import Unit

AT = datetime.fromisoformat("2026-03-02T14:31:00+02:00")
LEVELS = {level.value for level in Suggests}
Saying = tuple[str, Asked | None, str]


def _sayings() -> dict[str, list[Saying]]:
    found: dict[str, list[Saying]] = defaultdict(list)
    lines = Path(__file__).with_name("said_in_many_ways.txt").read_text(encoding="utf-8")
    for line in lines.splitlines():
        if not line.startswith("#"):
            meant, language, asked, text = line.split("|", 3)
            found[meant].append((language, Asked(asked) if asked else None, text))
    return found


SAYINGS = _sayings()


def _kinds(understood: Understood) -> list[str]:
    """What the entries are: the request's name, the level of a symptom, `skip` or `other`."""
    kinds = []
    for entry in understood.entries:
        match entry:
            case Request(what=what):
                kinds.append(what.value)
            case Symptom(suggests=suggests):
                kinds.append(suggests.value)
            case Skip():
                kinds.append("skip")
            case _:
                kinds.append("other")
    return kinds


def _holds(meant: str, kinds: list[str]) -> bool:
    match meant.split():
        case ["is", level] if level in LEVELS:
            return level in kinds
        case ["is", what]:
            return kinds == [what]
        case ["not", what]:
            return what not in kinds
        case _:
            return LEVELS.isdisjoint(kinds)


@pytest.mark.parametrize("meant", SAYINGS)
def test_every_wording_is_understood(meant: str) -> None:
    wrong = [
        text
        for language, asked, text in SAYINGS[meant]
        if not _holds(
            meant, _kinds(read(text, at=AT, unit=Unit.MG_DL, language=language, asked=asked))
        )
    ]
    assert not wrong


def test_every_request_is_among_them() -> None:
    assert {what.value for what in What} <= {meant.removeprefix("is ") for meant in SAYINGS}
