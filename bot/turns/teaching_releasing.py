"""What waits for an educator: steps, fewer tests and fasting days, asked for and released.

A release opens a way; the participant decides when to take it.
"""

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace
from datetime import date, datetime, timedelta

from bot.educator.educator import Educator
from bot.entries import Request, Step, What
from bot.glucose.pairs import pairs
from bot.localtime import DAY, local_date, shifted
from bot.messages import Saying
from bot.participants import Participant, State
from bot.programme import steps, testing
from bot.programme.testing import Rhythm, Tendency, fewer, propose, rhythm_at
from bot.record import Body, Noted, Record, Wondered
from bot.turns.questions import FAST_WAITS, FEWER_WAITS, RHYTHM, STEP_WAITS
from bot.turns.teaching_desk import Lesson, change_and_tell, talking, unasked
from bot.words.asks import days_words
from bot.words.educator import Wish
from bot.words.educator_lines import who_words
from bot.words.language import Language, language

#: The questions that are open while something is released in spite of what the record shows.
STEP_STAGE, FEWER_STAGE = "release", "fewer"

#: What was asked of an educator longer ago is no news.
NEWS = timedelta(days=3)

#: The longest span of fasting days (a lunar month, with room for what is made up; project rule).
LONGEST_FAST = timedelta(days=40)
_DATE = re.compile(r"\b(\d{4})-(\d{1,2})-(\d{1,2})\b")


def release_step(lesson: Lesson, person: Participant, *, all_the_same: bool = False) -> None:
    """Release the next step; the participant decides when to take it."""
    say, record = lesson.asks, lesson.whole(person.id)
    who = lesson.who(person)
    step = steps.next_step(steps.step_at(record, lesson.now))
    if step is None:
        lesson.answer(say.release_last.format(who=who))
        return
    if not person.needs_release:
        lesson.answer(say.release_not_needed.format(who=who))
        return
    if not steps.calm(record, lesson.now) and person.tell_educator and not all_the_same:
        text = say.release_held.format(who=who, step=lesson.say.step_names[step])
        _ask_anyway(lesson, person, STEP_STAGE, text)
        return
    theirs = language(person.language)
    change_and_tell(
        lesson,
        person,
        Request(what=What.SETTINGS, setting=steps.RELEASED, setting_value=step.value),
        note=theirs.wishes.released_note.format(step=theirs.educator.step_names[step]),
    )
    lesson.answer(say.released.format(step=lesson.say.step_names[step], who=who))


def release_fewer(lesson: Lesson, person: Participant, *, all_the_same: bool = False) -> None:
    """Release the next rhythm with fewer tests: the participant is asked whether they want it.

    Of somebody who shares no values it is not told whether their tests speak for it.
    """
    say, record = lesson.asks, lesson.whole(person.id)
    who = lesson.who(person)
    to = fewer(rhythm_at(record, lesson.now))
    if to is None:
        lesson.answer(say.fewer_last.format(who=who))
        return
    if not person.needs_release:
        lesson.answer(say.fewer_not_needed.format(who=who))
        return
    speaks_for_it = _settled(record, lesson.now)
    if person.tell_educator and not speaks_for_it and not all_the_same:
        text = say.fewer_held.format(who=who, rhythm=_rhythms(lesson.educator.language)[to])
        _ask_anyway(lesson, person, FEWER_STAGE, text)
        return
    theirs = language(person.language)
    released: list[Body] = [
        Request(what=What.SETTINGS, setting=testing.RELEASED, setting_value=to.value)
    ]
    if person.state is not State.STOPPED:
        released.append(Wondered(topic=RHYTHM, about=to.value))
    change_and_tell(
        lesson,
        person,
        *released,
        note=theirs.wishes.fewer_released_note.format(rhythm=theirs.programme.rhythms[to]),
        buttons=theirs.programme.rhythm_buttons,
    )
    shown = _rhythms(lesson.educator.language)[to]
    lesson.answer(say.fewer_released.format(rhythm=shown, who=who))


#: What a yes to an open question releases all the same.
ANYWAY: Mapping[str, Callable[[Lesson, Participant], None]] = {
    STEP_STAGE: lambda lesson, person: release_step(lesson, person, all_the_same=True),
    FEWER_STAGE: lambda lesson, person: release_fewer(lesson, person, all_the_same=True),
}


def set_fast(lesson: Lesson, person: Participant, rest: str) -> None:
    """Fasting days, from a first to a last local date; or none any more."""
    say, who = lesson.asks, lesson.who(person)
    theirs = language(person.language).wishes
    if rest.casefold() in say.off_words:
        ended = replace(person, fast_from=None, fast_to=None)
        change_and_tell(lesson, ended, note=theirs.fast_ended_note)
        lesson.answer(say.fast_ended.format(who=who))
        return
    if not rest:
        lesson.answer(_how(say.fast_how, person, lesson))
        return
    span = _span(rest, local_date(lesson.now, person.zone))
    if span is None:
        lesson.answer(_how(say.fast_bounds, person, lesson))
        return
    first, last = span
    changed = replace(person, fast_from=first, fast_to=last)
    change_and_tell(lesson, changed, note=days_words(first, last, theirs.fast_set_note))
    lesson.answer(days_words(first, last, say.fast_set).replace("{who}", who))


def waiting(educator: Educator, record: Record, now: datetime) -> Iterator[Saying]:
    """What a participant's record asks of their educator, each thing once.

    The keys name what was asked, so that the outbox takes a second one for the first. Only what
    was asked in the last days counts: the rest is history.
    """
    words = language(educator.language)
    for noted in record.wondered:
        asks = _ASKS.get(noted.entry.topic or "")
        if asks is None or noted.at < shifted(now, -NEWS):
            continue
        told = asks(educator, record, noted, now, words)
        if told is None:
            continue
        text, buttons = told
        who = record.participant.id
        key = f"waits:{noted.entry.topic}:{who}:{noted.id}"
        yield unasked(educator, text, key, now, buttons=buttons)


_Told = tuple[str, tuple[str, ...]]


def _step_waits(
    educator: Educator, record: Record, noted: Noted[Wondered], _now: datetime, words: Language
) -> _Told:
    person = record.participant
    command = words.educator.wishes[Wish.RELEASE][-1]
    text = words.asks.step_waits.format(
        who=who_words(person, educator),
        step=words.educator.step_names[Step(noted.entry.about or Step.AS_USUAL)],
        command=command,
        id=person.id,
    )
    show = words.educator.wishes[Wish.SHOW][0]
    return text, (f"{command} {person.id}", f"{show} {person.id}")


def _fewer_waits(
    educator: Educator, record: Record, noted: Noted[Wondered], now: datetime, words: Language
) -> _Told | None:
    person = record.participant
    proposal = propose(record, pairs(record), now)
    if proposal is None or proposal.to != noted.entry.about:
        return None
    command = words.educator.wishes[Wish.FEWER][-1]
    text = words.asks.fewer_wait.format(
        who=who_words(person, educator),
        within=proposal.within,
        of=proposal.of,
        rhythm=words.programme.rhythms[proposal.to],
        command=command,
        id=person.id,
    )
    show = words.educator.wishes[Wish.SHOW][0]
    return text, (f"{command} {person.id}", f"{show} {person.id}")


def _fast_waits(
    educator: Educator, record: Record, _noted: Noted[Wondered], now: datetime, words: Language
) -> _Told:
    person = record.participant
    text = _how_words(words.asks.fast_waits, person, now, words)
    show = words.educator.wishes[Wish.SHOW][0]
    return text.replace("{who}", who_words(person, educator)), (f"{show} {person.id}",)


_ASKS: Mapping[
    str, Callable[[Educator, Record, Noted[Wondered], datetime, Language], _Told | None]
] = {
    STEP_WAITS: _step_waits,
    FEWER_WAITS: _fewer_waits,
    FAST_WAITS: _fast_waits,
}


def _ask_anyway(lesson: Lesson, person: Participant, stage: str, text: str) -> None:
    lesson.educator = talking(lesson.educator, stage, ("who", person.id))
    lesson.answer(text, lesson.say.yes_no)


def _settled(record: Record, now: datetime) -> bool:
    proposal = propose(record, pairs(record), now)
    return proposal is not None and proposal.because is Tendency.SETTLED


def _rhythms(code: str) -> Mapping[Rhythm, str]:
    return language(code).programme.rhythms


def _span(text: str, today: date) -> tuple[date, date] | None:
    """Two dates that may be days of fasting, or None."""
    try:
        first, last = (date(*map(int, found)) for found in _DATE.findall(text))
    except ValueError:  # not two dates, or none of the calendar
        return None
    return (first, last) if today <= first <= last <= first + LONGEST_FAST else None


def _how(template: str, person: Participant, lesson: Lesson) -> str:
    return _how_words(template, person, lesson.now, language(lesson.educator.language))


def _how_words(template: str, person: Participant, now: datetime, words: Language) -> str:
    """An example with dates to come."""
    first = local_date(now, person.zone) + DAY
    command = words.educator.wishes[Wish.FAST][-1]
    shown = days_words(first, first + 9 * DAY, template)
    return shown.replace("{command}", command).replace("{id}", person.id)
