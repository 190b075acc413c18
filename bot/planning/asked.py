"""What the bot is waiting for, which gives a bare number its meaning."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.entries import Activity, Asked, Meal, Moment, Reading
from bot.localtime import shifted
from bot.messages import Kind
from bot.planning.due import activity_key, meal_key
from bot.record import Noted, Record, Spoke
from bot.record.fold import when

#: How long a question stays open (contract of the replay, "What falls due").
OPEN = timedelta(minutes=60)
#: An after-meal value is waited for from here to there, counted from the first bite.
AFTER_FROM, AFTER_TO = timedelta(minutes=90), timedelta(minutes=180)

#: Nothing that was asked earlier is waited for.
LOOK_BACK = timedelta(hours=24)

#: Moments that say that a reading is not the one after a meal.
NOT_AFTER = frozenset({Moment.BEFORE_MEAL, Moment.FASTING, Moment.BEDTIME, Moment.RECHECK})

#: Levels of caution that ask for a new test, and so wait for one.
ASKS_FOR_TEST = frozenset({"emergency", "very_low", "low", "very_high", "high", "symptoms"})

#: A question of the conversation's own that asks what is on the plate.
PLATE = "plate"


@dataclass(frozen=True, slots=True, order=True)
class _Opening:
    """A question and when it was opened; put in words beats merely waited for."""

    at: datetime
    spoken: bool
    asked: Asked


def asked(record: Record, now: datetime, quoted: str | None = None) -> Asked | None:
    """Give what the bot asked last and still waits for at `now`.

    `quoted` is the key of the bot's message that the participant replies to: it decides,
    however old it is.
    """
    if quoted is not None:
        for spoken in reversed(record.spoke):
            if spoken.entry.key == quoted:
                answer = _asked_by(spoken.entry)
                if answer is not None:
                    return answer
    record = record.since(shifted(now, -LOOK_BACK))
    if _waits_for_recheck(record, now):
        return Asked.RECHECK
    openings = [
        *_prompted_before(record, now),
        *_plate(record, now),
        *_after_meal(record, now),
        *_after_activity(record, now),
    ]
    return max(openings).asked if openings else None


def answered_prompts(record: Record, now: datetime) -> tuple[str, ...]:
    """The keys of the prompts said in the last three hours that ask for what is known or skipped.

    A recheck is not among them: what follows a low is the caution's to decide.
    """
    recent = record.spoke_since(shifted(now, -AFTER_TO))
    prompts = (spoken for spoken in recent if spoken.entry.kind is Kind.PROMPT)
    return tuple(spoken.entry.key for spoken in prompts if _is_answered(record, spoken))


def _is_answered(record: Record, prompt: Noted[Spoke]) -> bool:
    about, key = prompt.entry.about, prompt.entry.key.removesuffix(":nudge")
    if about not in (Asked.BEFORE_MEAL, Asked.AFTER_MEAL, Asked.AFTER_ACTIVITY):
        return False
    if any(skip.at >= prompt.at for skip in record.skips):
        return True
    if about == Asked.BEFORE_MEAL:
        return _read_since(record, prompt.at)
    if about == Asked.AFTER_MEAL:
        return any(
            counts_after(reading, meal, AFTER_FROM, AFTER_TO)
            for meal in record.meals
            if meal_key(meal.entry) == key
            for reading in record.readings
        )
    return any(
        answered(record, activity)
        for activity in record.activities
        if activity_key(activity.entry) == key
    )


def _asked_by(spoken: Spoke) -> Asked | None:
    if spoken.kind is Kind.PROMPT and spoken.about is not None:
        return Asked(spoken.about)
    if spoken.kind is Kind.CAUTION and spoken.about in ASKS_FOR_TEST:
        return Asked.RECHECK
    return None


def _open(noted: Noted[Spoke], now: datetime) -> bool:
    return noted.at <= now < shifted(noted.at, OPEN)


def _read_since(record: Record, instant: datetime, but: int | None = None) -> bool:
    """Whether a reading was told after this instant (`but`: not counting this one)."""
    return any(noted.at >= instant and noted.id != but for noted in record.readings)


def _waits_for_recheck(record: Record, now: datetime) -> bool:
    for spoken in reversed(record.spoke):
        if not _open(spoken, now):
            if spoken.at <= now:
                return False
            continue
        if _asked_by(spoken.entry) is Asked.RECHECK:
            # A value put right was told by a message from before the question: no answer to it.
            known = {wrote.message for wrote in record.wrote if wrote.id < spoken.id}
            return not any(
                noted.id > spoken.id and noted.message not in known for noted in record.readings
            )
    return False


def _prompted_before(record: Record, now: datetime) -> Iterator[_Opening]:
    for spoken in reversed(record.spoke):
        if spoken.entry.kind is Kind.PROMPT and spoken.entry.about == Asked.BEFORE_MEAL:
            if _open(spoken, now) and not _read_since(record, spoken.at):
                yield _Opening(spoken.at, True, Asked.BEFORE_MEAL)
            return


def _plate(record: Record, now: datetime) -> Iterator[_Opening]:
    for wondered in reversed(record.wondered):
        if wondered.entry.topic == PLATE:
            told = any(meal.at >= wondered.at and meal.entry.text for meal in record.meals)
            if wondered.at <= now < shifted(wondered.at, OPEN) and not told:
                yield _Opening(wondered.at, True, Asked.MEAL)
            return


def counts_after(
    reading: Noted[Reading], meal: Noted[Meal], earliest: timedelta, latest: timedelta
) -> bool:
    """Whether a reading may be the one after this meal, so long from its start."""
    taken, start = reading.entry.taken_at, meal.entry.started_at
    if taken is None or start is None or reading.entry.moment in NOT_AFTER:
        return False
    return earliest <= taken - start <= latest


def _after_meal(record: Record, now: datetime) -> Iterator[_Opening]:
    meal = newest_meal(record)
    if meal is None or meal.entry.started_at is None:
        return
    opened = shifted(meal.entry.started_at, AFTER_FROM)
    if not opened <= now <= shifted(meal.entry.started_at, AFTER_TO):
        return
    if any(counts_after(reading, meal, AFTER_FROM, AFTER_TO) for reading in record.readings):
        return
    prompt = _last_said(record, meal_key(meal.entry))
    yield _Opening(prompt or opened, prompt is not None, Asked.AFTER_MEAL)


def newest_meal(record: Record) -> Noted[Meal] | None:
    """The meal that began last (one whose start is unknown is not among them)."""
    begun = [meal for meal in record.meals if meal.entry.started_at is not None]
    return begun[-1] if begun else None


def answered(record: Record, activity: Noted[Activity]) -> bool:
    """Whether a reading came with or after the end of an activity."""
    return any(
        when(reading) >= activity.entry.ended_at
        or (reading.message == activity.message and reading.entry.moment is Moment.AFTER_ACTIVITY)
        for reading in record.readings
    )


def _after_activity(record: Record, now: datetime) -> Iterator[_Opening]:
    if not record.activities:
        return
    activity = record.activities[-1]
    ended = activity.entry.ended_at
    if ended <= now < shifted(ended, OPEN) and not answered(record, activity):
        prompt = _last_said(record, activity_key(activity.entry))
        yield _Opening(prompt or ended, prompt is not None, Asked.AFTER_ACTIVITY)


def _last_said(record: Record, key: str) -> datetime | None:
    """When a prompt was said last: itself or its nudge."""
    keys = (key, f"{key}:nudge")
    return next((spoken.at for spoken in reversed(record.spoke) if spoken.entry.key in keys), None)
