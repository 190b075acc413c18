"""Numbers in words with a slip in them: `one hundred and frty two` is 142, and never 100."""

# ruff: noqa: SIM905 - word sets read best as one string

from collections.abc import Container
from dataclasses import replace
from functools import cache

from bot.parser.languages import lexica
from bot.parser.misspelt import known_words, no_slips
from bot.parser.page import Token
from bot.parser.spelling import one_slip
from bot.parser.vocabulary.slips import SLIPS

#: As long a word can be nothing else; a shorter one has to stand beside another part of a number.
_BY_ITSELF = 6
_SHORTEST = 3


def mended(tokens: list[Token], language: str) -> list[Token]:
    """Put the numeral that was meant on the line; what is shown stays as typed."""
    known, numerals, listed = no_slips(language), _numerals(language), known_words(language)
    if not _heard_with(language).isdisjoint([token.word for token in tokens]):
        tokens = _as_heard(tokens, language)
    places = [
        at
        for at, token in enumerate(tokens)
        if token.word not in listed and _is_strange(token.word, known, numerals)
    ]
    if not places:
        return tokens
    tokens = list(tokens)
    for at in places:
        word = tokens[at].word
        if len(word) < _BY_ITSELF and not _beside_a_number(tokens, at, language):
            continue
        meant = _meant(word, language)
        if meant is not None:
            tokens[at] = replace(tokens[at], word=meant)
        elif _ends_a_hundred(tokens, at, language):
            tokens[at] = replace(tokens[at], word=_rough(language))
    return tokens


def _meant(word: str, language: str) -> str | None:
    """The one numeral that is a slip away; of several the one that has all these letters, for a
    finger oftener doubles or drops a letter than it hits another (`eightt` is not `eighty`), and
    the longest of those (`cieno` is `ciento`)."""
    near = [each for each in _well_spelt(language).get(word[0], ()) if one_slip(each, word)]
    if len(near) > 1:
        near = [each for each in near if len(each) != len(word) or sorted(each) == sorted(word)]
    longest = [each for each in near if len(each) == max(map(len, near))]
    return longest[0] if len(longest) == 1 else None


#: What a number is written as where it was misheard; only before `point` and another number.
_HEARD = {
    "won": "one", "to": "two", "too": "two", "there": "three", "tree": "three", "free": "three",
    "for": "four", "fore": "four", "seen": "seven", "sven": "seven", "ate": "eight",
    "site": "siete",
}  # fmt: skip
_COUNTED = {"tow": "two", "tree": "three", "fore": "four"}
#: Nobody who writes `seven pint one` has drunk it; of one or two pints one may.
_FEW_PINTS = frozenset({"one", "two", "a", "half"})


#: Before `thirty` they make a sign of it: a letter was left out.
_HOW_MUCH = frozenset("very really so super always extremely dead proper awfully terribly".split())
_MINUTES = frozenset({"min", "mins", "minute", "minutes", "percent", "years", "grams", "steps"})


@cache
def _heard_with(language: str) -> frozenset[str]:
    """Without one of these words nothing was misheard."""
    return _points(language) | _COUNTED.keys() | {"thirty", "cinto", "siento", "pint"}


def _as_heard(tokens: list[Token], language: str) -> list[Token]:
    """`there point two`, `seven pint one`, `cinto sesenta`: a number, as the rest of it shows."""
    parts, points = _parts(language), _points(language)
    tens = lexica(language)[0].numerals.tens
    heard = list(tokens)
    for at in range(1, len(tokens)):
        before, word = tokens[at - 1].word, tokens[at].word
        after = tokens[at + 1].word if at + 1 < len(tokens) else ""
        if word == "thirty" and before in _HOW_MUCH and after not in parts | _MINUTES:
            heard[at] = replace(tokens[at], word="thirsty")
        first = tokens[at - 2].word if at > 1 else ""
        if before in points and word in _HEARD and (first in parts or first.isdigit()):
            heard[at] = replace(tokens[at], word=_HEARD[word])  # `seven point ate`
        if word in {"hours", "hour", "slices", "eggs", "cups", "times"} and before in _COUNTED:
            heard[at - 1] = replace(tokens[at - 1], word=_COUNTED[before])
        if before in {"cinto", "siento"} and word in tens:
            heard[at - 1] = replace(tokens[at - 1], word="ciento")
        if after not in parts and not after.isdigit():
            continue
        if word in points and before in _HEARD:
            heard[at - 1] = replace(tokens[at - 1], word=_HEARD[before])
        elif word == "pint" and before in parts - _FEW_PINTS:
            heard[at] = replace(tokens[at], word="point")
    return heard


def _is_strange(word: str, known: Container[str], numerals: Container[str]) -> bool:
    return (
        word.isalpha()
        and len(word) >= _SHORTEST
        and word not in numerals
        and word not in SLIPS
        and word not in known
        and not (word[-1] in "sh" and word[:-1] in numerals)  # `hundreds of steps`, `the eighth`
    )


def _ends_a_hundred(tokens: list[Token], at: int, language: str) -> bool:
    """Whether it is the end of `one hundred and ...`: what the number is then nobody knows."""
    before = [token.word for token in tokens[max(at - 2, 0) : at]]
    for say in (lexicon.numerals for lexicon in lexica(language)):
        if before[-1:] and before[-1] in say.hundreds:  # `ciento` alone is no number
            return True
        if len(before) == 2 and before[0] in say.hundred and before[1] in say.after_hundred:
            return True
    return False


def _beside_a_number(tokens: list[Token], at: int, language: str) -> bool:
    """Whether a part of a number stands before or behind it, `and` left out, or `at` before it."""
    numerals, joining = _parts(language), _joining(language)
    before, after = at - 1, at + 1
    if before >= 0 and tokens[before].word in joining:
        before -= 1
    if after < len(tokens) and tokens[after].word in joining:
        after += 1
    if before >= 0 and tokens[before].word in _hour_follows(language):
        return True
    return any(
        tokens[place].word in numerals for place in (before, after) if 0 <= place < len(tokens)
    )


@cache
def _numerals(language: str) -> frozenset[str]:
    """Every part of a number in words but the shortest, which too much resembles."""
    said = [lexicon.numerals for lexicon in lexica(language)]
    words = frozenset().union(*(each.words | each.point | each.thousand for each in said))
    return frozenset(word for word in words if len(word) > _SHORTEST)


@cache
def _parts(language: str) -> frozenset[str]:
    """Every part of a number in words."""
    said = [lexicon.numerals for lexicon in lexica(language)]
    return frozenset().union(
        *(each.words | each.point | each.thousand | each.hundreds.keys() for each in said)
    )


@cache
def _points(language: str) -> frozenset[str]:
    return frozenset().union(*(lexicon.numerals.point for lexicon in lexica(language)))


@cache
def _hour_follows(language: str) -> frozenset[str]:
    said = [lexicon.numerals for lexicon in lexica(language)]
    return frozenset().union(*(each.company_before for each in said)) - {","}


def _rough(language: str) -> str:
    return min(lexica(language)[0].numerals.rough)


@cache
def _joining(language: str) -> frozenset[str]:
    said = [lexicon.numerals for lexicon in lexica(language)]
    return frozenset().union(*(each.joined | each.after_hundred for each in said))


@cache
def _well_spelt(language: str) -> dict[str, tuple[str, ...]]:
    """The numerals under their first letters."""
    slips = frozenset().union(*(lexicon.numerals.slips for lexicon in lexica(language)))
    found: dict[str, tuple[str, ...]] = {}
    for word in sorted(_numerals(language) - slips):
        found[word[0]] = (*found.get(word[0], ()), word)
    return found
