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
        self._wrong: dict[str, list[datetime]] = {}

    def too_many(self, chat: str, now: datetime) -> bool:
        """Whether this chat may try no more for now."""
        recent = [at for at in self._wrong.get(chat, ()) if now - at < WRONG_CODES_WITHIN]
        return len(recent) >= WRONG_CODES

    def wrong(self, chat: str, now: datetime) -> None:
        """Count one."""
        if chat not in self._wrong and len(self._wrong) >= COUNTED_CHATS:
            self._wrong.pop(next(iter(self._wrong)), None)  # another thread may have been first
        self._wrong.setdefault(chat, []).append(now)
        del self._wrong[chat][:-WRONG_CODES]
