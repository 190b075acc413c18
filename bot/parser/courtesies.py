"""Which words only greet, excuse and thank? `hello doc, jollof rice`, `no strips left, thank you`.

In front of a message and behind it they say nothing to the reader, and are left off before any
finder sees it; where nothing else was said, they stay.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from itertools import accumulate

from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.misspelt import is_strange, no_slips
from bot.parser.page import Token


@dataclass(frozen=True, slots=True)
class _Patterns:
    opening: re.Pattern[str]
    closing: re.Pattern[str]
    everyday: frozenset[str]


@cache
def _patterns(language: str) -> _Patterns:
    def words(*fields: str) -> str:
        return either(*(gathered(language, field) for field in fields))

    whom, thanked = words("whom"), words("thanked")
    called = f"(?:(?: ,)? {whom})*"
    #: A bare `hi` may be the meter's.
    hi = rf"hi(?= (?:[,.!:;-]|{whom}|[^\W\d_]+ [,.!]) )"
    greeted = rf"(?:{words('hailed')}|{hi}){called}"
    thanks = rf"{thanked}{called}(?= [,.!;:]| \d| $)"
    marks = r"(?: [,.!:;-])*"
    return _Patterns(
        opening=re.compile(rf"(?:(?:{greeted}|{words('late', 'hesitant')}|{thanks}){marks} )+"),
        closing=re.compile(
            rf"(?:(?: [,.!;-]| and| y)* (?:{thanked}|{words('parting')}){called}{marks})+ "
        ),
        everyday=frozenset(gathered(language, "filler")),
    )


def without(tokens: list[Token], kept: str, language: str) -> list[Token]:
    """The tokens of `kept`, the text as it is shown, without courtesies at its ends; all of them
    where nothing else is left."""
    tokens = _unframed(tokens)
    if not tokens:
        return tokens
    start = _opened(tokens, kept, language)
    rest = tokens[start : _closed(tokens, start, language)]
    words = [_seen(token, kept) for token in rest if token.word[0].isalnum()]
    if len(words) > 1 or (words and _says_something(words[0], language)):
        return rest
    return tokens


def _unframed(tokens: list[Token]) -> list[Token]:
    """Without a dash in front (`- 142 before lunch`), or brackets around all of it."""
    words = [token.word for token in tokens]
    if words[:1] == ["-"] and len(words) > 1 and tokens[0].end < tokens[1].start:
        return tokens[1:]
    if words[:1] == ["("] and words[-1:] == [")"] and words.count("(") == 1:
        return tokens[1:-1]
    return tokens


def _says_something(word: str, language: str) -> bool:
    return word in _SAYING or word not in _patterns(language).everyday


#: Everyday words that say something alone.
_SAYING = frozenset(
    """
    no nope nah low high lo alto bajo alta baja help ayuda forgot olvide skip stop breakfast lunch
    dinner supper snack desayuno almuerzo cena record later luego next
    """.split()  # noqa: SIM905 - a block is read more easily
)


def _opened(tokens: Sequence[Token], kept: str, language: str) -> int:
    """Where the message begins behind its greetings."""
    line = " ".join(_seen(token, kept) for token in tokens[:_FURTHEST]) + " "
    match = _patterns(language).opening.match(line)
    if match is None:
        return 0
    start = match.group().count(" ")
    named = len(tokens) > start + 1 and tokens[start + 1].word in {",", "!", "."}
    if named and start == 1 and is_strange(tokens[start].word, no_slips(language)):
        start += 2  # `hello teresa, 142`
    return start


#: Greetings have no more tokens, nor have thanks.
_FURTHEST = 16


def _seen(token: Token, kept: str) -> str:
    """Its word; HI as a meter shows it greets nobody."""
    return "HI" if kept[token.start : token.end] == "HI" else token.word


def _closed(tokens: Sequence[Token], start: int, language: str) -> int:
    """Where the message ends before its thanks."""
    closing = _patterns(language).closing
    first = max(start, len(tokens) - _FURTHEST // 2)
    words = [token.word for token in tokens[first:]]
    line = f" {' '.join(words)} "
    places = accumulate((len(word) + 1 for word in words), initial=0)
    for at, place in zip(range(first, len(tokens)), places, strict=False):
        if closing.fullmatch(line, place):
            refused = at > 0 and tokens[at - 1].word in _REFUSING
            return len(tokens) if refused else at
    return len(tokens)


#: Behind one of these no thanks are said for nothing (`no thanks`), nor a farewell.
_REFUSING = frozenset(["no", "not", "say", "says", "said", "to", "a", "the", "of", "had", "decir"])
