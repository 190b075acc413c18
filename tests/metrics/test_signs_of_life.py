"""What the meter takes for life, and who notices when it is gone."""

import asyncio
import subprocess
import sys
import threading
import time
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.metrics.alive import Liveness
from bot.metrics.meter import Figures, Loop, Meter


class Hands:
    """A clock that the test moves."""

    def __init__(self) -> None:
        self.at = 0.0

    def __call__(self) -> float:
        return self.at


def test_a_loop_is_overdue_once_its_time_is_over() -> None:
    hands = Hands()
    meter = Meter(hands)
    assert meter.overdue() == dict.fromkeys(Loop)
    for loop in Loop:
        meter.beat(loop, 60)
    hands.at = 60
    assert meter.overdue() == {}
    meter.beat(Loop.DELIVERY, 60)
    meter.beat(Loop.INTAKE, float("inf"))
    hands.at = 90
    assert meter.overdue() == {Loop.ALARM: 30}


def beating(meter: Meter) -> Meter:
    for loop in Loop:
        meter.beat(loop, 60)
    return meter


async def figures() -> Figures:
    return Figures(at=datetime(2026, 3, 2, tzinfo=UTC))


async def never() -> Figures:
    await asyncio.sleep(60)
    return Figures(at=datetime(2026, 3, 2, tzinfo=UTC))


async def broken() -> Figures:
    raise OSError("the disk's own words")


@pytest.mark.parametrize(
    ("ask", "words"),
    [
        (figures, ()),
        (never, ("database: no answer within 0.1 s",)),
        (broken, ("database: OSError",)),
    ],
)
async def test_a_database_without_answer_is_no_life(ask: object, words: tuple[str, ...]) -> None:
    meter = beating(Meter(Hands()))
    liveness = Liveness(meter, asyncio.get_running_loop(), ask, patience=0.1)  # type: ignore[arg-type]
    assert await asyncio.to_thread(liveness.wrong) == words


async def test_an_event_loop_that_hangs_is_seen_from_outside() -> None:
    hands = Hands()
    meter = beating(Meter(hands))
    hands.at = 100
    meter.beat(Loop.INTAKE, 60)
    liveness = Liveness(meter, asyncio.get_running_loop(), figures, patience=0.05)
    found: list[tuple[str, ...]] = []
    asking = threading.Thread(target=lambda: found.append(liveness.wrong()))
    asking.start()
    time.sleep(0.3)  # noqa: ASYNC251 - the loop hangs: that is the test
    asking.join()
    assert found == [
        (
            "delivery: no sign of life, 40 s overdue",
            "alarm: no sign of life, 40 s overdue",
            "event loop: no answer within 0.05 s",
        )
    ]


def test_a_loop_that_has_ended_is_seen() -> None:
    loop = asyncio.new_event_loop()
    loop.close()
    assert "event loop" in Liveness(Meter(Hands()), loop, figures).wrong()[-1]


def test_a_bot_that_nobody_watches_loads_nothing_for_it(checkout: Path) -> None:
    code = "import sys, bot.wiring; print('prometheus_client' in sys.modules)"
    ran = subprocess.run(
        [sys.executable, "-c", code], cwd=checkout, capture_output=True, text=True, check=True
    )
    assert ran.stdout.strip() == "False"
