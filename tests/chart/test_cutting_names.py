"""A name that is too long is cut where it still reads as a name."""

from unicodedata import category

from hypothesis import given
from hypothesis import strategies as st

from bot.chart.cutting import ELLIPSIS, cut, wrapped

WIDE = 10.0


def measure(text: str) -> float:
    """Every character ten pixels wide, marks on letters none."""
    return WIDE * sum(not category(character).startswith("M") for character in text)


def test_a_name_that_fits_is_left_alone() -> None:
    assert cut("rice and beans", 140, measure) == "rice and beans"


def test_a_cut_goes_back_to_the_end_of_a_word() -> None:
    assert cut("rice and beans", 120, measure) == "rice and…"


def test_but_not_if_that_costs_much() -> None:
    assert cut("a Kaiserschmarrn", 120, measure) == "a Kaisersch…"


def test_no_punctuation_before_the_ellipsis() -> None:
    assert cut("rice, fish, peas", 120, measure) == "rice, fish…"


def test_a_letter_keeps_its_signs() -> None:
    assert cut("सब्ज़ी रोटी", 30, measure)[:-1] in {"स", "सब", "सब्ज़ी"}


def test_no_room_at_all() -> None:
    assert cut("rice", 5, measure) == ""


@given(st.text(max_size=60), st.floats(min_value=0, max_value=500))
def test_what_is_cut_fits_and_begins_alike(text: str, width: float) -> None:
    line = " ".join(text.split())
    short = cut(text, width, measure)
    assert measure(short) <= width
    if short != line:
        assert short == "" or short.endswith(ELLIPSIS)
        assert line.startswith(short.removesuffix(ELLIPSIS))


@given(st.text(max_size=200), st.floats(min_value=60, max_value=500))
def test_wrapped_lines_fit(text: str, width: float) -> None:
    assert all(measure(line) <= width for line in wrapped(text, width, measure))


def test_wrapping_keeps_every_word() -> None:
    text = "one test before a meal and one two hours after it"
    assert " ".join(wrapped(text, 150, measure)) == text
