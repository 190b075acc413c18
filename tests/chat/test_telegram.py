"""What each fault of the Bot API tells of the message, by the real client over loopback."""

import asyncio
from collections.abc import AsyncIterator

import pytest
from telegram import InlineKeyboardMarkup, ReplyKeyboardMarkup

from bot.chat.port import ChatError, Gone, NotSent, Part, Refused, Throttled, Unsure
from bot.chat.telegram import TelegramChat, keyboard
from bot.mendable import Mendable
from bot.trial.faults import Fault
from bot.trial.stand_in import TOKEN, StandIn
from scheduler.clock import real_now

pytestmark = pytest.mark.live


@pytest.fixture
async def server() -> AsyncIterator[StandIn]:
    async with StandIn(real_now) as running:
        yield running


@pytest.mark.parametrize(
    ("fault", "told", "arrived"),
    [
        (Fault.TOO_MANY, Throttled, 0),
        (Fault.REFUSES, Refused, 0),
        (Fault.BLOCKED, Gone, 0),
        (Fault.LOST_REPLY, Unsure, 1),
        (Fault.BREAKS, Unsure, 0),
    ],
)
async def test_a_fault_tells_what_is_known_of_the_message(
    server: StandIn, fault: Fault, told: type[ChatError], arrived: int
) -> None:
    ann = server.chats.open("Ann")
    async with TelegramChat(TOKEN, server.url) as chat:
        server.faults.order(fault, method="sendMessage", seconds=7)
        with pytest.raises(told) as caught:
            await chat.send(str(ann), Part(text="118 rice"))
    assert len(server.sent_to(ann)) == arrived
    assert TOKEN not in str(caught.value)
    assert "118" not in str(caught.value)
    if isinstance(caught.value, Throttled):
        assert caught.value.retry_after == 7


async def test_a_refused_connection_is_certainly_not_sent(server: StandIn) -> None:
    ann = server.chats.open("Ann")
    async with TelegramChat(TOKEN, server.url) as chat:
        await server.stop()
        with pytest.raises(NotSent) as caught:
            await chat.send(str(ann), Part(text="hi"))
    assert not isinstance(caught.value, Throttled)


async def test_a_chat_that_does_not_exist_is_gone(server: StandIn) -> None:
    async with TelegramChat(TOKEN, server.url) as chat:
        with pytest.raises(Gone):
            await chat.send("999999", Part(text="hi"))


async def test_nothing_in_a_text_is_taken_for_formatting(server: StandIn) -> None:
    ann = server.chats.open("Ann")
    odd = "*bold* _x_ <b>y</b> [z](http://example.org) `w`"
    async with TelegramChat(TOKEN, server.url) as chat:
        await chat.send(str(ann), Part(text=odd))
    assert server.sent_to(ann)[0].text == odd


async def test_a_token_that_the_api_does_not_know_is_one_clear_line(server: StandIn) -> None:
    with pytest.raises(Mendable, match="AFTERPLATE_TELEGRAM_TOKEN"):
        async with TelegramChat("1:wrong", server.url):
            pass


async def test_an_api_out_of_reach_at_the_start_is_one_clear_line(server: StandIn) -> None:
    await server.stop()
    with pytest.raises(Mendable, match="cannot be reached"):
        async with TelegramChat(TOKEN, server.url):
            pass


async def test_fetching_confirms_only_what_lies_before_its_offset(server: StandIn) -> None:
    ann = server.chats.open("Ann")
    for text in ("one", "two"):
        server.chats.say(ann, text)
    async with TelegramChat(TOKEN, server.url) as chat:
        first = await chat.fetch(0)
        again = await chat.fetch(0)
        assert first == again
        rest = await chat.fetch(first[0]["update_id"] + 1)
    assert [update["message"]["text"] for update in rest] == ["two"]


async def test_a_fetch_that_is_given_up_ends_at_once(server: StandIn) -> None:
    async with TelegramChat(TOKEN, server.url) as chat:
        fetching = asyncio.create_task(chat.fetch(0))
        await server.until(lambda: server.fetching)
        fetching.cancel()
        with pytest.raises(asyncio.CancelledError):
            await fetching


def test_buttons_stand_under_the_message_unless_one_is_too_long_for_that() -> None:
    assert keyboard(()) is None
    assert isinstance(keyboard(("yes", "no")), InlineKeyboardMarkup)
    assert isinstance(keyboard(("ñ" * 33,)), ReplyKeyboardMarkup)  # 66 bytes
