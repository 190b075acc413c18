"""What every engine promises, and what each adds."""

import asyncio
from datetime import UTC, datetime, timedelta

import pytest

from scheduler.clock import LiveClock, Rate, SteppedClock, real_now
from scheduler.in_process import FEW, MANY, InProcessEngine
from scheduler.port import Due
from scheduler.virtual import VirtualClock, VirtualEngine
from tests.conversation.echo import WallClock

START = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)


class People:
    """A table of next wakes, as a store keeps it."""

    def __init__(self, **wakes: datetime) -> None:
        self.wakes = dict(wakes)
        self.woken: list[tuple[str, datetime]] = []
        self.asked = 0
        self.together: list[int] = []

    async def due(self, now: datetime, limit: int) -> Due:
        self.asked += 1
        who = sorted((at, who) for who, at in self.wakes.items() if at <= now)[:limit]
        later = [at for at in self.wakes.values() if at > now]
        return Due(who=tuple(name for _, name in who), next_at=min(later, default=None))

    async def wake(self, people: tuple[str, ...], now: datetime) -> None:
        self.together.append(len(people))
        for who in people:
            self.wake_at_once(who, now)

    def wake_at_once(self, who: str, now: datetime) -> None:
        assert now >= self.wakes.pop(who), "never early"
        self.woken.append((who, now))

    def next_wake(self) -> tuple[datetime, str] | None:
        return min(((at, who) for who, at in self.wakes.items()), default=None)


async def until(holds, seconds: float = 5) -> None:
    async with asyncio.timeout(seconds):
        while not holds():  # noqa: ASYNC110 - what is looked at sets no event
            await asyncio.sleep(0.005)


async def test_a_clock_that_is_set_back_does_not_put_the_next_look_off() -> None:
    # The timer reads the machine's clock: an hour too far away.
    clock, people = WallClock(timedelta(hours=1)), People()
    engine = InProcessEngine(clock, longest_wait=timedelta(seconds=0.05))
    running = asyncio.create_task(engine.run(people.due, people.wake))
    await until(lambda: people.asked >= 3)
    running.cancel()
    await asyncio.gather(running, return_exceptions=True)


class TestInProcess:
    async def test_wakes_who_was_due_before_it_began_and_who_is_due_later(self) -> None:
        now = real_now()
        people = People(
            late=now - timedelta(days=1),
            soon=now + timedelta(seconds=0.2),
            far=now.replace(year=2999),
        )
        engine = InProcessEngine(LiveClock.plain())
        task = asyncio.create_task(engine.run(people.due, people.wake))
        await until(lambda: len(people.woken) == 2)
        task.cancel()
        assert [who for who, _ in people.woken] == ["late", "soon"]
        late_by = people.woken[1][1] - (now + timedelta(seconds=0.2))
        assert timedelta(0) <= late_by < timedelta(seconds=0.5)

    async def test_an_earlier_wake_told_by_a_nudge_is_not_waited_past(self) -> None:
        people = People(far=real_now() + timedelta(seconds=20))
        engine = InProcessEngine(LiveClock.plain())
        task = asyncio.create_task(engine.run(people.due, people.wake))
        await until(lambda: people.asked == 1)
        at = real_now() + timedelta(seconds=0.1)
        people.wakes["near"] = at
        engine.nudge(at)
        await until(lambda: people.woken != [], seconds=2)
        task.cancel()
        assert people.woken[0][0] == "near"

    async def test_of_many_due_at_once_a_few_are_first_and_all_are_woken(self) -> None:
        people = People(**{f"p{n}": real_now() for n in range(123)})
        engine = InProcessEngine(LiveClock.plain())
        task = asyncio.create_task(engine.run(people.due, people.wake))
        await until(lambda: len(people.woken) == 123)
        task.cancel()
        assert people.together == [FEW, MANY, 123 - FEW - MANY]

    async def test_the_next_rush_begins_with_a_few_again(self) -> None:
        people = People(**{f"p{n}": real_now() for n in range(123)})
        engine = InProcessEngine(LiveClock.plain())
        task = asyncio.create_task(engine.run(people.due, people.wake))
        await until(lambda: len(people.woken) == 123)
        first_rush = len(people.together)
        people.wakes |= {f"q{n}": real_now() for n in range(123)}
        engine.nudge(None)
        await until(lambda: len(people.woken) == 246)
        task.cancel()
        assert people.together[first_rush] == FEW

    async def test_those_whom_a_wake_up_left_for_later_are_woken_next(self) -> None:
        people = People(**{f"p{n}": real_now() for n in range(20)})

        async def some(who: tuple[str, ...], now: datetime) -> None:
            await people.wake(who[:3], now)

        engine = InProcessEngine(LiveClock.plain())
        task = asyncio.create_task(engine.run(people.due, some))
        await until(lambda: len(people.woken) == 20)
        task.cancel()
        assert max(people.together) == 3

    async def test_a_later_nudge_costs_no_look(self) -> None:
        people = People()
        engine = InProcessEngine(LiveClock.plain())
        task = asyncio.create_task(engine.run(people.due, people.wake))
        await until(lambda: people.asked == 1)
        engine.nudge(real_now() + timedelta(hours=1))
        await asyncio.sleep(0.05)
        task.cancel()
        assert people.asked == 1

    async def test_looks_again_by_itself_in_case_the_clock_was_set(self) -> None:
        people = People()
        engine = InProcessEngine(LiveClock.plain(), longest_wait=timedelta(seconds=0.05))
        task = asyncio.create_task(engine.run(people.due, people.wake))
        await until(lambda: people.asked >= 3)
        task.cancel()

    async def test_a_stepped_clock_wakes_when_it_is_stepped(self) -> None:
        clock, people = SteppedClock(START), People(ann=START + timedelta(hours=2))
        engine = InProcessEngine(clock)
        task = asyncio.create_task(engine.run(people.due, people.wake))
        await until(lambda: people.asked == 1)
        clock.step_to(START + timedelta(hours=2))
        engine.nudge(None)
        await until(lambda: people.woken != [])
        task.cancel()
        assert people.woken == [("ann", START + timedelta(hours=2))]

    async def test_a_machine_that_slept_past_a_wake_wakes_it_by_the_next_look(self) -> None:
        clock = SteppedClock(START)  # its waits do not see the jump, as after a sleep
        people = People(ann=START + timedelta(hours=1))
        engine = InProcessEngine(clock, longest_wait=timedelta(seconds=0.05))
        task = asyncio.create_task(engine.run(people.due, people.wake))
        await until(lambda: people.asked == 1)
        clock.step_to(START + timedelta(hours=9))
        await until(lambda: people.woken != [], seconds=2)
        task.cancel()
        assert people.woken == [("ann", START + timedelta(hours=9))]

    async def test_a_fast_clock_wakes_at_its_own_time(self) -> None:
        now = real_now()
        clock = LiveClock(Rate(real=now, bot=now, speed=3600))
        people = People(ann=now + timedelta(minutes=10))  # a sixth of a real second
        engine = InProcessEngine(clock)
        task = asyncio.create_task(engine.run(people.due, people.wake))
        await until(lambda: people.woken != [], seconds=2)
        task.cancel()


class TestVirtual:
    def test_wakes_in_the_order_of_the_instants_and_at_them(self) -> None:
        people = People(b=START + timedelta(hours=2), a=START + timedelta(hours=1))
        clock = VirtualClock(START)
        engine = VirtualEngine(clock, people.next_wake, people.wake_at_once)
        engine.go_to(START + timedelta(hours=3), including=True)
        assert people.woken == [
            ("a", START + timedelta(hours=1)),
            ("b", START + timedelta(hours=2)),
        ]
        assert clock.now() == START + timedelta(hours=3)

    @pytest.mark.parametrize(("including", "woken"), [(False, 0), (True, 1)])
    def test_what_is_due_at_the_very_instant_is_told_apart(
        self, including: bool, woken: int
    ) -> None:
        people = People(a=START + timedelta(hours=1))
        engine = VirtualEngine(VirtualClock(START), people.next_wake, people.wake_at_once)
        engine.go_to(START + timedelta(hours=1), including=including)
        assert len(people.woken) == woken

    def test_time_is_never_turned_back(self) -> None:
        clock = VirtualClock(START)
        with pytest.raises(ValueError, match="turned back"):
            clock.set(START - timedelta(seconds=1))


class TestClocks:
    def test_a_fast_clock_and_the_real_one_are_told_from_each_other_both_ways(self) -> None:
        rate = Rate(real=START, bot=START, speed=360)
        real = START + timedelta(seconds=20)
        assert rate.bot_time(real) == START + timedelta(hours=2)
        assert rate.real_time(rate.bot_time(real)) == real

    def test_a_change_of_speed_neither_jumps_nor_goes_back(self) -> None:
        fast = Rate(real=START, bot=START, speed=360)
        then = START + timedelta(seconds=20)
        plain = fast.at_speed(1, then)
        assert plain.bot_time(then) == fast.bot_time(then)
        assert plain.bot_time(then + timedelta(hours=1)) == fast.bot_time(then) + timedelta(hours=1)

    def test_the_same_speed_is_the_same_clock(self) -> None:
        rate = Rate(real=START, bot=START, speed=360)
        assert rate.at_speed(360, START + timedelta(days=1)) is rate
