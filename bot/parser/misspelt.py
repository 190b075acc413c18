"""Which words were meant to be words that the reader looks for? `diziness`, `befroe`, `walkd`."""

# ruff: noqa: SIM905 - word sets read best as one string

import re
from collections.abc import Container, Iterable, Iterator
from dataclasses import fields, replace
from functools import cache
from itertools import chain

from bot.parser import by_sound
from bot.parser.graph import spelled, words_in
from bot.parser.languages import LEXICA, lexica
from bot.parser.lexicon import Lexicon
from bot.parser.page import Token
from bot.parser.spelling import SHORTEST, Spelling
from bot.parser.vocabulary import Block
from bot.parser.vocabulary.eating import EATING_VERBS, HOW_FULL
from bot.parser.vocabulary.real_words import REAL_WORDS
from bot.parser.vocabulary.real_words_spanish import REAL_WORDS_SPANISH
from bot.parser.vocabulary.slips import (
    BESIDE,
    SLIPS,
    SLIPS_AT_HOME,
    SOUNDED,
    WATCHED,
    WITHIN_SIGNS,
)
from bot.parser.vocabulary.symptom_idioms import IDIOM_PAIRS
from bot.parser.vocabulary.symptom_pairs import BETWEEN, PAIRS
from bot.parser.vocabulary.symptoms import NOT_SYMPTOMS
from bot.parser.vocabulary.whereabouts import DOING, KEPT, OUTAGES, PLACES
from bot.parser.vocabulary.work import FIELD, TOIL, WORK

#: Concepts of requests whose longer words are looked for with a slip in them.
_ASKED = ("wipe", "summary_said", "record_said", "goals_said", "export_said", "contact", "program")

_HELD = re.compile(r"([a-z])\1{2,}")


def mended(tokens: list[Token], language: str) -> list[Token]:
    """Put the word that was meant on the line; what is shown stays as typed."""
    known, slips, listed = no_slips(language), _slips(language), known_words(language)
    words = [token.word for token in tokens]
    if not _MEANT_BESIDE.isdisjoint(words):
        tokens = _beside(tokens)
        words = [token.word for token in tokens]
    unlike = [
        word for word in words if (word not in listed and word.isalpha()) or word[-2:] == "in"
    ]
    if not unlike and slips.keys().isdisjoint(words):
        return tokens  # most messages have no slip in them
    mended: list[Token] = []
    strangers = 0
    for token in _parted(tokens, language):
        meant = slips.get(token.word)
        unknown = meant is None and token.word not in listed and token.word.isalpha()
        if unknown and len(token.word) >= by_sound.SHORTEST and token.word not in known:
            strangers += 1
            meant = _meant(token.word, language, sounding=strangers <= _MOST_STRANGERS)
            meant = slips.get(meant or "", meant)  # a list may hold it with a slip of its own
        mended.append(replace(token, word=meant) if meant else token)
    return mended


def _parted(tokens: list[Token], language: str) -> Iterator[Token]:
    """With a g where one is not spoken, and a space where one was left out."""
    known, listed = no_slips(language), known_words(language)
    for token in tokens:
        whole = _without_g(token, known) if token.word.endswith("in") else token
        if whole.word in listed:
            yield whole
        else:
            yield from _apart(whole, language)


#: Nobody's message has more words that no list knows and that still mean something by their sound.
_MOST_STRANGERS = 60


def _beside(tokens: list[Token]) -> list[Token]:
    """Words that are meant as others behind certain words (`half an our`), and `an` for `and`."""
    mended: list[Token] = []
    before = ""
    for at, token in enumerate(tokens):
        word = BESIDE.get((before, token.word), token.word)
        behind = tokens[at + 1].word if at + 1 < len(tokens) else ""
        if word == "4" and before.isalpha() and behind in _SOME:
            word = "for"  # `104 going 4 a walk`
        if word == "super" and not mended and behind == ":":
            word = "supper"
        if word == "an" and before.isalpha() and before not in _NO_LIST and _AND_THEN.match(behind):
            word = "and"
        mended.append(token if word is token.word else replace(token, word=word))
        before = SLIPS.get(word, word)
    return mended


#: Where none of them stands, no word is meant as another for what stands beside it.
_MEANT_BESIDE = frozenset({"4", "super", "an"}).union(word for _, word in BESIDE)


#: Before another vowel or an h that is not spoken `an` is right.
_AND_THEN = re.compile(r"[bcdfgjklmnpqrstvwxyz][a-z]")
_SOME = frozenset({"a", "my", "the"})
_NO_LIST = frozenset(
    """
    had have having has ate eat eating for in with of at on was is just to from like took half be
    got get as by it thats than drank drinking about after before quite such what
    """.split()
)


#: Words of their own that end as `spinnin` does.
_NO_G_LEFT_OUT = frozenset({"aspirin", "raisin", "statin", "pekin", "basin", "cabin", "robin"})


def _without_g(token: Token, known: Container[str]) -> Token:
    """`spinnin`, `waitin`: a g that is not spoken, behind a word that ends as they do."""
    word = token.word
    if len(word) < 5 or word in _NO_G_LEFT_OUT:
        return token
    return replace(token, word=f"{word}g") if f"{word}g" in known else token


def _apart(token: Token, language: str) -> list[Token]:
    """`prelunch`, `afterdinner`: a moment and what it is a moment of, with no space between."""
    glued = _GLUED.fullmatch(token.word)
    if glued is None or glued["of"] not in _of_moments(language):
        return [token]
    cut = token.start + len(glued["moment"])
    return [
        replace(token, word=glued["moment"], end=cut),
        replace(token, word=glued["of"], start=cut),
    ]


@cache
def _of_moments(language: str) -> frozenset[str]:
    """What a moment is before or after, in one word."""
    names = (words for lexicon in lexica(language) for words in lexicon.meal_names.values())
    return _EATEN.union(*names)


_GLUED = re.compile(r"(?P<moment>pre|post|before|after)(?P<of>[a-z]{3,})")
_EATEN = frozenset({"meal", "meals", "food", "eating", "walk", "workout", "exercise", "gym"})


def _meant(word: str, language: str, *, sounding: bool) -> str | None:
    """The word meant by a slip of the finger, by a letter held down (`goood`), or, if that is asked
    for, the one that it sounds like."""
    if _HELD.search(word):
        for times in (r"\1\1", r"\1"):
            if (short := _HELD.sub(times, word)) in known_words(language):
                return short
    near = _spelling(language).meant(word)
    return near or (_sounding(word, language) if sounding else None)


def _sounding(word: str, language: str) -> str | None:
    """The word meant by one that is spelt as it sounds."""
    sounding = (_sounds(lexicon.code).meant(word) for lexicon in lexica(language))
    return next(filter(None, sounding), None)


@cache
def _sounds(code: str) -> by_sound.Sounds:
    return by_sound.Sounds(SOUNDED[code], _looked_for(code), code)


@cache
def _slips(language: str) -> dict[str, str]:
    """Slips by what is typed: those that stand by themselves, and those within a sign's phrase."""
    return WITHIN_SIGNS | SLIPS | SLIPS_AT_HOME.get(lexica(language)[0].code, {})


@cache
def _spelling(language: str) -> Spelling:
    wanted = chain.from_iterable(_looked_for(lexicon.code) for lexicon in lexica(language))
    return Spelling(dict.fromkeys(wanted), no_slips(language))


@cache
def _looked_for(code: str) -> tuple[str, ...]:
    """The words of one language that are looked for with a slip in them."""
    lexicon = LEXICA[code]
    lists: list[Iterable[str]] = [lexicon.before, lexicon.after]
    lists += (*lexicon.moments.values(), *lexicon.meal_names.values())
    lists += lexicon.symptoms.values()
    lists += (lexicon.activities, lexicon.drugs, lexicon.correction, lexicon.removal)
    lists += (lexicon.glucose, lexicon.skip, lexicon.strips, lexicon.meter, lexicon.meter_says)
    words = [word for words in lists for word in _words(words)]
    for concept in _ASKED:
        named = _words(lexicon.intents.get(concept, ()))
        words += (word for word in named if len(word) > SHORTEST)
    words += WATCHED[code]
    return tuple(dict.fromkeys(words))


def is_strange(word: str, known: Container[str]) -> bool:
    """Whether it is a word, and none of the known ones."""
    return word.isalpha() and len(word) > 2 and word not in known


def _words(phrases: Iterable[str]) -> list[str]:
    """The words of some phrases, each once, in the order of their lists."""
    apart = dict.fromkeys(word for phrase in phrases for word in phrase.split())
    return [word for each in apart for word in spelled(each) if word.isalpha()]


def known_words(language: str) -> frozenset[str]:
    """Every word that any language knows, the same in each: none of them is misspelt."""
    return _listed()


def no_slips(language: str) -> Container[str]:
    """Every word that any list knows, and the common words that no list knows (`campus`)."""
    return _not_mended()


@cache
def _listed() -> frozenset[str]:
    every = (words for lexicon in LEXICA.values() for words in _lists(lexicon))
    return frozenset(word for words in every for word in words_in(words) if word.isalpha())


class _Either:
    """Words of several sets; made into one they would take a megabyte more."""

    __slots__ = ("_sets",)

    def __init__(self, *sets: frozenset[str]) -> None:
        self._sets = sets

    def __contains__(self, word: object) -> bool:
        for each in self._sets:  # noqa: SIM110 - `any` takes three times as long
            if word in each:
                return True
        return False


@cache
def _not_mended() -> Container[str]:
    return _Either(_listed(), _of_halves() - _listed(), REAL_WORDS, REAL_WORDS_SPANISH)


def _of_halves() -> frozenset[str]:
    """Words of signs said in two halves, of what only sounds like a sign, of where one is, and
    those that are looked for though no list holds them."""
    said = [*BETWEEN, *PLACES, *DOING, *KEPT, *OUTAGES, *NOT_SYMPTOMS, *WORK, *FIELD, *TOIL]
    said += EATING_VERBS + HOW_FULL
    for _, *halves in PAIRS + IDIOM_PAIRS:
        said += [phrase for half in halves for phrase in half]
    watched = chain.from_iterable(WATCHED.values())
    return frozenset(word for phrase in said for word in spelled(phrase)).union(watched)


def _lists(lexicon: Lexicon) -> Iterator[Iterable[str]]:
    """All word lists of a lexicon."""
    for home in (lexicon, lexicon.times):
        for each in fields(home):
            value = getattr(home, each.name)
            if isinstance(value, tuple | Block):
                yield value
            elif isinstance(value, dict):
                yield (key for key in value if isinstance(key, str))
                yield from (words for words in value.values() if isinstance(words, tuple | Block))
    yield lexicon.numerals.words
