"""Carbohydrate before activity, where lows are possible."""

from collections.abc import Collection
from datetime import datetime

from bot.caution.levels import below, level_of
from bot.caution.thresholds import BEFORE_ACTIVITY, SIGN_AND_NUMBER
from bot.entries import Ask, Reading
from bot.localtime import shifted
from bot.record import Noted, Record
from bot.record.fold import when


def carbohydrate_first(
    record: Record, new: Collection[int], *, now: datetime, planned: bool = False
) -> Noted[Reading] | None:
    """The reading because of which some carbohydrate is to come before activity, or None.

    With lows possible (or unknown), the last reading of the hour is below 90 mg/dL (5.0 mmol/L)
    and not a low, which has its own caution, and activity is told or about to begin. One of the
    two is new. `planned` says that the message at hand speaks of activity to come (`going for
    a walk`), which the record knows only once the question about its end is noted.
    """
    if not record.participant.can_go_low:
        return None
    since = shifted(now, -SIGN_AND_NUMBER)
    recent = [noted for noted in record.readings if since <= when(noted) <= now]
    last = recent[-1] if recent else None
    if last is None or not below(last.entry, BEFORE_ACTIVITY):
        return None
    if level_of(last.entry, record.participant.limits) is not None:
        return None
    active = {
        *(noted.id for noted in record.activities if since <= when(noted) <= now),
        *(
            noted.id
            for noted in record.wondered
            if noted.entry.ask is Ask.WHEN_DONE and since <= noted.at <= now
        ),
    }
    is_new = last.id in new or planned or any(id_ in new for id_ in active)
    return last if is_new and (planned or active) else None
