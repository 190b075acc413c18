"""What the bot says to people is written in `bot/words`, and nowhere else.

A check of source text cannot know what is said to whom. It looks for whole sentences: a string
with a capital at its start, four words or more and a full stop or question mark at its end, in
the rooms that take part in a turn. Docstrings, errors and log lines do not count.
"""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOMS = ("turns", "planning", "educator", "caution", "programme", "glucose", "record", "parser")
SENTENCE = re.compile(r"^[A-ZÁÉÍÓÚ¿].*\s.*\s.*\s.*[.?:]$", re.DOTALL)


def spoken(tree: ast.AST) -> Iterator[str]:
    """String constants of a module that stand neither in a docstring nor in a `raise`."""
    silent: set[int] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
            silent.add(id(node.value))
        if isinstance(node, ast.Raise):
            silent |= {id(inner) for inner in ast.walk(node)}
    for node in ast.walk(tree):
        if (
            isinstance(node, ast.Constant)
            and isinstance(node.value, str)
            and id(node) not in silent
        ):
            yield node.value


@pytest.mark.parametrize("room", ROOMS)
def test_no_sentence_outside_the_words(room: str, checkout: Path) -> None:
    found = [
        f"{path.name}: {text}"
        for path in sorted((checkout / "bot" / room).rglob("*.py"))
        for text in spoken(ast.parse(path.read_text(encoding="utf-8")))
        if SENTENCE.match(text)
    ]
    assert not found


def test_the_check_sees_a_sentence() -> None:
    planted = ast.parse(
        'def say():\n    """Not This One Here."""\n    return "You are doing fine."'
    )
    assert [text for text in spoken(planted) if SENTENCE.match(text)] == ["You are doing fine."]
