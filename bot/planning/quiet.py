"""Quiet time on the participant's own clock: its start is inside, its end outside."""

from datetime import datetime, time
from typing import NamedTuple, Protocol

from bot.localtime import DAY, at_local, in_zone


class Sleeper(Protocol):
    """Somebody with a quiet time: a participant, or as much of one as it takes."""

    @property
    def zone(self) -> str:
        """IANA name of the zone of their clock."""

    @property
    def quiet_from(self) -> time:
        """When quiet time begins on it."""

    @property
    def quiet_to(self) -> time:
        """When it ends."""

    @property
    def nights_until(self) -> datetime | None:
        """Until when they want to be woken at night all the same."""


class Nights(NamedTuple):
    """What of a person says when they sleep: the same for many, who can share what follows."""

    zone: str
    quiet_from: time
    quiet_to: time
    nights_until: datetime | None


def nights_of(person: Sleeper) -> Nights:
    """The person's."""
    return Nights(person.zone, person.quiet_from, person.quiet_to, person.nights_until)


def is_quiet(person: Sleeper, instant: datetime) -> bool:
    """Tell whether nothing but a safety message may be sent at this instant."""
    if person.nights_until is not None and instant < person.nights_until:
        return False
    clock = in_zone(instant, person.zone).time()
    start, end = person.quiet_from, person.quiet_to
    if start <= end:
        return start <= clock < end
    return clock >= start or clock < end


def after_quiet(person: Sleeper, instant: datetime) -> datetime:
    """The instant itself, or the end of the quiet time in which it lies."""
    if not is_quiet(person, instant):
        return instant
    day = in_zone(instant, person.zone).date()
    end = at_local(day, person.quiet_to, person.zone)
    return end if end > instant else at_local(day + DAY, person.quiet_to, person.zone)
