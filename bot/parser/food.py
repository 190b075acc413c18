"""What was eaten? Words of food, the amounts before them, and what merely looks like food."""

# ruff: noqa: SIM905 - word sets read best as one string

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from bot.entries import Food, FoodKind
from bot.parser.languages import gathered, lexica, without_everyday
from bot.parser.lexicon import either
from bot.parser.misspelt import known_words
from bot.parser.numbers import spoken, tokens
from bot.parser.page import Page, pattern
from bot.parser.phrases import Phrases, spelled
from bot.parser.spelling import SHORTEST, Spelling
from bot.parser.tidy import plain, shown
from bot.parser.vocabulary.foods import NOT_FOOD_PHRASES


@dataclass(frozen=True, slots=True, kw_only=True)
class Dish:
    """A food named in the text."""

    start: int
    end: int
    kind: FoodKind
    guessed: bool = False  # a word of no list, a slip away from one


@cache
def _phrases(language: str) -> Phrases[FoodKind]:
    return Phrases(
        (without_everyday(language, words), kind)
        for lexicon in lexica(language)
        for kind, words in lexicon.foods.items()
    )


@cache
def _not_food() -> Phrases[bool]:
    return Phrases([(NOT_FOOD_PHRASES, True)])


@cache
def amount_words(language: str) -> frozenset[str]:
    """Units and sizes of food, as single tokens."""
    return frozenset(token for word in gathered(language, "amounts") for token in spelled(word))


@cache
def _spelling(language: str) -> Spelling:
    single = [
        word
        for lexicon in lexica(language)
        for words in lexicon.foods.values()
        for word in words
        if len(word) > SHORTEST and word.isalpha()
    ]
    return Spelling(single, known_words(language))


def _meant(word: str, language: str) -> str | None:
    """The food meant by a word of no list; the index is made when such a word first comes."""
    return None if word in known_words(language) else _spelling(language).meant(word)


def find(page: Page, language: str, active: frozenset[int] = frozenset()) -> list[Dish]:
    """Give every food named among the unclaimed words, in order, unclaimed; claim what only
    looks like one (`blood sugar`, `couch potato`), but nothing at the `active` places."""
    not_food, phrases = _not_food(), _phrases(language)
    found: list[Dish] = []
    index = 0
    while index < len(page.tokens):
        hit = phrases.longest(page, index, len(page.tokens))
        looks = not_food.longest(page, index, len(page.tokens))
        if looks is not None and index in active:
            index += 1  # `pounding the yam 30 min` is work
        elif looks is not None and (hit is None or looks[0] >= hit[0]):
            page.claim(index, looks[0])
            index = looks[0]
        elif hit is not None:
            found.append(Dish(start=index, end=hit[0], kind=hit[1]))
            index = hit[0]
        else:
            if (
                page.free(index)
                and len(page.tokens[index].word) > SHORTEST
                and (meant := _meant(page.tokens[index].word, language))
            ):
                kind = phrases.whole((meant,)) or FoodKind.UNKNOWN
                found.append(Dish(start=index, end=index + 1, kind=kind, guessed=True))
            index += 1
    return found


@dataclass(frozen=True, slots=True)
class _Amounts:
    certain: re.Pattern[str]
    share: re.Pattern[str]
    fraction: re.Pattern[str]
    times: re.Pattern[str]


@cache
def _amounts(language: str) -> _Amounts:
    units = either(gathered(language, "amounts"))
    number = r"\d+(?:\.\d+)?"
    return _Amounts(
        certain=pattern(rf"{number}(?: ?(?:-|to|or|x|/|y|o) {number})?(?: 1 / [2-4]| ½)? {units}"),
        share=pattern(rf"{number} %"),
        fraction=pattern(r"(?:\d{1,2} )?[1-9] / (?:[2-9]|1[0-6])|\d{1,2} ?[½¼¾⅓⅔]|[½¼¾⅓⅔]"),
        times=pattern(r"x \d{1,2}|\d{1,2} x"),
    )


def amounts(page: Page, language: str, dishes: list[Dish], own_small: float) -> set[int]:
    """Give the tokens of amounts of food. A whole number below `own_small`, or a count before the
    plural of a food, is one when food or an unknown word follows."""
    patterns = _amounts(language)
    found: set[int] = set()
    for sought in (patterns.certain, patterns.share, patterns.fraction, patterns.times):
        for span in page.find(sought):
            found.update(range(span.start, span.end))
    starts = {dish.start: dish for dish in dishes}
    for index, token in enumerate(page.tokens):
        if index in found or not page.free(index) or not token.word[0].isdigit():
            continue
        if _counts(page, index, starts, own_small):
            found.add(index)
    return found


def counts_of_words(page: Page, own_small: float) -> set[int]:
    """Small whole numbers right before any word."""
    tokens = page.tokens
    return {
        index
        for index in range(len(tokens) - 1)
        if page.free(index)
        and tokens[index].word.isdigit()
        and int(tokens[index].word) < own_small
        and tokens[index + 1].word.isalpha()
        and page.free(index + 1)
    }


def _counts(page: Page, index: int, starts: dict[int, Dish], own_small: float) -> bool:
    value = (
        float(page.tokens[index].word)
        if page.tokens[index].word.replace(".", "").isdigit()
        else 0.0
    )
    dish = starts.get(index + 1)
    whole = value.is_integer()
    if whole and value < own_small and _behind(page, index, starts):
        return True
    if dish is None:
        after = page.tokens[index + 2].word if index + 2 < len(page.tokens) else ""
        return (
            value < own_small
            and whole
            and index + 2 in starts
            and page.free(index + 1)
            and (
                page.tokens[index + 1].word.isalpha()
                and page.tokens[index + 1].word
                not in {"and", "y", "con", "with", "before", "after", "then"}
                and after != ""
            )
        )
    several = (
        page.tokens[dish.end - 1].word.endswith("s")
        and page.tokens[dish.end - 1].word not in _SINGULAR
    )
    if own_small < 6:  # mmol/L: 5 may be a value, 5 almonds are not
        return (whole and (value <= own_small or several)) or (value % 0.5 == 0 and value < 3)
    counted = whole or value < 3  # `1.5`; 8.3 is more like a value
    return (value < own_small and counted) or (several and whole and value <= 50)


def _behind(page: Page, index: int, starts: dict[int, Dish]) -> bool:
    """`chapati 2, dal`: a count behind its food, at a mark."""
    follows = page.tokens[index + 1].word if index + 1 < len(page.tokens) else ""
    return follows in {",", "+", "&", "nos", "and"} and any(
        index - back in starts and starts[index - back].end == index for back in range(1, 4)
    )


_SINGULAR = frozenset(
    "hummus couscous asparagus molasses swiss grits oats greens noodles beans lentils "
    "chips fries lentejas frijoles peas leftovers".split()
)


def kinds_of(text: str, language: str = "en") -> tuple[Food, ...]:
    """The foods of a dish's text, each with its kind; a dish of no known food is one unknown."""
    kept = shown(text)
    page = Page(kept, spoken(tokens(kept, plain(kept)), [lex.numerals for lex in lexica(language)]))
    foods = [
        Food(text=page.text(dish.start, dish.end), kind=dish.kind) for dish in find(page, language)
    ]
    covered = {index for dish in find(page, language) for index in range(dish.start, dish.end)}
    foods.extend(
        Food(text=word, kind=FoodKind.UNKNOWN) for word in _unknown(page, covered, language)
    )
    return tuple(foods)


@cache
def _plain_words(language: str) -> frozenset[str]:
    fields = ("filler", "amounts", "sizes", "joining")
    return frozenset(
        token for field in fields for word in gathered(language, field) for token in spelled(word)
    )


def _unknown(page: Page, covered: set[int], language: str) -> Iterator[str]:
    """Words that may be a food nobody has listed; only where nothing else is known."""
    if covered:
        return
    plain_words = _plain_words(language)
    left = [
        index
        for index, token in enumerate(page.tokens)
        if token.word.isalpha() and len(token.word) > 2 and token.word not in plain_words
    ]
    if left:
        yield page.text(left[0], left[-1] + 1)
