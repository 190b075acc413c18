"""The inks of a chart, and the sixteen colours in which it is stored.

Contrast is that of WCAG 2.2: at least 4.5:1 for text (1.4.3) and 3:1 for marks (1.4.11), on
the bare paper and on the tinted goal band alike; `tests/chart` checks it with an outside
formula. No two inks have to be told apart by hue: shape, place and a word say the same.
"""

from functools import cache

import numpy as np
from numpy.typing import NDArray

PAPER = "#FCFBF7"
BAND = "#E3EDE7"  # the goal before eating
RULE = "#D9D6CC"  # between two days; decoration, carries nothing

INK = "#1D2733"  # words, values after eating
QUIET_INK = "#4F5A66"  # dishes, notes, values before eating
WITHIN = "#0A5F63"
OUTSIDE = "#9A4200"
ALERT = "#8B1030"
MOVING = "#4A3C8C"  # activity
FAINT = "#6B7680"  # lone readings, pairs that do not count, the goals' own lines

TEXT_INKS = (INK, QUIET_INK, WITHIN, OUTSIDE, ALERT, MOVING)
MARK_INKS = (*TEXT_INKS, FAINT)
GROUNDS = (PAPER, BAND)

#: Sixteen colours take half the bytes of more, and a crowded week has to stay below 60 kB.
BITS_STORED = 4

#: Edges are stored in these parts of an ink on paper; a phone shows the paper at a third.
HALF = 0.5
EDGES = ((QUIET_INK, 0.3), (QUIET_INK, 0.65), *((ink, HALF) for ink in TEXT_INKS[2:]))

BITS = 4  # of each channel that the look-up table tells apart


def channels(colour: str) -> tuple[int, int, int]:
    """Red, green and blue, 0 to 255, of `#RRGGBB`."""
    return int(colour[1:3], 16), int(colour[3:5], 16), int(colour[5:7], 16)


@cache
def palette() -> NDArray[np.uint8]:
    """The stored colours, (16, 3): grounds, inks and the blends of their edges."""
    plain = [channels(colour) for colour in (*GROUNDS, RULE, *MARK_INKS)]
    blends = [_blend(channels(ink), part) for ink, part in EDGES]
    return np.array([*plain, *blends], dtype=np.uint8)


def indexed(rgba: NDArray[np.uint8]) -> NDArray[np.uint8]:
    """Give each pixel of (height, width, 4) the index of the nearest stored colour."""
    shift = 8 - BITS
    cells = (rgba[:, :, 0] >> shift).astype(np.uint16)
    for channel in (1, 2):
        cells <<= BITS
        cells |= rgba[:, :, channel] >> shift
    return _nearest()[cells]


@cache
def _nearest() -> NDArray[np.uint8]:
    """For each cell of a coarse colour cube, the index of the nearest stored colour."""
    stored = palette().astype(np.int32)
    levels = (np.arange(1 << BITS) << (8 - BITS)) + (1 << (7 - BITS))
    cube = np.stack(np.meshgrid(levels, levels, levels, indexing="ij"), axis=-1).reshape(-1, 3)
    distance = ((cube[:, None, :] - stored[None, :, :]) ** 2).sum(axis=2)
    nearest: NDArray[np.uint8] = distance.argmin(axis=1).astype(np.uint8)
    own = stored >> (8 - BITS)  # a stored colour stays exactly itself
    nearest[(own[:, 0] << (2 * BITS)) | (own[:, 1] << BITS) | own[:, 2]] = np.arange(len(stored))
    return nearest


def _blend(ink: tuple[int, int, int], part: float) -> tuple[int, int, int]:
    paper = channels(PAPER)
    red, green, blue = (
        round(ground + (colour - ground) * part) for ground, colour in zip(paper, ink, strict=True)
    )
    return red, green, blue
