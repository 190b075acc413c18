"""Prompts for readings: after meals, after activity, before the main meal.

Each function gives what would fall due, said or not; `agenda` takes out what was said, what
falls into quiet time and what is not the bot's to send now.
"""

from collections.abc import Callable, Iterator
from datetime import date, datetime, timedelta

from bot.entries import Asked, FoodKind, Meal, What
from bot.localtime import DAY, at_local, local_date, shifted
from bot.messages import Kind
from bot.planning.asked import AFTER_FROM, answered, counts_after
from bot.planning.due import Due, Topic, activity_key, meal_key
from bot.planning.quiet import is_quiet
from bot.record import Noted, Record, Spoke

TWO_HOURS = timedelta(minutes=120)
NUDGE = timedelta(minutes=15)
AFTER_UNTIL = timedelta(minutes=150)
ACTIVITY_WAIT = timedelta(minutes=10)
ACTIVITY_UNTIL = timedelta(minutes=60)
BEFORE_LEAD = timedelta(minutes=15)
HOUR = timedelta(minutes=60)
#: Testing days without a word after which the bot asks once and then keeps silent.
SILENT_DAYS = 3

TestingDay = Callable[[date], bool]


def may_raise(meal: Noted[Meal]) -> bool:
    """Whether this can raise glucose: all but drinks known to be free of sugar."""
    foods = meal.entry.foods
    return not foods or any(food.kind is not FoodKind.FREE_DRINK for food in foods)


def after_meals(record: Record) -> Iterator[Due]:
    """Two hours after the start of the newest meal, and one nudge."""
    for meal in reversed(record.meals):
        start = meal.entry.started_at
        if start is not None and may_raise(meal):
            break
    else:
        return
    if any(counts_after(one, meal, AFTER_FROM, AFTER_UNTIL) for one in record.readings):
        return
    until = shifted(start, AFTER_UNTIL)
    prompt = Due(
        key=meal_key(meal.entry),
        topic=Topic.AFTER_MEAL,
        at=max(shifted(start, TWO_HOURS), meal.at),
        until=until,
        cause=meal.id,
    )
    yield prompt
    yield from _nudge(record, prompt)


def _nudge(record: Record, prompt: Due) -> Iterator[Due]:
    """The second asking: a quarter of an hour after the first, or when `later` asked for it.

    Keyed by the prompt, so that several `later` move it and never multiply it. `skip` is an
    answer too.
    """
    said = spoken_at(record, prompt)
    if said is None or any(skip.at >= said.at for skip in record.skips):
        return
    at = shifted(said.at, NUDGE)
    for request in record.requests:
        if request.entry.what is What.LATER and request.at >= said.at:
            minutes = request.entry.minutes
            at = shifted(request.at, NUDGE if minutes is None else timedelta(minutes=minutes))
    yield Due(
        key=f"{prompt.key}:nudge",
        topic=prompt.topic,
        at=at,
        until=prompt.until,
        cause=prompt.cause,
        nudge=True,
    )


def spoken_at(record: Record, prompt: Due) -> Noted[Spoke] | None:
    """The saying of this prompt, if it was said: at its due time or later."""
    for spoken in reversed(record.spoke):
        if spoken.at < prompt.at:
            return None
        if spoken.entry.key == prompt.key:
            return spoken
    return None


def after_activities(record: Record, now: datetime) -> Iterator[Due]:
    """Ten minutes after an activity's end, if no reading came with it; one a local day."""
    for activity in record.activities[-3:]:
        ended = activity.entry.ended_at
        until = shifted(ended, ACTIVITY_UNTIL)
        if until < now or answered(record, activity):
            continue
        at = max(shifted(ended, ACTIVITY_WAIT), activity.at)
        key = activity_key(activity.entry)
        if _prompted_on(record, local_date(at, record.participant.zone)) not in (None, key):
            continue
        yield Due(key=key, topic=Topic.AFTER_ACTIVITY, at=at, until=until, cause=activity.id)


def _prompted_on(record: Record, day: date) -> str | None:
    """The key of the prompt after activity that was said on a local day, if one was."""
    zone = record.participant.zone
    prompts = (
        spoken
        for spoken in reversed(record.spoke)
        if spoken.entry.kind is Kind.PROMPT and spoken.entry.about == Asked.AFTER_ACTIVITY
    )
    return next((one.entry.key for one in prompts if local_date(one.at, zone) == day), None)


def last_word(record: Record) -> datetime:
    """When the participant last wrote, or joined."""
    return record.wrote[-1].at if record.wrote else record.participant.joined_at


def _prompts_without_a_word(record: Record) -> list[str]:
    """The keys of the before-meal prompts since the participant last wrote."""
    word, keys = last_word(record), []
    for spoken in reversed(record.spoke):
        if spoken.at <= word:
            break
        entry = spoken.entry
        if entry.about == Asked.BEFORE_MEAL and not entry.key.endswith(":nudge"):
            keys.append(entry.key)
    return keys


def before_meals(
    record: Record, now: datetime, days: int, testing_day: TestingDay
) -> Iterator[Due]:
    """A quarter of an hour before the main meal on testing days: today's, and the next to come.

    After three testing days without a word the next one brings the question whether to go on,
    and then nothing until the participant writes.
    """
    person = record.participant
    if person.main_meal is None or person.silent:
        return
    first = local_date(now, person.zone)
    silent = _prompts_without_a_word(record)
    for offset in range(days):
        day = first + offset * DAY
        if not testing_day(day):
            continue
        meal = at_local(day, person.main_meal, person.zone)
        at = shifted(meal, -BEFORE_LEAD)
        if at <= person.joined_at or is_quiet(person, at):
            continue
        if record.wrote_between(shifted(at, -HOUR), at):
            continue
        key = f"before_meal:{day}"
        if len(silent) >= SILENT_DAYS and key not in silent:
            yield Due(key=f"go_on:{day}", topic=Topic.GO_ON, at=at, until=meal)
            return
        # `until` is the last instant that still counts, and the meal itself is too late.
        until = shifted(meal, -timedelta(microseconds=1))
        prompt = Due(key=key, topic=Topic.BEFORE_MEAL, at=at, until=until)
        yield prompt
        yield from _put_off(record, prompt)
        if at > now:
            return


def _put_off(record: Record, prompt: Due) -> Iterator[Due]:
    """A before-meal prompt comes once more only if `later` asked for it."""
    said = spoken_at(record, prompt)
    if said is None:
        return
    if any(
        request.entry.what is What.LATER and said.at <= request.at <= prompt.until
        for request in record.requests
    ):
        yield from _nudge(record, prompt)
