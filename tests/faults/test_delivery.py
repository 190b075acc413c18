"""Delivery under faults: each test is named after its outcome (docs/delivery.md)."""

import asyncio
import re
import sqlite3
from collections.abc import Mapping
from datetime import timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from bot.messages import Kind, Saying
from bot.trial.faults import Fault
from bot.wiring import Makes
from scheduler.clock import real_now
from tests.conversation.echo import Served, person, saying, served, until

pytestmark = pytest.mark.live


def states(bot: Served) -> dict[str, int]:
    with sqlite3.connect(bot.database.removeprefix("sqlite:///")) as connection:
        return dict(connection.execute("SELECT state, count(*) FROM outbox GROUP BY state"))


async def queue(bot: Served, *says: Saying) -> None:
    """Put sayings into the outbox, as a turn would."""

    def run() -> None:
        with bot.service._store.turn() as work:
            work.outbox.queue(says, bot.clock.real_now())

    await bot.service._writer.run(run)
    bot.service.look()


async def settled(bot: Served) -> None:
    """Wait until nothing is left to send."""
    async with asyncio.timeout(10):
        while await bot.service.waiting() or not bot.service.is_idle:  # noqa: ASYNC110
            await asyncio.sleep(0.01)


def of(kind: Kind, text: str, to: str = "ann", **fields: Any) -> Saying:
    return saying(to, text, f"key of {text}", at=real_now(), kind=kind, **fields)


async def given_back(bot: Served, attempts: int) -> None:
    """Wait until so many sends were tried and nothing is under way."""
    await until(lambda: bot.server.calls["sendMessage"] >= attempts and bot.service.is_idle)


async def all_unsure(bot: Served, copies: int) -> None:
    """Let so many sends of a caution end unsure, and pass the wait behind each."""
    for attempts in range(1, copies + 1):
        await given_back(bot, attempts)
        bot.shift(seconds=6 if attempts == 1 else 181)


async def test_a_lost_reply_gives_two_copies_of_a_prompt_and_never_three(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.faults.order(Fault.LOST_REPLY, method="sendMessage", times=9)
        await queue(bot, of(Kind.PROMPT, "test now"))
        await given_back(bot, 1)
        bot.shift(seconds=29)
        await asyncio.sleep(0.05)
        assert bot.texts(ann) == ["test now"]  # not before thirty seconds are over
        bot.shift(seconds=2)
        await given_back(bot, 2)
        for _ in range(5):
            bot.shift(minutes=5)
            await asyncio.sleep(0.02)
        assert states(bot) == {"unsure": 1}
    assert bot.texts(ann) == ["test now", "test now"]


async def test_a_lost_reply_gives_one_copy_of_a_digest(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.faults.order(Fault.LOST_REPLY, method="sendMessage", times=9)
        await queue(bot, of(Kind.DIGEST, "your week"))
        await settled(bot)
        bot.shift(hours=1)
        await settled(bot)
        assert states(bot) == {"unsure": 1}
    assert bot.texts(ann) == ["your week"]


async def test_a_caution_is_retried_until_it_is_certain(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.faults.order(Fault.BREAKS, method="sendMessage", times=2)
        await queue(bot, of(Kind.CAUTION, "sugar now"))
        await all_unsure(bot, 2)
        await settled(bot)
        assert states(bot) == {"sent": 1}
    assert bot.texts(ann) == ["sugar now"]


async def test_three_copies_of_a_caution_are_the_most(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.faults.order(Fault.LOST_REPLY, method="sendMessage", times=9)
        await queue(bot, of(Kind.CAUTION, "sugar now"))
        await all_unsure(bot, 3)
        await settled(bot)
        assert states(bot) == {"unsure": 1}
    assert bot.texts(ann) == ["sugar now"] * 3


async def test_what_a_killed_sender_held_is_sent_once_more_by_rule(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await bot.stop()
        with sqlite3.connect(bot.database.removeprefix("sqlite:///")) as connection:
            insert_claimed(connection, "claimed", "drawn, never sent", Kind.DIGEST, 1)
            insert_claimed(connection, "sending", "a prompt on its way", Kind.PROMPT, 2)
            insert_claimed(connection, "sending", "a digest on its way", Kind.DIGEST, 3)
        await bot.start()
        for _ in range(3):
            bot.shift(seconds=2)
            await asyncio.sleep(0.1)
        await settled(bot)
        assert states(bot) == {"sent": 2, "unsure": 1}
    assert sorted(bot.texts(ann)) == ["a prompt on its way", "drawn, never sent"]


def insert_claimed(
    connection: sqlite3.Connection, state: str, text: str, kind: Kind, id_: int
) -> None:
    connection.execute(
        "INSERT INTO outbox (id, reader, key, kind, text, to_make, rank, due_ms, made_real, "
        "state, attempts, copies, parts_done, retry_real, lease_real, chat) "
        "VALUES (?, 'ann', ?, ?, ?, 0, 0, 0, 0, ?, 1, 0, 0, 0, 99999999999999, '1001')",
        (id_, text, kind.value, text, state),
    )


async def test_a_server_out_of_reach_is_tried_again_until_it_is_there(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await bot.server.stop()
        await queue(bot, of(Kind.PROMPT, "test now", expires_at=real_now() + timedelta(hours=1)))
        await until(lambda: bot.service._delivery._failures > 0)
        await bot.server.start()
        bot.shift(minutes=2)
        await bot.server.sent(ann, 1)
        await settled(bot)
        assert states(bot) == {"sent": 1}
    assert bot.texts(ann) == ["test now"]


async def test_what_could_not_be_sent_in_its_window_expires_and_is_recorded(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await bot.server.stop()
        await queue(bot, of(Kind.PROMPT, "test now", expires_at=real_now() + timedelta(minutes=45)))
        await until(lambda: bot.service._delivery._failures > 0)
        await bot.server.start()
        bot.shift(minutes=46)
        await settled(bot)
        assert states(bot) == {"expired": 1}
    assert bot.texts(ann) == []


async def test_a_caution_that_expired_is_told_when_its_reader_writes_again(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.faults.order(Fault.TOO_MANY, method="sendMessage", seconds=3600)
        at = bot.clock.now().astimezone(ZoneInfo(person().zone))
        await queue(bot, of(Kind.CAUTION, "sugar now"))
        await given_back(bot, 1)
        bot.shift(minutes=31, hours=1)
        await settled(bot)
        assert states(bot) == {"expired": 1}
        bot.server.chats.say(ann, "hello")
        await bot.server.sent(ann, 1)
        bot.shift(seconds=2)
        await bot.server.sent(ann, 2)
        bot.shift(hours=2)
        await bot.heard(ann, "again")
        await settled(bot)
        assert states(bot) == {"told": 1, "sent": 3}
    again, *replies = bot.texts(ann)
    # An hour and a half after ten in the evening is another day, and then no time is given.
    later = at + timedelta(minutes=31, hours=1)
    when = r"at \d\d:\d\d" if later.date() == at.date() else "on an earlier day"
    assert re.fullmatch(rf"This warning may not have reached you {when}: sugar now", again)
    assert replies == ["heard hello", "heard again"]


async def test_a_caution_that_ended_unsure_is_told_once_more_when_its_reader_writes(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.faults.order(Fault.BREAKS, method="sendMessage", times=3)
        await queue(bot, of(Kind.CAUTION, "sugar now"))
        await all_unsure(bot, 3)
        await settled(bot)
        assert states(bot) == {"unsure": 1}
        bot.shift(hours=23)
        bot.server.chats.say(ann, "hello")
        await bot.server.sent(ann, 1)
    dated = r"This warning may not have reached you (on an earlier day|at \d\d:\d\d): sugar now"
    assert re.fullmatch(dated, bot.texts(ann)[0])


async def test_a_new_caution_goes_before_an_owed_one_and_both_before_the_reply(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.faults.order(Fault.BREAKS, method="sendMessage", times=3)
        await queue(bot, of(Kind.CAUTION, "sugar now"))
        await all_unsure(bot, 3)
        await settled(bot)
        bot.server.chats.say(ann, "caution, low")
        for count in (1, 2, 3):
            await bot.server.sent(ann, count)
            bot.shift(seconds=2)
        first, second, third = bot.texts(ann)
    assert first == "caution, low"
    assert second.endswith(": sugar now")
    assert third == "heard caution, low"


async def test_a_chat_told_to_wait_waits_and_cautions_to_others_are_not_held_up(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann, ben = await bot.enrolled(), await bot.enrolled("Ben")
        bot.server.faults.order(Fault.TOO_MANY, method="sendMessage", chat=ann, seconds=30)
        await queue(bot, of(Kind.REPLY, "to ann"))
        await given_back(bot, 1)
        await queue(bot, of(Kind.CAUTION, "to ben", to="ben"))
        await bot.server.sent(ben, 1, seconds=2)
        assert bot.texts(ann) == []
        bot.shift(seconds=31)
        await bot.server.sent(ann, 1)


async def test_two_chats_told_to_wait_hold_all_and_urgency_orders_them_afterwards(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        for name in ("Ann", "Ben", "Cem", "Dot"):
            await bot.enrolled(name)
        bot.server.faults.order(Fault.TOO_MANY, method="sendMessage", times=2, seconds=30)
        await queue(bot, of(Kind.DIGEST, "a"), of(Kind.DIGEST, "b", to="ben"))
        await given_back(bot, 2)
        await queue(bot, of(Kind.DIGEST, "c", to="cem"), of(Kind.CAUTION, "d", to="dot"))
        await asyncio.sleep(0.1)
        assert bot.server.ledger == []
        bot.shift(seconds=31)
        await bot.server.until(lambda: len(bot.server.ledger) == 4)
    assert bot.server.ledger[0].text == "d"


async def test_a_page_of_html_instead_of_json_is_taken_as_unsure_and_the_loop_survives(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.faults.order(Fault.BREAKS, method="sendMessage")
        await queue(bot, of(Kind.DIGEST, "your week"))
        await settled(bot)
        assert states(bot) == {"unsure": 1}
        bot.shift(seconds=2)
        await bot.heard(ann, "hello")


async def blocks_us(bot: Served, when_it_shows: list[Saying], afterwards: list[Saying]) -> int:
    """A chat that has blocked us, once all that was to be said to it has ended."""
    ann = await bot.enrolled()
    bot.server.faults.order(Fault.BLOCKED, chat=ann)
    for says in (when_it_shows, afterwards):
        await queue(bot, *says)
        await settled(bot)
    return ann


async def test_a_chat_that_blocked_us_has_its_messages_cancelled_until_it_writes_again(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await blocks_us(
            bot, [of(Kind.PROMPT, "one"), of(Kind.PROMPT, "two")], [of(Kind.PROMPT, "three")]
        )
        assert states(bot) == {"cancelled": 3}
        assert bot.server.calls["sendMessage"] == 1
        bot.shift(seconds=2)
        await bot.heard(ann, "I am back")
    assert bot.texts(ann) == ["heard I am back"]


async def test_a_caution_to_whoever_blocked_us_is_said_when_they_come_back_within_the_day(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await blocks_us(
            bot,
            [of(Kind.CAUTION, "sugar now"), of(Kind.CAUTION, "and again")],
            [of(Kind.CAUTION, "and now"), of(Kind.PROMPT, "one")],
        )
        assert states(bot) == {"expired": 3, "cancelled": 1}
        bot.shift(hours=20)
        bot.server.chats.say(ann, "I am back")
        for count in (1, 2, 3, 4):
            await bot.server.sent(ann, count)
            bot.shift(seconds=2)
    said = [text.rpartition(": ")[2] for text in bot.texts(ann)]
    assert said == ["sugar now", "and again", "and now", "heard I am back"]


async def test_a_refused_message_fails_once_and_does_not_loop(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        await bot.enrolled()
        bot.server.faults.order(Fault.REFUSES, method="sendMessage")
        await queue(bot, of(Kind.REPLY, "odd"))
        await settled(bot)
        assert states(bot) == {"failed": 1}
        assert bot.server.calls["sendMessage"] == 1


async def test_a_text_longer_than_the_chat_takes_goes_out_in_pieces(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        words = " ".join(f"word{number}" for number in range(1000))
        await queue(bot, of(Kind.REPLY, words, buttons=("yes",)))
        got = await bot.server.sent(ann, 2)
    assert " ".join(sent.text for sent in got) == words
    assert [sent.buttons for sent in got] == [(), ("yes",)]


async def test_a_picture_is_drawn_when_it_is_sent_and_goes_out_with_its_words(
    tmp_path: Path,
) -> None:
    drawn: list[Mapping[str, Any]] = []

    async def draw(_row: int, picture: Mapping[str, Any]) -> bytes:
        drawn.append(picture)
        return b"\x89PNG a picture"

    async with served(tmp_path, makes=Makes(draw=draw)) as bot:
        ann = await bot.enrolled()
        await queue(bot, of(Kind.DIGEST, "your week", picture={"figures": 1}))
        (sent,) = await bot.server.sent(ann, 1)
    assert (sent.text, drawn) == ("your week", [{"figures": 1}])
    assert sent.picture is not None


async def test_words_too_long_for_a_caption_follow_their_picture(tmp_path: Path) -> None:
    async def draw(_row: int, _picture: Mapping[str, Any]) -> bytes:
        return b"\x89PNG a picture"

    async with served(tmp_path, makes=Makes(draw=draw)) as bot:
        ann = await bot.enrolled()
        await queue(bot, of(Kind.DIGEST, "w" * 1025, picture={"figures": 1}))
        first, second = await bot.server.sent(ann, 2)
    assert (first.text, second.text) == ("", "w" * 1025)


@pytest.mark.parametrize("how", ["crashes", "hangs"])
async def test_a_drawing_that_crashes_or_hangs_lets_the_words_go_out_alone(
    tmp_path: Path, how: str
) -> None:
    async def draw(_row: int, _picture: Mapping[str, Any]) -> bytes:
        if how == "hangs":
            raise TimeoutError  # what a hung process ends as: tests/delivery/test_drawing.py
        raise RuntimeError("the process is gone")

    async with served(tmp_path, makes=Makes(draw=draw)) as bot:
        ann = await bot.enrolled()
        await queue(bot, of(Kind.DIGEST, "your week", picture={"figures": 1}))
        (sent,) = await bot.server.sent(ann, 1)
    assert (sent.text, sent.picture) == ("your week", None)


async def test_a_caution_leaves_within_a_tenth_of_a_second_past_three_hundred_digests(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        for number in range(60):
            await bot.enrolled(f"P{number}")
        digests = [
            saying(f"p{n % 60}", f"digest {n}", f"k{n}", at=real_now(), kind=Kind.DIGEST)
            for n in range(300)
        ]
        await queue(bot, *digests)
        await bot.server.until(lambda: len(bot.server.ledger) >= 5)
        gone = len(bot.server.ledger)
        await queue(bot, of(Kind.CAUTION, "sugar now", to="p59"))
        await bot.server.until(lambda: any(s.text == "sugar now" for s in bot.server.ledger))
    place = next(n for n, sent in enumerate(bot.server.ledger) if sent.text == "sugar now")
    # At thirty a second three digests leave in a tenth of a second, on however busy a machine.
    assert place - gone <= 3


async def test_never_more_than_the_cap_leave_in_any_second(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        for number in range(45):
            await bot.enrolled(f"P{number}")
        await queue(
            bot,
            *(saying(f"p{n}", "hi", f"k{n}", at=real_now(), kind=Kind.PROMPT) for n in range(45)),
        )
        await bot.server.until(lambda: len(bot.server.ledger) == 45)
        at = [sent.at.timestamp() for sent in bot.server.ledger]
    most = max(sum(1 for other in at if first <= other < first + 1) for first in at)
    assert most <= 30


async def test_one_chats_messages_keep_their_order_and_leave_a_second_apart(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await queue(bot, of(Kind.REPLY, "one"), of(Kind.REPLY, "two"))
        first, second = await bot.server.sent(ann, 2)
    assert (first.text, second.text) == ("one", "two")
    assert second.at - first.at > timedelta(seconds=0.9)


async def test_the_same_thing_is_never_said_twice(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await queue(bot, of(Kind.PROMPT, "test now"))
        await settled(bot)
        await queue(bot, of(Kind.PROMPT, "test now"))
        await settled(bot)
    assert bot.texts(ann) == ["test now"]


async def test_an_unforeseen_end_of_a_send_is_taken_back_after_its_lease(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        send, tries = bot.service._chat.send, []

        async def fail_once(chat: str, part: Any) -> Any:
            tries.append(chat)
            if len(tries) == 1:
                raise RuntimeError("nobody thought of this")
            return await send(chat, part)

        bot.service._chat.send = fail_once
        await queue(bot, of(Kind.PROMPT, "test now"))
        await until(lambda: tries != [])
        bot.shift(minutes=3)
        await bot.server.sent(ann, 1)
    assert bot.texts(ann) == ["test now"]
