"""How many wrong codes a chat has tried, in memory only: nothing is kept of strangers."""

from datetime import datetime, timedelta

#: Wrong codes that a chat may try within an hour; more are not even looked up.
WRONG_CODES = 5
WRONG_CODES_WITHIN = timedelta(hours=1)
#: Chats whose wrong codes are counted at one time; the oldest are forgotten first.
COUNTED_CHATS = 10_000


class Guesses:
    """Wrong codes a chat."""

    def __init__(self) -> None:
        self._wrong: dict[str, dict[int, datetime]] = {}  # by chat and update

    def too_many(self, chat: str, now: datetime) -> bool:
        """Whether this chat may try no more for now."""
        told = [*self._wrong.get(chat, {}).values()]
        return sum(now - at < WRONG_CODES_WITHIN for at in told) >= WRONG_CODES

    def wrong(self, chat: str, update: int, now: datetime) -> None:
        """Count one; an update whose turn was taken again counts once."""
        if chat not in self._wrong and len(self._wrong) >= COUNTED_CHATS:
            self._wrong.pop(next(iter(self._wrong)), None)  # another thread may have been first
        told = self._wrong.setdefault(chat, {})
        told.setdefault(update, now)
        if len(told) > WRONG_CODES:
            told.pop(next(iter(told)), None)
