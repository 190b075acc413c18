"""The wiring of several machines on one PostgreSQL: what differs from that of one.

Receivers take updates; workers wake people, make pictures and files; one worker at a time
sends, at the one pace that the bot's token has. A process is a receiver, a worker or both.
What holds between them stands in docs/many-machines.md.
"""

import asyncio
import contextlib
import logging
import secrets
from collections.abc import Callable, Coroutine, Mapping
from concurrent.futures import ThreadPoolExecutor
from datetime import datetime
from enum import StrEnum
from math import inf
from typing import Any

from psycopg import Error as DatabaseGone
from psycopg_pool import PoolTimeout

from bot.chat.pace import Pace
from bot.chat.telegram import TelegramChat
from bot.delivery import Delivery
from bot.logs import say
from bot.making import Makes
from bot.mendable import Mendable
from bot.metrics.meter import Loop
from bot.parts import OUTBOX, Part, Sends, SharedDelivery
from bot.settings import Settings
from bot.storage import shared
from bot.storage.store import Store, Writer
from bot.storage.work import Work
from bot.wiring import LONGEST_ALARM, Service, clock_of
from scheduler.clock import Clock, SharedClock
from scheduler.port import Due, Engine
from scheduler.postgres import MISSED, PostgresEngine, Wire, is_prepared
from scheduler.postgres import prepare as prepare_engine

_LOG = logging.getLogger(__name__)

#: Turns that one process may take side by side, always of different chats.
TURNS_AT_ONCE = 4
#: Several processes that begin together ask only once whether the bot was away.
ASKED_TOGETHER = 60.0


class Role(StrEnum):
    """What a process does."""

    BOTH = "both"
    RECEIVE = "receive"
    WORK = "work"


def prepare(url: str) -> None:
    """Make what the job engine keeps in the database, as its owner. Raises Mendable."""
    try:
        prepare_engine(url)
    except DatabaseGone as error:
        raise Mendable(f"the job engine cannot be prepared: {type(error).__name__}") from error


class Crew(Writer):
    """Several threads for turns: on PostgreSQL those of different people run side by side."""

    def __init__(self, threads: int) -> None:
        super().__init__()
        self._thread = ThreadPoolExecutor(max_workers=threads, thread_name_prefix="turns")


class SharedService(Service):
    """One process of several that are together the live bot."""

    # The chat program posts one chat's messages one after the other all the same.
    CONNECTIONS = 20

    def __init__(
        self,
        settings: Settings,
        *,
        role: Role = Role.BOTH,
        webhook: str | None = None,
        listen: str | None = None,
    ) -> None:
        makes = Makes(draw=self._draw_anywhere, attach=self._attach_anywhere)
        super().__init__(settings, makes=makes, webhook=webhook, listen=listen)
        self._role = role
        self._me = secrets.token_hex(8)
        self._writer = Crew(TURNS_AT_ONCE)
        self._sending = Crew(2)
        self._making = Crew(2)
        self._listeners: list[Callable[[str], None]] = []

    async def run(self, stop: asyncio.Event, *, ready: asyncio.Event | None = None) -> None:
        """Serve until `stop` is set. Raises Mendable where it cannot begin."""
        try:
            await super().run(stop, ready=ready)
        finally:
            self._sending.close()
            self._making.close()

    async def _serve(self, store: Store, stop: asyncio.Event, ready: asyncio.Event | None) -> None:
        url = self._settings.database
        self._wire = Wire(url, self._shared_clock, heard=self._heard)
        async with contextlib.AsyncExitStack() as stack:
            try:
                if not await asyncio.to_thread(is_prepared, url):
                    raise Mendable("the job engine's tables are missing: run migrate first")
                await stack.enter_async_context(self._wire)
            except (DatabaseGone, PoolTimeout, TimeoutError) as error:
                raise Mendable(f"the database cannot be reached: {type(error).__name__}") from error
            await super()._serve(store, stop, ready)

    def _heard(self, word: str) -> None:
        for listener in self._listeners:
            listener(word)

    # --- other parts in the places of one machine's ----------------------------------------

    @property
    def _beside(self) -> Writer:
        return self._making

    @property
    def _takes_part_in_intake(self) -> bool:
        if self._role is Role.WORK:
            return False
        return self._webhook is not None or self._fetching.is_mine

    def _begin_clock(self, store: Store) -> Clock:
        self._shared_clock = SharedClock(clock_of(store, self._settings.clock_speed).rate)
        return self._shared_clock

    def _make_engine(self) -> Engine:
        makes = {"picture": self._picture, "file": self._file}
        url = self._settings.database
        self._waking = PostgresEngine(url, self._shared_clock, self._wire, makes=makes)
        self._listeners.append(self._waking.heard)
        return self._waking

    def _make_delivery(self, chat: TelegramChat) -> Sends:
        part = None if self._role is Role.RECEIVE else self._part("sending", Loop.DELIVERY)
        delivery = SharedDelivery(part, lambda part: self._delivery_of(chat, part), self._wire.ring)
        self._listeners.append(lambda word: delivery.heard() if word in (OUTBOX, MISSED) else None)
        self._fetching = self._part("fetching", Loop.INTAKE)
        return delivery

    def _delivery_of(self, chat: TelegramChat, part: Part) -> Delivery:
        pace = Pace(self._settings.send_per_second)
        # Whoever sent before may have sent just now: keep the second's cap across both.
        pace.hold_all(self._clock.monotonic() + 1)
        return Delivery(
            self._store,
            self._sending,
            chat,
            clock=self._clock,
            pace=pace,
            makes=self._makes,
            meter=self._meter,
            may_claim=part.is_held,
            longest_look=1.0,
        )

    def _part(self, name: str, loop: Loop) -> Part:
        return Part(
            name,
            self._store,
            self._sending,
            self._clock,
            standing_by=lambda: self._meter.beat(loop, LONGEST_ALARM),
        )

    def _parts(self, chat: TelegramChat) -> dict[str, Coroutine[Any, Any, None]]:
        parts = {"housekeeping": self._keep_house(), "delivery": self._delivery.run()}
        if self._role is Role.RECEIVE:
            for loop in (Loop.ALARM, Loop.DELIVERY):
                self._meter.beat(loop, inf)  # not this process's
        else:
            parts["alarm"] = self._engine.run(self._due, self._wake)
        parts["intake"] = self._stand_by() if self._role is Role.WORK else self._intake(chat)
        return parts

    async def _stand_by(self) -> None:
        self._meter.beat(Loop.INTAKE, inf)
        self._say_ready()
        await asyncio.Event().wait()  # until cancelled

    async def _intake(self, chat: TelegramChat) -> None:
        if self._webhook is not None:
            await super()._intake(chat)
            return
        self._say_ready()
        intake = super()._intake
        await self._fetching.play(lambda: intake(chat))

    def _say_ready(self) -> None:
        say(_LOG, logging.INFO, "serving", role=self._role.value)
        if self._ready is not None:
            self._ready.set()

    def _after_absence(self) -> None:
        if self._role is Role.WORK:
            return
        with self._store.turn() as work:
            first = shared.take(work.connection, "absence", self._me, ASKED_TOGETHER)
        if first:
            super()._after_absence()

    async def _due(self, until: datetime, limit: int) -> Due:
        self._meter.beat(Loop.ALARM, LONGEST_ALARM)
        found = await self._writer.run(
            self._read, lambda work: shared.due_until(work.connection, until, limit)
        )
        return Due(who=tuple(who for who, _ in found), at=tuple(at for _, at in found))

    # --- made on whichever worker is free --------------------------------------------------

    async def _draw_anywhere(self, row: int, _picture: Mapping[str, Any]) -> bytes:
        return await self._waking.get("picture", str(row))

    async def _attach_anywhere(self, reader: str, what: str) -> tuple[str, bytes]:
        name, _, body = (await self._waking.get("file", f"{reader} {what}")).partition(b"\n")
        return name.decode(), body

    async def _picture(self, row: str) -> bytes:
        def figures(work: Work) -> Mapping[str, Any]:
            return shared.picture_of(work.connection, int(row))

        return await self._drawing(await self._making.run(self._read, figures))

    async def _file(self, word: str) -> bytes:
        reader, _, what = word.partition(" ")
        name, body = await self._attach(reader, what)
        return name.encode() + b"\n" + body
