"""Strips told: how long they last at the plan's pace."""

from datetime import datetime

from bot.entries import Strips
from bot.programme.strips import KEPT, strip_count
from bot.programme.testing import Rhythm, strips_a_week
from bot.record import Record
from bot.words.language import Language


def strips_words(strips: Strips, record: Record, now: datetime, words: Language) -> str:
    """What was told, and until when it lasts with six kept for lows and illness."""
    told = words.replies.strips.format(left=strips.left)
    count = strip_count(record, now, strips_a_week(Rhythm(record.participant.rhythm)))
    if count is None or count.runs_out_on is None or not count.to_spend:
        return told
    lasts = words.requests.strips_out.format(day=count.runs_out_on.isoformat(), kept=KEPT)
    return f"{told} {lasts}"
