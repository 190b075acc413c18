"""The one thing to try next week, and why: a table of rules, the first that fits.

Pure: a week's figures, the step in force and how it compares in, a suggestion out; the words
are `bot/words`'. Two walls stand round the table. In a week with a low, or a reading from
300 mg/dL, nothing is suggested but to speak with the care team and to go on testing. And
whoever can go low or make ketones is told to eat less starch or to move more only on a step
that the educator has released: both can bring glucose too low (contract, replay.md).
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from bot.entries import Step
from bot.glucose.height import Height
from bot.glucose.pairs import Pair, Status
from bot.glucose.scatter import rise_limit, rises_limit
from bot.glucose.week import Week, rise_of, same_text

#: So many tests without their second half in one week are a habit to mend (project rule).
MANY_OPEN = 3

#: So many pairs or fewer say little of a week (project rule).
FEW_PAIRS = 2

#: This part of the pairs within both goals is a week to go on with (project rule).
MOST = 0.75

#: A caution of any other level leaves nothing to suggest but the care team.
MILDEST = "high"

LESS_STARCH = (Step.LIGHTER_MEAL, Step.MEASURED_PLATE, Step.MOVE_AFTER)


class Try(StrEnum):
    """What is suggested."""

    TALK = "talk"  # a low or a very high: the care team, and go on testing
    GOALS_FIRST = "goals_first"  # no goals are judged: the care team sets them
    FIRST_PAIR = "first_pair"  # no pair counts yet
    SECOND_TEST = "second_test"  # many meals without their second test
    BEFORE_VALUES = "before_values"  # high before, little rise: the care team
    MORE_PAIRS = "more_pairs"  # the step needs more tests before it says anything
    TEST_AGAIN = "test_again"  # one meal, one test: see whether it holds
    SMALLER = "smaller"  # the meal that rose: less starch, more vegetables
    MOVE = "move"  # the meal that rose: ten minutes of walking after it
    KEEP = "keep"  # most within goals: the meal that rose least again
    NEW_FOOD = "new_food"  # nothing stands out: test a food one wonders about


@dataclass(frozen=True, slots=True, kw_only=True)
class Suggestion:
    """What to try; `meal` is the pair it is about, `count` a number of tests."""

    attempt: Try
    meal: Pair | None = None
    count: int | None = None


def suggest(week: Week, *, height: Height | None, more_pairs: int | None = None) -> Suggestion:
    """Choose the one suggestion for a week.

    `more_pairs` is how many more pairs the step needs before it can be compared with the one
    before (None: nothing is being compared, or it is clear already).
    """
    cautioned = any(level != MILDEST for level in week.cautions)
    if week.has_low or week.has_very_high or cautioned:
        return Suggestion(attempt=Try.TALK)
    if not week.participant.judged:
        return Suggestion(attempt=Try.GOALS_FIRST)
    if not week.complete:
        return Suggestion(attempt=Try.FIRST_PAIR)
    without = sum(pair.status is Status.NO_AFTER for pair in week.pairs)
    if without >= MANY_OPEN and without > len(week.complete):
        return Suggestion(attempt=Try.SECOND_TEST, count=without)
    if height is Height.BEFORE:
        return Suggestion(attempt=Try.BEFORE_VALUES)
    return _from_meals(week, more_pairs)


def standing_out(week: Week) -> Pair | None:
    """The meal with the largest rise, if that is above the goal or more than scatter."""
    if not week.largest_rises:
        return None
    worst = week.largest_rises[0]
    if worst.values is None:
        return None
    risen = rise_of(worst) > rise_limit(*worst.values)
    return worst if risen and worst.after_in_goal is False else None


def beyond(one: Pair, other: Pair) -> bool:
    """Tell whether two rises differ by more than the meter's scatter (reference, case 3)."""
    if one.values is None or other.values is None:
        return False
    return abs(rise_of(one) - rise_of(other)) > rises_limit(one.values, other.values)


def least_and_most(week: Week) -> tuple[Pair, Pair] | None:
    """The named meals with the smallest and the largest rise; None with fewer than two."""
    named: Sequence[Pair] = (*week.largest_rises, *week.smallest_rises)
    if len(named) < 2:
        return None
    return min(named, key=rise_of), max(named, key=rise_of)


def _from_meals(week: Week, more_pairs: int | None) -> Suggestion:
    worst = standing_out(week)
    if worst is not None:
        if _tests_of(worst, week) == 1:
            return Suggestion(attempt=Try.TEST_AGAIN, meal=worst)
        return _released(worst, week)
    if more_pairs:
        return Suggestion(attempt=Try.MORE_PAIRS, count=more_pairs)
    extremes = least_and_most(week)
    if len(week.complete) > FEW_PAIRS and _mostly_within(week) and extremes is not None:
        least, _ = extremes
        if least.after_in_goal:
            return Suggestion(attempt=Try.KEEP, meal=least)
    return Suggestion(attempt=Try.NEW_FOOD)


def _released(worst: Pair, week: Week) -> Suggestion:
    """What may be tried with a meal that rose: the step's own lever, else test again."""
    step = week.steps[-1].step if week.steps else Step.AS_USUAL
    free = not week.participant.needs_release
    if step is Step.MOVE_AFTER:
        return Suggestion(attempt=Try.MOVE, meal=worst)
    if free or step in LESS_STARCH:
        return Suggestion(attempt=Try.SMALLER, meal=worst)
    return Suggestion(attempt=Try.TEST_AGAIN, meal=worst)


def _tests_of(pair: Pair, week: Week) -> int:
    """How often this meal was tested since joining, as far as pairs count."""
    text = same_text(pair.meal)
    every = [one for figures in week.steps for one in figures.pairs]
    return sum(same_text(one.meal) == text for one in every)


def _mostly_within(week: Week) -> bool:
    within = sum(bool(pair.before_in_goal and pair.after_in_goal) for pair in week.complete)
    return within >= MOST * len(week.complete)
