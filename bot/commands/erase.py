"""`erase`: remove a participant and everything of theirs."""

import argparse
import contextlib
import sys

from bot import settings
from bot.mendable import Mendable
from bot.storage.store import Store

NAME = "erase"
HELP = "remove a participant and everything of theirs, for good"


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Whom, and that it is meant."""
    parser.add_argument("participant", metavar="ID", help="public id, as `people` shows it")
    parser.add_argument("--yes", action="store_true", help="it cannot be undone, and is meant")


def run(args: argparse.Namespace) -> int:
    """Erase, and say so."""
    with contextlib.closing(Store.open(settings.load().database)) as store:
        with store.turn() as work:
            known = any(one.participant.id == args.participant for one in work.people())
            if not known:
                raise Mendable(f"nobody here has the id {args.participant}")
            if not args.yes:
                raise Mendable(
                    f"this removes {args.participant} for good: add --yes if it is meant"
                )
            work.erase(args.participant)
        store.wipe_log()
    sys.stdout.write(f"{args.participant} is erased. Backups made earlier still hold them.\n")
    return 0
