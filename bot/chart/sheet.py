"""One sheet of paper, used again and again: ink goes on at once, in pixels from the top left.

The figure, its canvas and one artist of each sort are made once in a process. Laying out axes
and ticks, and a new figure a chart, is what makes the plain way of plotting slow; a sheet has
none of them.
"""

from dataclasses import dataclass
from io import BytesIO
from typing import Literal

import numpy as np
from matplotlib.backends.backend_agg import FigureCanvasAgg, RendererAgg
from matplotlib.figure import Figure
from matplotlib.lines import Line2D
from matplotlib.patches import Rectangle
from matplotlib.transforms import Affine2D
from PIL import Image

from bot.chart.fonts import drawable
from bot.chart.palette import BITS_STORED, INK, PAPER, indexed, palette
from bot.chart.stamps import DPI, press, stamp_of, width_of

#: zlib's levels: the thorough one saves a twelfth and takes ten times as long.
QUICK, THOROUGH = 5, 9
MOST_BYTES = 60_000

Align = Literal["left", "center", "right"]
Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Style:
    """How words look: size in pixels, ink, weight."""

    size: float
    ink: str = INK
    bold: bool = False


@dataclass(frozen=True, slots=True)
class Written:
    """One line of words with its place: the left end of its baseline, and its width."""

    left: float
    baseline: float
    width: float
    text: str
    style: Style


@dataclass(frozen=True, slots=True)
class Shape:
    """How a mark looks: matplotlib's marker, size in pixels, filled with ink or with paper."""

    marker: str
    size: float
    ink: str = INK
    filled: bool = True


class Sheet:
    """Paper of a fixed width and any height; all places and sizes are those of full size."""

    def __init__(self, width: int) -> None:
        self.width = width
        self.height = 0.0
        self._figure = Figure(dpi=DPI, facecolor=PAPER)
        self._canvas = FigureCanvasAgg(self._figure)
        self._downwards = Affine2D()
        self._line = Line2D([], [], transform=self._downwards)
        self._mark = Line2D([], [], transform=self._downwards, linestyle="none")
        self._block = Rectangle((0, 0), 1, 1, transform=self._downwards, linewidth=0)
        for artist in (self._line, self._mark, self._block):
            artist.set_figure(self._figure)
        self.start(width)

    def start(self, height: float, *, size: float = 1.0, soft: bool = True) -> None:
        """Take a fresh sheet, `size` times as large as full size.

        Soft edges of letters take twice the bytes of hard ones.
        """
        self.height = height
        self._size, self._soft = size, soft
        self._figure.set_dpi(DPI * size)
        self._figure.set_size_inches(self.width / DPI, height / DPI, forward=False)
        # matplotlib leaves the methods of its Agg canvas and renderer without types.
        self._renderer: RendererAgg = self._canvas.get_renderer()  # type: ignore[no-untyped-call]
        self._renderer.clear()
        self._pixels = np.asarray(self._renderer.buffer_rgba())
        self._downwards.clear().scale(size, -size).translate(0, self._renderer.height)
        self._figure.patch.draw(self._renderer)

    def write(self, at: Point, text: str, style: Style, align: Align = "left") -> Written:
        """Lay out one line with its baseline at `at`, without inking it."""
        width = self.width_of(text, style)
        left = at[0] - {"left": 0.0, "center": width / 2, "right": width}[align]
        return Written(left, at[1], width, drawable(text), style)

    def ink(self, written: Written) -> None:
        """Ink a line of words."""
        if not written.text:
            return
        style = written.style
        stamp = stamp_of(written.text, style.size * self._size, bold=style.bold, soft=self._soft)
        at = (written.left * self._size, written.baseline * self._size)
        press(self._pixels, stamp, at, style.ink)

    def words(self, at: Point, text: str, style: Style, align: Align = "left") -> None:
        """Lay out and ink one line."""
        self.ink(self.write(at, text, style, align))

    def block(self, corner: Point, opposite: Point, ink: str) -> None:
        """Fill a rectangle."""
        (left, top), (right, bottom) = corner, opposite
        self._block.set_bounds(left, top, right - left, bottom - top)
        self._block.set_facecolor(ink)
        self._block.draw(self._renderer)

    def line(
        self,
        start: Point,
        end: Point,
        ink: str,
        width: float,
        dashes: tuple[float, float] | None = None,
    ) -> None:
        """Draw a straight line; `dashes` are lengths on and off, in widths of the line."""
        self._line.set_data((start[0], end[0]), (start[1], end[1]))
        self._line.set_color(ink)
        self._line.set_linewidth(width)
        self._line.set_linestyle("-" if dashes is None else (0, dashes))
        self._line.draw(self._renderer)

    def dots(self, start: Point, end: Point, ink: str, size: float, apart: float) -> None:
        """Draw a line of dots that reaches from one point to the other."""
        count = max(int(np.hypot(end[0] - start[0], end[1] - start[1]) // apart), 1) + 1
        self._mark.set_data(
            np.linspace(start[0], end[0], count), np.linspace(start[1], end[1], count)
        )
        self._set_shape(Shape("o", size, ink))
        self._mark.draw(self._renderer)

    def mark(self, at: Point, shape: Shape) -> None:
        """Set a mark centred at `at`."""
        self._mark.set_data((at[0],), (at[1],))
        self._set_shape(shape)
        self._mark.draw(self._renderer)

    def width_of(self, text: str, style: Style) -> float:
        """How wide a line of words is, in pixels of full size."""
        return width_of(drawable(text), style.size, bold=style.bold)

    def png(self) -> bytes:
        """The sheet as it stands: a PNG of few colours, with nothing in it but the picture."""
        image = Image.fromarray(indexed(self._pixels))
        image.putpalette(palette().tobytes())
        quick = _png(image, QUICK)
        return quick if len(quick) <= MOST_BYTES else _png(image, THOROUGH)

    def _set_shape(self, shape: Shape) -> None:
        edge = shape.size / 5
        self._mark.set_marker(shape.marker)
        self._mark.set_markersize(shape.size - edge)
        self._mark.set_markeredgewidth(edge)
        self._mark.set_markeredgecolor(shape.ink)
        self._mark.set_markerfacecolor(shape.ink if shape.filled else PAPER)


def _png(image: Image.Image, level: int) -> bytes:
    paper = BytesIO()
    image.save(paper, format="PNG", bits=BITS_STORED, compress_level=level)
    return paper.getvalue()
