"""A comma, a semicolon, three dots or a dash between two things: the message means the same.

Every row of the corpora with a comma is read with another mark in its place; not where it parts two
numbers, which a dash may join. Common practice, no source.
"""

import re

import pytest

from tests.parser.test_courtesies import ROWS, understood

_BETWEEN = re.compile(r"(?<!\d), |, (?!\d)")
_MARKS = re.compile(r"[^\w/]+|\band\b")
_TYPED = {"text", "reason"}
ROWS_WITH_COMMAS = [row for row in ROWS if _BETWEEN.search(row["text"])]


def _bare(answer: tuple) -> tuple:
    """What is understood, with the marks in its texts left out."""
    lines, ask = answer
    return [
        {
            field: _MARKS.sub(" ", value).strip()
            if field in {"text", "reason"} and value
            else value
            for field, value in line.items()
        }
        for line in lines
    ], ask


@pytest.mark.parametrize("mark", ["; ", " - ", "... "])
def test_another_mark_means_the_same(mark: str) -> None:
    other = []
    for row in ROWS_WITH_COMMAS:
        marked = _BETWEEN.sub(mark, row["text"])
        if _bare(understood(row, marked)) != _bare(understood(row, row["text"])):
            other.append(marked)
    assert other == []
