"""What do the words of a span stand for? Phrase by phrase, by the concepts of all languages.

A concept is a set of words that come to the same (`texting`, `messages`, `remind`: `contact`); some
concepts together make a meaning, and every word has to be one of its concepts or mere glue. The
combinations speak of concepts alone, so they hold for every language.
"""

# ruff: noqa: SIM905 - word sets read best as one string

import re
from dataclasses import dataclass
from functools import cache

from bot.parser.languages import lexica, phrases_of
from bot.parser.page import Page
from bot.parser.phrases import Phrases, spelled
from bot.parser.vocabulary import packed

GLUE = "glue"
COUNTED = frozenset({"number"})

#: Days of a month and hours of a day; anything above may be a value.
_LARGEST = 31
LENGTHS = frozenset({"minutes", "span"})
_CLOCK = re.compile(r"\d{1,2}:\d\d")
_MARKS = frozenset(", . ; ! ? : ( ) - ¿ ¡ ~ ' \" _ = / *".split())


@dataclass(slots=True)
class Segment:
    """A word or phrase of a page and the concepts that it stands for."""

    start: int
    end: int
    tags: frozenset[str]


@dataclass(frozen=True, slots=True)
class Combination:
    """Concepts that mean something together: all of `need`, and any of `may` beside them."""

    need: tuple[str, ...]
    may: frozenset[str]

    def fits(self, said: list[frozenset[str]]) -> bool:
        """Whether the segments of a message are this combination."""
        return all(tags & self.may for tags in said) and _shared_out(self.need, said)


def combination(need: str, may: str = "") -> Combination:
    """Concepts by name, one space between, with glue allowed."""
    needed = tuple(need.split())
    return Combination(needed, frozenset((*needed, *may.split(), GLUE)))


def _shared_out(need: tuple[str, ...], said: list[frozenset[str]]) -> bool:
    """Whether each needed concept has a segment of its own (few of either: tried in turn)."""
    if not need:
        return True
    return any(
        need[0] in tags and _shared_out(need[1:], said[:at] + said[at + 1 :])
        for at, tags in enumerate(said)
    )


@cache
def _concepts(language: str) -> Phrases[frozenset[str]]:
    """The phrases of all languages, each with every concept that it stands for."""
    none: frozenset[str] = frozenset()
    tags: dict[tuple[str, ...], frozenset[str]] = {}
    for lexicon in lexica(language):
        for concept, words in lexicon.intents.items():
            for word in words if concept == GLUE else phrases_of(language, lexicon, words):
                phrase = spelled(word)
                tags[phrase] = tags.get(phrase, none) | {concept}
    alike: dict[frozenset[str], frozenset[str]] = {}  # each set once, however many mean it
    meant = {}
    for phrase, own in tags.items():
        apart = [tags.get((word,), none) for word in phrase]
        if len(apart) > 1:  # `my numbers`: what its words are, glue apart
            named = none.union(*apart)
            own |= {each for each in named if all(each in one or GLUE in one for one in apart)}
        meant[phrase] = alike.setdefault(own, own)
    return Phrases.of(meant)


@cache
def words_of(language: str, concepts: frozenset[str]) -> frozenset[str]:
    """All words of the phrases that stand for one of these: no segment does without them."""
    every = (lexicon.intents.get(each, ()) for lexicon in lexica(language) for each in concepts)
    return packed(word for phrases in every for phrase in phrases for word in spelled(phrase))


def segments(page: Page, start: int, end: int, language: str) -> list[Segment] | None:
    """The concepts of a span, phrase by phrase; None where a word stands for none."""
    place = (start, end, language)
    if place not in page.seen:  # requests, small talk and skips all ask for the same
        page.seen[place] = _segments(page, start, end, language)
    known: list[Segment] | None = page.seen[place]
    return known


def _segments(page: Page, start: int, end: int, language: str) -> list[Segment] | None:
    concepts = _concepts(language)
    found: list[Segment] = []
    while start < end:
        word = page.tokens[start].word
        if word in _MARKS:
            start += 1
            continue
        hit = concepts.longest(page, start, end)
        if hit is not None:
            found.append(Segment(start, *hit))
        elif _CLOCK.fullmatch(word) or (
            word.isdigit() and (int(word) <= _LARGEST or _lasts(page, start + 1, end, language))
        ):
            found.append(Segment(start, start + 1, COUNTED))
        else:
            return None
        start = found[-1].end
    return found


def _lasts(page: Page, start: int, end: int, language: str) -> bool:
    """Whether a unit of time stands there (`45 minutes`)."""
    hit = _concepts(language).longest(page, start, end)
    return hit is not None and bool(hit[1] & LENGTHS)
