"""What an educator is shown: the roster, one participant's record, chart and steps, the group."""

from collections.abc import Mapping
from datetime import timedelta

from bot.educator.group import group_figures
from bot.educator.roster import Reason, line, roster
from bot.entries import Step
from bot.glucose.pairs import pairs
from bot.glucose.week import Week, week
from bot.localtime import MINUTE, in_zone, local_date, shifted
from bot.participants import Participant
from bot.programme.steps import next_step, offer, released, step_at
from bot.record import Record
from bot.turns.teaching_desk import Lesson
from bot.turns.teaching_reading import page_of
from bot.turns.weekly import summary
from bot.words.amounts import change_words, mg_dl_words
from bot.words.asks import days_words
from bot.words.educator import Wish
from bot.words.educator_lines import (
    goals_line,
    group_words,
    on_page,
    paged,
    roster_lines,
    why_words,
)
from bot.words.language import language
from bot.words.requests import record_words

#: What one participant's page looks back on.
FORTNIGHT = timedelta(days=14)


def show_roster(lesson: Lesson, rest: str) -> None:
    """Everybody, those who need a look first on top, each with the reasons."""
    say, own = lesson.say, lesson.desk.own
    if not own:
        lesson.answer(say.roster_empty)
        return
    found = roster(lesson.records(), lesson.now)
    lines = [(say.tiers[tier], text) for tier, text in roster_lines(found, lesson.educator, say)]
    command = say.wishes[Wish.ROSTER][0]
    text, more = paged(say.roster_head.format(count=len(own)), lines, page_of(rest), command, say)
    first = [one.participant.id for one in on_page(found, page_of(rest)) if one.whys][:3]
    shows = tuple(f"{say.wishes[Wish.SHOW][0]} {who}" for who in first)
    lesson.answer(text, (*shows, *more))


#: What waits for the educator, and the command that releases it.
RELEASES: Mapping[Reason, Wish] = {
    Reason.STEP_WAITS: Wish.RELEASE,
    Reason.FEWER_WAITS: Wish.FEWER,
}


def show_person(lesson: Lesson, person: Participant) -> None:
    """One page of a participant, with buttons for more."""
    lesson.answer(person_words(lesson, person), person_buttons(lesson, person))


def person_buttons(lesson: Lesson, person: Participant) -> tuple[str, ...]:
    """What waits for release, then what else there is to see."""
    say = lesson.say
    whys = line(lesson.record(person.id), lesson.now).whys
    releases = tuple(
        f"{say.wishes[RELEASES[why.reason]][-1]} {person.id}"
        for why in whys
        if why.reason in RELEASES
    )
    return (*releases, *(button.format(id=person.id) for button in say.person_buttons))


def person_words(lesson: Lesson, person: Participant) -> str:
    """The step, why a look is needed, the figures of two weeks, goals, what is known."""
    say, record = lesson.say, lesson.whole(person.id)
    head = say.person.format(
        who=lesson.who(person),
        joined=f"{in_zone(person.joined_at, person.zone):%Y-%m-%d}",
        step=say.step_names[step_at(record, lesson.now)],
    )
    lines = [head]
    lines += [f"- {why_words(why, person, say)}" for why in line(record, lesson.now).whys]
    since = max(shifted(lesson.now, -FORTNIGHT), person.joined_at)
    # A span's end is outside it: what was told this minute belongs in.
    until = shifted(lesson.now, MINUTE)
    lines.append(_figures(week(record, start=since, end=until), person, lesson))
    lines.append(goals_line(person, say.person_goals))
    flags = _flags(person, lesson)
    if flags:
        lines.append(say.person_flags.format(flags=", ".join(flags)))
    return "\n".join(lines)


def _figures(figures: Week, person: Participant, lesson: Lesson) -> str:
    say = lesson.say
    if not figures.readings:
        return say.person_none

    def value(mg_dl: float | None) -> str:
        return "-" if mg_dl is None else mg_dl_words(mg_dl, person.unit)

    rise = figures.median_rise
    return say.person_figures.format(
        pairs=len(figures.complete),
        readings=len(figures.readings),
        before_in=figures.before_in_goal[0],
        before_of=figures.before_in_goal[1],
        after_in=figures.after_in_goal[0],
        after_of=figures.after_in_goal[1],
        before=value(figures.median_before),
        after=value(figures.median_after),
        rise="-" if rise is None else _signed(rise, person),
        lowest=value(figures.lowest),
        highest=value(figures.highest),
    )


def _signed(mg_dl: float, person: Participant) -> str:
    sign = "+" if mg_dl >= 0 else "-"
    return f"{sign}{change_words(mg_dl, person.unit)} {person.unit.value}"


def _flags(person: Participant, lesson: Lesson) -> list[str]:
    say = lesson.say
    flags = [say.flag_lows] if person.can_go_low else []
    if person.can_make_ketones:
        flags.append(say.flag_ketones)
    if person.fast_to is not None and person.fast_to >= local_date(lesson.now, person.zone):
        first, last = person.fast_from or person.fast_to, person.fast_to
        flags.append(days_words(first, last, lesson.asks.fast_flag))
    until = person.high_plan_until
    if until is not None and until > lesson.now:
        flags.append(say.flag_plan.format(until=f"{in_zone(until, person.zone):%Y-%m-%d}"))
    return flags


def show_meals(lesson: Lesson, person: Participant, rest: str) -> None:
    """The meals of the last 35 days, newest first, paged."""
    say = lesson.say
    words = language(lesson.educator.language)
    every = [
        record_words([pair], words.requests, words.replies).split("\n", maxsplit=1)[-1]
        for pair in reversed(pairs(lesson.record(person.id)))
    ]
    if not every:
        lesson.answer(say.person_none)
        return
    command = f"{say.wishes[Wish.MEALS][-1]} {person.id}"
    head = say.meals_head.format(who=lesson.who(person))
    text, more = paged(head, [("", one) for one in every], page_of(rest), command, say)
    lesson.answer(text, (*more, *person_buttons(lesson, person)))


def show_page(lesson: Lesson, person: Participant) -> None:
    """The printable record of the last fortnight, made when it is sent."""
    head = lesson.say.page_head.format(who=lesson.who(person))
    lesson.answer(head, person_buttons(lesson, person), attachment=f"record:{person.id}")


def show_export(lesson: Lesson, person: Participant) -> None:
    """The whole record as files, without a text."""
    head = lesson.asks.export_head.format(who=lesson.who(person))
    lesson.answer(head, person_buttons(lesson, person), attachment=f"export:{person.id}")


def show_chart(lesson: Lesson, person: Participant) -> None:
    """The chart of the week so far, with the words that the participant reads with it."""
    told = summary(lesson.whole(person.id), lesson.now, language(lesson.educator.language))
    head = lesson.say.chart_head.format(who=lesson.who(person))
    lesson.answer(f"{head}\n{told.text}", person_buttons(lesson, person), picture=told.picture)


def show_steps(lesson: Lesson, person: Participant) -> None:
    """Each step with its pairs and mean rise, and what stands before the next one."""
    say, record = lesson.say, lesson.whole(person.id)
    lines = [say.steps_head.format(who=lesson.who(person))]
    for figures in week(record, start=person.joined_at, end=lesson.now).steps:
        mean = figures.mean_rise
        lines.append(
            say.steps_line.format(
                step=say.step_names[figures.step],
                since=f"{in_zone(figures.since, person.zone):%Y-%m-%d}",
                pairs=len(figures.pairs),
                rise=say.steps_none if mean is None else _signed(mean, person),
            )
        )
    lines += _next(lesson, record)
    buttons = person_buttons(lesson, person)
    release = f"{say.wishes[Wish.RELEASE][-1]} {person.id}"
    if _waits(record, lesson) and release not in buttons:
        buttons = (release, *buttons)
    lesson.answer("\n".join(lines), buttons)


def _next(lesson: Lesson, record: Record) -> list[str]:
    say = lesson.say
    following = offer(record, pairs(record), lesson.now)
    if following is None:
        return [say.steps_last]
    lines = [say.steps_next.format(step=say.step_names[following.step])]
    if following.missing:
        lines.append(say.steps_missing.format(missing=following.missing))
    if following.held_back:
        lines.append(say.steps_held)
    if following.needs_release:
        lines.append(say.steps_free)
    return lines


def _waits(record: Record, lesson: Lesson) -> Step | None:
    step = next_step(step_at(record, lesson.now))
    if step is None or not record.participant.needs_release or released(record, step):
        return None
    return step


def show_group(lesson: Lesson) -> None:
    """The group's change from the first seven days to the last."""
    records = (lesson.whole(person.id) for person in lesson.desk.own)
    lesson.answer(group_words(group_figures(records, lesson.now), lesson.say))
