"""Two receivers and two workers as real processes, and a chat program that posts to them."""

import asyncio
import os
import signal
import sys
from collections import Counter
from collections.abc import AsyncIterator, Awaitable, Callable, Iterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import partial
from itertools import cycle
from pathlib import Path
from typing import Any

import httpx
import psycopg
from tornado.testing import bind_unused_port

from bot.chat.webhook import SECRET_HEADER
from bot.entries import Food, FoodKind, Meal
from bot.participants import Participant
from bot.record import Event
from bot.storage.store import Store
from bot.storage.work import ChatSeen
from bot.trial.methods import Call
from bot.trial.stand_in import TOKEN, StandIn
from bot.trial.webhook import Webhook
from bot.turns.turn import Turn
from bot.units import Unit
from scheduler.clock import real_now
from scheduler.postgres import prepare

HOST = Path(__file__).with_name("host.py")
CHECKOUT = HOST.parents[2]
RECEIVERS, WORKERS = ("receiver 1", "receiver 2"), ("worker 1", "worker 2")
#: Seconds before an update that was not taken is posted again, to the other receiver.
AGAIN_AFTER = 0.2


class PostingStandIn(StandIn):
    """Posts like the real one: messages of one chat one after the other, chats side by side.

    Each update goes to the next receiver in turn, as behind a balancer, and to the other one
    when it is not taken. A press of a button has a queue of its own, beside the chat's.
    """

    def __init__(self) -> None:
        super().__init__(real_now)
        self.receivers: list[str] = []
        self.taken_by: Counter[str] = Counter()
        self.posts: dict[int, int] = {}
        self._office: asyncio.Task[None] | None = None
        self._busy: set[str] = set()

    def _set_webhook(self, call: Call) -> bool:
        secret = call.parameters.get("secret_token", "")
        self.webhook = Webhook(url=call.parameters["url"], secret=secret)
        if self._office is None:
            self._office = asyncio.create_task(self._keep_posting())
        return True

    async def stop(self) -> None:
        """Close the office too."""
        if self._office is not None:
            self._office.cancel()
            await asyncio.gather(self._office, return_exceptions=True)
        await super().stop()

    async def _keep_posting(self) -> None:
        turns = cycle(range(len(self.receivers)))
        limits = httpx.Limits(max_connections=40)
        async with (
            httpx.AsyncClient(trust_env=False, limits=limits, timeout=10) as client,
            asyncio.TaskGroup() as posting,
        ):
            while True:
                for queue, update in list(self._next_of_each_queue()):
                    self._busy.add(queue)
                    posting.create_task(self._post(client, queue, update, turns))
                revision = self.revision
                await self.until(partial(self._moved_on, revision), seconds=None)

    def _moved_on(self, revision: int) -> bool:
        return self.revision != revision

    def _next_of_each_queue(self) -> Iterator[tuple[str, Any]]:
        seen = set(self._busy)
        for update in self.chats.updates:
            queue = queue_of(update)
            if queue not in seen:
                seen.add(queue)
                yield queue, update

    async def _post(
        self, client: httpx.AsyncClient, queue: str, update: Any, turns: Iterator[int]
    ) -> None:
        assert self.webhook is not None
        number = int(update["update_id"])
        while True:
            receiver = self.receivers[next(turns)]
            self.posts[number] = self.posts.get(number, 0) + 1
            try:
                headers = {SECRET_HEADER: self.webhook.secret}
                answer = await client.post(receiver, json=update, headers=headers)
                if answer.is_success:
                    break
            except httpx.HTTPError:
                pass  # nobody is there
            await asyncio.sleep(AGAIN_AFTER)
        self.taken_by[receiver] += 1
        self.chats.updates = [one for one in self.chats.updates if one is not update]
        self._busy.discard(queue)
        self.changed()


def queue_of(update: Any) -> str:
    """Which updates follow each other strictly (telegram-bot-api, WebhookActor and Client)."""
    press = update.get("callback_query")
    if press is not None:
        return f"press {press['from']['id']}"
    message = update.get("message") or update.get("edited_message")
    return f"chat {message['chat']['id']}" if message else f"update {update['update_id']}"


@dataclass
class Machines:
    """The hosts of one bot by name, each a process."""

    url: str
    server: PostingStandIn
    listens: dict[str, str]
    wrong_by: dict[str, float] = field(default_factory=dict)
    running: dict[str, asyncio.subprocess.Process] = field(default_factory=dict)
    settings: dict[str, str] = field(default_factory=dict)

    async def start(self, *names: str) -> None:
        """Start hosts, and wait until the receivers among them listen."""
        for name in names:
            self.running[name] = await asyncio.create_subprocess_exec(
                sys.executable,
                str(HOST),
                str(self.wrong_by.get(name, 0)),
                "serve",
                *self._role(name),
                cwd=CHECKOUT,
                start_new_session=True,
                env={
                    **os.environ,
                    "PYTHONPATH": str(CHECKOUT),
                    "AFTERPLATE_TELEGRAM_TOKEN": TOKEN,
                    "AFTERPLATE_TELEGRAM_API": self.server.url,
                    "AFTERPLATE_DATABASE": self.url,
                    "AFTERPLATE_SEND_PER_SECOND": "300",
                    "AFTERPLATE_LOG": "error",
                    **self.settings,
                },
            )
        async with asyncio.timeout(60):
            for name in names:
                while name in self.listens and not await self._listens(name):
                    assert self.running[name].returncode is None, f"{name} has ended"
                    await asyncio.sleep(0.05)

    async def kill(self, name: str) -> None:
        """As if the host had lost its power."""
        os.killpg(self.running[name].pid, signal.SIGKILL)
        await self.running[name].wait()

    async def stop(self) -> dict[str, int]:
        """End all that run in good order; gives how each ended."""
        for process in self.running.values():
            if process.returncode is None:
                process.send_signal(signal.SIGTERM)
        async with asyncio.timeout(30):
            return {name: await process.wait() for name, process in self.running.items()}

    async def sender(self) -> str | None:
        """The word of the one who holds the part of sending."""
        found = await self.ask(
            "SELECT split_part(value, ' ', 1) FROM fact WHERE name = 'part:sending' AND "
            "split_part(value, ' ', 2)::bigint > extract(epoch FROM clock_timestamp()) * 1000"
        )
        return found[0][0] if found else None

    async def ask(self, question: str) -> list[tuple[Any, ...]]:
        """Look into the database; nothing while it is away."""
        try:
            async with await psycopg.AsyncConnection.connect(self.url, autocommit=True) as line:
                done = await line.execute(question)
                return await done.fetchall() if done.description else []
        except psycopg.OperationalError:
            return []

    async def quiet(self, seconds: float = 60) -> None:
        """Wait until every update is taken, nobody is due and nothing waits to be sent."""
        question = """
            SELECT (SELECT count(*) FROM outbox WHERE state IN ('pending', 'claimed', 'sending')),
            (SELECT count(*) FROM participant
             WHERE next_wake_ms <= (extract(epoch FROM now()) + 30) * 1000)
        """
        async with asyncio.timeout(seconds):
            await self.server.taken(seconds)
            while await self.ask(question) != [(0, 0)]:  # noqa: ASYNC110 - a table tells of nothing
                await asyncio.sleep(0.2)

    def _role(self, name: str) -> tuple[str, ...]:
        if name not in self.listens:
            return ("--only", "work")
        place = self.listens[name].removeprefix("http://").removesuffix("/hook")
        public = "https://bot.example.org/hook"
        return ("--only", "receive", "--webhook", public, "--listen", place)

    async def _listens(self, name: str) -> bool:
        try:
            async with httpx.AsyncClient(trust_env=False) as client:
                return (await client.post(self.listens[name])).status_code == 403
        except httpx.HTTPError:
            return False


@asynccontextmanager
async def machines(url: str, **wrong_by: float) -> AsyncIterator[Machines]:
    """The hosts, none of them started; all are gone at the end."""
    prepare(url)
    async with PostingStandIn() as server:
        hosts = Machines(
            url, server, {name: f"http://127.0.0.1:{free()}/hook" for name in RECEIVERS}
        )
        hosts.wrong_by = {name.replace("_", " "): seconds for name, seconds in wrong_by.items()}
        server.receivers = list(hosts.listens.values())
        try:
            yield hosts
        finally:
            for process in hosts.running.values():
                if process.returncode is None:
                    os.killpg(process.pid, signal.SIGKILL)
                    await process.wait()


def free() -> int:
    """A port that nobody listens at."""
    socket, port = bind_unused_port()
    socket.close()
    return int(port)


def enrol(server: StandIn, url: str, dues: list[timedelta | None], prefix: str = "p") -> list[int]:
    """A chat each, whose prompt after a meal falls due so long from now (None: no meal)."""
    store = Store.open(url)
    now = real_now().replace(microsecond=0)
    chats = []
    with store.turn() as work:
        for number, due_in in enumerate(dues):
            started = now - timedelta(minutes=120) + (due_in or timedelta())
            who = person(f"{prefix}{number}", started, now)
            chats.append(server.chats.open(who.id))
            work.enrol(who, now)
            work.keep_chat(ChatSeen(id=str(chats[-1]), participant=who.id), now)
            if due_in is not None:
                food = Food(text="rice", kind=FoodKind.STARCH)
                rice = Meal(text="rice", started_at=started, foods=(food,))
                meal = Event(id=1, at=started, body=rice, message="0")
                due = started + timedelta(minutes=120)
                work.save(Turn(participant=who, events=(meal,), wake_at=due))
    store.close()
    return chats


def person(name: str, joined_at: datetime, now: datetime) -> Participant:
    """Somebody whose quiet time is far away."""
    return Participant(
        id=name,
        unit=Unit.MG_DL,
        zone="UTC",
        joined_at=joined_at,
        quiet_from=(now + timedelta(hours=6)).time(),
        quiet_to=(now + timedelta(hours=7)).time(),
    )


async def writing(server: StandIn, chats: list[int], every: float) -> None:
    """Somebody writes all the time, in turn, numbers that tell the order."""
    number = 0
    while True:
        server.chats.say(chats[number % len(chats)], "help")
        number += 1
        await asyncio.sleep(every)


async def within(seconds: float, holds: Callable[[], Awaitable[bool]]) -> float:
    """Wait until something holds; gives how long it took, raises TimeoutError."""
    loop = asyncio.get_running_loop()
    began = loop.time()
    async with asyncio.timeout(seconds):
        while not await holds():  # noqa: ASYNC110 - what is asked sets no event
            await asyncio.sleep(0.1)
    return loop.time() - began
