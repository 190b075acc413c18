"""The readings of a message: one, two that can be told apart, or a question."""

# ruff: noqa: PLR0917 - a finding needs all of them
# ruff: noqa: SIM102 - one question an `if`

from dataclasses import dataclass, field
from datetime import datetime

from bot.entries import Ask, By, Moment, Reading
from bot.parser import meals, moments, moments_given, timing
from bot.parser.activities_told import Told, perhaps_minutes
from bot.parser.context import Context
from bot.parser.findings import SMALL, Findings
from bot.parser.instants import When, is_today, resolved
from bot.parser.meals_told import Plate
from bot.parser.page import Page
from bot.parser.pieces import MOST_PIECES
from bot.parser.strangers import Kind
from bot.parser.subjects import Whose
from bot.parser.values import Value
from bot.units import Unit, to_mg_dl


@dataclass(slots=True, kw_only=True)
class Readings:
    """Readings with their places, or what has to be asked and about which numbers."""

    entries: list[tuple[int, Reading]] = field(default_factory=list)
    ask: Ask | None = None
    doubtful: tuple[Reading, ...] = ()
    numbers: tuple[float, ...] = ()


def own_values(page: Page, found: Findings, unit: Unit) -> tuple[list[Value], bool]:
    """The values that are the participant's, and whether any was somebody else's.

    Small counts beside a real value are left out (`2 of us`), unless they stand next to it.
    """
    own = []
    others = False
    for value in found.values:
        if found.subjects.whose(value.start, value.end, ones=True) is Whose.OTHER:
            others = True
        else:
            own.append(value)
    if len(own) > 1 and found.named:
        own = [value for value in own if not _age(page, value)] or own
    real = [value for value in own if not isinstance(value.judged(unit), Ask)]
    places = {value.start for value in real}
    if real:
        own = [
            value
            for value in own
            if value.start in places
            or value.unit is not None
            or value.decimal
            or (value.number >= SMALL[unit] and not _of_things(page, value, unit))
            or places & {value.start - 1, value.start + 1}
        ]
    return own, others


def _of_things(page: Page, value: Value, unit: Unit) -> bool:
    """`5.6, done 180 ewes today`: in mmol/L a whole number that no meter shows, before a word."""
    return (
        unit is Unit.MMOL_L
        and isinstance(value.judged(unit), Ask)
        and value.end < len(page.tokens)
        and page.free(value.end)
        and page.tokens[value.end].word.isalpha()
    )


def _age(page: Page, value: Value) -> bool:
    """`I'm 62 and my sugar is 142`."""
    words = page.words(max(value.start - 2, 0), value.start)
    return value.unit is None and (
        words[-1:] == ["im"] or words == ["i", "am"] or words[-1:] == ["tengo"]
    )


def told(
    page: Page,
    context: Context,
    found: Findings,
    values: list[Value],
    given: dict[int, When],
    plates: list[Plate],
    activities: Told,
) -> Readings:
    """Judge the values, give each its moment and its time."""
    if not values:
        return _clock_or_value(found, given, values)
    lengths = [value for value in values if perhaps_minutes(value, activities)]
    if len(lengths) == len(values):
        lengths = []
    doubtful = [value for value in values if value in lengths or _strength(page, found, value)]
    if doubtful:  # `aqua fit 45, 118 after`
        rest = [value for value in values if value not in doubtful]
        result = told(page, context, found, rest, given, plates, activities) if rest else Readings()
        result.ask = result.ask or Ask.VALUE
        result.numbers += tuple(value.number for value in doubtful)
        return result
    taken_for = moments_given.given_to(page, context, found, values, given, plates, activities)
    if taken_for is None:
        numbers = tuple(value.number for value in values)
        return Readings(ask=Ask.VALUE, numbers=numbers)
    lone = values[0]
    alone = len(found.values) == len(values)  # beside another's value one's own is one, too
    if taken_for == [Moment.UNSTATED] and alone and not (plates or activities.done or given):
        if _unexplained(page, context, found, lone):
            return Readings(ask=Ask.MEANING)
    if len(values) == 1 and not found.cues:
        if perhaps_minutes(lone, activities) or _perhaps_pieces(context, found, lone, plates):
            return Readings(ask=Ask.VALUE, numbers=(lone.number,))
    whens = [given.get(value.start) for value in values]
    days = timing.days_apart(whens)
    if days and not found.cues:
        taken_for = [Moment.UNSTATED for _ in values]
    result = Readings()
    asks = []
    times_taken = timing.in_order(
        [
            _taken(given.get(value.start), context.at, moment, last=days or value is values[-1])
            for value, moment in zip(values, taken_for, strict=True)
        ],
        whens,
    )
    for index, (value, moment) in enumerate(zip(values, taken_for, strict=True)):
        taken = times_taken[index]
        judged = value.judged(context.unit)
        if isinstance(judged, Ask):
            asks.append(judged)
            result.numbers += (value.number,)
            if judged is Ask.UNIT:
                result.doubtful += (_reading(value, context.unit, moment, taken),)
        else:
            result.entries.append((value.start, _reading(value, judged, moment, taken)))
    result.ask = Ask.UNIT if Ask.UNIT in asks else asks[0] if asks else None
    return result


#: Milligrams of a tablet that may as well be what a meter shows in mmol/L (from memory).
_STRENGTHS = frozenset({2.0, 2.5, 3.0, 4.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0})


_UNITS = frozenset({"unit", "units", "u", "iu", "unidad", "unidades", "ui"})


def _strength(page: Page, found: Findings, value: Value) -> bool:
    """`took 2 glipizide 5 before dinner`: right behind a drug and how many of it were taken."""
    if value.unit is not None or value.number not in _STRENGTHS:
        return False
    drug = next((each for each in found.strangers if each.end == value.start), None)
    if drug is None or drug.kind is not Kind.MEASURED:
        return False
    words = page.words(drug.start, drug.end)
    if not _UNITS.isdisjoint(words):
        return False  # of insulin
    return words[-1].isalpha() and any(word.isdigit() for word in words)


#: Behind a food as many may be pieces of it, and are a dangerous low in mmol/L.
_PIECES = 4
#: Below this a decimal number, too (`rice 1.5`).
_HELPINGS = 2.0


def _few(context: Context, value: Value) -> bool:
    """A whole number in mmol/L that may as well count pieces."""
    return context.unit is Unit.MMOL_L and not value.decimal and value.number <= MOST_PIECES


def _perhaps_pieces(context: Context, found: Findings, value: Value, plates: list[Plate]) -> bool:
    """`empanadas 2`, `5 roti` in mmol/L: so many of them, or 2.0 and 5.0?"""
    if value.unit is not None or context.wants_reading or found.named:
        return False
    if _few(context, value) and any(plate.start == value.end for plate in plates):
        return True
    most = _HELPINGS if value.decimal else _PIECES
    if value.off_scale is not None or value.number > most:
        return False
    return any(plate.end == value.start for plate in plates)


def _unexplained(page: Page, context: Context, found: Findings, value: Value) -> bool:
    """Whether a bare number stands among words that nobody has listed (`zumba raffle 142`): it may
    count anything. Nothing else of the message says that it is glucose."""
    if value.unit is not None or value.off_scale is not None or found.named:
        return False
    if found.feelings and not _few(context, value):  # `hens laid 6 today and I feel dizzy`
        return False
    clause = found.clauses[value.start]
    explained = {index for start, end in found.planned for index in range(start, end)}
    explained.update(index for dish in found.dishes for index in range(dish.start, dish.end))
    strange = [
        index
        for index in meals.strange_places(page, context.language)
        if found.clauses[index] == clause
        and page.tokens[index].word.isalpha()
        and index not in explained
        and _may_be_counted(page, index, value, context.language)
    ]
    named = context.by is By.HELPER and len(strange) == 1  # whom the helper looks after
    return bool(strange) and not named


#: `the 38 was packed` is a bus.
_CALLED = (["the"], ["el"], ["la"])


def _may_be_counted(page: Page, index: int, value: Value, language: str) -> bool:
    """Whether a word may tell what a value numbers (`raffle 142`) or counts (`142 frobbles`); what
    else stands behind it is said of it (`142, terrible`)."""
    if index < value.start or page.words(value.start - 1, value.start) in _CALLED:
        return True
    ahead = page.words(index + 1, index + 2)
    if index == value.end and ahead and ahead[0] in moments.meal_names(language):
        return True  # `133 bephore dinner`: which side of it?
    word = page.tokens[index].word
    return index <= value.end + 1 and not value.decimal and word.endswith("s")


def _clock_or_value(found: Findings, given: dict[int, When], values: list[Value]) -> Readings:
    """`1:18 rice`, as dictation writes 118: asked about, with no other number beside it."""
    clocks = [when for when in found.whens if when.bare_digits and when.hour]
    for when in clocks:
        digits = (when.hour or 0) * 100 + when.minute
        if len(found.whens) == 1 and 100 <= digits <= 600 and not found.amounts:
            given.clear()
            return Readings(ask=Ask.VALUE, numbers=(float(digits),))
    return Readings()


def _reading(value: Value, unit: Unit, moment: Moment, taken: datetime | None) -> Reading:
    if value.off_scale is not None:
        return Reading(
            value=None, unit=unit, mg_dl=None, moment=moment, taken_at=taken,
            off_scale=value.off_scale,
        )  # fmt: skip
    number = int(value.number) if value.number.is_integer() else value.number
    return Reading(
        value=value.number, unit=unit, mg_dl=to_mg_dl(number, unit), moment=moment, taken_at=taken
    )


def _taken(when: When | None, at: datetime, moment: Moment, *, last: bool) -> datetime | None:
    if when is None or is_today(when, at):
        return at if last else None
    return resolved(when, at, morning=moment is Moment.FASTING)
