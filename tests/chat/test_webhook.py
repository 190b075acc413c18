"""Posted updates: 200 only behind the commit, the secret checked, the size limited."""

import asyncio
import json
from collections.abc import Mapping
from typing import Any

import httpx
import pytest
from tornado.testing import bind_unused_port

from bot.chat.webhook import LARGEST_BODY, SECRET_HEADER, listening, place_to_listen, secret_from
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
