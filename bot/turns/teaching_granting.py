"""What an educator may set for one participant, within safe bounds: goals, limits, plan, note,
label. What they release is in teaching_releasing.py."""

from collections.abc import Callable
from dataclasses import replace

from bot.educator import goal_log
from bot.educator.bounds import (
    AFTER_HIGH,
    BEFORE_HIGH,
    BEFORE_LOW,
    HIGH,
    LOW,
    with_goals,
    with_high,
    with_high_plan,
    with_low,
)
from bot.localtime import in_zone
from bot.participants import Participant, State
from bot.planning.quiet import after_quiet
from bot.turns.teaching_desk import Lesson, change_and_tell
from bot.turns.teaching_inviting import cut_label
from bot.turns.teaching_reading import numbers
from bot.words.amounts import clock, number_words
from bot.words.educator_lines import goals_line
from bot.words.language import language

#: A note's longest text, so that it stays one message (project rule).
LONGEST_NOTE = 1000


def set_goals(lesson: Lesson, person: Participant, rest: str) -> None:
    """Show the goals, or set them from three numbers in the participant's own unit."""
    say = lesson.say
    told = numbers(rest)
    if not told:
        shown = say.goals_now.format(
            who=lesson.who(person), goals=goals_line(person, say.person_goals)
        )
        lines = (shown, *_goals_so_far(lesson, person), goals_line(person, say.goals_how))
        lesson.answer("\n".join(lines))
        return
    try:
        low, high, after = told
        changed = with_goals(person, (low, high), after)
    except ValueError:  # out of bounds, or not three numbers
        bounds = (*BEFORE_LOW, *BEFORE_HIGH, *AFTER_HIGH)
        lesson.answer(_bounds(say.goals_bounds, bounds, person))
        return
    theirs = language(person.language).educator
    goals = goals_line(changed, theirs.person_goals)
    logged = goal_log.as_request(person, changed, lesson.educator.id)
    change_and_tell(lesson, changed, logged, note=theirs.goals_changed_note.format(goals=goals))
    lesson.answer(
        say.goals_set.format(who=lesson.who(person), goals=goals_line(changed, say.person_goals))
    )


def _goals_so_far(lesson: Lesson, person: Participant) -> list[str]:
    """Who set which goals when; nothing while they are those of joining."""
    settings = goal_log.goals_set(lesson.whole(person.id))
    if len(settings) < 2:
        return []
    say, lines = lesson.asks, [lesson.asks.goals_since]
    for one in reversed(settings):
        then = replace(person, goals=one.goals, limits=one.limits)
        template = say.set_at_joining if one.by is None else say.set_by
        day = f"{in_zone(one.at, person.zone):%Y-%m-%d}"
        goals = goals_line(then, lesson.say.person_goals)
        by = say.you if one.by == lesson.educator.id else one.by
        lines.append(template.format(day=day, goals=goals, by=by))
    return lines


def set_low(lesson: Lesson, person: Participant, rest: str) -> None:
    """Raise where `low` begins, to 80 at most."""
    _set_limit(lesson, person, rest, with_low, lesson.say.low_set)


def set_high(lesson: Lesson, person: Participant, rest: str) -> None:
    """Lower where `high` begins, to 200 at least."""
    _set_limit(lesson, person, rest, with_high, lesson.say.high_set)


def _set_limit(
    lesson: Lesson,
    person: Participant,
    rest: str,
    change: Callable[[Participant, float], Participant],
    template: str,
) -> None:
    told = numbers(rest)
    try:
        (value,) = told
        changed = change(person, value)
    except ValueError:  # out of bounds, or not one number
        lesson.answer(_bounds(lesson.say.limit_bounds, (*LOW, *HIGH), person))
        return
    theirs = language(person.language).educator
    logged = goal_log.as_request(person, changed, lesson.educator.id)
    note = goals_line(changed, theirs.limits_changed_note)
    change_and_tell(lesson, changed, logged, note=note)
    shown = goals_line(changed, template.replace("{who}", "\0"))
    lesson.answer(shown.replace("\0", lesson.who(person)))


def _bounds(template: str, bounds: tuple[float, ...], person: Participant) -> str:
    letters = dict(zip("abcdef", bounds, strict=False))
    shown = {letter: number_words(value, person.unit) for letter, value in letters.items()}
    return template.format(unit=person.unit.value, **shown)


def set_plan(lesson: Lesson, person: Participant) -> None:
    """A plan of 14 days for somebody who is high for weeks."""
    say, theirs = lesson.say, language(person.language).educator
    changed = with_high_plan(person, lesson.now)
    assert changed.high_plan_until is not None  # noqa: S101 - just set
    until = f"{in_zone(changed.high_plan_until, person.zone):%Y-%m-%d}"
    change_and_tell(lesson, changed, note=theirs.plan_note.format(until=until))
    lesson.answer(say.plan_set.format(who=lesson.who(person), until=until))


def end_plan(lesson: Lesson, person: Participant) -> None:
    """The plan ends now."""
    say, who = lesson.say, lesson.who(person)
    if person.high_plan_until is None or person.high_plan_until <= lesson.now:
        lesson.answer(say.plan_ended_already.format(who=who))
        return
    lesson.change(replace(person, high_plan_until=None))
    lesson.answer(say.plan_ended.format(who=who))


def send_note(lesson: Lesson, person: Participant, rest: str) -> None:
    """A note to a participant, after their quiet time; nothing to somebody who sent `stop`."""
    say, who = lesson.say, lesson.who(person)
    if not rest:
        lesson.answer(say.note_empty.format(who=who))
        return
    if person.state is State.STOPPED:
        lesson.answer(say.note_stopped.format(who=who))
        return
    text = language(person.language).educator.note.replace("{text}", rest[:LONGEST_NOTE])
    due_at = after_quiet(person, lesson.now)
    lesson.change(person, note=text, due_at=due_at)
    if due_at > lesson.now:
        at = clock(in_zone(due_at, person.zone))
        lesson.answer(say.note_later.format(who=who, at=at))
    else:
        lesson.answer(say.note_sent.format(who=who))


def set_label(lesson: Lesson, person: Participant, rest: str) -> None:
    """The educator's own word for a participant."""
    label = cut_label(rest)
    if label is None:
        lesson.answer(lesson.say.label_empty.format(who=person.id))
        return
    others = tuple(one for one in lesson.educator.labels if one[0] != person.id)
    lesson.educator = replace(lesson.educator, labels=(*others, (person.id, label)))
    lesson.answer(lesson.say.labelled.format(who=lesson.who(person)))
