"""Which phrase of a word list begins at this token? The longest one, in one walk."""

from collections.abc import Iterable, KeysView, Mapping
from typing import Any, Generic, TypeVar

from bot.parser.graph import Node, graph, graph_of, spelled
from bot.parser.page import Page

__all__ = ["Phrases", "spelled"]

Meaning = TypeVar("Meaning")


class Phrases(Generic[Meaning]):
    """Phrases with their meanings; the first list that has a phrase wins."""

    __slots__ = ("_top", "heads")

    #: The words with which a phrase begins; most words of a message begin none.
    heads: KeysView[str]

    def __init__(self, lists: Iterable[tuple[Iterable[str], Meaning]]) -> None:
        self._top: Node[Meaning] = Node({}, None)
        for phrases, meaning in lists:
            self._top.take_in(graph(phrases, meaning))
        self.heads = self._top.below.keys()

    @classmethod
    def of(cls, meanings: Mapping[tuple[str, ...], Meaning]) -> "Phrases[Meaning]":
        """Phrases, as their words, each with a meaning of its own."""
        return cls._of(graph_of(meanings))

    @classmethod
    def _of(cls, top: Node[Meaning]) -> "Phrases[Meaning]":
        made = cls.__new__(cls)
        made._top = top
        made.heads = top.below.keys()
        return made

    def __or__(self, others: "Phrases[Meaning]") -> "Phrases[Meaning]":
        """These and others; what a phrase means here wins."""
        return self._of(self._top | others._top)

    def __sub__(self, others: "Phrases[Any]") -> "Phrases[Meaning]":
        """These without others, whatever those mean."""
        return self._of(self._top - others._top)

    def longest(self, page: Page, start: int, end: int) -> tuple[int, Meaning] | None:
        """The longest phrase of unclaimed tokens that begins at `start`: its end and meaning."""
        if start >= end:
            return None
        tokens, taken = page.tokens, page.taken
        node = self._top.below.get(tokens[start].word)
        if node is None or taken[start]:
            return None
        found: tuple[int, Meaning] | None = None
        index = start
        while node is not None:
            index += 1
            if node.meaning is not None:
                found = index, node.meaning[0]
            if index >= end or not node.below or taken[index]:
                break
            node = node.below.get(tokens[index].word)
        return found

    def whole(self, words: tuple[str, ...]) -> Meaning | None:
        """The meaning of exactly these words."""
        node: Node[Meaning] | None = self._top
        for word in words:
            if node is None:
                return None
            node = node.below.get(word)
        return node.meaning[0] if node is not None and node.meaning is not None else None
