"""How often to test: a table of rhythms, and what moves a person from one to another.

    daily  ->  twice a week  ->  once a week  ->  only new foods      when values settle
    daily  <-  twice a week  <-  once a week  <-  only new foods      when values leave the goals

A move is proposed, never made here. Fewer tests are proposed to the educator first where lows or
ketones are possible. More tests need nobody's leave.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from enum import StrEnum

from bot.entries import What
from bot.glucose.pairs import Pair, Status
from bot.participants import WEEKDAYS, Participant
from bot.programme.steps import calm
from bot.record import Record

#: The first two weeks are for the steps: every day (design of the programme).
PROGRAMME = timedelta(days=14)

#: Fewer tests: five of the last six complete pairs within both goals (project rule).
SETTLED_OF, SETTLED_NEEDS = 6, 5

#: More tests: two of the last three complete pairs outside a goal (project rule).
LEFT_OF, LEFT_NEEDS = 3, 2

#: The settings under which the rhythm, and an educator's release of fewer tests, are kept among
#: the requests.
SETTING, RELEASED = "testing", "fewer_tests_released"


class Rhythm(StrEnum):
    """How often pairs are tested."""

    DAILY = "daily"
    TWICE_A_WEEK = "twice_a_week"
    WEEKLY = "weekly"
    NEW_FOODS = "new_foods"


class Tendency(StrEnum):
    """What the last pairs show."""

    SETTLED = "settled"
    LEFT_GOALS = "left_goals"


MOVES: Mapping[tuple[Rhythm, Tendency], Rhythm] = {
    (Rhythm.DAILY, Tendency.SETTLED): Rhythm.TWICE_A_WEEK,
    (Rhythm.TWICE_A_WEEK, Tendency.SETTLED): Rhythm.WEEKLY,
    (Rhythm.WEEKLY, Tendency.SETTLED): Rhythm.NEW_FOODS,
    (Rhythm.NEW_FOODS, Tendency.LEFT_GOALS): Rhythm.WEEKLY,
    (Rhythm.WEEKLY, Tendency.LEFT_GOALS): Rhythm.TWICE_A_WEEK,
    (Rhythm.TWICE_A_WEEK, Tendency.LEFT_GOALS): Rhythm.DAILY,
}

#: Days of testing, counted from the day after the week ends (1) to the day it ends (7); spread,
#: and early enough for the digest. The waking test is on a day of its own.
TESTING_DAYS: Mapping[Rhythm, frozenset[int]] = {
    Rhythm.DAILY: frozenset(range(1, 8)),
    Rhythm.TWICE_A_WEEK: frozenset({2, 5}),
    Rhythm.WEEKLY: frozenset({5}),
    Rhythm.NEW_FOODS: frozenset(),
}
WAKING_DAY = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class Proposal:
    """A move to another rhythm and what speaks for it: `within` of the `of` last pairs."""

    to: Rhythm
    because: Tendency
    within: int
    of: int
    needs_educator: bool


def rhythm_at(record: Record, instant: datetime) -> Rhythm:
    """The rhythm in force: daily, unless a `testing` setting told another before the instant."""
    return _rhythm(record, instant)[0]


def testing_day(rhythm: Rhythm, day: date, participant: Participant) -> bool:
    """Whether a before-meal prompt belongs to this local day."""
    return _day_of_week(day, participant) in TESTING_DAYS[rhythm]


def waking_day(day: date, participant: Participant) -> bool:
    """Whether the week's one test on waking belongs to this local day."""
    return _day_of_week(day, participant) == WAKING_DAY


def strips_a_week(rhythm: Rhythm) -> int:
    """What the plan uses: two a testing day and one on waking."""
    return 2 * len(TESTING_DAYS[rhythm]) + 1


def fewer(rhythm: Rhythm) -> Rhythm | None:
    """The next rhythm with fewer tests; None after the last."""
    return MOVES.get((rhythm, Tendency.SETTLED))


def propose(record: Record, every: Sequence[Pair], now: datetime) -> Proposal | None:
    """The move that the last complete pairs speak for, if any.

    Only pairs since the rhythm began count. Fewer tests are never proposed in the first two weeks,
    nor within a week of a low or a reading from 300, nor where goals are not judged.
    """
    rhythm, told_at = _rhythm(record, now)
    since, until = told_at.timestamp(), now.timestamp()
    judged = [
        bool(pair.before_in_goal and pair.after_in_goal)
        for pair in every
        if pair.status is Status.COMPLETE
        and None not in (pair.before_in_goal, pair.after_in_goal)
        and since <= pair.meal.seconds <= until
    ]
    for tendency, last in (
        (Tendency.LEFT_GOALS, judged[-LEFT_OF:]),
        (Tendency.SETTLED, judged[-SETTLED_OF:]),
    ):
        to = MOVES.get((rhythm, tendency))
        if to is not None and _shows(tendency, last) and _allowed(tendency, record, now):
            return Proposal(
                to=to,
                because=tendency,
                within=sum(last),
                of=len(last),
                needs_educator=tendency is Tendency.SETTLED
                and record.participant.needs_release
                and not _released(record, to, told_at),
            )
    return None


def _rhythm(record: Record, instant: datetime) -> tuple[Rhythm, datetime]:
    told = [
        noted
        for noted in record.requests
        if noted.entry.what is What.SETTINGS
        and noted.entry.setting == SETTING
        and noted.entry.setting_value in set(Rhythm)
        and noted.at.timestamp() <= instant.timestamp()
    ]
    if not told:  # set before the events that are looked at, or never
        return Rhythm(record.participant.rhythm), record.participant.joined_at
    return Rhythm(told[-1].entry.setting_value or Rhythm.DAILY), told[-1].at


def _released(record: Record, to: Rhythm, since: datetime) -> bool:
    """Whether the educator has released this rhythm since the one in force began."""
    return any(
        noted.entry.what is What.SETTINGS
        and noted.entry.setting == RELEASED
        and noted.entry.setting_value == to.value
        and noted.at.timestamp() >= since.timestamp()
        for noted in record.requests
    )


def _shows(tendency: Tendency, last: Sequence[bool]) -> bool:
    if tendency is Tendency.SETTLED:
        return len(last) == SETTLED_OF and sum(last) >= SETTLED_NEEDS
    return len(last) == LEFT_OF and last.count(False) >= LEFT_NEEDS


def _allowed(tendency: Tendency, record: Record, now: datetime) -> bool:
    if tendency is Tendency.LEFT_GOALS:
        return True
    since_joining = now.timestamp() - record.participant.joined_at.timestamp()
    return since_joining >= PROGRAMME.total_seconds() and calm(record, now)


def _day_of_week(day: date, participant: Participant) -> int:
    """1 on the day after the week ends, 7 on the day it ends."""
    return (day.weekday() - WEEKDAYS.index(participant.week_ends) - 1) % 7 + 1
