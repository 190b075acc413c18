"""Where a high value two hours after a meal comes from: the start, the plate, or both."""

from collections.abc import Sequence
from enum import StrEnum
from statistics import median

from bot.glucose.pairs import Pair
from bot.participants import Participant
from bot.units import in_unit

#: One or two pairs are a hint, not a pattern (common practice, no source).
FEWEST_PAIRS = 3


class Height(StrEnum):
    """What makes the after values high."""

    BEFORE = "before"  # the start was high and the meal added little
    RISE = "rise"  # the start was fine: what is on the plate decides
    BOTH = "both"


def height_of(pair: Pair, participant: Participant) -> Height | None:
    """Where this pair's after value comes from; None within goals or unjudged."""
    if pair.values is None or not participant.judged or pair.unconfirmed:
        return None
    before, after = pair.values
    return _height(before, after, after - before, participant)


def height(complete: Sequence[Pair], participant: Participant) -> Height | None:
    """Where the after values of complete pairs come from, by their medians.

    None below three pairs, when the medians are within the goals, and where goals are unjudged.
    """
    values = [pair.values for pair in complete if pair.values is not None and not pair.unconfirmed]
    if len(values) < FEWEST_PAIRS or not participant.judged:
        return None
    return _height(
        median(before for before, _ in values),
        median(after for _, after in values),
        median(after - before for before, after in values),
        participant,
    )


def _height(before: float, after: float, rise: float, who: Participant) -> Height | None:
    """A rise is large if it leads from the top of the goal before a meal past the one after it."""
    goals, unit = who.goals, who.unit
    if in_unit(before, unit) > in_unit(goals.before_high, unit):
        return Height.BOTH if rise > goals.after_high - goals.before_high else Height.BEFORE
    return Height.RISE if in_unit(after, unit) >= in_unit(goals.after_high, unit) else None
