"""The marks of one row: what each looks like, and where its number is written.

Meaning is never in a hue alone. Open is before, filled is two hours after; a circle is within
its goal, a diamond is not; a triangle brought a caution and points the way it went; at the edge
of the paper stands what the meter could not measure. Thin and dashed does not count.
"""

from dataclasses import dataclass
from itertools import pairwise

from bot.chart.palette import ALERT, FAINT, INK, MOVING, OUTSIDE, QUIET_INK, WITHIN
from bot.chart.scale import Scale
from bot.chart.sheet import Shape, Sheet, Style, Written
from bot.picture import Alert, Joint, Judged, Mark, Off, Role, Row

BEFORE = Shape("o", 27, WITHIN, filled=False)
AFTER = Shape("o", 25, WITHIN)
AFTER_OUTSIDE = Shape("D", 22, OUTSIDE)
LONE = Shape("o", 17, FAINT, filled=False)

STROKE, FAINT_STROKE, STEP = 8.0, 4.0, 9.0
DASHES = (2.0, 1.6)
STEP_LENGTH = 17.0

NUMBER = 31
GAP = 24  # from the middle of a mark to its number
TOO_NEAR = 22  # two marks nearer than this hide each other
LIFT = 11
BEYOND = 34  # how far beyond the ends of the scale stands what the meter could not measure

INKS = {Judged.WITHIN: WITHIN, Judged.OUTSIDE: OUTSIDE, Judged.NOT: INK}


@dataclass(frozen=True, slots=True)
class Spot:
    """A mark with its place on the paper."""

    mark: Mark
    x: float
    y: float


def spots_of(row: Row, scale: Scale, y: float) -> list[Spot]:
    """Where the marks of a row stand: two that would hide each other, one above the other."""
    spots = [Spot(mark, _x_of(mark, scale), y) for mark in row.marks]
    if row.joint is Joint.NONE or len(spots) != 2:
        return spots
    first, second = spots
    if abs(first.x - second.x) >= TOO_NEAR:
        return spots
    return [Spot(first.mark, first.x, y - LIFT), Spot(second.mark, second.x, y + LIFT)]


def numbers_of(sheet: Sheet, row: Row, spots: list[Spot]) -> list[Written]:
    """The numbers of a row, each beside its mark, on the outer side of a pair."""
    if row.joint is Joint.NONE:
        return _numbers_of_lone(sheet, spots)
    leftmost = min(spots, key=lambda spot: spot.x, default=None)
    return [
        _number(sheet, spot, leftward=spot is leftmost and _goes_left(spot, spots))
        for spot in spots
    ]


def _numbers_of_lone(sheet: Sheet, spots: list[Spot]) -> list[Written]:
    """Numbers of readings that brought a caution, where there is room.

    The row's own words name every value; marks side by side have no room for numbers.
    """
    numbers: list[Written] = []
    for spot in spots:
        if spot.mark.alert is None:
            continue
        number = _number(sheet, spot, leftward=spot.mark.off is Off.LOW)
        others = [other.x for other in spots if other is not spot]
        if not any(number.left - GAP < x < number.left + number.width + GAP for x in others):
            numbers.append(number)
    return numbers


def draw_marks(sheet: Sheet, row: Row, spots: list[Spot]) -> None:
    """Ink a row's stroke and marks."""
    if row.joint is not Joint.NONE:
        for start, end in pairwise(spots):
            ink = _ink(end.mark, row.joint)
            draw_stroke(sheet, row.joint, (start.x, start.y), (end.x, end.y), ink)
    for spot in spots:
        sheet.mark((spot.x, spot.y), _shape(spot.mark, row.joint))


def draw_stroke(
    sheet: Sheet, joint: Joint, start: tuple[float, float], end: tuple[float, float], ink: str
) -> None:
    """Join two values: solid if the pair counts, dashed if not, footsteps for an activity."""
    if joint is Joint.COUNTED:
        sheet.line(start, end, ink, STROKE)
    elif joint is Joint.ACTIVITY:
        sheet.dots(start, end, MOVING, STEP, STEP_LENGTH)
    else:
        sheet.line(start, end, FAINT, FAINT_STROKE, DASHES)


def _shape(mark: Mark, joint: Joint) -> Shape:
    filled = mark.role is Role.AFTER
    ink = _ink(mark, joint)
    if mark.off is not None:
        return Shape(">" if mark.off is Off.HIGH else "<", 30, ink)
    if mark.alert is not None:
        return Shape("v" if mark.alert is Alert.LOW else "^", 29, ink, filled)
    if mark.role is Role.LONE:
        return LONE
    if joint is Joint.ACTIVITY:
        return Shape("s", 21, ink, filled)
    if mark.judged is Judged.OUTSIDE:
        return Shape("D", 22, ink, filled)
    return Shape("o", 25 if filled else 27, ink, filled)


def _ink(mark: Mark, joint: Joint) -> str:
    if mark.alert is not None:
        return ALERT
    if joint is Joint.ACTIVITY:
        return MOVING
    if joint is not Joint.COUNTED or mark.role is Role.LONE:
        return FAINT
    return INKS[mark.judged]


def _x_of(mark: Mark, scale: Scale) -> float:
    if mark.off is None and mark.at is not None:
        return scale.x(mark.at)
    return scale.left - BEYOND if mark.off is Off.LOW else scale.right + BEYOND


def _goes_left(spot: Spot, spots: list[Spot]) -> bool:
    return spot.mark.off is Off.LOW or (len(spots) > 1 and spot.mark.off is None)


def _number(sheet: Sheet, spot: Spot, *, leftward: bool) -> Written:
    baseline = spot.y + NUMBER * 0.36
    style = _number_style(spot.mark)
    if leftward:
        return sheet.write((spot.x - GAP, baseline), spot.mark.word, style, "right")
    return sheet.write((spot.x + GAP, baseline), spot.mark.word, style)


def _number_style(mark: Mark) -> Style:
    if mark.alert is not None:
        return Style(NUMBER, ALERT, bold=True)
    if mark.role is Role.AFTER:
        return Style(NUMBER, INK, bold=True)
    return Style(NUMBER, QUIET_INK)
