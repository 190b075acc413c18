"""Paper and ink: a PDF with words measured in millimetres from the top left, in many scripts.

DejaVu Sans comes with matplotlib; where a text has characters that it lacks, the fonts of two
packages stand in (docs/libraries.md). Only the fonts that a text needs are opened: the largest of
them has 16 MB. matplotlib itself is not loaded for it.
"""

import re
from collections.abc import Iterable, Iterator
from datetime import UTC, datetime
from functools import cache
from importlib.util import find_spec
from pathlib import Path
from typing import Literal
from unicodedata import category, normalize

from fontTools.ttLib import TTFont  # type: ignore[import-untyped]
from fpdf import FPDF

from bot.export import Paper

Align = Literal["left", "right", "center"]

FAMILY = "plain"
#: Stands where no font has the character, so that nobody takes what is left for the whole word.
MISSING = "\N{WHITE VERTICAL RECTANGLE}"
CUT = "\N{HORIZONTAL ELLIPSIS}"

#: Greys: of rules, of words that matter less, of all others. All of them print.
RULE, SOFT, INK = 150, 80, 0

#: What has no shape is left out: control and format characters, halves of surrogates.
SHAPELESS = frozenset({"Cc", "Cf", "Cs"})

#: Fonts that stand in for no other: pictures in colour are heavy, and nothing on a grey copy.
LEFT_OUT = re.compile("Italic|Emoji")

POINT = 25.4 / 72
#: The same record gives the same bytes: when the file was made is not told in it.
MADE = datetime(2000, 1, 1, tzinfo=UTC)


class Ink:
    """A document that grows page by page. `texts` is all that will be written on it."""

    def __init__(self, paper: Paper, texts: Iterable[str], *, title: str) -> None:
        self._pdf = FPDF(format=paper, unit="mm")
        self._pdf.set_creation_date(MADE)
        self._pdf.set_title(title)
        self._pdf.set_auto_page_break(False)
        self._pdf.set_margin(0)
        self._pdf.c_margin = 0
        for style, path in _plain_files().items():
            self._pdf.add_font(FAMILY, style, path)
        self._known = set(_characters(_plain_files()[""]))
        fallback = []
        for path in _needed(_wanted(texts) - self._known):
            self._pdf.add_font(path.stem, "", path)
            self._known |= _characters(path)
            fallback.append(path.stem.lower())
        self._pdf.set_fallback_fonts(fallback, exact_match=False)
        self.width, self.height = self._pdf.w, self._pdf.h

    def page(self) -> None:
        """Take a fresh sheet."""
        self._pdf.add_page()

    def words(
        self,
        at: tuple[float, float],
        text: str,
        size: float,
        *,
        bold: bool = False,
        grey: int = INK,
        align: Align = "left",
        within: float | None = None,
    ) -> float:
        """Write one line with its baseline at `at`, cut to `within` millimetres; gives its width.

        `size` in points.
        """
        self._font(size, bold=bold)
        shown = self._drawable(text)
        if within is not None:
            shown = self._cut(shown, within)
        width = self._pdf.get_string_width(shown)
        left = at[0] - {"left": 0.0, "right": width, "center": width / 2}[align]
        self._pdf.set_text_color(grey)
        if shown:
            # A cell, since bare text takes no fonts that stand in. Its baseline lies 0.8 of the
            # letters' size below its top.
            high = size * POINT
            self._pdf.set_xy(left, at[1] - 0.8 * high)
            self._pdf.cell(width, high, shown)
        return width

    def lines(self, text: str, size: float, within: float, *, bold: bool = False) -> list[str]:
        """The text as lines no wider than `within`, broken at spaces."""
        self._font(size, bold=bold)
        lines: list[str] = []
        for word in self._drawable(text).split(" "):
            longer = f"{lines[-1]} {word}" if lines else word
            if lines and self._pdf.get_string_width(longer) <= within:
                lines[-1] = longer
            else:
                lines.append(word)
        return lines

    def rule(self, left: float, right: float, at: float, *, grey: int = RULE) -> None:
        """A thin line across."""
        self._pdf.set_draw_color(grey)
        self._pdf.set_line_width(0.2)
        self._pdf.line(left, at, right, at)

    def image(self, png: bytes, left: float, top: float, width: float) -> None:
        """A picture, as high as its shape asks for."""
        self._pdf.image(png, x=left, y=top, w=width)

    def done(self) -> bytes:
        """The document."""
        return bytes(self._pdf.output() or b"")

    def _font(self, size: float, *, bold: bool) -> None:
        self._pdf.set_font(FAMILY, "B" if bold else "", size)

    def _drawable(self, text: str) -> str:
        shown = (
            one if ord(one) in self._known else MISSING
            for one in _composed(text)
            if category(one) not in SHAPELESS
        )
        return "".join(shown)

    def _cut(self, text: str, within: float) -> str:
        if self._pdf.get_string_width(text) <= within:
            return text
        kept = text
        while kept and self._pdf.get_string_width(kept + CUT) > within:
            kept = kept[:-1]
        return kept.rstrip() + CUT


def _composed(text: str) -> str:
    return " ".join(normalize("NFC", text).split())


def _wanted(texts: Iterable[str]) -> set[int]:
    return {ord(one) for text in texts for one in _composed(text) if category(one) not in SHAPELESS}


def _needed(missing: set[int]) -> Iterator[Path]:
    """The fonts that have what is missing, as far as any has."""
    for path in _others():
        if not missing:
            return
        found = missing & _characters(path)
        if found:
            missing -= found
            yield path


@cache
def _plain_files() -> dict[str, Path]:
    folder = _folder("matplotlib") / "mpl-data" / "fonts" / "ttf"
    return {"": folder / "DejaVuSans.ttf", "B": folder / "DejaVuSans-Bold.ttf"}


@cache
def _others() -> tuple[Path, ...]:
    folders = (_folder("manimgx_fonts"), _folder("noto_cjk_sans_jp_regular"))
    return tuple(
        path
        for folder in folders
        for path in sorted(folder.glob("Noto*"))
        if path.suffix in {".ttf", ".otf"} and not LEFT_OUT.search(path.name)
    )


def _folder(package: str) -> Path:
    """Where a package lies, without loading it."""
    spec = find_spec(package)
    if spec is None or spec.origin is None:
        raise FileNotFoundError(f"{package} is not installed")
    return Path(spec.origin).parent


@cache
def _characters(path: Path) -> frozenset[int]:
    with TTFont(path, lazy=True) as font:
        return frozenset(font.getBestCmap())
