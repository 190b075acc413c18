"""The lists on a page to print: lows and highs, activity, other tests, what was changed."""

from collections.abc import Callable
from datetime import datetime
from itertools import pairwise

from bot.educator.goal_log import GoalsSet, goals_set
from bot.entries import OffScale, Reading
from bot.glucose.effects import Effect
from bot.glucose.readings import Settled, is_high
from bot.glucose.week import StepFigures, Week
from bot.localtime import in_zone
from bot.participants import Participant
from bot.record import Record
from bot.record.fold import is_low, when
from bot.units import half_up
from bot.words.amounts import change_words, clock, number_words
from bot.words.picture import lone_readings
from bot.words.record_page import RecordPageSentences, own

#: The participant with the goals and limits that were in force at an instant.
Then = Callable[[datetime], Participant]


def signed(mg_dl: float, person: Participant) -> str:
    """A change in the person's unit with its sign; none where it rounds to nothing."""
    size = change_words(mg_dl, person.unit)
    if float(size) == 0:
        return size
    return f"+{size}" if mg_dl > 0 else f"\N{MINUS SIGN}{size}"


def day_words(moment: datetime, say: RecordPageSentences) -> str:
    """`Mon 2 March`."""
    picture = say.picture
    return f"{picture.days[moment.weekday()]} {moment.day} {picture.months[moment.month - 1]}"


def word_of(reading: Reading, person: Participant) -> str:
    """A value in the person's unit, without the unit."""
    if reading.mg_dl is None:
        return "HI" if reading.off_scale is OffScale.HIGH else "LO"
    return number_words(reading.mg_dl, person.unit)


def _inside(moment: datetime, figures: Week) -> bool:
    return figures.start.timestamp() <= moment.timestamp() < figures.end.timestamp()


def _dated(moment: datetime, words: str, figures: Week, say: RecordPageSentences) -> str:
    local = in_zone(moment, figures.participant.zone)
    return f"{day_words(local, say)} {clock(local)}: {words}"


def lows_and_highs(
    record: Record, figures: Week, then: Then, say: RecordPageSentences
) -> list[str]:
    """Lows, highs, what was taken against a low, and what was felt, by time."""
    told: list[tuple[datetime, str]] = []
    for one in figures.readings:
        reading, person = one.noted.entry, then(when(one.noted))
        if is_low(reading, person.limits):
            words = say.off_low if reading.value is None else say.low
        elif is_high(reading, person.limits):
            words = say.off_high if reading.value is None else say.high
        else:
            continue
        filled = words.format(value=word_of(reading, person))
        told.append((when(one.noted), say.doubtful.format(line=filled) if one.doubtful else filled))
    told += [
        (sugar.entry.taken_at, say.sugar.format(text=own(sugar.entry.text)))
        for sugar in record.treatments
    ]
    told += [
        (felt.at, say.felt[felt.entry.suggests].format(text=own(felt.entry.text)))
        for felt in record.symptoms
    ]
    inside = sorted((at.timestamp(), at, words) for at, words in told if _inside(at, figures))
    return [_dated(at, words, figures, say) for _, at, words in inside]


def activities_told(record: Record, figures: Week, say: RecordPageSentences) -> list[str]:
    """Every activity, with its change where both readings exist."""
    by_activity = {effect.activity.id: effect for effect in figures.effects}
    lines = []
    for noted in record.activities:
        activity, effect = noted.entry, by_activity.get(noted.id)
        if not _inside(activity.ended_at, figures):
            continue
        template = say.activity if activity.minutes is None else say.activity_minutes
        minutes = None if activity.minutes is None else half_up(activity.minutes, 0)
        words = template.format(activity=own(activity.text), minutes=minutes)
        if effect is not None:
            words += _effect(effect, figures.participant, say)
        lines.append(_dated(activity.ended_at, words, figures, say))
    return lines or [say.no_activity]


def _effect(effect: Effect, person: Participant, say: RecordPageSentences) -> str:
    before, after = (word_of(one.entry, person) for one in (effect.before, effect.after))
    words = say.change.format(before=before, after=after)
    if effect.change is None:
        return words
    if effect.food_still_working:
        return words + say.food_working
    told = say.beyond if effect.beyond_meter_scatter else say.within_scatter
    return words + told.format(change=signed(effect.change, person))


def other_tests(figures: Week, then: Then, say: RecordPageSentences) -> list[str]:
    """Tests that belong to no meal and no activity, and are neither low nor high."""
    return [
        _dated(when(one.noted), _other(one, figures.participant, say), figures, say)
        for one in lone_readings(figures)
        for limits in (then(when(one.noted)).limits,)
        if not is_low(one.noted.entry, limits) and not is_high(one.noted.entry, limits)
    ]


def _other(one: Settled, person: Participant, say: RecordPageSentences) -> str:
    moment = say.moments.get(one.noted.entry.moment)
    word = word_of(one.noted.entry, person)
    return f"{word}, {moment}" if moment else word


def changed(record: Record, figures: Week, say: RecordPageSentences) -> list[str]:
    """The steps of the programme so far with their figures, the goals so far if they were set
    anew, and the weekly answers."""
    lines = [_step(step, figures.participant, say) for step in figures.steps]
    lines += _goals_so_far(record, figures, say)
    lines += [
        _dated(
            noted.at,
            say.answer.format(
                about=say.asked.get(noted.entry.about, noted.entry.about),
                how=say.answers.get(noted.entry.how, noted.entry.how),
            ),
            figures,
            say,
        )
        for noted in record.answers
        if _inside(noted.at, figures)
    ]
    return lines


def _goals_so_far(record: Record, figures: Week, say: RecordPageSentences) -> list[str]:
    """Goals and limits as they were set, the newest first; nothing while those of joining stand."""
    settings = [one for one in goals_set(record) if one.at.timestamp() < figures.end.timestamp()]
    if len(settings) < 2:
        return []
    lines = [_goals_line(settings[0], say.goals_first, figures, say)]
    for before, one in pairwise(settings):
        if one.goals != before.goals:
            lines.append(_goals_line(one, say.goals_set, figures, say))
        if one.limits != before.limits:
            lines.append(_goals_line(one, say.limits_set, figures, say))
    return lines[::-1]


def _goals_line(one: GoalsSet, template: str, figures: Week, say: RecordPageSentences) -> str:
    person = figures.participant
    return template.format(
        day=day_words(in_zone(one.at, person.zone), say),
        by=one.by,
        low=number_words(one.goals.before_low, person.unit),
        high=number_words(one.goals.before_high, person.unit),
        after=number_words(one.goals.after_high, person.unit),
        limit_low=number_words(one.limits.low, person.unit),
        limit_high=number_words(one.limits.high, person.unit),
    )


def _step(step: StepFigures, person: Participant, say: RecordPageSentences) -> str:
    rise = step.mean_rise
    template = say.step_untested if rise is None else say.step
    return template.format(
        step=say.steps[step.step],
        since=day_words(in_zone(step.since, person.zone), say),
        pairs=len(step.pairs),
        rise="" if rise is None else signed(rise, person),
    )
