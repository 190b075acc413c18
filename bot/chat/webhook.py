"""Having updates posted: 200 is answered only once an update is handled and committed.

Any other answer makes the Bot API post it again. One chat's updates are handled one after the
other in the order of their coming, those of different chats side by side; what is guaranteed
across several machines stands in docs/many-machines.md.
"""

import asyncio
import hashlib
import hmac
import json
import logging
import re
from collections.abc import AsyncIterator, Awaitable, Callable, Mapping
from contextlib import asynccontextmanager
from http import HTTPStatus
from typing import Any
from urllib.parse import urlsplit

from tornado.httpserver import HTTPServer
from tornado.netutil import bind_sockets
from tornado.web import Application, RequestHandler

from bot.logs import place_of, say
from bot.mendable import Mendable

_LOG = logging.getLogger(__name__)

SECRET_HEADER = "X-Telegram-Bot-Api-Secret-Token"  # noqa: S105 - the name of a header
#: An update with the longest text is some 30 kB; more is none of the Bot API's.
LARGEST_BODY = 1_000_000
#: Takes one raw update; raises where it must come again.
TakeUpdate = Callable[[Mapping[str, Any]], Awaitable[None]]
PORTS = {"http": 80, "https": 443}
LAST_PORT = 65_535


def secret_from(token: str) -> str:
    """The secret header when none is set: bound to the token, and tells nothing of it."""
    return hmac.new(token.encode(), b"webhook", hashlib.sha256).hexdigest()


def place_to_listen(url: str, listen: str | None) -> tuple[str, int]:
    """Host and port: what is told, else the URL's own. Raises Mendable for neither."""
    if listen is not None:
        host, _, port = listen.rpartition(":")
        if not host or not re.fullmatch("[0-9]{1,5}", port) or not 1 <= int(port) <= LAST_PORT:
            raise Mendable("--listen must be HOST:PORT, as in 127.0.0.1:8443")
        return host.strip("[]"), int(port)
    try:
        parts = urlsplit(url)
        of_url = parts.port
    except ValueError:  # a port beyond the last, a bracket that does not close
        raise Mendable("--webhook must be an http or https address") from None
    if parts.scheme not in PORTS or not parts.hostname:
        raise Mendable("--webhook must be an http or https address")
    return parts.hostname, of_url or PORTS[parts.scheme]


@asynccontextmanager
async def listening(
    url: str, listen: str | None, secret: str, take: TakeUpdate
) -> AsyncIterator[None]:
    """Take updates posted to the path of `url` for as long as the block lasts.

    Raises Mendable where the place to listen is taken or is not this machine's.
    """
    host, port = place_to_listen(url, listen)
    path = urlsplit(url).path or "/"
    handing = {"secret": secret, "take": take, "in_order": InOrder()}
    app = Application([(path, _Posted, handing)], log_function=lambda _handler: None)
    try:
        sockets = bind_sockets(port, host)
    except OSError as error:
        raise Mendable(f"cannot listen at {host}:{port}: {error.strerror}") from error
    server = HTTPServer(app, max_body_size=LARGEST_BODY, max_buffer_size=LARGEST_BODY)
    server.add_sockets(sockets)
    try:
        yield
    finally:
        server.stop()
        await server.close_all_connections()


class InOrder:
    """One update of a chat at a time, whoever came first first; chats do not wait for chats."""

    def __init__(self) -> None:
        self._doors: dict[str, asyncio.Lock] = {}
        self._inside: dict[str, int] = {}

    @asynccontextmanager
    async def turn(self, chat: str) -> AsyncIterator[None]:
        """Wait for this chat's turn."""
        door = self._doors.setdefault(chat, asyncio.Lock())
        self._inside[chat] = self._inside.get(chat, 0) + 1
        try:
            async with door:
                yield
        finally:
            self._inside[chat] -= 1
            if not self._inside[chat]:
                del self._inside[chat], self._doors[chat]

    def __len__(self) -> int:
        """Chats that are being handled or waited for."""
        return len(self._doors)


def chat_of(update: Mapping[str, Any]) -> str:
    """The chat that an update comes from, in whatever shape; "" where none can be told."""
    press = update.get("callback_query")
    source = press.get("message") or press if isinstance(press, dict) else None
    source = source or update.get("message") or update.get("edited_message")
    if not isinstance(source, dict):
        return ""
    place = source.get("chat") or source.get("from")
    return str(place.get("id", "")) if isinstance(place, dict) else ""


class _Posted(RequestHandler):
    """One posted update."""

    def initialize(self, secret: str, take: TakeUpdate, in_order: InOrder) -> None:
        self._secret = secret
        self._take = take
        self._in_order = in_order

    async def post(self) -> None:
        """Take it, then say so."""
        given = self.request.headers.get(SECRET_HEADER, "")
        if not hmac.compare_digest(given.encode(), self._secret.encode()):
            return self._refuse(HTTPStatus.FORBIDDEN)
        try:
            update = json.loads(self.request.body)
            int(update["update_id"])
        except (ValueError, TypeError, KeyError):
            return self._refuse(HTTPStatus.BAD_REQUEST)
        try:
            async with self._in_order.turn(chat_of(update)):
                await self._take(update)
        except Exception as error:
            say(_LOG, logging.WARNING, "update not taken", error=place_of(error))
            return self._refuse(HTTPStatus.SERVICE_UNAVAILABLE)
        self.set_status(HTTPStatus.OK)
        return None

    def _refuse(self, status: HTTPStatus) -> None:
        self.set_status(status)

    def write_error(self, status_code: int, **_: object) -> None:
        """No page, no trace."""
        self.set_status(status_code)
        self.finish()
