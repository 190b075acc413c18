"""The words of the reader: data, and the one small notation in which they are written.

Rules of the room: nothing here reads a message. A module holds blocks of text, one group of
phrases a line; `phrases` unfolds a block, a `Block` keeps a large one as it is written. Whoever
adds a word adds it to a block and to nothing else. Which word wins where two overlap is the
grammar's to decide: the longest does.

The forms are lower case and without accents (the grammar folds both). A phrase written with
an apostrophe or a hyphen stands in the list with it and without it.
"""

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from zlib import compress, decompress

from bot.entries import FoodKind

_REMARK = re.compile(r"#.*")
_PLAIN_OR = re.compile(r"[|,]")
_BRACKETS = frozenset("{}()")
_OR = frozenset("|,\n")
_PART = re.compile(r"[{}()]|\s*[|,\n][|,\s]*|[^{}()|,\n]+")


class Block:
    """Phrases as they are written: unfolded each time they are gone through, never kept so.

    A comma, a `|` and a line end all mean "or"; `{a|b} c` is `a c` and `b c`, what stands in
    `( )` may be left out, and brackets may stand in brackets: `{yoghurt|yogurt}(s)` is four
    phrases. `#` opens a remark.

    Blocks are gone through once or twice, when the lists are made, and stay for good: they are
    kept packed, which takes a third of the room.
    """

    __slots__ = ("_packed",)

    def __init__(self, written: str) -> None:
        self._packed = compress(written.encode(), 1)

    @property
    def written(self) -> str:
        """The text of the block."""
        return decompress(self._packed).decode()

    def __iter__(self) -> Iterator[str]:
        """The phrases in the order written; one that is written twice comes twice."""
        for group in self.groups():
            yield from unfolded(group)

    def groups(self) -> Iterator[list[str]]:
        """What stands between commas outside of brackets, each in parts: a bracket, an `or`, words."""
        group: list[str] = []
        depth = 0
        for line in _REMARK.sub("", self.written).split("\n"):
            if not depth and "{" not in line and "(" not in line:  # nine in ten
                yield from ([form] for each in _PLAIN_OR.split(line) if (form := each.strip()))
                continue
            for part in _PART.findall(line.lstrip() + "\n"):
                if part in _BRACKETS:
                    depth += 1 if part in "{(" else -1
                    group.append(part)
                elif depth or not is_or(part):
                    group.append(part)
                elif group:
                    yield group
                    group = []


def phrases(block: str) -> tuple[str, ...]:
    """Unfold a block of words into phrases, in the order written, each once."""
    return tuple(dict.fromkeys(Block(block)))


def packed(words: Iterable[str]) -> frozenset[str]:
    """A large set of words in as little room as there is: one that grows word by word may take four
    times as much, one that is made of a dictionary's keys never does."""
    return frozenset(dict.fromkeys(words))


def gathered(blocks: Iterable[Mapping[FoodKind, str]]) -> dict[FoodKind, Block]:
    """Join the blocks of several kitchens, kind by kind."""
    whole: dict[FoodKind, list[str]] = {}
    for kitchen in blocks:
        for kind, block in kitchen.items():
            whole.setdefault(kind, []).append(block)
    return {kind: Block("\n".join(parts)) for kind, parts in whole.items()}


def is_or(part: str) -> bool:
    """Whether a part of a block stands between two phrases."""
    return part[0] in _OR or part.lstrip(" \t")[:1] in _OR


def unfolded(group: Sequence[str]) -> Iterator[str]:
    """The phrases of a group of parts, in the order written."""
    if len(group) == 1:  # nine in ten
        yield from _spellings(group[0])
        return
    for form in _unfold(iter(group)):
        yield from _spellings(form)


def _unfold(parts: Iterator[str]) -> list[str]:
    """Read alternatives up to the bracket that closes them, or to the end."""
    done: list[str] = []
    current = [""]
    for part in parts:
        if part in "{(":
            inner = _unfold(parts)
            endings = inner if part == "{" else ["", *inner]
            current = [start + ending for start in current for ending in endings]
        elif part in "})":
            break
        elif is_or(part):
            done, current = done + current, [""]
        else:
            current = [start + part for start in current]
    return [form for form in done + current if form.strip()]


def _spellings(written: str) -> Iterator[str]:
    form = " ".join(written.split())
    yield form
    if "'" in form or "-" in form:
        yield form.replace("'", "").replace("-", " ")
