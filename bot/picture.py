"""What the chart of a week shows: values and the words beside them, ready to be drawn.

A picture knows no entries and no sums. All values are in the unit of the person's own meter,
as that meter shows them, and every word is in the person's language; whoever draws it adds
nothing but ink. It goes through the outbox as JSON (`to_mapping`, `from_mapping`).
"""

from collections.abc import Mapping
from dataclasses import asdict, dataclass
from enum import StrEnum
from typing import Any


class Role(StrEnum):
    """What a mark stands for."""

    BEFORE = "before"
    AFTER = "after"
    LONE = "lone"


class Judged(StrEnum):
    """Where a value lies; NOT where no goal was judged."""

    WITHIN = "within"
    OUTSIDE = "outside"
    NOT = "not"


class Off(StrEnum):
    """Beyond the meter's scale."""

    HIGH = "high"
    LOW = "low"


class Alert(StrEnum):
    """A value that brought a caution."""

    LOW = "low"
    HIGH = "high"


class Joint(StrEnum):
    """How the two values of a row are joined."""

    COUNTED = "counted"  # a pair that counts
    UNCOUNTED = "uncounted"  # kept, not counted: the note says why
    ACTIVITY = "activity"  # the change around an activity
    NONE = "none"


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """One value: `at` in the picture's unit, None off the scale; `word` is how it is written."""

    at: float | None
    word: str
    role: Role
    judged: Judged = Judged.NOT
    off: Off | None = None
    alert: Alert | None = None
    doubtful: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One line of the week: a meal, an activity, or a day's other tests.

    `day` is the short weekday, `name` what the line is (`Lunch`), `detail` the dish or the
    activity in the person's words, `note` what has to be known about it (`ate again`).
    """

    day: str
    name: str
    detail: str = ""
    note: str = ""
    joint: Joint = Joint.NONE
    marks: tuple[Mark, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class GoalLines:
    """The goals in the picture's unit, with their words."""

    before_low: float
    before_high: float
    after_high: float
    before_word: str
    after_word: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Legend:
    """The words that explain the marks."""

    before: str
    after: str
    outside: str
    lone: str
    activity: str
    uncounted: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Picture:
    """A week to be drawn. `goals` None: no goal is judged.

    `empty` is said where no row is, `more` (with `{count}`) where there are too many to draw.
    """

    title: str
    unit: str
    legend: Legend
    goals: GoalLines | None = None
    rows: tuple[Row, ...] = ()
    cautions: tuple[str, ...] = ()
    empty: str = ""
    more: str = "+ {count}"


def to_mapping(picture: Picture) -> dict[str, Any]:
    """The picture as plain JSON values."""
    return asdict(picture)


def from_mapping(mapping: Mapping[str, Any]) -> Picture:
    """The picture again. Raises KeyError, TypeError or ValueError for what is no picture."""
    goals = mapping["goals"]
    return Picture(
        title=mapping["title"],
        unit=mapping["unit"],
        legend=Legend(**mapping["legend"]),
        goals=None if goals is None else GoalLines(**goals),
        rows=tuple(_row(row) for row in mapping["rows"]),
        cautions=tuple(mapping["cautions"]),
        empty=mapping["empty"],
        more=mapping["more"],
    )


def _row(mapping: Mapping[str, Any]) -> Row:
    return Row(
        day=mapping["day"],
        name=mapping["name"],
        detail=mapping["detail"],
        note=mapping["note"],
        joint=Joint(mapping["joint"]),
        marks=tuple(_mark(mark) for mark in mapping["marks"]),
    )


def _mark(mapping: Mapping[str, Any]) -> Mark:
    off, alert = mapping["off"], mapping["alert"]
    return Mark(
        at=mapping["at"],
        word=mapping["word"],
        role=Role(mapping["role"]),
        judged=Judged(mapping["judged"]),
        off=None if off is None else Off(off),
        alert=None if alert is None else Alert(alert),
        doubtful=mapping["doubtful"],
    )
