"""`people`: who is enrolled. No values."""

import argparse
import sys
from datetime import datetime

from bot import settings
from bot.localtime import in_zone
from bot.storage.store import Store
from bot.storage.work import Enrolled

NAME = "people"
HELP = "list who is enrolled by public id: joined, zone, last word, next due"


def add_arguments(_parser: argparse.ArgumentParser) -> None:
    """Nothing to choose."""


def run(_args: argparse.Namespace) -> int:
    """One line a person, tabs between, a line of names first."""
    store = Store.open(settings.load().database)
    with store.turn() as work:
        people = work.people()
    store.close()
    sys.stdout.write("id\tstate\tjoined\tzone\tlast word\tnext due\n")
    for person in people:
        sys.stdout.write("\t".join(_line(person)) + "\n")
    return 0


def _line(person: Enrolled) -> tuple[str, ...]:
    who = person.participant
    return (
        who.id,
        who.state.value,
        _local(who.joined_at, who.zone),
        who.zone,
        _local(person.last_word, who.zone),
        _local(person.next_wake, who.zone),
    )


def _local(moment: datetime | None, zone: str) -> str:
    return "-" if moment is None else in_zone(moment, zone).isoformat(timespec="minutes")
