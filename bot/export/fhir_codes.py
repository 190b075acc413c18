"""Codes and small shapes of HL7 FHIR R4 (hl7.org/fhir/R4), as far as the bundle needs them.

LOINC and UCUM codes: see docs/exports.md. No capillary code with mass for "before a meal" or "two
hours after" is known, so a reading has the code of its unit and carries its moment beside it.
"""

from collections.abc import Mapping
from typing import Any

from bot.entries import MealName, Moment
from bot.units import Unit

Shape = dict[str, Any]

LOINC = "http://loinc.org"
UCUM = "http://unitsofmeasure.org"
TIMING = "http://terminology.hl7.org/CodeSystem/v3-TimingEvent"
INTERPRETATION = "http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation"
CATEGORY = "http://terminology.hl7.org/CodeSystem/observation-category"

#: Glucose in capillary blood by glucometer, by the unit of the value (LOINC).
GLUCOSE: Mapping[Unit, tuple[str, str]] = {
    Unit.MG_DL: ("41653-7", "Glucose [Mass/volume] in Capillary blood by Glucometer"),
    Unit.MMOL_L: ("14743-9", "Glucose [Moles/volume] in Capillary blood by Glucometer"),
}

#: HL7's event timing: before and after a meal, or one that is named.
BEFORE: Mapping[MealName | None, str] = {
    MealName.BREAKFAST: "ACM",
    MealName.LUNCH: "ACD",
    MealName.DINNER: "ACV",
}
AFTER: Mapping[MealName | None, str] = {
    MealName.BREAKFAST: "PCM",
    MealName.LUNCH: "PCD",
    MealName.DINNER: "PCV",
}
#: Moments that HL7's event timing has no code for are told in words.
TOLD_IN_WORDS: Mapping[Moment, str] = {
    Moment.AFTER_ACTIVITY: "after activity",
    Moment.RECHECK: "test again, after a low or high reading",
}

#: One interpretation at most (v3-ObservationInterpretation).
INTERPRETED = {
    "LL": "Critical low",
    "L": "Low",
    "N": "Normal",
    "H": "High",
    "HH": "Critical high",
}


def timing(moment: Moment, meal: MealName | None) -> Shape | None:
    """The moment as a concept; None where it is not known."""
    words = TOLD_IN_WORDS.get(moment)
    if words is not None:
        return {"text": words}
    codes = {
        Moment.BEFORE_MEAL: BEFORE.get(meal, "AC"),
        Moment.AFTER_MEAL: AFTER.get(meal, "PC"),
        Moment.FASTING: "WAKE",
        Moment.BEDTIME: "HS",
    }
    code = codes.get(moment)
    return None if code is None else {"coding": [{"system": TIMING, "code": code}]}


def glucose_code(unit: Unit) -> Shape:
    """What was measured, by the unit in which it was."""
    code, display = GLUCOSE[unit]
    return {"coding": [{"system": LOINC, "code": code, "display": display}]}


def quantity(value: float, unit: Unit | str) -> Shape:
    """A value with its UCUM unit."""
    return {"value": value, "unit": str(unit), "system": UCUM, "code": str(unit)}


def interpretation(code: str) -> list[Shape]:
    """One concept, as a list of them."""
    coding = {"system": INTERPRETATION, "code": code, "display": INTERPRETED[code]}
    return [{"coding": [coding]}]


def category(code: str, display: str) -> list[Shape]:
    """What kind of observation it is."""
    return [{"coding": [{"system": CATEGORY, "code": code, "display": display}]}]
