"""`export`: records as JSON lines, CSV, FHIR or a printable page."""

import argparse
import os
import sys
from pathlib import Path

from tqdm import tqdm

from bot import settings
from bot.chart import draw
from bot.export.files import FORMATS, file_of
from bot.mendable import Mendable
from bot.record import Record, fold
from bot.storage.store import Store

NAME = "export"
HELP = "write out the record of everybody, or of one participant"


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """What form, whose, and where to."""
    parser.add_argument(
        "--format", choices=FORMATS, default="jsonl", help="the form of the file (default: jsonl)"
    )
    parser.add_argument(
        "--participant", metavar="ID", help="public id, as `people` shows it (default: everybody)"
    )
    parser.add_argument(
        "--out", type=Path, metavar="FILE", help="where to write (default: standard output)"
    )
    parser.add_argument(
        "--paper",
        choices=("a4", "letter"),
        default="a4",
        help="size of the pdf's pages (default: a4)",
    )
    parser.add_argument(
        "--whole", action="store_true", help="a pdf page for every fortnight, not the last alone"
    )


def run(args: argparse.Namespace) -> int:
    """Write the file, readable by its owner only."""
    if args.out is None and args.format == "pdf" and sys.stdout.isatty():
        raise Mendable("a PDF is not for a terminal: name a file with --out")
    records = _records(args.participant)
    # No bar where nobody watches (disable=None): only a terminal shows it.
    shown = tqdm(records, disable=None, unit=" people", desc="writing", leave=False)
    content = file_of(args.format, shown, draw, paper=args.paper, whole=args.whole)
    if args.out is None:
        sys.stdout.buffer.write(content)
        sys.stdout.buffer.flush()
    else:
        _write(args.out, content)
    return 0


def _records(who: str | None) -> list[Record]:
    store = Store.open(settings.load().database)
    try:
        with store.turn() as work:
            people = [enrolled.participant for enrolled in work.people()]
            chosen = [person for person in people if who in (None, person.id)]
            if who is not None and not chosen:
                raise Mendable(f"nobody here has the id {who}")
            shown = tqdm(chosen, disable=None, unit=" people", desc="reading", leave=False)
            return [fold(person, work.events(person.id)) for person in shown]
    finally:
        store.close()


def _write(path: Path, content: bytes) -> None:
    """All of it or nothing, and never readable by others on the way."""
    unfinished = path.with_name(f"{path.name}.part")
    try:
        opened = os.open(unfinished, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
        with os.fdopen(opened, "wb") as file:
            file.write(content)
        unfinished.replace(path)
    except OSError as fault:
        raise Mendable(f"cannot write {path}: {fault.strerror}") from fault
