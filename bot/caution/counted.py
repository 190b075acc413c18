"""Cautions that count: two days running, the third high, the second low."""

from collections.abc import Iterator, Sequence
from datetime import datetime

from bot.caution.caution import Caution, Told
from bot.caution.episodes import Episode, episode_of, episodes
from bot.caution.thresholds import (
    HIGHS_IN_SEVEN_DAYS,
    LOWS_IN_SEVEN_DAYS,
    SEVEN_DAYS,
    Level,
)
from bot.entries import Reading
from bot.glucose.readings import settled
from bot.localtime import DAY, local_date, shifted
from bot.messages import Kind
from bot.record import Noted
from bot.record.fold import when


def counted(told: Told) -> Iterator[Caution]:
    """The calls to the care team that a new reading completes.

    A high that a washed repeat overruled counts for neither of the high ones, one that is far
    from the last reading and not confirmed yet for no third high. Lows always count.
    """
    readings = told.record.readings
    if any(told.high(noted.entry) for noted in told.readings):
        judged = settled(told.record)
        certain = [one.noted for one in judged if not one.doubtful]
        yield from _two_days(told, certain)
        calm = [one.noted for one in judged if not (one.doubtful or one.unconfirmed)]
        highs = episodes(calm, told.high)
        yield from _repeated(told, Level.REPEATED_HIGH, highs, HIGHS_IN_SEVEN_DAYS)
    if any(told.low(noted.entry) for noted in told.readings):
        lows = episodes(readings, told.low)
        yield from _repeated(told, Level.REPEATED_LOW, lows, LOWS_IN_SEVEN_DAYS)


def _two_days(told: Told, readings: Sequence[Noted[Reading]]) -> Iterator[Caution]:
    if _said_today(told, Level.TWO_DAYS_VERY_HIGH):
        return
    zone = told.record.participant.zone
    very_high = [noted for noted in readings if told.level(noted) is Level.VERY_HIGH]
    days = {local_date(when(noted), zone) for noted in very_high}
    for noted in very_high:
        if noted not in told.readings:
            continue
        day = local_date(when(noted), zone)
        if day - DAY in days or day + DAY in days:
            yield Caution(level=Level.TWO_DAYS_VERY_HIGH, cause=noted.id, reading=noted)


def _said_today(told: Told, level: Level) -> bool:
    zone = told.record.participant.zone
    today = local_date(told.now, zone)
    return any(local_date(at, zone) == today for at in _said_at(told, level))


def _repeated(told: Told, level: Level, found: Sequence[Episode], many: int) -> Iterator[Caution]:
    week_ago = shifted(told.now, -SEVEN_DAYS)
    if any(at > week_ago for at in _said_at(told, level)):
        return
    for noted in told.readings:
        episode = episode_of(noted.id, found)
        if episode and _completes(episode, found, many):
            yield Caution(level=level, cause=noted.id, reading=noted)


def _completes(episode: Episode, found: Sequence[Episode], many: int) -> bool:
    """Tell whether `many` episodes, this one among them, begin within seven days."""
    place = found.index(episode)
    for first in range(max(0, place - many + 1), place + 1):
        last = first + many - 1
        if last < len(found) and when(found[last][0]) < shifted(when(found[first][0]), SEVEN_DAYS):
            return True
    return False


def _said_at(told: Told, level: Level) -> Iterator[datetime]:
    for spoken in told.record.spoke:
        if spoken.entry.kind is Kind.CAUTION and spoken.entry.about == level:
            yield spoken.at
