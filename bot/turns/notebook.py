"""The events of one turn while it is being decided, and the record with them."""

from dataclasses import dataclass, field, replace
from datetime import datetime
from itertools import chain
from typing import Any

from bot.messages import Kind, Saying
from bot.participants import Participant
from bot.record import Body, Event, Record, Retracted, Spoke, fold
from bot.record.fold import extended, of


@dataclass
class Notebook:
    """Collects what a turn adds.

    `old` are the recent events, in the order of their ids, and `last_id` that of the last event
    so far, of however long ago; `at` is when the message was said, `message` the chat's id of it.
    """

    person: Participant
    old: tuple[Event, ...]
    last_id: int
    at: datetime
    message: str | None
    new: list[Event] = field(default_factory=list)
    says: list[Saying] = field(default_factory=list)
    folded: Record | None = None  # `old` folded already, if it is at hand
    _latest: tuple[int, Record] | None = None

    @property
    def before(self) -> Record:
        """The record as it stood when the turn began."""
        if self.folded is None:
            self.folded = fold(self.person, self.old)
        return self.folded

    @property
    def record(self) -> Record:
        """The record as it stands with what the turn has added so far."""
        seen, record = self._latest or (0, self.before)
        if seen < len(self.new):
            record = extended(record, self.new[seen:])
        if record.participant is not self.person:
            record = of(record, self.person)
        self._latest = (len(self.new), record)
        return record

    def note(self, body: Body) -> int:
        """Add an event of this message; its id is returned."""
        return self._add(body, at=self.at, message=self.message)

    def retract(self, *ids: int) -> None:
        """These no longer stand."""
        if ids:
            self.note(Retracted(ids=tuple(ids)))

    def event(self, id_: int) -> Event:
        """The event that the record knows by this id, as it is now. KeyError if there is none."""
        for event in chain(reversed(self.new), reversed(self.old)):
            if event.root == id_:
                return event
        noted = self.record.noted(id_)  # it may reach a week further back than the events do
        if noted is None:
            raise KeyError(id_)
        return Event(id=id_, at=noted.at, message=noted.message, body=noted.entry)

    def mend(self, id_: int, **changes: Any) -> int:
        """Put a changed copy in the place of an event: it keeps its id in the record, and when
        and by what message it was said."""
        old = self.event(id_)
        mended = replace(old.body, **changes)  # the body's own fields: checked where it is read
        self._add(mended, at=old.at, message=old.message, mends=id_)
        return id_

    def supersede(self, id_: int, body: Body) -> int:
        """Put another entry in the place of one that was wrong: a new one, with a new id, but
        said when and by what message the old one was."""
        old = self.event(id_)
        self.retract(id_)
        return self._add(body, at=old.at, message=old.message)

    def _add(
        self, body: Body, *, at: datetime, message: str | None, mends: int | None = None
    ) -> int:
        self.last_id += 1
        self.new.append(Event(id=self.last_id, at=at, message=message, mends=mends, body=body))
        return self.last_id

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
        self._add(spoke, at=now, message=None)
