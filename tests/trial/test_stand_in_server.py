"""The stand-in server, seen by the real client library.

Expected behaviour is that of the public Bot API: long polling, confirmation by offset, error
numbers and their parameters. Common practice where the public pages do not say.
"""

import asyncio
import json
from collections.abc import AsyncIterator
from datetime import UTC, datetime
from pathlib import Path

import httpx
import pytest
from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup, ReplyParameters
from telegram.error import (
    BadRequest,
    Conflict,
    Forbidden,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TimedOut,
)
from telegram.request import HTTPXRequest
from tornado.httpserver import HTTPServer
from tornado.netutil import bind_sockets
from tornado.web import Application, RequestHandler

from bot.trial.faults import Fault
from bot.trial.stand_in import TOKEN, StandIn
from bot.trial.webhook import SECRET_HEADER

pytestmark = pytest.mark.live
NOON = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)


def client(url: str, token: str = TOKEN) -> Bot:
    return Bot(
        token,
        base_url=f"{url}/bot",
        base_file_url=f"{url}/file/bot",
        request=HTTPXRequest(read_timeout=0.5, connect_timeout=1),
    )


@pytest.fixture
async def server() -> AsyncIterator[StandIn]:
    async with StandIn(lambda: NOON) as running:
        yield running


@pytest.fixture
async def bot(server: StandIn) -> AsyncIterator[Bot]:
    async with client(server.url) as ready:
        yield ready


async def test_client_starts_and_knows_its_name(bot: Bot) -> None:
    assert bot.username == "afterplate_trial_bot"


async def test_wrong_token_is_turned_away(server: StandIn) -> None:
    stranger = client(server.url, "1:wrong")
    with pytest.raises(InvalidToken):
        await stranger.initialize()
    await stranger.shutdown()


async def test_updates_come_again_until_confirmed(server: StandIn, bot: Bot) -> None:
    ana = server.chats.open("Ana")
    server.chats.say(ana, "118 rice")
    server.chats.say(ana, "and beans")
    first = await bot.get_updates(timeout=0)
    again = await bot.get_updates(timeout=0)
    assert [u.update_id for u in first] == [u.update_id for u in again]
    assert [u.message.text for u in first if u.message] == ["118 rice", "and beans"]
    rest = await bot.get_updates(offset=first[0].update_id + 1, timeout=0)
    assert [u.update_id for u in rest] == [first[1].update_id]
    assert first[0].message is not None
    assert first[0].message.date == NOON


async def test_limit_holds_back_the_rest(server: StandIn, bot: Bot) -> None:
    ana = server.chats.open("Ana")
    for number in range(5):
        server.chats.say(ana, str(number))
    assert len(await bot.get_updates(limit=2, timeout=0)) == 2


async def test_fetching_waits_for_what_comes(server: StandIn, bot: Bot) -> None:
    ana = server.chats.open("Ana")
    fetch = asyncio.create_task(bot.get_updates(timeout=5))
    await server.until(lambda: server.fetching)
    assert not fetch.done()
    server.chats.say(ana, "118")
    updates = await fetch
    assert len(updates) == 1


async def test_empty_answer_when_nothing_comes_in_time(bot: Bot) -> None:
    assert await bot.get_updates(timeout=1) == ()


async def test_older_of_two_fetchers_is_turned_away(server: StandIn, bot: Bot) -> None:
    older = asyncio.create_task(bot.get_updates(timeout=5))
    await server.until(lambda: server.fetching)
    async with client(server.url) as other:
        newer = asyncio.create_task(other.get_updates(timeout=5))
        with pytest.raises(Conflict):
            await older
        await server.until(lambda: server.fetching)
        server.chats.say(server.chats.open("Ana"), "118")
        assert len(await newer) == 1


async def test_sent_text_buttons_and_quote_stand_in_the_ledger(server: StandIn, bot: Bot) -> None:
    ana = server.chats.open("Ana")
    asked = server.chats.say(ana, "118")
    keyboard = InlineKeyboardMarkup([[InlineKeyboardButton("yes", callback_data="yes")]])
    sent = await bot.send_message(
        ana, "Eaten?", reply_markup=keyboard, reply_parameters=ReplyParameters(asked)
    )
    [line] = server.sent_to(ana)
    assert (line.text, line.buttons, line.quotes) == ("Eaten?", ("yes",), asked)
    assert sent.message_id == line.message == asked + 1


async def test_pressed_button_types_its_data(server: StandIn, bot: Bot) -> None:
    ana = server.chats.open("Ana")
    keyboard = InlineKeyboardMarkup([[InlineKeyboardButton("Yes, go on", callback_data="yes")]])
    sent = await bot.send_message(ana, "Go on?", reply_markup=keyboard)
    server.chats.press(ana, sent.message_id, "Yes, go on")
    [update] = await bot.get_updates(timeout=0)
    assert update.callback_query is not None
    assert update.callback_query.data == "yes"
    assert await update.callback_query.answer() is True
    with pytest.raises(BadRequest):
        await update.callback_query.answer()
    with pytest.raises(KeyError):
        server.chats.press(ana, sent.message_id, "No")


async def test_picture_and_file_arrive_whole(server: StandIn, bot: Bot) -> None:
    ana = server.chats.open("Ana")
    await bot.send_photo(ana, b"\x89PNG picture", caption="your week")
    await bot.send_document(ana, b"a,b\n", filename="record.csv")
    picture, document = server.sent_to(ana)
    assert (picture.picture, picture.text) == (b"\x89PNG picture", "your week")
    assert document.file is not None
    assert (document.file.name, document.file.body) == ("record.csv", b"a,b\n")


async def test_everything_that_people_send_is_read_by_the_client(server: StandIn, bot: Bot) -> None:
    ana = server.chats.open("Ana")
    first = server.chats.say(ana, "/start ABC")
    server.chats.say(ana, "119", quotes=first)
    server.chats.edit(ana, first, "/start ABD")
    server.chats.photo(ana, "rice")
    for kind in ("voice", "sticker", "contact", "place", "file", "video"):
        server.chats.send(ana, kind)
    group = server.chats.open("Family", group=True)
    server.chats.say(group, "hello")
    server.chats.block(ana)
    updates = await bot.get_updates(timeout=0)
    messages = [u.message for u in updates if u.message]
    assert messages[1].reply_to_message is not None
    assert messages[1].reply_to_message.message_id == first
    assert messages[2].photo
    assert messages[2].caption == "rice"
    assert messages[3].voice
    assert messages[4].sticker
    assert messages[5].contact
    assert messages[6].location
    assert messages[7].document
    assert messages[8].video
    assert messages[9].chat.type == "group"
    [edited] = [u.edited_message for u in updates if u.edited_message]
    assert edited.text == "/start ABD"
    [blocking] = [u.my_chat_member for u in updates if u.my_chat_member]
    assert blocking.new_chat_member.status == "kicked"
    with pytest.raises(Forbidden):
        await bot.send_message(ana, "hello")


@pytest.mark.parametrize(
    ("text", "words"), [("", "empty"), ("x" * 4097, "too long")], ids=["empty", "too long"]
)
async def test_text_beyond_the_limits_is_refused(
    server: StandIn, bot: Bot, text: str, words: str
) -> None:
    ana = server.chats.open("Ana")
    with pytest.raises(BadRequest, match=words):
        await bot.send_message(ana, text)
    await bot.send_message(ana, "x" * 4096)


async def test_unknown_chat_is_refused(bot: Bot) -> None:
    with pytest.raises(BadRequest, match="Chat not found"):
        await bot.send_message(99, "hello")


async def test_too_many_tells_how_long_to_wait(server: StandIn, bot: Bot) -> None:
    ana, ben = server.chats.open("Ana"), server.chats.open("Ben")
    server.faults.order(Fault.TOO_MANY, chat=ana, seconds=3)
    with pytest.raises(RetryAfter) as refused:
        await bot.send_message(ana, "hello")
    waits = refused.value.retry_after
    assert (waits if isinstance(waits, int) else waits.total_seconds()) == 3
    await bot.send_message(ben, "hello")
    await bot.send_message(ana, "hello")
    assert [line.chat for line in server.ledger] == [ben, ana]


async def test_lost_reply_was_sent_all_the_same(server: StandIn, bot: Bot) -> None:
    ana = server.chats.open("Ana")
    server.faults.order(Fault.LOST_REPLY, method="sendMessage")
    with pytest.raises(NetworkError) as lost:
        await bot.send_message(ana, "hello")
    assert isinstance(lost.value.__cause__, httpx.RemoteProtocolError)
    assert len(server.sent_to(ana)) == 1


async def test_hanging_reply_was_sent_all_the_same(server: StandIn, bot: Bot) -> None:
    ana = server.chats.open("Ana")
    server.faults.order(Fault.HANGS, method="sendMessage")
    with pytest.raises(TimedOut) as late:
        await bot.send_message(ana, "hello")
    assert isinstance(late.value.__cause__, httpx.ReadTimeout)
    assert len(server.sent_to(ana)) == 1


async def test_broken_server_sends_nothing(server: StandIn, bot: Bot) -> None:
    ana = server.chats.open("Ana")
    server.faults.order(Fault.BREAKS, times=2)
    for _ in range(2):
        with pytest.raises(NetworkError):
            await bot.send_message(ana, "hello")
    await bot.send_message(ana, "hello")
    assert len(server.sent_to(ana)) == 1


async def test_stopped_server_refuses_the_connection_and_comes_back(
    server: StandIn, bot: Bot
) -> None:
    ana = server.chats.open("Ana")
    await server.stop()
    with pytest.raises(NetworkError) as refused:
        await bot.send_message(ana, "hello")
    assert isinstance(refused.value.__cause__, httpx.ConnectError)
    await server.start()
    await bot.send_message(ana, "hello")
    assert len(server.sent_to(ana)) == 1


async def test_journal_is_written_before_the_answer(tmp_path: Path) -> None:
    journal = tmp_path / "sent.jsonl"
    async with StandIn(lambda: NOON, journal=journal) as server, client(server.url) as bot:
        ana = server.chats.open("Ana")
        server.faults.order(Fault.LOST_REPLY, method="sendMessage")
        with pytest.raises(NetworkError):
            await bot.send_message(ana, "hello")
    assert '"text": "hello"' in journal.read_text(encoding="utf-8")


async def test_webhook_is_posted_in_order_with_its_secret_until_taken(
    server: StandIn, bot: Bot
) -> None:
    posted: list[tuple[str, int]] = []
    secret = "s3"  # noqa: S105 (opens nothing)

    class Hook(RequestHandler):
        def post(self) -> None:
            update = json.loads(self.request.body)
            posted.append((self.request.headers[SECRET_HEADER], update["update_id"]))
            self.set_status(500 if len(posted) == 1 else 200)

    hook = HTTPServer(Application([("/hook", Hook)], log_function=lambda _: None))
    [socket] = bind_sockets(0, "127.0.0.1")
    hook.add_sockets([socket])
    await bot.set_webhook(f"http://127.0.0.1:{socket.getsockname()[1]}/hook", secret_token=secret)
    with pytest.raises(Conflict):
        await bot.get_updates(timeout=0)
    ana = server.chats.open("Ana")
    server.chats.say(ana, "118")
    server.chats.say(ana, "rice")
    await server.taken()
    first = posted[0][1]
    assert posted == [(secret, first), (secret, first), (secret, first + 1)]
    info = await bot.get_webhook_info()
    assert info.pending_update_count == 0
    assert info.last_error_message is not None
    await bot.delete_webhook()
    assert await bot.get_updates(timeout=0) == ()
    hook.stop()
    await hook.close_all_connections()
