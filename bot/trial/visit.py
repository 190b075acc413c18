"""One visitor's trial: a participant's chat, their educator's chat, and the clock of both.

The bot is the real one. The educator joins by a code of the bot's database and by the same talk
as any other, and the participant's code is of that educator, so that alerts find their way.
"""

import asyncio
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from enum import StrEnum
from typing import Any, Final

from bot.localtime import in_zone, local_date
from bot.participants import Invitation, Role
from bot.settings import Settings
from bot.storage.store import Store
from bot.trial import week
from bot.trial.player import Player
from bot.trial.shown import shown
from bot.trial.trial import Trial
from bot.trial.visitors_clock import STANDING, VisitorsClock

PARTICIPANT: Final = "participant"
EDUCATOR: Final = "educator"

#: The educator of a trial works every day, so that an alert is not held back for days.
EDUCATORS_WORDS: Final = ("yes", "Mon-Sun 7:00-22:00", "none")
#: Wakes that nobody hears of, passed in one jump, before it is given up.
MOST_WAKES: Final = 100
HOUR: Final = timedelta(hours=1)


class Beginning(StrEnum):
    """How a trial begins."""

    EMPTY = "empty"
    WEEK = "week"


@dataclass(frozen=True, slots=True)
class Played:
    """How much of the beginning is played."""

    done: int = 0
    of: int = 1


@dataclass(slots=True, kw_only=True)
class Seat:
    """One of the two chats; `code` is the invitation that opens it."""

    chat: int
    code: str


class Visit:
    """A running trial. Made by `visit`."""

    def __init__(self, trial: Trial, clock: VisitorsClock, zone: str) -> None:
        self.trial = trial
        self.clock = clock
        self.zone = zone
        self.speed = STANDING  # what the visitor chose; while the clock is moved on it stands
        self.seats: dict[str, Seat] = {}
        self._moving = asyncio.Lock()
        self._player = Player(trial, clock)
        self._answering: asyncio.Task[None] | None = None

    # ── what the page shows ──────────────────────────────────────────────────

    def state(self, seat: str) -> dict[str, Any]:
        """All that one tab shows; raises KeyError if there is no such seat."""
        server = self.trial.server
        now = in_zone(self.clock.now(), self.zone)
        return {
            "revision": server.revision,
            "seat": seat,
            # The zone's wall clock as if it were UTC: the page counts on from it.
            "clock": {"wall": now.replace(tzinfo=None).isoformat(), "speed": self.speed},
            "code": self.seats[seat].code,
            "messages": shown(server.chats[self.seats[seat].chat], self.zone),
            "heard": {name: len(server.sent_to(one.chat)) for name, one in self.seats.items()},
        }

    # ── what the visitor does ────────────────────────────────────────────────

    def say(self, seat: str, text: str, *, photo: bool = False, answers: int | None = None) -> None:
        """Write, perhaps under a photo of a plate, perhaps in answer to a message.

        Raises KeyError if there is no such seat or message.
        """
        chats, chat = self.trial.server.chats, self.seats[seat].chat
        if photo:
            chats.photo(chat, text, quotes=answers)
        else:
            chats.say(chat, text, quotes=answers)
        self._hurry()

    def change(self, seat: str, message: int, text: str) -> None:
        """Change the words of an own message; raises KeyError if it is not one."""
        chats, chat = self.trial.server.chats, self.seats[seat].chat
        if chats[chat].history[message]["from"]["is_bot"]:
            raise KeyError("nobody changes what somebody else wrote")
        chats.edit(chat, message, text)
        self._hurry()

    def press(self, seat: str, message: int, label: str) -> None:
        """Press a button; raises KeyError if there is none such."""
        self.trial.server.chats.press(self.seats[seat].chat, message, label)
        self._hurry()

    def _hurry(self) -> None:
        """Let the answer come without the pause that spares a reader's telephone."""
        if self._answering is None or self._answering.done():
            self._answering = asyncio.create_task(self.trial.at_rest())
            # Whatever ended the bot is told by the bot; a late answer is only late.
            self._answering.add_done_callback(lambda one: one.cancelled() or one.exception())

    def close(self) -> None:
        """Wait for no answer any more."""
        if self._answering is not None:
            self._answering.cancel()

    # ── the clock ────────────────────────────────────────────────────────────

    async def run_clock(self, speed: float) -> None:
        """Let the clock run so many times as fast as the world's (0: let it stand)."""
        async with self._moving:
            self.speed = speed
            self.clock.run(speed)
            self._look()

    async def to_next(self) -> bool:
        """Go on to the next instant at which the bot writes to anybody; False if there is none.

        Raises TimeoutError if the bot does not come to rest.
        """
        async with self._standing():
            await self.trial.at_rest()
            heard = len(self.trial.server.ledger)
            for _ in range(MOST_WAKES):
                due = await self.trial.service.next_due()
                if due is None:
                    return False
                self.clock.step_to(max(due, self.clock.now()))
                self.trial.service.look()
                await self.trial.at_rest()
                if len(self.trial.server.ledger) > heard:
                    return True
            return False

    async def on_by(self, time: timedelta) -> None:
        """Go on by this much, stopping for all that is due on the way. Raises TimeoutError."""
        async with self._standing():
            await self._player.pass_to(self.clock.now() + time)
            self.trial.service.look()
            await self.trial.at_rest()

    @asynccontextmanager
    async def _standing(self) -> AsyncIterator[None]:
        """Hold the clock, so that it goes on only when nothing is in flight."""
        async with self._moving:
            self.clock.run(STANDING)
            try:
                yield
            finally:
                self.clock.run(self.speed)
                self._look()

    def _look(self) -> None:
        self.trial.service.look()
        self.trial.server.changed()

    # ── the beginning ────────────────────────────────────────────────────────

    async def begin(
        self, beginning: Beginning, speed: float, note: Callable[[Played], None]
    ) -> None:
        """Seat the educator, invite the participant, play what is to be played."""
        code = self.trial.invite(Invitation(zone=self.zone, role=Role.EDUCATOR), "EDUCATOR-CODE")
        self._seat(EDUCATOR, "Educator", code)
        for text in (f"/start {code}", *EDUCATORS_WORDS):
            await self._player.write(EDUCATOR, text, self.clock.now())
            await self.trial.at_rest()
        known = week.INVITATION if beginning is Beginning.WEEK else Invitation()
        invitation = replace(known, zone=self.zone, educator=self._who(EDUCATOR))
        self._seat(PARTICIPANT, "You", self.trial.invite(invitation))
        if beginning is Beginning.WEEK:
            await self._play_week(note)
        await self.run_clock(speed)

    async def _play_week(self, note: Callable[[Played], None]) -> None:
        monday = local_date(self.clock.now(), self.zone)
        lines = list(week.told(monday, self.zone, self.seats[PARTICIPANT].code))
        for done, (at, text) in enumerate(lines):
            note(Played(done, len(lines)))
            await self._player.write(PARTICIPANT, text, at)
        await self.trial.at_rest()

    def _seat(self, name: str, writer: str, code: str) -> None:
        chat = self.trial.server.chats.open(writer)
        self.seats[name] = Seat(chat=chat, code=code)
        self._player.chats[name] = chat

    def _who(self, seat: str) -> str:
        """The public id that the bot gave to whoever sits here."""
        store = Store.open(self.trial.url)
        with store.turn() as work:
            chat = work.chat(str(self.seats[seat].chat))
        store.close()
        if chat is None or chat.participant is None:
            raise RuntimeError(f"the {seat} of the trial has not joined")
        return chat.participant


@asynccontextmanager
async def visit(
    settings: Settings,
    *,
    beginning: Beginning,
    zone: str,
    now: datetime,
    note: Callable[[Played], None] = lambda _: None,
) -> AsyncIterator[Visit]:
    """Open a trial and play its beginning; the clock then runs at the speed of the settings.

    `now` is when an empty trial begins; a week is the last one that has ended by then.
    """
    start = now
    if beginning is Beginning.WEEK:
        start = week.opening(week.last_monday(local_date(now, zone)), zone)
    clock = VisitorsClock(start)
    async with Trial(settings, clock=clock, dated_by=clock.now) as trial:
        opened = Visit(trial, clock, zone)
        try:
            await opened.begin(beginning, settings.clock_speed, note)
            yield opened
        finally:
            opened.close()
