"""The visit two weeks after joining: when the educator is reminded of it, once.

Pure, as the alerts are: what is due is worked out from what the educator's row holds.
"""

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime

from bot.educator.educator import Educator, Visit
from bot.educator.hours import opening
from bot.localtime import shifted
from bot.participants import Participant
from bot.programme.testing import PROGRAMME


def expecting(educator: Educator, person: Participant, *, since: datetime) -> Educator:
    """The educator with this participant's visit noted, once.

    One that fell due before `since` is history (a record that was imported, an educator who came
    later) and brings no reminder.
    """
    if any(visit.participant == person.id for visit in educator.visits):
        return educator
    due_at = shifted(person.joined_at, PROGRAMME)
    visit = Visit(participant=person.id, due_at=due_at, told_at=due_at if due_at < since else None)
    return replace(educator, visits=(*educator.visits, visit))


def due_visits(educator: Educator, now: datetime) -> tuple[Visit, ...]:
    """The reminders that are to be given at `now`, in working hours and not while away."""
    if educator.away or opening(educator, now) != now:
        return ()
    return tuple(
        visit for visit in educator.visits if visit.told_at is None and visit.due_at <= now
    )


def next_visit(educator: Educator, now: datetime) -> datetime | None:
    """The next instant, `now` or later, at which a reminder is to be given."""
    if educator.away:
        return None
    waiting = [visit.due_at for visit in educator.visits if visit.told_at is None]
    return opening(educator, max(min(waiting), now)) if waiting else None


def reminded(educator: Educator, visits: Iterable[Visit], now: datetime) -> Educator:
    """Note that these reminders were given."""
    given = {visit.participant for visit in visits}
    changed = tuple(
        replace(visit, told_at=now) if visit.participant in given else visit
        for visit in educator.visits
    )
    return replace(educator, visits=changed)
