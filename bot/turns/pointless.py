"""Prompts that wait to be sent while their answer comes in."""

from datetime import datetime

from bot.entries import Reading, Skip
from bot.planning.asked import answered_prompts
from bot.record import fold
from bot.turns.turn import Opened, Turn


def pointless_prompts(opened: Opened, turn: Turn, *, now: datetime) -> tuple[str, ...]:
    """The keys of the prompts that this turn makes pointless, sent already or not."""
    if not any(isinstance(event.body, Reading | Skip) for event in turn.events):
        return ()
    record = turn.record or fold(turn.participant, (*opened.events, *turn.events))
    return answered_prompts(record, now)
