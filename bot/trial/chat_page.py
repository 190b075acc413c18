"""A page on this machine on which a visitor talks with the bot.

It shows what the stand-in server holds and writes there what the visitor writes; the bot behind
it is the real one. Served on loopback only, to this machine's own name only, without anything
from elsewhere.
"""

import asyncio
import errno
import signal
import sys
from collections.abc import AsyncIterator, Callable
from contextlib import AsyncExitStack, asynccontextmanager
from datetime import datetime
from socket import socket
from typing import Final

from tornado.httpserver import HTTPServer
from tornado.netutil import bind_sockets
from tzlocal import get_localzone_name

from bot.mendable import Mendable
from bot.settings import Settings
from bot.trial.addresses import application
from bot.trial.stand_in import HOST
from bot.trial.visit import Beginning, Played, Visit, visit
from bot.trial.visitors_clock import STANDING
from scheduler.clock import real_now

PORT: Final = 8420
SPEEDS: Final = (STANDING, 1.0, 60.0, 360.0)


class ChatPage:
    """What the page's addresses show: one visit at a time, opened by the visitor's choice.

    `now` is asked when an empty trial begins. `async with` closes the visit at the end.
    """

    def __init__(
        self, settings: Settings, *, zone: str, now: Callable[[], datetime] = real_now
    ) -> None:
        self.visit: Visit | None = None
        self.number = 0  # of the visit: a tab of an earlier one notices
        self.played: Played | None = None  # while one is being opened
        self.speeds = tuple(sorted({*SPEEDS, settings.clock_speed}))
        self._settings = settings
        self._zone = zone
        self._now = now
        self._open = AsyncExitStack()
        self._watching: asyncio.Task[None] | None = None
        self._broken: asyncio.Future[None] = asyncio.get_running_loop().create_future()

    async def open(self, beginning: Beginning) -> None:
        """End the open visit, if any, and begin another."""
        self.played = Played()
        try:
            await self.close()
            opened = await self._open.enter_async_context(
                visit(
                    self._settings,
                    beginning=beginning,
                    zone=self._zone,
                    now=self._now(),
                    note=self._note,
                )
            )
        finally:
            self.played = None
        self.number += 1
        self.visit = opened
        self._watching = asyncio.create_task(opened.trial.ended())
        self._watching.add_done_callback(self._ended)

    async def close(self) -> None:
        """End the open visit; its tabs find out."""
        if self.visit is not None:
            closed, self.visit = self.visit, None
            closed.trial.server.changed()
        await self._open.aclose()

    async def broken(self) -> None:
        """Wait until a bot ends by itself; raises what ended it."""
        await self._broken

    def _note(self, played: Played) -> None:
        self.played = played

    def _ended(self, watching: asyncio.Task[None]) -> None:
        error = None if watching.cancelled() else watching.exception()
        if error is not None and not self._broken.done():
            self._broken.set_exception(error)


@asynccontextmanager
async def serving(page: ChatPage, sockets: list[socket]) -> AsyncIterator[str]:
    """Serve the page on these sockets and give its address; at the end the visit is closed."""
    served = HTTPServer(application(page))
    served.add_sockets(sockets)
    try:
        yield f"http://{HOST}:{sockets[0].getsockname()[1]}/"
    finally:
        served.stop()
        await page.close()
        await served.close_all_connections()


async def serve_page(settings: Settings, port: int | None) -> None:
    """Serve the page until told to end; says on standard output where it is.

    `port` None is the usual one, or any free one if that is taken. Raises Mendable where a port
    that was asked for is taken, and whatever ends the bot.
    """
    sockets = _listen(port)
    stop = asyncio.Event()
    loop = asyncio.get_running_loop()
    for wanted in (signal.SIGTERM, signal.SIGINT):
        loop.add_signal_handler(wanted, stop.set)
    page = ChatPage(settings, zone=get_localzone_name())
    async with serving(page, sockets) as address:
        _say(f"The chat is open at {address} (end with Ctrl+C).")
        told, broken = asyncio.create_task(stop.wait()), asyncio.create_task(page.broken())
        await asyncio.wait((told, broken), return_when=asyncio.FIRST_COMPLETED)
        told.cancel()
        if broken.done():
            await broken
        broken.cancel()
    _say("The trial has ended. Nothing of it is kept.")


def _listen(port: int | None) -> list[socket]:
    try:
        return bind_sockets(PORT if port is None else port, HOST)
    except OSError as error:
        if port is not None:
            raise Mendable(_refused(port, error)) from error
    _say(f"Port {PORT} is taken (by another `try`, perhaps): this one gets a port of its own.")
    return bind_sockets(0, HOST)


def _refused(port: int, error: OSError) -> str:
    if error.errno == errno.EADDRINUSE:
        return f"port {port} is in use (by another `try`, perhaps): choose another, or --port 0"
    return f"port {port} cannot be used: {error.strerror}"


def _say(line: str) -> None:
    sys.stdout.write(f"{line}\n")
    sys.stdout.flush()
