"""Numbers and times as people read them, in the unit of the person's own meter."""

from datetime import datetime

from bot.entries import OffScale, Reading
from bot.units import Unit, half_up, in_unit


def value_words(reading: Reading) -> str:
    """A reading as its meter shows it, with the unit: `118 mg/dL`, `7.8 mmol/L`, `HI`."""
    if reading.value is None:
        return "HI" if reading.off_scale is OffScale.HIGH else "LO"
    return f"{half_up(reading.value, reading.unit.places)} {reading.unit.value}"


def number_words(mg_dl: float, unit: Unit) -> str:
    """A value kept in mg/dL, without its unit, as a meter of that unit shows it."""
    return str(in_unit(mg_dl, unit))


def mg_dl_words(mg_dl: float, unit: Unit) -> str:
    """A value kept in mg/dL, in the person's unit: `118 mg/dL`, `6.5 mmol/L`."""
    return f"{in_unit(mg_dl, unit)} {unit.value}"


def change_words(mg_dl: float, unit: Unit) -> str:
    """The size of a change, without sign: convert the change itself, never its rounded ends."""
    return number_words(abs(mg_dl), unit)


def signed_words(mg_dl: float, unit: Unit) -> str:
    """A change with its sign, for a list: `+36`, `-12`."""
    return f"{'+' if mg_dl >= 0 else '-'}{change_words(mg_dl, unit)}"


def clock(moment: datetime) -> str:
    """The clock time as the participant's own clock shows it: `14:31`."""
    return f"{moment.hour:02}:{moment.minute:02}"
