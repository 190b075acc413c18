"""Whatever waits long enough goes first in the end: the outbox's ranks, on given instants."""

from collections.abc import Iterator
from datetime import timedelta

import pytest

from bot.messages import Kind
from bot.storage.store import Store
from bot.storage.urgency import URGENCY
from tests.conversation.echo import START, person, saying


@pytest.fixture
def store(database_url: str) -> Iterator[Store]:
    opened = Store.open(database_url)
    yield opened
    opened.close()


@pytest.mark.parametrize(
    ("kind", "waited", "first"),
    [
        (Kind.PROMPT, timedelta(minutes=14), "reply"),
        (Kind.PROMPT, timedelta(minutes=16), "prompt"),
        (Kind.DIGEST, timedelta(minutes=29), "reply"),
        (Kind.DIGEST, timedelta(minutes=31), "digest"),
        (Kind.NOTE, timedelta(minutes=31), "note"),
    ],
)
def test_what_has_waited_longer_than_its_handicap_goes_before_a_new_reply(
    store: Store, kind: Kind, waited: timedelta, first: str
) -> None:
    later = START + waited
    with store.turn() as work:
        work.enrol(person(), START)
        work.outbox.queue([saying("chat:1", kind.value, "a", kind=kind)], START)
        work.outbox.queue([saying("chat:2", "reply", "b")], later)
        letter = work.outbox.claim(later, later)
    assert letter is not None
    assert letter.text == first


def test_no_reply_grows_worthless_behind_the_prompts_of_a_rush() -> None:
    worth = URGENCY[Kind.REPLY].worth
    assert worth is not None
    assert URGENCY[Kind.PROMPT].handicap > worth


def test_no_wait_of_the_others_overtakes_a_caution(store: Store) -> None:
    later = START + timedelta(hours=23)
    with store.turn() as work:
        work.outbox.queue([saying("chat:1", "digest", "a", kind=Kind.DIGEST)], START)
        work.outbox.queue([saying("chat:2", "caution", "b", kind=Kind.CAUTION)], later)
        letter = work.outbox.claim(later, later)
    assert letter is not None
    assert letter.text == "caution"
