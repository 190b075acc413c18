"""The words of the reader: data, and the one small notation in which they are written.

Rules of the room: nothing here reads a message. A module holds blocks of text, one group of
phrases a line; `phrases` unfolds a block. Whoever adds a word adds it to a block and to
nothing else. Which word wins where two overlap is the grammar's to decide: the longest does.

The forms are lower case and without accents (the grammar folds both). A phrase written with
an apostrophe or a hyphen stands in the list with it and without it.
"""

import re
from collections.abc import Iterable, Iterator, Mapping

from bot.entries import FoodKind

_REMARK = re.compile(r"#.*")
_TOKEN = re.compile(r"[{}()]|\s*[|,\n][|,\s]*|[^{}()|,\n]+")


def phrases(block: str) -> tuple[str, ...]:
    """Unfold a block of words into phrases, in the order written, each once.

    A comma, a `|` and a line end all mean "or"; `{a|b} c` is `a c` and `b c`, what stands in
    `( )` may be left out, and brackets may stand in brackets: `{yoghurt|yogurt}(s)` is four
    phrases. `#` opens a remark.
    """
    written = _unfold(iter(_TOKEN.findall(_REMARK.sub("", block))))
    return tuple(dict.fromkeys(form for phrase in written for form in _spellings(phrase)))


def gathered(blocks: Iterable[Mapping[FoodKind, str]]) -> dict[FoodKind, tuple[str, ...]]:
    """Join the blocks of several kitchens, kind by kind."""
    whole: dict[FoodKind, list[str]] = {}
    for kitchen in blocks:
        for kind, block in kitchen.items():
            whole.setdefault(kind, []).append(block)
    return {kind: phrases("\n".join(parts)) for kind, parts in whole.items()}


def _unfold(tokens: Iterator[str]) -> list[str]:
    """Read alternatives up to the bracket that closes them, or to the end."""
    done: list[str] = []
    current = [""]
    for part in tokens:
        if part in "{(":
            inner = _unfold(tokens)
            endings = inner if part == "{" else ["", *inner]
            current = [start + ending for start in current for ending in endings]
        elif part in "})":
            break
        elif part.strip(" \t|,\n"):
            current = [start + part for start in current]
        elif part.strip(" \t"):
            done, current = done + current, [""]
        else:
            current = [start + " " for start in current]
    return [form for form in done + current if form.strip()]


def _spellings(written: str) -> Iterator[str]:
    form = " ".join(written.split())
    yield form
    yield form.replace("'", "").replace("-", " ")
