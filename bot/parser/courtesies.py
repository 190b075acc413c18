"""Which words only greet, excuse and thank? `hello doc, jollof rice`, `no strips left, thank you`.

In front of a message and behind it they say nothing to the reader, and are left off before any
finder sees it; where nothing else was said, they stay.
"""

from dataclasses import dataclass
from functools import cache

from bot.parser.languages import filler, gathered
from bot.parser.lexicon import either
from bot.parser.misspelt import is_strange, no_slips
from bot.parser.page import Pattern, Token, as_written


@dataclass(frozen=True, slots=True)
class _Patterns:
    opening: Pattern
    closing: Pattern


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
        opening=as_written(rf"(?:(?:{greeted}|{words('late', 'hesitant')}|{thanks}){marks} )+"),
        closing=as_written(
            rf"(?:(?: [,.!;-]| and| y)* (?:{thanked}|{words('parting')}){called}{marks})+ $"
        ),
    )


def without(tokens: list[Token], kept: str, language: str) -> list[Token]:
    """The tokens of `kept`, the text as it is shown, without courtesies at its ends; all of them
    where nothing else is left."""
    tokens = _unframed(tokens)
    if not tokens:
        return tokens
    words = [token.word for token in tokens]
    if "hi" in words:  # HI as a meter shows it greets nobody
        words = [_shown(token, kept) for token in tokens]
    start = _opened(words, language)
    end = _closed(words, start, language)
    said = [word for word in words[start:end] if word[0].isalnum()]
    if len(said) > 1 or (said and _says_something(said[0], language)):
        return tokens[start:end]
    return tokens


def _unframed(tokens: list[Token]) -> list[Token]:
    """Without a dash in front (`- 142 before lunch`), or brackets around all of it."""
    if tokens and tokens[0].word not in {"-", "("}:
        return tokens
    words = [token.word for token in tokens]
    if words[:1] == ["-"] and len(words) > 1 and tokens[0].end < tokens[1].start:
        return tokens[1:]
    if words[:1] == ["("] and words[-1:] == [")"] and words.count("(") == 1:
        return tokens[1:-1]
    return tokens


def _says_something(word: str, language: str) -> bool:
    return word in _SAYING or word not in filler(language)


#: Everyday words that say something alone.
_SAYING = frozenset(
    """
    no nope nah low high lo alto bajo alta baja help ayuda forgot olvide skip stop breakfast lunch
    dinner supper snack desayuno almuerzo cena record later luego next
    """.split()  # noqa: SIM905 - a block is read more easily
)


def _opened(words: list[str], language: str) -> int:
    """Where the message begins behind its greetings."""
    opening = _patterns(language).opening
    if not opening.may_stand_in(words):
        return 0
    match = opening.along.match(" ".join(words[:_FURTHEST]) + " ")
    if match is None:
        return 0
    start = match.group().count(" ")
    named = len(words) > start + 1 and words[start + 1] in {",", "!", "."}
    if named and start == 1 and is_strange(words[start], no_slips(language)):
        start += 2  # `hello teresa, 142`
    return start


#: Greetings have no more tokens, nor have thanks.
_FURTHEST = 16


def _shown(token: Token, kept: str) -> str:
    return "HI" if kept[token.start : token.end] == "HI" else token.word


def _closed(words: list[str], start: int, language: str) -> int:
    """Where the message ends before its thanks."""
    closing = _patterns(language).closing
    if not closing.may_stand_in(words):
        return len(words)
    first = max(start, len(words) - _FURTHEST // 2)
    line = f" {' '.join(words[first:])} "
    match = closing.along.search(line)
    if match is None:
        return len(words)
    end = first + line.count(" ", 0, match.start() + 1) - 1
    refused = end > 0 and words[end - 1] in _REFUSING
    return len(words) if refused else end


#: Behind one of these no thanks are said for nothing (`no thanks`), nor a farewell.
_REFUSING = frozenset(["no", "not", "say", "says", "said", "to", "a", "the", "of", "had", "decir"])
