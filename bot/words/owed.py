"""A caution that did not surely arrive, said again."""

from collections.abc import Callable
from datetime import datetime

from bot.words.caution_filling import day_and_time
from bot.words.language import language


def owed_words(code: str, zone: str, now: datetime) -> Callable[[str, datetime], str]:
    """What makes the new text, for a reader of this language in this zone.

    It is given the first text and when that was said, which stands first in the new one.
    """
    sentences = language(code).cautions

    def words(text: str, said_at: datetime) -> str:
        opening, gap, _ = sentences.owed.partition("{taken}")
        if text.startswith(opening):
            return text
        dated = sentences.owed.replace(gap, day_and_time(said_at, now, zone, sentences))
        return f"{dated} {text}"

    return words
