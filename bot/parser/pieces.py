"""How many pieces? Whole numbers before a food and behind it, that no glucose could be."""

# ruff: noqa: SIM905 - word sets read best as one string

from bot.parser.food import Dish, plain_words
from bot.parser.languages import filler
from bot.parser.misspelt import is_strange, known_words, no_slips
from bot.parser.moments import meal_names
from bot.parser.page import Page

#: Nobody eats more pieces of a thing at a time and counts them (common practice, no source).
MOST_PIECES = 12


#: Between the two ends of a count.
UP_TO = frozenset({"-", "to", "or", "o"})


def counted(
    page: Page,
    index: int,
    starts: dict[int, Dish],
    own_small: float,
    language: str,
    *,
    answer: bool,
    decimals: bool,
) -> bool:
    """Whether a number counts pieces of food; `starts` are the dishes by where they begin, and
    `decimals` says whether a free number of the message is one. Nobody counts `7.0 fishcakes`."""
    return not page.tokens[index].word.endswith(".0") and (
        _counts(page, index, starts, own_small, language)
        or _counted_behind(
            page, index, starts, own_small, language, answer=answer, decimals=decimals
        )
        or (decimals and _beside_a_value(page, index, starts, language))
        or _behind_a_verb(page, index, language)
        or _joined(page, index, starts, own_small, language)
    )


def range_to(page: Page, index: int) -> range:
    """A count of pieces with the lower end before it (`2-3 tamales`)."""
    words = page.words(index - 2, index + 1) if index >= 2 else []
    few = len(words) == 3 and words[1] in UP_TO and words[0].isdigit() and words[2].isdigit()
    if few and page.free(index - 2) and int(words[0]) < int(words[2]) <= MOST_PIECES:
        return range(index - 2, index + 1)
    return range(index, index + 1)


def _counted_behind(
    page: Page,
    index: int,
    starts: dict[int, Dish],
    own_small: float,
    language: str,
    *,
    answer: bool,
    decimals: bool,
) -> bool:
    """`weetbix 3 with trim milk`: a whole number behind food that more food follows, whatever the
    unit; at the end of the message too (`pakora 2`), where it is no value in mg/dL or where what
    is eaten is asked for."""
    word = page.tokens[index].word
    if not index or not word.isdigit() or int(word) > MOST_PIECES:
        return False
    before = page.tokens[index - 1].word
    follows = page.tokens[index + 1].word if index + 1 < len(page.tokens) else ""
    if follows in {"with", "con", "w", "wi"}:
        return _ends(starts, index)
    at_end = index + 1 == len(page.tokens)
    timed = page.words(index + 1, index + 3) == ["a", "las"] or (
        follows == "at"
        and page.words(index + 2, index + 3)[:1] != []
        and page.tokens[index + 2].word[0].isdigit()
    )
    if timed and (decimals or own_small > MOST_PIECES):
        return _ends(starts, index)  # `mandazi 2 at 4pm 9.6`
    if own_small > MOST_PIECES and (at_end or _goes_on(page, index + 1, language)):
        return _ends(starts, index)  # of mg/dL no value
    return answer and page.free(index - 1) and (_ends(starts, index) or _strange(before, language))


def _beside_a_value(page: Page, index: int, starts: dict[int, Dish], language: str) -> bool:
    """`10 pelmeni, 6.1 before`: with a decimal number elsewhere (or `6 before`), a whole one before
    food or any word that could be food counts, though it could be mmol/L."""
    word = page.tokens[index].word
    if not word.isdigit() or int(word) > MOST_PIECES or index + 1 >= len(page.tokens):
        return False
    follows = page.tokens[index + 1].word
    worded = follows.isalpha() and len(follows) > 2 and follows not in plain_words(language)
    return page.free(index + 1) and (index + 1 in starts or worded)


_EATEN = frozenset(
    "eat ate eaten eating had have having drank drinking comi como comiendo comimos tome tomando "
    "chop chopped scoffed munched".split()
)


def _behind_a_verb(page: Page, index: int, language: str) -> bool:
    """`ate 2 frobbles with ham`: a count behind eating, before a word that no list holds."""
    words = page.words(max(index - 1, 0), index + 2)
    counted = len(words) == 3 and words[1].isdigit() and int(words[1]) <= MOST_PIECES
    return counted and words[0] in _EATEN and page.free(index + 1) and _strange(words[2], language)


_WITH = frozenset({"with", "w", "wi", "con"})
_AND = frozenset({"and", "n", "y", "e", "+", "plus"})
#: So far behind the name of a meal what was eaten is still listed.
_LISTED = 12
#: Of small things, nobody counts more (common practice, no source).
_MOST_OF_ALL = 30


def _joined(
    page: Page, index: int, starts: dict[int, Dish], own_small: float, language: str
) -> bool:
    """Whether a count stands where food is listed, before food or a word that no list knows:
    `dinner: pap with 2 frobbles`, `1 fist of pap and 20 frobs`, `lunch: 2 frobs and pap`."""
    words = page.words(max(index - 1, 0), index + 2)
    if len(words) < 3 or not words[1].isdigit() or not page.free(index + 1):
        return False
    behind, count = words[2], int(words[1])
    if len(behind) < 3 or not behind.isalpha():
        return False
    new = behind not in no_slips(language)
    food = new or index + 1 in starts
    before = page.words(max(index - _LISTED, 0), index)
    if words[0] in _WITH:
        return food and len(before) > 1
    named = not meal_names(language).keys().isdisjoint(before)
    if words[0] in _AND:
        few = count <= _MOST_OF_ALL and (named or _ends(starts, index - 1))
        return few and (food or count < own_small)
    led = words[0] in _EATEN or (named and words[0] == ":")
    return led and count < own_small and (new or behind not in plain_words(language))


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
    most = max(own_small, MOST_PIECES) if index + 2 in starts else own_small
    if whole and value < most and _behind(page, index, starts):
        return True
    if dish is None:
        follows = page.tokens[index + 1].word if index + 2 in starts else ""
        if index + 3 in starts and page.words(index + 2, index + 3) in (["of"], ["de"]):
            follows = page.tokens[index + 1].word  # `3 fingers of plantain`
        between = follows.isalpha() and follows not in _NO_DISH and page.free(index + 1)
        counted = between or _of_another(page, index, starts, language)
        return whole and value < own_small and counted
    words = page.words(dish.start, dish.end)
    several = words[-1].endswith("s") and words[-1] not in _SINGULAR
    several = several or not _PLURAL.isdisjoint(words)
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
    named = _strange(word, language) or (word.isalpha() and word not in filler(language))
    return joined and page.free(index + 1) and named


def bracketed(page: Page, index: int, starts: dict[int, Dish]) -> bool:
    """`crumpets (2) with butter`: a count in brackets behind its food."""
    word = page.tokens[index].word
    if index == 0 or page.tokens[index - 1].word != "(":
        return False
    around = page.words(index - 1, index + 2)[::2]
    return (
        around == ["(", ")"]
        and word.isdigit()
        and int(word) <= MOST_PIECES
        and _ends(starts, index - 1)
    )


_JOINS = frozenset({"and", "with", "plus", "+", ",", "n", "y", "con", "e"})


def _behind(page: Page, index: int, starts: dict[int, Dish]) -> bool:
    """`chapati 2, dal`: a count behind its food, at a mark."""
    follows = page.tokens[index + 1].word if index + 1 < len(page.tokens) else ""
    return follows in {",", "+", "&", "nos", "and", "n", "y"} and _ends(starts, index)


#: Several by their own grammar, or named by the piece.
_PLURAL = frozenset(
    "pierogi pelmeni vareniki varenyky gyoza jiaozi mandu momo manti khinkali wonton takoyaki "
    "blini blinchiki syrniki draniki pirozhki golubtsi holubtsi uszka kopytka knedle "
    "tortellini ravioli gnocchi cannoli arancini shumai siomai lumpia falafel nigiri onigiri "
    "akara mandazi brigadeiro coxinha cevapi cevapcici frikadeller boller dumplin".split()
)

_SINGULAR = frozenset(
    "hummus couscous asparagus molasses swiss grits oats greens noodles beans lentils "
    "chips fries lentejas frijoles peas leftovers".split()
)
