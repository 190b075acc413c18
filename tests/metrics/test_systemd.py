"""What systemd hears of the service. The protocol: sd_notify(3)."""

import asyncio
import os
import signal
import socket
import sys
from pathlib import Path

import pytest

from bot.metrics.systemd import Notify
from bot.trial.stand_in import TOKEN, StandIn
from scheduler.clock import real_now


class Manager:
    """Listens where systemd would."""

    def __init__(self, address: str) -> None:
        self.address = address
        self._way = socket.socket(socket.AF_UNIX, socket.SOCK_DGRAM)
        self._way.bind(address.replace("@", "\0", 1))
        self._way.settimeout(20)

    def next(self) -> str:
        return self._way.recv(4096).decode()

    def close(self) -> None:
        self._way.close()


@pytest.mark.parametrize("abstract", [False, True])
async def test_a_watchdog_hears_of_life_and_not_of_a_stuck_bot(
    tmp_path: Path, abstract: bool
) -> None:
    name = f"@afterplate-test-{os.getpid()}" if abstract else str(tmp_path / "notify")
    manager = Manager(name)
    notify = Notify({"NOTIFY_SOCKET": name, "WATCHDOG_USEC": "60000"})
    answers = iter([False, True, True, True])
    watching = asyncio.create_task(notify.watch(lambda: next(answers, False)))
    began = asyncio.get_running_loop().time()
    assert [await asyncio.to_thread(manager.next) for _ in range(2)] == ["WATCHDOG=1"] * 2
    # Three silent rounds of 20 ms lie between: longer than the 60 ms that systemd would wait.
    assert asyncio.get_running_loop().time() - began > 0.06
    watching.cancel()
    manager.close()
    notify.tell("READY=1")  # nobody listens any more: no matter


async def test_without_systemd_nothing_is_told() -> None:
    notify = Notify({})
    notify.tell("READY=1")
    await asyncio.wait_for(notify.watch(lambda: False), 1)  # ends at once


@pytest.mark.live
async def test_a_service_says_when_it_serves_moves_and_ends(tmp_path: Path) -> None:
    manager = Manager(str(tmp_path / "notify"))
    async with StandIn(real_now) as server:
        process = await asyncio.create_subprocess_exec(
            *(sys.executable, "-m", "bot", "serve"),
            env={
                **os.environ,
                "AFTERPLATE_TELEGRAM_TOKEN": TOKEN,
                "AFTERPLATE_TELEGRAM_API": server.url,
                "AFTERPLATE_DATABASE": f"sqlite:///{tmp_path / 'bot.db'}",
                "NOTIFY_SOCKET": manager.address,
                "WATCHDOG_USEC": "3000000",
            },
        )
        heard = [await asyncio.to_thread(manager.next) for _ in range(3)]
        process.send_signal(signal.SIGTERM)
        assert await asyncio.wait_for(process.wait(), 10) == 0
        while (last := await asyncio.to_thread(manager.next)) == "WATCHDOG=1":
            pass
    assert heard == ["READY=1", "WATCHDOG=1", "WATCHDOG=1"]
    assert last == "STOPPING=1"
    manager.close()
