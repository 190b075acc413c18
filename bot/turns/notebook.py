"""The events of one turn while it is being decided, and the record with them."""

from dataclasses import dataclass, field, replace
from datetime import datetime
from functools import cached_property
from typing import Any

from bot.messages import Kind, Saying
from bot.participants import Participant
from bot.record import Body, Event, Record, Retracted, Spoke, fold


@dataclass
class Notebook:
    """Collects what a turn adds. `at` is when it was said, `message` the chat's id of the message."""

    person: Participant
    old: tuple[Event, ...]
    at: datetime
    message: str | None
    new: list[Event] = field(default_factory=list)
    says: list[Saying] = field(default_factory=list)

    @cached_property
    def before(self) -> Record:
        """The record as it stood when the turn began."""
        return fold(self.person, self.old)

    @property
    def record(self) -> Record:
        """The record as it stands with what the turn has added so far."""
        return fold(self.person, (*self.old, *self.new))

    def note(self, body: Body, *, at: datetime | None = None, message: str | None = None) -> int:
        """Add an event; its id is returned."""
        last = self.new[-1].id if self.new else max((event.id for event in self.old), default=0)
        event = Event(
            id=last + 1,
            at=at or self.at,
            body=body,
            message=message if message is not None else self.message,
        )
        self.new.append(event)
        return event.id

    def retract(self, *ids: int) -> None:
        """These no longer stand."""
        if ids:
            self.note(Retracted(ids=tuple(ids)))

    def event(self, id_: int) -> Event:
        """The event with this id, old or new. KeyError if there is none."""
        for event in (*self.new, *reversed(self.old)):
            if event.id == id_:
                return event
        raise KeyError(id_)

    def mend(self, id_: int, **changes: Any) -> int:
        """Put a changed copy in the place of an event; it keeps when and by what it was said."""
        old = self.event(id_)
        mended = replace(old.body, **changes)  # the body's own fields: checked where it is read
        self.retract(id_)
        return self.note(mended, at=old.at, message=old.message)

    def say(
        self,
        kind: Kind,
        text: str,
        key: str,
        *,
        now: datetime,
        about: str | None = None,
        cause: int | None = None,
        **more: Any,
    ) -> None:
        """Queue something to say, and note that it was said, unless this was said before."""
        if not text or any(saying.key == key for saying in self.says):
            return
        self.says.append(
            Saying(
                to=self.person.id, kind=kind, text=text, key=key, due_at=now, about=about, **more
            )
        )
        spoke = Spoke(kind=kind, about=about, key=key, cause=cause)
        last = self.new[-1].id if self.new else max((event.id for event in self.old), default=0)
        self.new.append(Event(id=last + 1, at=now, body=spoke))
