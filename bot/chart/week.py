"""The chart of the week, laid out as a diary: a line a meal, read from the top to the bottom.

At the left stand the weekday, the meal and the dish; at the right a stroke goes from the value
before the meal to the one two hours after it, across the two goals, which run down the page.
Further to the right is higher. A phone 360 pixels wide shows the paper at a third: no word is
smaller than 29 pixels here, which is about 10 there.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from threading import local

from bot.chart.cutting import cut, wrapped
from bot.chart.legend import LINE_HEIGHT, Key, draw_legend, legend_lines
from bot.chart.marks import Spot, draw_marks, numbers_of, spots_of
from bot.chart.palette import ALERT, BAND, FAINT, QUIET_INK, RULE
from bot.chart.scale import Scale, scale_for
from bot.chart.sheet import MOST_BYTES, Sheet, Style, Written
from bot.picture import GoalLines, Joint, Picture, Row

WIDTH = 1080
LEAST_HEIGHT = 680
MARGIN = 30
LABELS_FROM = 130  # names of meals and dishes
NOTE_WIDTH = 560
PLOT_FROM, PLOT_TO = 570, 946  # the ends of the scale; numbers are written beyond them

ROOMY, NARROW, NOTE = 94, 56, 42  # heights of a row, and of a note below it
ROOMY_ROWS = 16  # more rows than this are narrow: the dish stands beside the meal's name
ASIDE = 7  # room between a goal's line and the words for which it steps aside

TITLE = Style(46, bold=True)
NAME = Style(33, bold=True)
DETAIL = Style(30, QUIET_INK)
SMALL = Style(29, QUIET_INK)
CAUTION = Style(31, ALERT, bold=True)
SAID = Style(36)


@dataclass(frozen=True, slots=True)
class Edition:
    """How a week is printed: the size of the paper, the edges of its letters, the most rows."""

    size: float
    soft: bool
    rows: int


#: The finest edition that has room for a week and stays below 60 kB is printed. Those for a
#: crowd leave rows out where there are too many, and their last line tells how many.
FINE = (Edition(1, True, 8), Edition(1, False, 24))
CROWDED = (Edition(0.75, False, 54), Edition(0.75, False, 32), Edition(0.75, False, 16))


@dataclass(frozen=True, slots=True)
class Line:
    """A row with its place on the paper; `opens` tells that a day begins with it."""

    row: Row
    top: float
    height: float
    spots: list[Spot]
    words: list[Written]
    opens: bool


class _Desk(local):
    """The one sheet of a thread, made when it is first drawn on."""

    def __init__(self) -> None:
        self.sheet = Sheet(WIDTH)


_desk = _Desk()


def draw_week(picture: Picture) -> bytes:
    """Draw the week as a PNG."""
    fine = [edition for edition in FINE if edition.rows >= len(picture.rows)]
    png = b""
    for edition in (*fine, *CROWDED):
        png = _printed(picture, edition)
        if len(png) <= MOST_BYTES:
            break
    return png


def _printed(picture: Picture, edition: Edition) -> bytes:
    sheet = _desk.sheet
    keys = legend_lines(sheet, picture, WIDTH - 2 * MARGIN)
    head = _Head(len(keys), len(picture.cautions), picture.goals is not None)
    scale = scale_for(picture, PLOT_FROM, PLOT_TO)
    lines = lines_of(sheet, _shown(picture, edition.rows), scale, head.bottom)
    end = lines[-1].top + lines[-1].height if lines else head.bottom
    sheet.start(max(end + MARGIN, LEAST_HEIGHT), size=edition.size, soft=edition.soft)
    if picture.goals is not None and lines:
        _draw_goals(sheet, picture.goals, scale, head, lines)
    _draw_head(sheet, picture, keys, head)
    for line in lines:
        _draw_line(sheet, line)
    if not lines:
        _draw_empty(sheet, picture.empty, head.bottom)
    return sheet.png()


@dataclass(frozen=True, slots=True)
class _Head:
    """Where the parts of the head end, from the top."""

    key_lines: int
    cautions: int
    goals: bool

    @property
    def title(self) -> float:
        return 104

    @property
    def legend(self) -> float:
        return self.title + self.key_lines * LINE_HEIGHT

    @property
    def alerts(self) -> float:
        return self.legend + (self.cautions * 46 + 24 if self.cautions else 0)

    @property
    def bottom(self) -> float:
        return self.alerts + (100 if self.goals else 24)


def _shown(picture: Picture, most: int) -> Sequence[Row]:
    """The rows that there is room for, and how many are left out.

    Rows with a caution stay; of the others lone readings go first, then the end of the week.
    """
    rows = picture.rows
    if len(rows) <= most:
        return rows
    by_weight = sorted(range(len(rows)), key=lambda index: (_weight(rows[index]), index))
    kept = sorted(by_weight[: most - 1])
    more = picture.more.format(count=len(rows) - len(kept))
    return [*(rows[index] for index in kept), Row(day="", name="", detail=more)]


def _weight(row: Row) -> int:
    if any(mark.alert is not None for mark in row.marks):
        return 0
    return 2 if row.joint is Joint.NONE else 1


def lines_of(sheet: Sheet, rows: Sequence[Row], scale: Scale, top: float) -> list[Line]:
    """Lay the rows out below `top`; nothing is inked yet."""
    roomy = len(rows) <= ROOMY_ROWS
    lines: list[Line] = []
    day = ""
    for row in rows:
        height = (ROOMY if roomy else NARROW) + (NOTE if row.note else 0)
        spots = spots_of(row, scale, top + (46 if roomy and not row.note else 29))
        words = numbers_of(sheet, row, spots)
        outer = min((one.left for one in words), default=PLOT_FROM) - ASIDE
        marked = min((spot.x for spot in spots), default=PLOT_FROM) - 2 * ASIDE
        right = min(outer, marked, PLOT_FROM) if row.marks else PLOT_TO
        words += _labels(sheet, row, top, right, roomy=roomy)
        if row.note:
            note = _cut(sheet, row.note, NOTE_WIDTH, SMALL)
            at = (WIDTH - MARGIN, top + height - 20)
            words.append(sheet.write(at, note, SMALL, "right"))
        lines.append(Line(row, top, height, spots, words, opens=row.day != day))
        top, day = top + height, row.day
    return lines


def _labels(sheet: Sheet, row: Row, top: float, right: float, *, roomy: bool) -> list[Written]:
    """Name and detail: one below the other where there is room, else side by side."""
    title = _cut(sheet, row.name, right - LABELS_FROM, NAME)
    name = sheet.write((LABELS_FROM, top + 40), title, NAME)
    left = LABELS_FROM if roomy or not row.name else LABELS_FROM + name.width + 14
    detail = _cut(sheet, row.detail, right - left, DETAIL)
    return [name, sheet.write((left, top + (79 if roomy else 40)), detail, DETAIL)]


def _draw_head(sheet: Sheet, picture: Picture, keys: list[list[Key]], head: _Head) -> None:
    unit_from = WIDTH - MARGIN - sheet.width_of(picture.unit, DETAIL)
    title = _cut(sheet, picture.title, unit_from - 2 * MARGIN, TITLE)
    sheet.words((MARGIN, 74), title, TITLE)
    sheet.words((unit_from, 74), picture.unit, DETAIL)
    draw_legend(sheet, keys, MARGIN, head.title)
    if picture.cautions:
        sheet.block((MARGIN, head.legend + 14), (MARGIN + 10, head.alerts - 6), ALERT)
    for number, caution in enumerate(picture.cautions):
        words = _cut(sheet, caution, WIDTH - 2 * MARGIN - 30, CAUTION)
        sheet.words((MARGIN + 28, head.legend + 46 + 46 * number), words, CAUTION)


def _draw_goals(
    sheet: Sheet, goals: GoalLines, scale: Scale, head: _Head, lines: Sequence[Line]
) -> None:
    """Let the goals run down the paper from their own words, aside for every number."""
    upper, lower, bottom = head.alerts + 40, head.alerts + 78, sheet.height - MARGIN
    low, high = scale.x(goals.before_low), scale.x(goals.before_high)
    after = scale.x(goals.after_high)
    sheet.block((low, lower + 12), (high, bottom), BAND)
    words = [one for line in lines for one in line.words]
    for x in (low, high):
        for start, end in _clear(x, lower + 12, bottom, words):
            sheet.line((x, start), (x, end), FAINT, 2)
    for start, end in _clear(after, upper + 12, bottom, words):
        sheet.line((after, start), (after, end), FAINT, 4, (3, 2))
    sheet.words((high + 2, lower), goals.before_word, SMALL, "right")
    room = WIDTH - MARGIN - sheet.width_of(goals.after_word, SMALL)
    sheet.words((min(after - 2, room), upper), goals.after_word, SMALL)


def _clear(
    x: float, top: float, bottom: float, words: Sequence[Written]
) -> Iterator[tuple[float, float]]:
    """The parts of a line down the page that run through no words."""
    for one in words:
        if one.left - ASIDE <= x <= one.left + one.width + ASIDE:
            yield top, one.baseline - one.style.size
            top = one.baseline + ASIDE
    yield top, bottom


def _draw_line(sheet: Sheet, line: Line) -> None:
    if line.opens:
        sheet.line((MARGIN, line.top), (WIDTH - MARGIN, line.top), RULE, 2)
        sheet.words((MARGIN, line.top + 40), line.row.day, NAME)
    draw_marks(sheet, line.row, line.spots)
    for words in line.words:
        sheet.ink(words)


def _draw_empty(sheet: Sheet, text: str, top: float) -> None:
    lines = wrapped(text, WIDTH - 4 * MARGIN, lambda part: sheet.width_of(part, SAID))
    for number, words in enumerate(lines):
        sheet.words((WIDTH / 2, top + 130 + number * 54), words, SAID, "center")


def _cut(sheet: Sheet, text: str, room: float, style: Style) -> str:
    return cut(text, room, lambda part: sheet.width_of(part, style))
