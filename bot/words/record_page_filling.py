"""A fortnight of the record put into the words of a page to print."""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from datetime import date, time
from typing import Any

from bot.educator.goal_log import goals_set, person_then
from bot.entries import Reading
from bot.glucose.pairs import Pair, Status
from bot.glucose.readings import is_free_drink, is_high
from bot.glucose.week import Week, judged_by, week
from bot.localtime import DAY, at_local, in_zone, local_date
from bot.picture import Joint, Row, to_mapping
from bot.record import Noted, Record
from bot.record.fold import is_low, when
from bot.words.amounts import clock, number_words
from bot.words.picture import (
    dates_words,
    goal_bounds,
    may_come,
    week_picture,
)
from bot.words.record_page import (
    Block,
    MealRow,
    RecordPage,
    RecordPageSentences,
    Value,
    own,
)
from bot.words.record_page_lists import (
    Then,
    activities_told,
    changed,
    day_words,
    lows_and_highs,
    other_tests,
    signed,
    word_of,
)

FORTNIGHT = 14 * DAY
WEEK = 7 * DAY


def record_pages(
    record: Record, say: RecordPageSentences, *, whole: bool = False
) -> tuple[RecordPage, ...]:
    """The last fortnight as a page; of the `whole` record one for each that holds something.

    The newest comes first and ends on the day of the newest entry. A record without entries has
    one page that says so.
    """
    zone = record.participant.zone
    days = sorted(local_date(when(noted), zone) for noted in _everything(record))
    if not days:
        joined = local_date(record.participant.joined_at, zone)
        return (_page(record, joined, joined, say),)
    pages = []
    last = days[-1]
    oldest = days[0] if whole else last
    while last >= oldest:
        first = last - FORTNIGHT + DAY
        if any(first <= day <= last for day in days):
            pages.append(_page(record, first, last, say))
        last -= FORTNIGHT
    return tuple(pages)


def _everything(record: Record) -> tuple[Noted[Any], ...]:
    return (
        *record.readings,
        *record.meals,
        *record.treatments,
        *record.activities,
        *record.symptoms,
        *record.steps,
        *record.answers,
    )


def _page(record: Record, first: date, last: date, say: RecordPageSentences) -> RecordPage:
    person, then = record.participant, person_then(record)
    figures = _days(record, first, last)
    who = say.who_named if person.name else say.who
    pairs = [pair for pair in figures.pairs if _tells(pair)]
    lows = lows_and_highs(record, figures, then, say) or [say.no_lows]
    return RecordPage(
        title=say.title,
        dates=f"{dates_words(first, last, say.picture)} {last.year}",
        who=who.format(name=own(person.name or ""), id=person.id),
        unit=say.unit.format(unit=person.unit.value, zone=person.zone),
        goals=Block(title=say.goals_title, lines=tuple(_goals(record, figures, say))),
        figures=tuple(_figures(figures, say)),
        figures_title=say.short_title,
        charts=tuple(_charts(record, first, last, say)),
        columns=say.columns,
        rows=tuple(_meal_row(pair, figures, then, say) for pair in pairs),
        no_rows=say.no_meals,
        more_rows=say.more_meals,
        legend=say.legend,
        blocks=(
            _block(say.lows_title, lows, say),
            _block(say.activity_title, activities_told(record, figures, say), say),
            _block(say.others_title, other_tests(figures, then, say) or [say.nothing], say),
            _block(say.changed_title, changed(record, figures, say), say),
        ),
        foot=say.foot,
    )


def _days(record: Record, first: date, last: date) -> Week:
    """The figures of whole local days, both ends included, each judged by the goals of then."""
    zone = record.participant.zone
    midnight = time(0)
    start, end = at_local(first, midnight, zone), at_local(last + DAY, midnight, zone)
    return judged_by(week(record, start=start, end=end), person_then(record))


def _block(title: str, lines: list[str], say: RecordPageSentences) -> Block:
    return Block(title=title, lines=tuple(lines), more=say.more)


def _tells(pair: Pair) -> bool:
    """Water and coffee without any test say nothing."""
    return bool(pair.before or pair.after) or not is_free_drink(pair.meal.entry)


def _goals(record: Record, figures: Week, say: RecordPageSentences) -> Iterator[str]:
    """The goals of the page's last day; on the newest page, which is of now, those of now."""
    settings = goals_set(record)
    newest = figures.end.timestamp() > max(map(_instant, _everything(record)), default=0)
    if not newest:
        settings = tuple(one for one in settings if one.at.timestamp() < figures.end.timestamp())
    person = record.participant if newest else figures.participant
    if not person.judged:
        yield say.not_judged
    else:
        low, high, after = goal_bounds(person.goals, person.unit)
        yield say.goal_before.format(low=low, high=high)
        yield say.goal_after.format(high=after)
    yield say.low_from.format(low=number_words(person.limits.low, person.unit))
    yield say.high_from.format(high=number_words(person.limits.high, person.unit))
    latest = settings[-1]
    if latest.by is not None:
        day = day_words(in_zone(latest.at, person.zone), say)
        yield say.goals_since.format(day=day, by=latest.by)
    if latest.at.timestamp() > figures.start.timestamp() and len(settings) > 1:
        yield say.goals_of_the_day


def _figures(figures: Week, say: RecordPageSentences) -> Iterator[tuple[str, str]]:
    person = figures.participant

    def value(mg_dl: float | None) -> str:
        return say.nothing if mg_dl is None else number_words(mg_dl, person.unit)

    yield say.tests, str(len(figures.readings))
    yield say.full, str(len(figures.complete))
    for label, (within, of) in (
        (say.before_within, figures.before_in_goal),
        (say.after_within, figures.after_in_goal),
    ):
        yield label, say.share.format(within=within, of=of) if of else say.nothing
    yield say.median_before, value(figures.median_before)
    yield say.median_after, value(figures.median_after)
    rise = figures.median_rise
    yield say.median_rise, say.nothing if rise is None else signed(rise, person)
    yield say.lowest, value(figures.lowest)
    yield say.highest, value(figures.highest)


def _charts(
    record: Record, first: date, last: date, say: RecordPageSentences
) -> Iterator[Mapping[str, Any]]:
    """A chart for each of the weeks that hold a pair or an activity with its two values."""
    for start in (first, first + WEEK):
        end = min(start + WEEK - DAY, last)
        picture = week_picture(_days(record, start, end), say.picture)
        joined = tuple(row for row in picture.rows if row.joint is not Joint.NONE and _both(row))
        if joined:
            title = dates_words(start, end, say.picture)
            # What stands alone, and what was cautioned, has its own lists on the page.
            yield to_mapping(replace(picture, title=title, rows=joined, cautions=()))


def _both(row: Row) -> bool:
    return len(row.marks) > 1


def _instant(noted: Noted[Any]) -> float:
    return when(noted).timestamp()


def _meal_row(pair: Pair, figures: Week, then: Then, say: RecordPageSentences) -> MealRow:
    person = figures.participant
    start = in_zone(pair.started_at, person.zone)
    meal = pair.meal.entry
    name = say.picture.meal_names[meal.name] if meal.name else ""
    return MealRow(
        day=day_words(start, say),
        at=clock(start),
        meal=f"{name}: {own(meal.text)}" if name and meal.text else name or meal.text,
        before=_value(pair.before, pair.before_in_goal, then, say),
        after=_value(pair.after, pair.after_in_goal, then, say),
        rise="" if pair.rise is None else signed(pair.rise, person),
        note=_note(pair, figures, say),
    )


def _value(
    noted: Noted[Reading] | None,
    within: bool | None,
    then: Then,
    say: RecordPageSentences,
) -> Value:
    if noted is None:
        return Value(word=say.missing)
    reading, person = noted.entry, then(when(noted))
    word = word_of(reading, person)
    if is_low(reading, person.limits):
        return Value(word=word, mark=say.below)
    if is_high(reading, person.limits):
        return Value(word=word, mark=say.above)
    if within is not False:
        return Value(word=word)
    under = reading.mg_dl is not None and reading.mg_dl < person.goals.before_low
    return Value(word=word, mark=say.below if under else say.above)


def _note(pair: Pair, figures: Week, say: RecordPageSentences) -> str:
    if pair.status is Status.COMPLETE:
        return say.not_sure if pair.unconfirmed else ""
    if may_come(pair, figures):
        return say.picture.still_open
    return say.picture.notes[pair.status].format(minutes=pair.after_minutes)
