"""`migrate`: bring the database to this version."""

import argparse
import sys

from bot import settings
from bot.storage import migrations
from bot.storage.store import Store

NAME = "migrate"
HELP = "bring the database to this version of the program"


def add_arguments(_parser: argparse.ArgumentParser) -> None:
    """Nothing to choose."""


def run(_args: argparse.Namespace) -> int:
    """Upgrade; nothing happens where it is of this version already."""
    database = settings.load().database
    Store.open(database, upgrade=True).close()
    if not database.startswith("sqlite"):
        from bot.many import prepare  # noqa: PLC0415 - most bots never meet it

        prepare(database)
    sys.stdout.write(f"the database is of version {migrations.HEAD}\n")
    return 0
