"""The bot's shell on virtual time, with a lying network, a failing disk and sudden deaths.

One process, one thread, one seed: the event loop's clock jumps to the next thing due, and
every fault is drawn from the seed, far more often than in life. Real SQL, real delivery,
real fetching; only the network and the alarm clock are replaced. What must hold in the end is
checked against what the chats saw; by hand: `PYTHONPATH=. python tests/faults/simulation.py`.
"""

import argparse
import asyncio
import logging
import random
import selectors
import sqlite3
import sys
from collections import Counter, defaultdict
from collections.abc import Awaitable, Callable, Iterator, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

from sqlalchemy.exc import OperationalError

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "conversation"))

from echo import PROMPT_WORTH, START, echo_turns, person  # type: ignore[import-not-found]

from bot.chat.pace import Pace
from bot.chat.polling import poll
from bot.chat.port import Gone, NotSent, Part, Throttled, Unsure
from bot.chat.updates import incoming
from bot.conversation import Conversation
from bot.delivery import Delivery
from bot.letterbox import Letterbox
from bot.making import Makes
from bot.messages import Delivered, Incoming, Kind
from bot.storage.codec import MILLISECOND, to_ms
from bot.storage.outbox import OWED_KEY
from bot.storage.store import Store
from bot.storage.urgency import CAUTION_OWED, URGENCY
from bot.storage.work import Work

HOUR = 3600.0
#: Whoever has lived so long has looked ten times who is due.
LOOKS = 600.0
#: How many of the messages their writer wants no answer to.
BLOCKS = 0.1
#: Ends of a caution that may not have arrived; `told`: it was said again since.
UNSURE = ("unsure", "expired", "told")


class JumpingSelector(selectors.SelectSelector):
    """Nobody waits: time jumps by what the loop would have slept."""

    def __init__(self) -> None:
        super().__init__()
        self.now = 0.0

    def select(self, timeout: float | None = None) -> list[Any]:
        self.now += timeout or 0.0
        return super().select(0)


class VirtualLoop(asyncio.SelectorEventLoop):
    """A loop that lives by its selector's time."""

    def __init__(self, selector: JumpingSelector) -> None:
        self._virtual = selector
        super().__init__(selector)

    def time(self) -> float:
        """Seconds of virtual time."""
        return self._virtual.now


class SimClock:
    """Both times are the loop's."""

    def __init__(self, selector: JumpingSelector) -> None:
        self._selector = selector

    def now(self) -> datetime:
        return START + timedelta(seconds=self._selector.now)

    real_now = now

    def monotonic(self) -> float:
        return self._selector.now

    def bot_time(self, real: datetime) -> datetime:
        return real

    def real_time(self, bot: datetime) -> datetime:
        return bot


class Inline:
    """In place of the writer's thread: at once."""

    async def run(self, call: Callable[..., Any], *args: Any, **kwargs: Any) -> Any:
        return call(*args, **kwargs)


class FlakyStore(Store):
    """Now and then a transaction cannot begin."""

    chance: random.Random
    trouble: float = 0.0

    @contextmanager
    def turn(self) -> Iterator[Work]:
        if self.chance.random() < self.trouble:
            raise OperationalError("BEGIN IMMEDIATE", None, sqlite3.OperationalError("locked"))
        with super().turn() as work:
            yield work


@dataclass
class World:
    """The chat program and the people: updates waiting, and everything that arrived."""

    chance: random.Random
    trouble: float = 0.1
    updates: list[dict[str, Any]] = field(default_factory=list)
    written: Counter[tuple[str, str]] = field(default_factory=Counter)
    arrived: list[tuple[float, str, str]] = field(default_factory=list)
    pulse: asyncio.Event = field(default_factory=asyncio.Event)
    #: From when to when each chat took no messages of ours.
    shut: defaultdict[str, list[tuple[float, float]]] = field(
        default_factory=lambda: defaultdict(list)
    )
    clock: SimClock | None = None
    serial: int = 0

    def block(self, chat: int) -> None:
        """This person wants nothing of ours, until they write again."""
        assert self.clock is not None
        self.shut[str(chat)].append((self.clock.monotonic(), float("inf")))

    def _is_shut(self, chat: str) -> bool:
        return bool(self.shut[chat]) and self.shut[chat][-1][1] == float("inf")

    def say(self, chat: int, text: str) -> None:
        assert self.clock is not None
        if self._is_shut(str(chat)):
            since, _ = self.shut[str(chat)][-1]
            self.shut[str(chat)][-1] = (since, self.clock.monotonic())
        self.serial += 1
        self.written[str(chat), str(self.serial)] += 1
        self.updates.append(
            {
                "update_id": self.serial,
                "message": {
                    "message_id": self.serial,
                    "date": int(self.clock.now().timestamp()),
                    "chat": {"id": chat, "type": "private"},
                    "text": text,
                },
            }
        )
        self.pulse.set()

    async def fetch(self, offset: int) -> list[dict[str, Any]]:
        await asyncio.sleep(0.05)
        if self.chance.random() < self.trouble:
            raise Unsure("fetch")
        self.updates = [update for update in self.updates if update["update_id"] >= offset]
        if not self.updates:
            self.pulse.clear()
            with suppress(TimeoutError):
                async with asyncio.timeout(25):
                    await self.pulse.wait()
        return self.updates[:100]

    async def send(self, chat: str, part: Part) -> Delivered:
        assert self.clock is not None
        await asyncio.sleep(self.chance.uniform(0.02, 0.2))
        lot = self.chance.random() / (self.trouble or 1e-9)
        if lot < 0.25:
            raise NotSent("refused")
        if lot < 0.5:
            raise Throttled(self.chance.randint(1, 40))
        if self._is_shut(chat):
            await asyncio.sleep(self.chance.uniform(0.02, 0.2))  # its answer is on the way
            raise Gone("blocked")
        if lot < 0.65:
            raise Unsure("never arrived")
        self.arrived.append((self.clock.monotonic(), chat, part.text))
        if lot < 1:
            raise Unsure("answer lost")
        return Delivered(message=str(len(self.arrived)))


@dataclass(frozen=True, kw_only=True)
class Plan:
    """What a run does; the last fields plant a fault of ours, one for each invariant."""

    seed: int
    people: int = 10
    days: int = 2
    trouble: float = 0.2
    confirm_early: bool = False
    forget_leases: bool = False
    retry_blindly: bool = False
    ignore_ends: bool = False
    mix_up_chats: bool = False
    end_at_once: str = ""
    cancel_cautions: bool = False
    owe_nothing: bool = False
    sleep_on: bool = False
    answer_nobody: bool = False


class Simulation:
    """One run of one seed."""

    def __init__(self, plan: Plan) -> None:
        self.plan = plan
        self.chance = random.Random(plan.seed)  # noqa: S311 - the seed is the point
        self.selector = JumpingSelector()
        self.loop = VirtualLoop(self.selector)
        self.clock = SimClock(self.selector)
        self.world = World(self.chance, trouble=plan.trouble, clock=self.clock)
        self.deaths = 0
        self.lives: list[tuple[float, float]] = []
        self.kept: list[tuple[str, int, str]] = []
        self.heard_at: defaultdict[str, list[int]] = defaultdict(list)
        self.alarms: dict[str, float] = {}
        self.rung: Counter[str] = Counter()

    def run(self) -> list[str]:
        """Play it to its end and say what does not hold."""
        self.store = FlakyStore.in_memory()
        self.store.chance = self.chance
        asyncio.set_event_loop(self.loop)
        before = random.getstate()
        random.seed(self.plan.seed)  # the waits of `poll` and `Delivery` are spread by it
        try:
            return self.loop.run_until_complete(self._play())
        finally:
            random.setstate(before)
            self.loop.close()
            asyncio.set_event_loop(None)
            self.store.close()

    async def _play(self) -> list[str]:
        conversation = self._conversation()
        for number in range(self.plan.people):
            conversation.enrol(person(f"p{number}"), START, chat=str(1000 + number))
        self.store.trouble = 0.01
        living = asyncio.create_task(self._live())
        writing = [self.loop.create_task(self._write(n)) for n in range(self.plan.people)]
        await asyncio.sleep(self.plan.days * 24 * HOUR)
        self.world.trouble = self.store.trouble = 0.0
        await asyncio.gather(*writing)
        await asyncio.sleep(3 * HOUR)
        living.cancel()
        await asyncio.gather(living, return_exceptions=True)
        return list(self._broken())

    async def _write(self, number: int) -> None:
        """A person's days: reports that ask for a prompt, and now and then a low."""
        for turn in range(self.plan.days * 4):
            await asyncio.sleep(self.chance.uniform(0.5, 1.5) * 6 * HOUR * 0.9)
            kind = self.chance.choice(("ring 7200", "caution", "plain", "plain"))
            self.world.say(1000 + number, f"{kind} of p{number}, {turn}")
            if self.chance.random() < 0.3:  # a burst
                self.world.say(1000 + number, f"and more of p{number}, {turn}")
            if self.chance.random() < BLOCKS:
                await asyncio.sleep(self.chance.uniform(0, 5))
                self.world.block(1000 + number)
                if self.chance.random() < 0.5:  # by mistake
                    await asyncio.sleep(self.chance.uniform(0, 1))
                    self.world.say(1000 + number, f"back again of p{number}, {turn}")

    async def _live(self) -> None:
        """Processes, one after the other: each is killed after a while, whatever it does."""
        while True:
            parts = self._process()
            self.lives.append((self.clock.monotonic(), float("inf")))
            try:
                await asyncio.sleep(self.chance.choice((0.3, 20.0, HOUR, 6 * HOUR)))
            finally:
                dying = [*parts, *self.delivery._under_way]
                for task in dying:
                    task.cancel()
                await asyncio.gather(*dying, return_exceptions=True)
                self.lives[-1] = (self.lives[-1][0], self.clock.monotonic())
            self.deaths += 1
            await asyncio.sleep(self.chance.choice((0.1, 60.0, 1.5 * HOUR)))

    def _process(self) -> list[asyncio.Task[Any]]:
        self.store._cache = type(self.store._cache)()  # memory dies with its process
        self.conversation = self._conversation()
        chat = _MixedUp(self.world) if self.plan.mix_up_chats else self.world
        self.delivery = _Delivery(
            self.store,
            Inline(),  # type: ignore[arg-type]
            chat,
            clock=self.clock,
            pace=Pace(30),
            makes=Makes(),
        )
        self.delivery._box = box = _Letterbox(self.store, self.clock, lambda _work: True)
        self.delivery.plan = box.plan = self.plan
        fetch = _poll_confirming_early if self.plan.confirm_early else poll
        parts = (fetch(self.world, self._take), self._wake_due(), self.delivery.run())
        return [self.loop.create_task(part, name="process") for part in parts]

    def _conversation(self) -> Conversation:
        return Conversation(
            self.store, echo_turns, real_now=self.clock.real_now, new_id=lambda: "nobody"
        )

    async def _take(self, updates: Sequence[Any]) -> None:
        waiting = [message for one in updates if (message := incoming(one, now=self.clock.now()))]
        while waiting:
            outcomes = self.conversation.hear_all(waiting, self.clock.now())
            for message, outcome in zip(waiting, outcomes, strict=False):
                if not outcome.repeated and not outcome.parked:
                    self._heard(message)
            if self.plan.answer_nobody:
                spoil(self.store, "DELETE FROM outbox WHERE kind = 'reply'")
            if self.plan.owe_nothing:
                spoil(self.store, "DELETE FROM outbox WHERE key LIKE 'owed:%'")
            waiting = waiting[len(outcomes) :]
            if any(outcome.said for outcome in outcomes):
                self.delivery.nudge()

    def _heard(self, message: Incoming) -> None:
        """Keep what is owed for it: an answer, a caution; a prompt, if it orders one."""
        reader, at = f"p{int(message.chat) - 1000}", self.clock.monotonic()
        self._count_alarm(reader, at)
        self.kept.append((reader, message.update, message.text))
        self.heard_at[reader].append(to_ms(self.clock.now()))
        if message.text.startswith("ring"):
            self.alarms[reader] = at + float(message.text.split()[1])

    def _count_alarm(self, reader: str, until: float) -> None:
        """Whether the last alarm must have rung by then: a process has lived long enough."""
        rings = self.alarms.pop(reader, until)
        alive = (min(end, until) - max(start, rings) for start, end in self.lives)
        self.rung[reader] += any(seconds > LOOKS for seconds in alive)

    async def _wake_due(self) -> None:
        while not self.plan.sleep_on:
            await asyncio.sleep(60)
            with suppress(OperationalError):
                with self.store.turn() as work:
                    due, _ = work.due(self.clock.now(), 50)
                if due:
                    self.conversation.wake_all(due, self.clock.now())
                self.delivery.nudge()

    # --- what must hold --------------------------------------------------------------------

    def _broken(self) -> Iterator[str]:
        with self.store.turn() as work:
            rows = work.connection.exec_driver_sql(
                "SELECT reader, kind, text, state, due_ms, key, made_real, expires_ms, until_real, "
                "settled_real FROM outbox"
            ).all()
            heard = Counter(
                (f"{1000 + int(who[1:])}", message)
                for who, message in work.connection.exec_driver_sql(
                    "SELECT participant, message FROM entry WHERE kind = 'wrote'"
                )
            )
        if heard != self.world.written:
            yield "a message was lost or kept twice"
        yield from self._missing({(row.reader, row.key) for row in rows})
        copies = Counter((chat, text) for _, chat, text in self.world.arrived)
        last = {(chat, text): at for at, chat, text in self.world.arrived}
        # A caution that is owed again and again says the same each time: each saying has copies.
        sayings = Counter((f"{1000 + int(row.reader[1:])}", row.text) for row in rows)
        keys = {(row.reader, row.key) for row in rows}
        for row in rows:
            yield from self._broken_by(row, copies, sayings, last)
            if row.state == "told" and (row.reader, OWED_KEY + row.key) not in keys:
                yield "a caution was called told and never said again"
            if row.kind == "caution" and row.state in ("unsure", "expired"):
                owed = row.made_real + CAUTION_OWED // MILLISECOND
                if any(row.settled_real < at < owed for at in self.heard_at[row.reader]):
                    yield "a caution that was owed was never said again"
        for _, chat, text in self.world.arrived:
            if " of p" in text and f" of p{int(chat) - 1000}," not in text:
                yield "somebody got another's text"

    def _missing(self, said: set[tuple[str, str]]) -> Iterator[str]:
        """What should have been said for a message, whatever became of it."""
        for reader, update, text in self.kept:
            if (reader, f"reply:{update}") not in said:
                yield "a message was never answered"
            if text.startswith("caution") and (reader, f"caution:reply:{update}") not in said:
                yield "a caution was never queued"
        for reader in [*self.alarms]:
            self._count_alarm(reader, self.clock.monotonic())
        for reader, rings in self.rung.items():
            asked = sum(key.startswith("prompt:") for who, key in said if who == reader)
            if asked < rings:
                yield "a prompt was never queued"

    def _broken_by(
        self,
        row: Any,
        copies: Counter[tuple[str, str]],
        sayings: Counter[tuple[str, str]],
        last: dict[tuple[str, str], float],
    ) -> Iterator[str]:
        kind, where = Kind(row.kind), (f"{1000 + int(row.reader[1:])}", row.text)
        if row.state in ("pending", "claimed", "sending"):
            yield f"a {kind} was never settled"
        else:
            yield from self._ended_too_soon(row, kind)
        if copies[where] > URGENCY[kind].copies * sayings[where]:
            yield f"more copies of a {kind} than its class allows"
        if row.state == "sent" and not copies[where]:
            yield f"a {kind} was marked sent and never arrived"
        if kind is Kind.CAUTION and not copies[where] and row.state not in UNSURE:
            yield "a caution was not delivered"
        if kind is Kind.PROMPT and where in last:
            ended = row.due_ms / 1000 - START.timestamp() + PROMPT_WORTH.total_seconds()
            if last[where] > ended + 1:  # what has left takes its time to arrive
                yield "a prompt left after its window"

    def _ended_too_soon(self, row: Any, kind: Kind) -> Iterator[str]:
        in_vain = self._met_a_shut_chat(row)
        if row.state == "cancelled" and not in_vain:
            yield f"a {kind} was cancelled whose reader takes messages"
        worth = [until for until in (row.expires_ms, row.until_real) if until is not None]
        early = not worth or row.settled_real < min(worth)
        if row.state == "expired" and early and not (in_vain and kind is Kind.CAUTION):
            yield f"a {kind} expired before its time"

    def _met_a_shut_chat(self, row: Any) -> bool:
        """Whether it ended while its reader took no messages, as far as the bot could know."""
        at = row.settled_real / 1000 - START.timestamp()
        heard = [ms / 1000 - START.timestamp() for ms in self.heard_at[row.reader]]
        return any(
            since <= at <= min((back for back in heard if back >= until), default=float("inf"))
            for since, until in self.world.shut[f"{1000 + int(row.reader[1:])}"]
        )


def spoil(store: Store, statement: str) -> None:
    """Plant a fault in the database."""
    with store.turn() as work:
        work.connection.exec_driver_sql(statement)


class _Letterbox(Letterbox):
    """The real one, with room for planted faults."""

    plan: Plan

    def claim(self, *args: Any) -> Any:
        if self.plan.ignore_ends:
            spoil(self._store, "UPDATE outbox SET expires_ms = NULL")
        if self.plan.end_at_once:
            spoil(
                self._store,
                f"UPDATE outbox SET state = '{self.plan.end_at_once}', "  # noqa: S608 - our word
                "settled_real = made_real WHERE state = 'pending'",
            )
        return super().claim(*args)

    def chat_gone(self, *args: Any) -> Any:
        gone = super().chat_gone(*args)
        if self.plan.cancel_cautions:
            spoil(self._store, "UPDATE outbox SET state = 'cancelled' WHERE state = 'expired'")
        return gone

    def recover(self) -> int:
        return 0 if self.plan.forget_leases else super().recover()

    def take_back(self) -> None:
        if not self.plan.forget_leases:
            super().take_back()


class _Delivery(Delivery):
    """The real one, with room for planted faults."""

    plan: Plan

    async def _after_unsure(self, letter: Any) -> None:
        if self.plan.retry_blindly:
            await self._put_back(letter, timedelta(seconds=1), False)
        else:
            await super()._after_unsure(letter)


class _MixedUp:
    """Sends to the neighbour now and then."""

    def __init__(self, world: World) -> None:
        self._world = world

    async def send(self, chat: str, part: Part) -> Delivered:
        wrong = self._world.chance.random() < 0.02
        return await self._world.send(str(int(chat) ^ 1) if wrong else chat, part)


async def _poll_confirming_early(
    client: World, take: Callable[[Sequence[Any]], Awaitable[None]]
) -> None:
    """The fault of fetching loops that confirm a batch before it is handled."""
    offset = 0
    while True:
        with suppress(Unsure, OperationalError):
            updates = await client.fetch(offset)
            if updates:
                offset = updates[-1]["update_id"] + 1
                await client.fetch(offset)
                await take(updates)


#: How often the network lies, in turn, in the long run.
TROUBLES = (0.1, 0.2, 0.4)


def main() -> None:
    """The long run by hand."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--first", type=int, default=1000, help="the first seed")
    parser.add_argument("--seeds", type=int, default=30)
    # A virtual day costs the same looks at the clock for ten people as for a hundred.
    parser.add_argument("--people", type=int, default=100)
    parser.add_argument("--days", type=int, default=2)
    args = parser.parse_args()
    deaths = arrived = 0
    logging.disable(logging.CRITICAL)  # every fault of the network would be a line
    for seed in range(args.first, args.first + args.seeds):
        trouble = TROUBLES[seed % len(TROUBLES)]
        plan = Plan(seed=seed, people=args.people, days=args.days, trouble=trouble)
        simulation = Simulation(plan)
        broken = simulation.run()
        deaths += simulation.deaths
        arrived += len(simulation.world.arrived)
        if broken:
            sys.stdout.write(f"seed {seed}: {Counter(broken)}\n")
    days = args.seeds * args.people * args.days
    sys.stdout.write(f"{days} participant-days, {deaths} deaths, {arrived} messages arrived\n")


if __name__ == "__main__":
    main()
