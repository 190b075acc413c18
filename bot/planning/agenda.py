"""Everything that is due at an instant, and the next instant worth waking for."""

from collections.abc import Iterator, Sequence
from datetime import datetime

from bot.caution.ladder import rechecks
from bot.localtime import DAY, shifted
from bot.participants import Participant, State
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


def upcoming(record: Record, now: datetime) -> tuple[Due, ...]:
    """What has fallen due and is still worth saying, and what falls due next, soonest first.

    Of what comes again and again (digests, lines that teach) the next one only. What the bot
    answers and asks back changes nothing of it; the messages and prompts of the record do.
    """
    ahead = (item for item in _open(record, now) if now <= item.until)
    return tuple(sorted(ahead, key=lambda item: item.at))


def wake_for(ahead: Sequence[Due], now: datetime) -> datetime | None:
    """When to wake for what is `upcoming`: for the first, at once if it is due already."""
    return max(ahead[0].at, now) if ahead else None


def next_wake(record: Record, now: datetime) -> datetime | None:
    """When to wake as things stand."""
    return wake_for(upcoming(record, now), now)


def due_later(record: Record, now: datetime) -> datetime | None:
    """When the prompt that `later` put off comes again; None if nothing waits to be put off."""
    return min(
        (item.at for item in _open(record, now) if item.nudge and item.at > now), default=None
    )


def _open(record: Record, now: datetime) -> Iterator[Due]:
    """What was not said yet and may be sent."""
    said = {spoken.entry.key for spoken in record.spoke_since(shifted(now, -LOOK_BACK))}

    def is_open(item: Due) -> bool:
        return item.key not in said and not _kept_quiet(record.participant, item)

    yield from filter(is_open, _tests(record, now))
    for series in _series(record, now):
        worth = (item for item in series if now <= item.until)
        yield from _next_of(filter(is_open, worth), now)


def _kept_quiet(person: Participant, item: Due) -> bool:
    """A prompt or note due in quiet time is dropped; a digest was put off; a recheck is sent."""
    if item.topic in (Topic.RECHECK, Topic.DIGEST):
        return False
    return is_quiet(person, item.at)


def _next_of(series: Iterator[Due], now: datetime) -> Iterator[Due]:
    """Of things that come one after the other: what has come, and the next one to come."""
    for item in series:
        yield item
        if item.at > now:
            return


def _tests(record: Record, now: datetime) -> Iterator[Due]:
    """The tests that are asked for."""
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
    yield from after_activities(near, now)
    rhythm = Rhythm(person.rhythm)
    yield from before_meals(
        record,
        now,
        AHEAD,
        lambda day: testing_day(rhythm, day, person) and not person.fasts_on(day),
    )


def _series(record: Record, now: datetime) -> Iterator[Iterator[Due]]:
    """What comes again and again, each in the order of time."""
    person = record.participant
    if person.state is not State.ACTIVE:
        return
    # A day back: a digest put off by quiet time belongs to the evening before.
    yield digests(record, shifted(now, -DAY))
    if person.silent:
        return
    yield unknown_risks(person, now)
    if now < person.joined_at + 8 * DAY:
        yield teaching(person, now)


def _near(record: Record, now: datetime) -> Record:
    """What can still ask for a test: the last two days, or everything if a caution of these days
    was about something older (an edit put a low into an old message, say)."""
    near = record.since(shifted(now, -NEAR))
    causes = {spoken.entry.cause for spoken in near.spoke if spoken.entry.cause is not None}
    return near if causes <= {noted.id for noted in near.readings} else record
