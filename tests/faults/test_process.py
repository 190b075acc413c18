"""The real process: how it ends, and what it never writes into its log."""

import asyncio
import os
import signal
import socket
import sys
from datetime import timedelta
from pathlib import Path

import pytest

from bot.participants import Invitation
from bot.storage.store import Store
from bot.trial.faults import Fault
from bot.trial.stand_in import TOKEN, StandIn
from bot.units import Unit
from scheduler.clock import real_now
from tests.conversation.echo import until

pytestmark = pytest.mark.live


async def serve(
    server: StandIn, folder: Path, *, more: tuple[str, ...] = (), **settings: str
) -> asyncio.subprocess.Process:
    return await asyncio.create_subprocess_exec(
        sys.executable,
        "-m",
        "bot",
        "serve",
        *more,
        env={
            **os.environ,
            "AFTERPLATE_TELEGRAM_TOKEN": TOKEN,
            "AFTERPLATE_TELEGRAM_API": server.url,
            "AFTERPLATE_DATABASE": f"sqlite:///{folder / 'bot.db'}",
            **settings,
        },
        stderr=asyncio.subprocess.PIPE,
    )


def invite(folder: Path) -> str:
    store = Store.open(f"sqlite:///{folder / 'bot.db'}")
    known = Invitation(
        zone="UTC", unit=Unit.MG_DL, may_go_low=True, ketone_risk=False, main_meal=None
    )
    with store.turn() as work:
        work.invite("ABCD-EFGH-JKMN", known, real_now() + timedelta(days=1))
    store.close()
    return "/start ABCD-EFGH-JKMN"


async def test_sigterm_ends_it_within_ten_seconds_and_what_was_under_way_is_settled(
    tmp_path: Path,
) -> None:
    async with StandIn(real_now) as server:
        process = await serve(server, tmp_path)
        chats = [server.chats.open(f"S{number}") for number in range(20)]
        for chat in chats:
            server.chats.say(chat, "hello")
        await server.until(lambda: server.ledger != [], 30)
        server.faults.order(Fault.SLOW, method="sendMessage", times=3, seconds=1)
        began = asyncio.get_running_loop().time()
        process.send_signal(signal.SIGTERM)
        _, log = await asyncio.wait_for(process.communicate(), 10)
        assert asyncio.get_running_loop().time() - began < 10
        assert process.returncode == 0, log
        store = Store.open(f"sqlite:///{tmp_path / 'bot.db'}")
        with store.turn() as work:
            assert set(work.outbox.counts()) <= {"pending"}  # none left claimed or being sent
        store.close()


async def test_a_slow_send_under_way_at_sigterm_is_finished_and_settled(tmp_path: Path) -> None:
    async with StandIn(real_now) as server:
        process = await serve(server, tmp_path)
        server.faults.order(Fault.SLOW, method="sendMessage", seconds=3)
        chat = server.chats.open("Ann")
        server.chats.say(chat, invite(tmp_path))
        await until(lambda: server.calls["sendMessage"] == 1, 30)
        assert server.sent_to(chat) == []  # it is under way
        began = asyncio.get_running_loop().time()
        process.send_signal(signal.SIGTERM)
        _, log = await asyncio.wait_for(process.communicate(), 10)
        assert process.returncode == 0, log
        assert asyncio.get_running_loop().time() - began > 1  # its answer was waited for
        assert len(server.sent_to(chat)) == 1
    assert outbox(tmp_path) == {}  # of a chat that is nobody's, nothing settled is kept


def outbox(folder: Path) -> dict[str, int]:
    store = Store.open(f"sqlite:///{folder / 'bot.db'}")
    with store.turn() as work:
        counts = work.outbox.counts()
    store.close()
    return counts


async def test_served_by_webhook_messages_are_posted_answered_and_handled_once(
    tmp_path: Path,
) -> None:
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    async with StandIn(real_now) as server:
        process = await serve(server, tmp_path, more=("--webhook", f"http://127.0.0.1:{port}/hook"))
        chat = server.chats.open("Ann")
        for count, text in enumerate((invite(tmp_path), "yes"), start=1):
            server.chats.say(chat, text)
            await server.sent(chat, count, seconds=30)
        assert server.calls["getUpdates"] == 0
        process.send_signal(signal.SIGTERM)
        _, log = await asyncio.wait_for(process.communicate(), 10)
    assert process.returncode == 0, log


async def test_the_log_holds_no_text_value_name_or_token(tmp_path: Path) -> None:
    async with StandIn(real_now) as server:
        process = await serve(server, tmp_path, AFTERPLATE_LOG="debug")
        ann = server.chats.open("Persephone")
        story = [
            invite(tmp_path),
            "yes",
            "yes",
            "19:45",
            "137 before, quinoa chowder",
            "43 feeling shaky",
        ]
        server.faults.order(Fault.BREAKS, method="sendMessage")
        server.faults.order(Fault.LOST_REPLY, method="sendMessage")
        server.faults.order(Fault.BREAKS, method="getUpdates")
        for text in story:
            server.chats.say(ann, text)
            await server.taken(60)
        server.chats._add({"message": {"text": "quinoa", "date": "odd", "chat": "Persephone"}})
        await server.until(lambda: any("43" in sent.text for sent in server.ledger), 60)
        process.send_signal(signal.SIGTERM)
        _, log = await asyncio.wait_for(process.communicate(), 10)
    written = log.decode()
    assert "update parked" in written
    for secret in ("quinoa", "chowder", "137", "Persephone", TOKEN, TOKEN.split(":")[1], "ABCD"):
        assert secret not in written, secret
