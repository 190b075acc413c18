"""The one place where parts are put together.

For `serve`, `try` and tests: `Service(settings)` is the whole live bot; `await service.run(stop)`
serves until the event is set. `clock=` takes another clock (`scheduler.clock.SteppedClock` for
a story played through the live parts: step it, then `service.look()`); `service.is_idle` tells
that nothing is in flight, `await service.next_due()` when the next person is to be woken.

For `replay`: `Replay()` is the same store, conversation and turns on virtual time, in memory:

    replay = Replay()
    replay.enrol(participant, at)          # time goes on to `at` first: earlier wakes happen
    replay.hear(incoming)                  # likewise to incoming.at, what is due AT it comes after
    replay.pass_to(at)                     # `at` included
    replay.said                            # Said(number, letter) in order; number from 1
    replay.participants(), replay.events(who), replay.parked()

An incoming message's `chat` is the participant's id there, its `quotes` a number in `said`.
"""

import asyncio
import contextlib
import json
import logging
import secrets
from collections.abc import Callable, Coroutine, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import partial
from math import inf
from typing import Any, TypeVar

from sqlalchemy.exc import DBAPIError

from bot.chart import draw
from bot.chat.pace import Pace
from bot.chat.polling import poll
from bot.chat.port import ChatError, Throttled
from bot.chat.telegram import TelegramChat
from bot.conversation import Conversation, Outcome, Turns
from bot.delivery import Delivery
from bot.drawing import Drawing
from bot.export import ATTACHMENTS, made
from bot.intake import Intake
from bot.logs import place_of, say
from bot.making import Makes
from bot.mendable import Mendable
from bot.messages import Incoming, Kind, Saying
from bot.metrics.meter import Figures, Loop, Turn
from bot.metrics.watch import watched
from bot.participants import Participant, State
from bot.parts import Sends
from bot.planning.quiet import after_quiet
from bot.record import Event
from bot.settings import Settings
from bot.storage.figures import figures, parked_count
from bot.storage.handing_out import handed_out
from bot.storage.letters import Letter
from bot.storage.sqlite import OneServer, refuse_damaged
from bot.storage.store import Store, Writer, backend_of
from bot.storage.work import Work
from bot.words.language import language
from scheduler.clock import Clock, LiveClock, Rate, Setback, real_now
from scheduler.in_process import InProcessEngine
from scheduler.port import Due, Engine
from scheduler.virtual import VirtualClock, VirtualEngine

_LOG = logging.getLogger(__name__)

T = TypeVar("T")

#: Letters of ids and codes: none can be taken for another.
CLEAR_LETTERS = "23456789ABCDEFGHJKMNPQRSTUVWXYZ"
ID_LETTERS = 10

#: Message texts go after this; the record stays.
TEXTS_KEPT = timedelta(days=30)
HOUSEKEEPING_EVERY = 60.0
#: The chat program keeps what the bot does not fetch for this long (Bot API manual).
UPDATES_KEPT = timedelta(hours=24)
#: A long poll, its margin, and the longest wait after one that failed.
LONGEST_FETCH = 120.0
#: The alarm looks every half minute; a batch of wakes may take its time.
LONGEST_ALARM = 120.0
#: A clock that is set back by more than this has jumped.
JUMP = timedelta(minutes=1)
#: How long it is worth telling that messages went missing.
NOTE_WORTH = timedelta(hours=24)


def live_turns() -> Turns:
    """The turn functions that serve people."""
    from bot.turns.enrolling import code_in, join  # noqa: PLC0415
    from bot.turns.hearing import hear  # noqa: PLC0415
    from bot.turns.waking import start, wake  # noqa: PLC0415

    return Turns(hear=hear, wake=wake, start=start, join=join, code_in=code_in)


def new_id() -> str:
    """A participant's public id: random, and never the chat's."""
    return "".join(secrets.choice(CLEAR_LETTERS) for _ in range(ID_LETTERS))


def clock_of(store: Store, speed: float) -> LiveClock:
    """The clock that this database's bot lives by, at this speed from now on.

    Where it stood is kept in the database, so that a fast clock goes on across restarts.
    """
    with store.turn() as work:
        now = store.database_time() or real_now()
        kept = work.fact("clock")
        rate = _rate(json.loads(kept)) if kept else Rate(real=now, bot=now)
        rate = rate.at_speed(speed, now)
        if kept or speed != 1:
            work.set_fact("clock", json.dumps(_rate_json(rate)))
    return LiveClock(rate)


def _rate(kept: Mapping[str, Any]) -> Rate:
    return Rate(
        real=datetime.fromisoformat(kept["real"]),
        bot=datetime.fromisoformat(kept["bot"]),
        speed=float(kept["speed"]),
    )


def _rate_json(rate: Rate) -> dict[str, Any]:
    return {"real": rate.real.isoformat(), "bot": rate.bot.isoformat(), "speed": rate.speed}


def absence_note(who: Participant, now: datetime) -> Saying:
    """Tell somebody that messages may be missing, after their quiet time."""
    due = after_quiet(who, now)
    return Saying(
        to=who.id,
        kind=Kind.NOTE,
        text=language(who.language).prompts.away,
        key=f"away:{now.isoformat()}",
        due_at=due,
        expires_at=due + NOTE_WORTH,
    )


class Service:
    """The live bot: intake, turns, alarm clock and delivery in one process."""

    #: Updates that the chat program may post at one time. With one, they all come in order.
    CONNECTIONS = 1

    def __init__(
        self,
        settings: Settings,
        *,
        clock: Clock | None = None,
        turns: Turns | None = None,
        makes: Makes | None = None,
        webhook: str | None = None,
        listen: str | None = None,
    ) -> None:
        self._settings = settings
        self._given_clock = clock
        self._turns = turns
        self._drawing = Drawing(draw)
        self._filing = Drawing(made)
        self._makes = makes or Makes(draw=self._draw, attach=self._attach)
        self._writer = Writer()
        self._webhook = webhook
        self._listen = listen
        self._waking_up = 0

    @property
    def is_idle(self) -> bool:
        """No turn is being taken and no message is under way (the outbox may hold some)."""
        return not self._waking_up and self._taking.is_idle and self._delivery.is_idle

    async def next_due(self) -> datetime | None:
        """When (the bot's time) the next person is to be woken, or a message to leave."""
        earliest = await self._writer.run(self._read, lambda work: work.earliest())
        dues = await self._writer.run(self._read, lambda work: work.outbox.dues())
        instants = [due for due in dues if due > self._clock.now()]
        if earliest is not None:
            instants.append(earliest[0])
        return min(instants, default=None)

    async def waiting(self) -> int:
        """How many messages that are due stand in the outbox unsettled."""
        dues = await self._writer.run(self._read, lambda work: work.outbox.dues())
        return sum(due <= self._clock.now() for due in dues)

    async def enrol(self, participant: Participant, *, chat: str) -> None:
        """Take in somebody who consented elsewhere; nothing is said to them for it."""
        now = self._clock.now()
        self._after(await self._writer.run(self._conversation.enrol, participant, now, chat=chat))

    def look(self) -> None:
        """The clock was stepped: look who is due, and what may leave."""
        self._engine.nudge(None)
        self._delivery.nudge()

    async def run(self, stop: asyncio.Event, *, ready: asyncio.Event | None = None) -> None:
        """Serve until `stop` is set. Raises Mendable where it cannot begin."""
        settings = self._settings
        store = self._store = Store(backend_of(settings.database))
        mark = OneServer(store.path) if store.path else None
        try:
            if mark:
                mark.take()  # before anything is upgraded under the feet of another bot
            if store.path:
                refuse_damaged(store.path, quickly=True)
            store.fit(upgrade=store.is_sqlite)
            self._clock = self._given_clock or self._begin_clock(store)
            self._setback = Setback(self._clock)
            given_up = partial(self._read, parked_count)
            with watched(settings.metrics, self.figures, given_up, self._clock) as self._meter:
                await self._serve(store, stop, ready)
        finally:
            self._drawing.close()
            self._filing.close()
            self._writer.close()
            store.close()
            if mark:
                mark.release()

    @property
    def is_stuck(self) -> bool:
        """A loop that has begun does not go round any more."""
        return any(late is not None for late in self._meter.overdue().values())

    async def figures(self) -> Figures:
        """What the database says now: counts and waits."""
        return await self._writer.run(self._read, lambda work: figures(work, self._clock.now()))

    async def _serve(self, store: Store, stop: asyncio.Event, ready: asyncio.Event | None) -> None:
        settings = self._settings
        self._conversation = Conversation(
            store,
            self._turns or live_turns(),
            real_now=self._clock.real_now,
            new_id=new_id,
            clock_speed=settings.clock_speed,
        )
        self._engine = self._make_engine()
        async with TelegramChat(settings.token(), settings.telegram_api) as chat:
            self._chat = chat
            self._reached = self._clock.real_now()
            self._taking = Intake(
                self._conversation,
                self._writer,
                self._clock,
                self._meter,
                after=self._after,
                press_seen=chat.press_seen,
            )
            self._delivery = self._make_delivery(chat)
            await self._writer.run(self._after_absence)
            await self._writer.run(self._read, lambda work: work.set_fact("bot", chat.name))
            self._ready = ready
            await self._until(stop, self._parts(chat))
            say(_LOG, logging.INFO, "served")

    # --- what several machines do in another way: see bot/many.py --------------------------

    @property
    def _beside(self) -> Writer:
        """Where what takes long is read."""
        return self._writer

    @property
    def _takes_part_in_intake(self) -> bool:
        """Whether the chat program is asked, or may post, here."""
        return True

    def _begin_clock(self, store: Store) -> Clock:
        return clock_of(store, self._settings.clock_speed)

    def _make_engine(self) -> Engine:
        return InProcessEngine(self._clock)

    def _make_delivery(self, chat: TelegramChat) -> Sends:
        return Delivery(
            self._store,
            self._writer,
            chat,
            clock=self._clock,
            pace=Pace(self._settings.send_per_second),
            makes=self._makes,
            meter=self._meter,
        )

    def _parts(self, chat: TelegramChat) -> dict[str, Coroutine[Any, Any, None]]:
        """What runs side by side; delivery is told to stop, the others are cut off."""
        return {
            "intake": self._intake(chat),
            "alarm": self._engine.run(self._due, self._wake),
            "housekeeping": self._keep_house(),
            "delivery": self._delivery.run(),
        }

    async def _until(
        self, stop: asyncio.Event, running: Mapping[str, Coroutine[Any, Any, None]]
    ) -> None:
        """Run all parts until told to stop, or until one of them fails for good."""
        parts = [asyncio.create_task(part, name=name) for name, part in running.items()]
        told = asyncio.create_task(stop.wait(), name="stop")
        try:
            await asyncio.wait((*parts, told), return_when=asyncio.FIRST_COMPLETED)
        finally:
            for task in (*parts, told):
                if task.get_name() != "delivery":
                    task.cancel()
            await self._delivery.stop()
            ended = await asyncio.gather(*parts, told, return_exceptions=True)
        for result in ended:
            if isinstance(result, Exception):
                raise result

    async def _intake(self, chat: TelegramChat) -> None:
        async with contextlib.AsyncExitStack() as stack:
            if self._webhook is not None:
                from bot.chat.webhook import listening  # noqa: PLC0415 - its server is large

                secret = self._secret()
                await stack.enter_async_context(
                    listening(self._webhook, self._listen, secret, self._taking.take)
                )
            await self._choose_way_in(chat)
            say(_LOG, logging.INFO, "serving", speed=self._settings.clock_speed)
            if self._ready is not None:
                self._ready.set()
            if self._webhook is not None:
                self._meter.beat(Loop.INTAKE, inf)  # it is the Bot API that comes
                await asyncio.Event().wait()  # until cancelled
            await poll(self, self._take)

    async def _choose_way_in(self, chat: TelegramChat) -> None:
        try:
            if self._webhook is None:
                await chat.fetch_by_polling()
            else:
                await chat.fetch_by_webhook(
                    self._webhook, self._secret(), connections=self.CONNECTIONS
                )
        except ChatError as error:
            raise Mendable(f"the Bot API would not set the way in: {error}") from error

    def _secret(self) -> str:
        from bot.chat.webhook import secret_from  # noqa: PLC0415 - only with a webhook

        chosen = self._settings.webhook_secret
        return chosen.get_secret_value() if chosen else secret_from(self._settings.token())

    # --- what comes in ---------------------------------------------------------------------

    async def fetch(self, offset: int) -> list[dict[str, Any]]:
        """Updates from `offset` on; that some went missing before is told first."""
        self._meter.beat(Loop.INTAKE, LONGEST_FETCH)
        try:
            updates = await self._chat.fetch(offset)
        except Throttled as error:
            self._meter.beat(Loop.INTAKE, error.retry_after + LONGEST_FETCH)
            raise
        if self._clock.real_now() - self._reached > UPDATES_KEPT:
            await self._writer.run(self._read, self._tell_of_absence)
            self._delivery.nudge()
        if not updates:
            self._reached = self._clock.real_now()
        return updates

    async def _take(self, updates: Sequence[Mapping[str, Any]]) -> None:
        """Nothing is missing once they are kept; while they cannot be, time runs on."""
        await self._taking.take_all(updates)
        self._reached = self._clock.real_now()

    async def _draw(self, _row: int, picture: Mapping[str, Any]) -> bytes:
        return await self._drawing(picture)

    async def _attach(self, reader: str, what: str) -> tuple[str, bytes]:
        """The file that goes with a message: made from the record as it is when it is sent."""
        asked = await self._beside.run(
            self._read, lambda work: handed_out(work, reader, what, self._clock.now())
        )
        return ATTACHMENTS[asked["attachment"]], await self._filing({**asked, "draw": draw})

    # --- what falls due --------------------------------------------------------------------

    async def _due(self, now: datetime, limit: int) -> Due:
        self._meter.beat(Loop.ALARM, LONGEST_ALARM)
        try:
            if self._setback.by() > JUMP:  # while the clock was wrong it has put people off
                await self._writer.run(self._read, lambda work: work.wake_everybody(now))
            self._setback.note()
            who, next_at = await self._writer.run(self._read, lambda work: work.due(now, limit))
        except DBAPIError as error:
            say(_LOG, logging.ERROR, "who is due is unknown", error=place_of(error))
            return Due(next_at=now + timedelta(seconds=1))
        return Due(who=who, next_at=next_at)

    async def _wake(self, people: tuple[str, ...], now: datetime) -> None:
        self._waking_up += 1
        try:
            with contextlib.ExitStack() as timed:
                for _ in people:  # each of them waits until all are kept
                    timed.enter_context(self._meter.timed(Turn.WAKE))
                self._after(await self._writer.run(self._conversation.wake_all, people, now))
        except DBAPIError as error:
            say(_LOG, logging.ERROR, "wake put off", people=len(people), error=place_of(error))
            await asyncio.sleep(1)
        finally:
            self._waking_up -= 1

    def _after(self, outcome: Outcome) -> None:
        if outcome.said:
            self._delivery.nudge()
        if outcome.wake_at is not None:
            self._engine.nudge(outcome.wake_at)

    # --- housekeeping ----------------------------------------------------------------------

    async def _keep_house(self) -> None:
        while True:
            await asyncio.sleep(HOUSEKEEPING_EVERY)
            with contextlib.suppress(DBAPIError):
                await self._writer.run(self._read, self._tidy)

    def _tidy(self, work: Work) -> None:
        now, real = self._clock.now(), self._clock.real_now()
        work.forget_texts(now - TEXTS_KEPT, real - TEXTS_KEPT)
        if self._takes_part_in_intake:
            work.set_fact("alive", (real if self._webhook else self._reached).isoformat())

    def _after_absence(self) -> None:
        with self._store.turn() as work:
            alive = work.fact("alive")
            real = self._clock.real_now()
            if alive and real - datetime.fromisoformat(alive) > UPDATES_KEPT:
                self._tell_of_absence(work)
            work.set_fact("alive", real.isoformat())

    def _tell_of_absence(self, work: Work) -> None:
        """The chat program has let go of what was sent too long ago: say so, once."""
        say(_LOG, logging.WARNING, "away for over a day: messages may be missing")
        now, real = self._clock.now(), self._clock.real_now()
        people = (enrolled.participant for enrolled in work.people())
        notes = [absence_note(who, now) for who in people if who.state is State.ACTIVE]
        work.outbox.queue(notes, real)

    def _read(self, question: Callable[[Work], T]) -> T:
        with self._store.turn() as work:
            return question(work)


@dataclass(frozen=True, slots=True, kw_only=True)
class Said:
    """One message of a replay; `number` counts from 1, `letter` is what the outbox held."""

    number: int
    letter: Letter


class Replay:
    """The live parts on virtual time: see the head of this file."""

    def __init__(self, turns: Turns | None = None) -> None:
        self._store = Store.in_memory()
        self._clock = VirtualClock()
        self._conversation = Conversation(
            self._store,
            turns or live_turns(),
            real_now=self._clock.real_now,
            new_id=new_id,
        )
        self._engine = VirtualEngine(self._clock, self._earliest, self._wake)
        self._has_parked = False
        # Only a turn moves anybody's wake, so the earliest is asked for once after each.
        self._known_earliest: list[tuple[datetime, str] | None] = []
        self.said: list[Said] = []

    def enrol(self, participant: Participant, at: datetime) -> None:
        """Somebody joins at `at`; nothing is said for it."""
        self._engine.go_to(at, including=False)
        self._conversation.enrol(participant, at)
        self._known_earliest.clear()

    def hear(self, message: Incoming) -> None:
        """A message comes at its own instant, before what falls due then."""
        self._engine.go_to(message.at, including=False)
        self._note(self._conversation.hear(message, message.at))

    def pass_to(self, at: datetime, *, including: bool = True) -> None:
        """Time goes on to `at`, its instant included unless told otherwise."""
        self._engine.go_to(at, including=including)

    def participants(self) -> list[Participant]:
        """Everybody as they now are, in the order of joining."""
        with self._store.turn() as work:
            return [enrolled.participant for enrolled in work.people()]

    def events(self, who: str) -> tuple[Event, ...]:
        """The whole record of one participant, as it was said."""
        with self._store.turn() as work:
            return work.events(who)

    def parked(self) -> list[tuple[int, str]]:
        """Updates that a turn failed on, each with the place of the fault."""
        if not self._has_parked:
            return []
        with self._store.turn() as work:
            return work.parked()

    def close(self) -> None:
        """Let go of the database."""
        self._store.close()

    def _earliest(self) -> tuple[datetime, str] | None:
        if not self._known_earliest:
            with self._store.turn() as work:
                self._known_earliest.append(work.earliest())
        return self._known_earliest[0]

    def _wake(self, who: str, now: datetime) -> None:
        self._note(self._conversation.wake(who, now))

    def _note(self, outcome: Outcome) -> None:
        self._known_earliest.clear()
        self._has_parked |= outcome.parked
        if not outcome.said:
            return
        with self._store.turn() as work:
            fresh = [
                Said(number=number, letter=letter)
                for number, letter in enumerate(work.outbox.pending(), len(self.said) + 1)
            ]
            work.outbox.all_sent(
                [(said.letter, str(said.number)) for said in fresh], self._clock.real_now()
            )
        self.said.extend(fresh)
