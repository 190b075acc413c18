"""Everything that is due at an instant, and the next instant worth waking for."""

from collections.abc import Iterator
from datetime import datetime

from bot.caution.ladder import rechecks
from bot.localtime import DAY, shifted
from bot.participants import State
from bot.planning.due import Due, Topic
from bot.planning.prompts import after_activities, after_meals, before_meals
from bot.planning.quiet import is_quiet
from bot.planning.weekly import digests, teaching, unknown_risks
from bot.programme.testing import Rhythm, testing_day
from bot.record import Record

#: Days ahead that are looked at: a week, so that the next digest is always among them.
AHEAD = 9

#: How far back what was said and written is looked at: over a week, so that a digest put off
#: by quiet time is found; and how far back meals, activities and lows can still ask for a test.
LOOK_BACK, NEAR = 10 * DAY, 2 * DAY

#: What is said in the order of this list when several things fall due at one instant.
ORDER = (
    Topic.RECHECK,
    Topic.AFTER_MEAL,
    Topic.AFTER_ACTIVITY,
    Topic.BEFORE_MEAL,
    Topic.DIGEST,
    Topic.WEEKLY_QUESTION,
    Topic.GO_ON,
    Topic.TEACHING,
    Topic.LOWS_POSSIBLE,
    Topic.KETONES_POSSIBLE,
)


def due(record: Record, now: datetime) -> tuple[Due, ...]:
    """What is to be said at `now`: due, not said yet, still worth something, allowed to be sent."""
    ready = [item for item in _open(record, now) if item.at <= now <= item.until]
    return tuple(sorted(ready, key=lambda item: (item.at, ORDER.index(item.topic))))


def next_wake(record: Record, now: datetime) -> datetime | None:
    """When to wake as things stand: at the earliest due time, at once for what is due already."""
    return min(
        (max(item.at, now) for item in _open(record, now) if item.until >= now), default=None
    )


def _open(record: Record, now: datetime) -> Iterator[Due]:
    recent = record.since(shifted(now, -LOOK_BACK))
    said = {spoken.entry.key for spoken in recent.spoke}
    for item in _candidates(record, recent, now):
        if item.key not in said and not _kept_quiet(record, item):
            yield item


def _kept_quiet(record: Record, item: Due) -> bool:
    """A prompt or note due in quiet time is dropped; a digest was put off; a recheck is sent."""
    if item.topic in (Topic.RECHECK, Topic.DIGEST):
        return False
    return is_quiet(record.participant, item.at)


def _candidates(record: Record, recent: Record, now: datetime) -> Iterator[Due]:
    person = record.participant
    if person.state is State.STOPPED:
        return
    near = _near(record, now)
    for recheck in rechecks(near, now=now):
        yield Due(
            key=recheck.key,
            topic=Topic.RECHECK,
            at=recheck.due_at,
            until=recheck.until,
            cause=recheck.cause,
            nudge=recheck.kind == "second",
        )
    if person.state is State.PAUSED:
        return
    yield from after_meals(near)
    yield from after_activities(near)
    rhythm = Rhythm(person.rhythm)
    yield from before_meals(
        record,
        now,
        AHEAD,
        lambda day: testing_day(rhythm, day, person) and not person.fasts_on(day),
    )
    # A day back: a digest put off by quiet time belongs to the evening before.
    yield from digests(recent, shifted(now, -DAY))
    if person.silent:
        return
    yield from unknown_risks(person, now)
    if now < person.joined_at + 8 * DAY:
        yield from teaching(person)


def _near(record: Record, now: datetime) -> Record:
    """What can still ask for a test: the last two days, and from the oldest reading on that a
    caution of these days was about (one that an edit put into an old message)."""
    near = record.since(shifted(now, -NEAR))
    causes = {spoken.entry.cause for spoken in near.spoke}
    oldest = next((noted for noted in record.readings if noted.id in causes), None)
    if oldest is None or oldest.instant >= shifted(now, -NEAR):
        return near
    return record.since(oldest.instant)


def due_later(record: Record, now: datetime) -> datetime | None:
    """When the prompt that `later` put off comes again; None if nothing waits to be put off."""
    return min(
        (item.at for item in _open(record, now) if item.nudge and item.at > now), default=None
    )


def upcoming(record: Record, now: datetime) -> tuple[Due, ...]:
    """What falls due from `now` on, or has fallen due and is still worth saying, soonest first."""
    return tuple(
        sorted(
            (item for item in _open(record, now) if now <= item.until),
            key=lambda item: item.at,
        )
    )
