"""Which font draws which text, and what happens to text that none can draw.

DejaVu Sans comes with matplotlib and draws Latin, Greek and Cyrillic. For other scripts the
Noto fonts of two packages are declared (`manimgx-fonts`: Arabic, Hebrew, the scripts of India,
Thai and more; `noto-cjk-sans-jp-regular`: Chinese, Japanese, Korean; both SIL OFL 1.1). Letters
are joined and put in order by matplotlib's own text engine (libraqm, from 3.11).
A character that none of them has is drawn as `MISSING`, so that nobody takes what is left for
the whole word. What cannot be seen by nature (joiners, direction marks) is left to the engine.
"""

from functools import cache, lru_cache
from importlib.util import find_spec
from pathlib import Path
from unicodedata import category, normalize

from matplotlib import font_manager
from matplotlib.font_manager import FontProperties
from matplotlib.ft2font import FT2Font

PLAIN = "DejaVu Sans"
MISSING = "\N{WHITE VERTICAL RECTANGLE}"
PACKAGES = ("manimgx_fonts", "noto_cjk_sans_jp_regular")

#: Control and format characters, halves of surrogates and variation selectors have no shape.
SHAPELESS = frozenset({"Cc", "Cf", "Cs"})
JOINERS = "\u200c\u200d"
SELECTORS = range(0xFE00, 0xFE10)


@lru_cache(maxsize=4096)
def drawable(text: str) -> str:
    """The text as it can be drawn: one line, composed, unknown characters as `MISSING`."""
    plain = " ".join(normalize("NFC", text).split())
    return "".join(_drawable_character(character) for character in plain)


@lru_cache(maxsize=1024)
def font_for(text: str, size: float, *, bold: bool) -> FontProperties:
    """The fonts that draw this text, the plain one first."""
    needed = dict.fromkeys(
        family
        for character in text
        if (family := _family_of(character)) is not None and family != PLAIN
    )
    return FontProperties(family=[PLAIN, *needed], size=size, weight="bold" if bold else "normal")


def _drawable_character(character: str) -> str:
    if character in JOINERS:
        return character
    if category(character) in SHAPELESS or ord(character) in SELECTORS:
        return ""
    return character if _family_of(character) is not None else MISSING


@lru_cache(maxsize=8192)
def _family_of(character: str) -> str | None:
    code = ord(character)
    if _plain().get_char_index(code):
        return PLAIN
    return next((family for family, face in _others() if face.get_char_index(code)), None)


@cache
def _plain() -> FT2Font:
    return FT2Font(font_manager.findfont(PLAIN, fallback_to_default=False))


@cache
def _others() -> tuple[tuple[str, FT2Font], ...]:
    """The packaged fonts with the families by which they are found; opened at the first need."""
    faces = []
    for path in _packaged():
        font_manager.fontManager.addfont(path)
        face = FT2Font(path)
        faces.append((face.family_name, face))
    return tuple(faces)


def _packaged() -> list[str]:
    places = [spec for name in PACKAGES if (spec := find_spec(name)) and spec.origin]
    return [
        str(path)
        for spec in places
        for path in sorted(Path(str(spec.origin)).parent.glob("Noto*"))
        if path.suffix in {".ttf", ".otf"} and "Italic" not in path.name
    ]
