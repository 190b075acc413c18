"""`import`: our own JSON lines back in."""

import argparse
import sys
from datetime import datetime, timedelta
from pathlib import Path

from tqdm import tqdm

from bot import settings
from bot.export.back import Restored, restored
from bot.json_lines import lines_of
from bot.mendable import Mendable
from bot.planning.agenda import next_wake
from bot.record import fold
from bot.storage.store import Store
from bot.storage.work import Work
from bot.turns.turn import Turn
from bot.wiring import clock_of

NAME = "import"
HELP = "take in what `export --format jsonl` wrote; all of it or nothing"


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Where from."""
    parser.add_argument(
        "file",
        nargs="?",
        metavar="FILE",
        type=Path,
        help="what `export --format jsonl` wrote (default: standard input)",
    )


def run(args: argparse.Namespace) -> int:
    """Read everything, then keep everything in one transaction."""
    lines = _lines(args.file)
    people = restored(tqdm(lines, disable=None, unit=" lines", desc="reading", leave=False))
    chosen = settings.load()
    store = Store.open(chosen.database)
    try:
        clock = clock_of(store, chosen.clock_speed)
        with store.turn() as work:
            _refuse_known(people, work)
            shown = tqdm(people, disable=None, unit=" people", desc="keeping", leave=False)
            for index, person in enumerate(shown):
                # The order of joining is kept: no two join in the same millisecond.
                real = clock.real_now() + timedelta(milliseconds=index)
                _keep(work, person, clock.now(), real)
    finally:
        store.close()
    entries = sum(len(person.events) for person in people)
    sys.stdout.write(f"imported: {len(people)} participants, {entries} entries\n")
    return 0


def _lines(path: Path | None) -> list[str]:
    try:
        return lines_of(sys.stdin.buffer.read() if path is None else path.read_bytes())
    except UnicodeDecodeError:
        raise Mendable(f"{path or 'what came in'} is not UTF-8") from None
    except OSError as fault:
        raise Mendable(f"cannot read {path}: {fault.strerror}") from fault


def _refuse_known(people: tuple[Restored, ...], work: Work) -> None:
    known = {enrolled.participant.id for enrolled in work.people()}
    for person in people:
        if person.participant.id in known:
            raise Mendable(
                f"{person.participant.id} is here already, and nothing was imported: "
                "`erase` them first if the file is to take their place"
            )


def _keep(work: Work, person: Restored, now: datetime, real_now: datetime) -> None:
    record = fold(person.participant, person.events)
    work.enrol(person.participant, real_now)
    work.save(
        Turn(
            participant=person.participant,
            events=person.events,
            wake_at=next_wake(record, now),
        )
    )
