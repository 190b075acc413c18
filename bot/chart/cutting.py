"""Cutting a dish's name to the room there is, so that it still reads as a name."""

from bisect import bisect_right
from collections.abc import Callable
from unicodedata import category, combining

ELLIPSIS = "\N{HORIZONTAL ELLIPSIS}"
JOINER = "\N{ZERO WIDTH JOINER}"
VIRAMA = 9  # the combining class of the sign that ties two consonants together (Unicode)

#: A cut goes back to the end of a word if at least this part of the room stays used.
WORD_PART = 0.6


def cut(text: str, width: float, measure: Callable[[str], float]) -> str:
    """The longest beginning of the text that fits, with an ellipsis; the text if all of it fits.

    Never between a letter and the marks that belong to it, and at the end of a word where
    that does not cost much. Empty if not even one letter fits.
    """
    text = " ".join(text.split())
    if measure(text) <= width:
        return text
    places = [place for place in range(1, len(text)) if _may_end(text, place)]
    fitting = bisect_right(
        places, width, key=lambda place: measure(text[:place].rstrip() + ELLIPSIS)
    )
    if not fitting:
        return ""
    end = places[fitting - 1]
    word_end = end if text[end] == " " else text.rfind(" ", 0, end)
    if word_end >= end * WORD_PART:
        end = word_end
    return text[:end].rstrip(" ,;:-") + ELLIPSIS


def wrapped(text: str, width: float, measure: Callable[[str], float]) -> list[str]:
    """Break a sentence into lines that fit; a single word that does not is cut."""
    lines: list[str] = []
    line = ""
    for word in text.split():
        longer = f"{line} {word}".strip()
        if line and measure(longer) > width:
            lines.append(line)
            longer = word
        line = longer
    return [cut(each, width, measure) for each in [*lines, line] if each]


def _may_end(text: str, place: int) -> bool:
    before, after = text[place - 1], text[place]
    tied = before == JOINER or combining(before) == VIRAMA
    return not tied and after != JOINER and not category(after).startswith("M")
