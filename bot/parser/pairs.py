"""Which signs of the body are said in two halves? `breathing is really hard`, `hands won't stop
shaking`: a part or an act of the body, and what is said of it, near each other."""

# ruff: noqa: SIM905 - word sets read best as one string

from collections import defaultdict
from dataclasses import dataclass
from functools import cache

from bot.entries import Suggests
from bot.parser.page import Page
from bot.parser.phrases import Phrases, spelled
from bot.parser.vocabulary.symptom_idioms import IDIOM_PAIRS
from bot.parser.vocabulary.symptom_pairs import BETWEEN, PAIRS


@cache
def _halves() -> Phrases[tuple[frozenset[int], frozenset[int]]]:
    """Each word or phrase of the pairs: of which pairs it is the one half, of which the other."""
    sides: dict[str, tuple[set[int], set[int]]] = defaultdict(lambda: (set(), set()))
    for pair, (_, *both) in enumerate(_ALL):
        for side, words in enumerate(both):
            for word in words:
                sides[" ".join(spelled(word))][side].add(pair)
        for word in both[0]:
            if word.isalpha() and not word.endswith(("s", "o", "a", "g")):
                sides[f"{word}s"][0].add(pair)  # `my head's spinning`
    alike: dict[tuple[frozenset[int], frozenset[int]], list[str]] = defaultdict(list)
    for word, (one, two) in sides.items():
        alike[frozenset(one), frozenset(two)].append(word)
    return Phrases((words, halves) for halves, words in alike.items())


#: What several pairs share is of the earliest.
_ALL = PAIRS + IDIOM_PAIRS

#: How many small words may stand between the halves of a pair.
_APART = 7
#: Between the halves these deny the sign (`my chest doesn't hurt`).
_NEGATED = frozenset("not isnt arent doesnt dont didnt no stopped never aint wasnt nunca".split())
_SMALL = BETWEEN | _NEGATED


@dataclass(frozen=True, slots=True)
class Sign:
    """Two halves that make a symptom; `denied` by a word between them."""

    start: int
    end: int
    suggests: Suggests
    denied: bool


_STAYS = frozenset({"stay", "stays", "staying", "keep", "keeping", "hold", "holding"})
_WRONG = _NEGATED | frozenset(
    "cant cannot couldnt wont nothing hardly barely unable struggling trouble hard impossible even "
    "nor refuses nuffin".split()
)

#: A half that waits for the other: its span, and the pairs that it is the one or the other of.
_Half = tuple[int, int, frozenset[int], frozenset[int]]


def paired(page: Page, language: str, passed: set[int]) -> list[Sign]:
    """Signs that no list holds whole. `passed` are tokens that belong to phrases already."""
    halves = _halves()
    waiting: list[_Half] = []
    found: list[Sign] = []
    index, count, within = 0, len(page.tokens), 0
    if halves.heads.isdisjoint(page.held):
        return found
    while index < count:
        if index in passed:
            waiting, index = [], index + 1
            continue
        opens = page.tokens[index].word in halves.heads
        hit = halves.longest(page, index, count) if opens else None
        if hit is None or not passed.isdisjoint(range(index, hit[0])):
            if waiting and index >= within and page.tokens[index].word not in _SMALL:
                waiting = []
            index += 1
            continue
        end, (ones, twos) = hit
        waiting = [half for half in waiting if index - half[1] < _APART]
        first = next((half for half in waiting if half[2] & twos or half[3] & ones), None)
        if first is None:
            waiting.append((index, end, ones, twos))
            within, index = max(within, end), index + 1  # `cotton wool` begins within `like cotton`
            continue
        level = _ALL[min((first[2] & twos) | (first[3] & ones))][0]
        denied = not _NEGATED.isdisjoint(page.words(first[1], index))
        kept = not _STAYS.isdisjoint((*page.words(*first[:2]), *page.words(index, end)))
        if kept and level is Suggests.EMERGENCY:
            # What is denied there is what is wrong: `water no dey stay down`, `cant keep any in`.
            denied = _WRONG.isdisjoint(page.words(max(first[0] - _APART, 0), end))
        found.append(Sign(first[0], end, level, denied))
        waiting, index = [], end
    return found
