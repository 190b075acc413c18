"""The decision table made from the code, against the project's table of cautions, row by row.

`AGREED` is that table, copied by hand: it shares no number with the code.
"""

import os
from pathlib import Path

import pytest

from bot.caution.thresholds import SEND_ORDER
from tests.caution.decision_table import Row, page, rows

AGREED = {
    "emergency": (
        "an emergency symptom at any value; vomiting, belly pain or fast deep breathing from 250 "
        "or with `HI`, or at any value with `ketone_risk`; the third reading in one low still "
        "below 70; one below 54 after sugar was advised",
        "the same; 13.9; 3.9; 3.0",
    ),
    "very_low": ("below 54, or `LO`", "below 3.0"),
    "low": ("54 to below 70", "3.0 to below 3.9"),
    "very_high": ("from 300, or `HI`", "from 16.7"),
    "high": ("250 to below 300", "13.9 to below 16.7"),
    "two_days_very_high": ("from 300, or `HI`, on two local dates running", "16.7"),
    "repeated_high": ("the third high (from 250) within seven days", "13.9"),
    "repeated_low": ("the second low (below 70) within seven days", "3.9"),
    "symptoms": (
        "a `low` or `high` symptom without a reading or with one from 70 to below 250; a wrong or "
        "double dose already taken",
        "3.9; 13.9",
    ),
}


def test_the_levels_and_their_order_are_the_agreed_ones() -> None:
    assert [level.value for level in SEND_ORDER] == list(AGREED)


@pytest.mark.parametrize("row", tuple(rows()), ids=lambda row: row.level)
def test_each_row_is_the_agreed_one(row: Row) -> None:
    assert (row.mg_dl, row.mmol_l) == AGREED[row.level]


def test_the_page_in_docs_is_what_the_code_gives(checkout: Path) -> None:
    path = checkout / "docs" / "cautions-table.md"
    if os.environ.get("WRITE_DOCS"):
        path.write_text(page(), encoding="utf-8")
    assert path.read_text(encoding="utf-8") == page(), "write it anew with WRITE_DOCS=1"
