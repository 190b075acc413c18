"""`copy`: everything of one database into another, row by row, resumable."""

import argparse
import contextlib
import sys
from collections.abc import Iterator
from pathlib import Path

from sqlalchemy.engine import make_url
from sqlalchemy.exc import ArgumentError, DBAPIError
from tqdm import tqdm

from bot.mendable import Mendable
from bot.storage.moving import move, rows_of
from bot.storage.shared import anybody_plays
from bot.storage.sqlite import OneServer
from bot.storage.store import Store, backend_of, file_of

NAME = "copy"
HELP = "copy one database into another, row by row; run it again to go on where it stopped"


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """From where, and to where; the settings name only one database."""
    parser.add_argument(
        "--from",
        dest="source",
        metavar="URL",
        required=True,
        help="stop its bot first",
    )
    parser.add_argument(
        "--to",
        dest="target",
        metavar="URL",
        required=True,
        help="made if there is none",
    )


def run(args: argparse.Namespace) -> int:
    """Copy, compare, say how much."""
    for url, which in ((args.source, "--from"), (args.target, "--to")):
        _refuse_unknown(url, which)
    if args.source.startswith("sqlite") and not Path(file_of(args.source)).exists():
        raise Mendable(f"there is no database {file_of(args.source)}")
    if _place(args.source) == _place(args.target):
        raise Mendable("--from and --to are the same database")
    with _alone(args.source) as source, _alone(args.target) as target:
        source.fit(upgrade=False)
        target.fit(upgrade=True, half_moved=True)
        for store, which in ((source, "--from"), (target, "--to")):
            _refuse_served(store, which)
        try:
            steps = 2 * rows_of(source)  # each row is copied, and read back
            with tqdm(total=steps, disable=None, unit=" rows", desc="copying") as bar:
                contents = move(source, target, moved=bar.update)
        except (DBAPIError, ValueError) as error:  # the driver refuses NUL characters by the latter
            told = str(getattr(error, "orig", error)).partition("\n")[0]
            raise Mendable(f"the copy stopped: {told}; run it again to go on") from error
    for content in contents:
        sys.stdout.write(f"{content.table}: {content.rows} rows, SHA-256 {content.digest[:16]}\n")
    rows = sum(content.rows for content in contents)
    sys.stdout.write(f"copied: {rows} rows, each read back and the same\n")
    return 0


def _refuse_unknown(url: str, which: str) -> None:
    """What no setting would take is refused under the option's own name."""
    try:
        kind = make_url(url).get_backend_name()
    except ArgumentError:
        raise Mendable(f"{which} is not a database URL") from None
    if kind not in ("sqlite", "postgresql"):
        raise Mendable(f"{which} must be sqlite:///... or postgresql://...")


def _place(url: str) -> object:
    return str(Path(file_of(url)).resolve()) if url.startswith("sqlite") else make_url(url)


@contextlib.contextmanager
def _alone(url: str) -> Iterator[Store]:
    """A store that no bot of this machine serves meanwhile, not yet looked at."""
    store = Store(backend_of(url))
    mark = OneServer(store.path) if store.path else None
    try:
        if mark:
            mark.take()
        try:
            yield store
        finally:
            if mark:
                mark.release()
    finally:
        store.close()


def _refuse_served(store: Store, which: str) -> None:
    """A PostgreSQL database that a bot sends from is known by the part that it plays."""
    if store.is_sqlite:
        return
    with store.turn() as work:
        if anybody_plays(work.connection):
            raise Mendable(f"a bot serves the database of {which}: stop it first")
