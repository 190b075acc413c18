"""Pictures drawn in a process of their own, so that neither the event loop nor the idle bot
carries the drawing library.

The process is begun when the first picture is asked for, renewed after a number of pictures,
and ended when nothing was drawn for a while. One that crashes or hangs is killed; the words
go out without their picture then.
"""

import asyncio
import logging
import os
import threading
import time
from collections.abc import Callable, Mapping
from concurrent.futures import ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from multiprocessing import get_context
from typing import Any

from bot.logs import say

_LOG = logging.getLogger(__name__)

#: A process that has drawn this many is replaced: memory that drawing leaks goes with it.
PICTURES_EACH = 500
#: Seconds without a picture after which the process ends.
IDLE_SECONDS = 120.0
#: Seconds after which a drawing counts as hung.
DEADLINE = 15.0


#: Seconds between two looks whether the bot is still there.
LOOK_EVERY = 2.0


def end_with(parent: int) -> None:
    """End this process soon after the one that began it: killed, that one cannot say so."""

    def watch() -> None:
        while os.getppid() == parent:
            time.sleep(LOOK_EVERY)
        os._exit(1)

    threading.Thread(target=watch, daemon=True).start()


class Drawing:
    """Draws in at most `processes` processes. `draw` must be a module's own function."""

    def __init__(
        self,
        draw: Callable[[Mapping[str, Any]], bytes],
        *,
        processes: int = 1,
        deadline: float = DEADLINE,
    ) -> None:
        self._draw = draw
        self._processes = processes
        self._deadline = deadline
        self._pool: ProcessPoolExecutor | None = None
        self._under_way = 0
        self._idle: asyncio.TimerHandle | None = None

    async def __call__(self, picture: Mapping[str, Any]) -> bytes:
        """Draw one; raises TimeoutError or BrokenProcessPool where that fails."""
        if self._idle is not None:
            self._idle.cancel()
        self._under_way += 1
        try:
            async with asyncio.timeout(self._deadline):
                loop = asyncio.get_running_loop()
                return await loop.run_in_executor(self._begun(), self._draw, picture)
        except (TimeoutError, BrokenProcessPool):
            say(_LOG, logging.ERROR, "drawing process killed")
            self.close()
            raise
        finally:
            self._under_way -= 1
            self._end_when_idle()

    def close(self) -> None:
        """End the process, hung or not."""
        if self._idle is not None:
            self._idle.cancel()
        pool, self._pool = self._pool, None
        if pool is None:
            return
        # The pool's own shutdown waits for a hung process for ever.
        for process in list(pool._processes.values()):
            process.kill()
        pool.shutdown(wait=False, cancel_futures=True)

    def _begun(self) -> ProcessPoolExecutor:
        if self._pool is None:
            self._pool = ProcessPoolExecutor(
                max_workers=self._processes,
                # A forked copy of a process with threads may stand still for ever.
                mp_context=get_context("spawn"),
                max_tasks_per_child=PICTURES_EACH,
                initializer=end_with,
                initargs=(os.getpid(),),
            )
        return self._pool

    def _end_when_idle(self) -> None:
        if self._under_way == 0:
            self._idle = asyncio.get_running_loop().call_later(IDLE_SECONDS, self.close)
