"""What the database tells a monitor, on both databases."""

from datetime import UTC, datetime, timedelta

import pytest

from bot.messages import Kind, Saying
from bot.participants import Participant
from bot.storage import migrations
from bot.storage.figures import figures, parked_count
from bot.storage.letters import End
from bot.storage.store import Store
from bot.storage.work import ChatSeen
from bot.turns.turn import Turn
from bot.units import Unit

NOW = datetime(2026, 3, 2, 12, tzinfo=UTC)
WHO = Participant(id="ana", unit=Unit.MG_DL, zone="UTC", joined_at=NOW)


def saying(kind: Kind, key: str, minutes: int) -> Saying:
    """Something that was due so many minutes ago."""
    return Saying(
        to="ana", kind=kind, text="words", key=key, due_at=NOW - timedelta(minutes=minutes)
    )


@pytest.fixture
def store(database_url: str) -> Store:
    opened = Store.open(database_url)
    with opened.turn() as work:
        work.enrol(WHO, NOW)
        work.keep_chat(ChatSeen(id="1", participant="ana"), NOW)
    return opened


def test_an_empty_outbox_waits_for_nothing(store: Store) -> None:
    with store.turn() as work:
        told = figures(work, NOW)
    assert (told.waiting, told.oldest, told.next_due) == ({}, {}, None)
    assert told.participants == 1
    assert told.schema == migrations.HEAD
    assert told.database in {"sqlite", "postgresql"}
    store.close()


def test_what_is_due_and_not_settled_waits(store: Store) -> None:
    with store.turn() as work:
        work.save(Turn(participant=WHO, events=(), wake_at=NOW + timedelta(hours=2)))
        work.outbox.queue(
            [
                saying(Kind.CAUTION, "sent", 9),
                saying(Kind.CAUTION, "under way", 8),
                saying(Kind.PROMPT, "a", 5),
                saying(Kind.PROMPT, "b", 1),
                saying(Kind.NOTE, "later", -60),
            ],
            NOW,
        )
    for _ in range(2):
        with store.turn() as work:
            letter = work.outbox.claim(NOW, NOW)
            assert letter is not None
            if letter.key == "sent":
                work.outbox.settle(letter, End.SENT, NOW, message="1")
    with store.turn() as work:
        told = figures(work, NOW)
    assert told.waiting == {Kind.CAUTION: 1, Kind.PROMPT: 2}
    assert told.oldest == {Kind.CAUTION: 480, Kind.PROMPT: 300}
    assert told.next_due == NOW + timedelta(hours=2)
    store.close()


def test_updates_given_up_are_counted(store: Store) -> None:
    with store.turn() as work:
        assert parked_count(work) == 0
        work.first_sight(1, NOW)
        work.park(2, NOW, "KeyError bot/turns/hearing.py:31")
        assert parked_count(work) == 1
    store.close()
