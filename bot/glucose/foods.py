"""Which meals and kinds of food are good for this person: their own tests, pooled.

A figure is given from two tests on; below that only the tests themselves can be shown. Figures
are for meals as this person ate them so far, whatever step they were on.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from statistics import mode

from bot.entries import FoodKind, Meal
from bot.glucose.pairs import Pair, Status, pairs
from bot.glucose.pooling import Estimate, Group, Measured, Pooled, pool
from bot.glucose.readings import is_free_drink
from bot.glucose.scatter import sd
from bot.record import Noted, Record

#: One test is a hint and no figure.
FEWEST_TESTS = 2


@dataclass(frozen=True, slots=True, kw_only=True)
class MealFigure:
    """A repeated meal: its expected rise (mg/dL) with a 90 % interval, and its tests."""

    text: str
    expected: Estimate
    tests: tuple[Pair, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class KindFigure:
    """The expected rise (mg/dL) over this person's meals that hold a kind of food."""

    kind: FoodKind
    expected: Estimate
    tests: tuple[Pair, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class FoodFigures:
    """Meals and kinds that were tested at least twice, those that raise least first."""

    meals: tuple[MealFigure, ...]
    kinds: tuple[KindFigure, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Known:
    """Every meal told, by its text, with its tests and with what the pooling knows of it."""

    texts: tuple[str, ...]
    told: tuple[tuple[Noted[Meal], ...], ...]
    tests: tuple[tuple[Pair, ...], ...]
    groups: tuple[Group, ...]
    pooled: Pooled


def food_figures(record: Record) -> FoodFigures:
    """Expected rises of repeated meals and of kinds of food; empty where nothing is known."""
    found = known(record)
    if found is None:
        return FoodFigures(meals=(), kinds=())
    meals = [
        MealFigure(text=text, expected=found.pooled.expected({index: 1.0}), tests=tests)
        for index, (text, tests) in enumerate(zip(found.texts, found.tests, strict=True))
        if len(tests) >= FEWEST_TESTS
    ]
    kinds = [figure for kind in FoodKind if (figure := _of_kind(kind, found)) is not None]
    return FoodFigures(
        meals=tuple(sorted(meals, key=lambda one: (one.expected.rise, one.text))),
        kinds=tuple(sorted(kinds, key=lambda one: (one.expected.rise, one.kind))),
    )


def tests_of(record: Record, food_text: str) -> tuple[Pair, ...]:
    """The person's own complete pairs of meals that hold a food, by the start of the meal.

    The words must follow each other in the meal's text; case and a plural make no difference.
    """
    wanted = words(food_text)
    if not wanted:
        return ()
    return tuple(
        pair for pair in _counting(pairs(record)) if _holds(words(pair.meal.entry.text), wanted)
    )


def mildest(record: Record, count: int) -> tuple[Pair, ...]:
    """The complete pairs with the smallest single rises, each meal's text only once."""
    ranked = sorted(_counting(pairs(record)), key=lambda pair: (pair.rise or 0.0, pair.meal.id))
    once: dict[str, Pair] = {}
    for pair in ranked:
        if words(pair.meal.entry.text):
            once.setdefault(meal_key(pair.meal.entry), pair)
    return tuple(once.values())[:count]


def known(record: Record) -> Known | None:
    """All meals with a text, tested or not, pooled; None without a meal."""
    told: dict[str, list[Noted[Meal]]] = defaultdict(list)
    for noted in record.meals:
        if words(noted.entry.text) and not is_free_drink(noted.entry):
            told[meal_key(noted.entry)].append(noted)
    tested: dict[str, list[Pair]] = defaultdict(list)
    for pair in _counting(pairs(record)):
        if meal_key(pair.meal.entry) in told:
            tested[meal_key(pair.meal.entry)].append(pair)
    if not told:
        return None
    keys = tuple(told)
    groups = tuple(
        Group(kinds=_kinds(told[key]), tests=tuple(_test(pair) for pair in tested[key]))
        for key in keys
    )
    return Known(
        texts=tuple(mode(noted.entry.text for noted in told[key]) for key in keys),
        told=tuple(tuple(told[key]) for key in keys),
        tests=tuple(tuple(tested[key]) for key in keys),
        groups=groups,
        pooled=pool(groups),
    )


def meal_key(meal: Meal) -> str:
    """What makes two meals the same meal: the words of the text, whatever their case."""
    return " ".join(words(meal.text))


def words(text: str) -> list[str]:
    """The words of a text, without case and punctuation."""
    letters = "".join(sign if sign.isalnum() else " " for sign in text.casefold())
    return letters.split()


def _counting(every: Iterable[Pair]) -> list[Pair]:
    return [pair for pair in every if pair.status is Status.COMPLETE and not pair.unconfirmed]


def _kinds(told: Iterable[Noted[Meal]]) -> frozenset[FoodKind]:
    """The kinds of a meal's foods; told differently at times, every kind that was named."""
    kinds = {food.kind for noted in told for food in noted.entry.foods}
    return frozenset(kinds - {FoodKind.FREE_DRINK}) or frozenset({FoodKind.UNKNOWN})


def _test(pair: Pair) -> Measured:
    if pair.values is None:
        raise ValueError("this pair has no rise")
    before, after = pair.values
    return Measured(rise=after - before, meter_variance=sd(before) ** 2 + sd(after) ** 2)


def _of_kind(kind: FoodKind, found: Known) -> KindFigure | None:
    """The mean over the meals with this kind, each weighted by how often it was tested."""
    counts: Mapping[int, int] = {
        index: len(group.tests)
        for index, group in enumerate(found.groups)
        if kind in group.kinds and group.tests
    }
    total = sum(counts.values())
    # Nobody can choose to eat less of something unknown.
    if total < FEWEST_TESTS or kind is FoodKind.UNKNOWN:
        return None
    tests = [pair for index in counts for pair in found.tests[index]]
    return KindFigure(
        kind=kind,
        expected=found.pooled.expected({index: n / total for index, n in counts.items()}),
        tests=tuple(sorted(tests, key=lambda pair: pair.started_at.timestamp())),
    )


def _holds(text: list[str], wanted: list[str]) -> bool:
    return any(
        all(
            _forms(one) & _forms(other)
            for one, other in zip(text[start : start + len(wanted)], wanted, strict=True)
        )
        for start in range(len(text) - len(wanted) + 1)
    )


def _forms(word: str) -> set[str]:
    """A word and what it may be the plural of (mangoes, apples, panes)."""
    forms = {word}
    for ending in ("s", "es"):
        if word.endswith(ending) and len(word) > len(ending) + 2:
            forms.add(word.removesuffix(ending))
    return forms
