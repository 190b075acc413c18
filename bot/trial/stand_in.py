"""A stand-in for the Bot API server on loopback, for `try`, the demo and the tests.

The real client talks to it over HTTP. Updates are fetched as from the real one: a call waits until
something comes or its time is over, an offset confirms what lies before it, and what is not
confirmed comes again; of two fetchers at a time the older one is turned away. Faults can be
ordered, and all that reached a chat stands in a ledger.
"""

import asyncio
import json
from collections import Counter
from collections.abc import Callable
from datetime import datetime
from pathlib import Path
from types import TracebackType
from typing import Final, Self

from tornado.httpserver import HTTPServer
from tornado.netutil import bind_sockets
from tornado.web import Application

from bot.trial.calls import TOKEN, CallHandler, FileHandler
from bot.trial.chats import Chats
from bot.trial.faults import Faults
from bot.trial.methods import Call, Methods, Refusal, Sent
from bot.trial.webhook import Webhook

__all__ = ["HOST", "TOKEN", "StandIn"]

HOST: Final = "127.0.0.1"
MOST_UPDATES: Final = 100
PATIENCE: Final = 10.0  # seconds that a caller waits for something to happen


class StandIn:
    """One server, one bot. `async with StandIn(now) as server:` starts it on a free port.

    `now` dates messages (the bot's time or the real one: the caller's choice). `chats` is where
    people write, `faults` where faults are ordered, `ledger` what reached the chats, `calls` how
    often each method was called. With `journal` every sent message is appended to that file,
    as a JSON line, before the call is answered: it survives whatever is killed.
    """

    def __init__(self, now: Callable[[], datetime], *, journal: Path | None = None) -> None:
        self.chats = Chats(now)
        self.chats.on_change = self._chats_changed
        self.methods = Methods(self.chats)
        self.faults = Faults()
        self.calls: Counter[str] = Counter()
        self.webhook: Webhook | None = None
        self._journal = journal
        self._posting: asyncio.Task[None] | None = None
        self.revision = 0  # goes up with every change of anything
        self._pulse = asyncio.Event()
        self._stopping = asyncio.Event()
        self._fetcher: asyncio.Future[None] | None = None
        self._server: HTTPServer | None = None
        self._port = 0

    async def __aenter__(self) -> Self:
        await self.start()
        return self

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        await self.stop()

    @property
    def url(self) -> str:
        """Scheme, host and port, as the setting for the API wants them."""
        return f"http://{HOST}:{self._port}"

    @property
    def ledger(self) -> list[Sent]:
        """Everything that reached a chat, in order."""
        return self.methods.ledger

    @property
    def fetching(self) -> bool:
        """Whether the bot waits for updates right now."""
        return self._fetcher is not None

    async def start(self) -> None:
        """Listen; after a stop on the same port again."""
        sockets = bind_sockets(self._port, HOST)
        self._port = sockets[0].getsockname()[1]
        self._stopping = asyncio.Event()
        routes = [
            (r"/bot([^/]+)/(\w+)", CallHandler, {"server": self}),
            (r"/file/bot([^/]+)/(.+)", FileHandler, {"server": self}),
        ]
        self._server = HTTPServer(Application(routes, log_function=lambda _: None))
        self._server.add_sockets(sockets)

    async def stop(self) -> None:
        """Close the port and every connection: the bot finds nobody there."""
        if self._server is None:
            return
        server, self._server = self._server, None
        self._stopping.set()
        self.stop_waiting()
        self._end_posting()
        server.stop()
        await server.close_all_connections()
        await asyncio.sleep(0)  # handlers that were waiting end here

    # ── waiting for the bot ──────────────────────────────────────────────────

    async def until(self, holds: Callable[[], bool], seconds: float | None = PATIENCE) -> None:
        """Wait until something holds of this server; raises TimeoutError (None: never)."""
        async with asyncio.timeout(seconds):
            while not holds():
                await self._pulse.wait()

    async def taken(self, seconds: float = PATIENCE) -> None:
        """Wait until the bot has confirmed every update."""
        await self.until(lambda: not self.chats.updates, seconds)

    async def stopped(self) -> None:
        """Wait until this server stops."""
        await self._stopping.wait()

    def sent_to(self, chat: int) -> list[Sent]:
        """What reached this chat so far."""
        return [sent for sent in self.ledger if sent.chat == chat]

    async def sent(self, chat: int, count: int, seconds: float = PATIENCE) -> list[Sent]:
        """Wait until `count` messages have reached this chat, and give them all."""
        await self.until(lambda: len(self.sent_to(chat)) >= count, seconds)
        return self.sent_to(chat)

    # ── answering the bot ────────────────────────────────────────────────────

    async def answer(self, call: Call) -> object:
        """Carry out one call; raises Refusal."""
        match call.method:
            case "getUpdates":
                return await self._fetch(call)
            case "setWebhook":
                return self._set_webhook(call)
            case "deleteWebhook":
                return self._delete_webhook(call)
            case "getWebhookInfo":
                pending = len(self.chats.updates)
                return (self.webhook or Webhook(url="", secret="")).info(pending)
        before = len(self.ledger)
        result = self.methods.do(call)
        self._write_down(self.ledger[before:])
        self.changed()
        return result

    async def _fetch(self, call: Call) -> object:
        if self.webhook is not None:
            raise Refusal(409, "Conflict: can't use getUpdates method while webhook is active")
        if self._fetcher is not None and not self._fetcher.done():
            self._fetcher.set_exception(
                Refusal(409, "Conflict: terminated by other getUpdates request")
            )
        self.chats.confirm(int(call.parameters.get("offset") or 0))
        if not self.chats.updates:
            await self._wait_for_update(float(call.parameters.get("timeout") or 0))
        limit = int(call.parameters.get("limit") or MOST_UPDATES)
        return self.chats.updates[: min(limit, MOST_UPDATES)]

    async def _wait_for_update(self, seconds: float) -> None:
        mine = self._fetcher = asyncio.get_running_loop().create_future()
        self.changed()
        try:
            await asyncio.wait_for(mine, seconds)
        except TimeoutError:
            return  # nothing came: the answer is an empty list
        finally:
            if self._fetcher is mine:
                self._fetcher = None

    def stop_waiting(self) -> None:
        """Answer the one who fetches with what there is."""
        if self._fetcher is not None and not self._fetcher.done():
            self._fetcher.set_result(None)

    def _set_webhook(self, call: Call) -> bool:
        self._end_posting()
        self.webhook = None
        if call.parameters.get("url"):
            self.webhook = Webhook(
                url=call.parameters["url"], secret=call.parameters.get("secret_token", "")
            )
            self._posting = asyncio.create_task(
                self.webhook.post_all(self.chats, lambda holds: self.until(holds, seconds=None))
            )
        return True

    def _delete_webhook(self, call: Call) -> bool:
        self._end_posting()
        self.webhook = None
        if call.parameters.get("drop_pending_updates") == "true":
            self.chats.updates.clear()
        return True

    def _end_posting(self) -> None:
        if self._posting is not None:
            self._posting.cancel()
            self._posting = None

    def _write_down(self, news: list[Sent]) -> None:
        if self._journal is None:
            return
        with self._journal.open("a", encoding="utf-8") as lines:
            for sent in news:
                line = {"chat": sent.chat, "message": sent.message, "text": sent.text}
                lines.write(json.dumps(line) + "\n")

    def _chats_changed(self) -> None:
        if self.chats.updates:
            self.stop_waiting()
        self.changed()

    def changed(self) -> None:
        """Let everybody who waits for something look again."""
        self.revision += 1
        pulse, self._pulse = self._pulse, asyncio.Event()
        pulse.set()
