"""What an educator's turn starts from, and what it brings about."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace
from datetime import datetime

from bot.educator.educator import Educator
from bot.educator.hours import opening
from bot.localtime import fixed
from bot.messages import Incoming, Kind, Saying
from bot.participants import Enrolment, Invitation, Participant, State
from bot.planning.agenda import next_wake
from bot.planning.quiet import after_quiet
from bot.record import Body, Event, Record, Spoke, fold
from bot.record.fold import of
from bot.turns.turn import Opened, Turn
from bot.words.asks import AskSentences
from bot.words.educator import EducatorSentences
from bot.words.educator_lines import who_words
from bot.words.language import language


@dataclass(frozen=True, slots=True, kw_only=True)
class Desk:
    """An educator with what they may reach.

    `own` are the participants who are theirs now; `open` loads one of them, and raises KeyError
    for anybody else. `colleague` gives another educator by id; `served` are those for whom this
    one stands in.
    """

    educator: Educator
    own: tuple[Participant, ...]
    open: Callable[[str], Opened]
    colleague: Callable[[str], Educator | None]
    served: tuple[Educator, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Taught:
    """What is to be kept and said; committed together or not at all.

    `turns` change participants of the educator's own; `invites` are codes with their invitation.
    """

    educator: Educator
    colleagues: tuple[Educator, ...] = ()
    turns: tuple[Turn, ...] = ()
    says: tuple[Saying, ...] = ()
    invites: tuple[tuple[str, Invitation], ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Welcoming:
    """What a message brings about in a chat that joins as an educator."""

    enrolment: Enrolment | None = None
    educator: Educator | None = None
    says: tuple[Saying, ...] = ()
    used: bool = False


@dataclass
class Lesson:
    """Collects what an educator's turn brings about while it is decided."""

    desk: Desk
    now: datetime
    educator: Educator
    key: str
    says: list[Saying] = field(default_factory=list)
    turns: list[Turn] = field(default_factory=list)
    colleagues: list[Educator] = field(default_factory=list)
    invites: list[tuple[str, Invitation]] = field(default_factory=list)

    @property
    def say(self) -> EducatorSentences:
        """The sentences of the educator's language."""
        return language(self.educator.language).educator

    @property
    def asks(self) -> AskSentences:
        """Those about what waits for the educator."""
        return language(self.educator.language).asks

    def who(self, person: Participant) -> str:
        """How the educator calls a participant."""
        return who_words(person, self.educator)

    def answer(self, text: str, buttons: tuple[str, ...] = (), **more: object) -> None:
        """Answer the educator's message."""
        self.says.append(
            Saying(
                to=self.educator.id,
                kind=Kind.REPLY,
                text=text,
                key=self.key,
                due_at=self.now,
                buttons=buttons,
                **more,  # type: ignore[arg-type]  # fields of Saying
            )
        )

    def tell(self, to: Educator, text: str, key: str, buttons: tuple[str, ...] = ()) -> None:
        """Tell an educator (this one or a colleague) something unasked, in working hours."""
        self.says.append(unasked(to, text, key, self.now, buttons=buttons))

    def record(self, who: str) -> Record:
        """The last 35 days of a participant."""
        return record_of(self.desk, who)

    def whole(self, who: str) -> Record:
        """Everything of a participant since joining."""
        opened = self.desk.open(who)
        return fold(opened.participant, opened.whole())

    def records(self) -> Iterator[Record]:
        """The last 35 days of everybody."""
        return (self.record(person.id) for person in self.desk.own)

    def change(
        self,
        person: Participant,
        *bodies: Body,
        note: str | None = None,
        due_at: datetime | None = None,
        buttons: tuple[str, ...] = (),
    ) -> None:
        """Change a participant and add to their record; `note` is said to them."""
        opened = self.desk.open(person.id)
        at = fixed(self.now, person.zone)
        says: tuple[Saying, ...] = ()
        if note is not None:
            saying = Saying(
                to=person.id,
                kind=Kind.NOTE,
                text=note,
                key=f"educator:{self.educator.id}:{self.key}",
                due_at=due_at or at,
                buttons=buttons,
            )
            says = (saying,)
            bodies = (*bodies, Spoke(kind=Kind.NOTE, about=None, key=saying.key))
        events = tuple(
            Event(id=id_, at=at, body=body) for id_, body in enumerate(bodies, opened.last_id + 1)
        )
        record = fold(person, (*opened.events, *events))
        self.turns.append(
            Turn(
                participant=person,
                events=events,
                says=says,
                wake_at=next_wake(record, at),
                record=record,
            )
        )

    def taught(self) -> Taught:
        """Everything that was collected."""
        return Taught(
            educator=self.educator,
            colleagues=tuple(self.colleagues),
            turns=tuple(self.turns),
            says=tuple(self.says),
            invites=tuple(self.invites),
        )


def change_and_tell(
    lesson: Lesson,
    person: Participant,
    *bodies: Body,
    note: str,
    buttons: tuple[str, ...] = (),
) -> None:
    """Change a participant, and tell them after quiet time unless they asked for silence."""
    said = None if person.state is State.STOPPED else note
    due_at = after_quiet(person, lesson.now)
    lesson.change(person, *bodies, note=said, due_at=due_at, buttons=buttons)


def unasked(
    to: Educator,
    text: str,
    key: str,
    now: datetime,
    *,
    buttons: tuple[str, ...] = (),
    attachment: str | None = None,
) -> Saying:
    """A note to an educator; outside their hours it waits."""
    return Saying(
        to=to.id,
        kind=Kind.NOTE,
        text=text,
        key=key,
        due_at=opening(to, now),
        buttons=buttons,
        attachment=attachment,
    )


def record_of(desk: Desk, who: str) -> Record:
    """The last 35 days of a participant of the educator's own; KeyError for anybody else."""
    opened = desk.open(who)
    if opened.record is None:
        return fold(opened.participant, opened.events)
    return of(opened.record, opened.participant)


def lesson(desk: Desk, incoming: Incoming, now: datetime) -> Lesson:
    """Begin to answer a message."""
    local = fixed(now, desk.educator.zone)
    return Lesson(desk=desk, now=local, educator=desk.educator, key=f"reply:{incoming.update}")


def talking(educator: Educator, stage: str | None, *known: tuple[str, str]) -> Educator:
    """The educator with this question open, or none."""
    talk = None if stage is None else Enrolment(stage=stage, known=known)
    return replace(educator, talk=talk)
