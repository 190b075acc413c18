"""Which languages are there? Adding one is a lexicon and a line here.

Every message is read with the words of all languages, the participant's own first: people mix
them. Their own decides where two languages disagree about a word.
"""

from collections.abc import Callable, Iterable
from functools import cache
from typing import Final, TypeVar

from bot.parser.english import ENGLISH
from bot.parser.lexicon import Lexicon, Words
from bot.parser.numbers import Numerals
from bot.parser.phrases import Phrases
from bot.parser.spanish import SPANISH
from bot.parser.tidy import fold
from bot.parser.vocabulary import packed

Meaning = TypeVar("Meaning")

LEXICA: Final = {lexicon.code: lexicon for lexicon in (ENGLISH, SPANISH)}


@cache
def lexica(language: str) -> tuple[Lexicon, ...]:
    """All lexica, that of a BCP 47 tag first; a language that is not there is read as English."""
    code = language.replace("_", "-").partition("-")[0].lower()
    own = LEXICA.get(code, ENGLISH)
    return (own, *(lexicon for lexicon in LEXICA.values() if lexicon is not own))


@cache
def _everyday(language: str) -> frozenset[str]:
    own = lexica(language)[0]
    return frozenset(map(fold, own.filler)) - set(own.glucose)


@cache
def _everyday_phrases(language: str) -> Phrases[bool]:
    return Phrases([(_everyday(language), True)])


def phrases_of(language: str, lexicon: Lexicon, phrases: Iterable[str]) -> Iterable[str]:
    """Phrases of one language for reading in another: none that is an everyday word there
    (`are` is `ploughed` in Spanish)."""
    if lexicon is lexica(language)[0]:
        return phrases
    everyday = _everyday(language)
    return (phrase for phrase in phrases if fold(phrase) not in everyday)


def of_all(
    language: str, of_one: Callable[[str], Phrases[Meaning]], *, own_everyday: bool = True
) -> Phrases[Meaning]:
    """The phrases of all languages as one. `of_one` gives those of a language by its code; those
    of the others come without what is an everyday word of the participant's, and their own too
    if they are to (`to` is a dish)."""
    own, *others = (of_one(lexicon.code) for lexicon in lexica(language))
    everyday = _everyday_phrases(language)
    whole = own if own_everyday else own - everyday
    for other in others:
        whole |= other - everyday
    return whole


def gathered(language: str, field: str) -> Words:
    """The words of one field in all languages; those of other languages without what is an
    everyday word of the participant's (`he medido`, `me sale 142`)."""
    words: list[str] = []
    for lexicon in lexica(language):
        home = lexicon.times if hasattr(lexicon.times, field) else lexicon
        words.extend(phrases_of(language, lexicon, getattr(home, field)))
    return tuple(words)


@cache
def numerals(language: str) -> tuple[Numerals, ...]:
    """How all languages say numbers, the participant's own first."""
    return tuple(lexicon.numerals for lexicon in lexica(language))


@cache
def glucose(language: str) -> frozenset[str]:
    """What a reading is called."""
    return packed(gathered(language, "glucose"))


@cache
def filler(language: str) -> frozenset[str]:
    """Words that say nothing beside an entry."""
    return packed(gathered(language, "filler"))
