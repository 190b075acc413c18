"""A story played through the live parts: the clock steps from one thing to the next."""

from datetime import datetime

from bot.localtime import in_zone
from bot.participants import Participant
from bot.trial.trial import StoryClock, Trial


class Player:
    """Plays what people do, one thing after the other, each at its own instant of the bot's time.

    Before each one the clock stops at every instant at which somebody is due, and goes on only
    when nothing is in flight. At one instant a message comes before what falls due.
    """

    def __init__(self, trial: Trial, clock: StoryClock) -> None:
        self._trial = trial
        self._clock = clock
        self.chats: dict[str, int] = {}
        self.people: dict[str, Participant] = {}
        self._messages: dict[str, int] = {}

    async def enrol(self, participant: Participant, at: datetime) -> None:
        """Somebody joins who consented elsewhere."""
        await self._pass(at, including=False)
        chat = self._trial.server.chats.open(participant.id)
        self.chats[participant.id] = chat
        self.people[participant.id] = participant
        await self._trial.service.enrol(participant, chat=str(chat))
        await self._trial.at_rest()

    async def write(
        self,
        who: str,
        text: str,
        at: datetime,
        *,
        name: str | None = None,
        edits: str | None = None,
        answers: int | None = None,
        photo: bool = False,
    ) -> None:
        """Somebody writes; `name` is what a later edit calls this message.

        `answers` counts the messages that the bot sent to anybody, from 1.
        """
        await self._pass(at, including=False)
        chats, chat = self._trial.server.chats, self.chats[who]
        if edits is not None:
            chats.edit(chat, self._messages[edits], text, at=at)
        elif photo:
            self._remember(name, chats.photo(chat, text, at=at))
        else:
            quotes = None
            if answers is not None:
                quotes = self._trial.server.ledger[answers - 1].message
            self._remember(name, chats.say(chat, text, at=at, quotes=quotes))
        await self._trial.server.taken()

    async def pass_to(self, at: datetime) -> None:
        """Time goes on to `at`, its instant included."""
        await self._pass(at, including=True)

    def local(self, who: str, at: datetime) -> datetime:
        """An instant on that participant's clock."""
        return in_zone(at, self.people[who].zone)

    def _remember(self, name: str | None, message: int) -> None:
        if name is not None:
            self._messages[name] = message

    async def _pass(self, until: datetime, *, including: bool) -> None:
        await self._rest_unless(until, including=including)
        while (due := await self._trial.service.next_due()) is not None:
            if due > until or (due == until and not including):
                break
            self._clock.step_to(max(due, self._clock.now()))
            self._trial.service.look()
            await self._trial.at_rest()
        self._clock.step_to(max(until, self._clock.now()))

    async def _rest_unless(self, until: datetime, *, including: bool) -> None:
        """What is due at this very instant waits for a message of the same instant."""
        if including or until > self._clock.now():
            await self._trial.at_rest()
