"""Educators and participants in one bot on virtual time: what each writes, what each reads."""

from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from itertools import count

from bot.conversation import Conversation
from bot.messages import Incoming
from bot.participants import Invitation, Participant, Role
from bot.storage.letters import End, Letter
from bot.storage.store import Store
from bot.units import Unit
from bot.wiring import live_turns
from scheduler.virtual import VirtualClock, VirtualEngine

#: A Monday at nine, within working hours.
MONDAY = datetime(2026, 3, 2, 9, 0, tzinfo=UTC)
CLEAR = "ABCDEFGHJK"


@dataclass
class Classroom:
    """The real shell and the real turns on a database in memory or in a file."""

    now: datetime = MONDAY
    read: dict[str, list[Letter]] = field(default_factory=dict)
    database: str | None = None  # None: in memory

    def __post_init__(self) -> None:
        self.store = Store.open(self.database) if self.database else Store.in_memory()
        self.clock = VirtualClock()
        numbers = count()
        self.conversation = Conversation(
            self.store,
            live_turns(),
            real_now=self.clock.real_now,
            new_id=lambda: "ID" + "".join(CLEAR[int(d)] for d in f"{next(numbers):08d}"),
        )
        self.engine = VirtualEngine(self.clock, self._earliest, self._wake)
        self.updates = count(1)
        self.engine.go_to(self.now, including=False)

    def say(
        self, chat: str, text: str, *, quotes: str | None = None, edits: str | None = None
    ) -> list[str]:
        """Write in a chat, or edit one of its messages; what this chat reads then."""
        update = next(self.updates)
        incoming = Incoming(
            update=update,
            chat=chat,
            message=edits or str(update),
            at=self.now,
            text=text,
            quotes=quotes,
            edits=edits is not None,
        )
        before = len(self.letters(chat))
        self.conversation.hear(incoming, self.now)
        self._deliver()
        self.engine.go_to(self.now, including=True)
        return [letter.text for letter in self.letters(chat)[before:]]

    def says(self, chat: str, *texts: str) -> list[str]:
        """Write several messages; what is read after the last."""
        read: list[str] = []
        for text in texts:
            read = self.say(chat, text)
        return read

    def passes(self, **time: float) -> None:
        """Let time go by."""
        self.go_to(self.now + timedelta(**time))

    def go_to(self, at: datetime) -> None:
        """Let time go by until then."""
        self.now = at
        self.engine.go_to(at, including=True)

    def letters(self, chat: str) -> list[Letter]:
        """Everything that a chat has read."""
        return self.read.setdefault(chat, [])

    def texts(self, chat: str) -> list[str]:
        """The texts of it."""
        return [letter.text for letter in self.letters(chat)]

    def last(self, chat: str) -> Letter:
        """The newest message of a chat."""
        return self.letters(chat)[-1]

    def educator(self, chat: str, *, hours: str = "Mon-Fri 8-16", zone: str = "UTC") -> str:
        """Somebody joins as an educator through the chat; their id."""
        code = f"TEACH{next(self.updates):04d}"
        self.invite(code, Invitation(role=Role.EDUCATOR, zone=zone))
        self.says(chat, f"/start {code}", "yes", hours, "none")
        return self.whose(chat)

    def participant(self, chat: str, educator: str, *, tell: bool = True, **known: object) -> str:
        """Somebody joins by consent given elsewhere; their id is their chat in capitals."""
        plain: dict[str, object] = {
            "id": chat.upper(),
            "unit": Unit.MG_DL,
            "zone": "UTC",
            "joined_at": self.now,
            "educator": educator,
            "tell_educator": tell,
            "may_go_low": False,
            "ketone_risk": False,
        }
        person = Participant(**{**plain, **known})  # type: ignore[arg-type]
        self.conversation.enrol(person, self.now, chat=chat)
        return person.id

    def person(self, id_: str) -> Participant:
        """A participant as they are now."""
        with self.store.turn() as work:
            return next(one.participant for one in work.people() if one.participant.id == id_)

    def invite(self, code: str, invitation: Invitation) -> None:
        """The operator's command."""
        with self.store.turn() as work:
            work.invite(code, invitation, self.clock.real_now() + timedelta(days=14))

    def whose(self, chat: str) -> str:
        """The id behind a chat."""
        with self.store.turn() as work:
            seen = work.chat(chat)
        assert seen is not None
        assert seen.participant is not None
        return seen.participant

    def parked(self) -> list[tuple[int, str]]:
        """Messages on which a turn failed."""
        with self.store.turn() as work:
            return work.parked()

    def _earliest(self) -> tuple[datetime, str] | None:
        with self.store.turn() as work:
            return work.earliest()

    def _wake(self, who: str, now: datetime) -> None:
        self.conversation.wake(who, now)
        self._deliver()

    def _deliver(self) -> None:
        with self.store.turn() as work:
            for letter in work.outbox.pending():
                if letter.due_at > self.clock.now():
                    continue
                chat = self.read.setdefault(letter.chat, [])
                chat.append(letter)
                message = f"{letter.chat}-{len(chat)}"
                work.outbox.settle(letter, End.SENT, self.clock.real_now(), message=message)
