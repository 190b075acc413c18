"""How are so many phrases kept in so little room? As a graph of words, each part there once.

A block is taken as it is written: `{my|his} {arm|leg} {hurts|aches}` is six steps between three
places, not eight phrases. The places are then made into nodes from the ends of the phrases
backwards, and two nodes from which the same leads on are one (known as a directed acyclic word
graph).
"""

import re
from collections import defaultdict
from collections.abc import Iterable, Iterator, KeysView, Mapping
from functools import cache
from typing import Any, Generic, TypeVar

from bot.parser.tidy import plain, shown
from bot.parser.tokens import cut
from bot.parser.vocabulary import Block, is_or, unfolded

Meaning = TypeVar("Meaning")

#: A phrase of plain letters, apostrophes and hyphens is its own words; nearly all of the lists are
#: such, and cutting each of them as a message is cut would take seconds.
_LETTERS = re.compile(r"[a-z]+(?:[-' ][a-z]+)*")
#: What a block may hold for its words to be cut one by one: `7 up` is one token only as a whole.
_WORDS_APART = re.compile(r"[-a-z' {}()|,\n\t]*")

#: Each word once, in however many lists it stands.
_WORDS: dict[str, str] = {}


def spelled(phrase: str) -> tuple[str, ...]:
    """The tokens of a phrase, as a page would hold them."""
    if phrase.islower() and phrase.isalpha() and phrase.isascii():  # most are one word
        word = str(phrase)  # a name's own letters
        return (_WORDS.setdefault(word, word),)
    if _LETTERS.fullmatch(phrase):
        words = phrase.replace("'", "").replace("-", " ").split(" ")
    else:
        kept = shown(phrase)
        words = [token.word for token in cut(plain(kept))]
    return tuple(_WORDS.setdefault(word, word) for word in words)


def forget_words() -> None:
    """Let go of the table by which lists share their words, once all lists are made: the words
    stay with the lists, a later list has its own."""
    _WORDS.clear()


class _Only(Generic[Meaning]):
    """A word and where it leads: nearly half of the nodes have one way on, and a dictionary of one
    entry is four times as large."""

    __slots__ = ("_node", "_word")

    def __init__(self, word: str, node: "Node[Meaning]") -> None:
        self._word, self._node = word, node

    def __len__(self) -> int:
        return 1

    def __getitem__(self, word: str) -> "Node[Meaning]":
        if word != self._word:
            raise KeyError(word)
        return self._node

    def get(self, word: str) -> "Node[Meaning] | None":
        return self._node if word == self._word else None

    def keys(self) -> KeysView[str]:
        return {self._word: None}.keys()

    def items(self) -> Iterable[tuple[str, "Node[Meaning]"]]:
        return ((self._word, self._node),)


#: What follows the last word of a phrase, the same for all: a node never changes what it was given.
_NOTHING: dict[str, Any] = {}


class Node(Generic[Meaning]):
    """What may follow some words, and what those words mean if they are a phrase themselves."""

    __slots__ = ("below", "meaning")

    def __init__(self, below: dict[str, "Node[Meaning]"], meaning: tuple[Meaning] | None) -> None:
        self.below: dict[str, Node[Meaning]] | _Only[Meaning] = below or _NOTHING
        if len(below) == 1:
            self.below = _Only(*next(iter(below.items())))
        self.meaning = meaning

    def __or__(self, other: "Node[Meaning]") -> "Node[Meaning]":
        """What leads on from either; what a phrase means here wins."""
        below = {**other.below, **self.below}
        for word in self.below.keys() & other.below.keys():
            below[word] = self.below[word] | other.below[word]
        return Node(below, other.meaning if self.meaning is None else self.meaning)

    def __sub__(self, other: "Node[Any]") -> "Node[Meaning]":
        """What leads on from here, but that the phrases of the other mean nothing."""
        below = dict(self.below)
        for word in self.below.keys() & other.below.keys():
            below[word] = self.below[word] - other.below[word]
        return Node(below, self.meaning if other.meaning is None else None)

    def take_in(self, other: "Node[Meaning]") -> None:
        """Have the other's phrases from now on, too, where they mean nothing yet."""
        below = dict(self.below)
        for word, node in other.below.items():
            own = below.get(word)
            below[word] = node if own is None else own | node
        self.below = below


#: Where a phrase may end, beside the words that may follow: no word is empty.
_MEANING = ""


def graph(phrases: Iterable[str], meaning: Meaning) -> Node[Meaning]:
    """The node with which all phrases of a list begin."""
    return _Nodes(_Places(phrases), meaning).of((_BEGINNING,))


def graph_of(meanings: Mapping[tuple[str, ...], Meaning]) -> Node[Meaning]:
    """The node with which all of these phrases begin, each of which has its own meaning."""
    top: dict[str, Any] = {}
    for words, meaning in meanings.items():
        ahead = top
        for word in words:
            ahead = ahead.setdefault(word, {})
        ahead[_MEANING] = meaning
    alike: dict[object, Node[Meaning]] = {}

    def made(ahead: dict[str, Any]) -> Node[Meaning]:
        meaning = (ahead.pop(_MEANING),) if _MEANING in ahead else None
        below = {word: made(further) for word, further in ahead.items()}
        return alike.setdefault((meaning, frozenset(below.items())), Node(below, meaning))

    return made(top)


def words_in(phrases: Iterable[str]) -> Iterator[str]:
    """The words of a list's phrases, each at least once, without unfolding it."""
    places = _Places(())
    groups = phrases.groups() if isinstance(phrases, Block) else ([phrase] for phrase in phrases)
    for group in groups:
        if len(group) > 1:
            places.take_in(group)
        else:
            for phrase in unfolded(group):
                yield from spelled(phrase)
    yield from (word for steps in places.steps for word, _ in steps)


#: Where somebody who follows the steps may stand: a place, and the letters read since.
_Stand = tuple[int, str]
_BEGINNING, _END = 0, 1


class _Places:
    """Places between words and the steps that lead from one to another."""

    def __init__(self, phrases: Iterable[str]) -> None:
        #: From each place: words, and where each leads.
        self.steps: list[list[tuple[str, int]]] = [[], []]
        #: Where a phrase may end.
        self.ends = {_END}
        self._spelled = cache(spelled)
        if isinstance(phrases, Block):
            for group in phrases.groups():
                self.take_in(group)
        else:
            for phrase in phrases:
                self._step(_BEGINNING, phrase, _END)

    def take_in(self, group: list[str]) -> None:
        """Have the phrases of a group of a block's parts."""
        if len(group) == 1 and _LETTERS.fullmatch(group[0]):
            self._step(_BEGINNING, group[0], _END)
            return
        if not all(map(_WORDS_APART.fullmatch, group)):
            for phrase in unfolded(group):
                self._step(_BEGINNING, phrase, _END)
            return
        for place, letters in self._walked(iter(group), {(_BEGINNING, "")}):
            if letters:
                self._step(place, letters, _END)
            else:
                self.ends.add(place)

    def _step(self, start: int, words: str, end: int) -> None:
        *through, last = self._spelled(words)
        for word in through:
            place = self._place()
            self.steps[start].append((word, place))
            start = place
        self.steps[start].append((last, end))

    def _place(self) -> int:
        self.steps.append([])
        return len(self.steps) - 1

    def _walked(self, parts: Iterator[str], begun: set[_Stand]) -> set[_Stand]:
        """Where the alternatives up to the closing bracket lead to from where one has begun."""
        done: set[_Stand] = set()
        stands = begun
        for part in parts:
            if part in "{(":
                inner = self._walked(parts, stands)
                stands = inner if part == "{" else inner | stands
            elif part in "})":
                break
            elif is_or(part):
                done |= stands
                stands = begun
            else:
                first, *more = part.replace("\t", " ").split(" ")
                stands = {(place, letters + first) for place, letters in stands}
                for word in more:
                    stands = {(place, word) for place, _ in self._word_over(stands)}
        return (done | stands) - begun

    def _word_over(self, stands: set[_Stand]) -> set[_Stand]:
        """After a space: all that have read a word step on to one and the same place."""
        read = [stand for stand in stands if stand[1]]
        if not read:
            return stands
        place = self._place()
        for start, letters in read:
            self._step(start, letters, place)
        return (stands - set(read)) | {(place, "")}


class _Nodes(Generic[Meaning]):
    """Nodes made of places, each kind once."""

    def __init__(self, places: _Places, meaning: Meaning) -> None:
        self._places = places
        self._meaning = (meaning,)
        self._made: dict[tuple[int, ...], Node[Meaning]] = {}
        self._alike: dict[object, Node[Meaning]] = {}

    def of(self, places: tuple[int, ...]) -> Node[Meaning]:
        """The node of somebody who may stand at any of these."""
        if places not in self._made:
            ahead: dict[str, list[int]] = defaultdict(list)
            for place in places:
                for word, end in self._places.steps[place]:
                    ahead[word].append(end)
            below = {word: self.of(tuple(sorted({*ends}))) for word, ends in ahead.items()}
            ends_here = not self._places.ends.isdisjoint(places)
            node = Node(below, self._meaning if ends_here else None)
            kind = (ends_here, frozenset(below.items()))
            self._made[places] = self._alike.setdefault(kind, node)
        return self._made[places]
