# ruff: noqa: T201, S311  (a benchmark speaks on its standard output; its weeks are no secrets)
"""Charts a second: ours against plain pyplot with the same weeks, in one run; and memory.

    python tests/bench/bench_chart.py [--charts 60] [--memory 5000]

Prints what docs/week.md says of speed, size and memory. CPU time is compared on one core, so
that what else the machine does makes no difference; the time on the wall on two. Exits 1 below
twice the charts on one core or 3.5 times on two, above 60 kB, or if memory grows by over 10 MB.
"""

import argparse
import multiprocessing
import sys
import time
from collections.abc import Callable, Sequence
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path
from random import Random
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))
sys.path.insert(0, str(Path(__file__).resolve().parent))

from plain_plot import plot

from bot.chart import draw
from bot.picture import from_mapping, to_mapping
from bot.words.english.picture import PICTURE
from bot.words.picture import week_picture
from demo.diary import Diary

SPAWN = multiprocessing.get_context("spawn")

STAPLES = ("rice", "ugali", "chapati", "lentils", "pasta", "yam", "bread", "noodles", "potatoes")
WITH = ("beans", "fish", "greens", "egg", "chicken", "okra", "cheese", "tofu", "salad", "peas")


def pictures(count: int) -> list[dict[str, Any]]:
    """Weeks of ten to eighteen pairs, each of its own person: no two alike."""
    return [_picture(Random(number)) for number in range(count)]


def _picture(chance: Random) -> dict[str, Any]:
    diary = Diary()
    for meal in range(chance.randint(10, 18)):
        day, slot = divmod(meal, 3)
        dish = f"{chance.choice(STAPLES)} with {chance.choice(WITH)} and {chance.choice(WITH)}"
        before = chance.randint(85, 145)
        clock = f"{(7, 13, 18)[slot]:02}:{chance.randint(10, 50)}"
        diary.meal(day, clock, dish, before, before + chance.randint(-5, 95))
    diary.activity(2, "16:45", "walked", 20, before=150, after=121)
    return to_mapping(week_picture(diary.week(), PICTURE))


def plain(mapping: dict[str, Any]) -> bytes:
    """The plain way, from the same mapping."""
    return plot(from_mapping(mapping))


def cpu_a_chart(way: Callable[[dict[str, Any]], bytes], weeks: Sequence[dict[str, Any]]) -> float:
    """Seconds of CPU a chart."""
    start = time.process_time()
    for week in weeks:
        way(week)
    return (time.process_time() - start) / len(weeks)


def wall_a_chart(way: Callable[[dict[str, Any]], bytes], weeks: Sequence[dict[str, Any]]) -> float:
    """Seconds on the wall a chart."""
    start = time.perf_counter()
    for week in weeks:
        way(week)
    return (time.perf_counter() - start) / len(weeks)


def wall_on_two(weeks: Sequence[dict[str, Any]], warm: Sequence[dict[str, Any]]) -> float:
    """Seconds on the wall a chart, ours in two processes of their own."""
    with ProcessPoolExecutor(2, mp_context=SPAWN) as pool:
        list(pool.map(draw, warm))
        start = time.perf_counter()
        list(pool.map(draw, weeks, chunksize=4))
        return (time.perf_counter() - start) / len(weeks)


def resident_mb() -> float:
    """Memory that this process holds now, in MB."""
    status = Path("/proc/self/status").read_text(encoding="ascii").splitlines()
    return next(int(line.split()[1]) / 1024 for line in status if line.startswith("VmRSS:"))


def growth_mb(charts: int, warm: int) -> tuple[float, float]:
    """Memory after `warm` charts, and how much more after `charts` more, in MB."""
    for number in range(warm):
        draw(_picture(Random(number)))
    before = resident_mb()
    for number in range(warm, warm + charts):
        draw(_picture(Random(number)))
    return before, resident_mb() - before


def main() -> None:
    """Measure and print."""
    arguments = argparse.ArgumentParser(description=__doc__)
    arguments.add_argument("--charts", type=int, default=60)
    arguments.add_argument("--memory", type=int, default=0)
    chosen = arguments.parse_args()
    warm, weeks = pictures(chosen.charts + 40)[:40], pictures(chosen.charts + 40)[40:]
    for way in (draw, plain):
        for week in warm[: 40 if way is draw else 3]:
            way(week)
    plain_cpu, ours_cpu = cpu_a_chart(plain, weeks), cpu_a_chart(draw, weeks)
    plain_wall, two_wall = wall_a_chart(plain, weeks), wall_on_two(weeks, warm)
    sizes = [len(draw(week)) / 1000 for week in weeks]
    print(f"plain pyplot, one core: {1 / plain_cpu:5.1f} charts a second of CPU")
    print(f"ours, one core:         {1 / ours_cpu:5.1f}  ({plain_cpu / ours_cpu:.1f} times)")
    print(f"plain pyplot, wall:     {1 / plain_wall:5.1f} charts a second")
    print(f"ours, two processes:    {1 / two_wall:5.1f}  ({plain_wall / two_wall:.1f} times)")
    print(f"size: {min(sizes):.1f} to {max(sizes):.1f} kB")
    kept = plain_cpu / ours_cpu >= 2 and plain_wall / two_wall >= 3.5 and max(sizes) <= 60
    if chosen.memory:
        with ProcessPoolExecutor(1, mp_context=SPAWN) as alone:
            before, more = alone.submit(growth_mb, chosen.memory, 1000).result()
        print(
            f"memory: {before:.0f} MB after 1,000 charts, {more:+.1f} MB after "
            f"{chosen.memory:,} more"
        )
        kept = kept and more < 10
    sys.exit(0 if kept else 1)


if __name__ == "__main__":
    main()
