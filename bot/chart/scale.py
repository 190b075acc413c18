"""Where a value stands across the paper."""

from collections.abc import Iterable
from dataclasses import dataclass

from bot.picture import GoalLines, Mark, Picture

#: Values at the two ends where a week asks for no more: mg/dL, and the same in mmol/L.
USUAL = {"mg/dL": (70.0, 210.0), "mmol/L": (3.9, 11.7)}

#: Part of the span that stays free beyond the outermost value.
MARGIN = 0.04


@dataclass(frozen=True, slots=True, kw_only=True)
class Scale:
    """A straight scale from `low` at pixel `left` to `high` at pixel `right`."""

    low: float
    high: float
    left: float
    right: float

    def x(self, value: float) -> float:
        """The pixel of a value; beyond the ends it stays at the end."""
        part = (value - self.low) / (self.high - self.low)
        return self.left + min(max(part, 0), 1) * (self.right - self.left)

    def of(self, mark: Mark) -> float | None:
        """The pixel of a mark, None off the scale."""
        return None if mark.at is None else self.x(mark.at)


def scale_for(picture: Picture, left: float, right: float) -> Scale:
    """A scale that holds the goals and every value of the picture."""
    usual_low, usual_high = USUAL.get(picture.unit, USUAL["mg/dL"])
    values = [usual_low, usual_high, *_goals(picture.goals), *_values(picture)]
    low, high = min(values), max(values)
    free = (high - low) * MARGIN
    return Scale(low=low - free, high=high + free, left=left, right=right)


def _goals(goals: GoalLines | None) -> Iterable[float]:
    return () if goals is None else (goals.before_low, goals.before_high, goals.after_high)


def _values(picture: Picture) -> Iterable[float]:
    return (mark.at for row in picture.rows for mark in row.marks if mark.at is not None)
