"""Contrast of the inks, by an outside library's formula.

The limits are those of WCAG 2.2 (W3C Recommendation, 2023), success criteria 1.4.3 (text, 4.5:1)
and 1.4.11 (graphical objects, 3:1). `wcag-contrast-ratio` computes its relative luminance.
"""

from io import BytesIO

import pytest
import wcag_contrast_ratio as wcag  # type: ignore[import-untyped]
from PIL import Image

from bot.chart import draw
from bot.chart.palette import GROUNDS, MARK_INKS, TEXT_INKS, channels, palette
from bot.picture import to_mapping
from bot.words.english.picture import PICTURE
from bot.words.picture import week_picture
from demo.weeks import WEEKS

TEXT, MARKS = 4.5, 3.0


def contrast(one: tuple[int, int, int], other: tuple[int, int, int]) -> float:
    first, second = (tuple(part / 255 for part in colour) for colour in (one, other))
    return float(wcag.rgb(first, second))


@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("ink", TEXT_INKS)
def test_words_stand_out_on_every_ground(ink: str, ground: str) -> None:
    assert contrast(channels(ink), channels(ground)) >= TEXT


@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("ink", MARK_INKS)
def test_marks_and_goals_stand_out_on_every_ground(ink: str, ground: str) -> None:
    assert contrast(channels(ink), channels(ground)) >= MARKS


def test_the_stored_colours_are_the_inks_themselves() -> None:
    stored = {tuple(int(part) for part in colour) for colour in palette()}
    assert len(palette()) <= 16
    assert {channels(colour) for colour in (*GROUNDS, *MARK_INKS)} <= stored


def test_the_drawn_picture_holds_the_inks_and_not_pale_ones_for_them() -> None:
    make, _ = WEEKS["mixed"]
    png = draw(to_mapping(week_picture(make(), PICTURE)))
    image = Image.open(BytesIO(png)).convert("RGB")
    counts = {colour: count for count, colour in image.getcolors(maxcolors=256) or []}
    for ink in TEXT_INKS[:4]:
        assert counts[channels(ink)] > 200, ink
