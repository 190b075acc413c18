"""What a turn does never depends on what the bot happens to remember of a person.

Each story is lived twice: by a bot that keeps records at hand between its turns, and by one
that forgets everything before each of them, as after a restart. Another process writes
beside both, and transactions fail on their way.
"""

from dataclasses import replace
from datetime import datetime, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.conversation import Conversation
from bot.entries import Reading
from bot.messages import Incoming
from bot.record import Wrote
from bot.record.events import Event
from bot.storage.records import Cache
from bot.storage.store import Store
from bot.turns.turn import Opened, Turn
from bot.wiring import live_turns
from tests.conversation.echo import START, person

TEXTS = (
    *("118 before lunch, rice and beans", "164 after", "131", "92 fasting", "54 shaky", "310"),
    *("walked 20 minutes", "juice", "not 131, 113", "undo", "later", "skip", "yes", "before"),
    *("stop", "start", "nights off", "next step", "summary", "quiet from 22:00 to 06:00"),
)
#: Minutes that pass before a step: none, some, and now and then weeks, so that a record ages.
WAITS = st.sampled_from((0, 1, 15, 60, 119, 121, 600, 60 * 24, 60 * 24 * 20))
STEPS = st.tuples(
    WAITS,
    st.sampled_from(("hear", "hear", "hear", "edit", "wake", "beside", "fail")),
    st.integers(0, 2),
    st.sampled_from(TEXTS),
)


class Life:
    """One bot, and every turn that it decided."""

    def __init__(self, *, forgets: bool) -> None:
        self.store, self.forgets = Store.in_memory(), forgets
        self.decided: list[object] = []
        self.fails = False
        real = live_turns()

        def hear(
            opened: Opened, incoming: Incoming, *, now: datetime, quoted: str | None = None
        ) -> Turn:
            return self.note(real.hear(opened, incoming, now=now, quoted=quoted))

        def wake(opened: Opened, *, now: datetime) -> Turn:
            return self.note(real.wake(opened, now=now))

        self.bot = Conversation(
            self.store,
            replace(real, hear=hear, wake=wake),
            real_now=lambda: START,
            new_id=lambda: "x",
        )
        for number in range(3):
            self.bot.enrol(person(f"p{number}"), START)

    def note(self, turn: Turn) -> Turn:
        self.decided.append((turn.participant, turn.events, turn.says, turn.wake_at, turn.erase))
        if self.fails:  # behind its decision: the second of two people is lost with the first
            raise ValueError("a fault of ours")
        return turn

    def step(self, number: int, kind: str, who: str, text: str, now: datetime) -> None:
        if self.forgets:
            self.store._cache = Cache()
        self.fails = kind == "fail"
        if kind == "wake":
            with self.store.turn() as work:
                due, _ = work.due(now, 10)
            if due:
                self.bot.wake_all(due, now)
        elif kind == "beside":
            self.write_beside(who, now)
        else:
            edits = str(number - 1) if kind == "edit" else None
            message = edits or str(number)
            self.bot.hear(
                Incoming(update=number, chat=who, message=message, at=now, text=text, edits=edits),
                now,
            )

    def write_beside(self, who: str, now: datetime) -> None:
        """What a command does beside `serve`: its own memory, the same database."""
        mine, self.store._cache = self.store._cache, Cache()
        with self.store.turn() as work:
            opened = work.open(who, now)
            assert opened is not None
            last = max((event.id for event in opened.whole()), default=0)
            changed = replace(opened.participant, fluid_limit=not opened.participant.fluid_limit)
            wrote = Event(id=last + 1, at=now, body=Wrote(), message=f"beside {last}")
            work.save(Turn(participant=changed, events=(wrote,), wake_at=now))
        self.store._cache = mine


@settings(max_examples=40)
@given(st.lists(STEPS, min_size=5, max_size=40))
def test_a_bot_that_remembers_decides_as_one_that_forgets(
    steps: list[tuple[int, str, int, str]],
) -> None:
    lives, now = [Life(forgets=False), Life(forgets=True)], START
    for number, (wait, kind, who, text) in enumerate(steps, 1):
        now += timedelta(minutes=wait)
        for life in lives:
            life.step(number, kind, f"p{who}", text, now)
    remembers, forgets = lives
    assert remembers.decided == forgets.decided
    kept = []
    for life in lives:
        with life.store.turn() as work:
            kept.append([work.events(f"p{number}") for number in range(3)])
        life.store.close()
    assert kept[0] == kept[1]


def test_one_whose_turn_fails_is_alone_in_it() -> None:
    life = Life(forgets=False)
    now = START + timedelta(hours=1)
    for who in ("p0", "p1", "p2"):
        life.write_beside(who, now)
    real = life.bot._waking._turns.wake

    def wake(opened: Opened, *, now: datetime) -> Turn:
        if opened.participant.id == "p1":
            raise ValueError("a fault of ours")
        return real(opened, now=now)

    life.bot._waking._turns = replace(life.bot._waking._turns, wake=wake)
    life.bot.wake_all(("p0", "p1", "p2"), now)
    with life.store.turn() as work:
        wakes = []
        for who in ("p0", "p1", "p2"):
            work.open(who, now)
            wakes.append(work.next_wake(who))
    life.store.close()
    assert wakes[1] == now + timedelta(minutes=5)
    assert all(wake is not None and wake > now for wake in wakes)


def test_whoever_was_silent_for_two_months_is_answered() -> None:
    """None of their events is at hand then, and the next one comes behind all of them still."""
    for forgets in (False, True):
        life = Life(forgets=forgets)
        for number, (days, text) in enumerate(((0, "stop"), (60, "shaky"), (60, "54"))):
            life.step(number, "hear", "p0", text, START + timedelta(days=days, minutes=number))
        with life.store.turn() as work:
            assert work.parked() == []
            said = [letter.text for letter in work.outbox.pending() if letter.reader == "p0"]
        life.store.close()
        assert any("54 mg/dL is low" in text for text in said), said


def test_what_only_the_remembered_record_holds_still_is_put_right() -> None:
    """The record left by the last turn may reach a week further back than the events."""
    life = Life(forgets=False)
    for number, (days, text) in enumerate(((0, "131"), (30, "118"), (36, "not 131, 113"))):
        life.step(number, "hear", "p0", text, START + timedelta(days=days))
    with life.store.turn() as work:
        assert work.parked() == []
        values = [e.body.value for e in work.events("p0") if isinstance(e.body, Reading)]
    assert values == [131, 118, 113]
