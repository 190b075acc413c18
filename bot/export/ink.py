"""Paper and ink: a PDF with words measured in millimetres from the top left, in many scripts.

DejaVu Sans comes with matplotlib; where a text has characters that it lacks, the fonts of two
packages stand in (docs/libraries.md). Letters are joined, stacked and put in order as their scripts
ask for (`bot.export.scripts`). Only the fonts that a text needs are opened: the largest of
them has 16 MB. matplotlib itself is not loaded for it.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import cache
from importlib.util import find_spec
from pathlib import Path
from typing import Literal
from unicodedata import category, normalize

from fontTools.ttLib import TTFont  # type: ignore[import-untyped]
from fpdf import FPDF
from fpdf.line_break import Fragment

from bot.export import Paper
from bot.export.scripts import ISOLATE, ISOLATED, JOINERS, Base, Run, clusters, runs

Align = Literal["left", "right", "center"]

FAMILY = "plain"
#: Stands where no font has the character, so that nobody takes what is left for the whole word.
MISSING = "\N{WHITE VERTICAL RECTANGLE}"
CUT = "\N{HORIZONTAL ELLIPSIS}"

#: Greys: of rules, of words that matter less, of all others. All of them print.
RULE, SOFT, INK = 150, 80, 0

#: What has no shape is left out: control and format characters, halves of surrogates.
SHAPELESS = frozenset({"Cc", "Cf", "Cs"})

#: They decide on which side words stand.
SIDES = frozenset({ISOLATE, ISOLATED})

#: Fonts that stand in for no other: pictures in colour are heavy, and nothing on a grey copy.
LEFT_OUT = re.compile("Italic|Emoji")

POINT = 25.4 / 72
#: The same record gives the same bytes: when the file was made is not told in it.
MADE = datetime(2000, 1, 1, tzinfo=UTC)


class _Pdf(FPDF):
    """fpdf2 parts a letter from a mark that its script shares with others (the vowels of Arabic).
    What is written here is of one font and direction already: it stays whole."""

    def _parse_chars(
        self,
        text: str,
        markdown: bool,
        *,
        _initial_emphasis: tuple[bool, bool, bool, bool] | None = None,
    ) -> Iterator[Fragment]:
        yield Fragment(text, self._get_current_graphics_state(), self.k)


class Ink:
    """A document that grows page by page. `texts` is all that will be written on it."""

    def __init__(self, paper: Paper, texts: Iterable[str], *, title: str) -> None:
        self._pdf = _Pdf(format=paper, unit="mm")
        self._pdf.set_creation_date(MADE)
        self._pdf.set_title(title)
        self._pdf.set_auto_page_break(False)
        self._pdf.set_margin(0)
        self._pdf.c_margin = 0
        self._pdf.alias_nb_pages("")  # a dish of that name is no number of pages
        for style, path in _plain_files().items():
            self._pdf.add_font(FAMILY, style, path)
        self._letters = {FAMILY: _characters(_plain_files()[""])}
        for path in _needed(_wanted(texts) - self._letters[FAMILY]):
            self._pdf.add_font(path.stem, "", path)
            self._letters[path.stem] = _characters(path)
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
        base: Base = "left_to_right",
    ) -> float:
        """Write one line with its baseline at `at`, cut to `within` millimetres; gives its width.

        `size` in points; `base` is the direction of the line.
        """
        face = _Face(size, "B" if bold else "", base)
        shown = self._drawable(text)
        if within is not None:
            shown = self._cut(shown, face, within)
        parts = [(run, self._run_width(run, face)) for run in self._runs(shown, base)]
        width = sum(wide for _, wide in parts)
        left = at[0] - {"left": 0.0, "right": width, "center": width / 2}[align]
        self._pdf.set_text_color(grey)
        for run, wide in parts:
            # A cell's baseline lies 0.8 of the letters' size below its top.
            high = size * POINT
            self._take(run, face)
            self._pdf.set_xy(left, at[1] - 0.8 * high)
            self._pdf.cell(wide, high, run.text)
            left += wide
        return width

    def lines(self, text: str, size: float, within: float, *, bold: bool = False) -> list[str]:
        """The text as lines no wider than `within`, broken at spaces, or within a word that is
        wider than that (some scripts have no spaces)."""
        face = _Face(size, "B" if bold else "", "left_to_right")
        lines: list[str] = []
        for word in self._drawable(text).split(" "):
            longer = f"{lines[-1]} {word}" if lines else word
            if lines and self._wide(longer, face) <= within:
                lines[-1] = longer
            else:
                lines += self._broken(word, face, within)
        return lines

    def _broken(self, word: str, face: "_Face", within: float) -> list[str]:
        if self._wide(word, face) <= within:
            return [word]
        lines = [""]
        for cluster in clusters(word):
            if lines[-1] and self._wide(lines[-1] + cluster, face) > within:
                lines.append("")
            lines[-1] += cluster
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

    def _take(self, run: Run, face: "_Face") -> None:
        """The font and direction of a run."""
        style = face.style if run.font == FAMILY else ""  # those that stand in have one weight
        self._pdf.set_font(run.font, style, face.size)
        self._pdf.set_text_shaping(
            use_shaping_engine=True, direction="rtl" if run.leftwards else "ltr"
        )

    def _runs(self, text: str, base: Base) -> list[Run]:
        return runs(text, base, self._font_of) if text else []

    def _font_of(self, letter: str, before: str | None) -> str:
        """The plain font where it has the letter; but marks, joiners and spaces stay with the
        letter before them, so that no word falls apart."""
        stays = letter == " " or letter in JOINERS or category(letter).startswith("M")
        if before is not None and stays and ord(letter) in self._letters[before]:
            return before
        return next(font for font, has in self._letters.items() if ord(letter) in has)

    def _wide(self, text: str, face: "_Face") -> float:
        return sum(self._run_width(run, face) for run in self._runs(text, face.base))

    def _run_width(self, run: Run, face: "_Face") -> float:
        self._take(run, face)
        return self._pdf.get_string_width(run.text)

    def _drawable(self, text: str) -> str:
        every = frozenset().union(*self._letters.values())
        shown = (
            one if ord(one) in every or one in SIDES else MISSING
            for one in _composed(text)
            if one in SIDES or (_has_shape(one) and (one not in JOINERS or ord(one) in every))
        )
        return "".join(shown)

    def _cut(self, text: str, face: "_Face", within: float) -> str:
        if self._wide(text, face) <= within:
            return text
        kept = list(clusters(text))
        while kept and self._wide("".join(kept) + CUT, face) > within:
            kept.pop()
        return "".join(kept).rstrip() + CUT


@dataclass(frozen=True, slots=True)
class _Face:
    """How large and heavy a line is (points), and its direction."""

    size: float
    style: Literal["", "B"]
    base: Base


def _has_shape(letter: str) -> bool:
    return category(letter) not in SHAPELESS or letter in JOINERS


def _composed(text: str) -> str:
    return " ".join(normalize("NFC", text).split())


def _wanted(texts: Iterable[str]) -> set[int]:
    return {ord(one) for text in texts for one in _composed(text) if _has_shape(one)}


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
