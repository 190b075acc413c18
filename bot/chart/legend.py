"""The words that explain the marks: only of those that the picture shows."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from bot.chart.marks import AFTER, AFTER_OUTSIDE, BEFORE, LONE, draw_stroke
from bot.chart.palette import FAINT, MOVING, QUIET_INK
from bot.chart.sheet import Sheet, Style
from bot.picture import Joint, Judged, Picture, Role

WORDS = Style(29, QUIET_INK)
SYMBOL_WIDTH = 48
LINE_HEIGHT = 44
BETWEEN = 34

Sign = Callable[[Sheet, float, float], None]


@dataclass(frozen=True, slots=True)
class Key:
    """One mark with its words."""

    sign: Sign
    words: str


def legend_lines(sheet: Sheet, picture: Picture, width: float) -> list[list[Key]]:
    """The keys, broken into lines that fit."""
    lines: list[list[Key]] = [[]]
    used = 0.0
    for key in _keys(picture):
        needed = SYMBOL_WIDTH + sheet.width_of(key.words, WORDS) + BETWEEN
        if lines[-1] and used + needed - BETWEEN > width:
            lines.append([])
            used = 0.0
        lines[-1].append(key)
        used += needed
    return [line for line in lines if line]


def draw_legend(sheet: Sheet, lines: list[list[Key]], left: float, top: float) -> None:
    """Draw the keys, the first line's middle half a line below `top`."""
    for number, line in enumerate(lines):
        y = top + (number + 0.5) * LINE_HEIGHT
        x = left
        for key in line:
            key.sign(sheet, x + SYMBOL_WIDTH / 2 - 3, y)
            sheet.words((x + SYMBOL_WIDTH, y + WORDS.size * 0.36), key.words, WORDS)
            x += SYMBOL_WIDTH + sheet.width_of(key.words, WORDS) + BETWEEN


def _keys(picture: Picture) -> Iterator[Key]:
    legend = picture.legend
    marks = [mark for row in picture.rows for mark in row.marks]
    roles = {mark.role for mark in marks}
    joints = {row.joint for row in picture.rows}
    if Role.BEFORE in roles:
        yield Key(lambda sheet, x, y: sheet.mark((x, y), BEFORE), legend.before)
    if Role.AFTER in roles:
        yield Key(lambda sheet, x, y: sheet.mark((x, y), AFTER), legend.after)
    if any(mark.judged is Judged.OUTSIDE for mark in marks):
        yield Key(lambda sheet, x, y: sheet.mark((x, y), AFTER_OUTSIDE), legend.outside)
    if Joint.ACTIVITY in joints:
        yield Key(_stroke_sign(Joint.ACTIVITY, MOVING), legend.activity)
    if Joint.UNCOUNTED in joints:
        yield Key(_stroke_sign(Joint.UNCOUNTED, FAINT), legend.uncounted)
    if Role.LONE in roles:
        yield Key(lambda sheet, x, y: sheet.mark((x, y), LONE), legend.lone)


def _stroke_sign(joint: Joint, ink: str) -> Sign:
    return lambda sheet, x, y: draw_stroke(sheet, joint, (x - 18, y), (x + 18, y), ink)
