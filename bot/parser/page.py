"""The message as tokens on one line, and which of them already have a meaning.

`line` is the tokens in their plain form with one space between, so that a pattern never has to
think of spacing, case or accents. A claimed token is blotted out of the line: no later finder
can see it. Every span is a pair of token indices, [start, end).
"""

import re
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass

BLOT = "\x00"


@dataclass(frozen=True, slots=True)
class Token:
    """One token: its place in the text as shown, and its plain form on the line."""

    start: int
    end: int
    word: str


@dataclass(frozen=True, slots=True)
class Span:
    """Some neighbouring tokens and what a pattern matched there."""

    start: int
    end: int
    match: re.Match[str]

    def __getitem__(self, group: str) -> str | None:
        found: str | None = self.match[group]
        return found


_WITHOUT_END = re.compile(r"(?<!\\)\)([*+])")
#: So often at most a group of words repeats.
_REPEATS = {"*": "){0,9}", "+": "){1,9}"}


def pattern(source: str) -> re.Pattern[str]:
    """Compile a pattern that begins and ends at the borders of tokens. Groups repeat nine times
    at most: from each word of `a a a a …` to its end would take time by the square of its length.
    """
    bounded = _WITHOUT_END.sub(lambda repeat: _REPEATS[repeat[1]], source)
    return re.compile(rf"(?<= )(?:{bounded})(?= )")


class Page:
    """One message under the finders' hands."""

    __slots__ = ("_borders", "_line", "_taken", "seen", "shown", "tokens")

    def __init__(self, shown: str, tokens: list[Token]) -> None:
        self.shown = shown
        self.tokens = tokens
        self._taken = bytearray(len(tokens))
        self._line: str | None = None
        self.seen: dict[tuple[int, int, str], object] = {}  # kept by finders until a claim
        self._borders: tuple[dict[int, int], dict[int, int]] | None = None

    def afresh(self) -> "Page":
        """The same message, with nothing claimed."""
        return Page(self.shown, self.tokens)

    def _bordering(self) -> tuple[dict[int, int], dict[int, int]]:
        """Where tokens begin and end on the line; most pages are never asked."""
        if self._borders is None:
            starts: dict[int, int] = {}
            ends: dict[int, int] = {}
            place = 1
            for index, token in enumerate(self.tokens):
                starts[place] = index
                place += len(token.word)
                ends[place] = index + 1
                place += 1
            self._borders = starts, ends
        return self._borders

    @property
    def line(self) -> str:
        """The tokens not yet claimed, framed by spaces."""
        if self._line is None:
            taken = self._taken
            words = (
                BLOT * len(token.word) if taken[index] else token.word
                for index, token in enumerate(self.tokens)
            )
            self._line = f" {' '.join(words)} "
        return self._line

    def find(self, sought: re.Pattern[str]) -> list[Span]:
        """Give every match among the unclaimed tokens, left to right."""
        line = self._line or self.line
        # Nine patterns in ten find nothing, and a search tells so far sooner than a walk.
        if sought.search(line) is None:
            return []
        starts, ends = self._bordering()
        found = []
        for match in sought.finditer(line):
            start, end = starts.get(match.start()), ends.get(match.end())
            if start is not None and end is not None:
                found.append(Span(start, end, match))
        return found

    def first(self, sought: re.Pattern[str]) -> Span | None:
        """Give the first match among the unclaimed tokens."""
        return next(iter(self.find(sought)), None)

    def claim(self, start: int, end: int) -> None:
        """Blot tokens out."""
        self._taken[start:end] = b"\x01" * (end - start)
        self._line = None
        self.seen.clear()

    @contextmanager
    def hidden(self, places: Iterable[tuple[int, int]]) -> Iterator[None]:
        """Claim spans for a while: what is looked for meanwhile cannot lie in them."""
        taken = [(start, end) for start, end in places if not self.any_taken(start, end)]
        for start, end in taken:
            self.claim(start, end)
        yield
        for start, end in taken:
            self.release(start, end)

    def said(self) -> str:
        """All words, without the marks behind them."""
        words = [token.word for token in self.tokens]
        while words and words[-1] in {".", "!", ",", "?"}:
            words.pop()
        return " ".join(words)

    def release(self, start: int, end: int) -> None:
        """Give back tokens that were claimed for what they are not."""
        self._taken[start:end] = bytes(end - start)
        self._line = None
        self.seen.clear()

    def free(self, index: int) -> bool:
        """Tell whether nothing has claimed this token."""
        return 0 <= index < len(self.tokens) and not self._taken[index]

    def any_taken(self, start: int, end: int) -> bool:
        """Tell whether a span overlaps a claimed token."""
        return 1 in self._taken[start:end]

    def text(self, start: int, end: int) -> str:
        """The words of a span as they were typed."""
        if start >= end:
            return ""
        return self.shown[self.tokens[start].start : self.tokens[end - 1].end]

    def words(self, start: int, end: int) -> list[str]:
        """The plain forms of a span."""
        return [token.word for token in self.tokens[start:end]]

    def find_words(self, start: int, end: int) -> Iterator[tuple[int, str]]:
        """Unclaimed tokens of a span, each with its index."""
        for index in range(start, end):
            if not self._taken[index]:
                yield index, self.tokens[index].word
