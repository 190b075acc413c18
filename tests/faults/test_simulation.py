"""The simulation's invariants hold over many seeds, and each planted fault breaks one of them."""

import logging
from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest

from tests.faults.simulation import Plan, Simulation

pytestmark = [pytest.mark.slow, pytest.mark.timeout(240)]

#: Seeds within which a planted fault must show.
ENOUGH = 8


@pytest.fixture(autouse=True)
def in_silence() -> Iterator[None]:
    """Thousands of faults on purpose would fill the report."""
    logging.disable(logging.CRITICAL)
    yield
    logging.disable(logging.NOTSET)


@pytest.mark.parametrize(("seed", "trouble"), [(1, 0.1), (2, 0.3), (3, 0.9)])
def test_nothing_is_lost_doubled_late_or_misdirected(seed: int, trouble: float) -> None:
    simulation = Simulation(Plan(seed=seed, people=40, days=2, trouble=trouble))
    assert simulation.run() == []
    assert simulation.deaths > 5
    assert len(simulation.world.arrived) > 100


@pytest.mark.parametrize(
    ("fault", "shows_as"),
    [
        ({"confirm_early": True}, "a message was lost"),
        ({"forget_leases": True}, "never settled"),
        ({"retry_blindly": True}, "more copies"),
        ({"ignore_ends": True}, "after its window"),
        ({"mix_up_chats": True}, "another's text"),
        ({"end_at_once": "expired"}, "a caution expired before its time"),
        ({"end_at_once": "expired"}, "a prompt expired before its time"),
        ({"end_at_once": "cancelled"}, "a reply was cancelled whose reader takes messages"),
        ({"cancel_cautions": True}, "a caution was not delivered"),
        ({"owe_nothing": True}, "never said again"),
        ({"sleep_on": True}, "a prompt was never queued"),
        ({"answer_nobody": True}, "never answered"),
    ],
)
def test_a_planted_fault_is_found(fault: dict[str, Any], shows_as: str) -> None:
    plan = Plan(seed=0, people=40, days=1, trouble=0.9, **fault)
    for seed in range(ENOUGH):
        broken = Simulation(replace(plan, seed=seed)).run()
        if any(shows_as in line for line in broken):
            return
    pytest.fail(f"not found in {ENOUGH} seeds")
