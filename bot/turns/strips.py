"""Strips told: how long they last at the plan's pace."""

from datetime import datetime

from bot.entries import Strips
from bot.programme.strips import KEPT, StripCount, strip_count
from bot.programme.testing import Rhythm, strips_a_week
from bot.record import Record
from bot.words.language import Language


def strips_words(strips: Strips, record: Record, now: datetime, words: Language) -> str:
    """What was told, and until when it lasts with six kept for lows and illness."""
    told = words.replies.strips.format(left=strips.left)
    return _with_end(told, _count(record, now), words)


def strips_left_words(record: Record, now: datetime, words: Language) -> str:
    """How many are left, to somebody who asks."""
    count = _count(record, now)
    if count is None:
        return words.wishes.strips_unknown
    return _with_end(words.wishes.strips_left.format(left=count.left), count, words)


def _count(record: Record, now: datetime) -> StripCount | None:
    return strip_count(record, now, strips_a_week(Rhythm(record.participant.rhythm)))


def _with_end(told: str, count: StripCount | None, words: Language) -> str:
    if count is None or count.runs_out_on is None or not count.to_spend:
        return told
    lasts = words.requests.strips_out.format(day=count.runs_out_on.isoformat(), kept=KEPT)
    return f"{told} {lasts}"
