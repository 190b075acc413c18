"""Which languages are there? Adding one is a lexicon and a line here.

Every message is read with the words of all languages, the participant's own first: people mix
them. Their own decides where two languages disagree about a word.
"""

from functools import cache
from typing import Final

from bot.parser.english import ENGLISH
from bot.parser.lexicon import Lexicon, Words
from bot.parser.spanish import SPANISH
from bot.parser.tidy import fold

LEXICA: Final = {lexicon.code: lexicon for lexicon in (ENGLISH, SPANISH)}


@cache
def lexica(language: str) -> tuple[Lexicon, ...]:
    """All lexica, that of a BCP 47 tag first; a language that is not there is read as English."""
    code = language.replace("_", "-").partition("-")[0].lower()
    own = LEXICA.get(code, ENGLISH)
    return (own, *(lexicon for lexicon in LEXICA.values() if lexicon is not own))


@cache
def _own_words(language: str) -> frozenset[str]:
    return frozenset(fold(word) for word in lexica(language)[0].filler)


def phrases_of(language: str, lexicon: Lexicon, phrases: Words) -> Words:
    """Phrases of one language for reading in another: none that is an everyday word there
    (`are` is `ploughed` in Spanish)."""
    if lexicon is lexica(language)[0]:
        return phrases
    return without_everyday(language, phrases)


def without_everyday(language: str, phrases: Words) -> Words:
    """Leave out what is an everyday word of the participant's language (`to` is a dish, too)."""
    everyday = _own_words(language) - set(lexica(language)[0].glucose)
    return tuple(phrase for phrase in phrases if fold(phrase) not in everyday)


def gathered(language: str, field: str) -> Words:
    """The words of one field in all languages."""
    words: list[str] = []
    for lexicon in lexica(language):
        home = lexicon.times if hasattr(lexicon.times, field) else lexicon
        words.extend(getattr(home, field))
    return tuple(words)
