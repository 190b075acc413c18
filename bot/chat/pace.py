"""How fast messages may leave: the whole bot, and each reader. No clock: `at` is in seconds.

Which message leaves next is the outbox's to say (`rank`); here is only when, and who must wait.
"""

#: Sending evenly at a little less than the cap keeps below it in any one-second window,
#: also when the network bunches two messages together.
SHARE_OF_CAP = 14 / 15
#: The chat program's advice: one message a second to one chat (Bots FAQ).
PER_CHAT = 1.0
#: A second reader turned away within this makes it the whole bot's limit, not one chat's.
TOGETHER = 1.0
#: Whoever has a message under way to them is looked at again after this.
BUSY = 0.05
#: Added to what the chat program asks for, against its rounding down.
MARGIN = 0.1


class Pace:
    """Gates that open again by themselves as time passes."""

    def __init__(self, per_second: float, *, per_chat: float = PER_CHAT) -> None:
        self._spacing = 1 / (per_second * SHARE_OF_CAP)
        self._per_chat = per_chat
        self._open_at = float("-inf")
        self._closed: dict[str, float] = {}
        self._in_flight: set[str] = set()
        self._turned_away: tuple[float, str] | None = None

    def wait(self, at: float) -> float:
        """Seconds until any message may leave; 0 for now."""
        return max(0.0, self._open_at - at)

    def closed(self, at: float) -> frozenset[str]:
        """Readers who may not be written to now."""
        self._closed = {reader: until for reader, until in self._closed.items() if until > at}
        return frozenset(self._closed) | self._in_flight

    def wait_between(self, reader: str, at: float) -> float:
        """Seconds until the next part of a message under way to this reader may leave."""
        return max(0.0, max(self._open_at, self._closed.get(reader, at)) - at)

    def wait_for(self, reader: str, at: float) -> float:
        """Seconds until a message may leave to this reader; while another one is under way to
        them, how soon to ask again."""
        return max(self.wait_between(reader, at), BUSY if reader in self._in_flight else 0.0)

    def next_opening(self, at: float) -> float | None:
        """Seconds until the first closed reader may be written to again; None if there is none."""
        return min((until - at for until in self._closed.values() if until > at), default=None)

    def leaves(self, reader: str, at: float) -> None:
        """A message to this reader leaves now; the next one to them waits for its end."""
        self._open_at = max(self._open_at, at) + self._spacing
        self._closed[reader] = at + self._per_chat
        self._in_flight.add(reader)

    def ended(self, reader: str) -> None:
        """The message that left is settled, one way or the other."""
        self._in_flight.discard(reader)

    def turned_away(self, reader: str, at: float, retry_after: float) -> None:
        """The chat program asked to wait: this reader does, or everybody."""
        until = at + retry_after + MARGIN
        self._closed[reader] = max(until, self._closed.get(reader, until))
        before = self._turned_away
        if before is not None and before[1] != reader and at - before[0] <= TOGETHER:
            self._open_at = max(self._open_at, until)
        self._turned_away = (at, reader)

    def hold_all(self, until: float) -> None:
        """Nothing leaves before this (the chat program cannot be reached)."""
        self._open_at = max(self._open_at, until)
