"""The readings of a message: one, two that can be told apart, or a question."""

# ruff: noqa: PLR0917 - a finding needs all of them
# ruff: noqa: SIM102 - one question an `if`

from dataclasses import dataclass, field, replace
from datetime import datetime

from bot.entries import Ask, Asked, By, Moment, Reading
from bot.parser import meals, timing
from bot.parser.activities_told import Told, perhaps_minutes
from bot.parser.context import MOMENT_OF, Context
from bot.parser.findings import SMALL, Findings
from bot.parser.instants import When, is_today, resolved
from bot.parser.meals_told import Plate
from bot.parser.moments import Cue
from bot.parser.page import Page
from bot.parser.subjects import Whose
from bot.parser.values import Value
from bot.units import Unit, to_mg_dl

#: Which moment wins where several words of the message name one.
STRONGEST = (
    Moment.RECHECK,
    Moment.FASTING,
    Moment.BEDTIME,
    Moment.AFTER_ACTIVITY,
    Moment.AFTER_MEAL,
    Moment.BEFORE_MEAL,
)


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
        if found.subjects.whose(value.start, value.end) is Whose.OTHER:
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
            or value.number >= SMALL[unit]
            or places & {value.start - 1, value.start + 1}
        ]
    return own, others


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
    if lengths and len(lengths) < len(values):  # `aqua fit 45, 118 after`
        rest = [value for value in values if value not in lengths]
        result = told(page, context, found, rest, given, plates, activities)
        result.ask = result.ask or Ask.VALUE
        result.numbers += tuple(value.number for value in lengths)
        return result
    moments = _moments(page, context, found, values, given, plates, activities)
    if moments is None:
        numbers = tuple(value.number for value in values)
        return Readings(ask=Ask.VALUE, numbers=numbers)
    lone = values[0]
    if moments == [Moment.UNSTATED] and not (plates or activities.done or given):
        if _unexplained(page, context, found, lone):
            return Readings(ask=Ask.MEANING)
    if len(values) == 1 and not found.cues:
        if perhaps_minutes(lone, activities) or _perhaps_pieces(context, found, lone, plates):
            return Readings(ask=Ask.VALUE, numbers=(lone.number,))
    whens = [given.get(value.start) for value in values]
    days = timing.days_apart(whens)
    if days and not found.cues:
        moments = [Moment.UNSTATED for _ in values]
    result = Readings()
    asks = []
    times_taken = timing.in_order(
        [
            _taken(given.get(value.start), context.at, moment, last=days or value is values[-1])
            for value, moment in zip(values, moments, strict=True)
        ],
        whens,
    )
    for index, (value, moment) in enumerate(zip(values, moments, strict=True)):
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


#: Behind a food as many may be pieces of it, and are a dangerous low in mmol/L.
_PIECES = 4
#: Below this a decimal number, too (`rice 1.5`).
_HELPINGS = 2.0


def _perhaps_pieces(context: Context, found: Findings, value: Value, plates: list[Plate]) -> bool:
    """`empanadas 2` in mmol/L: two of them, or 2.0?"""
    if value.unit is not None or context.wants_reading or found.named:
        return False
    most = _HELPINGS if value.decimal else _PIECES
    if value.off_scale is not None or value.number > most:
        return False
    return any(plate.end == value.start for plate in plates)


def _unexplained(page: Page, context: Context, found: Findings, value: Value) -> bool:
    """Whether a bare number stands among words that nobody has listed (`zumba raffle 142`): it may
    count anything. Nothing else of the message says that it is glucose."""
    if value.unit is not None or value.off_scale is not None or found.named or found.feelings:
        return False
    clause = found.clauses[value.start]
    strange = [
        index
        for index in meals.strange_places(page, context.language)
        if found.clauses[index] == clause and page.tokens[index].word.isalpha()
    ]
    named = context.by is By.HELPER and len(strange) == 1  # whom the helper looks after
    return bool(strange) and not named


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


def _moments(
    page: Page,
    context: Context,
    found: Findings,
    values: list[Value],
    given: dict[int, When],
    plates: list[Plate],
    activities: Told,
) -> list[Moment] | None:
    """The moment of each value; None where nothing tells two of them apart."""
    cues = [cue for cue in found.cues if not _of_activity(found, cue, values, activities)]
    if any(cue.moved and cue.moment is None for cue in cues):  # `before my walk 150, 120 after`
        cues = [_after_walk(cue) for cue in cues]
    if len(values) == 1:
        if activities.done and not plates and context.asked is not Asked.AFTER_MEAL:
            first = activities.done[0].start
            cues = [_after_walk(cue) if first < cue.start else cue for cue in cues]
        said = _strongest([cue.moment for cue in cues])
        return [said or _default(context, found, values[0], given, plates, activities)]
    shares = _shares(found, values, cues)
    moments: list[Moment | None] = [_strongest([cue.moment for cue in share]) for share in shares]
    if not _apart(page, found, values, cues, given):
        return None
    if all(moment is None for moment in moments) or moments.count(None) == len(moments):
        moments = [Moment.BEFORE_MEAL, Moment.AFTER_MEAL] if len(values) == 2 else moments
    elif moments[0] is None and moments[-1] is Moment.AFTER_MEAL:
        moments[0] = Moment.BEFORE_MEAL
    elif moments[0] is Moment.BEFORE_MEAL and moments[-1] is None:
        moments[-1] = Moment.AFTER_ACTIVITY if activities.done and not plates else Moment.AFTER_MEAL
    return [moment or Moment.UNSTATED for moment in moments]


def _after_walk(cue: Cue) -> Cue:
    if cue.moment is Moment.AFTER_MEAL and cue.open:
        return replace(cue, moment=Moment.AFTER_ACTIVITY)
    return cue


def _of_activity(found: Findings, cue: Cue, values: list[Value], activities: Told) -> bool:
    """`walked 20 min after lunch, 130`: the words tell about the walk."""
    clause = found.clauses[cue.start]
    if any(found.clauses[value.start] == clause for value in values):
        return False
    return any(
        found.clauses[done.start] == clause and done.start < cue.start for done in activities.done
    )


def _strongest(said: list[Moment | None]) -> Moment | None:
    return next((moment for moment in STRONGEST if moment in said), None)


_PAIR = {Moment.BEFORE_MEAL, Moment.AFTER_MEAL}


def _shares(found: Findings, values: list[Value], cues: list[Cue]) -> list[list[Cue]]:
    """Which words of a moment belong to which value.

    In its own clause first; where a clause holds several values, words in front of the first
    value show that words come before their value, else they come behind it. As many words as
    values are paired off (`115 before lunch and 2 hours after I am 162`).
    """
    if len(cues) == len(values) == 2 and {cue.moment for cue in cues} == _PAIR:
        return [[cue] for cue in cues]
    shares: list[list[Cue]] = [[] for _ in values]
    for cue in cues:
        clause = found.clauses[cue.start]
        here = [i for i, value in enumerate(values) if found.clauses[value.start] == clause]
        pool = here or list(range(len(values)))
        in_front = (
            any(
                other.start < values[pool[0]].start
                and found.clauses[other.start] == found.clauses[values[pool[0]].start]
                for other in cues
            )
            if here
            else True
        )
        after = [i for i in pool if values[i].start >= cue.end]
        before = [i for i in pool if values[i].start < cue.start]
        if in_front and after:
            shares[after[0]].append(cue)
        elif before:
            shares[before[-1]].append(cue)
        elif after:
            shares[after[0]].append(cue)
    return shares


def _apart(
    page: Page, found: Findings, values: list[Value], cues: list[Cue], given: dict[int, When]
) -> bool:
    """Whether something tells the values apart."""
    if all(value.start in given for value in values):
        return True
    if len(values) > 2:
        shares = _shares(found, values, cues)
        return all(shares)
    first, second = values
    between = set(range(first.end, second.start))
    if not _NOT.isdisjoint(page.words(first.end, second.start)[:2]):
        return False  # `yesterday's was 142 not 124`
    if between & found.then:
        return True
    if not cues and not any(value.start in given for value in values):
        return False
    if len(cues) == 1 and found.clauses[first.start] == found.clauses[second.start]:
        return (
            bool(set(range(cues[0].start, cues[0].end)) & between) is False
            and first.end < second.start - 0
            and second.start > first.end
        )
    return bool(cues) or any(value.start in given for value in values)


_NOT = frozenset({"not", "no", "instead"})


def _default(
    context: Context,
    found: Findings,
    value: Value,
    given: dict[int, When],
    plates: list[Plate],
    activities: Told,
) -> Moment:
    """What an unmarked reading was taken for: what is asked, else what it comes with."""
    if context.asked in MOMENT_OF:
        return MOMENT_OF[context.asked]
    near: list[tuple[int, Moment]] = []
    for plate in plates:
        now = (
            plate.start not in given
            or given[plate.start].ago == 0
            or _ahead(given[plate.start], context, plate)
        )
        if now and not plate.over and not plate.past:
            near.append((_gap(plate.start, plate.end, value), Moment.BEFORE_MEAL))
    near += [(_gap(done.start, done.end, value), Moment.AFTER_ACTIVITY) for done in activities.done]
    return min(near, key=lambda each: each[0])[1] if near else Moment.UNSTATED


def _ahead(when: When, context: Context, plate: Plate) -> bool:
    started = resolved(when, context.at, ahead=not plate.past)
    return started is not None and started >= context.at


def _gap(start: int, end: int, value: Value) -> int:
    return max(start - value.end, value.start - end, 0)
