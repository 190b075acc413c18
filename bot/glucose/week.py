"""The figures of a week: what the digest, the chart and the educator's summary are made from."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from statistics import fmean, median

from bot.entries import Meal, OffScale, Reading, Step
from bot.glucose.effects import Effect, effects
from bot.glucose.pairs import Pair, Status, after_in_goal, before_in_goal, pairs
from bot.glucose.readings import Settled, settled
from bot.glucose.trend import Trend, trend
from bot.localtime import DAY, at_local, local_date
from bot.messages import Kind
from bot.participants import WEEKDAYS, Participant
from bot.record import Noted, Record
from bot.record.fold import is_low, when
from bot.units import limit_in

#: contract: how many meals are named as those that raise glucose most and least.
NAMED_MEALS = 3

#: No suggestion goes with a reading from here, mg/dL (ADA Standards of Care 2026, section 13).
VERY_HIGH = 300

SECONDS_A_DAY = 86400.0


@dataclass(frozen=True, slots=True, kw_only=True)
class StepFigures:
    """A step taken at `since`, with the rises (mg/dL) of the complete pairs under it."""

    step: Step
    since: datetime
    pairs: tuple[Pair, ...]

    @property
    def rises(self) -> tuple[float, ...]:
        """The rises in the order of the meals."""
        return tuple(rise_of(pair) for pair in self.pairs)

    @property
    def mean_rise(self) -> float | None:
        """None without pairs."""
        return fmean(self.rises) if self.pairs else None


@dataclass(frozen=True, slots=True, kw_only=True)
class Week:
    """All figures of one week; glucose in mg/dL.

    `pairs` are those whose after reading (else whose meal's start) lies in the week, `complete`
    those among them that count. `before_in_goal` and `after_in_goal` are (within, judged).
    """

    participant: Participant
    start: datetime
    end: datetime
    from_date: date
    to_date: date
    readings: tuple[Settled, ...]
    pairs: tuple[Pair, ...]
    complete: tuple[Pair, ...]
    before_in_goal: tuple[int, int]
    after_in_goal: tuple[int, int]
    median_before: float | None
    median_after: float | None
    median_rise: float | None
    lowest: float | None
    highest: float | None
    trend: Trend | None
    largest_rises: tuple[Pair, ...]
    smallest_rises: tuple[Pair, ...]
    effects: tuple[Effect, ...]
    steps: tuple[StepFigures, ...]
    cautions: tuple[str, ...]
    has_low: bool
    has_very_high: bool


def digest_instants(participant: Participant, after: datetime) -> Iterator[datetime]:
    """Every digest's instant later than `after`, in order, without end."""
    day = week_ends_on(participant.week_ends, local_date(after, participant.zone))
    while True:
        instant = at_local(day, participant.digest_at, participant.zone)
        if instant.timestamp() > after.timestamp():
            yield instant
        day += 7 * DAY


def week_ends_on(weekday: str, day: date) -> date:
    """The first day from this one on that is such a weekday, on which weeks end."""
    return day + timedelta(days=(WEEKDAYS.index(weekday) - day.weekday()) % 7)


def week_of(
    participant: Participant, digest_instant: datetime
) -> tuple[datetime, datetime, date, date]:
    """The week that a digest closes: start, end, and the local dates of its seven days.

    The first one starts at joining and covers what there is.
    """
    last_day = local_date(digest_instant, participant.zone)
    start = at_local(last_day - 7 * DAY, participant.digest_at, participant.zone)
    if start.timestamp() < participant.joined_at.timestamp():
        start = participant.joined_at
    return start, digest_instant, last_day - 6 * DAY, last_day


def week(record: Record, *, start: datetime, end: datetime) -> Week:
    """The figures of [start, end) from the record of everything since joining.

    `to_date` is the local date of `end`, `from_date` six days before it.
    """
    inside = _Interval(start.timestamp(), end.timestamp())
    participant = record.participant
    readings = tuple(one for one in settled(record) if inside.holds(when(one.noted)))
    every = pairs(record)
    of_week = tuple(pair for pair in every if inside.holds(_belongs_at(pair)))
    complete = tuple(pair for pair in of_week if pair.status is Status.COMPLETE)
    values = [pair.values for pair in complete if pair.values is not None]
    on_scale = [
        one.noted.entry.mg_dl
        for one in readings
        if one.noted.entry.mg_dl is not None and not one.doubtful
    ]
    largest = _named(complete, highest_first=True)
    last_day = local_date(end, participant.zone)
    return Week(
        participant=participant,
        start=start,
        end=end,
        from_date=last_day - 6 * DAY,
        to_date=last_day,
        readings=readings,
        pairs=of_week,
        complete=complete,
        before_in_goal=_share(pair.before_in_goal for pair in complete),
        after_in_goal=_share(pair.after_in_goal for pair in complete),
        median_before=_median([before for before, _ in values]),
        median_after=_median([after for _, after in values]),
        median_rise=_median([after - before for before, after in values]),
        lowest=min(on_scale, default=None),
        highest=max(on_scale, default=None),
        trend=trend(_points(complete)),
        largest_rises=largest,
        smallest_rises=_named(complete, highest_first=False, but_not=largest),
        effects=tuple(one for one in effects(record) if inside.holds(when(one.after))),
        steps=step_figures(record, every, until=end),
        cautions=tuple(
            noted.entry.about
            for noted in record.spoke
            if noted.entry.kind is Kind.CAUTION and noted.entry.about and inside.holds(noted.at)
        ),
        has_low=any(is_low(one.noted.entry, participant.limits) for one in readings),
        has_very_high=any(is_very_high(one.noted.entry) for one in readings),
    )


def judged_by(figures: Week, then: Callable[[datetime], Participant]) -> Week:
    """The same with each reading judged by the goals and limits that `then` gives for its instant,
    and as a whole by those of its last day."""
    complete = tuple(_judged_by(pair, then) for pair in figures.complete)
    return replace(
        figures,
        participant=then(figures.end - timedelta(milliseconds=1)),
        pairs=tuple(_judged_by(pair, then) for pair in figures.pairs),
        complete=complete,
        before_in_goal=_share(pair.before_in_goal for pair in complete),
        after_in_goal=_share(pair.after_in_goal for pair in complete),
        largest_rises=tuple(_judged_by(pair, then) for pair in figures.largest_rises),
        smallest_rises=tuple(_judged_by(pair, then) for pair in figures.smallest_rises),
    )


def _judged_by(pair: Pair, then: Callable[[datetime], Participant]) -> Pair:
    before, after = pair.before_in_goal, pair.after_in_goal
    if pair.before is not None and before is not None:  # what was not judged is not judged now
        before = before_in_goal(pair.before.entry, then(when(pair.before)))
    if pair.after is not None and after is not None:
        after = after_in_goal(pair.after.entry, then(when(pair.after)))
    return pair._replace(before_in_goal=before, after_in_goal=after)


def step_figures(
    record: Record, every: Iterable[Pair], *, until: datetime
) -> tuple[StepFigures, ...]:
    """Every step taken before `until`, in order, with its complete pairs.

    As usual is in force from joining. A pair belongs to the step in force at its meal's start,
    and is counted once its after reading lies before `until`.
    """
    joined = record.participant.joined_at
    taken: list[tuple[datetime, Step]] = [(joined, Step.AS_USUAL)]
    for noted in record.steps:
        if noted.at.timestamp() < until.timestamp() and noted.entry.step is not taken[-1][1]:
            taken.append((noted.at, noted.entry.step))
    ends = [since.timestamp() for since, _ in taken[1:]] + [until.timestamp()]
    counted = [
        pair
        for pair in every
        if pair.status is Status.COMPLETE and _belongs_at(pair).timestamp() < until.timestamp()
    ]
    figures: list[StepFigures] = []
    for index, (since, step) in enumerate(taken):
        # What was eaten before joining is as usual too.
        begins = since.timestamp() if index else float("-inf")
        own = tuple(pair for pair in counted if begins <= pair.started_at.timestamp() < ends[index])
        figures.append(StepFigures(step=step, since=since, pairs=own))
    return tuple(figures)


def is_very_high(reading: Reading) -> bool:
    """From 300 mg/dL (16.7 mmol/L) in the unit as typed, or HI."""
    if reading.value is None:
        return reading.off_scale is OffScale.HIGH
    return reading.value >= limit_in(VERY_HIGH, reading.unit)


def rise_of(pair: Pair) -> float:
    """The rise of a complete pair, which has one. Raises ValueError for another pair."""
    if pair.rise is None:
        raise ValueError("this pair has no rise")
    return pair.rise


@dataclass(frozen=True, slots=True)
class _Interval:
    """From an instant to before another, in seconds: no wall clock enters the comparison."""

    start: float
    end: float

    def holds(self, instant: datetime) -> bool:
        return self.start <= instant.timestamp() < self.end


def _belongs_at(pair: Pair) -> datetime:
    return pair.started_at if pair.after is None else when(pair.after)


def _median(values: Sequence[float]) -> float | None:
    return median(values) if values else None


def _share(judged: Iterable[bool | None]) -> tuple[int, int]:
    known = [one for one in judged if one is not None]
    return sum(known), len(known)


def _points(complete: Iterable[Pair]) -> list[tuple[float, float]]:
    """Days since 1970 and after value; surprising values wait until they are confirmed."""
    return [
        (pair.started_at.timestamp() / SECONDS_A_DAY, pair.values[1])
        for pair in complete
        if pair.values is not None and not pair.unconfirmed
    ]


def _named(
    complete: Iterable[Pair], *, highest_first: bool, but_not: Iterable[Pair] = ()
) -> tuple[Pair, ...]:
    """The pairs with the most extreme rises, a text only once, texts of `but_not` left out."""
    seen = {same_text(pair.meal) for pair in but_not}
    ranked = sorted(complete, key=rise_of, reverse=highest_first)
    named: list[Pair] = []
    for pair in ranked:
        text = same_text(pair.meal)
        if text and text not in seen and len(named) < NAMED_MEALS:
            seen.add(text)
            named.append(pair)
    return tuple(named)


def same_text(meal: Noted[Meal]) -> str:
    """A meal's text as it is compared: case and spaces make no difference."""
    return " ".join(meal.entry.text.casefold().split())
