"""Letters that join, stack and run leftwards on the page to print.

Orders are checked against the examples and rules of the Unicode bidirectional algorithm (UAX 9),
widths against HarfBuzz's own shaping of the whole word.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from io import BytesIO
from pathlib import Path

import pytest
import uharfbuzz
from hypothesis import given, settings
from hypothesis import strategies as st
from pypdf import PdfReader

from bot.chart import draw
from bot.entries import Suggests, Symptom
from bot.export.ink import POINT, Ink, _others, _plain_files
from bot.export.page import pdf_bytes
from bot.export.scripts import Base, clusters, runs
from bot.words.record_page import own
from demo.diary import Diary, somebody

ARABIC, HEBREW = "كشري مع سلطة", "חומוס עם פיתה"
DISHES = (
    ARABIC, "كُشَرِي", HEBREW, "שַׁקְשׁוּקָה", "दाल चावल और सब्ज़ी", "क्षत्रिय थाली", "சாதம் சாம்பார்",
    "ข้าวผัดกุ้งน้ำปลา", "পান্তা ভাত", "ಅನ್ನ ಸಾರು", "ഇഡ്ഡലി", "نان و پنیر می‌خورم", "ශ්‍රී ලංකා බත්",
    "稲荷寿司", "김치찌개",
)  # fmt: skip


def one_font(_letter: str, _before: str | None) -> str:
    return "plain"


def seen(text: str, base: Base = "left_to_right") -> str:
    """The letters as they stand from left to right, before they are shaped."""
    found = runs(text, base, one_font)
    return "".join(run.text[::-1] if run.leftwards else run.text for run in found)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("rice and beans", "rice and beans"),
        ("אבג", "גבא"),
        ("rice אבג fish", "rice גבא fish"),
        ("rice אבג 12 דהו fish", "rice והד 12 גבא fish"),  # UAX 9, L2: the number keeps its order
        ("אבג (דה)", ")הד( גבא"),  # brackets are turned by the font: BD16, L4
        (f"ate {own('אבג')}, 20 min", "ate גבא, 20 min"),  # an isolate, and its surroundings: X5c
        ("ate אבג, 20 min", "ate 20 ,גבא min"),  # what would be read without it
    ],
)
def test_words_stand_in_the_order_of_the_algorithm(text: str, expected: str) -> None:
    assert seen(text) == expected


def test_a_dish_begins_on_the_side_of_its_first_letter() -> None:
    assert seen("אבג fish", "by_first_letter") == "fish גבא"
    assert seen("fish אבג", "by_first_letter") == "fish גבא"
    assert seen("אבג fish", "left_to_right") == "גבא fish"


def shaped_width(text: str, path: Path, size: float, *, leftwards: bool) -> float:
    """Millimetres of a whole word as HarfBuzz shapes it, without anything of ours."""
    face = uharfbuzz.Face(path.read_bytes())
    font = uharfbuzz.Font(face)
    buffer = uharfbuzz.Buffer()
    buffer.add_str(text)
    buffer.guess_segment_properties()
    buffer.direction = "rtl" if leftwards else "ltr"
    uharfbuzz.shape(font, buffer, {})
    units = sum(position.x_advance for position in buffer.glyph_positions)
    return float(units / face.upem * size * POINT)


@contextmanager
def inked(text: str) -> Iterator[Ink]:
    """A sheet for this text; ending the document closes its fonts."""
    ink = Ink("a4", [text], title="")
    ink.page()
    yield ink
    assert ink.done().startswith(b"%PDF")


def font_named(part: str) -> Path:
    return next(path for path in _others() if part in path.name)


@pytest.mark.parametrize(
    ("word", "font", "leftwards"),
    [
        ("كشري", _plain_files()[""], True),
        ("كُشَرِي", _plain_files()[""], True),  # vowels, which belong to no script of their own
        ("می‌خورم", _plain_files()[""], True),  # a joiner's opposite within a word
        ("क्षत्रिय", font_named("Devanagari"), False),
        ("चावल और", font_named("Devanagari"), False),
        ("சாம்பார்", font_named("Tamil"), False),
        ("ശ്രീ", font_named("Malayalam"), False),
        ("ශ්‍රී", font_named("Sinhala"), False),  # held together by a joiner
        ("น้ำปลา", font_named("Thai"), False),
    ],
)
def test_a_word_is_shaped_as_one(word: str, font: Path, leftwards: bool) -> None:
    expected = shaped_width(word, font, 10, leftwards=leftwards)
    with inked(word) as ink:
        assert ink.words((20, 20), word, 10) == pytest.approx(expected, rel=0.01)


def test_unjoined_letters_would_be_noticed() -> None:
    """Else the test above could not fail: each alone is wider than the word."""
    with inked("كشري") as ink:
        alone = sum(ink.words((20, 20), letter, 10) for letter in "كشري")
        assert alone > 1.2 * ink.words((20, 20), "كشري", 10)


@pytest.mark.parametrize("dish", DISHES)
def test_a_cut_leaves_whole_letters_and_fits(dish: str) -> None:
    with inked(dish) as ink:
        whole = ink.words((20, 20), dish, 10)
        assert ink.words((20, 20), dish, 10, within=whole * 0.7) <= whole * 0.7
    assert "".join(clusters(dish)) == dish


def test_a_long_word_without_spaces_is_broken_between_letters() -> None:
    word = "ข้าวผัดกุ้งน้ำปลา"
    with inked(word) as ink:
        lines = ink.lines(word, 10, 15)
        assert len(lines) > 1
        assert "".join(lines) == word
        assert all(ink.words((20, 20), line, 10) <= 15 for line in lines)


@given(st.text(st.characters(exclude_categories=["Cs", "Cc"]), max_size=30))
def test_any_text_keeps_all_its_letters(text: str) -> None:
    for base in ("left_to_right", "by_first_letter"):
        found = runs(text, base, one_font)  # type: ignore[arg-type]
        kept = [
            one for one in text if one not in "\N{FIRST STRONG ISOLATE}\N{POP DIRECTIONAL ISOLATE}"
        ]
        assert sorted("".join(run.text for run in found)) == sorted(kept)
    assert "".join(clusters(text)) == text


ODD = (
    "\N{RIGHT-TO-LEFT OVERRIDE}\N{FIRST STRONG ISOLATE}\N{ZERO WIDTH JOINER}"
    "\N{COMBINING ACUTE ACCENT} (1,\t"
)


@settings(max_examples=15)
@given(st.text(st.sampled_from("".join(DISHES) + ODD), max_size=20))
def test_any_text_can_be_written(text: str) -> None:
    with inked(text) as ink:
        ink.words((20, 20), text, 8, within=40, base="by_first_letter")
        ink.lines(own(text), 8, 40)


def crowded(dishes: tuple[str, ...], *, name: str) -> Diary:
    """A pair every day and two more, in these words; a symptom, an activity, a low."""
    diary = Diary(who=somebody(may_go_low=None, name=name))
    for place, dish in enumerate((*dishes, *dishes)[:17]):
        clock = ("12:30", "19:00")[place // 14]
        diary.meal(place % 14, clock, dish, 100 + place, 150 + 3 * place)
    diary.activity(1, "17:30", "مشي في الحديقة", 20, before=170, after=129)
    diary.reading(4, "11:00", 61)
    felt = "رعشة وتعرق شديد بعد المشي الطويل مع الأولاد في الصباح"
    diary.tell(diary.at(4, "10:59"), Symptom(text=felt, suggests=Suggests.LOW))
    return diary


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_a_fortnight_of_many_scripts_is_one_page(paper: str) -> None:
    content = pdf_bytes([crowded(DISHES, name="فاطمة").record()], draw, paper=paper)  # type: ignore[arg-type]
    [page] = PdfReader(BytesIO(content)).pages
    text = page.extract_text()
    assert "Page 1 of 1" in text
    assert "\N{WHITE VERTICAL RECTANGLE}" not in text, "every letter has a font"
    for number in ("150", "198", "61, low"):
        assert number in text


def test_a_dish_named_as_fpdf_names_the_number_of_pages_stays_a_dish() -> None:
    content = pdf_bytes([Diary().meal(0, "12:30", "{nb} rice", 118, 154).record()], draw)
    assert "{nb} rice" in PdfReader(BytesIO(content)).pages[0].extract_text()
