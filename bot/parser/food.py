"""What was eaten? Words of food, the amounts before them, and what merely looks like food."""

# ruff: noqa: SIM905 - word sets read best as one string

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from bot.entries import Food, FoodKind
from bot.parser.languages import LEXICA, gathered, lexica, numerals, of_all
from bot.parser.misspelt import no_slips
from bot.parser.moments import meal_names
from bot.parser.numbers import spoken
from bot.parser.page import Page
from bot.parser.phrases import Phrases, spelled
from bot.parser.spelling import SHORTEST, Spelling
from bot.parser.tidy import plain, shown
from bot.parser.tokens import cut
from bot.parser.vocabulary import packed
from bot.parser.vocabulary.foods import ALSO_NOT_FOOD, NOT_FOOD_PHRASES
from bot.parser.vocabulary.sugar import BARE_SUGAR, EATEN, SUGAR_TABLETS


@dataclass(frozen=True, slots=True, kw_only=True)
class Dish:
    """A food named in the text."""

    start: int
    end: int
    kind: FoodKind
    guessed: bool = False  # a word of no list, a slip away from one
    sugar: bool = False  # taken against a low, though named as a reading or a drug is


@cache
def _named(code: str) -> Phrases[FoodKind]:
    return Phrases((words, kind) for kind, words in LEXICA[code].foods.items())


@cache
def _phrases(language: str) -> Phrases[FoodKind]:
    return of_all(language, _named, own_everyday=False)


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
        token
        for lexicon in lexica(language)
        for words in lexicon.foods.values()
        for word in words
        if len(word) > SHORTEST and word.isalpha()
        for token in spelled(word)
    ]
    return Spelling(single, no_slips(language))


def _meant(word: str, language: str) -> str | None:
    """The food meant by a word of no list; the index is made when such a word first comes."""
    return None if word in no_slips(language) else _spelling(language).meant(word)


def find(page: Page, language: str, active: frozenset[int] = frozenset()) -> list[Dish]:
    """Give every food named among the unclaimed words, in order, unclaimed; claim what only
    looks like one (`blood sugar`, `couch potato`), but nothing at the `active` places."""
    not_food, phrases = _not_food(), _phrases(language)
    heads, others = phrases.heads, not_food.heads
    found: list[Dish] = []
    index = 0
    while index < len(page.tokens):
        word = page.tokens[index].word
        if not (word in heads or word in others or word in _SUGAR_BEGINS):
            if (meant := _not_listed(page, index, language)) is not None:
                found.append(meant)
            index += 1
            continue
        named = phrases.longest(page, index, len(page.tokens)) if word in heads else None
        sugar = _sugar(page, index)
        hit = named if named and sugar and named[0] > sugar[0] else sugar or named
        if hit is not None and hit[0] == index + 1 and page.text(index, index + 1).endswith("'s"):
            hit = None  # `papa's speech`
        sweet = hit is not None and _against_low(page.words(index, hit[0]))
        looks = not_food.longest(page, index, len(page.tokens)) if word in others else None
        if hit is not None and index and page.tokens[index - 1].word in LEFT_OUT:
            looks = None  # `bread without sugar, reading 157`
        if looks is not None and index in active:
            index += 1  # `pounding the yam 30 min` is work
        elif looks is not None and (hit is None or looks[0] >= hit[0]):
            page.claim(index, looks[0])
            index = looks[0]
        elif hit is not None:
            found.append(Dish(start=index, end=hit[0], kind=hit[1], sugar=sweet))
            index = hit[0]
        else:
            if (meant := _not_listed(page, index, language)) is not None:
                found.append(meant)
            index += 1
    return found


def _not_listed(page: Page, index: int, language: str) -> Dish | None:
    """More than one of a food that is listed singly (`breads`), or one with a slip in it."""
    word = page.tokens[index].word
    if len(word) <= SHORTEST or not page.free(index):
        return None
    phrases = _phrases(language)
    kind = phrases.whole((word[:-1],)) if word[-1] == "s" and word.isalpha() else None
    if kind is not None:
        return Dish(start=index, end=index + 1, kind=kind, guessed=word[:-1] in ALSO_NOT_FOOD)
    if (meant := _meant(word, language)) is None:
        return None
    kind = phrases.whole((meant,)) or FoodKind.UNKNOWN
    return Dish(start=index, end=index + 1, kind=kind, guessed=True)


@cache
def _sugar_tablets() -> Phrases[bool]:
    return Phrases([(SUGAR_TABLETS, True)])


def _sugar(page: Page, index: int) -> tuple[int, FoodKind] | None:
    """Sugar by a name that is its own only here: `took 3 sugar tablets` and `had some glucose`,
    not `my sugar tablet`, `took glucose 142`."""
    if page.tokens[index].word not in _SUGAR_BEGINS:
        return None
    before = page.words(max(index - 2, 0), index)
    tablets = _sugar_tablets().longest(page, index, len(page.tokens))
    if tablets is not None:
        counted = bool(before) and (before[-1].isdigit() or before[-1] in _COUNTED_BY)
        return (tablets[0], FoodKind.SWEET_FOOD) if counted else None
    if not page.free(index) or page.tokens[index].word == "sugar" or EATEN.isdisjoint(before):
        return None
    if before[-1] in {"my", "mi", "the", "la", "his", "her"}:
        return None
    ahead = [word for word in page.words(index + 1, index + 4) if word not in _NUMBER_BEHIND]
    return None if ahead[:1] and ahead[0][0].isdigit() else (index + 1, FoodKind.SWEET_FOOD)


def _against_low(words: list[str]) -> bool:
    """Whether it is sugar by name: a word of its own, or among others (`sugar tablets`)."""
    named = not _SUGAR_NAMES.isdisjoint(words)
    return named and (len(words) > 1 or words[0] not in {"sugar", "azucar"})


_SUGAR_NAMES = BARE_SUGAR | {"glucotab", "glucotabs", "gluco", "sugar", "azucar"}
_SUGAR_BEGINS = BARE_SUGAR | {"sugar"}
_COUNTED_BY = frozenset("some few more couple of the two three four five unas de".split())
_NUMBER_BEHIND = frozenset("is was of at : = - test reading level es fue".split())


def kinds_of(text: str, language: str = "en") -> tuple[Food, ...]:
    """The foods of a dish's text, each with its kind; a dish of no known food is one unknown."""
    kept = shown(text)
    page = Page(kept, spoken(cut(plain(kept)), numerals(language)))
    dishes = find(page, language)
    foods = [
        Food(text=page.text(dish.start, dish.end), kind=dish.kind)
        for dish in dishes
        if not left_out(page, dish.start)
    ]
    covered = {index for dish in dishes for index in range(dish.start, dish.end)}
    if text.strip().lower() in BARE_SUGAR:  # what is left of `i took glucose`
        return (Food(text=text, kind=FoodKind.SWEET_FOOD),)
    foods.extend(
        Food(text=word, kind=FoodKind.UNKNOWN) for word in _unknown(page, covered, language)
    )
    return tuple(foods)


#: Behind a food these name what it comes without (`quarter pounder no bun`, `tea nae sugar`).
LEFT_OUT = frozenset("no without sin nae minus hold".split())
_LEFT_OUT_TOO = frozenset("added extra any the ni nada de".split())


def left_out(page: Page, index: int) -> bool:
    """Whether the food that begins there is what a dish comes without."""
    while index and page.tokens[index - 1].word in _LEFT_OUT_TOO:
        index -= 1
    return index > 0 and page.tokens[index - 1].word in LEFT_OUT


@cache
def plain_words(language: str) -> frozenset[str]:
    fields = ("filler", "amounts", "sizes", "joining")
    return packed(
        token for field in fields for word in gathered(language, field) for token in spelled(word)
    )


def _unknown(page: Page, covered: set[int], language: str) -> Iterator[str]:
    """Words that may be a food nobody has listed; only where nothing else is known."""
    if covered:
        return
    known = plain_words(language)
    left = [
        index
        for index, token in enumerate(page.tokens)
        if token.word.isalpha() and len(token.word) > 2 and token.word not in known
    ]
    if left:
        yield page.text(left[0], left[-1] + 1)


@cache
def _also_not_food() -> frozenset[str]:
    return frozenset(" ".join(spelled(word)) for word in ALSO_NOT_FOOD)


def sure(page: Page, dish: Dish) -> bool:
    """Whether a food is nothing else (`candy` is a name, too)."""
    return not dish.guessed and " ".join(page.words(dish.start, dish.end)) not in _also_not_food()


def of_several_words(page: Page, language: str, dishes: list[Dish]) -> list[tuple[int, int]]:
    """Where dishes stand whose words mean nothing else; a `roast dinner` is a dinner, too."""
    names = meal_names(language)
    return [
        (dish.start, dish.end)
        for dish in dishes
        if dish.end - dish.start > 1 and page.tokens[dish.end - 1].word not in names
    ]
