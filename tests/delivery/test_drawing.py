"""The drawing process: real processes that crash, hang and end."""

import asyncio
import importlib
import os
import sys
from collections.abc import Callable, Mapping
from concurrent.futures.process import BrokenProcessPool
from pathlib import Path
from typing import Any

import pytest

from bot.drawing import Drawing

pytestmark = pytest.mark.live


Draw = Callable[[Mapping[str, Any]], bytes]

#: A module of its own: the other process must be able to import what it runs.
DRAWN_HERE = """
import os, time

def draw_as_told(picture):
    if picture.get("crash"):
        os._exit(1)
    time.sleep(picture.get("seconds", 0))
    return str(os.getpid()).encode()
"""


@pytest.fixture
def draw_as_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Draw:
    """Run in the drawing process: crash, hang or draw as the picture says."""
    (tmp_path / "drawn_here.py").write_text(DRAWN_HERE)
    monkeypatch.syspath_prepend(str(tmp_path))
    sys.modules.pop("drawn_here", None)
    draw: Draw = importlib.import_module("drawn_here").draw_as_told
    return draw


async def test_draws_in_one_other_process(draw_as_told: Draw) -> None:
    drawing = Drawing(draw_as_told)
    first, second = await asyncio.gather(drawing({}), drawing({}))
    drawing.close()
    assert first == second != str(os.getpid()).encode()


async def test_a_hung_process_is_killed_at_the_deadline_and_the_next_picture_is_drawn(
    draw_as_told: Draw,
) -> None:
    drawing = Drawing(draw_as_told, deadline=3)
    hung = int(await drawing({}))
    with pytest.raises(TimeoutError):
        await drawing({"seconds": 60})
    assert int(await drawing({})) != hung
    drawing.close()
    await asyncio.sleep(0.2)
    with pytest.raises(ProcessLookupError):
        os.kill(hung, 0)


async def test_a_crashed_process_fails_its_picture_and_the_next_one_is_drawn(
    draw_as_told: Draw,
) -> None:
    drawing = Drawing(draw_as_told)
    with pytest.raises(BrokenProcessPool):
        await drawing({"crash": True})
    assert await drawing({})
    drawing.close()


async def test_the_drawing_process_ends_soon_after_a_bot_that_was_killed(
    tmp_path: Path, checkout: Path
) -> None:
    (tmp_path / "drawn_here.py").write_text(DRAWN_HERE)
    draws_and_waits = (
        "import asyncio, drawn_here; from bot.drawing import Drawing\n"
        "async def main():\n"
        "    print((await Drawing(drawn_here.draw_as_told)({})).decode(), flush=True)\n"
        "    await asyncio.sleep(60)\n"
        "if __name__ == '__main__': asyncio.run(main())\n"
    )
    (tmp_path / "bot_like.py").write_text(draws_and_waits)
    bot = await asyncio.create_subprocess_exec(
        sys.executable,
        str(tmp_path / "bot_like.py"),
        env={**os.environ, "PYTHONPATH": str(checkout)},
        stdout=asyncio.subprocess.PIPE,
    )
    assert bot.stdout is not None
    drawing = int(await asyncio.wait_for(bot.stdout.readline(), 30))
    bot.kill()
    await bot.wait()
    async with asyncio.timeout(20):
        while Path(f"/proc/{drawing}").exists():  # noqa: ASYNC110, ASYNC240 - it tells of nothing
            await asyncio.sleep(0.1)
