"""Working hours across days and changes of the clock."""

from datetime import datetime

from bot.educator.educator import Educator, Hours
from bot.localtime import DAY, at_local, local_date

#: A week and a day: every working day comes up at least once.
LOOK_AHEAD = 8


def at_work(educator: Educator, instant: datetime) -> bool:
    """Tell whether the educator may be written to unasked at this instant."""
    return opening(educator, instant) == instant


def opening(educator: Educator, instant: datetime) -> datetime:
    """The instant itself within working hours, else when they next begin."""
    zone, hours = educator.zone, educator.hours
    today = local_date(instant, zone)
    for later in range(LOOK_AHEAD):
        day = today + later * DAY
        if day.weekday() not in hours.days:
            continue
        starts, ends = at_local(day, hours.starts, zone), at_local(day, hours.ends, zone)
        if instant.timestamp() < starts.timestamp():
            return starts
        if instant.timestamp() < ends.timestamp():
            return instant
    raise ValueError("no working day in a week")  # Hours has at least one


def spelled(hours: Hours) -> tuple[tuple[int, ...], str, str]:
    """Days in order, and the two clock times as people write them."""
    return tuple(sorted(hours.days)), f"{hours.starts:%H:%M}", f"{hours.ends:%H:%M}"
