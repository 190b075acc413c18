"""The most telling meal to test next: where one more pair would teach most.

A test of a meal with uncertainty v (variance of its expected rise) and test noise s lowers v to
v s / (v + s). What it teaches counts as often as the meal is eaten: knowing about the daily bread
is worth more than knowing about last year's cake.
"""

from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum
from math import sqrt

from bot.glucose.foods import known
from bot.glucose.pooling import Estimate
from bot.glucose.scatter import sd
from bot.localtime import shifted
from bot.programme.strips import A_PAIR, StripCount
from bot.record import Record
from bot.record.fold import when

#: Meals of the last four weeks can be met again (project rule).
EATEN_WITHIN = timedelta(days=28)

#: The strips' error of a pair at the middle of the goals, before any is known, mg/dL.
TYPICAL_BEFORE, TYPICAL_AFTER = 110.0, 160.0


class Reason(StrEnum):
    """Why this meal: the one sentence that explains it."""

    NEVER_TESTED = "never_tested"
    ONE_TEST = "one_test"
    STILL_UNSURE = "still_unsure"


@dataclass(frozen=True, slots=True, kw_only=True)
class Telling:
    """A meal to test next, with what is expected of it and how much surer a test would make it.

    `width_now` and `width_after` are half the width of its 90 % interval in mg/dL (the second as
    far as can be foreseen); `eaten` is how often it was told in the last four weeks.
    """

    text: str
    reason: Reason
    tests: int
    eaten: int
    expected: Estimate
    width_now: float
    width_after: float


def most_telling(record: Record, now: datetime, strips: StripCount | None) -> Telling | None:
    """The meal whose next pair teaches most; None without a meal so far, or strips to spend."""
    if strips is not None and strips.to_spend < A_PAIR:
        return None
    found = known(record)
    if found is None:
        return None
    noise = found.pooled.day_to_day**2 + sd(TYPICAL_BEFORE) ** 2 + sd(TYPICAL_AFTER) ** 2
    earliest = shifted(now, -EATEN_WITHIN).timestamp()
    best: tuple[float, Telling] | None = None
    for index, (text, told, tests) in enumerate(
        zip(found.texts, found.told, found.tests, strict=True)
    ):
        eaten = sum(earliest <= when(noted).timestamp() <= now.timestamp() for noted in told)
        if not eaten:
            continue
        expected = found.pooled.expected({index: 1.0})
        variance = expected.sd**2
        gain = eaten * variance**2 / (variance + noise)
        if best is None or gain > best[0]:
            shrunk = sqrt(noise / (variance + noise))
            width = (expected.high - expected.low) / 2
            best = (
                gain,
                Telling(
                    text=text,
                    reason=_reason(len(tests)),
                    tests=len(tests),
                    eaten=eaten,
                    expected=expected,
                    width_now=width,
                    width_after=width * shrunk,
                ),
            )
    return None if best is None else best[1]


def _reason(tests: int) -> Reason:
    match tests:
        case 0:
            return Reason.NEVER_TESTED
        case 1:
            return Reason.ONE_TEST
        case _:
            return Reason.STILL_UNSURE
