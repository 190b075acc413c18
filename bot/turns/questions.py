"""The bot's own questions while they are open: what each is about, how long it waits.

A question is closed by retracting its event, so that it is answered once.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import timedelta

from bot.entries import Ask, Understood
from bot.localtime import shifted
from bot.record import Noted, Record, Wondered
from bot.turns.facts import Fact
from bot.turns.notebook import Notebook
from bot.words.language import Language

#: Topics of the conversation's own questions, and how long each stays open.
HUNGER, TIREDNESS, GO_ON, ERASE, FIRST_BITE, MOMENT, RHYTHM, LOWS, KETONES = (
    "hunger",
    "tiredness",
    "go_on",
    "erase",
    "first_bite",
    "moment",
    "rhythm",
    "may_go_low",
    "ketone_risk",
)
#: Asked of the educator, in the participant's record: a step, fewer tests or fasting days, to be
#: released.
STEP_WAITS, FEWER_WAITS, FAST_WAITS = "step_waits", "fewer_waits", "fast_waits"
OPEN: Mapping[str | None, timedelta] = {
    HUNGER: timedelta(days=6),
    TIREDNESS: timedelta(days=6),
    GO_ON: timedelta(days=30),
    ERASE: timedelta(minutes=60),
    FIRST_BITE: timedelta(hours=6),
    MOMENT: timedelta(hours=6),
    RHYTHM: timedelta(days=3),
    LOWS: timedelta(days=6),
    KETONES: timedelta(days=6),
    None: timedelta(minutes=60),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Answered:
    """What an answer brought about: facts for the reply, lines of its own, a settings change."""

    facts: tuple[Fact, ...] = ()
    lines: tuple[str, ...] = ()
    buttons: tuple[str, ...] = ()
    erase: bool = False
    ask: Ask | None = None


Question = Noted[Wondered]
Taker = Callable[[str, Understood, Question, Notebook, Language], Answered | None]


def open_questions(record: Record, book: Notebook) -> tuple[Noted[Wondered], ...]:
    """The questions that still wait for an answer, the newest first."""
    return tuple(
        noted
        for noted in reversed(record.wondered)
        if noted.at <= book.at < shifted(noted.at, OPEN.get(noted.entry.topic, OPEN[None]))
    )


def plainly(text: str) -> str:
    """An answer without case, extra spaces and the signs around it."""
    return " ".join(text.casefold().replace("\u2019", "'").strip(" .!¡¿?").split())
