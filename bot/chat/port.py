"""What delivery needs of a chat program, and its errors by what they tell of the message."""

from dataclasses import dataclass
from typing import Protocol

from bot.messages import Delivered


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """One message as it goes out: words, or a picture or file with words under it.

    A button is the text that a press types.
    """

    text: str = ""
    picture: bytes | None = None
    file: bytes | None = None
    file_name: str = ""
    buttons: tuple[str, ...] = ()


class ChatError(Exception):
    """A send that did not end well. Never holds the message or the token."""


class NotSent(ChatError):
    """It certainly did not leave: no connection, or the bot's own account is refused."""


class Throttled(NotSent):
    """It was turned away for now; try again after so many seconds."""

    def __init__(self, retry_after: float) -> None:
        super().__init__(f"retry after {retry_after} s")
        self.retry_after = retry_after


class Unsure(ChatError):
    """The answer was lost or made no sense: it may or may not have arrived."""


class Gone(ChatError):
    """This chat takes no messages from us: blocked, deleted, never begun."""


class Refused(ChatError):
    """The chat program will not take this message, however often it is tried."""


class Chat(Protocol):
    """Takes one part at a time; raises a ChatError where it did not surely arrive."""

    async def send(self, chat: str, part: Part) -> Delivered:
        """Send to a chat and give its receipt."""
