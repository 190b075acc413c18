"""The printed form of entries: JSON objects as the reader's and the replay's contract name them."""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from bot.entries import (
    Activity,
    Answer,
    Correction,
    Meal,
    Reading,
    Removal,
    Request,
    Said,
    Skip,
    StepTaken,
    Strips,
    Symptom,
    Treatment,
)
from bot.localtime import iso

Line = dict[str, Any]

TYPES: Mapping[type, str] = {
    Reading: "reading",
    Meal: "meal",
    Treatment: "treatment",
    Activity: "activity",
    Correction: "correction",
    Removal: "removal",
    Skip: "skip",
    Symptom: "symptom",
    Strips: "strips",
    StepTaken: "step",
    Answer: "answer",
    Request: "request",
}


def number(value: float | None) -> float | int | None:
    """A typed number as it was typed: 142, not 142.0."""
    return int(value) if value is not None and float(value).is_integer() else value


def instant(moment: datetime | None) -> str | None:
    """ISO 8601 with offset, or None."""
    return None if moment is None else iso(moment)


def entry_line(entry: Said | Treatment | StepTaken | Answer) -> Line:
    """One entry as the contracts print it; what is kept aside is left out."""
    return {"type": TYPES[type(entry)], **_fields(entry)}


def _fields(entry: Said | Treatment | StepTaken | Answer) -> Line:
    match entry:
        case Reading():
            return {
                "value": number(entry.value),
                "unit": entry.unit.value,
                "mg_dl": entry.mg_dl,
                "moment": entry.moment.value,
                "taken_at": instant(entry.taken_at),
                "off_scale": entry.off_scale.value if entry.off_scale else None,
            }
        case Meal():
            return {
                "text": entry.text,
                "name": entry.name.value if entry.name else None,
                "started_at": instant(entry.started_at),
            }
        case Treatment():
            return {"text": entry.text, "taken_at": instant(entry.taken_at)}
        case Activity():
            return {
                "text": entry.text,
                "minutes": number(entry.minutes),
                "ended_at": instant(entry.ended_at),
            }
        case Correction():
            return _correction(entry)
        case Removal():
            return {}
        case Skip():
            return {"reason": entry.reason}
        case Symptom():
            return {"text": entry.text, "suggests": entry.suggests.value}
        case Strips():
            return {"left": entry.left}
        case StepTaken():
            return {"step": entry.step.value}
        case Answer():
            return {"about": entry.about, "how": entry.how}
        case Request():
            return {"what": entry.what.value}


def _correction(entry: Correction) -> Line:
    line: Line = {
        "value": number(entry.value),
        "unit": entry.unit.value if entry.unit else None,
        "replaces": number(entry.replaces),
    }
    if entry.moment is not None:
        line["moment"] = entry.moment.value
    if entry.at is not None:
        line["at"] = instant(entry.at)
    if entry.text is not None:
        line["text"] = entry.text
    return line
