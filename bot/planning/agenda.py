"""Everything that is due at an instant, and the next instant worth waking for."""

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from operator import attrgetter

from bot.caution.ladder import rechecks
from bot.localtime import DAY, shifted
from bot.messages import Kind
from bot.participants import Participant, State
from bot.planning.due import Due, Topic
from bot.planning.prompts import after_activities, after_meals, before_meals
from bot.planning.quiet import is_quiet
from bot.planning.weekly import days_of, digests, teaching, unknown_risks
from bot.programme.testing import Rhythm, testing_day
from bot.record import Noted, Record, Spoke

#: Days ahead that are looked at: a week, so that the next digest is always among them.
AHEAD = 9

#: How far back what was said and written is looked at: over a week, so that a digest put off
#: by quiet time is found; and how far back meals, activities and lows can still ask for a test.
LOOK_BACK, NEAR = 10 * DAY, 2 * DAY

#: The key of what was said.
_KEY: Callable[[Noted[Spoke]], str] = attrgetter("entry.key")
_AT: Callable[[Due], datetime] = attrgetter("at")

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


@dataclass(frozen=True, slots=True)
class Agenda:
    """What was not said yet, may be sent and is still worth saying at `now`.

    `tests` are asked for because of what the record holds; `series` come again and again
    (digests, lines that teach): of each what has come, and the next one to come.
    """

    record: Record
    now: datetime
    tests: tuple[Due, ...]
    series: tuple[Due, ...]

    @classmethod
    def of(cls, record: Record, now: datetime) -> "Agenda":
        """As things stand at an instant."""
        said = _said(record, now)
        tests = _open(_tests(record, now), record.participant, now, said)
        series = [item for one in _series(record, now) for item in _next_of(one, now, said)]
        return cls(record, now, tuple(tests), tuple(series))

    def after(self, record: Record) -> "Agenda":
        """At the same instant, once the bot has said some of it, as `record` holds.

        What was said may move what else its own source asks for, and nothing of the others. Of
        a series it takes out what has come, and the next one stays the next, unless the bot is
        to keep silent from here on.
        """
        if record.participant is not self.record.participant:
            return Agenda.of(record, self.now)
        said = {*map(_KEY, record.spoke_since(self.now))}
        moved = {item.topic for item in self.tests if item.key in said}
        tests = self._anew(record, moved) if moved else self.tests
        series = [item for item in self.series if item.key not in said]
        return Agenda(record, self.now, tests, tuple(series))

    def _anew(self, record: Record, moved: Collection[Topic]) -> tuple[Due, ...]:
        """The tests, those of the sources of these topics as `record` asks for them now."""
        now, near, said = self.now, _near(record, self.now), _said(record, self.now)
        tests: list[Due] = []
        for source, topics in _SOURCES.items():
            if topics.isdisjoint(moved):
                tests += (item for item in self.tests if item.topic in topics)
            else:
                tests += _open(source(record, near, now), record.participant, now, said)
        return tuple(tests)

    @property
    def due(self) -> tuple[Due, ...]:
        """What is to be said now, in the order in which it is said."""
        ready = [item for item in (*self.tests, *self.series) if item.at <= self.now]
        return tuple(sorted(ready, key=lambda item: (item.at, ORDER.index(item.topic))))

    @property
    def upcoming(self) -> tuple[Due, ...]:
        """What has fallen due and what falls due next, soonest first.

        What the bot answers and asks back changes nothing of it; the messages and prompts of
        the record do.
        """
        return tuple(sorted((*self.tests, *self.series), key=_AT))

    @property
    def next_wake(self) -> datetime | None:
        """When to wake: for what comes first, at once if it is due already."""
        first = min(map(_AT, (*self.tests, *self.series)), default=None)
        return None if first is None else max(first, self.now)


def next_wake(record: Record, now: datetime) -> datetime | None:
    """When to wake as things stand."""
    return Agenda.of(record, now).next_wake


def due_later(record: Record, now: datetime) -> Due | None:
    """The prompt that `later` put off, as it comes again; None if nothing waits to be put off.

    Where it was put off beyond its `until` it does not come.
    """
    tests = _open(_tests(record, now), record.participant, now, _said(record, now))
    return min((item for item in tests if item.nudge and item.at > now), key=_AT, default=None)


def _said(record: Record, now: datetime) -> Collection[str]:
    """The keys of what was said and could be said again."""
    return {*map(_KEY, record.spoke_since(shifted(now, -LOOK_BACK)))}


def _open(
    tests: Iterable[Due], person: Participant, now: datetime, said: Collection[str]
) -> Iterator[Due]:
    """Those that are still worth asking for and were not asked for yet.

    One due in quiet time is dropped; a recheck is sent.
    """
    for item in tests:
        if now > item.until or item.key in said:
            continue
        if item.topic is Topic.RECHECK or not is_quiet(person, item.at):
            yield item


def _next_of(series: Iterable[Due], now: datetime, said: Collection[str]) -> Iterator[Due]:
    """Of things that come one after the other: what has come, and the next one to come."""
    for item in series:
        to_come = item.at > now
        if (to_come or now <= item.until) and item.key not in said:
            yield item
            if to_come:
                return


def _tests(record: Record, now: datetime) -> Iterator[Due]:
    """The tests that are asked for."""
    state = record.participant.state
    if state is State.STOPPED:
        return
    near = _near(record, now)
    for source in _SOURCES:
        yield from source(record, near, now)
        if state is State.PAUSED:
            return  # rechecks come first, and nothing else comes


def _rechecks(_record: Record, near: Record, now: datetime) -> Iterator[Due]:
    for recheck in rechecks(near, now=now):
        yield Due(
            key=recheck.key,
            topic=Topic.RECHECK,
            at=recheck.due_at,
            until=recheck.until,
            cause=recheck.cause,
            nudge=recheck.kind == "second",
        )


def _after_meals(_record: Record, near: Record, _now: datetime) -> Iterator[Due]:
    return after_meals(near)


def _after_activities(_record: Record, near: Record, now: datetime) -> Iterator[Due]:
    return after_activities(near, now)


def _before_meals(record: Record, _near: Record, now: datetime) -> Iterator[Due]:
    person = record.participant
    rhythm = Rhythm(person.rhythm)
    return before_meals(
        record,
        now,
        AHEAD,
        lambda day: testing_day(rhythm, day, person) and not person.fasts_on(day),
    )


#: What asks for tests, in this order, and of what topics: from a record, what of it is near, and
#: the instant.
_SOURCES: Mapping[Callable[[Record, Record, datetime], Iterator[Due]], frozenset[Topic]] = {
    _rechecks: frozenset({Topic.RECHECK}),
    _after_meals: frozenset({Topic.AFTER_MEAL}),
    _after_activities: frozenset({Topic.AFTER_ACTIVITY}),
    _before_meals: frozenset({Topic.BEFORE_MEAL, Topic.GO_ON}),
}


def _series(record: Record, now: datetime) -> Iterator[Iterable[Due]]:
    """What comes again and again, each in the order of time."""
    person = record.participant
    if person.state is not State.ACTIVE:
        return
    # A day back: a digest put off by quiet time belongs to the evening before.
    yield digests(record, shifted(now, -DAY))
    if person.silent:
        return
    days = days_of(person, now)
    yield unknown_risks(person, days)
    yield teaching(days)


def _near(record: Record, now: datetime) -> Record:
    """What can still ask for a test: the last two days, or everything if a caution of these days
    was about something older (an edit put a low into an old message, say)."""
    near = record.since(shifted(now, -NEAR))
    if near is record:
        return near
    causes = {spoken.entry.cause for spoken in near.spoke if spoken.entry.kind is Kind.CAUTION}
    return near if causes <= {noted.id for noted in near.readings} else record
