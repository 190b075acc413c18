"""The engine for several machines, on a real PostgreSQL."""

import asyncio
from collections.abc import AsyncIterator, Mapping
from contextlib import asynccontextmanager, suppress
from dataclasses import dataclass, field
from datetime import datetime, timedelta

import psycopg
import pytest

from scheduler.clock import SharedClock, real_now
from scheduler.port import Due
from scheduler.postgres import Make, NotMade, PostgresEngine, Wire, is_prepared, prepare
from scheduler.postgres.making import Making
from tests.postgres import NoServer, Server


@pytest.fixture
def url(empty_postgres_url: str) -> str:
    prepare(empty_postgres_url)
    return empty_postgres_url


@dataclass
class People:
    """Next wakes, as the store keeps them; both workers of a test see the same."""

    wakes: dict[str, datetime] = field(default_factory=dict)
    woken: list[tuple[str, datetime]] = field(default_factory=list)
    fails: int = 0
    holds: asyncio.Event | None = None

    async def due(self, until: datetime, limit: int) -> Due:
        found = sorted((at, who) for who, at in self.wakes.items() if at <= until)[:limit]
        return Due(who=tuple(who for _, who in found), at=tuple(at for at, _ in found))

    async def wake(self, people: tuple[str, ...], now: datetime) -> None:
        (who,) = people
        if self.holds is not None:
            await self.holds.wait()
        if self.fails:
            self.fails -= 1
            raise ConnectionError
        due = self.wakes.get(who)
        if due is None or due > now:
            return
        del self.wakes[who]
        self.woken.append((who, now))


@asynccontextmanager
async def working(
    url: str, people: People, makes: Mapping[str, Make] | None = None
) -> AsyncIterator[PostgresEngine]:
    clock = SharedClock.plain()
    heard: list[PostgresEngine] = []
    wire = Wire(url, clock, heard=lambda word: [engine.heard(word) for engine in heard])
    async with wire:
        engine = PostgresEngine(url, clock, wire, makes=makes)
        heard.append(engine)
        task = asyncio.create_task(engine.run(people.due, people.wake))
        try:
            yield engine
        finally:
            task.cancel()
            with suppress(asyncio.CancelledError):
                await task


async def until(holds, seconds: float = 10) -> None:
    async with asyncio.timeout(seconds):
        while not holds():  # noqa: ASYNC110 - what is looked at sets no event
            await asyncio.sleep(0.01)


def rows(url: str, question: str) -> list[tuple[object, ...]]:
    with psycopg.connect(url, autocommit=True) as line:
        done = line.execute(question)
        return done.fetchall() if done.description else []


def jobs(url: str) -> int:
    ((count,),) = rows(url, "SELECT count(*) FROM procrastinate_jobs")
    assert isinstance(count, int)
    return count


class TestWaking:
    async def test_whoever_is_due_is_woken_and_whoever_is_later_at_their_time(
        self, url: str
    ) -> None:
        now = real_now()
        soon = now + timedelta(seconds=1.5)
        people = People({"late": now - timedelta(days=1), "soon": soon})
        async with working(url, people):
            await until(lambda: len(people.woken) == 2)
        assert [who for who, _ in people.woken] == ["late", "soon"]
        assert timedelta(0) <= people.woken[1][1] - soon < timedelta(seconds=2.5)

    async def test_whoever_is_due_far_ahead_is_never_handed_to_the_job_engine(
        self, url: str
    ) -> None:
        now = real_now()
        people = People({f"p{n}": now + timedelta(minutes=2.5 + n) for n in range(500)})
        people.wakes["now"] = now
        async with working(url, people):
            await until(lambda: people.woken != [])
            await until(lambda: jobs(url) == 0)
        assert len(people.wakes) == 500

    async def test_who_waited_longest_comes_first(self, url: str) -> None:
        now = real_now()
        people = People({f"p{n}": now - timedelta(seconds=n) for n in range(40)})
        people.holds = asyncio.Event()
        async with working(url, people):
            await until(lambda: jobs(url) == 40)
            people.holds.set()
            await until(lambda: len(people.woken) == 40)
        order = [int(who[1:]) for who, _ in people.woken]
        assert order == sorted(order, reverse=True)

    async def test_a_near_wake_told_by_another_machine_is_not_waited_past(self, url: str) -> None:
        people, clock = People(), SharedClock.plain()
        async with working(url, people), Wire(url, clock) as wire:
            receiver = PostgresEngine(url, clock, wire)
            await asyncio.sleep(0.5)  # the worker has looked, and would not for ten seconds
            people.wakes["near"] = real_now() + timedelta(seconds=0.2)
            receiver.nudge(people.wakes["near"])
            await until(lambda: people.woken != [], seconds=4)

    async def test_a_wake_that_failed_is_tried_again_without_being_told(
        self, url: str, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setattr("scheduler.postgres.engine.LOOK_EVERY", 0.3)
        people = People({"ann": real_now()}, fails=1)
        async with working(url, people):
            await until(lambda: people.woken != [])
            await until(lambda: jobs(url) == 0)  # none is left over

    async def test_two_workers_share_and_neither_wakes_anybody_twice(self, url: str) -> None:
        people = People({f"p{n}": real_now() for n in range(300)})
        async with working(url, people), working(url, people):
            await until(lambda: not people.wakes)
        assert len(people.woken) == 300

    async def test_what_a_dead_worker_held_is_swept_away_and_its_person_woken_by_another(
        self, url: str
    ) -> None:
        people = People({"ann": real_now()})
        rows(
            url,
            "INSERT INTO procrastinate_workers (last_heartbeat) VALUES (now() - '1 h'::interval)",
        )
        rows(
            url,
            "INSERT INTO procrastinate_jobs (queue_name, task_name, status, worker_id)"
            " SELECT 'wake', 'wake', 'doing', id FROM procrastinate_workers",
        )
        async with working(url, people) as engine:
            await until(lambda: people.woken != [])
            app = engine._app
            assert app is not None
            await until(lambda: jobs(url) == 1)  # its own is done
            await engine._sweep(app)
            assert jobs(url) == 0
            # This one's own two workers are left alone.
            assert rows(url, "SELECT count(*) FROM procrastinate_workers") == [(2,)]


class TestFaults:
    async def test_a_server_that_went_and_came_back_is_worked_with_again(self) -> None:
        try:
            with Server.begun() as server, server.database() as url:
                prepare(url)
                people = People({"before": real_now()})
                async with working(url, people):
                    await until(lambda: len(people.woken) == 1)
                    await asyncio.to_thread(server.restart)
                    people.wakes["after"] = real_now()
                    await until(lambda: len(people.woken) == 2, seconds=30)
        except NoServer as reason:
            pytest.skip(str(reason))

    async def test_a_worker_without_a_sign_of_life_is_replaced(
        self, url: str, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        monkeypatch.setattr("scheduler.postgres.engine.WATCH_EVERY", 0.3)
        people = People()
        async with working(url, people) as engine:
            await until(lambda: len(rows(url, "SELECT id FROM procrastinate_workers")) == 2)
            first = engine._app
            # As if their own lines were dead: for the database they have gone.
            rows(url, "DELETE FROM procrastinate_workers")
            await until(lambda: engine._app is not None and engine._app is not first)
            people.wakes["ann"] = real_now()
            engine.nudge(None)
            await until(lambda: people.woken != [])


class TestMaking:
    async def test_one_asks_another_makes(self, url: str) -> None:
        async def draw(what: str) -> bytes:
            return what.encode() * 1000

        async with working(url, People(), {"picture": draw}) as worker:
            await until(lambda: worker._app is not None)
            assert await worker.get("picture", "7") == b"7" * 1000
            assert rows(url, "SELECT count(*) FROM engine_result") == [(0,)]

    async def test_what_could_not_be_made_is_said(self, url: str) -> None:
        async def draw(_what: str) -> bytes:
            raise ValueError("no such row")

        async with working(url, People(), {"picture": draw}) as worker:
            await until(lambda: worker._app is not None)
            with pytest.raises(NotMade):
                await worker.get("picture", "7")

    async def test_whoever_waits_no_longer_takes_the_job_back(self, url: str) -> None:
        hangs = asyncio.Event()

        async def draw(_what: str) -> bytes:
            await hangs.wait()
            return b""

        async with working(url, People(), {"picture": draw}) as worker:
            await until(lambda: worker._app is not None)
            asked = [asyncio.create_task(worker.get("picture", str(n))) for n in range(4)]
            begun = "SELECT count(*) FROM procrastinate_jobs WHERE status = 'doing'"
            await until(lambda: rows(url, begun) == [(2,)])
            for task in asked:
                task.cancel()
            await asyncio.gather(*asked, return_exceptions=True)
            assert jobs(url) == 2  # those begun
            hasty = asyncio.create_task(worker.get("picture", "5"))
            await asyncio.sleep(0)  # long enough to ask, too short for the asking to arrive
            hasty.cancel()
            await asyncio.gather(hasty, return_exceptions=True)
            assert jobs(url) == 2
            hangs.set()
            await until(lambda: jobs(url) == 0)

    async def test_nobody_waits_to_be_woken_behind_things_being_made(self, url: str) -> None:
        hangs = asyncio.Event()

        async def draw(_what: str) -> bytes:
            await hangs.wait()
            return b""

        people = People()
        async with working(url, people, {"picture": draw}) as worker:
            await until(lambda: worker._app is not None)
            asked = [asyncio.create_task(worker.get("picture", str(n))) for n in range(50)]
            begun = "SELECT count(*) FROM procrastinate_jobs WHERE status = 'doing'"
            await until(lambda: rows(url, begun) == [(2,)])
            people.wakes["ann"] = real_now()
            worker.nudge(None)
            await until(lambda: people.woken != [], seconds=3)
            hangs.set()
            await asyncio.gather(*asked)

    async def test_what_nobody_came_for_is_forgotten(self, url: str) -> None:
        rows(url, "INSERT INTO engine_result VALUES (1, now() - '3 min'::interval, 'x')")
        rows(url, "INSERT INTO engine_result VALUES (2, now(), 'x')")
        async with Wire(url, SharedClock.plain()) as wire:
            await Making(wire).forget()
        assert rows(url, "SELECT job FROM engine_result") == [(2,)]


class TestSharedClock:
    async def test_a_clock_two_minutes_off_goes_by_the_databases(
        self, url: str, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        late = timedelta(minutes=2)
        monkeypatch.setattr("scheduler.clock.real_now", lambda: real_now() - late)
        clock = SharedClock.plain()
        assert real_now() - clock.real_now() > timedelta(minutes=1, seconds=59)
        async with Wire(url, clock):
            assert abs(real_now() - clock.real_now()) < timedelta(seconds=0.5)
            assert clock.now() == clock.bot_time(clock.real_now()) or clock.now() <= clock.now()

    def test_an_answer_that_took_too_long_says_nothing(self) -> None:
        clock = SharedClock.plain()
        assert not clock.agree(real_now() + timedelta(hours=1), asked=0, answered=3)
        assert clock.ahead == timedelta(0)
        assert clock.agree(real_now() + timedelta(hours=1), asked=0, answered=0.2)
        assert timedelta(minutes=59) < clock.ahead < timedelta(minutes=61)


def test_preparing_twice_changes_nothing(empty_postgres_url: str) -> None:
    assert not is_prepared(empty_postgres_url)
    prepare(empty_postgres_url)
    prepare(empty_postgres_url)
    assert is_prepared(empty_postgres_url)
