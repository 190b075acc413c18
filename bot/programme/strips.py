"""Test strips: how many are left, how many may be spent, when they run out."""

from dataclasses import dataclass
from datetime import date, datetime, timedelta
from math import floor

from bot.localtime import DAY, local_date, shifted
from bot.record import Record
from bot.record.fold import when

#: Kept for lows and illness (design of the programme; no source).
KEPT = 6

#: A pair needs two.
A_PAIR = 2

#: How far back the participant's own use is looked at.
LOOK_BACK = timedelta(days=14)


@dataclass(frozen=True, slots=True, kw_only=True)
class StripCount:
    """What is left of the strips last told, at an instant.

    `to_spend` are those beyond the six kept for lows and illness; `pairs_left` the tests of meals
    they are enough for. `runs_out_on` is the local date on which the last of these is spent at
    `a_week` strips a week; None where none are used.
    """

    told: int
    used: int
    left: int
    to_spend: int
    pairs_left: int
    a_week: float
    runs_out_on: date | None


def strip_count(record: Record, now: datetime, planned_a_week: float) -> StripCount | None:
    """Count from the last message that told the strips; None if none did.

    Every reading taken since has cost one. The rate is the plan's or, where higher, what was
    used over the last fourteen days.
    """
    told = [noted for noted in record.strips if noted.at.timestamp() <= now.timestamp()]
    if not told:
        return None
    last = told[-1]
    used = _readings_between(record, last.at, now)
    left = max(last.entry.left - used, 0)
    to_spend = max(left - KEPT, 0)
    a_week = max(planned_a_week, used_a_week(record, now))
    today = local_date(now, record.participant.zone)
    return StripCount(
        told=last.entry.left,
        used=used,
        left=left,
        to_spend=to_spend,
        pairs_left=to_spend // A_PAIR,
        a_week=a_week,
        runs_out_on=None if a_week <= 0 else today + floor(7 * to_spend / a_week) * DAY,
    )


def used_a_week(record: Record, now: datetime) -> float:
    """Strips a week over the last fourteen days, or since joining if that is shorter.

    Zero in the first three days, which say nothing yet about a habit.
    """
    since = shifted(now, -LOOK_BACK)
    if record.participant.joined_at.timestamp() > since.timestamp():
        since = record.participant.joined_at
    days = (now.timestamp() - since.timestamp()) / DAY.total_seconds()
    return 7 * _readings_between(record, since, now) / days if days >= 3 else 0.0


def _readings_between(record: Record, after: datetime, until: datetime) -> int:
    """Readings taken later than one instant, up to another; off the scale they cost a strip too."""
    return sum(
        after.timestamp() < when(noted).timestamp() <= until.timestamp()
        for noted in record.readings
    )
