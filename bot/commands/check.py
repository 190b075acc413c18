"""`check`: what is wrong with this installation."""

import argparse
import asyncio
import contextlib
import sys
from collections.abc import Callable
from pathlib import Path
from zoneinfo import ZoneInfo

from bot import settings
from bot.mendable import Mendable
from bot.settings import Settings
from bot.storage import migrations, sqlite
from bot.storage.store import Store, file_of
from scheduler.clock import real_now

NAME = "check"
HELP = "say what is wrong with this installation: settings, database, clock, zones, API"

#: A clock that stands before this was never set (the year of this program).
SOONEST_YEAR = 2026


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The network can be left out."""
    parser.add_argument("--offline", action="store_true", help="do not ask the Bot API")


def run(args: argparse.Namespace) -> int:
    """One line a check; raises Mendable with the first fault at the end."""
    chosen = settings.load()
    _say("settings", "read")
    checks: list[tuple[str, Callable[[Settings], str]]] = [
        ("clock", _clock),
        ("zones", _zones),
        ("database", _database),
    ]
    if not args.offline:
        checks.append(("API", _api))
    faults = []
    for name, check in checks:
        try:
            _say(name, check(chosen))
        except Mendable as error:
            _say(name, f"WRONG: {error}")
            faults.append(f"{name}: {error}")
    if faults:
        raise Mendable("; ".join(faults))
    return 0


def _say(name: str, verdict: str) -> None:
    sys.stdout.write(f"{name}: {verdict}\n")


def _clock(chosen: Settings) -> str:
    now = real_now()
    if now.year < SOONEST_YEAR:
        raise Mendable(f"the machine's clock shows {now.year}")
    speed = "" if chosen.clock_speed == 1 else f", runs {chosen.clock_speed:g} times as fast"
    return f"{now.isoformat(timespec='seconds')}{speed}"


def _zones(_chosen: Settings) -> str:
    try:
        ZoneInfo("America/Lima")
    except Exception as error:
        raise Mendable("there is no time zone data: install tzdata") from error
    return "known"


def _database(chosen: Settings) -> str:
    if chosen.database.startswith("sqlite"):
        path = file_of(chosen.database)
        if not Path(path).exists():
            return f"none yet at {path}; `serve` makes it"
        if (wrong := sqlite.damage(path)) is not None:
            raise Mendable(f"{path} is damaged: {wrong}")
    store = Store.open(chosen.database, upgrade=False)
    with store.turn() as work:
        people, counts, parked = len(work.people()), work.outbox.counts(), work.parked()
    told = [f"version {migrations.HEAD}", f"{people} enrolled"]
    told += [f"{count} messages {state}" for state, count in sorted(counts.items())]
    if parked:
        shown = "; ".join(f"update {update}: {error}" for update, error in parked[-3:])
        told.append(f"{len(parked)} updates given up, the last ones: {shown}")
    if store.is_sqlite and (warning := sqlite.library_warning()):
        told.append(warning)
    store.close()
    return ", ".join(told)


def _api(chosen: Settings) -> str:
    from bot.chat.telegram import TelegramChat  # noqa: PLC0415 - not loaded with --offline

    async def ask() -> str:
        async with contextlib.AsyncExitStack() as stack:
            chat = await stack.enter_async_context(
                TelegramChat(chosen.token(), chosen.telegram_api)
            )
            return chat.name

    return f"reachable, the bot is @{asyncio.run(ask())}"
