"""Which words were meant to be words that the reader looks for? `diziness`, `befroe`, `walkd`."""

from collections.abc import Iterable
from dataclasses import fields, replace
from functools import cache

from bot.parser.languages import lexica
from bot.parser.lexicon import Lexicon
from bot.parser.page import Token
from bot.parser.phrases import spelled
from bot.parser.spelling import SHORTEST, Spelling


def mended(tokens: list[Token], language: str) -> list[Token]:
    """Put the word that was meant on the line; what is shown stays as typed."""
    spelling = _spelling(language)
    return [
        replace(token, word=meant)
        if len(token.word) >= SHORTEST and (meant := spelling.meant(token.word))
        else token
        for token in tokens
    ]


@cache
def _spelling(language: str) -> Spelling:
    wanted: list[str] = []
    known: set[str] = set()
    for lexicon in lexica(language):
        moments = [word for words in lexicon.moments.values() for word in words]
        names = [word for words in lexicon.meal_names.values() for word in words]
        feelings = [word for words in lexicon.symptoms.values() for word in words]
        for words in (lexicon.before, lexicon.after, moments, names, feelings, lexicon.activities,
                      lexicon.drugs, lexicon.correction):  # fmt: skip
            wanted.extend(_words(words))
        known |= set(_words(_every(lexicon)))
    wanted = [word for word in dict.fromkeys(wanted) if len(word) >= SHORTEST]
    return Spelling(wanted, known)


def _words(phrases: Iterable[str]) -> list[str]:
    found: list[str] = []
    for phrase in phrases:
        found.extend(word for word in spelled(phrase) if word.isalpha())
    return found


def _every(lexicon: Lexicon) -> list[str]:
    """Every word that the lexicon knows."""
    found: list[str] = []
    for home in (lexicon, lexicon.times):
        for each in fields(home):
            value = getattr(home, each.name)
            if isinstance(value, tuple):
                found.extend(value)
            elif isinstance(value, dict):
                found.extend(key for key in value if isinstance(key, str))
                for words in value.values():
                    if isinstance(words, tuple):
                        found.extend(words)
    found.extend(lexicon.numerals.words)
    return found
