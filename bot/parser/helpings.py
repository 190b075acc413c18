"""How much of it? Numbers, units and shares of food, before a dish and behind it."""

# ruff: noqa: SIM905 - word sets read best as one string

import re
from dataclasses import dataclass
from functools import cache

from bot.parser.food import LEFT_OUT, Dish, plain_words
from bot.parser.languages import gathered, lexica
from bot.parser.lexicon import either
from bot.parser.misspelt import is_strange, known_words, no_slips
from bot.parser.page import Page, Span, pattern
from bot.parser.phrases import spelled


@dataclass(frozen=True, slots=True)
class _Amounts:
    certain: re.Pattern[str]
    share: re.Pattern[str]
    fraction: re.Pattern[str]
    times: re.Pattern[str]


#: What may stand between a number and its unit (`1 deep bowl`, `2 heaped spoons`).
_HOW = (
    "(?:deep|heaped|heaping|flat|level|rounded|full|shallow|soup|tea|wooden|serving|generous|good"
    "|wee|proper|normal|regular|single|dinner|side|saucer|child size|kids)"
)


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
    page: Page,
    language: str,
    dishes: list[Dish],
    own_small: float,
    busy: set[int],
    *,
    answer: bool = False,
) -> set[int]:
    """Give the tokens of amounts of food. A whole number below `own_small`, or a count before the
    plural of a food, is one when food or an unknown word follows; in an `answer` to what is eaten,
    any small count behind a food or an unknown word, too."""
    patterns = _amounts(language)
    found: set[int] = set()
    for sought in (patterns.certain, patterns.share, patterns.fraction, patterns.times):
        for span in page.find(sought):
            if busy.isdisjoint(range(span.start, span.end)):  # `142 square dancing`
                found.update(range(_begun(page, span), span.end))
    starts = {dish.start: dish for dish in dishes}
    for index, token in enumerate(page.tokens):
        if _bracketed(page, index, starts):
            found.add(index)
        if index in found or not page.free(index) or not token.word[0].isdigit():
            continue
        if (
            _counts(page, index, starts, own_small, language)
            or _counted_behind(page, index, starts, own_small, language, answer=answer)
            or _beside_a_value(page, index, starts, language)
        ):
            found.update(_range_to(page, index))
    return found


def _range_to(page: Page, index: int) -> range:
    """A count of pieces with the lower end before it (`2-3 tamales`)."""
    words = page.words(index - 2, index + 1) if index >= 2 else []
    few = len(words) == 3 and words[1] in _UP_TO and words[0].isdigit() and words[2].isdigit()
    if few and page.free(index - 2) and int(words[0]) < int(words[2]) <= _PIECES:
        return range(index - 2, index + 1)
    return range(index, index + 1)


#: The later number of a range is at most so many times the earlier one.
_RANGE = 5
#: From here on, parts of a cup other than quarters are no amount.
_HELPINGS = 2
_UP_TO = frozenset({"-", "to", "or", "o"})
_WEIGHED = frozenset(
    "g gm gms gr gram grams gramo gramos kg ml mls cl dl l lt litre litres liter liters litro oz "
    "ounce ounces onza onzas lb lbs pound pounds".split()
)


def _begun(page: Page, span: Span) -> int:
    """Where an amount begins: a number before it that cannot be of it is a value of its own
    (`6.8 - 100 g rice`, `193 1/2 plate`, `14.7 pieces of toast`)."""
    words = page.words(span.start, span.end)
    first = words[0]
    if not first.replace(".", "").isdigit():
        return span.start
    if len(words) > 2 and words[1] in _UP_TO and words[2].replace(".", "").isdigit():
        low, upto = float(first), float(words[2])
        return span.start if low < upto <= _RANGE * low else span.start + 2
    if words[1:3] == ["1", "/"] or words[1:2] in (["½"], ["half"], ["media"], ["medio"]):
        return span.start if first.isdigit() and int(first) <= _PIECES else span.start + 1
    counted = len(words) > 1 and _WEIGHED.isdisjoint(words)
    if counted and float(first) >= _HELPINGS and not (float(first) * 4).is_integer():
        return span.start + 1
    return span.start


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
    unit; at the end of the message too (`pakora 2`), where it is no value in mg/dL or where what
    is eaten is asked for."""
    word = page.tokens[index].word
    if not index or not word.isdigit() or int(word) > _PIECES:
        return False
    before = page.tokens[index - 1].word
    follows = page.tokens[index + 1].word if index + 1 < len(page.tokens) else ""
    if follows in {"with", "con", "w", "wi"}:
        return _ends(starts, index)
    at_end = index + 1 == len(page.tokens)
    if own_small > _PIECES and (at_end or _goes_on(page, index + 1, language)):
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
    worded = follows.isalpha() and len(follows) > 2 and follows not in plain_words(language)
    return valued and page.free(index + 1) and (index + 1 in starts or worded)


def _strange(word: str, language: str) -> bool:
    """Whether no list holds the word."""
    return is_strange(word, known_words(language))


#: Behind a count they tell more of the dish (`cevapi 5 in half lepinja`).
_MORE_OF_IT = frozenset("in inside without no of cu ak en sin de avec".split())


def _goes_on(page: Page, index: int, language: str) -> bool:
    """Whether a word there tells more of a dish: `6 szt with onion`, `2 revueltas`, `3 at 8`."""
    if index + 1 >= len(page.tokens):
        return False
    word, behind = page.tokens[index].word, page.tokens[index + 1].word
    if word == "at":
        return behind[0].isdigit()
    if not page.free(index):
        return False
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
    named = _strange(word, language) or word in food_words(language)
    return joined and page.free(index + 1) and named


@cache
def food_words(language: str) -> frozenset[str]:
    """Words of the names of foods that mean nothing else to the reader (`pav` of `misal pav`)."""
    named = {
        token
        for lexicon in lexica(language)
        for words in lexicon.foods.values()
        for word in words
        for token in spelled(word)
    }
    return frozenset(named - set(gathered(language, "filler")))


def _bracketed(page: Page, index: int, starts: dict[int, Dish]) -> bool:
    """`crumpets (2) with butter`: a count in brackets behind its food."""
    word = page.tokens[index].word
    around = page.words(index - 1, index + 2)[::2] if index else []
    return (
        around == ["(", ")"]
        and word.isdigit()
        and int(word) <= _PIECES
        and _ends(starts, index - 1)
    )


_JOINS = frozenset({"and", "with", "plus", "+", ",", "n", "y", "con", "e"})


def _behind(page: Page, index: int, starts: dict[int, Dish]) -> bool:
    """`chapati 2, dal`: a count behind its food, at a mark."""
    follows = page.tokens[index + 1].word if index + 1 < len(page.tokens) else ""
    return follows in {",", "+", "&", "nos", "and"} and _ends(starts, index)


_SINGULAR = frozenset(
    "hummus couscous asparagus molasses swiss grits oats greens noodles beans lentils "
    "chips fries lentejas frijoles peas leftovers".split()
)


_HELD_IN = frozenset(
    "can cans bowl bowls plate plates cup cups glass glasses mug mugs bottle slice slices packet "
    "tin spoon spoons tbsp portion portions serving servings helping helpings handful scoop scoops "
    "pint pints ladle ladles carton spoonful spoonfuls plateful bowlful slab wedge taza plato "
    "vaso".split()
)


def held(page: Page, start: int, end: int, language: str) -> bool:
    """`half a can of frobble`: what comes in a vessel and has no other meaning is eaten."""
    words = page.words(start, end)
    for at in range(start + 1, end - 1):
        if page.tokens[at].word in {"of", "de"} and page.tokens[at - 1].word in _HELD_IN:
            known = no_slips(language)
            behind = words[at + 1 - start :]
            return len(behind) <= _MOST and all(is_strange(word, known) for word in behind)
    return False


_MOST = 3


def without(page: Page, dishes: list[Dish], strange: list[int], last: int) -> bool:
    """`kota no chips`: what comes without food is food."""
    return any(
        page.tokens[dish.start - 1].word in LEFT_OUT and dish.end <= last
        for dish in dishes
        if dish.start - 2 in {*strange, *(each.end - 1 for each in dishes)}
    )


def begun_before(page: Page, start: int, begun: int, language: str) -> int:
    """Where a dish begins that is named by a strange word and what it comes without."""
    if begun - 2 < start or page.tokens[begun - 1].word not in LEFT_OUT:
        return begun
    dish = page.tokens[begun - 2].word
    return begun - 2 if dish.isalpha() and dish not in no_slips(language) else begun
