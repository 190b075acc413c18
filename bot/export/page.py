"""The printable record: one page a fortnight, A4 or Letter, legible as a grey copy.

What stands on a page comes in a `RecordPage`; here it gets its place. The lists and the table of
meals have the first claim on the room, and the charts take what is left; where that is too little
for them to be read, the table stands without them.
"""

from collections.abc import Iterable, Iterator
from dataclasses import fields, is_dataclass
from io import BytesIO
from typing import Any

from PIL import Image

from bot.export import Draw, Paper
from bot.export.ink import RULE, SOFT, Ink
from bot.record import Record
from bot.words.language import language
from bot.words.record_page import Block, MealRow, RecordPage, Value
from bot.words.record_page_filling import record_pages

MARGIN, GAP = 12.0, 5.0
#: Sizes of letters, in points.
TITLE, HEAD, BODY, SMALL = 16.0, 9.0, 8.0, 7.0
#: Height of a line, in millimetres.
LINE = 3.7

#: A row of the table: at its best, and at the least that is still legible.
ROW_BEST, ROW_LEAST = 4.6, 3.3
#: The charts' height at most; and their width at the least, so that letters of a 37th of it have
#: 5 points.
CHARTS_MOST, CHART_LEAST = 95.0, 65.0
#: Lines of a list; those beyond are counted.
LIST_LINES = 9

#: Where the columns of the table begin, as parts of the width; numbers end before the next, with
#: room for a mark.
COLUMNS = (0.0, 0.125, 0.195, 0.50, 0.585, 0.67, 0.745, 1.0)
FIRST_NUMBER, LAST_NUMBER = 3, 5
MARK = 4.5


def pdf_bytes(
    records: Iterable[Record], draw: Draw, *, paper: Paper = "a4", whole: bool = False
) -> bytes:
    """The last fortnight of each of these records, or the whole of them, as one PDF."""
    pages = [
        (page, say.page)
        for record in records
        for say in (language(record.participant.language).record_page,)
        for page in record_pages(record, say, whole=whole)
    ]
    title = pages[0][0].title if pages else ""
    ink = Ink(paper, (text for page, _ in pages for text in _texts(page)), title=title)
    for number, (page, counted) in enumerate(pages, start=1):
        ink.page()
        _Sheet(ink, page).fill(draw, counted.format(number=number, count=len(pages)))
    return ink.done()


def _texts(part: Any) -> Iterator[str]:
    """Every text of a page."""
    if isinstance(part, str):
        yield part
    elif isinstance(part, tuple):
        for one in part:
            yield from _texts(one)
    elif is_dataclass(part):
        for field in fields(part):
            yield from _texts(getattr(part, field.name))


class _Chart:
    """A drawn week; `shape` is its height in parts of its width."""

    def __init__(self, png: bytes) -> None:
        self.png = png
        width, high = Image.open(BytesIO(png)).size
        self.shape = high / width


class _Sheet:
    """One page that is being filled from the top and from the foot towards the charts."""

    def __init__(self, ink: Ink, page: RecordPage) -> None:
        self._ink = ink
        self._page = page
        self._left, self._right = MARGIN, ink.width - MARGIN
        self._width = self._right - self._left
        self._half = (self._width - GAP) / 2

    def fill(self, draw: Draw, counted: str) -> None:
        """Put everything in its place."""
        top = self._head()
        foot = self._foot(counted)
        pairs = (self._page.blocks[:2], self._page.blocks[2:])
        lists = [[self._wrapped(block) for block in two] for two in pairs]
        heights = [max(len(lines) for lines in two) * LINE + 2 * LINE for two in lists]
        bottom = foot - sum(heights)
        charts = [_Chart(draw(chart)) for chart in self._page.charts]
        row, shown, height = self._shares(bottom - top, charts)
        if height:
            top = self._charts(charts, top, height)
        bottom = min(bottom, self._table(top, row, shown) + GAP)
        for two, lines, high in zip(pairs, lists, heights, strict=True):
            for index, (block, wrapped) in enumerate(zip(two, lines, strict=True)):
                self._list(block, wrapped, self._left + index * (self._half + GAP), bottom)
            bottom += high

    def _shares(self, room: float, charts: list["_Chart"]) -> tuple[float, int, float]:
        """Height of a row, how many rows there is room for, height of the charts."""
        rows = max(len(self._page.rows), 1)
        room -= 3 * LINE  # the table's head and legend
        least = max((CHART_LEAST * chart.shape for chart in charts), default=0.0)
        if rows * ROW_LEAST + least > room:
            least = 0.0
        row = min(ROW_BEST, max(ROW_LEAST, (room - least) / rows))
        shown = min(rows, int(room / row))
        return row, shown, min(CHARTS_MOST, room - shown * row) if least else 0.0

    def _head(self) -> float:
        ink, page = self._ink, self._page
        ink.words((self._left, MARGIN + 5), page.title, TITLE, bold=True)
        ink.words((self._right, MARGIN + 5), page.dates, TITLE - 4, bold=True, align="right")
        who = self._width * 0.6
        ink.words((self._left, MARGIN + 10.5), page.who, HEAD, within=who)
        ink.words((self._right, MARGIN + 10.5), page.unit, BODY, grey=SOFT, align="right")
        ink.rule(self._left, self._right, MARGIN + 12.5)
        return max(self._goals(MARGIN + 17), self._figures(MARGIN + 17)) + 1

    def _goals(self, top: float) -> float:
        goals = self._page.goals
        self._ink.words((self._left, top), goals.title, HEAD, bold=True)
        narrow = self._half * 0.85
        for line in (part for one in goals.lines for part in self._ink.lines(one, BODY, narrow)):
            top += LINE
            self._ink.words((self._left, top), line, BODY)
        return top + LINE

    def _figures(self, top: float) -> float:
        """Two columns of names and numbers."""
        start = self._left + self._half * 0.9
        wide = (self._right - start - GAP) / 2
        self._ink.words((start, top), self._page.figures_title, HEAD, bold=True)
        deep = (len(self._page.figures) + 1) // 2
        for index, (name, figure) in enumerate(self._page.figures):
            left = start + (index // deep) * (wide + GAP)
            at = top + (index % deep + 1) * LINE
            self._ink.words((left, at), name, BODY)
            self._ink.words((left + wide, at), figure, BODY, bold=True, align="right")
        return top + (deep + 1) * LINE

    def _charts(self, charts: list["_Chart"], top: float, height: float) -> float:
        """Side by side, in one scale, so that a week can be held against the other."""
        tallest = max(chart.shape for chart in charts)
        wide = min(self._half, height / tallest)
        for index, chart in enumerate(charts):
            # A lone week stands to the left, where the table begins.
            self._ink.image(chart.png, self._left + index * (self._half + GAP), top, wide)
        return top + wide * tallest + 1

    def _table(self, top: float, row: float, shown: int) -> float:
        """The meals, the last ones where there is no room for all; gives where it ends."""
        ink, page = self._ink, self._page
        at = top + LINE
        for index, name in enumerate(page.columns):
            self._cell(index, at, Value(word=name), bold=True)
        ink.rule(self._left, self._right, at + 1.2)
        if not page.rows:
            ink.words((self._left, at + row + 0.5), page.no_rows, BODY)
            return at + row + 0.5
        hidden = len(page.rows) - shown
        if hidden:
            at += row
            more = page.more_rows.format(count=hidden + 1)
            ink.words((self._left, at + 0.5), more, SMALL, grey=SOFT)
            shown -= 1
        for meal in page.rows[len(page.rows) - shown :]:
            at += row
            for index, value in enumerate(_cells(meal)):
                self._cell(index, at + 0.5, value)
        ink.rule(self._left, self._right, at + 1.7)
        ink.words((self._left, at + LINE + 1.4), page.legend, SMALL, grey=SOFT, within=self._width)
        return at + LINE + 1.4

    def _cell(self, index: int, at: float, value: Value, *, bold: bool = False) -> None:
        start = self._left + COLUMNS[index] * self._width
        end = self._left + COLUMNS[index + 1] * self._width
        if not FIRST_NUMBER <= index <= LAST_NUMBER:
            within = end - start - 2
            self._ink.words(
                (start, at), value.word, BODY, bold=bold, within=within, base="by_first_letter"
            )
            return
        bold = bold or bool(value.mark)
        self._ink.words((end - MARK, at), value.word, BODY, bold=bold, align="right")
        self._ink.words((end - MARK + 0.8, at), value.mark, BODY)

    def _wrapped(self, block: Block) -> list[str]:
        """The lines of a list as they fit its width; those beyond the room are counted."""
        wrapped = [self._ink.lines(line, BODY, self._half) for line in block.lines]
        shown: list[str] = []
        for index, lines in enumerate(wrapped):
            rest = len(wrapped) - index
            if len(shown) + len(lines) > LIST_LINES - (1 if rest > 1 else 0):
                return [*shown, block.more.format(count=rest)]
            shown += lines
        return shown

    def _list(self, block: Block, lines: list[str], left: float, top: float) -> None:
        at = top + LINE
        self._ink.rule(left, left + self._half, at - LINE + 0.3, grey=RULE)
        self._ink.words((left, at), block.title, HEAD, bold=True)
        for line in lines:
            at += LINE
            self._ink.words((left, at), line, BODY, within=self._half)

    def _foot(self, counted: str) -> float:
        """Words at the foot; gives where the room above them ends."""
        at = self._ink.height - MARGIN
        self._ink.rule(self._left, self._right, at - LINE)
        self._ink.words((self._left, at), self._page.foot, SMALL, grey=SOFT)
        self._ink.words((self._right, at), counted, SMALL, grey=SOFT, align="right")
        return at - LINE - 1


def _cells(meal: MealRow) -> tuple[Value, ...]:
    return (
        Value(word=meal.day),
        Value(word=meal.at),
        Value(word=meal.meal),
        meal.before,
        meal.after,
        Value(word=meal.rise),
        Value(word=meal.note),
    )
