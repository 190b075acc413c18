"""Faults that a test orders of the stand-in server."""

from dataclasses import dataclass
from enum import StrEnum


class Fault(StrEnum):
    """What goes wrong with a call, and what the bot can know of it."""

    TOO_MANY = "too_many"  # 429 with retry_after: certainly not sent
    REFUSES = "refuses"  # 400: certainly not sent, and never will be
    BLOCKED = "blocked"  # 403: certainly not sent; the chat is closed to the bot
    LOST_REPLY = "lost_reply"  # done, then the connection is cut: the bot cannot know
    HANGS = "hangs"  # done, but the answer never comes: the bot cannot know
    BREAKS = "breaks"  # 502 with a page of HTML: the bot cannot know (it is not done)
    SLOW = "slow"  # done and answered, `seconds` late


@dataclass(slots=True, kw_only=True)
class Ordered:
    """A fault for the next `times` calls that fit; None fits every method, every chat.

    `seconds` is the wait of TOO_MANY (whole seconds) or SLOW.
    """

    fault: Fault
    method: str | None = None
    chat: int | None = None
    times: int = 1
    seconds: float = 1


class Faults:
    """The faults still to come, in the order in which they were asked for."""

    def __init__(self) -> None:
        self._ordered: list[Ordered] = []

    def order(
        self,
        fault: Fault,
        *,
        method: str | None = None,
        chat: int | None = None,
        times: int = 1,
        seconds: float = 1,
    ) -> None:
        """Let the next `times` calls of this method in this chat go wrong."""
        self._ordered.append(
            Ordered(fault=fault, method=method, chat=chat, times=times, seconds=seconds)
        )

    def clear(self) -> None:
        """Let everything go well from now on."""
        self._ordered.clear()

    def take(self, method: str, chat: int | None) -> Ordered | None:
        """The fault that this call meets, used up once; fetching is only hit when named."""
        for ordered in self._ordered:
            meant = ordered.method == method or (ordered.method is None and method != "getUpdates")
            if meant and ordered.chat in (None, chat):
                ordered.times -= 1
                if ordered.times == 0:
                    self._ordered.remove(ordered)
                return ordered
        return None
