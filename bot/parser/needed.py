"""Which words must stand in a message for a pattern to be found there?

Nine patterns in ten find nothing. A pattern that begins and ends at borders of words cannot
match where none of certain words stands, and that is told by one look at the words of a message,
several times sooner than by a search along its line. The words are read off the pattern itself;
where they cannot be (`\\d+ [a-z]+`), the pattern is simply searched for.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass, field
from itertools import pairwise

#: More ways to write a stretch of a pattern are not written out.
_MOST = 400

_PART = re.compile(
    r"""(?P<words>\(\?:[\w' |]+\))
      | (?P<look>\(\?<?[=!]) | (?P<opens>\((?:\?:|\?P<\w+>)?) | (?P<shuts>\)) | (?P<or>\|)
      | (?P<few>\[[^\]\\^-]{1,12}\]) | (?P<times>[?*+]|\{\d*,?\d*\})\??
      | (?P<any>\[\^?\]?(?:\\.|[^\]\\])*\]|\\[dDsSwW]|\.|\(\?P=\w+\))
      | \\(?P<escaped>[^a-zA-Z0-9]) | (?P<edge>[$^]|\\[bBAZ])
      | (?P<plain>[^\\()\[\]|?*+{}.$^]+(?![?*+{])|.)""",
    re.VERBOSE | re.DOTALL,
)


@dataclass(slots=True)
class _Node:
    """A stretch of a pattern: all ways to write it, or what is known where they are too many."""

    ways: frozenset[str] | None = None
    choices: list[list["_Node"]] = field(default_factory=list)
    may_lack: bool = False
    repeats: bool = False
    opens_apart: bool = False  # all that it matches begins with a space, or is nothing
    shuts_apart: bool = False  # the same at its end


def words_needed(source: str) -> frozenset[str] | None:
    """One of these words stands wherever `source` is found between borders of words; None where
    no such words can be named."""
    needed = _of_choices(_choices(_parts(source)), left=True, right=True)
    return None if needed is None else _NAMED.setdefault(needed, needed)


#: Each word once, and each set: half of the patterns are those of the other language over again.
_WORDS: dict[str, str] = {}
_NAMED: dict[frozenset[str], frozenset[str]] = {}


def _parts(source: str) -> Iterator[tuple[str, str]]:
    for match in _PART.finditer(source):
        kind = match.lastgroup or "plain"
        yield kind, match[kind]


def _choices(parts: Iterator[tuple[str, str]]) -> list[list[_Node]]:
    """The alternatives up to the bracket that shuts them, each as its stretches."""
    choices: list[list[_Node]] = [[]]
    for kind, text in parts:
        row = choices[-1]
        if kind == "shuts":
            break
        if kind == "or":
            choices.append([])
        elif kind == "words":  # most brackets: plain words, one or the other
            ways = frozenset(text[3:-1].split("|"))
            few = len(ways) <= _MOST
            row.append(_node(ways) if few else _group([[_node(frozenset({way}))] for way in ways]))
        elif kind == "look":
            _choices(parts)
            row.append(_node(frozenset({""})))  # it takes no room; what it asks for is passed over
        elif kind == "opens":
            row.append(_group(_choices(parts)))
        elif kind == "edge":
            row.append(_node(frozenset({""})))
        elif kind == "times":
            row[-1] = _repeated(row[-1], text)
        elif kind == "few":
            row.append(_node(frozenset(text[1:-1])))
        elif kind == "any":
            row.append(_Node())
        else:
            row.append(_node(frozenset({text})))
    return choices


def _node(ways: frozenset[str]) -> _Node:
    if len(ways) == 1:
        (way,) = ways
        return _Node(
            ways=ways,
            may_lack=not way,
            opens_apart=way[:1] in {"", " "},
            shuts_apart=way[-1:] in {"", " "},
        )
    return _Node(
        ways=ways,
        may_lack="" in ways,
        opens_apart=all(way.startswith(" ") for way in ways if way),
        shuts_apart=all(way.endswith(" ") for way in ways if way),
    )


def _repeated(node: _Node, times: str) -> _Node:
    """The stretch as often as told: nought or one ways are written out, more are not."""
    lacks = times in {"?", "*"} or times.startswith(("{0", "{,"))
    if times == "?" and node.ways is not None:
        return _node(node.ways | {""})
    return _Node(
        choices=[[node]] if not lacks else [],
        may_lack=lacks or node.may_lack,
        repeats=True,
        opens_apart=node.opens_apart,
        shuts_apart=node.shuts_apart,
    )


def _group(choices: list[list[_Node]]) -> _Node:
    """A bracket as one stretch."""
    ways: set[str] | None = set()
    for row in choices:
        written = _written(row)
        if ways is None or written is None or len(ways) + len(written) > _MOST:
            ways = None
            break
        ways |= written
    if ways is not None:
        return _node(frozenset(ways))
    return _Node(
        choices=choices,
        may_lack=any(all(node.may_lack for node in row) for row in choices),
        opens_apart=all(_apart(row, "opens_apart") for row in choices),
        shuts_apart=all(_apart(row[::-1], "shuts_apart") for row in choices),
    )


def _apart(row: list[_Node], end: str) -> bool:
    for node in row:
        if not getattr(node, end):
            return False
        if not node.may_lack:
            return True
    return True


def _written(row: list[_Node]) -> frozenset[str] | None:
    """All ways to write some stretches one behind the other, if they are not too many."""
    ways = frozenset({""})
    for node in row:
        if node.ways is None or len(ways) * len(node.ways) > _MOST:
            return None
        if len(node.ways) == 1:
            (only,) = node.ways
            ways = frozenset(way + only for way in ways)
        else:
            ways = frozenset(way + more for way in ways for more in node.ways)
    return ways


def _of_choices(choices: list[list[_Node]], *, left: bool, right: bool) -> frozenset[str] | None:
    needed: set[str] = set()
    for row in choices:
        words = _of_row(row, left=left, right=right)
        if words is None:
            return None
        needed |= words
    return frozenset(needed)


def _of_row(row: list[_Node], *, left: bool, right: bool) -> frozenset[str] | None:
    """The words needed by the stretch of the row that needs the fewest and rarest. `left` and
    `right` tell whether the row begins and ends at a border of words."""
    before, after = [left], [right]
    for node in row:
        before.append(node.shuts_apart and (before[-1] or not node.may_lack))
    for node in reversed(row):
        after.append(node.opens_apart and (after[-1] or not node.may_lack))
    after.reverse()
    offers = []
    for start, end in pairwise(_cuts(row)):
        node = row[start]
        if node.choices and not node.may_lack:
            shut = after[end] and (node.opens_apart or not node.repeats)  # of the first time
            led = start and not node.repeats and not before[start] and row[start - 1].ways
            choices = [[row[start - 1], *each] for each in node.choices] if led else node.choices
            left = before[start - 1] if led else before[start]
            offers.append(_of_choices(choices, left=left, right=shut))
        elif (written := _written(row[start:end])) is not None:
            offers.append(_whole_words(written, left=before[start], right=after[end]))
    named = [words for words in offers if words]
    return min(named, key=_frequent) if named else None


def _cuts(row: list[_Node]) -> list[int]:
    """Where the row is cut into stretches that can be written out, and others one by one."""
    cuts, ways = {0, len(row)}, 1
    for index, node in enumerate(row):
        if node.ways is None:
            cuts |= {index, index + 1}
            ways = 1
        elif ways * len(node.ways) > _MOST:
            cuts.add(index)
            ways = len(node.ways)
        else:
            ways *= len(node.ways)
    return sorted(cuts)


def _whole_words(written: frozenset[str], *, left: bool, right: bool) -> frozenset[str] | None:
    needed = set()
    for way in written:
        words = f"{' ' * left}{way}{' ' * right}".split(" ")[1:-1]
        longest = max(words, key=len, default="")
        if not longest:
            return None
        needed.add(_WORDS.setdefault(longest, longest))
    return frozenset(needed)


def _frequent(words: frozenset[str]) -> float:
    """How often one of the words may stand in a message: the shorter, the oftener."""
    return sum(1 / len(word) ** 3 for word in words)
