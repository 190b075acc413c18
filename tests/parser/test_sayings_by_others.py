"""What other hands expected of the reader, a message a line, written from its contract alone.

`sayings_by_others.txt` is written as `sayings_by_cause.txt` is (see its test), by people who saw
neither the reader nor its lists; all wordings are made up, no source. Compared as CORPUS.md says:
without regard to case and articles at the ends of what is kept as typed, a sign by its level, and
a reason by whether one holds the other. The floors lie below what is read today: what is left are
words too many or too few in the text of an activity.
"""

import re
from pathlib import Path

import pytest

from tests.parser.test_sayings_by_cause import in_short

#: The share of each part that has to be right (common practice, no source).
RIGHT = 0.97
_ARTICLE = re.compile(r"^(meal|did|mend) (?:a|an|the|some|un|una|el|la|los|las|my) ")


def parts() -> dict[str, list[list[str]]]:
    """The rows of each part: what was given, the text, what it means."""
    found: dict[str, list[list[str]]] = {}
    part = ""
    for line in Path(__file__).with_name("sayings_by_others.txt").read_text("utf-8").splitlines():
        if line.startswith("# "):
            part = line[2:]
        else:
            row = [field.strip() for field in line.split("|")]
            found.setdefault(part, []).append(row)
    return found


PARTS = parts()


def entries(meant: str) -> list[str]:
    """What a message comes to, as far as it is compared."""
    told = []
    for entry in meant.casefold().split(";"):
        words = _ARTICLE.sub(r"\1 ", " ".join(entry.split()).strip(".,! "))
        level, _, _ = words.partition(" ")
        told.append(level if level in {"low", "high", "emergency"} and "_" not in words else words)
    return told


def alike(got: str, meant: str) -> bool:
    """Whether both are the same, a skip with a longer or shorter reason too."""
    one, other = entries(got), entries(meant)
    return len(one) == len(other) and all(
        a == b or (a.startswith("skip") and b.startswith("skip") and (a in b or b in a))
        for a, b in zip(one, other, strict=True)
    )


@pytest.mark.parametrize("part", PARTS)
def test_nearly_all_is_read_as_others_meant_it(part: str) -> None:
    rows = PARTS[part]
    wrong = [text for given, text, meant in rows if not alike(in_short(text, given), meant)]
    assert len(wrong) <= (1 - RIGHT) * len(rows), wrong


@pytest.mark.parametrize("part", PARTS)
def test_no_reading_is_made_up_and_no_sign_missed(part: str) -> None:
    reading = re.compile(r"(?:\d[\d.]*(?: mmol)?|high|low) [a-z]+_?[a-z]+")
    for given, text, meant in PARTS[part]:
        got = in_short(text, given)
        made_up = {e for e in entries(got) if reading.fullmatch(e)} - set(entries(meant))
        missed = {e for e in entries(meant) if e in {"low", "high", "emergency"}} - set(
            entries(got)
        )
        assert not made_up, (text, got)
        assert not missed, (text, got)
