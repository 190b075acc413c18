"""The benchmark of charts, run short: faster than the plain way, and flat in memory."""

import subprocess
import sys
from pathlib import Path

import pytest

PROGRAM = """
import sys
sys.path.insert(0, "tests/bench")
from bench_chart import cpu_a_chart, draw, growth_mb, pictures, plain
weeks = pictures(18)
for week in weeks[:12]:
    draw(week)
plain(weeks[0])
print(cpu_a_chart(plain, weeks[12:]) / cpu_a_chart(draw, weeks[12:]))
print(growth_mb(100, warm=100)[1])
"""


@pytest.mark.slow
def test_ours_is_twice_as_fast_as_plain_pyplot_and_memory_is_flat(checkout: Path) -> None:
    """In a process of its own: pyplot and its figures never meet the other tests."""
    ran = subprocess.run(
        [sys.executable, "-c", PROGRAM], capture_output=True, text=True, check=True, cwd=checkout
    )
    times, growth = (float(line) for line in ran.stdout.split())
    assert times >= 2
    assert growth < 12  # MB; the stamps' cache still fills
