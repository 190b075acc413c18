"""One long run of two receivers and two workers, and what became of it.

In turn: calm, with hosts whose clocks are four minutes apart; a receiver killed; each worker
killed, so the one that sends too; the one that sends frozen and thawed; PostgreSQL restarted.
People write and prompts fall due all the while. By hand:
`python -m pytest tests/many -s -k story`.
"""

import asyncio
import signal
from collections import Counter
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import partial
from itertools import pairwise

from bot.storage.store import Store
from bot.trial.methods import Sent
from scheduler.clock import real_now
from tests.many.machines import RECEIVERS, WORKERS, Machines, enrol, machines, within, writing
from tests.postgres import Server

#: People who write all the while; the others only wait for their prompt.
WRITERS = 6
#: Prompts a phase.
PROMPTS = 25
#: Seconds that a phase may take until all of its prompts are sent.
PATIENCE = 60


@dataclass(frozen=True, kw_only=True)
class Phase:
    """What happened from one fault to the next.

    `prompted` are the readers whose prompt fell due in it, with the instant; `silent_for` the
    longest time (s) without any message sent in it.
    """

    name: str
    prompted: dict[int, datetime]
    silent_for: float = 0.0


@dataclass(kw_only=True)
class Story:
    """The whole run."""

    phases: list[Phase] = field(default_factory=list)
    ledger: list[Sent] = field(default_factory=list)
    written: dict[int, list[str]] = field(default_factory=dict)
    handled: dict[int, list[str]] = field(default_factory=dict)
    kept: int = 0
    replies: Counter[tuple[int, str]] = field(default_factory=Counter)
    unsure: set[tuple[int, str]] = field(default_factory=set)
    senders: list[str | None] = field(default_factory=list)
    jobs_left: int = 0
    parked: int = 0
    ended: dict[str, int] = field(default_factory=dict)
    file: bytes | None = None
    times_posted: int = 0

    def __str__(self) -> str:
        waits = ", ".join(f"{phase.name} {phase.silent_for:.1f}" for phase in self.phases)
        copies = Counter(
            len(sent) for phase in self.phases for sent in self.prompts(phase).values()
        )
        return (
            f"{self.kept} messages, {self.times_posted} posts, copies of a prompt {dict(copies)}; "
            f"longest silence (s): {waits}"
        )

    def phase(self, name: str) -> Phase:
        """One phase by its name."""
        return next(phase for phase in self.phases if phase.name == name)

    def prompts(self, phase: Phase) -> dict[int, list[Sent]]:
        """What each reader of a phase was sent."""
        found: dict[int, list[Sent]] = {chat: [] for chat in phase.prompted}
        for sent in self.ledger:
            if sent.chat in found:
                found[sent.chat].append(sent)
        return found


async def play() -> Story:
    """Play it. Raises NoServer where there is no PostgreSQL."""
    with Server.begun() as postgres, postgres.database() as url:
        await asyncio.to_thread(lambda: Store.open(url, upgrade=True).close())
        async with machines(url, receiver_1=120, worker_1=-120, worker_2=60) as hosts:
            return await _Play(hosts, postgres).play()


class _Play:
    """The run while it goes on."""

    def __init__(self, hosts: Machines, postgres: Server) -> None:
        self.hosts = hosts
        self.server = hosts.server
        self.postgres = postgres
        self.story = Story(ledger=hosts.server.ledger)

    async def play(self) -> Story:
        hosts, story = self.hosts, self.story
        writers = enrol(self.server, hosts.url, [None] * WRITERS, "w")
        await hosts.start(*RECEIVERS, *WORKERS)
        chatter = asyncio.create_task(writing(self.server, writers[:-1], 0.25))
        async with self.phase("calm"):
            story.senders.append(await hosts.sender())
            self.server.chats.say(writers[-1], "export")
            await self.server.sent(writers[-1], 1, 30)
        story.senders.append(await hosts.sender())
        async with self.phase("receiver killed"):
            await hosts.kill("receiver 1")
        await hosts.start("receiver 1")
        async with self.phase("worker 1 killed"):
            await hosts.kill("worker 1")
        await hosts.start("worker 1")
        async with self.phase("worker 2 killed"):
            await hosts.kill("worker 2")
        await hosts.start("worker 2")
        async with self.phase("sender frozen"):
            await self.freeze_whoever_sends()
        async with self.phase("database restarted"):
            await asyncio.to_thread(self.postgres.restart)
        chatter.cancel()
        await hosts.quiet()
        await self.look(writers)
        story.ended = await hosts.stop()
        return story

    @asynccontextmanager
    async def phase(self, name: str) -> AsyncIterator[None]:
        """Prompts fall due over three seconds; the block has its fault; all of them come."""
        dues = [timedelta(seconds=2 + 3 * number / PROMPTS) for number in range(PROMPTS)]
        now = real_now().replace(microsecond=0)
        chats = enrol(self.server, self.hosts.url, list(dues), name.replace(" ", "-"))
        await self.hosts.ask("NOTIFY afterplate, 'soon'")
        began = len(self.server.ledger)
        start = real_now()
        yield
        due = dict(zip(chats, (now + due_in for due_in in dues), strict=True))
        phase = Phase(name=name, prompted=due)
        self.story.phases.append(phase)
        await self.server.until(lambda: all(self.story.prompts(phase).values()), PATIENCE)
        instants = [start, *(sent.at for sent in self.server.ledger[began:]), real_now()]
        gaps = [later - sooner for sooner, later in pairwise(instants)]
        longest = max(gaps) / timedelta(seconds=1)
        self.story.phases[-1] = Phase(name=name, prompted=due, silent_for=longest)

    async def freeze_whoever_sends(self) -> None:
        """Freeze the workers in turn until it was the one that sends; thaw each again."""
        before = await self.hosts.sender()
        for name in WORKERS:
            process = self.hosts.running[name]
            process.send_signal(signal.SIGSTOP)
            await asyncio.sleep(1)  # what was on its way arrives
            if not await self.sent_within(5):
                await within(30, partial(self.another_sends_than, before))
                process.send_signal(signal.SIGCONT)
                return
            process.send_signal(signal.SIGCONT)
        raise AssertionError("neither of the workers sends")

    async def sent_within(self, seconds: float) -> int:
        before = len(self.server.ledger)
        await asyncio.sleep(seconds)
        return len(self.server.ledger) - before

    async def another_sends_than(self, before: str | None) -> bool:
        return await self.hosts.sender() not in (None, before)

    async def look(self, writers: list[int]) -> None:
        """What the database says in the end."""
        story, ask = self.story, self.hosts.ask
        handled = await ask(
            "SELECT participant, message FROM entry WHERE kind = 'wrote' ORDER BY participant, id"
        )
        for number, chat in enumerate(writers):
            story.written[chat] = [
                str(message["message_id"])
                for message in self.server.chats[chat].history.values()
                if not message["from"]["is_bot"]
            ]
            story.handled[chat] = [message for who, message in handled if who == f"w{number}"]
        story.kept = (await ask("SELECT count(*) FROM heard"))[0][0]
        for chat, text, state in await ask(
            "SELECT chat, text, state FROM outbox WHERE kind IN ('reply', 'prompt')"
        ):
            story.replies[int(chat), text] += 1
            if state == "unsure":
                story.unsure.add((int(chat), text))
        story.jobs_left = (await ask("SELECT count(*) FROM procrastinate_jobs"))[0][0]
        story.parked = (await ask("SELECT count(*) FROM seen WHERE error IS NOT NULL"))[0][0]
        files = [sent.file for sent in self.server.sent_to(writers[-1]) if sent.file]
        story.file = files[0].body if files else None
        story.times_posted = sum(self.server.posts.values())
