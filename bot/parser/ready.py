"""Have all lists and patterns made before the first message comes: nobody waits for them then.

Each is made when it is first asked for, and kept. These messages ask for all of them;
`tests/parser/test_made_ready.py` sees to it that none is left for later.
"""

from datetime import UTC, datetime
from itertools import product
from typing import Final

from bot.entries import Asked, By
from bot.parser.food import kinds_of
from bot.parser.graph import forget_words
from bot.parser.languages import LEXICA
from bot.parser.reader import read
from bot.units import Unit

_MESSAGES: Final = (
    "142 before breakfast, kweevsh, 2 spoons of rice",
    "ate rice that mum made at the picnic",
    "ate glucose, feel dizzy now, not thirsty",
    "finished walking for 1:20 h, 9500 steps",
    "9500 steps",
    "prelunch 128, pause",
    "ba142",
    "my 72 pulse",
    "142 after, 150 before now",
    "can i eat rice 142",
    "rice with 2 pav",
    "kweevsh training 30 min",
    "planted 20 trees",
    "I am in Dubai now",
    "thanks, tired and headache",
    "asleep, no strips",
    "hi, asleep",
    "took my insulin twice 64 help",
)


def make_ready() -> None:
    """Make them all, which takes seconds."""
    at = datetime(2026, 1, 1, 12, tzinfo=UTC)
    for language, text, asked, by in product(LEXICA, _MESSAGES, (None, Asked.BEFORE_MEAL), By):
        read(text, at=at, unit=Unit.MG_DL, language=language, asked=asked, by=by)
        kinds_of(text, language)
    forget_words()
