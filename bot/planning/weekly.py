"""The weekly digest, the weekly question, and the lines that teach in the first days."""

from collections.abc import Iterator
from datetime import date, datetime, time, timedelta
from functools import lru_cache
from itertools import islice

from bot.glucose.week import digest_instants, week_of
from bot.localtime import DAY, at_local, local_date, shifted
from bot.participants import Participant
from bot.planning.due import Due, Topic
from bot.planning.quiet import after_quiet
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
    for end in islice(digest_instants(person, max(after, _chosen_at(record))), 2):
        at = after_quiet(person, end)
        midnight = at_local(local_date(at, person.zone) + DAY, MIDNIGHT, person.zone)
        week = local_date(end, person.zone)
        # `until` is the last instant that still counts, and midnight itself is too late.
        until = midnight - AN_INSTANT
        yield Due(key=f"digest:{week}", topic=Topic.DIGEST, at=at, until=until, week_end=end)
        week_began = week_of(person, end)[0]
        if record.wrote_between(week_began, at):
            key = f"weekly_question:{week}"
            yield Due(key=key, topic=Topic.WEEKLY_QUESTION, at=at, until=until)


#: The setting under which the choice of a day or a time is kept among the requests.
SETTING = "week"


def _chosen_at(record: Record) -> datetime:
    """Since when the week ends as it does now: an end before that is none."""
    chosen = (noted.at for noted in reversed(record.requests) if noted.entry.setting == SETTING)
    return next(chosen, record.participant.joined_at)


def teaching(person: Participant, now: datetime) -> tuple[Due, ...]:
    """One line a day on how to test, in the first days after joining: from today's on."""
    zone = person.zone
    return _lines(local_date(person.joined_at, zone), local_date(now, zone), zone)


# Whoever joined on the same day has the same lines coming.
@lru_cache(maxsize=256)
def _lines(joined: date, today: date, zone: str) -> tuple[Due, ...]:
    lines = []
    for number in range(max((today - joined).days - 1, 0), TEACHING_LINES):
        at = at_local(joined + (number + 1) * DAY, TEACHING_AT, zone)
        until = shifted(at, TEACHING_KEEPS)
        key = f"teaching:{number}"
        lines.append(Due(key=key, topic=Topic.TEACHING, at=at, until=until, number=number))
    return tuple(lines)


def unknown_risks(person: Participant, now: datetime) -> tuple[Due, ...]:
    """What is not known and so counts as yes: may glucose go too low, may there be ketones?

    The first of the two that is unknown is asked: the latest time that has come, and the next.
    """
    unknown = (
        Topic.LOWS_POSSIBLE
        if person.may_go_low is None
        else Topic.KETONES_POSSIBLE
        if person.ketone_risk is None
        else None
    )
    if unknown is None:
        return ()
    zone = person.zone
    return _questions(unknown, local_date(person.joined_at, zone), local_date(now, zone), zone)


@lru_cache(maxsize=256)
def _questions(unknown: Topic, joined: date, today: date, zone: str) -> tuple[Due, ...]:
    first = joined + UNKNOWN_FIRST
    rounds = max((today - first) // UNKNOWN_EVERY, 0)
    questions = []
    for number in (rounds, rounds + 1):
        day = first + number * UNKNOWN_EVERY
        at, key = at_local(day, UNKNOWN_AT, zone), f"{unknown.value}:{day}"
        questions.append(Due(key=key, topic=unknown, at=at, until=shifted(at, TEACHING_KEEPS)))
    return tuple(questions)
