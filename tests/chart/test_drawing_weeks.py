"""Every week can be drawn: legible on a phone, small, the same each time, and never refused."""

import json
import subprocess
import sys
from dataclasses import replace
from io import BytesIO
from itertools import combinations
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image

from bot.chart import draw, legend, marks, week
from bot.chart.palette import ALERT, channels
from bot.chart.scale import scale_for
from bot.chart.sheet import Sheet, Style, Written
from bot.picture import Picture, Role, from_mapping, to_mapping
from bot.words.english.picture import PICTURE
from bot.words.picture import week_picture
from demo.weeks import WEEKS, crowded

PHONE = 360
LEAST_LETTERS = 9.5  # pixels on the phone; common practice, no source
MOST_BYTES = 60_000
CHUNKS = {b"IHDR", b"PLTE", b"IDAT", b"IEND"}


def picture_of(name: str) -> Picture:
    make, so_far = WEEKS[name]
    return week_picture(make(), PICTURE, so_far=so_far)


def opened(png: bytes) -> Image.Image:
    image = Image.open(BytesIO(png))
    image.load()
    return image


@pytest.mark.parametrize("name", WEEKS)
def test_a_week_is_large_enough_and_small_enough(name: str) -> None:
    png = draw(to_mapping(picture_of(name)))
    image = opened(png)
    assert image.format == "PNG"
    assert image.width >= 800
    assert image.height >= 600
    assert len(png) <= MOST_BYTES


@pytest.mark.parametrize("pairs", range(1, 41, 3))
def test_one_to_forty_pairs(pairs: int) -> None:
    picture = week_picture(crowded(pairs, seed=pairs), PICTURE)
    assert len([row for row in picture.rows if len(row.marks) == 2]) == pairs
    assert len(draw(to_mapping(picture))) <= MOST_BYTES


@pytest.mark.parametrize("count", [16, 24, 25, 40, 54, 120])
def test_the_worst_of_weeks_still_fits(count: int) -> None:
    """Long dishes in a dense script, a note on every row, every caution."""
    row = replace(picture_of("uncounted").rows[1], detail="麻婆豆腐と白いご飯と味噌汁と漬物")
    rows = tuple(
        replace(
            row,
            day=PICTURE.days[number * 7 // count],
            detail=row.detail[number % 7 :] + str(number),
            marks=tuple(
                replace(mark, at=(mark.at or 0) + number, word=f"{100 + number}")
                for mark in row.marks
            ),
        )
        for number in range(count)
    )
    picture = replace(picture_of("uncounted"), rows=rows, cautions=("Caution: low",) * 9)
    assert len(draw(to_mapping(picture))) <= MOST_BYTES


def test_more_rows_than_fit_are_told() -> None:
    picture = picture_of("crowded")
    many = replace(picture, rows=picture.rows * 2)
    with_more = draw(to_mapping(many))
    silent = draw(to_mapping(replace(many, rows=many.rows[: week.CROWDED[0].rows - 1])))
    assert opened(with_more).height > opened(silent).height
    assert "{count}" in picture.more


def test_a_caution_is_the_last_to_be_left_out() -> None:
    """A low among lone readings at the end of a week with too many lines is still drawn."""
    crowd = picture_of("crowded").rows * 2
    low = picture_of("uncounted").rows[-1]
    assert low.marks[0].alert is not None
    picture = replace(picture_of("crowded"), rows=(*crowd, low))
    harmless = replace(low, marks=tuple(replace(mark, alert=None) for mark in low.marks))
    plain = replace(picture, rows=(*crowd, harmless))
    alert = channels(ALERT)
    colours = {colour for _, colour in _colours(draw(to_mapping(picture)))}
    assert alert in colours
    assert alert not in {colour for _, colour in _colours(draw(to_mapping(plain)))}


def _colours(png: bytes) -> list[tuple[int, object]]:
    return list(opened(png).convert("RGB").getcolors(maxcolors=256) or [])


def test_nothing_but_the_picture_is_in_the_file() -> None:
    png, kinds, place = draw(to_mapping(picture_of("mixed"))), [], 8
    while place < len(png):
        length = int.from_bytes(png[place : place + 4], "big")
        kinds.append(png[place + 4 : place + 8])
        place += length + 12
    assert set(kinds) <= CHUNKS


def test_the_outbox_may_keep_the_picture_as_json() -> None:
    for name in WEEKS:
        picture = picture_of(name)
        kept = json.loads(json.dumps(to_mapping(picture)))
        assert from_mapping(kept) == picture
    assert draw(kept) == draw(to_mapping(picture))


def test_what_was_drawn_before_makes_no_difference() -> None:
    mapping = to_mapping(picture_of("mixed"))
    first = draw(mapping)
    for other in ("crowded", "empty", "scripts"):
        draw(to_mapping(picture_of(other)))
        assert draw(mapping) == first


@pytest.mark.parametrize("wrong", [{}, {"title": "x"}, {"goals": 3}])
def test_what_is_no_picture_is_refused(wrong: dict[str, object]) -> None:
    with pytest.raises((KeyError, TypeError, ValueError)):
        draw(wrong)


def test_no_word_is_too_small_for_a_phone() -> None:
    styles = [
        value
        for module in (week, marks, legend)
        for value in vars(module).values()
        if isinstance(value, Style)
    ]
    sizes = [style.size for style in styles] + [marks.NUMBER]
    assert len(styles) >= 7
    assert min(sizes) * PHONE / week.WIDTH >= LEAST_LETTERS


@pytest.mark.parametrize("name", WEEKS)
def test_words_of_a_row_stay_on_the_paper_and_off_each_other(name: str) -> None:
    picture = picture_of(name)
    scale = scale_for(picture, week.PLOT_FROM, week.PLOT_TO)
    lines = week.lines_of(Sheet(week.WIDTH), picture.rows, scale, 200)
    words = [one for line in lines for one in line.words if one.text]
    for one in words:
        assert one.left >= 0
        assert one.left + one.width <= week.WIDTH
    for line in lines:
        for one, other in combinations([one for one in line.words if one.text], 2):
            assert not _overlap(one, other), (one.text, other.text)


def _overlap(one: Written, other: Written) -> bool:
    across = one.left < other.left + other.width and other.left < one.left + one.width
    tall = 0.7  # digits and small letters, of the size
    down = abs(one.baseline - other.baseline) < tall * max(one.style.size, other.style.size)
    return across and down


def test_values_stand_left_to_right_in_their_order() -> None:
    picture = picture_of("mixed")
    scale = scale_for(picture, week.PLOT_FROM, week.PLOT_TO)
    values = sorted(mark.at for row in picture.rows for mark in row.marks if mark.at is not None)
    places = [scale.x(value) for value in values]
    assert places == sorted(places)
    assert places[0] >= week.PLOT_FROM
    assert places[-1] <= week.PLOT_TO


def test_lone_readings_are_faint_and_open() -> None:
    for row in picture_of("many_lone").rows:
        for mark in row.marks:
            if mark.role is Role.LONE:
                assert marks.LONE.size < marks.BEFORE.size
                assert not marks.LONE.filled


@settings(max_examples=25, deadline=None)
@given(text=st.text(max_size=60), name=st.text(max_size=20), caution=st.text(max_size=80))
def test_any_text_is_drawn(text: str, name: str, caution: str) -> None:
    picture = picture_of("one_pair")
    row = replace(picture.rows[0], detail=text, name=name, note=text)
    drawn = replace(picture, rows=(row,), cautions=(caution,), title=text, empty=text)
    assert draw(to_mapping(drawn)).startswith(b"\x89PNG")
    assert draw(to_mapping(replace(drawn, rows=()))).startswith(b"\x89PNG")


def test_a_process_that_never_draws_never_loads_the_library(checkout: Path) -> None:
    """And one that draws never loads pyplot."""
    program = (
        "import sys, json; from bot.chart import draw; assert 'matplotlib' not in sys.modules;"
        "draw(json.load(sys.stdin)); assert 'matplotlib' in sys.modules;"
        "assert 'matplotlib.pyplot' not in sys.modules"
    )
    subprocess.run(
        [sys.executable, "-c", program],
        input=json.dumps(to_mapping(picture_of("one_pair"))),
        text=True,
        check=True,
        cwd=checkout,
    )
