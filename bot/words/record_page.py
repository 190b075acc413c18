"""A fortnight of the record as one page to print: what stands on it, in words.

The page is for a visit: a clinician reads it in a minute, on paper, perhaps a grey copy. So
nothing on it is told by colour, what is outside a goal has a sign, and nothing is advised.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from bot.entries import Moment, Step, Suggests
from bot.words.picture import (
    PictureSentences,
)


@dataclass(frozen=True, slots=True, kw_only=True)
class RecordPageSentences:
    """The words on a page; braces name what is filled in."""

    picture: PictureSentences
    steps: dict[Step, str]
    title: str
    who: str
    who_named: str
    unit: str
    goals_title: str
    goal_before: str
    goal_after: str
    low_from: str
    high_from: str
    goals_since: str
    goals_of_the_day: str
    not_judged: str
    short_title: str
    tests: str
    full: str
    before_within: str
    after_within: str
    share: str
    median_before: str
    median_after: str
    median_rise: str
    lowest: str
    highest: str
    nothing: str
    columns: tuple[str, str, str, str, str, str, str]
    not_sure: str
    missing: str
    above: str
    below: str
    legend: str
    no_meals: str
    more_meals: str
    lows_title: str
    no_lows: str
    low: str
    high: str
    off_low: str
    off_high: str
    doubtful: str
    sugar: str
    felt: dict[Suggests, str]
    activity_title: str
    no_activity: str
    activity: str
    activity_minutes: str
    change: str
    beyond: str
    within_scatter: str
    food_working: str
    others_title: str
    moments: dict[Moment, str]
    changed_title: str
    step: str
    step_untested: str
    goals_set: str
    limits_set: str
    goals_first: str
    answer: str
    asked: dict[str, str]
    answers: dict[str, str]
    more: str
    foot: str
    page: str


def own(text: str) -> str:
    """Somebody's own words, set apart (UAX 9): in a line of ours neither changes the other's
    order, whichever way their script runs."""
    plain = "".join(one for one in text if one not in _ISOLATES)
    return f"\N{FIRST STRONG ISOLATE}{plain}\N{POP DIRECTIONAL ISOLATE}"


_ISOLATES = frozenset(
    "\N{LEFT-TO-RIGHT ISOLATE}\N{RIGHT-TO-LEFT ISOLATE}"
    "\N{FIRST STRONG ISOLATE}\N{POP DIRECTIONAL ISOLATE}"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Value:
    """A value in a table; `mark` stands beside one that is outside the goal."""

    word: str
    mark: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class MealRow:
    """One meal: when, what, the two values, the rise, why it does not count."""

    day: str
    at: str
    meal: str
    before: Value
    after: Value
    rise: str
    note: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """A titled list of short lines; `more` (with `{count}`) stands for those without room."""

    title: str
    lines: tuple[str, ...]
    more: str = "+ {count}"


@dataclass(frozen=True, slots=True, kw_only=True)
class RecordPage:
    """One page, ready for ink. `charts` are pictures as mappings (`bot.picture.to_mapping`)."""

    title: str
    dates: str
    who: str
    unit: str
    goals: Block
    figures: tuple[tuple[str, str], ...]
    figures_title: str
    charts: tuple[Mapping[str, Any], ...]
    columns: tuple[str, ...]
    rows: tuple[MealRow, ...]
    no_rows: str
    more_rows: str
    legend: str
    blocks: tuple[Block, ...]
    foot: str
