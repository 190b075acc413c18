"""What a fortnight must bring by the contract's own rules, reckoned without any part of the bot.

Written from the contract alone, in the plainest way and for plain fortnights: values between low
and high, a reading's moment always told. Times here are in UTC, glucose in the unit as typed.
The trend is scipy's own Theil-Sen slope.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from decimal import ROUND_HALF_UP, Decimal
from math import hypot
from statistics import fmean, median
from typing import Any
from zoneinfo import ZoneInfo

from scipy.stats import theilslopes

MINUTE = timedelta(minutes=1)
DAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
BEFORE = ("before_meal", "fasting")
AFTER = ("after_meal", "after_activity")


@dataclass(frozen=True, kw_only=True)
class Person:
    """The settings of an enrolment that bear on what is due."""

    zone: str
    unit: str
    week_ends: str
    digest_at: str
    quiet: tuple[str, str]
    main_meal: str | None
    goals: tuple[float, float, float]

    def typed(self, mg_dl: float) -> float:
        """A limit of mg/dL in the person's unit, as published tables round it."""
        if self.unit == "mg/dL":
            return mg_dl
        return rounded(float(Decimal(mg_dl) / Decimal("18.0156")), 1)

    def mg_dl(self, value: float) -> float:
        """A typed value in mg/dL."""
        if self.unit == "mg/dL":
            return float(value)
        return float(Decimal(str(value)) * Decimal("18.0156"))

    def local(self, at: datetime) -> str:
        """An instant in print."""
        return at.astimezone(ZoneInfo(self.zone)).isoformat(timespec="seconds")

    def day(self, at: datetime) -> date:
        """The local date."""
        return at.astimezone(ZoneInfo(self.zone)).date()

    def instant(self, day: date, clock: str) -> datetime:
        """A local clock time; one that is skipped is the first valid minute after it."""
        place = ZoneInfo(self.zone)
        wanted = datetime.combine(day, time.fromisoformat(clock))
        while True:
            at = wanted.replace(tzinfo=place).astimezone(UTC)
            if at.astimezone(place).replace(tzinfo=None) == wanted:
                return at
            wanted += MINUTE

    def is_quiet(self, at: datetime) -> bool:
        """From the start of quiet time, to before its end."""
        clock = at.astimezone(ZoneInfo(self.zone)).time()
        start, end = map(time.fromisoformat, self.quiet)
        return start <= clock < end if start < end else clock >= start or clock < end


@dataclass(frozen=True, kw_only=True)
class Told:
    """One message: a meal with or without its reading, a reading, an activity, or a skip."""

    at: datetime
    moment: str = ""
    value: float | None = None
    food: str = ""
    minutes: int = 0  # of an activity that ends now

    @property
    def text(self) -> str:
        """As it is texted."""
        if self.food:
            return f"{self.value} before, {self.food}" if self.value else f"ate {self.food}"
        if self.minutes:
            walked = f"walked {self.minutes} min"
            return f"{walked}, {self.value}" if self.value else walked
        words = {"after_meal": "after", "fasting": "fasting"}
        return f"{self.value} {words[self.moment]}" if self.value else "skip"


@dataclass(frozen=True, kw_only=True)
class Pair:
    """A meal with its two readings."""

    meal: Told
    before: Told | None
    after: Told | None
    status: str
    rise: float | None
    judged: tuple[bool | None, bool | None]


def rounded(value: float, places: int = 2) -> float:
    """Half up, as people do."""
    return float(Decimal(repr(value)).quantize(Decimal(1).scaleb(-places), ROUND_HALF_UP))


def minutes(start: datetime, end: datetime) -> float:
    """Elapsed minutes."""
    return (end - start) / MINUTE


def readings(told: list[Told]) -> list[Told]:
    """The messages that hold a value."""
    return [one for one in told if one.value is not None]


def pairs(person: Person, told: list[Told]) -> Iterator[Pair]:
    """Every meal with its readings; earlier meals choose first, each reading serves once."""
    meals = [one for one in told if one.food]
    befores, afters = [
        [one for one in readings(told) if one.moment in moments] for moments in (BEFORE, AFTER)
    ]
    for meal in meals:
        near = [one for one in befores if -60 <= minutes(meal.at, one.at) <= 10]
        before = min(
            near,
            key=lambda one: (one.moment != "before_meal", abs(minutes(meal.at, one.at))),
            default=None,
        )
        on_time = _nearest(afters, meal, 90, 150)
        after = on_time or _nearest(afters, meal, 60, 180)
        befores = [one for one in befores if one is not before]
        afters = [one for one in afters if one is not after]
        if after is None:
            status = "no_after"
        elif any(meal.at < other.at < after.at for other in meals):
            status = "ate_again"
        else:
            status = "off_time" if on_time is None else "complete" if before else "no_before"
        low, high, below = map(person.typed, person.goals)
        yield Pair(
            meal=meal,
            before=before,
            after=after,
            status=status,
            rise=person.mg_dl(after.value) - person.mg_dl(before.value)
            if after and before and after.value and before.value
            else None,
            judged=(
                low <= before.value <= high if before and before.value else None,
                person.typed(70) <= after.value < below if after and after.value else None,
            ),
        )


def _nearest(afters: list[Told], meal: Told, first: int, last: int) -> Told | None:
    """Stated ones first, then the nearest to two hours."""
    return min(
        (one for one in afters if first <= minutes(meal.at, one.at) <= last),
        key=lambda one: (one.moment != "after_meal", abs(minutes(meal.at, one.at) - 120)),
        default=None,
    )


def prompts(person: Person, told: list[Told], joined: datetime, end: datetime) -> list[Any]:
    """When each prompt is sent and what it asks for."""
    found = [*_after_meals(person, told), *_after_activities(person, told)]
    if person.main_meal is not None:
        day = person.day(joined)
        while (at := person.instant(day, person.main_meal) - 15 * MINUTE) <= end:
            wrote = any(at - 60 * MINUTE <= one.at <= at for one in told)
            if at > joined and not wrote and not person.is_quiet(at):
                found.append((at, "before_meal"))
            day += timedelta(days=1)
    return sorted((person.local(at), about) for at, about in found if at <= end)


def _after_meals(person: Person, told: list[Told]) -> Iterator[tuple[datetime, str]]:
    meals = [one for one in told if one.food]
    for meal, following in zip(meals, [*meals[1:], None], strict=True):
        for due in (meal.at + 120 * MINUTE, meal.at + 135 * MINUTE):
            answered = any(
                one.at <= due and 90 <= minutes(meal.at, one.at) <= 150 and one.moment in AFTER
                for one in readings(told)
            )
            skipped = any(
                one.text == "skip" and meal.at + 90 * MINUTE <= one.at <= due for one in told
            )
            eaten = following is not None and following.at <= due
            if answered or skipped or eaten or person.is_quiet(due):
                break
            yield due, "after_meal"


def _after_activities(person: Person, told: list[Told]) -> Iterator[tuple[datetime, str]]:
    days = set()
    for one in told:
        due = one.at + 10 * MINUTE
        if not one.minutes or person.is_quiet(due) or person.day(due) in days:
            continue
        if not any(one.at <= other.at <= due for other in readings(told)):
            days.add(person.day(due))
            yield due, "after_activity"


def effects(person: Person, told: list[Told]) -> Iterator[tuple[Any, ...]]:
    """End, before, after, change, beyond the meter's scatter, food still working."""
    values = [(one.at, person.mg_dl(one.value)) for one in told if one.value is not None]
    for one in told:
        start = one.at - one.minutes * MINUTE
        befores = [it for it in values if 0 <= minutes(it[0], start) <= 120]
        afters = [it for it in values if 0 <= minutes(one.at, it[0]) <= 60]
        if not one.minutes or not befores or not afters:
            continue
        (first_at, first), (last_at, last) = befores[-1], afters[0]
        food = any(it.food and first_at - 120 * MINUTE <= it.at < last_at for it in told)
        # ../reference, section 5: ISO 15197, 15 mg/dL below 100, 15 % from there.
        scatter = hypot(*(15 if value < 100 else 0.15 * value for value in (first, last)))
        change = last - first
        yield (
            person.local(one.at), rounded(first), rounded(last), rounded(change),
            abs(change) > scatter, food,
        )  # fmt: skip


def digests(
    person: Person, told: list[Told], joined: datetime, end: datetime
) -> Iterator[tuple[str, dict[str, Any]]]:
    """When each digest is sent, and its numbers."""
    start, day = joined, person.day(joined)
    while (until := person.instant(day, person.digest_at)) <= end:
        if DAYS[day.weekday()] == person.week_ends and until > joined:
            sent = until
            while person.is_quiet(sent):
                sent += MINUTE
            if sent > end:
                return
            known = [one for one in told if one.at < sent]
            yield person.local(sent), _numbers(person, known, start, until, day)
            start = until
        day += timedelta(days=1)


def _numbers(
    person: Person, told: list[Told], start: datetime, until: datetime, last: date
) -> dict[str, Any]:
    values = [person.mg_dl(one.value) for one in told if one.value and start <= one.at < until]
    every = [
        one
        for one in pairs(person, told)
        if one.status == "complete" and one.after and one.after.at < until
    ]
    complete = [one for one in every if one.after and one.after.at >= start]
    both = [
        (person.mg_dl(one.before.value), person.mg_dl(one.after.value))
        for one in complete
        if one.before and one.after and one.before.value and one.after.value
    ]
    times = [one.meal.at.timestamp() / 86400 for one in complete]
    return {
        "week_from": str(last - timedelta(days=6)),
        "week_to": str(last),
        "readings": len(values),
        "complete_pairs": len(complete),
        "before_in_goal": [sum(one.judged[0] is True for one in complete), len(complete)],
        "after_in_goal": [sum(one.judged[1] is True for one in complete), len(complete)],
        "median_before": rounded(median(one for one, _ in both)) if both else None,
        "median_after": rounded(median(one for _, one in both)) if both else None,
        "median_rise": rounded(median(after - before for before, after in both)) if both else None,
        "lowest": rounded(min(values)) if values else None,
        "highest": rounded(max(values)) if values else None,
        "trend": _trend(times, [after for _, after in both]),
        "steps": [
            {
                "step": "as_usual",
                "pairs": len(every),
                "mean_rise": rounded(fmean(one.rise or 0 for one in every)) if every else None,
            }
        ],
    }


def _trend(times: list[float], values: list[float]) -> dict[str, Any] | None:
    if len(times) < 6:
        return None
    slope, _, low, high = theilslopes(values, [one - min(times) for one in times], 0.95)
    return {
        "mg_dl_per_day": rounded(float(slope), 4),
        "low": rounded(float(low), 4),
        "high": rounded(float(high), 4),
        "clear": bool(low > 0 or high < 0),
    }
