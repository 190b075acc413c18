"""The ladder after a low or a high: which rechecks fall due, when it ends, whom it tells.

All of it is worked out from the record, so that nothing has to be cancelled: a reading that
answers a low takes its rechecks away, a correction brings others.
"""

from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum

from bot.caution.episodes import episodes
from bot.caution.levels import LOWS, level_of
from bot.caution.thresholds import (
    LOW_OPEN,
    RECHECK_AFTER,
    RECHECK_AFTER_RECOVERY,
    RECHECK_OPEN,
    REPEAT_WITHIN,
    SECOND_RECHECK_AFTER,
    Level,
)
from bot.entries import Reading
from bot.glucose.readings import is_high
from bot.localtime import shifted
from bot.messages import Kind
from bot.participants import State
from bot.record import Noted, Record
from bot.record.events import Spoke
from bot.record.fold import is_low, when

#: A word to the educator that could not be passed on within it is stale; the roster has it.
WORD_KEEPS = timedelta(hours=24)

#: A low and the reading that answers it, if one does.
_Low = tuple[Noted[Reading], Noted[Reading] | None]


class RecheckKind(StrEnum):
    """Which rung of a ladder a recheck is."""

    FIRST = "first"
    SECOND = "second"
    AFTER_HOUR = "after_hour"
    HIGH = "high"


class EducatorWhy(StrEnum):
    """What an educator is told of, where the participant agreed to it at joining."""

    EMERGENCY = "emergency"
    VERY_LOW = "very_low"
    OFF_SCALE = "off_scale"
    UNANSWERED = "unanswered"


@dataclass(frozen=True, slots=True, kw_only=True)
class Recheck:
    """A prompt to test again: due at `due_at`, worthless from `until` on.

    `cause` is the event of the reading that it follows; with `after_hour` the one that was back
    in range. After a low was taken back it is the event that no longer stands.
    """

    key: str
    due_at: datetime
    kind: RecheckKind
    cause: int
    until: datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class EducatorWord:
    """A word to the educator. `cause` is the event of the reading or symptom it is about."""

    key: str
    due_at: datetime
    why: EducatorWhy
    cause: int
    until: datetime


def rechecks(record: Record, *, now: datetime | None = None) -> tuple[Recheck, ...]:
    """Every recheck that the record as it stands makes due, past or future, earliest first.

    With `now`, those that are worthless by then are left out. What was answered is left out
    always. Nobody who sent `stop` is prompted: the caution itself says when to test.
    """
    if record.participant.state is State.STOPPED:
        return ()
    found = [*_after_lows_taken_back(record), *_after_highs(record)]
    if record.lows:
        lows = tuple(_lows(record))
        found += (*_after_lows(record, lows), *_after_recoveries(record, lows))
    worth = [one for one in found if now is None or now < one.until]
    return tuple(sorted(worth, key=lambda one: (one.due_at, one.key)))


def retest_at(noted: Noted[Reading], told: datetime) -> datetime:
    """When a reading out of range is to be tested again: 15 minutes after it was taken, or after
    it was `told` where that has passed by then."""
    return _after(noted, RECHECK_AFTER, told)


def retest_after_recovery(back: Noted[Reading]) -> datetime:
    """When the one more test an hour after a low is due."""
    return _after(back, RECHECK_AFTER_RECOVERY, back.at)


def recovery(record: Record, new: Collection[int]) -> Noted[Reading] | None:
    """The new reading that is back in range after a low, if there is one."""
    backs = [back for back, _ in _recoveries(record, _lows(record)) if back.id in new]
    return backs[-1] if backs else None


def ladder_closed(record: Record, new: Collection[int]) -> Noted[Reading] | None:
    """The new reading that ends a low and may be met with one kind line, if there is one.

    A reading that brings a caution of its own ends the low too, but no kind line stands beside
    a caution.
    """
    back = recovery(record, new)
    quiet = back is not None and level_of(back.entry, record.participant.limits) is None
    return back if quiet else None


def low_taken_back(record: Record, *, now: datetime) -> bool:
    """Tell whether a low was corrected upwards (or taken back) and one fresh reading is still
    to come before its ladder ends."""
    return any(now < one.until for one in _after_lows_taken_back(record))


def word_to_educator(record: Record) -> tuple[EducatorWord, ...]:
    """Every word to the educator that the record gives reason for, earliest first.

    None unless the participant agreed at joining. An emergency is known by what was said, so
    the caution has to be in `record.spoke`.
    """
    if not record.participant.tell_educator:
        return ()
    return tuple(sorted(_words(record), key=lambda word: (word.due_at, word.key)))


def _words(record: Record) -> Iterator[EducatorWord]:
    limits = record.participant.limits
    for spoken in record.spoke:
        if spoken.entry.about == Level.EMERGENCY and spoken.entry.kind is Kind.CAUTION:
            cause = spoken.entry.cause if spoken.entry.cause is not None else spoken.id
            yield _word(EducatorWhy.EMERGENCY, cause, spoken.at)
    for noted in record.readings:
        if noted.entry.off_scale is not None:
            yield _word(EducatorWhy.OFF_SCALE, noted.id, noted.at)
        elif level_of(noted.entry, limits) is Level.VERY_LOW:
            yield _word(EducatorWhy.VERY_LOW, noted.id, noted.at)
    if record.participant.state is not State.STOPPED:
        yield from _unanswered(record)


def _unanswered(record: Record) -> Iterator[EducatorWord]:
    for low, answer in _lows(record):
        due = shifted(retest_at(low, _told(record, low)), 2 * SECOND_RECHECK_AFTER)
        if answer is None or answer.at > due:
            yield _word(EducatorWhy.UNANSWERED, low.id, due)


def _word(why: EducatorWhy, cause: int, due_at: datetime) -> EducatorWord:
    return EducatorWord(
        key=f"educator:{cause}:{why}",
        due_at=due_at,
        why=why,
        cause=cause,
        until=shifted(due_at, WORD_KEEPS),
    )


def _after_lows(record: Record, lows: Sequence[_Low]) -> Iterator[Recheck]:
    for low, answer in lows:
        if answer is not None:
            continue
        first = retest_at(low, _told(record, low))
        second = shifted(first, SECOND_RECHECK_AFTER)
        yield _recheck(RecheckKind.FIRST, low.id, first, until=second)
        yield _recheck(RecheckKind.SECOND, low.id, second, until=shifted(second, RECHECK_OPEN))


def _after_recoveries(record: Record, lows: Sequence[_Low]) -> Iterator[Recheck]:
    if not record.participant.can_go_low:
        return
    last_low = max(when(low) for low, _ in lows)
    for back in {back.id: back for back, _ in _recoveries(record, lows)}.values():
        if when(back) < last_low:
            continue  # low again since: that low has a ladder of its own
        due = retest_after_recovery(back)
        yield _recheck(RecheckKind.AFTER_HOUR, back.id, due, until=shifted(due, RECHECK_OPEN))


def _after_lows_taken_back(record: Record) -> Iterator[Recheck]:
    """A low that was cautioned and no longer stands: one fresh reading is asked for."""
    cautioned = [spoken for spoken in record.spoke if _cautioned_a_low(spoken.entry)]
    standing = {noted.id for noted in record.readings} if cautioned else ()
    for spoken in cautioned:
        cause = spoken.entry.cause
        if cause is None or cause in standing:
            continue
        if not _settled_since(record, spoken):
            due = shifted(spoken.at, RECHECK_AFTER)
            yield _recheck(RecheckKind.FIRST, cause, due, until=shifted(due, RECHECK_OPEN))


def _cautioned_a_low(spoke: Spoke) -> bool:
    return spoke.kind is Kind.CAUTION and spoke.about in LOWS


def _settled_since(record: Record, spoken: Noted[Spoke]) -> bool:
    """A fresh reading came, or what was told in its place has a ladder of its own."""
    return any(
        when(noted) > spoken.at or (noted.id > spoken.id and _has_ladder(record, noted))
        for noted in record.readings
    )


def _has_ladder(record: Record, noted: Noted[Reading]) -> bool:
    limits = record.participant.limits
    if is_low(noted.entry, limits):
        return True
    return is_high(noted.entry, limits) and not planned_high(record, noted)


def _after_highs(record: Record) -> Iterator[Recheck]:
    limits = record.participant.limits
    for episode in episodes(record.readings, lambda reading: is_high(reading, limits)):
        first = next((noted for noted in episode if not planned_high(record, noted)), None)
        if first is None or _answer(record, first) is not None:
            continue
        due = retest_at(first, _told(record, first))
        until = shifted(due, RECHECK_OPEN - REPEAT_WITHIN / 2)
        yield _recheck(RecheckKind.HIGH, first.id, due, until=until)


def planned_high(record: Record, noted: Noted[Reading]) -> bool:
    """Tell whether an educator's plan covers this reading: `high`, not worse, and nothing felt."""
    until = record.participant.high_plan_until
    if until is None or noted.at >= until:
        return False
    if level_of(noted.entry, record.participant.limits) is not Level.HIGH:
        return False
    around = REPEAT_WITHIN
    return not any(
        shifted(noted.at, -around) <= symptom.at <= shifted(noted.at, around)
        for symptom in record.symptoms
    )


def _recheck(kind: RecheckKind, cause: int, due_at: datetime, *, until: datetime) -> Recheck:
    return Recheck(
        key=f"recheck:{cause}:{kind}", due_at=due_at, kind=kind, cause=cause, until=until
    )


def _after(noted: Noted[Reading], wait: timedelta, told: datetime) -> datetime:
    due = shifted(when(noted), wait)
    return due if due > told else shifted(told, wait)


def _told(record: Record, noted: Noted[Reading]) -> datetime:
    """When the bot came to know of a reading: a value that was put right stands at the instant
    of its first version, and its caution was said at its own."""
    cautioned = (
        spoken.at
        for spoken in record.spoke
        if spoken.entry.cause == noted.id and spoken.entry.kind is Kind.CAUTION
    )
    return max(noted.at, next(cautioned, noted.at))


def _lows(record: Record) -> Iterator[_Low]:
    """Each low with the reading that answers it."""
    return ((low, _answer(record, low)) for low in record.lows)


def _recoveries(
    record: Record, lows: Iterable[_Low]
) -> Iterator[tuple[Noted[Reading], Noted[Reading]]]:
    """Each reading that was back in range, with the low that it ended."""
    limits = record.participant.limits
    for low, answer in lows:
        if answer is None or is_low(answer.entry, limits):
            continue
        if when(answer) <= shifted(max(when(low), low.at), LOW_OPEN):
            yield answer, low


def _answer(record: Record, noted: Noted[Reading]) -> Noted[Reading] | None:
    """The first reading taken after this one and told after it.

    Told after it: a low that is told late has its recheck, whatever was measured since then,
    because its caution asks for a test now.
    """
    later = record.readings_behind(noted)
    return next((other for other in later if other.id > noted.id), None)
