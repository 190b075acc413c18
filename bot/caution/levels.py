"""The level that a value alone brings, compared in the unit in which it was typed."""

from bot.caution.thresholds import VERY_HIGH, VERY_LOW, Level
from bot.entries import OffScale, Reading
from bot.participants import Limits
from bot.units import limit_in

LOWS = frozenset({Level.VERY_LOW, Level.LOW})


def below(reading: Reading, mg_dl: float) -> bool:
    """Tell whether a reading lies below a limit, in its own unit; LO always, HI never does."""
    if reading.value is None:
        return reading.off_scale is OffScale.LOW
    return reading.value < limit_in(mg_dl, reading.unit)


def level_of(reading: Reading, limits: Limits) -> Level | None:
    """Give the level of a value, None where it is neither low nor high."""
    if below(reading, VERY_LOW):
        return Level.VERY_LOW
    if below(reading, limits.low):
        return Level.LOW
    if not below(reading, VERY_HIGH):
        return Level.VERY_HIGH
    if not below(reading, limits.high):
        return Level.HIGH
    return None
