"""The weekly digest, the weekly question, and the lines that teach in the first days."""

from collections.abc import Iterator
from datetime import date, datetime, time, timedelta
from functools import lru_cache
from itertools import islice
from typing import NamedTuple

from bot.glucose.week import week_ends_on, week_of
from bot.localtime import DAY, at_local, local_date, shifted
from bot.participants import Participant
from bot.planning.due import Due, Topic
from bot.planning.quiet import Nights, after_quiet, is_quiet, nights_of
from bot.record import Record

#: The first days with a line that teaches, and when it comes on the participant's clock.
TEACHING_LINES = 6
TEACHING_AT = time(10, 0)
#: What nobody knew at joining is asked again within the first week, and then once a month.
UNKNOWN_FIRST, UNKNOWN_EVERY, UNKNOWN_AT = 6 * DAY, 30 * DAY, time(11, 0)
#: A tip that could not be sent by then comes no more: out of the blue it would only puzzle.
TEACHING_KEEPS = timedelta(hours=1)
MIDNIGHT, AN_INSTANT = time(0), timedelta(microseconds=1)


def digests(record: Record, after: datetime) -> Iterator[Due]:
    """The next two weeks' digests after an instant, and the weekly question with each.

    In quiet time they wait for its end; by the next midnight they are dropped. The question is
    for those only who wrote in the week.
    """
    person = record.participant
    after = max(after, _chosen_at(record))
    since = after.timestamp()
    today = local_date(after, person.zone)
    ends = _ends(nights_of(person), person.week_ends, person.digest_at, today)
    for end, digest, question in islice((one for one in ends if one[0].timestamp() > since), 2):
        yield digest
        week_began = week_of(person, end)[0]
        if record.wrote_between(week_began, digest.at):
            yield question


# Those whose week ends at the same time, and who sleep alike, have the same ones coming.
@lru_cache(maxsize=256)
def _ends(
    nights: Nights, week_ends: str, clock: time, today: date
) -> tuple[tuple[datetime, Due, Due], ...]:
    """When the week ends that this day is of, its digest and its question; and the next two."""
    ends, first = [], week_ends_on(week_ends, today)
    for number in range(3):
        end = at_local(first + number * 7 * DAY, clock, nights.zone)
        at = after_quiet(nights, end)
        midnight = at_local(local_date(at, nights.zone) + DAY, MIDNIGHT, nights.zone)
        week = local_date(end, nights.zone)
        # `until` is the last instant that still counts, and midnight itself is too late.
        until = midnight - AN_INSTANT
        digest = Due(key=f"digest:{week}", topic=Topic.DIGEST, at=at, until=until, week_end=end)
        key = f"weekly_question:{week}"
        question = Due(key=key, topic=Topic.WEEKLY_QUESTION, at=at, until=until)
        ends.append((end, digest, question))
    return tuple(ends)


#: The setting under which the choice of a day or a time is kept among the requests.
SETTING = "week"


def _chosen_at(record: Record) -> datetime:
    """Since when the week ends as it does now: an end before that is none."""
    chosen = (noted.at for noted in reversed(record.requests) if noted.entry.setting == SETTING)
    return next(chosen, record.participant.joined_at)


class Days(NamedTuple):
    """What the lines of the first weeks follow from: the same for all who joined on one day."""

    nights: Nights
    joined: date
    today: date


def days_of(person: Participant, now: datetime) -> Days:
    """The person's, on their own clock."""
    zone = person.zone
    return Days(nights_of(person), local_date(person.joined_at, zone), local_date(now, zone))


def teaching(days: Days) -> tuple[Due, ...]:
    """One line a day on how to test, in the first days after joining: from today's on.

    In quiet time there is none.
    """
    return _lines(days) if days.today <= days.joined + TEACHING_LINES * DAY else ()


@lru_cache(maxsize=256)
def _lines(days: Days) -> tuple[Due, ...]:
    lines = []
    for number in range(max((days.today - days.joined).days - 1, 0), TEACHING_LINES):
        at = at_local(days.joined + (number + 1) * DAY, TEACHING_AT, days.nights.zone)
        until = shifted(at, TEACHING_KEEPS)
        key = f"teaching:{number}"
        if not is_quiet(days.nights, at):
            lines.append(Due(key=key, topic=Topic.TEACHING, at=at, until=until, number=number))
    return tuple(lines)


def unknown_risks(person: Participant, days: Days) -> tuple[Due, ...]:
    """What is not known and so counts as yes: may glucose go too low, may there be ketones?

    The first of the two that is unknown is asked: the latest time that has come, and the next;
    in quiet time it is not.
    """
    if person.may_go_low is None:
        return _questions(Topic.LOWS_POSSIBLE, days)
    if person.ketone_risk is None:
        return _questions(Topic.KETONES_POSSIBLE, days)
    return ()


@lru_cache(maxsize=256)
def _questions(unknown: Topic, days: Days) -> tuple[Due, ...]:
    first = days.joined + UNKNOWN_FIRST
    rounds = max((days.today - first) // UNKNOWN_EVERY, 0)
    questions = []
    for number in (rounds, rounds + 1):
        day = first + number * UNKNOWN_EVERY
        at, key = at_local(day, UNKNOWN_AT, days.nights.zone), f"{unknown.value}:{day}"
        if not is_quiet(days.nights, at):
            questions.append(Due(key=key, topic=unknown, at=at, until=shifted(at, TEACHING_KEEPS)))
    return tuple(questions)
