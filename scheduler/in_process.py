"""The engine for one machine: APScheduler 3 holding one timer, for the earliest wake.

A timer for each person would hold the event loop for seconds with many people, and a job
store beside our own table would be a second truth; so the database is asked again each time.
"""

import asyncio
import contextlib
from datetime import UTC, datetime, timedelta

from apscheduler.schedulers.asyncio import AsyncIOScheduler

from scheduler.clock import Clock
from scheduler.port import AskDue, OnWake

#: People woken together at first in a rush, so that the first of many need not wait for the
#: rest, and after that. Fewer, where `on_wake` finds that they take long.
FEW, MANY = 5, 100
#: However far away the next wake is, look again after this: the machine's clock may have been
#: set, or the machine may have slept, and another process may have written to the database.
LONGEST_WAIT = timedelta(seconds=30)
SECOND = timedelta(seconds=1)


class InProcessEngine:
    """Wakes people in this process, with one APScheduler timer."""

    def __init__(self, clock: Clock, *, longest_wait: timedelta = LONGEST_WAIT) -> None:
        self._clock = clock
        self._longest_wait = longest_wait
        self._ring = asyncio.Event()
        self._armed: datetime | None = None
        self._alarm = AsyncIOScheduler(timezone=UTC)

    async def run(self, due: AskDue, on_wake: OnWake) -> None:
        """Wake whoever is due, now and from now on, until cancelled."""
        self._alarm.start()
        try:
            together = FEW
            while True:
                self._ring.clear()
                found = await due(self._clock.now(), together)
                if found.who:
                    together = MANY
                    await on_wake(found.who, self._clock.now())
                else:
                    together = FEW
                    self._arm(found.next_at)
                    # The timer reads the clock on the wall again: where that is set back it waits
                    # on, and this does not.
                    with contextlib.suppress(TimeoutError):
                        async with asyncio.timeout(self._longest_wait / SECOND):
                            await self._ring.wait()
        finally:
            self._alarm.shutdown(wait=False)

    def nudge(self, at: datetime | None) -> None:
        """Look again at `at` if that is earlier than the timer stands (None: at once)."""
        if at is None or at <= self._clock.now():
            self._ring.set()
        elif self._armed is not None and self._clock.real_time(at) < self._armed:
            self._arm(at)

    async def _look(self) -> None:
        """In the loop: a plain function would run in a thread, where an event is not to be set."""
        self._ring.set()

    def _arm(self, at: datetime | None) -> None:
        latest = self._clock.real_now() + self._longest_wait
        self._armed = latest if at is None else min(latest, self._clock.real_time(at))
        self._alarm.add_job(
            self._look,
            "date",
            run_date=self._armed,
            id="wake",
            replace_existing=True,
            misfire_grace_time=None,
            max_instances=2,
        )
