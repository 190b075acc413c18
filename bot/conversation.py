"""One message or one wake-up: load, decide, keep. Committed together or not at all.

Everything here is synchronous and runs in the writer's thread. Nothing is drawn or sent
inside a turn: what is to be said goes into the outbox.
"""

import logging
from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import datetime

from bot.guesses import Guesses
from bot.logs import place_of, say
from bot.messages import UNASKED, Incoming
from bot.outcome import NOTHING, Outcome, together
from bot.participants import Invitation, Participant, Role, State
from bot.storage.faults import is_outage
from bot.storage.outbox import TO_CHAT
from bot.storage.store import Store
from bot.storage.work import ChatSeen, Met, Work
from bot.teaching import Kept, Teaching
from bot.turns.pointless import pointless_prompts
from bot.turns.ports import Turns
from bot.turns.teaching_leaving import leave
from bot.turns.turn import Joining, Opened, Turn
from bot.waking import LONGEST, Waking
from bot.words.owed import owed_words

__all__ = ["NOTHING", "Conversation", "Outcome", "Turns"]

_LOG = logging.getLogger(__name__)


class Conversation:
    """The shell around the turns: everything that goes into the database goes through here."""

    def __init__(
        self,
        store: Store,
        turns: Turns,
        *,
        real_now: Callable[[], datetime],
        new_id: Callable[[], str],
        clock_speed: float = 1.0,
    ) -> None:
        self._store = store
        self._turns = turns
        self._real_now = real_now
        self._new_id = new_id
        self._clock_speed = clock_speed
        self._guesses = Guesses()
        self._teaching = Teaching(real_now=real_now, new_id=new_id, clock_speed=clock_speed)
        self._waking = Waking(store, turns, self._teaching, real_now=real_now)

    def hear(self, incoming: Incoming, now: datetime) -> Outcome:
        """Take one message. Handled or parked once it returns: it may be confirmed then.

        Raises what `bot.storage.faults.is_outage` tells apart where the database cannot take
        it (disk full, locked, away): it must not be confirmed, and comes again.
        """
        return self.hear_all((incoming,), now)[0]

    def hear_all(self, messages: Sequence[Incoming], now: datetime) -> Sequence[Outcome]:
        """Take the first of these, at least one, in their order: an outcome for each taken.

        One transaction, so one wait for the disk, which ends early where they take long.
        Where it cannot stand, the first half is taken alone, down to the one message with which
        it cannot: that one is parked. Raises as `hear` does.
        """
        now = _to_millisecond(now)
        if not self._store.is_sqlite:  # two who lock the same chats in another order
            messages = messages[:1]
        try:
            outcomes = self._store.attempt(lambda work: self._several(work, messages, now))
        except Exception as error:
            if is_outage(error):
                raise
            if len(messages) > 1:
                return self.hear_all(messages[: len(messages) // 2], now)
            self._park(messages[0], now, error)
            return (Outcome(parked=True),)
        if any(outcome.erased for outcome in outcomes):
            self._store.wipe_log()
        return outcomes

    def park(self, update: int, error: Exception) -> None:
        """Give up an update that could not even be read."""
        say(_LOG, logging.ERROR, "update parked", update=update, error=place_of(error))
        with self._store.turn() as work:
            work.park(update, self._real_now(), place_of(error))

    def wake(self, who: str, now: datetime) -> Outcome:
        """Do what is due for one person; nothing if they were woken already."""
        return self.wake_all((who,), now)

    def wake_all(self, people: Sequence[str], now: datetime) -> Outcome:
        """Do what is due for several: one transaction, so one wait for the disk."""
        return self._waking.wake_all(people, _to_millisecond(now))

    def enrol(self, participant: Participant, now: datetime, *, chat: str | None = None) -> Outcome:
        """Take in somebody who consented elsewhere; nothing is said to them for it.

        Their chat is `chat`, or one named by their public id.
        """
        now = _to_millisecond(now)
        wake_at = self._turns.start(participant, now=now)
        with self._store.turn() as work:
            work.enrol(participant, self._real_now(), wake_at)
            seen = ChatSeen(id=chat or participant.id, participant=participant.id)
            work.keep_chat(seen, self._real_now())
        return Outcome(wake_at=wake_at)

    # --- one message -----------------------------------------------------------------------

    def _several(
        self, work: Work, messages: Sequence[Incoming], now: datetime
    ) -> Sequence[Outcome]:
        until = self._real_now() + LONGEST
        outcomes: list[Outcome] = []
        for incoming in messages:
            outcomes.append(self._once(work, incoming, now))
            if self._real_now() >= until:
                break
        return outcomes

    def _once(self, work: Work, incoming: Incoming, now: datetime) -> Outcome:
        if not work.first_sight(incoming.update, self._real_now()):
            return Outcome(repeated=True)
        return self._answer(work, incoming, now)

    def _answer(self, work: Work, incoming: Incoming, now: datetime) -> Outcome:
        met = work.meet(incoming.chat, now, self._real_now())
        if met is not None:
            return self._hear_participant(work, met, incoming, now)
        chat = work.chat(incoming.chat)
        if chat is None or chat.participant is None:
            return self._join(work, chat or ChatSeen(id=incoming.chat), incoming, now)
        if chat.role is not Role.EDUCATOR:
            raise LookupError("a chat points to nobody")
        if chat.blocked:
            work.set_blocked(chat.id, blocked=False)
        if work.outbox.chat_of(chat.participant) != chat.id:  # answered where they are
            work.keep_chat(replace(chat, blocked=False), self._real_now())
        return _outcome(self._teaching.hear(work, chat.participant, incoming, now))

    def _hear_participant(self, work: Work, met: Met, incoming: Incoming, now: datetime) -> Outcome:
        opened, who = met.opened, met.opened.participant.id
        if met.blocked:
            work.set_blocked(incoming.chat, blocked=False)
        quoted = work.outbox.receipt(incoming.chat, incoming.quotes) if incoming.quotes else None
        turn = leave(opened, incoming, now=now) or self._turns.hear(
            opened, incoming, now=now, quoted=quoted
        )
        if turn.erase:
            work.erase(who)
            farewell = (replace(saying, to=TO_CHAT + incoming.chat) for saying in turn.says)
            said = work.outbox.queue(farewell, self._real_now())
            if opened.participant.educator is not None:
                said += self._teaching.left(work, opened.participant.educator, who, now).said
            return Outcome(said=said, erased=True)
        if incoming.text:
            work.keep_text(who, incoming, now)
        kept = self._keep(work, opened, turn, now, heard_at=now)
        person = turn.participant
        if person.state is State.STOPPED:
            work.outbox.withdraw(who, self._real_now(), UNASKED)
        elif gone := pointless_prompts(opened, turn, now=now):
            work.outbox.withdraw(who, self._real_now(), keys=gone)
        if not met.owed:
            return kept
        owed = work.outbox.say_owed_cautions(
            who, now, self._real_now(), owed_words(person.language, person.zone, now)
        )
        return replace(kept, said=kept.said + owed)

    def _keep(
        self,
        work: Work,
        opened: Opened,
        turn: Turn,
        now: datetime,
        *,
        heard_at: datetime | None = None,
    ) -> Outcome:
        work.save(turn, heard_at=heard_at)
        said = work.outbox.queue(turn.says, self._real_now())
        kept = Outcome(said=said, wake_at=turn.wake_at)
        return _outcome(self._teaching.after(work, opened, turn, now), kept)

    def _join(self, work: Work, chat: ChatSeen, incoming: Incoming, now: datetime) -> Outcome:
        code = self._code(chat, incoming)
        invitation = self._invitation(work, incoming, code)
        if invitation is not None and invitation.role is Role.EDUCATOR:
            return self._welcome(work, chat, invitation, incoming, now)
        joining = self._turns.join(
            chat.enrolment,
            invitation,
            incoming,
            now=now,
            new_id=self._new_id(),
            clock_speed=self._clock_speed,
            group_told=chat.group_told,
        )
        if code is not None and joining.used:
            work.spend(code, self._real_now())
        person = joining.participant
        if person is not None:
            work.enrol(person, self._real_now())
            work.save(
                Turn(participant=person, events=joining.events, wake_at=joining.wake_at),
                heard_at=now,
            )
        self._keep_chat(work, chat, incoming, joining)
        said = work.outbox.queue(joining.says, self._real_now())
        kept = Outcome(said=said, wake_at=joining.wake_at)
        if person is None or code is None:
            return kept
        return _outcome(self._teaching.joined(work, person, code, now), kept)

    def _welcome(
        self,
        work: Work,
        chat: ChatSeen,
        invitation: Invitation,
        incoming: Incoming,
        now: datetime,
    ) -> Outcome:
        """A chat that joins by an educator's code."""
        told = self._teaching.welcome(work, chat.enrolment, invitation, incoming, now)
        code = self._code(chat, incoming)
        if told.used and code is not None:
            work.spend(code, self._real_now())
        after = replace(
            chat, participant=told.educator, role=Role.EDUCATOR, enrolment=told.enrolment
        )
        if after.participant or after.enrolment:
            work.keep_chat(after, self._real_now())
        elif chat.enrolment:
            work.forget_chat(chat.id)
        return Outcome(said=told.said)

    def _keep_chat(self, work: Work, chat: ChatSeen, incoming: Incoming, joining: Joining) -> None:
        """Keep of a chat whose it is, how far it has come, that a group was told; else nothing."""
        after = replace(
            chat,
            participant=joining.participant.id if joining.participant else None,
            enrolment=None if joining.participant else joining.enrolment,
            group_told=chat.group_told or not incoming.private,
        )
        if after.participant or after.enrolment or after.group_told:
            work.keep_chat(after, self._real_now())
        elif chat.enrolment:
            work.forget_chat(chat.id)

    def _code(self, chat: ChatSeen, incoming: Incoming) -> str | None:
        told = self._turns.code_in(incoming.text)
        if told is not None or chat.enrolment is None:
            return told
        return dict(chat.enrolment.known).get("code")

    def _invitation(self, work: Work, incoming: Incoming, code: str | None) -> Invitation | None:
        if code is None or self._guesses.too_many(incoming.chat, self._real_now()):
            return None
        invitation = work.invitation(code, self._real_now())
        if invitation is None:
            self._guesses.wrong(incoming.chat, incoming.update, self._real_now())
        return invitation

    def _park(self, incoming: Incoming, now: datetime, error: Exception) -> None:
        self.park(incoming.update, error)
        with self._store.turn() as work:
            chat = work.chat(incoming.chat)
            if chat is not None and chat.participant is not None and incoming.text:
                work.keep_text(chat.participant, incoming, now)


def _outcome(kept: Kept, after: Outcome = NOTHING) -> Outcome:
    """What a turn left behind, with what it meant to an educator."""
    return together((Outcome(said=kept.said, wake_at=kept.wake_at), after))


def _to_millisecond(moment: datetime) -> datetime:
    """Cut off what the database would not keep."""
    return moment.replace(microsecond=moment.microsecond // 1000 * 1000)
