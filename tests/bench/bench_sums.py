# ruff: noqa: T201  (a benchmark speaks on its standard output)
"""How long a record takes to fold, pair and sum, and how that grows.

Run: `.venv/bin/python tests/bench/bench_sums.py` (a minute at most; `--entries 1000 10000` for
other sizes). Prints a table; exits 1 if 10,000 entries take half a second or more to fold and
pair, or if growth is worse than n log n by more than a half.
"""

import argparse
import math
import sys
import time
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from bot.entries import Activity, Food, FoodKind, Meal, Moment, Reading
from bot.glucose.effects import effects
from bot.glucose.pairs import pairs
from bot.glucose.week import week
from bot.participants import Participant
from bot.record import Body, Event, Record, fold
from bot.units import Unit

START = datetime(2026, 1, 5, tzinfo=UTC)
WHO = Participant(id="bench", unit=Unit.MG_DL, zone="UTC", joined_at=START)
MOST_SECONDS = 0.5
SLACK = 1.5


def events(count: int) -> list[Event]:
    """Days of three tested meals and a walk, every tenth meal a sweet one."""
    bodies: list[Body] = []
    day = 0
    while len(bodies) < count:
        for hour in (7, 12, 18):
            start = START + timedelta(days=day, hours=hour)
            kind = FoodKind.FRUIT if (day + hour) % 10 == 0 else FoodKind.STARCH
            bodies += [
                _reading(105 + (day * 7 + hour) % 40, start, Moment.BEFORE_MEAL),
                Meal(text="rice", started_at=start, foods=(Food(text="rice", kind=kind),)),
                _reading(
                    140 + (day * 13 + hour) % 70, start + timedelta(hours=2), Moment.AFTER_MEAL
                ),
            ]
        bodies.append(Activity(text="walk", minutes=20, ended_at=start + timedelta(hours=3)))
        day += 1
    return [
        Event(id=index + 1, at=_instant(body), body=body, message=str(index))
        for index, body in enumerate(bodies[:count])
    ]


def best_of(times: int, run: Callable[[], object]) -> float:
    """The shortest of several runs in seconds of processor time: others share the machine."""
    spent = []
    for _ in range(times):
        begin = time.process_time()
        run()
        spent.append(time.process_time() - begin)
    return min(spent)


def fresh(record: Record) -> Record:
    """The same record anew, so that no sum over it is remembered from the run before."""
    return replace(record)


def measure(count: int) -> tuple[float, float, float, float]:
    """Seconds to fold, to pair, to work out effects, and for one week's figures."""
    told = events(count)
    record: Record = fold(WHO, told)
    end = told[-1].at
    return (
        best_of(5, lambda: fold(WHO, told)),
        best_of(5, lambda: pairs(fresh(record))),
        best_of(5, lambda: effects(fresh(record))),
        best_of(5, lambda: week(fresh(record), start=end - timedelta(days=7), end=end)),
    )


def main() -> int:
    """Print the table and judge it."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--entries", type=int, nargs="+", default=[1_000, 10_000, 100_000])
    sizes = parser.parse_args().entries
    print(f"{'entries':>8} {'fold':>8} {'pairs':>8} {'effects':>8} {'week':>8}  fold+pairs")
    fine = True
    earlier: tuple[int, float] | None = None
    for count in sizes:
        folding, pairing, moving, weekly = measure(count)
        total = folding + pairing
        line = (
            f"{count:>8} {folding:8.3f} {pairing:8.3f} {moving:8.3f} {weekly:8.3f}  {total:.3f} s"
        )
        if earlier is not None:
            ratio = total / earlier[1]
            allowed = count * math.log(count) / (earlier[0] * math.log(earlier[0]))
            line += f", {ratio:.1f} times as long (n log n: {allowed:.1f})"
            fine &= ratio <= allowed * SLACK
        fine &= count != 10_000 or total < MOST_SECONDS
        print(line, flush=True)
        earlier = (count, total)
    return 0 if fine else 1


def _reading(value: int, taken_at: datetime, moment: Moment) -> Reading:
    return Reading(
        value=value, unit=Unit.MG_DL, mg_dl=float(value), moment=moment, taken_at=taken_at
    )


def _instant(body: Body) -> datetime:
    for name in ("taken_at", "started_at", "ended_at"):
        instant = getattr(body, name, None)
        if isinstance(instant, datetime):
            return instant
    raise TypeError(body)


if __name__ == "__main__":
    raise SystemExit(main())
