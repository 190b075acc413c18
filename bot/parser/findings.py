"""All that the finders found on one page, in the order of certainty.

What nobody should miss (symptoms) and what is surely no glucose come first, then moments and
times, then values, and the leads to food last: each finder sees only what is left.
"""

# ruff: noqa: SIM905 - word sets read best as one string

from bisect import bisect_left
from dataclasses import dataclass, field

from bot.entries import Asked, By, Skip, Strips, Suggests
from bot.parser import (
    activity,
    advice,
    blamed,
    eating,
    food,
    helpings,
    lead_ins,
    medicine,
    moments,
    pieces,
    pregnancy,
    requests,
    skips,
    strangers,
    strips,
    symptoms,
    table,
    taken,
    times,
    times_ahead,
    undone,
    untested,
    values,
    work,
)
from bot.parser.company import claim_company
from bot.parser.context import Context
from bot.parser.instants import When
from bot.parser.misspelt import known_words
from bot.parser.page import Page
from bot.parser.strangers import Stranger
from bot.parser.subjects import Subjects
from bot.parser.values import Value
from bot.units import Unit

#: Whole numbers below these are counts of food rather than glucose, by the participant's unit.
SMALL = {Unit.MG_DL: 20.0, Unit.MMOL_L: 4.0}


@dataclass(slots=True, kw_only=True)
class Findings:
    """What was found, with the places where it stands."""

    subjects: Subjects
    clauses: list[int]
    feelings: list[symptoms.Feeling]
    wishes: list[requests.Wish]
    dishes: list[food.Dish]
    strips: list[tuple[int, int, Strips]] = field(default_factory=list)
    strangers: list[Stranger] = field(default_factory=list)
    doings: list[activity.Doing] = field(default_factory=list)
    listed: list[activity.Doing] = field(default_factory=list)  # before anything is claimed
    counts: list[tuple[int, int]] = field(default_factory=list)  # how often, beside an activity
    cues: list[moments.Cue] = field(default_factory=list)
    whens: list[When] = field(default_factory=list)
    ahead: list[When] = field(default_factory=list)
    measures: list[activity.Measure] = field(default_factory=list)
    amounts: set[int] = field(default_factory=set)
    values: list[Value] = field(default_factory=list)
    unsure: list[Value] = field(default_factory=list)  # among marks that people do not write
    planned: list[tuple[int, int]] = field(default_factory=list)
    leads: list[lead_ins.Lead] = field(default_factory=list)
    then: set[int] = field(default_factory=set)
    skip: tuple[int, int, Skip] | None = None
    under_way: str | None = None  # an activity still to come
    long_ago: list[tuple[int, int]] = field(default_factory=list)
    same_as: tuple[int, int] | None = None
    code: bool = False  # marks that people do not write
    named: bool = False  # a reading is spoken of (`my sugar`)
    done: bool = False
    still: bool = False


_CODE = frozenset("{ } [ ] < \\ | _ ` ^ #!".split())
_THEN = frozenset({"then", ">", "luego", "to"})
_BREAKS = frozenset(", . ; ! ? > ( ) then luego".split())


def _clauses(page: Page) -> list[int]:
    """The number of the clause of each token."""
    found, clause = [], 0
    for token in page.tokens:
        if token.word in _BREAKS:
            clause += 1
        found.append(clause)
    return found


def found(page: Page, context: Context, feelings: list[symptoms.Feeling]) -> Findings:
    """Ask every question of the page, in order; how the body feels is known already."""
    language = context.language
    subjects = Subjects(page, language, context.by)
    clauses = _clauses(page)
    feelings = symptoms.claimed(page, feelings)
    scales = values.off_scale(page, language)  # first of all what is asked: `LO help`
    wishes = medicine.find(page, language) + pregnancy.find(page, language, context.by)
    wishes += requests.in_clauses(page, language, felt=bool(feelings))
    worked = work.found(page, language)
    listed = activity.find(page, language)
    counts = work.counts(page, listed)
    dishes = food.find(page, language, frozenset(activity.tokens_of(worked + listed)))
    food_at = {index for dish in dishes for index in range(dish.start, dish.end)}
    claim_company(page, language, food_at)
    table.claim_surroundings(page, language, [(dish.start, dish.end) for dish in dishes])
    eaten = eating.find(page, language, food_at, activity.tokens_of(worked))
    wishes += advice.food_advice(page, language, food_at)
    dishes = [
        dish
        for dish in dishes
        if not page.any_taken(dish.start, dish.end)
        and not symptoms.fell_ill(page, dish.start, dish.end, feelings)
    ]
    all_found = Findings(
        subjects=subjects, clauses=clauses, feelings=feelings, wishes=wishes, dishes=dishes,
        doings=worked, listed=listed, counts=counts, leads=eaten,
    )  # fmt: skip
    several = food.of_several_words(page, language, dishes)
    subjects.pass_over({at for span in several for at in range(*span)})  # `nan bread 142`
    if page.holds(_THEN):
        all_found.then = {at for at, token in enumerate(page.tokens) if token.word in _THEN}
    all_found.still = symptoms.still(page)
    all_found.long_ago = times.long_ago(page, language)
    for start, end in all_found.long_ago if feelings else ():
        if page.words(end - 1, end)[0].isdigit():
            page.claim(start, end)  # `collapsed in 2019`: the year is no value
    all_found.code = page.holds(_CODE) and any(
        token.word in _CODE and not _framed(page, index) for index, token in enumerate(page.tokens)
    )
    if (same := lead_ins.same_as(page, language)) is not None:
        all_found.same_as = same
        page.claim(*same)
    grave = any(each.suggests is Suggests.EMERGENCY for each in feelings)
    all_found.skip = untested.find(page) if feelings else None
    all_found.skip = all_found.skip or skips.in_clauses(
        page, language, grave=grave, asked=context.wants_reading
    )
    all_found.strips = strips.find(page, language, food_at)
    asked = context.wants_reading or bool(feelings)
    strange = strangers.find(page, language, dishes, asked=asked)
    own = activity.tokens_of(worked + listed if counts else worked).union(
        *(range(*span) for span in counts)
    )
    all_found.strangers = work.own_numbers(page, strange, own)
    all_found.values = values.with_units(page, language, set()) + scales
    _in_time(page, language, all_found, context.by)
    _in_numbers(page, context, all_found)
    return all_found


def _framed(page: Page, index: int) -> bool:
    """Whether it is a bracket around nothing but a number (`[153]`)."""
    start = index if page.tokens[index].word == "[" else index - 2
    words = page.words(start, start + 3) if start >= 0 else []
    return len(words) == 3 and (words[0], words[2]) == ("[", "]") and words[1][0].isdigit()


def _in_time(page: Page, language: str, all_found: Findings, by: By) -> None:
    """Activities, moments and times, which share their words."""
    all_found.planned = lead_ins.planned(page, language)
    all_found.done = activity.said_done(page, language)
    worked = [each for each in all_found.doings if not page.any_taken(each.start, each.end)]
    listed = [each for each in all_found.listed if not page.any_taken(each.start, each.end)]
    listed = activity.without_idioms(page, listed)
    doings = work.joined(listed, worked)
    busy = activity.tokens_of(worked)
    all_found.dishes = [
        dish for dish in all_found.dishes if dish.start not in busy and not _within(dish, doings)
    ]
    dish_at = {index for dish in all_found.dishes for index in range(dish.start, dish.end)}
    doings = [doing for doing in doings if not dish_at & set(range(doing.start, doing.end))]
    all_found.under_way = undone.to_come(page, doings)
    doings = [doing for doing in doings if doing.over and not _undone(page, doing, all_found, by)]
    activity.claim_length_in_words(page, doings)
    # `fast food`, `noon chai`
    hidden = page.hide(food.of_several_words(page, language, all_found.dishes))
    all_found.cues = moments.find(page, language, activity.tokens_of(doings), dish_at)
    all_found.whens = times.find(page, language)
    for start, end in hidden:
        page.release(start, end)
    if doings:  # `trabajé desde las 6`: when it began is not when it ended
        all_found.whens = [w for w in all_found.whens if page.tokens[w.start].word != "desde"]
    all_found.doings = [doing for doing in doings if not page.any_taken(doing.start, doing.end)]
    all_found.measures = [
        measure
        for measure in activity.measures(page, language)
        if dish_at.isdisjoint({measure.start, measure.end - 1})  # `8.4 mi goreng`
        and (doings or not activity.of_oneself(page, measure))
    ]
    all_found.measures += activity.bare_lengths(page, all_found.doings)
    all_found.measures.sort(key=lambda measure: measure.start)
    all_found.doings = activity.clear_of(all_found.doings, all_found.measures)
    counted = {i for m in all_found.measures if m.minutes is None for i in range(m.start, m.end)}
    all_found.doings = [doing for doing in all_found.doings if doing.start not in counted]
    if not all_found.doings:
        done = all_found.done
        all_found.doings = work.unlisted(page, all_found.measures, dish_at, language, done=done)
    all_found.subjects.pass_over(activity.tokens_of(all_found.doings))
    _objects(page, all_found)
    if not all_found.doings and not any(m.minutes is None for m in all_found.measures):
        all_found.ahead = times_ahead.find_ahead(page, language)
        all_found.cues += moments.find_long(page, language)
        all_found.cues.sort(key=lambda cue: cue.start)
        all_found.measures = [m for m in all_found.measures if not page.any_taken(m.start, m.end)]


def _undone(page: Page, doing: activity.Doing, all_found: Findings, by: By) -> bool:
    """Whether it is only spoken of; its words are claimed then."""
    if not undone.only_spoken_of(page, doing, all_found.subjects, by):
        return False
    page.claim(doing.start, doing.end)
    return True


_THINGS = frozenset({"the", "my", "some", "el", "la"})


def _objects(page: Page, all_found: Findings) -> None:
    """What is worked on is not eaten (`hoed the maize 40 min`)."""
    for doing in all_found.doings:
        place = bisect_left(all_found.measures, doing.end, key=lambda measure: measure.start)
        for measure in all_found.measures[place : place + 1]:
            between = set(range(doing.end, measure.start))
            if measure.minutes is None or not 0 < len(between) <= 4:
                continue
            inside = [dish for dish in all_found.dishes if dish.start in between]
            plain = {i for dish in inside for i in range(dish.start, dish.end)}
            told = set(page.words(doing.end, measure.start))
            if inside and told <= _THINGS | {page.tokens[i].word for i in plain}:
                all_found.dishes = [dish for dish in all_found.dishes if dish not in inside]


def _within(dish: food.Dish, doings: list[activity.Doing]) -> bool:
    """`water` in `carried water`."""
    return any(
        doing.start <= dish.start
        and dish.end <= doing.end
        and doing.end - doing.start > dish.end - dish.start
        for doing in doings
    )


def _named_otherwise(page: Page, language: str, all_found: Findings) -> None:
    """A bare number right behind a word of no list is the number of that thing (`glorb 142`),
    where nothing else in the message speaks of a reading."""
    known = known_words(language)
    busy = activity.tokens_of(all_found.doings)
    for value in list(all_found.values):
        before = value.start - 1
        if value.unit is not None or value.off_scale is not None or before < 0 or before in busy:
            continue
        word = page.tokens[before].word
        company = {"with", "con"} & set(page.words(max(before - 2, 0), before))
        if word.isalpha() and page.free(before) and word not in known and not company:
            all_found.values.remove(value)
            all_found.unsure.append(value)  # beside an entry it is asked about
            all_found.strangers.append(
                Stranger(start=before, end=value.end, kind=strangers.Kind.ODD)
            )


def _hour_to_come(all_found: Findings, value: Value) -> bool:
    """`dinner is gonna be late, maybe 8`: an hour, beside what is only planned."""
    hour = value.unit is None and value.number in range(1, 25) and not value.decimal
    clause = all_found.clauses[value.start]
    return hour and any(
        clause - 1 <= all_found.clauses[place] <= clause for place, _ in all_found.planned
    )


def _in_numbers(page: Page, context: Context, all_found: Findings) -> None:
    """Values, once every other number is known; then what leads food in."""
    language = context.language
    for measure in all_found.measures:
        if measure.minutes is not None:
            page.claim(measure.start, measure.end)
    distances = {
        index
        for measure in all_found.measures
        if measure.minutes is None
        for index in range(measure.start, measure.end)
    }.union(*(range(*span) for span in all_found.counts))
    small, answer = SMALL[context.unit], context.asked is Asked.MEAL
    dish_at = {index for dish in all_found.dishes for index in range(dish.start, dish.end)}
    busy = activity.tokens_of(all_found.doings)
    all_found.amounts = helpings.amounts(
        page, language, all_found.dishes, small, busy, answer=answer
    )
    if answer and not dish_at:  # `two frobbles and a glack`
        all_found.amounts |= pieces.counts_of_words(page, small)
    all_found.values += values.bare(page, all_found.amounts | distances | dish_at | busy)
    if all_found.code:
        all_found.unsure = [value for value in all_found.values if value.unit is None]
        all_found.values = [value for value in all_found.values if value.unit is not None]
    all_found.values = [value for value in all_found.values if not _hour_to_come(all_found, value)]
    all_found.values.sort(key=lambda value: value.start)
    if len(all_found.values) + bool(all_found.whens) > 1:
        all_found.whens += times_ahead.find_now(page, language)
        all_found.whens.sort(key=lambda when: when.start)
    longer = [dish for dish in all_found.dishes if dish.end - dish.start > 1 or dish.sugar]
    all_found.named = values.claim_names(
        page,
        language,
        dish_at,
        all_found.amounts,
        valued=bool(all_found.values),
        part_of={at for dish in longer for at in range(dish.start, dish.end)},
    )
    if not (context.wants_reading or all_found.named or all_found.cues or dish_at):
        _named_otherwise(page, language, all_found)
    sugar = {at for dish in longer if dish.sugar for at in range(dish.start, dish.end)}
    all_found.strangers += strangers.find_medicine(page, language, sugar | busy)
    whole = food.of_several_words(page, language, all_found.dishes)
    within = {at for start, end in whole for at in range(start, end)}
    all_found.leads += blamed.find(page, language, dish_at, all_found.values)
    all_found.leads += lead_ins.leads(page, language, within, busy - dish_at)
    all_found.leads += taken.find(page, all_found.dishes)
    all_found.leads.sort(key=lambda lead: lead.start)
