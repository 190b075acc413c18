"""A prompt that is under way already when its reason goes: row 16 of docs/delivery.md.

Through the real turns and the real outbox. What a sender has claimed cannot be called back: it
is the one late prompt, and nothing follows it.
"""

from contextlib import closing
from datetime import timedelta

import pytest

from bot.conversation import Conversation
from bot.messages import Incoming, Kind
from bot.storage.letters import End, Letter
from bot.storage.store import Store
from bot.wiring import live_turns
from tests.conversation.echo import START, person


class Lunch:
    """Ann tells of her lunch, and her prompt is claimed by a sender when it falls due."""

    def __init__(self, *, claimed: bool = True, store: Store | None = None) -> None:
        self.store, self.now = store or Store.in_memory(), START
        self.bot = Conversation(
            self.store, live_turns(), real_now=lambda: self.now, new_id=lambda: "x"
        )
        self.bot.enrol(person(), START, chat="1")
        self.updates = 0
        self.says("rice and beans for lunch")
        self.says_all()
        self.passes(minutes=120)
        if claimed:
            self.claimed = self.claim()

    def says(self, text: str, *, edits: str | None = None) -> None:
        """A message, or another version of an earlier one."""
        self.updates += 1
        message = edits or str(self.updates)
        self.bot.hear(
            Incoming(
                update=self.updates,
                chat="1",
                message=message,
                at=self.now,
                text=text,
                edits=edits,
            ),
            self.now,
        )

    def passes(self, *, minutes: int) -> None:
        """Time goes on; whoever is due is woken each minute."""
        for _ in range(minutes):
            self.now += timedelta(minutes=1)
            with self.store.turn() as work:
                due, _ = work.due(self.now, 10)
            self.bot.wake_all(due or ("ann",), self.now)

    def claim(self) -> Letter:
        """A sender takes what is to leave next."""
        with self.store.turn() as work:
            letter = work.outbox.claim(self.now, self.now)
        assert letter is not None
        assert letter.kind is Kind.PROMPT
        return letter

    def says_all(self) -> list[Kind]:
        """Everything that waits is sent; gives its kinds."""
        sent = []
        with self.store.turn() as work:
            while (letter := work.outbox.claim(self.now, self.now)) is not None:
                work.outbox.settle(letter, End.SENT, self.now, message="1")
                sent.append(letter.kind)
        return sent

    def arrives(self) -> None:
        """The late prompt is in the chat."""
        with self.store.turn() as work:
            work.outbox.settle(self.claimed, End.SENT, self.now, message="2")

    def prompts(self) -> int:
        """How many prompts were ever queued."""
        with self.store.turn() as work:
            return work.connection.exec_driver_sql(
                "SELECT count(*) FROM outbox WHERE kind = 'prompt'"
            ).scalar_one()


@pytest.mark.parametrize("reason_goes", ["stop", "edit", "undo"])
def test_what_loses_its_reason_while_it_is_claimed_is_the_last_prompt(reason_goes: str) -> None:
    lunch = Lunch()
    if reason_goes == "edit":
        lunch.says("118 fasting", edits="1")
    else:
        lunch.says(reason_goes)
    lunch.arrives()
    lunch.says_all()
    lunch.passes(minutes=180)
    assert lunch.says_all() == []
    assert lunch.prompts() == 1


def test_a_prompt_that_nobody_has_claimed_yet_is_withdrawn_by_stop() -> None:
    lunch = Lunch(claimed=False)
    assert lunch.prompts() == 1
    lunch.says("stop")
    assert lunch.says_all() == [Kind.REPLY]


@pytest.mark.parametrize("answer", ["164", "skip"])
def test_a_prompt_that_nobody_has_claimed_yet_is_withdrawn_by_its_answer(answer: str) -> None:
    lunch = Lunch(claimed=False)
    assert lunch.prompts() == 1
    lunch.says(answer)
    assert Kind.PROMPT not in lunch.says_all()
    lunch.passes(minutes=60)
    assert lunch.says_all() == []


@pytest.mark.parametrize("answer", ["164", "skip"])
def test_its_answer_withdraws_it_on_postgresql_too(answer: str, postgres_url: str) -> None:
    with closing(Store.open(postgres_url)) as store:
        lunch = Lunch(claimed=False, store=store)
        assert lunch.prompts() == 1
        lunch.says(answer)
        assert Kind.PROMPT not in lunch.says_all()


def test_a_message_that_answers_nothing_leaves_the_waiting_prompt() -> None:
    lunch = Lunch(claimed=False)
    lunch.says("took my metformin")
    assert Kind.PROMPT in lunch.says_all()


def test_without_that_the_second_asking_follows() -> None:
    lunch = Lunch()
    lunch.arrives()
    lunch.passes(minutes=180)
    assert lunch.prompts() == 2


def test_a_claimed_prompt_that_never_left_is_not_sent_again_after_its_window() -> None:
    lunch = Lunch()
    lunch.says("stop")
    lunch.says_all()
    lunch.passes(minutes=31)  # its sender is gone; the lease and the prompt's own end are over
    with lunch.store.turn() as work:
        work.outbox.recover(lunch.now)
    assert lunch.says_all() == []


def test_the_day_after_is_as_before() -> None:
    lunch = Lunch()
    lunch.says("118 fasting", edits="1")
    lunch.arrives()
    lunch.passes(minutes=24 * 60)
    before = lunch.prompts()
    lunch.says("rice and beans for lunch")
    lunch.passes(minutes=121)
    assert lunch.prompts() == before + 1
