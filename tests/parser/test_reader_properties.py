"""What must hold for any text: valid answers, no exception, nothing invented, nothing ahead.

The rules are those of the reader's contract; the numbers in the patterns are made up.
"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: PLE2502 - the mark is the test
# ruff: noqa: SIM905 - word sets read best as one string

import json
from datetime import datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.entries import Activity, Ask, Asked, By, Correction, Meal, Reading, Said, Understood
from bot.entry_lines import entry_line
from bot.parser import read
from bot.parser.tidy import LONGEST
from bot.units import Unit, plausible

AT = datetime.fromisoformat("2026-03-04T13:05:00+02:00")

PIECES = st.sampled_from(
    "142|7.8|before|after|rice and beans|lunch|at 7|20 min ago|walked 20 min|dizzy|not|2 eggs|"
    "bp 120/80|10 units|82 kg|HI|LO|,|.|?|sorry|I meant|no|my wife|can I eat|mango|fasting|and|"
    "yesterday|7:30|half past seven|(|[|{|<b>|*|_|`|‮|\x00|٧|７|½|🍚|then|->|strips|one forty two|"
    "antes|después|arroz|hace 20 min|took|metformin|a1c 7.2|$|mmol|mg|4000 steps|undo|skip".split(
        "|"
    )
)
MESSAGES = st.one_of(
    st.text(max_size=200),
    st.lists(PIECES, max_size=14).map(" ".join),
)
ASKED = st.one_of(st.none(), st.sampled_from(Asked))
UNITS = st.sampled_from(Unit)
LANGUAGES = st.sampled_from(["en", "es", "sw", "es-MX"])


def reading(text: str, unit: Unit = Unit.MG_DL, asked: Asked | None = None) -> Understood:
    return read(text, at=AT, unit=unit, asked=asked)


def values(understood: Understood) -> list[float | None]:
    return [entry.value for entry in understood.entries if isinstance(entry, Reading)]


def lines(understood: Understood) -> str:
    entries = [entry_line(entry) for entry in understood.entries]
    return json.dumps([entries, understood.ask], ensure_ascii=False)


def instants(entry: Said) -> list[datetime | None]:
    match entry:
        case Reading():
            return [entry.taken_at]
        case Activity():
            return [entry.ended_at]
        case Correction():
            return [entry.at]
    return []


@settings(max_examples=400, deadline=None)
@given(MESSAGES, UNITS, ASKED, LANGUAGES, st.sampled_from(By))
def test_any_text_gives_a_valid_answer(
    text: str, unit: Unit, asked: Asked | None, language: str, by: By
) -> None:
    understood = read(text, at=AT, unit=unit, asked=asked, language=language, by=by)
    assert understood.entries or understood.ask is not None
    assert lines(understood)
    for entry in understood.entries:
        if isinstance(entry, Reading) and entry.value is not None:
            assert plausible(entry.value, entry.unit)
        if isinstance(entry, Meal) and entry.started_at is not None:
            assert entry.started_at <= AT + timedelta(minutes=60)
        assert all(moment is None or moment <= AT for moment in instants(entry))


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("unit", Unit)
@pytest.mark.parametrize("asked", [None, *Asked])
def test_a_number_alone_is_read_as_the_long_way_would(
    language: str, unit: Unit, asked: Asked | None, monkeypatch: pytest.MonkeyPatch
) -> None:
    numbers = [*range(1200), 1830, 2026, 4000, *(place / 10 for place in range(400))]
    texts = [f"{number}{mark}" for number in numbers for mark in ("", "!")]

    def answers() -> list[Understood]:
        return [read(text, at=AT, unit=unit, asked=asked, language=language) for text in texts]

    short = answers()
    monkeypatch.setattr("bot.parser.values.alone", lambda _page: None)
    assert short == answers()


@settings(max_examples=200, deadline=None)
@given(st.lists(PIECES.filter(lambda piece: piece.isascii()), min_size=1, max_size=8))
def test_spaces_and_line_breaks_make_no_difference(pieces: list[str]) -> None:
    assert lines(reading(" ".join(pieces))) == lines(reading("\n  ".join(pieces)))


@settings(max_examples=200, deadline=None)
@given(st.lists(PIECES.filter(lambda p: p.isascii() and p not in {"HI", "LO"}), max_size=8))
def test_case_makes_no_difference(pieces: list[str]) -> None:
    text = " ".join(pieces)
    assert lines(reading(text)).lower() == lines(reading(text.lower())).lower()


@settings(max_examples=200, deadline=None)
@given(st.lists(PIECES.filter(str.isascii), min_size=1, max_size=8))
def test_width_of_digits_makes_no_difference(pieces: list[str]) -> None:
    text = " ".join(pieces)
    for first in ("０", "٠", "۰"):
        other = text.translate({ord(str(digit)): ord(first) + digit for digit in range(10)})
        assert lines(reading(other)) == lines(reading(text))


@pytest.mark.parametrize("mark", ["\u200b", "\u200e", "\u202e", "\u2066", "\ufeff", "\u00ad"])
def test_invisible_marks_make_no_difference(mark: str) -> None:
    text = "142 before, rice and beans"
    assert lines(reading(mark + mark.join(text) + mark)) == lines(reading(text))


NEVER = [
    "{} g rice", "{} ml juice", "{} eggs", "{} slices of bread", "{} units", "took {} units of insulin",
    "{} mg metformin", "metformin {}", "{} kg", "bp {}/60", "pulse {}", "{} min walk", "{} steps",
    "walked {} km", "walked {} minutes", "a1c {}", "$ {}", "bus {}", "room {}", "{} years old",
    "call 0712 {} 678", "{} people", "E-{}", "cholesterol {}", "weight {}", "{} strips left",
]  # fmt: skip


@settings(max_examples=300, deadline=None)
@given(st.sampled_from(NEVER), st.integers(2, 50).map(lambda step: step * 7), UNITS, ASKED)
def test_digits_of_other_things_are_never_readings(
    pattern: str, number: int, unit: Unit, asked: Asked | None
) -> None:
    if pattern == "{} eggs":
        number %= 20
    if pattern == "bp {}/60":
        number += 60
    assert values(reading(pattern.format(number), unit, asked)) == []


MOMENTS = ["before", "after", "fasting", "bedtime", "recheck", "after walk", ""]


@settings(max_examples=200, deadline=None)
@given(st.integers(34, 600), st.sampled_from(MOMENTS))
def test_a_written_out_reading_reads_back(value: int, moment: str) -> None:
    first = reading(f"{value} mg/dL {moment}")
    (entry,) = first.entries
    assert isinstance(entry, Reading)
    assert entry.value == value
    again = reading(f"{entry.value:g} {entry.unit} {entry.moment.value.replace('_', ' ')}")
    if entry.moment.value not in {"unstated"}:
        expected = entry.moment.value.replace("_activity", "_activity")
        assert [each.moment.value for each in again.entries if isinstance(each, Reading)] == [
            expected
        ]


@settings(max_examples=100, deadline=None)
@given(st.integers(11, 333).map(lambda tenths: tenths / 10))
def test_mmol_reads_back(value: float) -> None:
    (entry,) = reading(f"{value} mmol/L", Unit.MG_DL).entries
    assert isinstance(entry, Reading)
    assert (entry.value, entry.unit) == (value, Unit.MMOL_L)


HOSTILE = [
    "1" * LONGEST, "(" * 2048 + ")" * 2048, "[[[[{{{{142}}}}]]]]", "\u202e142\u202c", "\x00\x07\x1b[31m",
    "<script>alert(142)</script>", "```\nx = 142\n```", "*_~`|>#+-=|{}.!", "142\x00", "", " ", "\n",
    "\ud800", "a\u0301" * 1000, "٣" * 100, "🍚" * 500, "142 " * 1024, "rice, " * 682,
]  # fmt: skip


@pytest.mark.parametrize("text", HOSTILE)
@pytest.mark.parametrize("asked", [None, Asked.AFTER_MEAL, Asked.MEAL])
def test_hostile_text_is_asked_about_or_ignored(text: str, asked: Asked | None) -> None:
    understood = reading(text, asked=asked)
    assert understood.entries or understood.ask in set(Ask)
    assert all(
        char >= " " for entry in understood.entries for char in json.dumps(entry_line(entry))
    )
