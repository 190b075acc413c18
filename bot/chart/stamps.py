"""Words as stamps: drawn once, inked often.

Shaping and drawing letters takes most of the time of a chart, and most of its words come again
in the next one: weekdays, names of meals, three-digit numbers. A stamp is how much of each
pixel a line of words covers; the cache is bounded, so a process that draws for months stays as
small as after its first thousand charts.
"""

from dataclasses import dataclass
from functools import cache, lru_cache

import numpy as np
from matplotlib.backends.backend_agg import RendererAgg
from matplotlib.figure import Figure
from matplotlib.text import Text
from numpy.typing import NDArray

from bot.chart.fonts import font_for

#: At 72 dots an inch a point is a pixel.
DPI = 72

#: Room round the letters for what leans out of their box.
PAD = 3

MOST_STAMPS = 1500  # of some 5 kB each
MOST_WIDTHS = 6000


@dataclass(frozen=True, slots=True)
class Stamp:
    """Coverage (height, width) from 0 to 255, and where in it the left end of the baseline is."""

    coverage: NDArray[np.uint8]
    left: int
    baseline: int


@lru_cache(maxsize=MOST_WIDTHS)
def width_of(text: str, size: float, *, bold: bool) -> float:
    """How wide a line of words is, in pixels."""
    return _box(text, size, bold=bold)[0]


@lru_cache(maxsize=MOST_STAMPS)
def stamp_of(text: str, size: float, *, bold: bool, soft: bool) -> Stamp:
    """The stamp of a line of words that is not empty; `soft` edges or hard ones."""
    width, height, descent = _box(text, size, bold=bold)
    wide, high = (int(np.ceil(side)) + 2 * PAD for side in (width, height))
    # matplotlib leaves the methods of its Agg renderer without types.
    renderer = RendererAgg(wide, high, DPI)  # type: ignore[no-untyped-call]
    line = _line()
    line.set_text(text)
    line.set_fontproperties(font_for(text, size, bold=bold))
    line.set_position((PAD, PAD + np.ceil(descent)))
    line.set_antialiased(soft)
    line.draw(renderer)
    # A copy of one channel: a view would keep all four, and the renderer, alive.
    coverage = np.asarray(renderer.buffer_rgba())[:, :, 3].copy()  # type: ignore[no-untyped-call]
    return Stamp(coverage, PAD, high - PAD - int(np.ceil(descent)))


def press(pixels: NDArray[np.uint8], stamp: Stamp, at: tuple[float, float], ink: str) -> None:
    """Ink the stamp into pixels (height, width, 4), its baseline's left end at `at`."""
    left, top = round(at[0]) - stamp.left, round(at[1]) - stamp.baseline
    high, wide = stamp.coverage.shape
    cut_left, cut_top = max(-left, 0), max(-top, 0)
    ground = pixels[top + cut_top : top + high, left + cut_left : left + wide, :3]
    coverage = stamp.coverage[cut_top:, cut_left:][: ground.shape[0], : ground.shape[1]]
    part = coverage[:, :, None].astype(np.uint16)
    colour = np.array([int(ink[start : start + 2], 16) for start in (1, 3, 5)], dtype=np.uint16)
    ground[:] = (ground * (255 - part) + colour * part + 127) // 255


def _box(text: str, size: float, *, bold: bool) -> tuple[float, float, float]:
    """Width, height and descent in pixels."""
    font = font_for(text, size, bold=bold)
    width, height, descent = _ruler().get_text_width_height_descent(  # type: ignore[no-untyped-call]
        text, font, ismath=False
    )
    return float(width), float(height), float(descent)


@cache
def _ruler() -> RendererAgg:
    return RendererAgg(1, 1, DPI)  # type: ignore[no-untyped-call]


@cache
def _line() -> Text:
    line = Text(parse_math=False, color="black")
    line.set_figure(Figure(dpi=DPI))
    return line
