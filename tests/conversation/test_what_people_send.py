"""Everything that people send, through the loopback server, the real client and a real file."""

import sqlite3
from datetime import timedelta
from pathlib import Path

import pytest

from bot.participants import Invitation
from bot.storage.store import Store
from bot.wiring import live_turns
from scheduler.clock import real_now
from tests.conversation.echo import Served, served

pytestmark = pytest.mark.live


def rows(bot: Served, question: str) -> list[tuple[object, ...]]:
    with sqlite3.connect(bot.database.removeprefix("sqlite:///")) as connection:
        found = connection.execute(question).fetchall()
    connection.close()
    return found


def files(folder: Path) -> list[Path]:
    return list(folder.iterdir())


def invite(bot: Served, code: str) -> None:
    store = Store.open(bot.database)
    with store.turn() as work:
        work.invite(code, Invitation(), real_now() + timedelta(days=14))
    store.close()


async def said(bot: Served, chat: int, text: str) -> str:
    """Write and give the answer; time for the chat's own pace is let pass."""
    bot.shift(seconds=2)
    await bot.heard(chat, text)
    return bot.texts(chat)[-1]


async def test_an_edit_is_heard_as_one(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        message = bot.server.chats.say(ann, "118 rice")
        await bot.server.sent(ann, 1)
        bot.shift(seconds=2)
        bot.server.chats.edit(ann, message, "181 rice")
        await bot.server.sent(ann, 2)
        assert rows(bot, "SELECT text FROM heard") == [("181 rice",)]
    assert bot.texts(ann)[1] == "heard 181 rice"


async def test_a_reply_to_a_prompt_names_the_prompt_it_quotes(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await said(bot, ann, "ring 60")
        bot.shift(seconds=61)
        prompt = (await bot.server.sent(ann, 2))[1]
        bot.shift(seconds=2)
        bot.server.chats.say(ann, "150", quotes=prompt.message)
        await bot.server.sent(ann, 3)
    assert bot.texts(ann)[2].startswith("heard 150 to prompt:")


async def test_a_press_is_answered_like_its_text_and_told_to_be_taken(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await said(bot, ann, "buttons")
        asked = bot.server.sent_to(ann)[-1]
        assert asked.buttons == ("yes", "no")
        bot.shift(seconds=2)
        bot.server.chats.press(ann, asked.message, "no")
        await bot.server.sent(ann, 2)
        await bot.server.until(lambda: not bot.server.chats.queries)
    assert bot.texts(ann)[1].startswith("heard no to reply:")


@pytest.mark.parametrize("kind", ["voice", "sticker", "place", "contact", "file", "video"])
async def test_what_holds_no_text_is_answered_and_leaves_no_text(tmp_path: Path, kind: str) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.chats.send(ann, kind)
        await bot.server.sent(ann, 1)
        assert rows(bot, "SELECT text FROM heard") == []


async def test_a_photo_with_words_is_heard_by_its_words(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.chats.photo(ann, "118 this plate")
        await bot.server.sent(ann, 1)
    assert bot.texts(ann) == ["heard 118 this plate"]


async def test_a_group_is_told_once_and_nothing_of_it_is_kept_but_that(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        group = bot.server.chats.open("Family", group=True)
        bot.server.chats.say(group, "hello bot")
        await bot.server.sent(group, 1)
        bot.server.chats.say(group, "what is this")
        await bot.server.taken()
        bot.shift(seconds=2)
        assert rows(bot, "SELECT participant, enrolment, group_told FROM chat") == [(None, None, 1)]
        assert rows(bot, "SELECT count(*) FROM heard") == [(0,)]
        assert rows(bot, "SELECT count(*) FROM outbox") == [(0,)]
    assert bot.texts(group) == ["private only"]


async def test_nothing_is_kept_of_a_stranger(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        stranger = bot.server.chats.open("Stranger")
        assert await said(bot, stranger, "zebra 118") == "bad code"
        await bot.stop()
        for path in files(tmp_path):
            content = path.read_bytes()
            assert b"zebra" not in content
            assert str(stranger).encode() not in content


async def test_a_code_a_yes_and_somebody_has_joined(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        invite(bot, "ABCD-EFGH-JKMN")
        ann = bot.server.chats.open("Ann")
        assert await said(bot, ann, "/start ABCD-EFGH-JKMN") == "yes or no?"
        assert rows(bot, "SELECT count(*) FROM participant") == [(0,)]
        assert await said(bot, ann, "yes") == "welcome"
        assert await said(bot, ann, "118 rice") == "heard 118 rice"
        ben = bot.server.chats.open("Ben")
        assert await said(bot, ben, "/start ABCD-EFGH-JKMN") == "bad code"


async def test_after_five_wrong_codes_in_an_hour_the_right_one_is_not_even_looked_up(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        invite(bot, "ABCD-EFGH-JKMN")
        guesser = bot.server.chats.open("Guesser")
        for number in range(5):
            assert await said(bot, guesser, f"/start WRNG-WRNG-000{number}") == "bad code"
        assert await said(bot, guesser, "/start ABCD-EFGH-JKMN") == "bad code"
        bot.shift(hours=1)
        assert await said(bot, guesser, "/start ABCD-EFGH-JKMN") == "yes or no?"


async def test_erasing_says_goodbye_and_leaves_nothing(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await said(bot, ann, "quinoa chowder")
        assert await said(bot, ann, "erase") == "heard erase"
        assert await said(bot, ann, "hello?") == "bad code"
        await bot.stop()
        for path in files(tmp_path):
            assert b"quinoa" not in path.read_bytes()
            assert b'"ann"' not in path.read_bytes()


async def test_a_caution_goes_out_before_the_reply_beside_it(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        await said(bot, ann, "caution: sugar now")
        bot.shift(seconds=2)
        await bot.server.sent(ann, 2)
    assert bot.texts(ann) == ["caution: sugar now", "heard caution: sugar now"]


async def test_a_flood_from_one_chat_holds_up_nobody_elses_answer(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        ann, ben = await bot.enrolled(), await bot.enrolled("Ben")
        for number in range(300):
            bot.server.chats.say(ann, f"flood {number}")
        bot.server.chats.say(ben, "118 rice")
        asked = bot.clock.monotonic()
        await bot.server.sent(ben, 1)
        waited = bot.clock.monotonic() - asked
    # Behind the answers to the flood, one a second, it would wait five minutes. The bound is wide,
    # for a machine with other work; how fast a turn is, bench_turns.py measures.
    assert waited < 15


async def test_a_group_is_told_once_by_the_turns_that_serve_people(tmp_path: Path) -> None:
    async with served(tmp_path, turns=live_turns()) as bot:
        group = bot.server.chats.open("Family", group=True)
        bot.server.chats.say(group, "118 before lunch")
        await bot.server.sent(group, 1)
        bot.server.chats.say(group, "what is this")
        await bot.server.taken()
        assert rows(bot, "SELECT participant, enrolment, group_told FROM chat") == [(None, None, 1)]
        assert rows(bot, "SELECT count(*) FROM participant") == [(0,)]
    assert len(bot.texts(group)) == 1
