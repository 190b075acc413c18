"""`restore`: a backup becomes the database, where there is none."""

import argparse
import sys
from pathlib import Path

from tqdm import tqdm

from bot import settings
from bot.storage.backup import restore
from bot.storage.store import file_of

NAME = "restore"
HELP = "bring a backup back as the database; refuses to overwrite one"


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """From where."""
    parser.add_argument("file", metavar="FILE", type=Path, help="a file made by `backup`")


def run(args: argparse.Namespace) -> int:
    """Check the backup, copy it, say so."""
    database = file_of(settings.load().database)
    with tqdm(disable=None, unit=" pages", desc="restoring", leave=False) as bar:

        def copied(_status: int, remaining: int, total: int) -> None:
            bar.total = total
            bar.update(total - remaining - bar.n)

        restore(args.file, database, copied)
    sys.stdout.write(f"restored {args.file} as {database}\n")
    return 0
