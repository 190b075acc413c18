"""Which phrase of a word list begins at this token? The longest one, in one walk."""

import re
from collections import defaultdict
from collections.abc import Iterable
from typing import Generic, TypeVar

from bot.parser.numbers import tokens
from bot.parser.page import Page
from bot.parser.tidy import plain, shown

Meaning = TypeVar("Meaning")

#: A phrase of plain letters, apostrophes and hyphens is its own words; nearly all of the lists are
#: such, and cutting each of them as a message is cut would take seconds.
_LETTERS = re.compile(r"([a-z]+(?:'[a-z]+)*)(?:[-' ][a-z]+)*")


def spelled(phrase: str) -> tuple[str, ...]:
    """The tokens of a phrase, as a page would hold them."""
    if _LETTERS.fullmatch(phrase):
        return tuple(phrase.replace("'", "").replace("-", " ").split(" "))
    kept = shown(phrase)
    return tuple(token.word for token in tokens(kept, plain(kept)))


def _first(phrase: str) -> str:
    """The first token of a phrase."""
    plainly = _LETTERS.fullmatch(phrase)
    return plainly[1].replace("'", "") if plainly else "".join(spelled(phrase)[:1])


class _Node(Generic[Meaning]):
    """What may follow some words, and what those words mean if they are a phrase themselves."""

    __slots__ = ("below", "meaning")

    def __init__(self) -> None:
        self.below: dict[str, _Node[Meaning]] = {}
        self.meaning: tuple[Meaning] | None = None


class Phrases(Generic[Meaning]):
    """Phrases with their meanings as a tree of tokens; the first list that has a phrase wins.

    A branch is grown when its first word is looked up: a message needs few of the thousands.
    """

    __slots__ = ("_branches", "_seeds")

    def __init__(self, lists: Iterable[tuple[Iterable[str], Meaning]]) -> None:
        self._branches: dict[str, _Node[Meaning]] = {}
        self._seeds: dict[str, list[tuple[str, Meaning]]] = defaultdict(list)
        for phrases, meaning in lists:
            for phrase in phrases:
                self._seeds[_first(phrase)].append((phrase, meaning))

    def _branch(self, word: str) -> _Node[Meaning] | None:
        if word in self._branches:
            return self._branches[word]
        seeds = self._seeds.pop(word, None)
        if seeds is None:
            return None
        top = self._branches[word] = _Node()
        for phrase, meaning in seeds:
            node = top
            for each in spelled(phrase)[1:]:
                below = node.below.get(each)
                if below is None:
                    below = node.below[each] = _Node()
                node = below
            if node.meaning is None:
                node.meaning = (meaning,)
        return top

    def longest(self, page: Page, start: int, end: int) -> tuple[int, Meaning] | None:
        """The longest phrase of unclaimed tokens that begins at `start`: its end and meaning."""
        if start >= end:
            return None
        word = page.tokens[start].word
        node = self._branches.get(word)
        if node is None and word in self._seeds:
            node = self._branch(word)
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
        node = self._branch(words[0]) if words else None
        for word in words[1:]:
            if node is None:
                return None
            node = node.below.get(word)
        return node.meaning[0] if node is not None and node.meaning is not None else None
