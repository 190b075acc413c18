"""Posted updates: 200 only behind the commit, the secret checked, the size limited."""

import asyncio
import json
from collections.abc import Mapping
from typing import Any

import httpx
import pytest
from tornado.testing import bind_unused_port

from bot.chat.webhook import (
    LARGEST_BODY,
    SECRET_HEADER,
    InOrder,
    chat_of,
    listening,
    place_to_listen,
    secret_from,
)
from bot.mendable import Mendable

SECRET = "s3cret-header"  # noqa: S105


async def post(
    body: bytes, secret: str | None, take: Any = None, path: str = "/hook"
) -> httpx.Response:
    socket, port = bind_unused_port()
    socket.close()
    url = f"http://127.0.0.1:{port}/hook"
    headers = {} if secret is None else {SECRET_HEADER: secret}
    async with (
        listening(url, None, SECRET, take or taken_gladly),
        httpx.AsyncClient(trust_env=False) as client,
    ):
        return await client.post(f"http://127.0.0.1:{port}{path}", content=body, headers=headers)


async def taken_gladly(_update: Mapping[str, Any]) -> None:
    return


UPDATE = json.dumps({"update_id": 7, "message": {}}).encode()


async def test_two_hundred_is_answered_only_once_the_update_is_taken() -> None:
    order = []

    async def take(update: Mapping[str, Any]) -> None:
        await asyncio.sleep(0.05)
        order.append(update["update_id"])

    answer = await post(UPDATE, SECRET, take)
    assert (answer.status_code, order) == (200, [7])


async def test_an_update_that_could_not_be_taken_is_asked_for_again() -> None:
    async def take(_update: Mapping[str, Any]) -> None:
        raise OSError("the disk is full")

    assert (await post(UPDATE, SECRET, take)).status_code == 503


@pytest.mark.parametrize("secret", [None, "", "wrong", SECRET + "x", SECRET[:-1]])
async def test_without_the_secret_nothing_is_taken(secret: str | None) -> None:
    async def take(_update: Mapping[str, Any]) -> None:
        raise AssertionError("taken all the same")

    assert (await post(UPDATE, secret, take)).status_code == 403


@pytest.mark.parametrize("body", [b"", b"no json", b"[]", b"{}", b'{"update_id": "x"}', b"null"])
async def test_what_is_no_update_is_refused(body: bytes) -> None:
    assert (await post(body, SECRET)).status_code == 400


async def test_a_body_too_large_is_refused() -> None:
    async def take(_update: Mapping[str, Any]) -> None:
        raise AssertionError("taken all the same")

    large = json.dumps({"update_id": 7, "message": "x" * LARGEST_BODY}).encode()
    try:
        answer = await post(large, SECRET, take)
    except httpx.TransportError:
        return  # the connection was closed before all of it was read
    assert answer.status_code in (400, 413)


async def test_another_path_answers_nothing_of_ours() -> None:
    answer = await post(UPDATE, SECRET, path="/other")
    assert answer.status_code == 404
    assert b"Traceback" not in answer.content


def test_the_derived_secret_fits_the_header_and_does_not_show_the_token() -> None:
    secret = secret_from("4200:abc")
    assert "4200" not in secret
    assert secret.isalnum()
    assert secret != secret_from("4200:abd")


def test_listens_at_the_urls_own_place_unless_told_otherwise() -> None:
    assert place_to_listen("https://bot.example.org/hook", None) == ("bot.example.org", 443)
    assert place_to_listen("https://bot.example.org/hook", "127.0.0.1:8080") == ("127.0.0.1", 8080)
    with pytest.raises(Mendable):
        place_to_listen("bot.example.org", None)
    with pytest.raises(Mendable):
        place_to_listen("https://bot.example.org", "8080")


async def test_a_chats_updates_are_taken_in_the_order_of_their_coming_and_no_other_chat_waits() -> (
    None
):
    in_order, done = InOrder(), []
    ann_may_go_on = asyncio.Event()

    async def take(chat: str, number: int) -> None:
        async with in_order.turn(chat):
            if chat == "ann":
                await ann_may_go_on.wait()
            done.append((chat, number))

    ann = [asyncio.create_task(take("ann", number)) for number in range(5)]
    await asyncio.create_task(take("ben", 0))
    assert done == [("ben", 0)]
    ann_may_go_on.set()
    await asyncio.gather(*ann)
    assert done == [("ben", 0), *(("ann", number) for number in range(5))]
    assert len(in_order) == 0  # nothing is kept of a chat that is handled


async def test_an_update_that_fails_or_is_given_up_lets_the_next_one_of_its_chat_in() -> None:
    in_order, done = InOrder(), []

    async def take(number: int) -> None:
        async with in_order.turn("ann"):
            if number == 0:
                raise OSError("the database is away")
            await asyncio.sleep(0.01)
            done.append(number)

    tasks = [asyncio.create_task(take(number)) for number in range(4)]
    await asyncio.sleep(0)
    tasks[1].cancel()
    await asyncio.gather(*tasks, return_exceptions=True)
    assert done == [2, 3]
    assert len(in_order) == 0


@pytest.mark.parametrize(
    ("update", "chat"),
    [
        ({"message": {"chat": {"id": 7}}}, "7"),
        ({"edited_message": {"chat": {"id": -7}}}, "-7"),
        ({"callback_query": {"from": {"id": 8}, "message": {"chat": {"id": 7}}}}, "7"),
        ({"callback_query": {"from": {"id": 8}}}, "8"),
        ({"poll": {}}, ""),
        ({"message": 7}, ""),
        ({"message": {"chat": 7}}, ""),
        ({"callback_query": 7}, ""),
        ({"callback_query": {"message": 7}}, ""),
        ({}, ""),
    ],
)
def test_the_chat_of_an_update_is_told_from_any_shape(update: Mapping[str, Any], chat: str) -> None:
    assert chat_of(update) == chat


async def test_updates_of_one_chat_that_are_posted_at_once_are_taken_one_by_one() -> None:
    inside = [0]
    most = [0]

    async def take(_update: Mapping[str, Any]) -> None:
        inside[0] += 1
        most[0] = max(most[0], inside[0])
        await asyncio.sleep(0.01)
        inside[0] -= 1

    socket, port = bind_unused_port()
    socket.close()
    url = f"http://127.0.0.1:{port}/hook"

    async with listening(url, None, SECRET, take), httpx.AsyncClient(trust_env=False) as client:

        def post_one(number: int, chat: int) -> Any:
            update = {"update_id": number, "message": {"chat": {"id": chat}}}
            return client.post(url, json=update, headers={SECRET_HEADER: SECRET})

        same = await asyncio.gather(*(post_one(number, 1) for number in range(5)))
        assert most == [1]
        others = await asyncio.gather(*(post_one(number, number) for number in range(5)))
        assert most[0] > 1
    assert {answer.status_code for answer in (*same, *others)} == {200}
