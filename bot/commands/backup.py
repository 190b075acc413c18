"""`backup`: a consistent copy while the bot serves."""

import argparse
import sys
from pathlib import Path

from bot import settings
from bot.storage.backup import back_up
from bot.storage.store import file_of

NAME = "backup"
HELP = "copy the database to a file, consistently, while the bot serves"


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Where to."""
    parser.add_argument("file", metavar="FILE", type=Path, help="where to; must not exist yet")


def run(args: argparse.Namespace) -> int:
    """Copy, check the copy, say so."""
    back_up(file_of(settings.load().database), args.file)
    sys.stdout.write(f"backed up to {args.file}; it holds health data, keep it safe\n")
    return 0
