"""One person in a chat with the whole live bot, on a clock that the test steps."""

import asyncio
from collections.abc import AsyncIterator, Callable
from contextlib import AbstractAsyncContextManager, asynccontextmanager
from datetime import UTC, datetime, timedelta

import pytest

from bot.participants import Participant
from bot.settings import Settings
from bot.storage.work import Work
from bot.trial.methods import Sent
from bot.trial.trial import StoryClock, Trial
from bot.units import Unit

# A Monday at noon, Lisbon time (which is UTC in winter).
NOON = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)
LISBON = "Europe/Lisbon"


class Talk:
    """The person's side: what they do, and what the bot said since they last looked."""

    def __init__(self, trial: Trial, clock: StoryClock) -> None:
        self.trial = trial
        self.clock = clock
        self.chats = trial.server.chats
        self.chat = self.chats.open("Ana")
        self._read = 0

    async def enrol(self, **known: object) -> None:
        """Join without the questions."""
        person = Participant(
            id="ana", unit=Unit.MG_DL, zone=LISBON, joined_at=self.clock.now(), **known
        )
        await self.trial.service.enrol(person, chat=str(self.chat))
        await self.heard()

    async def heard(self) -> list[Sent]:
        """Let the bot come to rest, and give what it said meanwhile."""
        await self.trial.at_rest()
        sent = self.trial.server.sent_to(self.chat)
        news, self._read = sent[self._read :], len(sent)
        return news

    async def say(self, text: str, *, quotes: int | None = None) -> list[Sent]:
        """Write, and hear the answer."""
        self.chats.say(self.chat, text, quotes=quotes)
        return await self.heard()

    async def passes(self, **time: float) -> list[Sent]:
        """Let time go by, stopping wherever something is due; give what was said."""
        until = self.clock.now() + timedelta(**time)
        await self.trial.at_rest()
        while (due := await self.trial.service.next_due()) is not None and due <= until:
            self.clock.step_to(max(due, self.clock.now()))
            self.trial.service.look()
            await self.trial.at_rest()
        self.clock.step_to(until)
        self.trial.service.look()
        return await self.heard()

    async def kept(self, question: Callable[[Work], object]) -> object:
        """Look into the database."""
        from bot.storage.store import Store  # noqa: PLC0415

        def ask() -> object:
            store = Store.open(self.trial.url)
            with store.turn() as work:
                answer = question(work)
            store.close()
            return answer

        return await asyncio.to_thread(ask)


Talking = Callable[[], AbstractAsyncContextManager[Talk]]


@asynccontextmanager
async def talking(start: datetime = NOON) -> AsyncIterator[Talk]:
    """A running bot and a fresh chat with it."""
    clock = StoryClock(start)
    settings = Settings(_env_file=None, send_per_second=1000)
    async with Trial(settings, clock=clock, dated_by=clock.now) as trial:
        yield Talk(trial, clock)


@pytest.fixture
async def stranger() -> AsyncIterator[Talk]:
    """A chat that belongs to nobody yet."""
    async with talking() as talk:
        yield talk


@pytest.fixture
async def ana(stranger: Talk) -> Talk:
    """Somebody who has joined: mg/dL, Lisbon, main meal at 13:00, lows not possible."""
    from datetime import time  # noqa: PLC0415

    await stranger.enrol(main_meal=time(13), may_go_low=False, ketone_risk=False)
    return stranger
