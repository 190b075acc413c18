"""What a whole turn costs: `python tests/bench/bench_turns.py`.

Compared with a bare insert and commit by the driver into a file with the same pragmas (WAL,
synchronous FULL). The three take turns in rounds, so that whatever else the machine does
falls on all of them; what is printed are ratios within a round.

A bare insert repeated finds everything warm that it needs, and the disk as well. So a last line
gives what one costs where it comes between two turns, as it would if it were all that is done for
a message: there both have the same caches and the same disk.
"""

import argparse
import sqlite3
import statistics
import sys
import tempfile
import time
from collections.abc import Callable, Sequence
from datetime import timedelta
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "conversation"))

from echo import START, echo_turns, person  # type: ignore[import-not-found]

from bot.conversation import Conversation, Turns
from bot.messages import Incoming
from bot.storage.store import Store
from bot.wiring import live_turns

#: One call, told its number.
Call = Callable[[int], None]


def per_call(call: Call, first: int, calls: int) -> float:
    """Milliseconds a call, over so many calls from a number on."""
    began = time.perf_counter()
    for number in range(first, first + calls):
        call(number)
    return (time.perf_counter() - began) / calls * 1000


def by_turns(calls: Sequence[Call], numbers: range) -> list[list[float]]:
    """Milliseconds of every call, one of each kind after the other."""
    took: list[list[float]] = [[] for _ in calls]
    for number in numbers:
        for call, times in zip(calls, took, strict=True):
            times.append(per_call(call, number, 1))
    return took


def bare_insert(folder: Path) -> Call:
    """One row and one commit, by the driver alone, with the same pragmas."""
    folder.mkdir(exist_ok=True)
    connection = sqlite3.connect(folder / "bare.db", isolation_level=None)
    connection.execute("PRAGMA journal_mode = WAL")
    connection.execute("PRAGMA synchronous = FULL")
    connection.execute("CREATE TABLE entry (id INTEGER PRIMARY KEY, body TEXT)")

    def insert(number: int) -> None:
        connection.execute("BEGIN IMMEDIATE")
        connection.execute("INSERT INTO entry VALUES (?, ?)", (number, "x" * 200))
        connection.execute("COMMIT")

    return insert


#: How many people write in turn, and what, one message after the other.
PEOPLE = 20
TEXTS = ("118 before lunch, rice and beans", "164", "walked 20 minutes", "131", "92 fasting")


def whole_turn(path: Path, turns: Turns, together: int = 1) -> Call:
    """A message heard: update marked, record loaded, decided, all kept, committed.

    Each of the people writes five messages a day, so that their records grow as in life. With
    more than one `together`, so many are waiting when they are taken, each of another person.
    """
    store = Store.open(f"sqlite:///{path}.db")
    conversation = Conversation(
        store, turns, real_now=lambda: START, new_id=lambda: "x", clock_speed=1
    )
    for number in range(PEOPLE):
        conversation.enrol(person(f"p{number}"), START)

    waiting: list[Incoming] = []

    def hear(number: int) -> None:
        turn, who = divmod(number, PEOPLE)
        day, part = divmod(turn, len(TEXTS))
        at = START + timedelta(days=day, hours=2 * part)
        waiting.append(
            Incoming(update=number, chat=f"p{who}", message=str(number), at=at, text=TEXTS[part])
        )
        if len(waiting) == together:
            while waiting:
                del waiting[: len(conversation.hear_all(waiting, at))]

    return hear


def main() -> None:
    """Print a table of figures and ratios."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--turns", type=int, default=2500, help="of each kind, in all rounds")
    parser.add_argument("--rounds", type=int, default=10)
    args = parser.parse_args()
    each = args.turns // args.rounds
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        kinds = {
            "a bare insert and commit": bare_insert(folder),
            "a whole turn that says back what it hears": whole_turn(folder / "fake", echo_turns),
            "a whole turn of the real functions": whole_turn(folder / "real", live_turns()),
            f"the same where {PEOPLE} are waiting": whole_turn(
                folder / "many", live_turns(), together=PEOPLE
            ),
        }
        for call in kinds.values():
            per_call(call, 0, each)  # word lists, compiled statements
        rounds = [
            [per_call(call, number * each, each) for call in kinds.values()]
            for number in range(1, args.rounds + 1)
        ]
        told = whole_turn(folder / "between", live_turns())
        pair = (bare_insert(folder / "between two"), told)
        by_turns(pair, range(each))
        bare, turn = by_turns(pair, range(each, each + args.turns))
    for place, what in enumerate(kinds):
        took = [one[place] for one in rounds]
        times = [one[place] / one[0] for one in rounds]
        middle = statistics.median(took)
        sys.stdout.write(
            f"{what}: {min(took):.3f} ms at best, {middle:.3f} in the middle, "
            f"{1000 / middle:.0f} a second\n    times the bare one: {min(times):.1f} to "
            f"{max(times):.1f}, in the middle {statistics.median(times):.1f}, "
            f"of the best {min(took) / min(one[0] for one in rounds):.1f}\n"
        )
    sys.stdout.write(
        f"by turns, one by one: a whole turn {statistics.median(turn):.3f} ms in the middle, "
        f"{statistics.mean(turn):.3f} on average; a bare insert behind it "
        f"{statistics.median(bare):.3f} and {statistics.mean(bare):.3f}: "
        f"{statistics.median(turn) / statistics.median(bare):.1f} and "
        f"{statistics.mean(turn) / statistics.mean(bare):.1f} times\n"
    )


if __name__ == "__main__":
    main()
