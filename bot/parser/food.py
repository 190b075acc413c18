"""What was eaten? Words of food, the amounts before them, and what merely looks like food."""

# ruff: noqa: SIM905 - word sets read best as one string

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from bot.entries import Food, FoodKind
from bot.parser.languages import LEXICA, gathered, lexica, of_all
from bot.parser.lexicon import either
from bot.parser.misspelt import known_words, no_slips
from bot.parser.numbers import spoken, tokens
from bot.parser.page import Page, pattern
from bot.parser.phrases import Phrases, spelled
from bot.parser.spelling import SHORTEST, Spelling
from bot.parser.tidy import plain, shown
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
    found: list[Dish] = []
    index = 0
    while index < len(page.tokens):
        hit = _sugar(page, index) or phrases.longest(page, index, len(page.tokens))
        sweet = hit is not None and _against_low(page.words(index, hit[0]))
        looks = not_food.longest(page, index, len(page.tokens))
        if looks is not None and index in active:
            index += 1  # `pounding the yam 30 min` is work
        elif looks is not None and (hit is None or looks[0] >= hit[0]):
            page.claim(index, looks[0])
            index = looks[0]
        elif hit is not None:
            found.append(Dish(start=index, end=hit[0], kind=hit[1], sugar=sweet))
            index = hit[0]
        else:
            several = _several(page, index, language)
            if several is not None:
                found.append(several)
            elif (
                page.free(index)
                and len(page.tokens[index].word) > SHORTEST
                and (meant := _meant(page.tokens[index].word, language))
            ):
                kind = phrases.whole((meant,)) or FoodKind.UNKNOWN
                found.append(Dish(start=index, end=index + 1, kind=kind, guessed=True))
            index += 1
    return found


def _several(page: Page, index: int, language: str) -> Dish | None:
    """More than one of a food that is listed singly (`breads`)."""
    word = page.tokens[index].word
    if not (page.free(index) and word.endswith("s") and len(word) > SHORTEST):
        return None
    if word in known_words(language) or not word.isalpha():
        return None
    kind = _phrases(language).whole((word[:-1],))
    if kind is None:
        return None
    return Dish(start=index, end=index + 1, kind=kind, guessed=word[:-1] in ALSO_NOT_FOOD)


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


@dataclass(frozen=True, slots=True)
class _Amounts:
    certain: re.Pattern[str]
    share: re.Pattern[str]
    fraction: re.Pattern[str]
    times: re.Pattern[str]


#: What may stand between a number and its unit (`1 deep bowl`, `2 heaped spoons`).
_HOW = "(?:deep|heaped|heaping|flat|level|rounded|full|shallow|soup|tea|wooden|serving|generous|good|wee|proper|normal|regular|single|dinner|side|saucer|child size|kids)"


@cache
def _amounts(language: str) -> _Amounts:
    units = either(gathered(language, "amounts"))
    number = r"\d+(?:\.\d+)?"
    units = rf"(?:{_HOW} )?(?:{units}|[a-z]{{3,}}ful(?:l|s|ls)?)"
    return _Amounts(
        certain=pattern(rf"{number}(?: ?(?:-|to|or|x|/|y|o) {number})?(?: 1 / [2-4]| ½)? {units}"),
        share=pattern(rf"{number} %"),
        fraction=pattern(r"(?:\d{1,2} )?[1-9] / (?:[2-9]|1[0-6])|\d{1,2} ?[½¼¾⅓⅔]|[½¼¾⅓⅔]"),
        times=pattern(r"x \d{1,2}|\d{1,2} x"),
    )


def amounts(
    page: Page, language: str, dishes: list[Dish], own_small: float, *, answer: bool = False
) -> set[int]:
    """Give the tokens of amounts of food. A whole number below `own_small`, or a count before the
    plural of a food, is one when food or an unknown word follows; in an `answer` to what is eaten,
    any small count behind a food or an unknown word, too."""
    patterns = _amounts(language)
    found: set[int] = set()
    for sought in (patterns.certain, patterns.share, patterns.fraction, patterns.times):
        for span in page.find(sought):
            found.update(range(span.start, span.end))
    starts = {dish.start: dish for dish in dishes}
    for index, token in enumerate(page.tokens):
        if index in found or not page.free(index) or not token.word[0].isdigit():
            continue
        if (
            _counts(page, index, starts, own_small, language)
            or _counted_behind(page, index, starts, own_small, language, answer=answer)
            or _beside_a_value(page, index, starts, language)
        ):
            found.add(index)
    return found


#: Nobody eats more pieces of a thing at a time and counts them (common practice, no source).
_PIECES = 12


def _counted_behind(
    page: Page,
    index: int,
    starts: dict[int, Dish],
    own_small: float,
    language: str,
    *,
    answer: bool,
) -> bool:
    """`weetbix 3 with trim milk`: a whole number behind food that more food follows, whatever the
    unit; what is eaten being asked for, at the end of the message too (`pakora 2`)."""
    word = page.tokens[index].word
    if not index or not word.isdigit() or int(word) > _PIECES:
        return False
    before = page.tokens[index - 1].word
    follows = page.tokens[index + 1].word if index + 1 < len(page.tokens) else ""
    if follows in {"with", "con", "w", "wi"}:
        return _ends(starts, index)
    if own_small > _PIECES and _goes_on(page, index + 1, language):
        return _ends(starts, index)  # of mg/dL no value
    return answer and page.free(index - 1) and (_ends(starts, index) or _strange(before, language))


def _beside_a_value(page: Page, index: int, starts: dict[int, Dish], language: str) -> bool:
    """`10 pelmeni, 6.1 before`: with a decimal number elsewhere, a whole one before food or any
    word that could be food counts, though it could be mmol/L."""
    word = page.tokens[index].word
    if not word.isdigit() or int(word) > _PIECES or index + 1 >= len(page.tokens):
        return False
    valued = any(
        "." in token.word and token.word.replace(".", "").isdigit() and page.free(at)
        for at, token in enumerate(page.tokens)
        if at != index
    )
    follows = page.tokens[index + 1].word
    worded = follows.isalpha() and len(follows) > 2 and follows not in _plain_words(language)
    return valued and page.free(index + 1) and (index + 1 in starts or worded)


def _strange(word: str, language: str) -> bool:
    """Whether no list holds the word."""
    return word.isalpha() and len(word) > 2 and word not in known_words(language)


#: Behind a count they tell more of the dish (`cevapi 5 in half lepinja`).
_MORE_OF_IT = frozenset("in inside without no of cu ak en sin de avec".split())


def _goes_on(page: Page, index: int, language: str) -> bool:
    """Whether a word there tells more of a dish: `6 szt with onion`, `2 revueltas`, `3 at 8`."""
    if not page.free(index) or index + 1 >= len(page.tokens):
        return False
    word, behind = page.tokens[index].word, page.tokens[index + 1].word
    if word == "at":
        return behind[0].isdigit()
    return word in _MORE_OF_IT or _strange(word, language)


_LONGEST = 8


def _ends(starts: dict[int, Dish], index: int) -> bool:
    """Whether a food ends right before a token."""
    return any(
        index - back in starts and starts[index - back].end == index
        for back in range(1, _LONGEST + 1)
    )


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


_NO_DISH = frozenset("and y con with before after then".split())


def _counts(
    page: Page, index: int, starts: dict[int, Dish], own_small: float, language: str
) -> bool:
    word = page.tokens[index].word
    value = float(word) if word.replace(".", "").isdigit() else 0.0
    dish = starts.get(index + 1)
    whole = value.is_integer()
    # `idli 4, sambar`: more like a count than 4 mmol/L
    most = max(own_small, _PIECES) if index + 2 in starts else own_small
    if whole and value < most and _behind(page, index, starts):
        return True
    if dish is None:
        follows = page.tokens[index + 1].word if index + 2 in starts else ""
        if index + 3 in starts and page.words(index + 2, index + 3) in (["of"], ["de"]):
            follows = page.tokens[index + 1].word  # `3 fingers of plantain`
        between = follows.isalpha() and follows not in _NO_DISH and page.free(index + 1)
        counted = between or _of_another(page, index, starts, language)
        return whole and value < own_small and counted
    several = (
        page.tokens[dish.end - 1].word.endswith("s")
        and page.tokens[dish.end - 1].word not in _SINGULAR
    )
    if own_small < 6:  # mmol/L: 5 may be a value, 5 almonds are not
        return (whole and (value <= own_small or several)) or (value % 0.5 == 0 and value < 3)
    counted = whole or value < 3  # `1.5`; 8.3 is more like a value
    return (value < own_small and counted) or (several and whole and value <= 50)


def _of_another(page: Page, index: int, starts: dict[int, Dish], language: str) -> bool:
    """`borscht and 2 pampushky`: a count joined to a food, before a word that no list holds."""
    if index < 2 or index + 1 >= len(page.tokens):
        return False
    joins, word = page.tokens[index - 1].word, page.tokens[index + 1].word
    joined = joins in _JOINS and _ends(starts, index - 1)
    named = _strange(word, language) or word in _food_words(language)
    return joined and page.free(index + 1) and named


@cache
def _food_words(language: str) -> frozenset[str]:
    """Words of the names of foods that mean nothing else to the reader (`pav` of `misal pav`)."""
    named = {
        token
        for lexicon in lexica(language)
        for words in lexicon.foods.values()
        for word in words
        for token in spelled(word)
    }
    return frozenset(named - set(gathered(language, "filler")))


_JOINS = frozenset({"and", "with", "plus", "+", ",", "n", "y", "con", "e"})


def _behind(page: Page, index: int, starts: dict[int, Dish]) -> bool:
    """`chapati 2, dal`: a count behind its food, at a mark."""
    follows = page.tokens[index + 1].word if index + 1 < len(page.tokens) else ""
    return follows in {",", "+", "&", "nos", "and"} and _ends(starts, index)


_SINGULAR = frozenset(
    "hummus couscous asparagus molasses swiss grits oats greens noodles beans lentils "
    "chips fries lentejas frijoles peas leftovers".split()
)


def kinds_of(text: str, language: str = "en") -> tuple[Food, ...]:
    """The foods of a dish's text, each with its kind; a dish of no known food is one unknown."""
    kept = shown(text)
    page = Page(kept, spoken(tokens(kept, plain(kept)), [lex.numerals for lex in lexica(language)]))
    dishes = find(page, language)
    foods = [
        Food(text=page.text(dish.start, dish.end), kind=dish.kind)
        for dish in dishes
        if not left_out(page, dish.start)
    ]
    covered = {index for dish in dishes for index in range(dish.start, dish.end)}
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
