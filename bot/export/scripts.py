"""A line of text in any scripts, cut into runs that can be drawn from left to right.

Each run is of one direction and one font. The order is that of the Unicode bidirectional algorithm
(UAX 9), whose levels fpdf2 works out; joining and stacking of letters within a run is HarfBuzz's.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import groupby
from typing import Literal
from unicodedata import category, combining

from fpdf.bidi import BidiParagraph
from fpdf.enums import TextDirection

#: The direction of a line: given, or that of its first letter that has one.
Base = Literal["left_to_right", "by_first_letter"]

#: Around somebody's own words in a line of ours, so that the two keep their order apart.
ISOLATE, ISOLATED = "\N{FIRST STRONG ISOLATE}", "\N{POP DIRECTIONAL ISOLATE}"
#: They have no shape, and change that of their neighbours.
JOINERS = frozenset("\N{ZERO WIDTH NON-JOINER}\N{ZERO WIDTH JOINER}")
#: The canonical combining class of a virama, which ties the next letter to the one before it.
VIRAMA = 9


@dataclass(frozen=True, slots=True, kw_only=True)
class Run:
    """Letters of one direction in one font, in the order in which they are read."""

    text: str
    font: str
    level: int

    @property
    def leftwards(self) -> bool:
        """Read from right to left."""
        return self.level % 2 == 1


def runs(text: str, base: Base, font_of: Callable[[str, str | None], str]) -> list[Run]:
    """The runs of a line from left to right.

    `font_of` chooses the font of a letter, and is told that of the letter before it.
    """
    direction = TextDirection.LTR if base == "left_to_right" else None
    paragraph = BidiParagraph(text, base_direction=direction, preserve_bn_chars=True)
    letters: list[Run] = []
    for letter in paragraph.get_characters_with_embedding_level():
        if letter.character in (ISOLATE, ISOLATED):
            continue
        before = letters[-1].font if letters else None
        font = font_of(letter.character, before)
        letters.append(Run(text=letter.character, font=font, level=letter.embedding_level))
    joined = [
        replace(same[0], text="".join(one.text for one in same))
        for same in (list(of) for _, of in groupby(letters, lambda one: (one.level, one.font)))
    ]
    return _from_the_left(joined)


def _from_the_left(found: Sequence[Run]) -> list[Run]:
    """UAX 9, rule L2: from the highest level down to the lowest odd one, turn round what lies at
    that level or above."""
    ordered = list(found)
    for level in range(max((run.level for run in found), default=0), 0, -1):
        turned: list[Run] = []
        for above, same in groupby(ordered, lambda run, level=level: run.level >= level):  # type: ignore[misc]
            same_side = list(same)
            turned += reversed(same_side) if above else same_side
        ordered = turned
    return ordered


def clusters(text: str) -> Iterator[str]:
    """Letters with what belongs to them: marks, joiners, and what a virama ties on. A text may be
    cut between two of them."""
    held = ""
    for letter in text:
        belongs = category(letter).startswith("M") or letter in JOINERS
        tied = held and (combining(held[-1]) == VIRAMA or held[-1] in JOINERS)
        if held and not (belongs or tied):
            yield held
            held = ""
        held += letter
    if held:
        yield held
