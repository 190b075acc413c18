"""Which moment does each value of a message have?"""

# ruff: noqa: PLR0917 - a finding needs all of them

from bisect import bisect_left
from dataclasses import replace
from itertools import pairwise

from bot.entries import Asked, Moment
from bot.parser.activities_told import Told
from bot.parser.context import MOMENT_OF, Context
from bot.parser.findings import Findings
from bot.parser.instants import When
from bot.parser.meals_told import Plate
from bot.parser.moments import Cue
from bot.parser.page import Page
from bot.parser.values import Value

#: Which moment wins where several words of the message name one.
STRONGEST = (
    Moment.RECHECK,
    Moment.FASTING,
    Moment.BEDTIME,
    Moment.AFTER_ACTIVITY,
    Moment.AFTER_MEAL,
    Moment.BEFORE_MEAL,
)


#: So many minutes after a meal nobody tests for it (common practice, no source).
_SOON_AFTER = 45


def _after_the_wait(page: Page, cue: Cue) -> bool:
    """`15 mins later 4.8`, `4.8 after 15 min`: the wait that was asked for, and no meal."""
    if cue.minutes is not None:
        return cue.minutes < _SOON_AFTER and cue.meal is None
    ahead = page.words(cue.end, cue.end + 2)
    waited = len(ahead) == 2 and ahead[0].isdigit() and ahead[1].startswith("min")
    return cue.open and waited and int(ahead[0]) < _SOON_AFTER


def given_to(
    page: Page,
    context: Context,
    found: Findings,
    values: list[Value],
    given: dict[int, When],
    plates: list[Plate],
    activities: Told,
) -> list[Moment] | None:
    """The moment of each of the values; None where nothing tells two of them apart."""
    cues = [cue for cue in found.cues if not _of_activity(found, cue, values, activities)]
    if any(cue.moved and cue.moment is None for cue in cues):  # `before my walk 150, 120 after`
        cues = [_after_walk(cue) for cue in cues]
    if context.asked in {Asked.RECHECK, Asked.AFTER_ACTIVITY}:  # `15 mins later 4.8`
        cues = [cue for cue in cues if not _after_the_wait(page, cue)]
    if len(values) == 1:
        if activities.done and not plates and context.asked is not Asked.AFTER_MEAL:
            first = activities.done[0].start
            cues = [_after_walk(cue) if first < cue.start else cue for cue in cues]
        if context.asked is Asked.AFTER_ACTIVITY and not plates:  # `121 after`
            cues = [_after_walk(cue) for cue in cues]
        said = _strongest([cue.moment for cue in cues])
        return [said or _default(context, found, values[0], given, plates, activities)]
    shares = _shares(found, values, cues)
    moments: list[Moment | None] = [_strongest([cue.moment for cue in share]) for share in shares]
    for earlier, later in pairwise(range(len(values))):
        if moments[later] is None and _moved(values[earlier], values[later], activities):
            moments[later] = Moment.AFTER_ACTIVITY
            if moments[earlier] is None and plates and plates[0].start < values[later].start:
                moments[earlier] = Moment.BEFORE_MEAL
    told = [
        bool(share or moment or value.start in given)
        for value, share, moment in zip(values, shares, moments, strict=True)
    ]
    if not (all(told) if len(values) > 2 else _apart(page, found, values, cues, given)):
        return None
    if all(moment is None for moment in moments) or moments.count(None) == len(moments):
        moments = [Moment.BEFORE_MEAL, Moment.AFTER_MEAL] if len(values) == 2 else moments
    elif moments[0] is None and moments[-1] is Moment.AFTER_MEAL:
        moments[0] = Moment.BEFORE_MEAL
    elif moments[0] is Moment.BEFORE_MEAL and moments[-1] is None:
        moments[-1] = Moment.AFTER_ACTIVITY if activities.done and not plates else Moment.AFTER_MEAL
    return [moment or Moment.UNSTATED for moment in moments]


def _moved(earlier: Value, later: Value, activities: Told) -> bool:
    """`141 then mowed the lawn 40 min then 119`: what was done lies between the two."""
    return any(earlier.end <= done.start and done.end <= later.start for done in activities.done)


def _after_walk(cue: Cue) -> Cue:
    if cue.moment is Moment.AFTER_MEAL and cue.open:
        return replace(cue, moment=Moment.AFTER_ACTIVITY)
    return cue


def _of_activity(found: Findings, cue: Cue, values: list[Value], activities: Told) -> bool:
    """`walked 20 min after lunch, 130`: the words tell about the walk."""
    clause = found.clauses[cue.start]
    mine = any(
        found.clauses[done.start] == clause and done.start < cue.start for done in activities.done
    )
    return mine and all(found.clauses[value.start] != clause for value in values)


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
    if len(cues) == len(values) > 2 and _in_turn(values, cues):
        return [[cue] for cue in cues]
    shares: list[list[Cue]] = [[] for _ in values]
    starts = [value.start for value in values]
    together: dict[int, list[int]] = {}  # the values of each clause
    for index, start in enumerate(starts):
        together.setdefault(found.clauses[start], []).append(index)
    opening: dict[int, int] = {}  # where the first words of a moment stand in each clause
    for cue in cues:
        opening.setdefault(found.clauses[cue.start], cue.start)
    for cue in cues:
        clause = found.clauses[cue.start]
        here = together.get(clause)
        pool = here or list(range(len(values)))
        in_front = here is None or opening[clause] < starts[here[0]]
        behind = bisect_left(pool, cue.end, key=starts.__getitem__)
        before = bisect_left(pool, cue.start, key=starts.__getitem__)
        if behind < len(pool) and (in_front or not before):
            shares[pool[behind]].append(cue)
        elif before:
            shares[pool[before - 1]].append(cue)
    return shares


def _in_turn(values: list[Value], cues: list[Cue]) -> bool:
    """Whether each value has its words beside it, on either side (`fasting 119, at noon 142 before
    lunch n now 158 before dinner`)."""
    earlier = [-1, *(value.start for value in values)]
    later = [value.start for value in values[1:]]
    return all(
        place < cue.start and (index == len(later) or cue.end <= later[index])
        for index, (place, cue) in enumerate(zip(earlier, cues, strict=False))
    )


def _apart(
    page: Page, found: Findings, values: list[Value], cues: list[Cue], given: dict[int, When]
) -> bool:
    """Whether something tells the values apart."""
    if all(value.start in given for value in values):
        return True
    first, second = values
    between = set(range(first.end, second.start))
    if not _NOT.isdisjoint(page.words(first.end, second.start)[:2]):
        return False  # `yesterday's was 142 not 124`
    if between & found.then:
        return True
    if not cues and not any(value.start in given for value in values):
        return False
    if len(cues) == 1 and cues[0].start == first.end and _NOW & set(page.words(*_around(second))):
        return True  # `118 before and 168 now`
    if len(cues) == 1 and found.clauses[first.start] == found.clauses[second.start]:
        return not set(range(cues[0].start, cues[0].end)) & between and first.end < second.start
    return bool(cues) or any(value.start in given for value in values)


_NOT = frozenset({"not", "no", "instead"})
_NOW = frozenset({"now", "ahora", "ahorita"})


def _around(value: Value) -> tuple[int, int]:
    return max(value.start - 1, 0), value.end + 1


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
    near: list[tuple[tuple[int, bool], Moment]] = []
    for plate in plates:
        now = (
            plate.start not in given
            or given[plate.start].ago == 0
            or _ahead(given[plate.start], context, plate)
        )
        if now and not plate.over and not plate.past:
            near.append((_nearness(plate.start, plate.end, value), Moment.BEFORE_MEAL))
    near += [
        (_nearness(done.start, done.end, value), Moment.AFTER_ACTIVITY) for done in activities.done
    ]
    return min(near, key=lambda each: each[0])[1] if near else Moment.UNSTATED


def _ahead(when: When, context: Context, plate: Plate) -> bool:
    started = plate.started(when, context.at)
    return started is not None and started >= context.at


def _nearness(start: int, end: int, value: Value) -> tuple[int, bool]:
    """Of two that are as near, what was told first: `hoovered 20 min, 132. dinner now`."""
    return _gap(start, end, value), start > value.start


def _gap(start: int, end: int, value: Value) -> int:
    return max(start - value.end, value.start - end, 0)
