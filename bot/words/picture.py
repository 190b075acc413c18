"""A week's figures as a picture: which rows there are, and every word that stands on it."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date, datetime

from bot.entries import Meal, MealName, OffScale, Reading
from bot.glucose.effects import Effect
from bot.glucose.pairs import Pair, Status
from bot.glucose.readings import Settled, is_free_drink, is_high
from bot.glucose.week import Week
from bot.localtime import in_zone, local_date, minutes_between
from bot.participants import Goals, Participant
from bot.picture import (
    Alert,
    GoalLines,
    Joint,
    Judged,
    Legend,
    Mark,
    Off,
    Picture,
    Role,
    Row,
)
from bot.record import Noted
from bot.record.fold import is_low, when
from bot.units import Unit, half_up, in_unit, limit_in
from bot.words.amounts import clock

#: A pair's after reading may still come this long after the first bite (contract, "Pairing").
STILL_OPEN_MINUTES = 150


@dataclass(frozen=True, slots=True, kw_only=True)
class PictureSentences:
    """The words on a picture; braces name what is filled in."""

    title: str
    title_so_far: str
    days: tuple[str, str, str, str, str, str, str]
    months: tuple[str, ...]
    dates: str
    dates_two_months: str
    meal_names: dict[MealName, str]
    activity: str
    activity_minutes: str
    other_tests: str
    before_goal: str
    after_goal: str
    legend: Legend
    notes: dict[Status, str]
    still_open: str
    doubtful: str
    doubtful_note: str
    unconfirmed: str
    food_working: str
    cautions: dict[str, str]
    caution: str
    caution_times: str
    empty: str
    empty_so_far: str
    more: str


def week_picture(week: Week, say: PictureSentences, *, so_far: bool = False) -> Picture:
    """The picture of a week; `so_far` where the week still runs."""
    person = week.participant
    title = say.title_so_far if so_far else say.title
    first = local_date(week.start, person.zone) if so_far else week.from_date
    rows = sorted(_rows(week, say), key=lambda placed: placed[:2])
    return Picture(
        title=title.format(dates=dates_words(first, week.to_date, say)),
        unit=person.unit.value,
        legend=say.legend,
        goals=_goals(person.goals, person.unit, say) if person.judged else None,
        rows=tuple(row for _, _, row in rows),
        cautions=tuple(_cautions(week, say)),
        empty=say.empty_so_far if so_far else say.empty,
        more=say.more,
    )


def dates_words(first: date, last: date, say: PictureSentences) -> str:
    """`2 to 8 March`, `30 March to 5 April`."""
    template = say.dates if first.month == last.month else say.dates_two_months
    return template.format(
        first=first.day,
        first_month=say.months[first.month - 1],
        last=last.day,
        last_month=say.months[last.month - 1],
    )


def goal_bounds(goals: Goals, unit: Unit) -> tuple[str, str, str]:
    """The goals as a meter of that unit shows them: before from, before to, after below."""
    low, high = in_unit(goals.before_low, unit), in_unit(goals.before_high, unit)
    return str(low), str(high), str(in_unit(goals.after_high, unit))


def _goals(goals: Goals, unit: Unit, say: PictureSentences) -> GoalLines:
    low, high, after = goal_bounds(goals, unit)
    return GoalLines(
        before_low=limit_in(goals.before_low, unit),
        before_high=limit_in(goals.before_high, unit),
        after_high=limit_in(goals.after_high, unit),
        before_word=say.before_goal.format(low=low, high=high),
        after_word=say.after_goal.format(high=after),
    )


def _cautions(week: Week, say: PictureSentences) -> Iterator[str]:
    for level, words in say.cautions.items():
        if count := week.cautions.count(level):
            template = say.caution if count == 1 else say.caution_times
            yield template.format(caution=words, count=count)


#: A row with what it is ordered by: its day, and its instant within the day.
Placed = tuple[date, float, Row]


def _rows(week: Week, say: PictureSentences) -> Iterator[Placed]:
    zone = week.participant.zone
    for pair in week.pairs:
        if pair.before or pair.after or not is_free_drink(pair.meal.entry):
            start = in_zone(pair.started_at, zone)
            yield start.date(), start.timestamp(), _meal_row(pair, start, week, say)
    for effect in week.effects:
        end = in_zone(effect.activity.entry.ended_at, zone)
        yield end.date(), end.timestamp(), _activity_row(effect, end, week.participant, say)
    yield from _other_rows(week, say)


def _meal_row(pair: Pair, start: datetime, week: Week, say: PictureSentences) -> Row:
    uncounted = pair.status is not Status.COMPLETE and not may_come(pair, week)
    person = week.participant
    marks = []
    if pair.before is not None:
        marks.append(_mark(pair.before.entry, Role.BEFORE, person, pair.before_in_goal))
    if pair.after is not None:
        marks.append(_mark(pair.after.entry, Role.AFTER, person, pair.after_in_goal))
    return Row(
        day=say.days[start.weekday()],
        name=_name(pair.meal.entry, start, say),
        detail=pair.meal.entry.text,
        note=_note(pair, week, say),
        joint=Joint.UNCOUNTED if uncounted else Joint.COUNTED,
        marks=tuple(marks),
    )


def _name(meal: Meal, start: datetime, say: PictureSentences) -> str:
    """A meal without a name is known by its time: which one it was is not guessed."""
    return say.meal_names[meal.name] if meal.name is not None else clock(start)


def _note(pair: Pair, week: Week, say: PictureSentences) -> str:
    if pair.status is Status.COMPLETE:
        return say.unconfirmed if pair.unconfirmed else ""
    if may_come(pair, week):
        return say.still_open
    return say.notes[pair.status].format(minutes=pair.after_minutes)


def may_come(pair: Pair, week: Week) -> bool:
    """The second test is missing, but its time is not over."""
    gone = minutes_between(pair.started_at, week.end)
    return pair.status is Status.NO_AFTER and gone <= STILL_OPEN_MINUTES


def _activity_row(effect: Effect, end: datetime, person: Participant, say: PictureSentences) -> Row:
    activity = effect.activity.entry
    template = say.activity if activity.minutes is None else say.activity_minutes
    minutes = None if activity.minutes is None else half_up(activity.minutes, 0)
    return Row(
        day=say.days[end.weekday()],
        name=say.legend.activity.capitalize(),
        detail=template.format(activity=activity.text, minutes=minutes),
        note=say.food_working if effect.food_still_working else "",
        joint=Joint.ACTIVITY,
        marks=(
            _mark(effect.before.entry, Role.BEFORE, person, None),
            _mark(effect.after.entry, Role.AFTER, person, None),
        ),
    )


def _other_rows(week: Week, say: PictureSentences) -> Iterator[Placed]:
    """One faint row a day, at its end, for the readings that belong to nothing."""
    zone = week.participant.zone
    by_day: dict[date, list[Settled]] = {}
    for one in lone_readings(week):
        by_day.setdefault(in_zone(when(one.noted), zone).date(), []).append(one)
    for day, ones in by_day.items():
        marks = tuple(_lone_mark(one, week.participant, say) for one in ones)
        row = Row(
            day=say.days[day.weekday()],
            name=say.other_tests,
            detail=", ".join(mark.word for mark in marks),
            note=say.doubtful_note if any(mark.doubtful for mark in marks) else "",
            marks=marks,
        )
        yield day, float("inf"), row


def lone_readings(week: Week) -> tuple[Settled, ...]:
    """The readings of a week that stand in none of its pairs and effects."""
    used = {noted.id for noted in _used(week) if noted is not None}
    return tuple(one for one in week.readings if one.noted.id not in used)


def _used(week: Week) -> Iterable[Noted[Reading] | None]:
    for pair in week.pairs:
        yield from (pair.before, pair.after)
    for effect in week.effects:
        yield from (effect.before, effect.after)


def _lone_mark(one: Settled, person: Participant, say: PictureSentences) -> Mark:
    reading = one.noted.entry
    mark = _mark(reading, Role.LONE, person, None)
    if not (one.doubtful or one.unconfirmed):
        return mark
    word = say.doubtful.format(value=mark.word)
    low = mark.alert if mark.alert is Alert.LOW else None  # a low is a low until it is corrected
    return Mark(at=mark.at, word=word, role=Role.LONE, off=mark.off, alert=low, doubtful=True)


def _mark(reading: Reading, role: Role, person: Participant, within: bool | None) -> Mark:
    return Mark(
        at=None if reading.mg_dl is None else float(in_unit(reading.mg_dl, person.unit)),
        word=_word(reading, person.unit),
        role=role,
        judged=_judged(within),
        off=_off(reading),
        alert=_alert(reading, person),
    )


def _word(reading: Reading, unit: Unit) -> str:
    if reading.mg_dl is None:
        return "HI" if reading.off_scale is OffScale.HIGH else "LO"
    return str(in_unit(reading.mg_dl, unit))


def _judged(within: bool | None) -> Judged:
    if within is None:
        return Judged.NOT
    return Judged.WITHIN if within else Judged.OUTSIDE


def _off(reading: Reading) -> Off | None:
    if reading.off_scale is None:
        return None
    return Off.HIGH if reading.off_scale is OffScale.HIGH else Off.LOW


def _alert(reading: Reading, person: Participant) -> Alert | None:
    if is_low(reading, person.limits):
        return Alert.LOW
    return Alert.HIGH if is_high(reading, person.limits) else None
