"""Quiet time on the participant's own clock: its start is inside, its end outside."""

from datetime import datetime

from bot.localtime import DAY, at_local, in_zone
from bot.participants import Participant


def is_quiet(person: Participant, instant: datetime) -> bool:
    """Tell whether nothing but a safety message may be sent at this instant."""
    if person.nights_until is not None and instant < person.nights_until:
        return False
    clock = in_zone(instant, person.zone).time()
    start, end = person.quiet_from, person.quiet_to
    if start <= end:
        return start <= clock < end
    return clock >= start or clock < end


def after_quiet(person: Participant, instant: datetime) -> datetime:
    """The instant itself, or the end of the quiet time in which it lies."""
    if not is_quiet(person, instant):
        return instant
    day = in_zone(instant, person.zone).date()
    end = at_local(day, person.quiet_to, person.zone)
    return end if end > instant else at_local(day + DAY, person.quiet_to, person.zone)
