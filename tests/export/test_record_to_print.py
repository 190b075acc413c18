"""The printable record, read by a stranger: pypdf."""

import re
from io import BytesIO

import pytest
from pypdf import PdfReader

from bot.chart import draw
from bot.entries import Moment
from bot.export.files import FORMATS, attachment, file_of, paper_of
from bot.export.page import pdf_bytes
from bot.record import Record
from bot.units import Unit
from bot.words.english.record_page import RECORD_PAGE
from bot.words.record_page_filling import record_pages
from demo.diary import Diary, somebody
from tests.export.people import everything, told


def pages(record: Record, *, whole: bool = False) -> list[str]:
    found = PdfReader(BytesIO(pdf_bytes([record], draw, whole=whole))).pages
    return [page.extract_text() for page in found]


@pytest.mark.parametrize(
    ("paper", "size"),
    [("a4", (210.0, 297.0)), ("letter", (215.9, 279.4))],  # ISO 216; ANSI/ASME Y14.1
)
def test_pages_have_the_size_of_the_paper(paper: str, size: tuple[float, float]) -> None:
    content = pdf_bytes([everything()], draw, paper=paper)  # type: ignore[arg-type]
    box = PdfReader(BytesIO(content)).pages[0].mediabox
    inches = (float(box.width) / 72 * 25.4, float(box.height) / 72 * 25.4)
    assert inches == pytest.approx(size, abs=0.1)


def test_the_last_fortnight_alone_or_each_that_holds_something_the_newest_first() -> None:
    diary = Diary().meal(-27, "12:30", "old rice", 118, 154).meal(9, "12:30", "new beans", 110, 141)
    [last] = pages(diary.record())
    assert "new beans" in last
    assert "old rice" not in last
    assert "Page 1 of 1" in last
    found = pages(diary.record(), whole=True)
    assert len(found) == 2  # the fortnight between holds nothing
    assert "new beans" in found[0]
    assert "25 Feb to 10 March" not in found[0]
    assert "26 Feb to 11 March 2026" in found[0].replace("\n", " ")
    assert "old rice" in found[1]
    assert "Page 2 of 2" in found[1]


def test_everything_that_was_told_stands_on_the_page() -> None:
    [text] = pages(everything())
    flat = " ".join(text.split())
    for words in (
        "rice and beans", "lentil soup", "Before a meal: 80 to 130", "below 180",
        "walked, 20 min, 170 to 129", "LO on the meter", "took sugar", "felt: shaky",
        "310, high (not sure", "HI on the meter", "101, on waking",
        "Lighter meals, since Mon 9 March", "Hunger: less", "204", "+82",
    ):  # fmt: skip
        assert words in flat, words


def test_a_crowded_fortnight_is_still_one_page_and_says_what_it_leaves_out() -> None:
    diary = Diary()
    for day in range(14):
        for hour in ("06:30", "09:30", "12:30", "15:30", "18:30", "21:30"):
            diary.meal(day, hour, f"dish of day {day}", 110, 150)
        diary.reading(day, "05:00", 62).reading(day, "05:15", 84, Moment.RECHECK)
    [text] = pages(diary.record())
    hidden = re.search(r"and (\d+) meals before these", text)
    assert hidden is not None
    shown = len(re.findall(r"dish of day \d+", text))
    assert shown + int(hidden[1]) == 14 * 6
    assert shown >= 20
    assert re.search(r"and \d+ more", text)


def test_nothing_is_told_by_colour() -> None:
    """In a PDF `rg`, `RG`, `k` and `K` set a colour, `g` and `G` a grey (ISO 32000-1, 8.6.8)."""
    for page in PdfReader(BytesIO(pdf_bytes([everything()], draw))).pages:
        content = page.get_contents()
        assert content is not None
        colours = re.findall(rb"([\d.]+ [\d.]+ [\d.]+) (?:rg|RG)\b", content.get_data())
        coloured = [colour for colour in colours if len(set(colour.split())) > 1]
        assert not coloured
        assert not re.search(rb"(?:[\d.]+ ){4}[kK]\b", content.get_data())


def test_name_stands_there_only_if_one_was_given() -> None:
    assert "Record p1" in pages(everything())[0]
    assert "Ana (record p1)" in pages(everything(name="Ana"))[0]


def test_values_stand_in_the_persons_own_unit() -> None:
    [text] = pages(everything(unit=Unit.MMOL_L))
    assert "Glucose in mmol/L" in text
    assert "Before a meal: 4.4 to 7.2" in text
    assert "6.5" in text
    assert "118" not in text


def test_in_pregnancy_no_goal_is_judged() -> None:
    [page] = record_pages(everything(pregnant=True), RECORD_PAGE)
    assert "not judged here" in page.goals.lines[0]
    assert not [row for row in page.rows if row.after.mark and row.after.word == "204"]


def test_signs_stand_beside_what_is_outside_the_goals() -> None:
    [page] = record_pages(everything(), RECORD_PAGE)
    marks = {row.after.word: row.after.mark for row in page.rows}
    assert marks["204"] == RECORD_PAGE.above
    assert marks["154"] == ""
    assert {row.before.word: row.before.mark for row in page.rows}["78"] == RECORD_PAGE.below


def test_an_empty_record_is_a_page_that_says_so() -> None:
    [text] = pages(Diary().record())
    assert "No meal was told" in text


def test_other_scripts_are_written_and_what_has_no_letters_is_shown_as_missing() -> None:
    [text] = pages(Diary().meal(0, "12:30", "稲荷寿司 борщ \U0001f35b", 118, 154).record())
    assert "稲荷寿司 борщ" in text.replace("\x00", "")  # pypdf sets one beside each CJK letter
    assert "\N{WHITE VERTICAL RECTANGLE}" in text


def test_files_are_the_same_bytes_each_time() -> None:
    for form in FORMATS:
        assert file_of(form, told(), draw) == file_of(form, told(), draw), form


@pytest.mark.parametrize(
    ("zone", "paper"), [("America/Lima", "letter"), ("Africa/Nairobi", "a4"), ("Asia/Manila", "a4")]
)
def test_paper_is_that_of_the_place(zone: str, paper: str) -> None:
    """Common practice, no source."""
    assert paper_of(zone) == paper
    name, content = attachment("record", Diary(who=somebody(zone=zone)).record(), draw)
    width = float(PdfReader(BytesIO(content)).pages[0].mediabox.width)
    assert name == "record.pdf"
    assert width == pytest.approx(612 if paper == "letter" else 595.28, abs=0.1)


def test_no_other_file_is_made() -> None:
    with pytest.raises(ValueError, match="no attachment"):
        attachment("letter", Diary().record(), draw)
