"""Which phrase of a word list begins at this token? The longest one, in one walk."""

from collections.abc import Iterable
from typing import Any, Generic, TypeVar

from bot.parser.graph import Node, graph, spelled
from bot.parser.page import Page

__all__ = ["Phrases", "spelled"]

Meaning = TypeVar("Meaning")


class Phrases(Generic[Meaning]):
    """Phrases with their meanings; the first list that has a phrase wins."""

    __slots__ = ("_top",)

    def __init__(self, lists: Iterable[tuple[Iterable[str], Meaning]]) -> None:
        self._top: Node[Meaning] = Node({}, None)
        for phrases, meaning in lists:
            self._top.take_in(graph(phrases, meaning))

    @classmethod
    def _of(cls, top: Node[Meaning]) -> "Phrases[Meaning]":
        made = cls.__new__(cls)
        made._top = top
        return made

    def __or__(self, others: "Phrases[Meaning]") -> "Phrases[Meaning]":
        """These and others; what a phrase means here wins."""
        return self._of(self._top | others._top)

    def __sub__(self, others: "Phrases[Any]") -> "Phrases[Meaning]":
        """These without others, whatever those mean."""
        return self._of(self._top - others._top)

    def begins(self, word: str) -> bool:
        """Whether a phrase begins with this word; most words of a message begin none."""
        return self._top.below.get(word) is not None

    def may_begin(self, words: set[str]) -> bool:
        """Whether a phrase begins with one of these words."""
        return not self._top.below.keys().isdisjoint(words)

    def longest(self, page: Page, start: int, end: int) -> tuple[int, Meaning] | None:
        """The longest phrase of unclaimed tokens that begins at `start`: its end and meaning."""
        if start >= end:
            return None
        node = self._top.below.get(page.tokens[start].word)
        if node is None or not page.free(start):
            return None
        found: tuple[int, Meaning] | None = None
        index = start
        while node is not None:
            index += 1
            if node.meaning is not None:
                found = index, node.meaning[0]
            if index >= end or not page.free(index):
                break
            node = node.below.get(page.tokens[index].word)
        return found

    def whole(self, words: tuple[str, ...]) -> Meaning | None:
        """The meaning of exactly these words."""
        node: Node[Meaning] | None = self._top
        for word in words:
            if node is None:
                return None
            node = node.below.get(word)
        return node.meaning[0] if node is not None and node.meaning is not None else None
