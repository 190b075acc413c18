"""The record as one table for a spreadsheet: CSV in UTF-8 with a mark that tells so.

A row for each line of the record. Times are ISO 8601 with offset, glucose stands in both units
(`value` and `unit` as typed). No cell can be taken for a formula.
"""

from collections.abc import Iterable, Mapping
from types import MappingProxyType
from typing import Any

from bot.export.lines import Line, record_lines
from bot.record import Record
from bot.units import MG_DL_PER_MMOL_L, half_up

#: Fields of the lines that hold mg/dL, by the names of their two columns.
GLUCOSE: Mapping[str, tuple[str, str]] = MappingProxyType(
    {
        "mg_dl": ("mg_dl", "mmol_l"),
        "before": ("before_mg_dl", "before_mmol_l"),
        "after": ("after_mg_dl", "after_mmol_l"),
        "rise": ("change_mg_dl", "change_mmol_l"),
        "change": ("change_mg_dl", "change_mmol_l"),
    }
)
#: Fields that stand under another name in the table: what happened, when, in whose words.
RENAMED: Mapping[str, str] = MappingProxyType(
    {
        "taken_at": "time",
        "started_at": "time",
        "ended_at": "time",
        "meal_started_at": "time",
        "at": "time",
        "meal": "text",
        "activity": "text",
        "reason": "text",
    }
)
COLUMNS = (
    "participant",
    "type",
    "time",
    "text",
    "name",
    "moment",
    "value",
    "unit",
    "mg_dl",
    "mmol_l",
    "off_scale",
    "doubtful",
    "minutes",
    "before_mg_dl",
    "before_mmol_l",
    "after_mg_dl",
    "after_mmol_l",
    "change_mg_dl",
    "change_mmol_l",
    "after_minutes",
    "status",
    "before_in_goal",
    "after_in_goal",
    "beyond_meter_scatter",
    "food_still_working",
    "suggests",
    "step",
    "left",
    "about",
    "how",
)

#: What a spreadsheet may begin to calculate at (OWASP, "CSV Injection"), its full-width forms too.
STARTS_A_FORMULA = frozenset("=+-@\t\r\n＝＋－＠")


def csv_bytes(records: Iterable[Record]) -> bytes:
    """The table of these records, with a line of names first."""
    import pandas as pd  # noqa: PLC0415 - half a second, for those who want a table only

    rows = [_row(line) for record in records for line in record_lines(record)]
    frame = pd.DataFrame(rows, columns=list(COLUMNS), dtype=object)
    text: str = frame.to_csv(index=False, lineterminator="\r\n")
    return text.encode("utf-8-sig")


def _row(line: Line) -> dict[str, Any]:
    row: dict[str, Any] = {}
    for field, value in line.items():
        if field in GLUCOSE:
            mg_dl, mmol_l = GLUCOSE[field]
            row |= {mg_dl: value, mmol_l: _mmol_l(value)}
        else:
            row[RENAMED.get(field, field)] = _cell(value)
    return row


def _mmol_l(mg_dl: float | None) -> float | None:
    return None if mg_dl is None else float(half_up(mg_dl / float(MG_DL_PER_MMOL_L), 2))


def _cell(value: Any) -> Any:
    if isinstance(value, bool):
        return "yes" if value else "no"
    return guarded(value) if isinstance(value, str) else value


def guarded(text: str) -> str:
    """A cell that stays text: an apostrophe stands before what looks like a formula."""
    return f"'{text}" if text.lstrip(" ")[:1] in STARTS_A_FORMULA and text.strip() else text
