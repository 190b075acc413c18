"""The chart of the week: a picture's values and words in, a PNG out.

What lives here: ink. What it must not know: entries, goals, sums, sentences; all of these come
in a `bot.picture.Picture`. Matplotlib's object interface and its Agg canvas are used and never
pyplot, which keeps every figure alive and is not safe beside a running loop.
This is the only room that imports matplotlib, and it does so when something is drawn: a process
that never draws never loads it.
"""

from collections.abc import Mapping
from typing import Any


def draw(picture: Mapping[str, Any]) -> bytes:
    """Draw a picture (the mapping of `bot.picture.to_mapping`) as a PNG.

    1,080 pixels wide (a crowded week 810), at least 680 high, at most 60 kB; the same bytes for
    the same picture.
    Takes tens of milliseconds and is not safe in two threads at once: call it in a process of
    its own (`bot.chart.pool`). Raises KeyError, TypeError or ValueError for what is no picture.
    """
    from bot.chart.week import draw_week  # noqa: PLC0415 - loads matplotlib, see above
    from bot.picture import from_mapping  # noqa: PLC0415

    return draw_week(from_mapping(picture))
