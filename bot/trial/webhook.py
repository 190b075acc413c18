"""The API server's side of a webhook: each update is posted, in order, until it is taken."""

import asyncio
import json
from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from datetime import datetime
from typing import Final

from tornado.httpclient import AsyncHTTPClient, HTTPRequest

from bot.trial.chats import Chats, Json, stamp

SECRET_HEADER: Final = "X-Telegram-Bot-Api-Secret-Token"  # noqa: S105 (a name)
PAUSE: Final = 0.2  # seconds before a refused update is posted again


@dataclass(slots=True, kw_only=True)
class Webhook:
    """Where a bot wants its updates posted, and what became of the last one."""

    url: str
    secret: str
    last_error: str = ""
    last_error_at: datetime | None = None

    def info(self, pending: int) -> Json:
        """The API's WebhookInfo object."""
        found: Json = {
            "url": self.url,
            "has_custom_certificate": False,
            "pending_update_count": pending,
        }
        if self.last_error_at is not None:
            found["last_error_date"] = stamp(self.last_error_at)
            found["last_error_message"] = self.last_error
        return found

    async def post_all(
        self, chats: Chats, until: Callable[[Callable[[], bool]], Awaitable[None]]
    ) -> None:
        """Post updates as they come; only an answer of success takes one off the list."""
        client = AsyncHTTPClient()
        while True:
            await until(lambda: bool(chats.updates))
            update = chats.updates[0]
            try:
                await client.fetch(
                    HTTPRequest(
                        self.url,
                        method="POST",
                        headers={"Content-Type": "application/json", SECRET_HEADER: self.secret},
                        body=json.dumps(update),
                        request_timeout=10,
                    )
                )
            except Exception as error:  # whatever it is, the update was not taken
                self.last_error, self.last_error_at = str(error), chats.now()
                await asyncio.sleep(PAUSE)
            else:
                chats.confirm(update["update_id"] + 1)
