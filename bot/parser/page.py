"""The message as tokens on one line, and which of them already have a meaning.

`line` is the tokens in their plain form with one space between, so that a pattern never has to
think of spacing, case or accents. A claimed token is blotted out of the line: no later finder
can see it. Every span is a pair of token indices, [start, end).
"""

import re
from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from bot.parser.needed import words_needed

BLOT = "\x00"


@dataclass(slots=True)  # frozen, it would take four times as long to make, and many are made
class Token:
    """One token: its place in the text as shown, and its plain form on the line."""

    start: int
    end: int
    word: str


@dataclass(slots=True)
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


@dataclass(frozen=True, slots=True)
class Pattern:
    """What is looked for on a page, and words of which one must stand there (see `needed`)."""

    along: re.Pattern[str]
    needs: frozenset[str] | None

    def whole(self, words: str, held: Collection[str]) -> re.Match[str] | None:
        """Match `words` from end to end; `held` are words of which they are made."""
        needs = self.needs
        return None if needs is not None and needs.isdisjoint(held) else self.along.fullmatch(words)

    def may_stand_in(self, words: Collection[str]) -> bool:
        """Tell whether one of the words that it needs is there."""
        return self.needs is None or not self.needs.isdisjoint(words)


def pattern(source: str) -> Pattern:
    """Compile a pattern that begins and ends at the borders of tokens. Groups repeat nine times
    at most: from each word of `a a a a …` to its end would take time by the square of its length.
    """
    bounded = _WITHOUT_END.sub(lambda repeat: _REPEATS[repeat[1]], source)
    return Pattern(re.compile(rf"(?<= )(?:{bounded})(?= )"), words_needed(bounded))


def as_written(source: str) -> Pattern:
    """Compile a pattern for words joined by one space, all of them or from a border on."""
    return Pattern(re.compile(source), words_needed(source))


class Several:
    """Patterns that are looked for one after the other."""

    __slots__ = ("always", "every", "needs")

    def __init__(self, *patterns: Pattern) -> None:
        self.every = patterns
        self.always = tuple(each for each in patterns if each.needs is None)
        self.needs = needed_by(each for each in patterns if each.needs is not None) or frozenset()


def needed_by(patterns: Iterable[Pattern]) -> frozenset[str] | None:
    """One of these words stands wherever one of the patterns is found."""
    needs = [each.needs for each in patterns]
    return None if None in needs else frozenset().union(*filter(None, needs))


class Page:
    """One message under the finders' hands."""

    __slots__ = ("_borders", "_line", "_numbers", "held", "seen", "shown", "taken", "tokens")

    def __init__(self, shown: str, tokens: list[Token]) -> None:
        self.shown = shown
        self.tokens = tokens
        self.taken = bytearray(len(tokens))  # 1 where a finder has claimed the token
        self._line: str | None = None
        self._numbers: list[int] | None = None
        self.held = {token.word for token in tokens}
        self.seen: dict[tuple[int, int, str], Any] = {}  # kept by finders until a claim
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
    def numbers(self) -> list[int]:
        """Where tokens stand that begin with a digit, claimed or not."""
        if self._numbers is None:
            self._numbers = [at for at, token in enumerate(self.tokens) if token.word[0].isdigit()]
        return self._numbers

    @property
    def line(self) -> str:
        """The tokens not yet claimed, framed by spaces."""
        if self._line is None:
            words = [token.word for token in self.tokens]
            for index, taken in enumerate(self.taken):
                if taken:
                    words[index] = BLOT * len(words[index])
            self._line = f" {' '.join(words)} "
        return self._line

    def holds(self, words: frozenset[str]) -> bool:
        """Tell whether one of these words stands anywhere, claimed or not."""
        return not words.isdisjoint(self.held)

    def find(self, sought: Pattern) -> list[Span]:
        """Give every match among the unclaimed tokens, left to right."""
        needs = sought.needs
        if needs is not None and needs.isdisjoint(self.held):
            return []
        line = self._line or self.line
        # Of those that are left most find nothing, too, and a search tells so sooner than a walk.
        if (first := sought.along.search(line)) is None:
            return []
        starts, ends = self._bordering()
        found = []
        for match in sought.along.finditer(line, first.start()):
            start, end = starts.get(match.start()), ends.get(match.end())
            if start is not None and end is not None:
                found.append(Span(start, end, match))
        return found

    def worth(self, several: Several) -> Sequence[Pattern]:
        """Give those of several patterns that can be found at all, in their order."""
        held = self.held
        if several.needs.isdisjoint(held):
            return several.always
        return [
            each for each in several.every if each.needs is None or not each.needs.isdisjoint(held)
        ]

    def first(self, sought: Pattern) -> Span | None:
        """Give the first match among the unclaimed tokens."""
        needs = sought.needs
        if needs is not None and needs.isdisjoint(self.held):
            return None
        return next(iter(self.find(sought)), None)

    def claim(self, start: int, end: int) -> None:
        """Blot tokens out."""
        self.taken[start:end] = b"\x01" * (end - start)
        self._line = None
        self.seen.clear()

    def hide(self, places: Iterable[tuple[int, int]]) -> list[tuple[int, int]]:
        """Claim those spans that nothing has claimed, and give them: what is looked for until they
        are released cannot lie in them."""
        taken = [(start, end) for start, end in places if not self.any_taken(start, end)]
        for start, end in taken:
            self.claim(start, end)
        return taken

    def said(self) -> str:
        """All words, without the marks behind them."""
        words = [token.word for token in self.tokens]
        while words and words[-1] in {".", "!", ",", "?"}:
            words.pop()
        return " ".join(words)

    def release(self, start: int, end: int) -> None:
        """Give back tokens that were claimed for what they are not."""
        self.taken[start:end] = bytes(end - start)
        self._line = None
        self.seen.clear()

    def free(self, index: int) -> bool:
        """Tell whether nothing has claimed this token."""
        return 0 <= index < len(self.tokens) and not self.taken[index]

    def any_taken(self, start: int, end: int) -> bool:
        """Tell whether a span overlaps a claimed token."""
        return 1 in self.taken[start:end]

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
            if not self.taken[index]:
                yield index, self.tokens[index].word
