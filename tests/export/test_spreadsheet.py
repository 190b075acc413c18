"""The table as a spreadsheet takes it: read back by Python's csv module and by pandas."""

import csv
from datetime import datetime
from io import BytesIO, StringIO

import pandas as pd
import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.export.lines import record_lines
from bot.export.table import COLUMNS, csv_bytes
from bot.record import Record
from bot.units import Unit
from demo.diary import Diary
from tests.export.people import everything, told


def rows(*records: Record) -> list[dict[str, str]]:
    text = csv_bytes(records).decode("utf-8-sig")
    return list(csv.DictReader(StringIO(text, newline="")))


def test_begins_with_the_mark_of_utf_8_and_ends_lines_as_spreadsheets_do() -> None:
    """RFC 4180 for the ends of lines; the mark is what spreadsheets know UTF-8 by (common
    practice, no source)."""
    content = csv_bytes([everything()])
    assert content.startswith(b"\xef\xbb\xbfparticipant,type,time,")
    assert content.count(b"\r\n") == len(rows(everything())) + 1


def test_a_row_for_each_line_of_the_record() -> None:
    for record in (everything(), *told()):
        assert [row["type"] for row in rows(record)] == [
            line["type"] for line in record_lines(record)
        ]


def test_no_field_of_a_line_is_left_without_a_column() -> None:
    named = {name for record in (everything(), *told()) for row in rows(record) for name in row}
    assert named == set(COLUMNS)


def test_times_are_iso_with_offset() -> None:
    found = [row["time"] for record in told() for row in rows(record)]
    assert found
    assert all(datetime.fromisoformat(time).utcoffset() is not None for time in found if time)


@pytest.mark.parametrize(
    ("unit", "typed", "mg_dl", "mmol_l"),
    [(Unit.MG_DL, "118", "118.0", "6.55"), (Unit.MMOL_L, "6.5", "117.1", "6.5")],
)
def test_glucose_stands_in_both_units(unit: Unit, typed: str, mg_dl: str, mmol_l: str) -> None:
    """118/18.0156 = 6.5499 and 6.5 * 18.0156 = 117.1014 (LOINC's factor, reference 4)."""
    [before, *_] = rows(everything(unit=unit))
    assert (before["value"], before["unit"]) == (typed, unit.value)
    assert (before["mg_dl"], before["mmol_l"]) == (mg_dl, mmol_l)


def test_a_rise_is_converted_itself() -> None:
    pair = next(row for row in rows(everything(unit=Unit.MG_DL)) if row["type"] == "pair")
    assert (pair["change_mg_dl"], pair["change_mmol_l"]) == ("36.0", "2.0")


def test_pandas_reads_numbers_as_numbers_and_off_scale_as_none() -> None:
    frame = pd.read_csv(BytesIO(csv_bytes([everything()])))
    readings = frame[frame["type"] == "reading"]
    assert readings["mg_dl"].dtype == float
    assert readings["mg_dl"].isna().sum() == readings["off_scale"].notna().sum() == 2
    assert set(readings["doubtful"]) == {"yes", "no"}


#: OWASP, "CSV Injection": a cell must not begin with one of these; their full-width forms too.
DANGEROUS = tuple("=+-@\t\r\n＝＋－＠")


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "  =1", "＝1", "\r=1"])
def test_nothing_that_people_write_is_taken_for_a_formula(text: str) -> None:
    found = [row for row in rows(Diary().meal(0, "12:30", text, 118).record()) if row["text"]]
    assert len(found) == 2
    assert all(row["text"] == f"'{text}" for row in found)


@given(st.text(st.characters(exclude_categories=["Cs"]), max_size=20))
def test_no_text_begins_dangerously_and_none_is_lost(text: str) -> None:
    [meal] = [row for row in rows(Diary().meal(0, "12:30", text).record()) if row["type"] == "meal"]
    assert not meal["text"].lstrip(" ").startswith(DANGEROUS)
    assert meal["text"].removeprefix("'") == text.removeprefix("'")


def test_many_people_stand_in_one_table() -> None:
    assert {row["participant"] for row in rows(*told())} == {"artur", "efua", "june"}
