"""Educators in the shell: their messages, their alerts, and what participants' turns mean to them.

Everything here runs within the transaction of the turn that calls it. What an educator's turn
may reach is bound here: participants are opened through `_Own`, which refuses anybody else's.
"""

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta

from bot.caution.ladder import word_to_educator
from bot.educator.alerts import gather, next_alert
from bot.educator.educator import Educator
from bot.educator.visits import expecting, next_visit
from bot.messages import Incoming
from bot.participants import Enrolment, Invitation, Participant
from bot.record import Record, fold
from bot.storage.work import Work
from bot.turns import teaching
from bot.turns.turn import Opened, Turn

#: A code works for so long unless the operator says otherwise.
CODE_KEEPS = timedelta(days=14)
#: Letters of a code, in groups: 59 bits of 31 letters.
GROUPS, GROUP = 3, 4
#: Words to the educator that are older when they are first seen bring no alert.
NOT_NEWS = timedelta(days=3)


@dataclass(frozen=True, slots=True, kw_only=True)
class Kept:
    """What was queued, and the earliest wake that it brought."""

    said: int = 0
    wake_at: datetime | None = None


NOTHING = Kept()


@dataclass(frozen=True, slots=True, kw_only=True)
class Welcomed:
    """How far a chat has come in joining as an educator."""

    said: int
    enrolment: Enrolment | None = None
    educator: str | None = None
    used: bool = False


class Teaching:
    """The shell around the educators' turns."""

    def __init__(
        self,
        *,
        real_now: Callable[[], datetime],
        new_id: Callable[[], str],
        clock_speed: float = 1.0,
    ) -> None:
        self._real_now = real_now
        self._new_id = new_id
        self._clock_speed = clock_speed

    def welcome(
        self,
        work: Work,
        enrolment: Enrolment | None,
        invitation: Invitation,
        incoming: Incoming,
        now: datetime,
    ) -> Welcomed:
        """Take a message of a chat that joins by an educator's code."""
        told = teaching.welcome(
            enrolment,
            invitation,
            incoming,
            now=now,
            new_id=self._new_id(),
            clock_speed=self._clock_speed,
            existing=work.educators.get(invitation.educator) if invitation.educator else None,
        )
        if told.educator is not None:
            self._save(work, told.educator, now)
        return Welcomed(
            said=work.outbox.queue(told.says, self._real_now()),
            enrolment=told.enrolment,
            educator=told.educator.id if told.educator else None,
            used=told.used,
        )

    def hear(self, work: Work, who: str, incoming: Incoming, now: datetime) -> Kept:
        """Take an educator's message. Its text is not kept: it may be about somebody."""
        desk = self._desk(work, who, now)
        if desk is None:
            raise LookupError("a chat points to nobody")
        quoted = work.outbox.receipt(incoming.chat, incoming.quotes) if incoming.quotes else None
        fresh = teaching.Code(code=self._code(), bot=work.fact("bot"))
        told = teaching.teach(desk, incoming, now=now, fresh=fresh, quoted=quoted)
        return self._keep(work, told, now)

    def wake(self, work: Work, who: str, now: datetime) -> Kept:
        """Tell the alerts that are due; nothing if the educator was looked at already."""
        due = work.educators.next_wake(who)
        desk = self._desk(work, who, now) if due is not None and due <= now else None
        if desk is None:
            return NOTHING
        return self._keep(work, teaching.attend(desk, now=now), now)

    def after(self, work: Work, opened: Opened, turn: Turn, now: datetime) -> Kept:
        """What a participant's turn means to their educator, if they have or had one."""
        before, person = opened.participant, turn.participant
        if before.educator is None and person.educator is None:
            return NOTHING
        record = turn.record or fold(person, (*opened.events, *turn.events))
        return self.follow(work, before, record, now)

    def follow(self, work: Work, before: Participant, record: Record, now: datetime) -> Kept:
        """After a participant's turn: alerts for their educator and what waits for them, or the
        end of access."""
        person = record.participant
        kept = []
        if before.educator is not None and person.educator != before.educator:
            kept.append(self.left(work, before.educator, person.id, now))
        if person.educator is not None and person.tell_educator:
            educator = work.educators.get(person.educator)
            if educator is not None:
                words = word_to_educator(record)
                since = max(educator.joined_at, now - NOT_NEWS)
                changed = gather(educator, person.id, words, since=since)
                changed = expecting(changed, person, since=since)
                if changed != educator:
                    kept.append(Kept(wake_at=self._save(work, changed, now)))
                asked = teaching.waiting(educator, record, now)
                kept.append(Kept(said=work.outbox.queue(asked, self._real_now())))
        return together(kept)

    def joined(self, work: Work, person: Participant, code: str, now: datetime) -> Kept:
        """Somebody has joined with a code of their educator's."""
        educator = work.educators.get(person.educator) if person.educator else None
        if educator is None:
            return NOTHING
        return self._keep(work, teaching.joined(educator, person, code, now=now), now)

    def left(self, work: Work, educator_id: str, who: str, now: datetime) -> Kept:
        """A participant has left or taken access away: nothing of theirs stays behind."""
        educator = work.educators.forget(educator_id, who)
        if educator is None:
            return NOTHING
        return self._keep(work, teaching.left(educator, who, now=now), now)

    def _desk(self, work: Work, who: str, now: datetime) -> teaching.Desk | None:
        educator = work.educators.get(who)
        if educator is None:
            return None
        own = work.educators.own(who)
        return teaching.Desk(
            educator=educator,
            own=own,
            open=_Own(work, frozenset(person.id for person in own), now),
            colleague=work.educators.get,
            served=tuple(self._served(work, who)),
        )

    def _served(self, work: Work, who: str) -> Iterator[Educator]:
        """Those for whom an educator agreed to stand in."""
        for id_ in work.educators.deputized(who):
            other = work.educators.get(id_)
            if other is not None and other.deputy_agreed:
                yield other

    def _keep(self, work: Work, told: teaching.Taught, now: datetime) -> Kept:
        real = self._real_now()
        wakes: list[datetime | None] = []
        said = 0
        for turn in told.turns:
            work.save(turn)
            said += work.outbox.queue(turn.says, real)
            wakes.append(turn.wake_at)
        for code, invitation in told.invites:
            work.invite(code, invitation, real + CODE_KEEPS)
        said += work.outbox.queue(told.says, real)
        wakes += [self._save(work, educator, now) for educator in (*told.colleagues, told.educator)]
        for id_ in work.educators.deputized(told.educator.id):
            served = work.educators.get(id_)
            if served is not None and served.alerts:
                wakes.append(self._save(work, served, now))
        return Kept(said=said, wake_at=_earliest(wakes))

    def _save(self, work: Work, educator: Educator, now: datetime) -> datetime | None:
        deputy = None
        if educator.deputy is not None and educator.deputy_agreed:
            deputy = work.educators.get(educator.deputy)
        wake_at = _earliest((next_alert(educator, deputy, now), next_visit(educator, now)))
        work.educators.save(educator, self._real_now(), wake_at)
        return wake_at

    def _code(self) -> str:
        letters = ""
        while len(letters) < GROUPS * GROUP:
            letters += self._new_id()
        groups = (letters[at : at + GROUP] for at in range(0, GROUPS * GROUP, GROUP))
        return "-".join(groups)


@dataclass(frozen=True, slots=True)
class _Own:
    """Opens participants of one educator, and raises KeyError for anybody else."""

    work: Work
    ids: frozenset[str]
    now: datetime

    def __call__(self, who: str) -> Opened:
        opened = self.work.open(who, self.now) if who in self.ids else None
        if opened is None:
            raise KeyError(who)
        return opened


def together(kept: Iterable[Kept]) -> Kept:
    """Several outcomes as one."""
    every = list(kept)
    return Kept(
        said=sum(one.said for one in every), wake_at=_earliest(one.wake_at for one in every)
    )


def _earliest(wakes: Iterable[datetime | None]) -> datetime | None:
    return min((wake for wake in wakes if wake is not None), default=None)
