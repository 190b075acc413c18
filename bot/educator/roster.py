"""Who needs a look first, and why: safety in a tier of its own, then silence and slow progress.

A roster is no alert: it looks back, and it is read when the educator asks for it.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import IntEnum, StrEnum
from functools import partial
from statistics import median

from bot.caution.episodes import episodes
from bot.caution.levels import level_of
from bot.caution.signs import may_mean_ketones
from bot.caution.thresholds import LOWS_IN_SEVEN_DAYS, SEVEN_DAYS, Level
from bot.glucose.pairs import Pair, Status, pairs
from bot.glucose.readings import settled
from bot.glucose.week import is_very_high
from bot.localtime import DAY, local_date, shifted
from bot.participants import Participant
from bot.programme.steps import offer
from bot.programme.strips import KEPT, strip_count
from bot.programme.testing import propose, rhythm_at, strips_a_week
from bot.record import Record
from bot.record.fold import is_low, when

#: How far back safety is looked at, and how long a high start of meals must last (project rule).
TWO_WEEKS = timedelta(days=14)

#: A median before meals above it for two weeks (project rule; the goal ends at 130).
BEFORE_MEDIAN = 180.0
#: Fewer values make no median of two weeks (project rule).
BEFORE_VALUES = 4

#: No complete pair for so long is silence (design of the programme).
SILENT_FOR = timedelta(days=7)

#: Stuck: of so many last complete pairs at least so many above the goal after a meal, the
#: newest not older than two weeks (project rule).
STUCK_OF, STUCK_NEEDS = 6, 5

#: Which step is in force is known if joining or a step lies within it, as far as a roster looks.
LOOKS_BACK = timedelta(days=35)

#: Strips run out within it (project rule).
STRIPS_SOON = timedelta(days=7)


class Tier(IntEnum):
    """Safety comes before all else; the rest in the order of a visit's talk."""

    SAFETY = 1
    SILENCE = 2
    PROGRESS = 3
    WELL = 4
    CLOSED = 5  # does not share values with the educator


class Reason(StrEnum):
    """Why somebody needs a look, worst first."""

    VERY_LOW = "very_low"
    TWO_LOWS = "two_lows"
    VERY_HIGH_TWO_DAYS = "very_high_two_days"
    KETONE_SIGNS = "ketone_signs"
    HIGH_BEFORE_MEALS = "high_before_meals"
    NO_PAIRS = "no_pairs"
    STUCK = "stuck"
    STRIPS = "strips"
    STEP_WAITS = "step_waits"
    FEWER_WAITS = "fewer_waits"


TIER_OF = {
    Reason.VERY_LOW: Tier.SAFETY,
    Reason.TWO_LOWS: Tier.SAFETY,
    Reason.VERY_HIGH_TWO_DAYS: Tier.SAFETY,
    Reason.KETONE_SIGNS: Tier.SAFETY,
    Reason.HIGH_BEFORE_MEALS: Tier.SAFETY,
    Reason.NO_PAIRS: Tier.SILENCE,
    Reason.STUCK: Tier.PROGRESS,
    Reason.STRIPS: Tier.PROGRESS,
    Reason.STEP_WAITS: Tier.PROGRESS,
    Reason.FEWER_WAITS: Tier.PROGRESS,
}
_ORDER = tuple(Reason)


@dataclass(frozen=True, slots=True, kw_only=True)
class Why:
    """One reason with what it rests on: how many, the last instant, a median in mg/dL."""

    reason: Reason
    count: int | None = None
    last: datetime | None = None
    mg_dl: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One participant of the roster with every reason, the worst first."""

    participant: Participant
    tier: Tier
    whys: tuple[Why, ...] = ()


def roster(records: Iterable[Record], now: datetime) -> tuple[Line, ...]:
    """A line for every participant, those who need a look first on top.

    Within a tier: the worst reason, then the number of reasons, then who joined first.
    """
    lines = [line(record, now) for record in records]
    return tuple(sorted(lines, key=_place))


def line(record: Record, now: datetime) -> Line:
    """One participant's line. Nothing is looked at where values are not shared."""
    person = record.participant
    if not person.tell_educator:
        return Line(participant=person, tier=Tier.CLOSED)
    whys = tuple(sorted(_whys(record, now), key=lambda why: _ORDER.index(why.reason)))
    tier = min((TIER_OF[why.reason] for why in whys), default=Tier.WELL)
    return Line(participant=person, tier=tier, whys=whys)


def _place(one: Line) -> tuple[int, int, int, float, str]:
    worst = _ORDER.index(one.whys[0].reason) if one.whys else len(_ORDER)
    joined = one.participant.joined_at.timestamp()
    return one.tier, worst, -len(one.whys), joined, one.participant.id


def _whys(record: Record, now: datetime) -> Iterator[Why]:
    yield from _lows(record, now)
    yield from _highs(record, now)
    yield from _ketone_signs(record, now)
    every = pairs(record)
    yield from _high_before_meals(record, now)
    yield from _silence(record, every, now)
    yield from _stuck(every, now)
    yield from _strips(record, now)
    yield from _waiting(record, every, now)


def _lows(record: Record, now: datetime) -> Iterator[Why]:
    limits = record.participant.limits
    recent = [one for one in record.readings if _within(when(one), now, TWO_WEEKS)]
    very = [when(one) for one in recent if level_of(one.entry, limits) is Level.VERY_LOW]
    if very:
        yield Why(reason=Reason.VERY_LOW, count=len(very), last=very[-1])
    low = partial(is_low, limits=limits)
    begun = [when(episode[0]) for episode in episodes(record.readings, low)]
    week = [start for start in begun if _within(start, now, SEVEN_DAYS)]
    if len(week) >= LOWS_IN_SEVEN_DAYS:
        yield Why(reason=Reason.TWO_LOWS, count=len(week), last=week[-1])


def _highs(record: Record, now: datetime) -> Iterator[Why]:
    zone = record.participant.zone
    found = [
        when(one.noted)
        for one in settled(record)
        if not one.doubtful
        and is_very_high(one.noted.entry)
        and _within(when(one.noted), now, TWO_WEEKS)
    ]
    days = {local_date(at, zone) for at in found}
    if any(day + DAY in days for day in days):
        yield Why(reason=Reason.VERY_HIGH_TWO_DAYS, count=len(days), last=max(found))


def _ketone_signs(record: Record, now: datetime) -> Iterator[Why]:
    if not record.participant.can_make_ketones:
        return
    signs = [
        one.at
        for one in record.symptoms
        if may_mean_ketones(one.entry) and _within(one.at, now, TWO_WEEKS)
    ]
    if signs:
        yield Why(reason=Reason.KETONE_SIGNS, count=len(signs), last=signs[-1])


def _high_before_meals(record: Record, now: datetime) -> Iterator[Why]:
    """The median of two weeks, as far as there have been two weeks."""
    if record.participant.joined_at > shifted(now, -TWO_WEEKS):
        return
    values = [
        pair.before.entry.mg_dl
        for pair in pairs(record)
        if pair.before is not None
        and pair.before.entry.mg_dl is not None
        and _within(pair.started_at, now, TWO_WEEKS)
    ]
    if len(values) >= BEFORE_VALUES and median(values) > BEFORE_MEDIAN:
        yield Why(reason=Reason.HIGH_BEFORE_MEALS, count=len(values), mg_dl=median(values))


def _silence(record: Record, every: Sequence[Pair], now: datetime) -> Iterator[Why]:
    complete = [pair.started_at for pair in every if pair.status is Status.COMPLETE]
    last = complete[-1] if complete else None
    if not _within(last or record.participant.joined_at, now, SILENT_FOR):
        yield Why(reason=Reason.NO_PAIRS, last=last)


def _stuck(every: Sequence[Pair], now: datetime) -> Iterator[Why]:
    judged = [
        pair
        for pair in every
        if pair.status is Status.COMPLETE
        and pair.after_in_goal is not None
        and not pair.unconfirmed
    ][-STUCK_OF:]
    above = sum(pair.after_in_goal is False for pair in judged)
    stuck = len(judged) == STUCK_OF and above >= STUCK_NEEDS
    if stuck and _within(judged[-1].started_at, now, TWO_WEEKS):
        yield Why(reason=Reason.STUCK, count=above, last=judged[-1].started_at)


def _strips(record: Record, now: datetime) -> Iterator[Why]:
    count = strip_count(record, now, strips_a_week(rhythm_at(record, now)))
    if count is None:
        return
    soon = local_date(now, record.participant.zone) + STRIPS_SOON
    if count.left <= KEPT or (count.runs_out_on is not None and count.runs_out_on <= soon):
        yield Why(reason=Reason.STRIPS, count=count.left)


def _waiting(record: Record, every: Sequence[Pair], now: datetime) -> Iterator[Why]:
    """What the educator has to release before the participant can go on."""
    knows_its_step = bool(record.steps) or _within(record.participant.joined_at, now, LOOKS_BACK)
    following = offer(record, every, now) if knows_its_step else None
    if following is not None and following.ready and following.needs_release:
        yield Why(reason=Reason.STEP_WAITS)
    proposal = propose(record, every, now)
    if proposal is not None and proposal.needs_educator:
        yield Why(reason=Reason.FEWER_WAITS)


def _within(instant: datetime, now: datetime, span: timedelta) -> bool:
    return shifted(now, -span).timestamp() <= instant.timestamp() <= now.timestamp()
