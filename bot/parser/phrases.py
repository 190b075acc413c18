"""Which phrase of a word list begins at this token? The longest one, in one walk."""

import re
from collections.abc import Iterable, Mapping
from typing import Generic, TypeVar

from bot.parser.numbers import tokens
from bot.parser.page import Page
from bot.parser.tidy import plain, shown

Meaning = TypeVar("Meaning")
_END = ""


#: A phrase of nothing but lower-case letters is its own words; nearly all of the lists are such,
#: and a page made of each of them would take seconds.
_LETTERS = re.compile(r"[a-z]+(?: [a-z]+)*")


def spelled(phrase: str) -> tuple[str, ...]:
    """The tokens of a phrase, as a page would hold them."""
    if _LETTERS.fullmatch(phrase):
        return tuple(phrase.split(" "))
    kept = shown(phrase)
    return tuple(token.word for token in tokens(kept, plain(kept)))


class Phrases(Generic[Meaning]):
    """Phrases with their meanings as a tree of tokens; the first list that has a phrase wins."""

    __slots__ = ("_tree", "words")

    def __init__(self, lists: Iterable[tuple[Iterable[str], Meaning]]) -> None:
        self._tree: dict[str, object] = {}
        self.words: set[str] = set()
        for phrases, meaning in lists:
            for phrase in phrases:
                self._add(spelled(phrase), meaning)

    def _add(self, words: tuple[str, ...], meaning: Meaning) -> None:
        node = self._tree
        for word in words:
            node = node.setdefault(word, {})  # type: ignore[assignment]
        if words:
            node.setdefault(_END, (meaning,))
            self.words.update(words)

    def longest(self, page: Page, start: int, end: int) -> tuple[int, Meaning] | None:
        """The longest phrase of unclaimed tokens that begins at `start`: its end and meaning."""
        node: dict[str, object] | None = self._tree
        found: tuple[int, Meaning] | None = None
        index = start
        while index < end and page.free(index):
            node = node.get(page.tokens[index].word)  # type: ignore[assignment, union-attr]
            if node is None:
                break
            index += 1
            if _END in node:
                found = index, node[_END][0]  # type: ignore[index]
        return found

    def whole(self, words: tuple[str, ...]) -> Meaning | None:
        """The meaning of exactly these words."""
        node: dict[str, object] = self._tree
        for word in words:
            below = node.get(word)
            if below is None:
                return None
            node = below  # type: ignore[assignment]
        return node[_END][0] if _END in node else None  # type: ignore[index]


def single_words(lists: Mapping[object, Iterable[str]]) -> set[str]:
    """Every single word of some lists."""
    return {word for phrases in lists.values() for phrase in phrases for word in spelled(phrase)}
