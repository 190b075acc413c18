"""Messages that came together, in one transaction: each as if it had come alone, in their order."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from itertools import count, cycle, islice

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import event, select
from sqlalchemy.exc import OperationalError

from bot.conversation import Conversation, Outcome
from bot.guesses import WRONG_CODES
from bot.messages import Incoming
from bot.storage import tables
from bot.storage.store import Store
from bot.turns.turn import Opened, Turn
from bot.wiring import live_turns
from tests.conversation.echo import START, echo_turns, person

PEOPLE = ("p0", "p1", "p2")


def bot(store: Store) -> Conversation:
    return Conversation(store, echo_turns, real_now=lambda: START, new_id=lambda: "x")


@pytest.fixture
def store(database_url: str) -> Iterator[Store]:
    opened = Store.open(database_url)
    for who in PEOPLE:
        bot(opened).enrol(person(who), START)
    yield opened
    opened.close()


def message(number: int, who: str, text: str, at: datetime = START) -> Incoming:
    return Incoming(update=number, chat=who, message=str(number), at=at, text=text)


MIXED = [message(number, PEOPLE[number % 3], f"text {number}") for number in range(12)]


def heard(talk: Conversation, messages: Sequence[Incoming], now: datetime = START) -> list[Outcome]:
    """All of them, as many at a time as the conversation takes."""
    outcomes: list[Outcome] = []
    while len(outcomes) < len(messages):
        outcomes += talk.hear_all(messages[len(outcomes) :], now)
    return outcomes


def said(store: Store) -> list[tuple[str, str]]:
    with store.turn() as work:
        return [(one.reader, one.text) for one in work.outbox.pending()]


def test_all_are_answered_once_and_in_their_order(store: Store) -> None:
    assert [one.said for one in heard(bot(store), MIXED)] == [1] * 12
    assert said(store) == [(one.chat, f"heard {one.text}") for one in MIXED]


def test_those_that_come_again_are_known(store: Store) -> None:
    heard(bot(store), MIXED[:7])
    again = heard(bot(store), MIXED)
    assert [one.repeated for one in again] == [True] * 7 + [False] * 5
    assert len(said(store)) == 12


def test_together_takes_one_transaction_on_a_file_of_our_own(store: Store) -> None:
    ended: list[str] = []
    event.listen(store.engine, "commit", lambda _connection: ended.append("commit"))
    taken = bot(store).hear_all(MIXED, START)
    # Several processes share a PostgreSQL: each message locks its own chat, and no second one.
    assert (len(taken), len(ended)) == ((12, 1) if store.is_sqlite else (1, 1))


@pytest.mark.parametrize("place", range(7))
def test_one_that_fails_is_parked_alone(store: Store, place: int) -> None:
    messages = [*MIXED[:6]]
    messages.insert(place, message(99, "p1", "break"))
    outcomes = heard(bot(store), messages)
    assert [one.parked for one in outcomes] == [number == place for number in range(7)]
    assert said(store) == [(one.chat, f"heard {one.text}") for one in MIXED[:6]]
    with store.turn() as work:
        assert [update for update, _ in work.parked()] == [99]
        texts = work.connection.execute(select(tables.heard.c.text)).scalars().all()
    assert sorted(texts) == sorted(one.text for one in messages)


def test_a_wrong_code_counts_once_though_its_group_is_taken_again(store: Store) -> None:
    talk = bot(store)
    for number in range(WRONG_CODES - 1):
        messages = [
            message(2 * number, "new", "/start WRONG"),
            message(2 * number + 1, "p1", "break"),
        ]
        heard(talk, messages)
    assert not talk._guesses.too_many("new", START)
    heard(talk, [message(100, "new", "/start WRONG")])
    assert talk._guesses.too_many("new", START)


def test_where_the_database_cannot_take_one_none_is_taken(store: Store) -> None:
    def away(opened: Opened, incoming: Incoming, *, now: datetime, quoted: str | None) -> Turn:
        if incoming is MIXED[2]:
            raise OperationalError("insert", None, Exception("disk I/O error"))
        return echo_turns.hear(opened, incoming, now=now, quoted=quoted)

    talk = bot(store)
    talk._turns = replace(echo_turns, hear=away)
    with pytest.raises(OperationalError):
        heard(talk, MIXED)
    # On PostgreSQL the two before it stand: each was a transaction of its own.
    assert len(said(store)) == (0 if store.is_sqlite else 2)
    heard(bot(store), MIXED)
    assert said(store) == [(one.chat, f"heard {one.text}") for one in MIXED]


def test_a_transaction_ends_early_where_messages_take_long(store: Store) -> None:
    ticks = count()
    talk = bot(store)
    talk._real_now = lambda: START + timedelta(milliseconds=3 * next(ticks))
    assert 1 <= len(talk.hear_all(MIXED, START)) < 12
    assert len(heard(talk, MIXED)) == 12
    assert len(said(store)) == 12


TEXTS = (
    *("118 before lunch, rice and beans", "164 after", "131", "54 shaky", "walked 20 minutes"),
    *("310", "not 131, 113", "undo", "later", "yes", "stop", "start", "summary", "delete my data"),
)


@settings(max_examples=40)
@given(
    st.lists(st.tuples(st.sampled_from(PEOPLE), st.sampled_from(TEXTS)), min_size=4, max_size=24),
    st.lists(st.integers(1, 9), min_size=1, max_size=6),
)
def test_together_leaves_behind_what_one_by_one_leaves(
    texts: list[tuple[str, str]], sizes: list[int]
) -> None:
    """With the turns that serve people, a day of whose messages comes in groups of any size."""
    groups: list[tuple[datetime, list[Incoming]]] = []
    numbers = iter(enumerate(texts))
    for place, size in enumerate(cycle(sizes)):
        at = START + timedelta(minutes=50 * place)
        group = [message(number, *one, at) for number, one in islice(numbers, size)]
        if not group:
            break
        groups.append((at, group))
    kept = []
    for together in (True, False):
        store = Store.in_memory()
        talk = Conversation(store, live_turns(), real_now=lambda: START, new_id=lambda: "x")
        for who in PEOPLE:
            talk.enrol(person(who), START)
        for at, group in groups:
            for messages in [group] if together else [[one] for one in group]:
                heard(talk, messages, at)
        with store.turn() as work:
            left = [(one.reader, one.key, one.text, one.kind) for one in work.outbox.pending()]
            people = [(one.participant, one.last_word, one.next_wake) for one in work.people()]
            kept.append((left, people, [work.events(who) for who in PEOPLE], work.parked()))
        store.close()
    assert kept[0] == kept[1]
