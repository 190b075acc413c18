"""People name their dishes in their own script."""

from importlib.util import find_spec

import pytest

from bot.chart.fonts import MISSING, PACKAGES, drawable, font_for
from bot.chart.stamps import stamp_of, width_of

DISHES = {
    "Latin": "crème brûlée",
    "Greek": "φασολάδα",
    "Cyrillic": "борщ",
    "Arabic": "أرز مع الدجاج",
    "Hebrew": "חומוס",
    "Devanagari": "दाल चावल",
    "Bengali": "মাছের ঝোল",
    "Tamil": "சாம்பார்",
    "Telugu": "పప్పు",
    "Thai": "ข้าวผัด",
    "Ethiopic": "እንጀራ",
    "Chinese": "麻婆豆腐",
    "Japanese": "ごはんと味噌汁",
    "Korean": "김치찌개",
}


def test_the_declared_fonts_are_here() -> None:
    assert all(find_spec(package) is not None for package in PACKAGES)


@pytest.mark.parametrize("script", DISHES)
def test_a_dish_in_this_script_is_drawn_whole(script: str) -> None:
    dish = DISHES[script]
    assert MISSING not in drawable(dish)
    assert stamp_of(drawable(dish), 30, bold=False, soft=True).coverage.any()


def test_letters_are_joined_and_not_set_one_by_one() -> None:
    """Arabic letters change shape and width when they join: the shaper is at work."""
    word = "الدجاج"
    apart = sum(width_of(letter, 30, bold=False) for letter in word)
    assert width_of(word, 30, bold=False) < apart * 0.9


def test_what_no_font_has_is_seen_to_be_missing() -> None:
    assert drawable("a\U00013000b") == f"a{MISSING}b"  # an Egyptian hieroglyph
    assert drawable("a\ue000b") == f"a{MISSING}b"  # a private character
    assert stamp_of(MISSING, 30, bold=False, soft=True).coverage.any()


def test_what_has_no_shape_leaves_no_box() -> None:
    assert drawable("rice\u200e\ufeff\x07 and\n beans\ufe0f") == "rice and beans"


def test_signs_that_mean_something_elsewhere_are_plain_text() -> None:
    assert drawable("$5 {x} _y_ \\n ^2") == "$5 {x} _y_ \\n ^2"
    assert width_of("$5$", 30, bold=False) > width_of("5", 30, bold=False)


def test_plain_text_asks_for_no_other_font() -> None:
    assert font_for("rice and beans", 30, bold=True).get_family() == ["DejaVu Sans"]
