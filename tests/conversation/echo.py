"""Small turn functions for tests of the shell, and a bot served with them over loopback.

`echo_turns` says back what it hears. A text can order more: `ring 5` wakes in five seconds
and says one prompt then; `break` fails; `caution x` queues a caution beside the reply;
`chart` queues a digest with a picture; `erase` erases.
"""

import asyncio
import re
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

from bot.conversation import Turns
from bot.messages import Incoming, Kind, Saying
from bot.participants import Enrolment, Invitation, Participant
from bot.record import Event, Spoke, Wrote
from bot.settings import Settings
from bot.trial.stand_in import TOKEN, StandIn
from bot.turns.turn import Joining, Opened, Turn
from bot.units import Unit
from bot.wiring import Makes, Service
from scheduler.clock import Clock, LiveClock, real_now

#: How long a prompt of these turns is worth sending.
PROMPT_WORTH = timedelta(minutes=2)
START = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)


def person(id_: str = "ann", **fields: object) -> Participant:
    """A participant as tests need one."""
    plain = Participant(id=id_, unit=Unit.MG_DL, zone="Europe/Rome", joined_at=START)
    return replace(plain, **fields)  # type: ignore[arg-type]


def saying(to: str, text: str, key: str, *, at: datetime = START, **fields: object) -> Saying:
    """A saying as tests need one; a reply unless told otherwise."""
    kind = fields.pop("kind", Kind.REPLY)
    return Saying(to=to, kind=kind, text=text, key=key, due_at=at, **fields)  # type: ignore[arg-type]


def hear(opened: Opened, incoming: Incoming, *, now: datetime, quoted: str | None) -> Turn:
    """Say back what was heard."""
    who, text = opened.participant, incoming.text
    if text == "break":
        raise KeyError("a fault of ours with 118 in it")
    key = f"reply:{incoming.update}"
    says = [saying(who.id, f"heard {text}" + (f" to {quoted}" if quoted else ""), key, at=now)]
    if text.startswith("caution"):
        says.insert(0, saying(who.id, text, f"caution:{key}", at=now, kind=Kind.CAUTION))
    if text == "chart":
        figures = {"figures": 1}
        says.append(
            saying(who.id, "your week", f"week:{key}", at=now, kind=Kind.DIGEST, picture=figures)
        )
    if text == "buttons":
        says[0] = saying(who.id, "more?", key, at=now, buttons=("yes", "no"))
    last = opened.last_id
    events = [Event(id=last + 1, at=now, body=Wrote(), message=incoming.message)]
    events += [
        Event(id=last + 2 + number, at=now, body=Spoke(kind=said.kind, about=None, key=said.key))
        for number, said in enumerate(says)
    ]
    ring = re.match(r"ring ([\d.]+)", text)
    return Turn(
        participant=who,
        events=tuple(events),
        says=tuple(says),
        wake_at=now + timedelta(seconds=float(ring.group(1))) if ring else None,
        erase=text == "erase",
    )


def wake(opened: Opened, *, now: datetime) -> Turn:
    """Say one prompt for the last thing heard."""
    who = opened.participant
    last = opened.last_id
    key = f"prompt:{last}"
    prompt = saying(
        who.id, f"prompt {last}", key, at=now, kind=Kind.PROMPT, expires_at=now + PROMPT_WORTH
    )
    spoke = Event(id=last + 1, at=now, body=Spoke(kind=Kind.PROMPT, about=None, key=key))
    return Turn(participant=who, events=(spoke,), says=(prompt,))


def start(participant: Participant, *, now: datetime) -> datetime | None:
    """Nobody is woken before they wrote."""
    del participant, now
    return None


def code_in(text: str) -> str | None:
    """`/start CODE`."""
    return text.removeprefix("/start ") if text.startswith("/start ") else None


def join(
    enrolment: Enrolment | None,
    invitation: Invitation | None,
    incoming: Incoming,
    *,
    now: datetime,
    new_id: str,
    clock_speed: float,
    group_told: bool,
) -> Joining:
    """Code, yes, in. In a group: once, that it talks in private."""
    del clock_speed
    to = f"chat:{incoming.chat}"
    key = f"reply:{incoming.update}"
    if not incoming.private:
        told = () if group_told else (saying(to, "private only", key, at=now),)
        return Joining(says=told)
    if invitation is None:
        return Joining(says=(saying(to, "bad code", key, at=now),))
    if enrolment is None or incoming.text != "yes":
        code = code_in(incoming.text) or dict(enrolment.known if enrolment else ())["code"]
        asked = Enrolment(stage="consent", known=(("code", code),))
        return Joining(enrolment=asked, says=(saying(to, "yes or no?", key, at=now),))
    return Joining(
        participant=person(new_id), says=(saying(new_id, "welcome", key, at=now),), used=True
    )


echo_turns = Turns(hear=hear, wake=wake, start=start, join=join, code_in=code_in)


async def until(holds: Callable[[], bool], seconds: float = 10) -> None:
    """Wait until something holds that nothing tells of; raises TimeoutError."""
    async with asyncio.timeout(seconds):
        while not holds():  # noqa: ASYNC110 - what is looked at sets no event
            await asyncio.sleep(0.01)


@dataclass
class ShiftedClock:
    """The machine's clock, moved on by a test instead of waiting."""

    by: timedelta = timedelta(0)
    live: LiveClock = field(default_factory=LiveClock.plain)

    def shift(self, **by: float) -> None:
        self.by += timedelta(**by)

    def now(self) -> datetime:
        return self.live.now() + self.by

    def real_now(self) -> datetime:
        return self.live.real_now() + self.by

    def monotonic(self) -> float:
        return self.live.monotonic() + self.by.total_seconds()

    def bot_time(self, real: datetime) -> datetime:
        return real

    def real_time(self, bot: datetime) -> datetime:
        return bot


@dataclass
class WallClock(ShiftedClock):
    """Only the clock on the wall is shifted."""

    def monotonic(self) -> float:
        return self.live.monotonic()


class Served:
    """A bot being served, the stand-in that it talks to, and its database."""

    def __init__(
        self,
        server: StandIn,
        folder: Path,
        *,
        clock: Clock | None = None,
        makes: Makes | None = None,
        turns: Turns | None = None,
    ) -> None:
        self.server = server
        self._turns = turns or echo_turns
        self.clock = clock or ShiftedClock()
        self.database = f"sqlite:///{folder / 'bot.db'}"
        self._makes = makes
        self._task: asyncio.Task[None] | None = None

    @property
    def settings(self) -> Settings:
        return Settings(telegram_token=TOKEN, telegram_api=self.server.url, database=self.database)

    async def start(self) -> None:
        self.service = Service(
            self.settings, clock=self.clock, turns=self._turns, makes=self._makes
        )
        self._stop, ready = asyncio.Event(), asyncio.Event()
        self._task = asyncio.create_task(self.service.run(self._stop, ready=ready))
        began = asyncio.create_task(ready.wait())
        await asyncio.wait((self._task, began), return_when=asyncio.FIRST_COMPLETED)
        began.cancel()
        if self._task.done():
            self._task.result()

    async def stop(self) -> None:
        if self._task is not None:
            self._stop.set()
            task, self._task = self._task, None
            await task

    async def enrolled(self, name: str = "Ann") -> int:
        """Open a chat of somebody who is enrolled."""
        chat = self.server.chats.open(name)
        await self.service.enrol(person(name.lower()), chat=str(chat))
        return chat

    def texts(self, chat: int) -> list[str]:
        return [sent.text for sent in self.server.sent_to(chat)]

    async def heard(self, chat: int, text: str) -> None:
        """Write, and wait for the answer."""
        before = len(self.server.sent_to(chat))
        self.server.chats.say(chat, text)
        await self.server.sent(chat, before + 1)

    def shift(self, **by: float) -> None:
        """Let time pass, for the bot and for its waits."""
        assert isinstance(self.clock, ShiftedClock)
        self.clock.shift(**by)
        self.service.look()


@asynccontextmanager
async def served(
    folder: Path,
    *,
    clock: Clock | None = None,
    makes: Makes | None = None,
    turns: Turns | None = None,
) -> AsyncIterator[Served]:
    """Serve a bot with echo turns on a fresh database in a folder."""
    async with StandIn(real_now) as server:
        bot = Served(server, folder, clock=clock, makes=makes, turns=turns)
        await bot.start()
        try:
            yield bot
        finally:
            await bot.stop()
