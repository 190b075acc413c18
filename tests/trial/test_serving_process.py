"""The program itself as an operator runs it, in a process of its own."""

import asyncio
import os
import signal
import sys
from asyncio.subprocess import Process
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from datetime import time
from pathlib import Path

import pytest

from bot.participants import Invitation
from bot.settings import Settings
from bot.trial.stand_in import TOKEN, StandIn
from bot.trial.trial import Trial
from bot.units import Unit
from scheduler.clock import real_now

pytestmark = pytest.mark.live
STARTS_WITHIN = 30.0
ENDS_WITHIN = 10.0


def environment(server: StandIn, folder: Path, **more: str) -> dict[str, str]:
    kept = {name: value for name, value in os.environ.items() if not name.startswith("AFTERPLATE")}
    return kept | {
        "AFTERPLATE_TELEGRAM_TOKEN": TOKEN,
        "AFTERPLATE_TELEGRAM_API": server.url,
        "AFTERPLATE_DATABASE": f"sqlite:///{folder / 'bot.db'}",
        **more,
    }


async def program(
    checkout: Path, env: dict[str, str], *arguments: str
) -> asyncio.subprocess.Process:
    return await asyncio.create_subprocess_exec(
        sys.executable,
        "-m",
        "bot",
        *arguments,
        cwd=checkout,
        env=env,
        stdout=asyncio.subprocess.PIPE,
        stderr=asyncio.subprocess.PIPE,
    )


@asynccontextmanager
async def serving(checkout: Path, env: dict[str, str]) -> AsyncIterator[Process]:
    process = await program(checkout, env, "serve")
    try:
        yield process
    finally:
        if process.returncode is None:
            process.kill()
        await process.communicate()


async def ended(process: Process, within: float = ENDS_WITHIN) -> tuple[int, str, str]:
    async with asyncio.timeout(within):
        out, err = await process.communicate()
    assert process.returncode is not None
    return process.returncode, out.decode(), err.decode()


async def test_invited_person_joins_and_the_bot_ends_cleanly(
    checkout: Path, tmp_path: Path
) -> None:
    async with StandIn(real_now) as server:
        env = environment(server, tmp_path)
        async with serving(checkout, env) as bot:
            await server.until(lambda: server.fetching, STARTS_WITHIN)
            inviting = await program(
                checkout, env, "invite", "--zone", "Africa/Accra", "--unit", "mmol/L"
            )
            status, out, err = await ended(inviting)
            assert status == 0, err
            code, link = out.split()
            assert link.endswith(f"?start={code}")

            efua = server.chats.open("Efua")
            server.chats.say(efua, f"/start {code}")
            await server.sent(efua, 1)
            server.chats.say(efua, "yes")
            assert len(await server.sent(efua, 2)) == 2

            bot.send_signal(signal.SIGTERM)
            status, _, lines = await ended(bot)
            assert status == 0
            assert TOKEN.split(":")[1] not in lines
            assert "Efua" not in lines


@pytest.mark.parametrize(
    ("more", "words"),
    [
        ({"AFTERPLATE_TELEGRAM_TOKEN": ""}, "AFTERPLATE_TELEGRAM_TOKEN"),
        ({"AFTERPLATE_TELEGRAM_TOKEN": "1:unknown"}, "AFTERPLATE_TELEGRAM_TOKEN"),
        ({"AFTERPLATE_CLOCK_SPEED": "fast"}, "AFTERPLATE_CLOCK_SPEED"),
        ({"AFTERPLATE_DATABASE": "oracle://x"}, "AFTERPLATE_DATABASE"),
        ({"AFTERPLATE_TELEGRAM_API": "http://127.0.0.1:9"}, "cannot be reached"),
    ],
    ids=["no token", "wrong token", "speed", "database", "unreachable"],
)
async def test_what_a_person_can_mend_is_one_clear_line(
    checkout: Path, tmp_path: Path, more: dict[str, str], words: str
) -> None:
    async with StandIn(real_now) as server:
        process = await program(checkout, environment(server, tmp_path, **more), "serve")
        status, out, err = await ended(process, STARTS_WITHIN)  # it has to start first
    assert status == 1
    assert words in err
    assert "Traceback" not in err
    assert out == ""


@pytest.mark.slow
async def test_two_hours_pass_in_twenty_seconds_on_a_fast_clock() -> None:
    invitation = Invitation(
        zone="Europe/Lisbon",
        unit=Unit.MG_DL,
        main_meal=time(13),
        may_go_low=False,
        ketone_risk=False,
        quiet_from=time(3),
        quiet_to=time(3, 1),
    )
    async with Trial(Settings(_env_file=None, clock_speed=360)) as trial:
        code = trial.invite(invitation)
        chat = trial.server.chats.open("Ana")
        trial.server.chats.say(chat, f"/start {code}")
        [welcome] = await trial.server.sent(chat, 1)
        assert "360" in welcome.text
        for count, answer in ((2, "yes"), (3, "no")):
            trial.server.chats.say(chat, answer)
            await trial.server.sent(chat, count)
        trial.server.chats.say(chat, "118, rice and beans")
        await trial.server.until(
            lambda: any("two hours since rice" in s.text for s in trial.server.sent_to(chat)),
            seconds=30,
        )
