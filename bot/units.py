"""Glucose units: conversion, rounding and what a meter can show.

Inside the code glucose is a number of mg/dL. A person's own number is compared in
the unit in which it was typed, because the published pairs of limits (70 mg/dL and
3.9 mmol/L, say) are rounded: 3.9 mmol/L is 70.3 mg/dL, and 4.4 is 79.3.
"""

from decimal import ROUND_HALF_UP, Decimal
from enum import StrEnum
from functools import cache

#: mg/dL in one mmol/L: the molar mass of glucose is 180.156 g/mol (LOINC group LG7967-5).
MG_DL_PER_MMOL_L = Decimal("18.0156")


class Unit(StrEnum):
    """UCUM codes of the two units that meters show."""

    MG_DL = "mg/dL"
    MMOL_L = "mmol/L"

    @property
    def places(self) -> int:
        """Decimals that a meter of this unit shows."""
        return 0 if self is Unit.MG_DL else 1

    @property
    def range(self) -> tuple[Decimal, Decimal]:
        """Lowest and highest value that a meter of this unit shows (common practice, no source)."""
        if self is Unit.MG_DL:
            return Decimal(20), Decimal(600)
        return Decimal("1.1"), Decimal("33.3")


def half_up(number: Decimal | float, places: int) -> Decimal:
    """Round as people do (12.5 is 13), which reproduces every published pair of limits."""
    exact = number if isinstance(number, Decimal) else Decimal(repr(number))
    return exact.quantize(Decimal(1).scaleb(-places), rounding=ROUND_HALF_UP)


def to_mg_dl(value: float, unit: Unit) -> float:
    """Convert a typed value to mg/dL, unrounded."""
    if unit is Unit.MG_DL:
        return float(value)
    return float(Decimal(repr(value)) * MG_DL_PER_MMOL_L)


def in_unit(mg_dl: float, unit: Unit) -> Decimal:
    """Convert mg/dL to a value as a meter of that unit shows it (whole, or one decimal)."""
    exact = Decimal(repr(mg_dl))
    return half_up(exact if unit is Unit.MG_DL else exact / MG_DL_PER_MMOL_L, unit.places)


@cache  # a handful of limits, asked for with every reading of a record
def limit_in(mg_dl: float, unit: Unit) -> float:
    """Give a limit stated in mg/dL as the published limit in that unit: 70 is 3.9, 180 is 10.0."""
    return float(in_unit(mg_dl, unit))


def plausible(value: float, unit: Unit) -> bool:
    """Tell whether a meter of that unit could have shown this value."""
    low, high = unit.range
    exact = Decimal(repr(value))
    whole_enough = unit is Unit.MMOL_L or exact == exact.to_integral_value()
    return whole_enough and low <= exact <= high
