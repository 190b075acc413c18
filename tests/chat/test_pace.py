"""The pace on virtual seconds: `at` is an argument, nothing waits."""

from hypothesis import given
from hypothesis import strategies as st

from bot.chat.pace import Pace

CAP = 30


@given(st.lists(st.floats(0, 0.2), min_size=40, max_size=200))
def test_never_more_than_the_cap_leave_in_any_second(delays: list[float]) -> None:
    pace, at, left = Pace(CAP), 0.0, []
    for number, delay in enumerate(delays):
        at += max(delay, pace.wait(at + delay) + delay if pace.wait(at) else delay)
        at += pace.wait(at)
        pace.leaves(f"p{number}", at)
        left.append(at)
    for first in left:
        assert sum(1 for other in left if first <= other < first + 1) <= CAP


def test_a_waiting_crowd_leaves_at_nearly_the_cap() -> None:
    pace, at = Pace(CAP), 0.0
    for number in range(280):
        at += pace.wait(at)
        pace.leaves(f"p{number}", at)
    assert 9.9 < at < 10.1  # 28 a second


def test_one_reader_is_written_to_once_a_second_and_one_message_at_a_time() -> None:
    pace = Pace(CAP)
    pace.leaves("ann", 0.0)
    assert pace.closed(0.5) == {"ann"}
    assert pace.next_opening(0.5) == 0.5
    assert pace.closed(1.5) == {"ann"}  # still under way
    pace.ended("ann")
    assert pace.closed(1.5) == frozenset()
    assert pace.next_opening(1.5) is None


def test_one_reader_turned_away_waits_alone() -> None:
    pace = Pace(CAP)
    pace.turned_away("ann", 0.0, 30)
    assert pace.closed(29) == {"ann"}
    assert pace.wait(0.1) == 0
    assert pace.closed(31) == frozenset()


def test_two_readers_turned_away_together_hold_everybody() -> None:
    pace = Pace(CAP)
    pace.turned_away("ann", 0.0, 30)
    pace.turned_away("ben", 0.5, 30)
    assert 29 < pace.wait(1.0) < 30


def test_two_readers_turned_away_far_apart_or_one_twice_hold_nobody_else() -> None:
    pace = Pace(CAP)
    pace.turned_away("ann", 0.0, 30)
    pace.turned_away("ann", 0.5, 30)
    pace.turned_away("ben", 5.0, 30)
    assert pace.wait(5.1) == 0
