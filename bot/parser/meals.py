"""Which words make up a meal? Runs of what no other finder claimed, and what of them is food."""

# ruff: noqa: PLR0917 - a finding needs all of them
# ruff: noqa: SIM905 - word sets read best as one string

from bisect import bisect_left
from collections.abc import Container
from dataclasses import dataclass
from functools import cache
from itertools import islice, takewhile

from bot.parser import helpings
from bot.parser.food import LEFT_OUT, Dish, amount_words, sure
from bot.parser.languages import gathered
from bot.parser.moments import meal_names
from bot.parser.page import Page
from bot.parser.phrases import Phrases, spelled

_BREAK = frozenset(". ; ! ? , : > \n ( ) - / * = + ~ | _ & because cos cuz coz porque".split())
_ARTICLES = frozenset("a an some un una unos unas the half medio media la el".split())
_LISTED = frozenset(", + & /".split())


@cache
def _edges(language: str) -> frozenset[str]:
    return frozenset(token for word in gathered(language, "joining") for token in spelled(word))


@cache
def everyday(language: str) -> frozenset[str]:
    words = {token for word in gathered(language, "filler") for token in spelled(word)}
    return frozenset(words) | _edges(language)


@cache
def _not_eaten(language: str) -> Phrases[bool]:
    return Phrases([(gathered(language, "not_eaten"), True)])


@dataclass(frozen=True, slots=True, kw_only=True)
class Piece:
    """A run of unclaimed words: how much of it is food."""

    start: int
    end: int
    food: bool
    known: bool  # food is named in it
    doubtful: bool = False  # food is named in it, and perhaps not eaten


def runs(page: Page, amounts: set[int], ends: Container[int] = ()) -> list[tuple[int, int]]:
    """The runs of unclaimed tokens between marks; a mark inside an amount parts nothing. `ends`
    are places where somebody else is named with a number of their own."""
    found: list[tuple[int, int]] = []
    start: int | None = None
    for index in range(len(page.tokens) + 1):
        open_ = (
            index < len(page.tokens)
            and not page.taken[index]
            and (page.tokens[index].word not in _BREAK or index in amounts)
            and index not in ends
        )
        if open_ and start is None:
            start = index
        elif not open_ and start is not None:
            found.append((start, index))
            start = None
    return found


def too_much(page: Page, index: int) -> bool:
    """Whether it says there that it was more than it should have been."""
    first, rest = page.words(index, index + 1), page.words(index + 1, index + 2)
    return (first == ["too"] and rest in (["much"], ["many"])) or first in _TOO_MUCH


_TOO_MUCH = (["demasiado"], ["demasiada"], ["demasiados"], ["demasiadas"])


def trimmed(
    page: Page,
    start: int,
    end: int,
    language: str,
    dishes: set[int],
    amounts: set[int],
    *,
    led: bool,
) -> tuple[int, int]:
    """Take words that are no food from both ends of a run; articles stay before food."""
    edges = _edges(language)
    while start < end and start not in dishes and start not in amounts:
        word = page.tokens[start].word
        following = start + 1 < end
        article = word in _ARTICLES and following
        if (
            (word in edges and not article and word.isalpha() and not too_much(page, start))
            or (
                word in {"a", "an", "the", "some"}
                and following
                and page.tokens[start + 1].word in edges
                and start + 1 not in dishes
            )
            or (not word[0].isalnum() and word not in "½¼¾⅓⅔")
        ):
            start += 1
        else:
            break
    while end > start and end - 1 not in dishes and end - 1 not in amounts:
        word = page.tokens[end - 1].word
        if word in edges or not word[0].isalnum():
            end -= 1
        else:
            break
    return start, end


def judged(
    page: Page,
    start: int,
    end: int,
    language: str,
    dishes: list[Dish],
    amounts: set[int],
    *,
    led: bool,
) -> Piece | None:
    """Tell whether a run of words is food. `led` says that a lead-in stands before it."""
    if start and not page.free(start - 1) and page.words(start, start + 1) == ["like"]:
        start += 1  # `before like 10 chips`
    first_dish = bisect_left(dishes, start, key=lambda dish: dish.start)
    dishes = list(takewhile(lambda dish: dish.start < end, islice(dishes, first_dish, None)))
    food_at = {index for dish in dishes for index in range(dish.start, dish.end)}
    first, last = trimmed(page, start, end, language, food_at, amounts, led=led)
    if first >= last:
        return None
    known = any(index in food_at for index in range(first, last))
    plain = everyday(language)
    strange = [
        index
        for index in range(first, last)
        if index not in food_at
        and index not in amounts
        and page.tokens[index].word not in plain
        and page.tokens[index].word not in amount_words(language)
        and not helpings.left_off(page, index, food_at)
    ]
    if led:
        food = known or bool(strange)
        return Piece(start=first, end=last, food=food, known=known)
    spoken = spoken_of(page, start, end, language, food_at)
    named = sum(1 for index in range(first, last) if index in food_at)
    surely = any(sure(page, dish) for dish in dishes if dish.start < last and dish.end > first)
    guesses = [dish for dish in dishes if first <= dish.start < last]
    counted = sum(1 for index in range(first, last) if index in amounts)
    if (
        guesses
        and all(dish.guessed for dish in guesses)
        and last - first - counted > 2 * len(guesses)
    ):
        return None
    surely = surely or sum(not dish.guessed for dish in guesses) > 1
    surely = surely or any(
        (dish.start - 1 in amounts or dish.end in amounts) and not dish.guessed for dish in guesses
    )
    surely = surely or helpings.without(page, dishes, strange, last)
    food = known and not spoken and len(strange) <= (1 + named if surely else 0)
    food = food or (not known and not spoken and helpings.held(page, first, last, language))
    if len(strange) == 1 and not spoken and not any(dish.guessed for dish in guesses):
        food = food or (last - 1 in food_at and _of_two_words(page, start, end, last - first))
        food = food or _joined(page, range(first, last), food_at, amounts)
    return Piece(start=first, end=last, food=food, known=known, doubtful=known and not food)


def _joined(page: Page, run: range, food_at: set[int], amounts: set[int]) -> bool:
    """Whether it is no more than a food and a word joined to it: `toast n frobble 2 slices`."""
    words = [at for at in run if at not in amounts]
    if len(words) != 3 or page.tokens[words[1]].word not in _JOINS:
        return False
    apart = run.start == 0 or not page.tokens[run.start - 1].word.isalpha()
    return apart and bool({words[0], words[2]} & food_at)


_JOINS = frozenset({"and", "n", "with", "w", "y", "con"})


def _of_two_words(page: Page, start: int, end: int, words: int) -> bool:
    """Whether a clause is no more than two or three words: `frobble bread, 122` names a bread."""
    if start and page.tokens[start - 1].word.isalpha():
        return False  # `thirsty after salty chips`
    return words in {2, 3} and words == sum(word.isalpha() for word in page.words(start, end))


#: `it is chicken soup` tells what is eaten.
_IT_IS = (["it", "is"], ["which", "is"], ["that", "is"], ["it", "was"], ["which", "was"])


def spoken_of(page: Page, start: int, end: int, language: str, food_at: set[int]) -> bool:
    not_eaten = _not_eaten(language)
    begun = next((index for index in range(start, end) if index in food_at), end)
    begun = helpings.begun_before(page, start, begun, language)
    without = [index for index in range(begun + 1, end - 1) if page.tokens[index].word in LEFT_OUT]
    return any(
        page.tokens[index].word in not_eaten.heads
        and index not in food_at
        and index not in without
        and index - 1 not in without  # `chicken rice no skin`
        and not _tells(page.words(index - 1, index + 1), language)
        and not _timed(page, index, end)
        and not_eaten.longest(page, index, end) is not None
        for index in range(start, end)
    )


def _tells(words: list[str], language: str) -> bool:
    """`it is chicken soup`, `lunch is rice`: what is eaten is told."""
    named = len(words) == 2 and words[0] in meal_names(language) and words[1] in _IS
    return named or words in _IT_IS


def _timed(page: Page, index: int, end: int) -> bool:
    """`kitfo was at 2 pm`: when it was eaten is told."""
    at = page.words(end, end + 1) in (["at"], ["around"], ["about"])
    return at and index == end - 1 and page.tokens[index].word in _IS and not page.free(end)


_IS = frozenset({"is", "was", "es", "fue", "era"})


def listed(page: Page, before: int, after: int) -> bool:
    """Whether only commas and the like lie between two pieces."""
    return all(
        word in _LISTED or word in {"and", "y", "with", "con"} for word in page.words(before, after)
    )


def strange_places(page: Page, language: str) -> list[int]:
    """Where unclaimed words are left that are not everyday ones."""
    plain = everyday(language)
    return [
        index
        for index, word in page.find_words(0, len(page.tokens))
        if word not in plain and any(char.isalnum() for char in word)
    ]


def strange_words(page: Page, language: str) -> bool:
    """Whether any such word is left."""
    return bool(strange_places(page, language))
