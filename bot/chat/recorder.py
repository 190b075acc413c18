"""A chat that keeps what would have been sent, for replay and tests."""

from collections.abc import Callable
from dataclasses import dataclass

from bot.chat.port import Part
from bot.messages import Delivered


@dataclass(frozen=True, slots=True, kw_only=True)
class Recorded:
    """One part that would have gone out, and the id that the chat would have given it."""

    message: str
    chat: str
    part: Part


class RecorderChat:
    """Keeps every part in order. `fault` may raise a ChatError, before or after keeping."""

    def __init__(self) -> None:
        self.sent: list[Recorded] = []
        self.before: Callable[[str, Part], None] = lambda chat, part: None
        self.after: Callable[[str, Part], None] = lambda chat, part: None

    async def send(self, chat: str, part: Part) -> Delivered:
        """Keep a part; its receipt is its number, counted from 1."""
        self.before(chat, part)
        message = str(len(self.sent) + 1)
        self.sent.append(Recorded(message=message, chat=chat, part=part))
        self.after(chat, part)
        return Delivered(message=message)

    def texts(self) -> list[str]:
        """The words that went out, in order."""
        return [recorded.part.text for recorded in self.sent]
