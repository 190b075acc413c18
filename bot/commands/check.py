"""`check`: what is wrong with this installation, in words for whoever has to mend it."""

import argparse
import asyncio
import email.utils
import os
import shutil
import socket
import sys
import urllib.error
import urllib.request
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from email.message import Message
from pathlib import Path
from zoneinfo import ZoneInfo

from pydantic_settings import DotEnvSettingsSource, EnvSettingsSource
from sqlalchemy.exc import DBAPIError

from bot import __version__, settings
from bot.mendable import Mendable
from bot.settings import Settings
from bot.storage import migrations, sqlite
from bot.storage.store import Store, file_of
from scheduler.clock import real_now

NAME = "check"
HELP = "say what is wrong with this installation: settings, clock, zones, disk, database, API"

#: A clock that stands before this was never set (the year of this program).
SOONEST_YEAR = 2026
#: A prompt may be early or late by so much before anybody minds; more is a clock that is wrong.
CLOCK_OFF = timedelta(seconds=30)

#: Zones whose rules changed, an instant after that, and the offset since: the newest release of
#: the zone database that each one needs (its file NEWS: 2022f, 2024a, 2025a).
CHANGED = (
    ("America/Mexico_City", datetime(2024, 7, 1), -6, "2022f"),  # noqa: DTZ001 - local time
    ("Asia/Almaty", datetime(2024, 7, 1), 5, "2024a"),  # noqa: DTZ001 - local time
    ("America/Asuncion", datetime(2026, 7, 1), -3, "2025a"),  # noqa: DTZ001 - local time
)

#: What listens on this machine is asked without a proxy.
_DIRECTLY = urllib.request.build_opener(urllib.request.ProxyHandler({}))

#: Less free space than this, or than the database once more for its backup, is nearly full.
FREE_BYTES = 200_000_000


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The network can be left out."""
    parser.add_argument(
        "--offline", action="store_true", help="leave out what needs the network: the Bot API"
    )


def run(args: argparse.Namespace) -> int:
    """One line a check; raises Mendable with all faults at the end."""
    chosen = settings.load()
    checks: list[tuple[str, Callable[[Settings], str]]] = [
        ("settings", _settings),
        ("clock", _clock),
        ("zones", _zones),
        ("disk", _disk),
        ("database", _database),
        ("metrics", _metrics),
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
    sys.stdout.flush()  # the next check may wait for the network


def _settings(chosen: Settings) -> str:
    told = [f"read, version {__version__}"]
    if chosen.telegram_token is None:
        told.append("no AFTERPLATE_TELEGRAM_TOKEN yet: `serve` needs it")
    file = Path(str(Settings.model_config["env_file"]))
    if file.exists() and os.access(file, os.R_OK) and file.stat().st_mode & 0o007:
        told.append(f"others can read {file}, which holds secrets: chmod 600 {file}")
    told += [f"{name} is no setting: is it misspelt?" for name in _unknown()]
    if chosen.clock_speed != 1:
        told.append(f"the bot's clock runs {chosen.clock_speed:g} times as fast: for trials only")
    return "; ".join(told)


def _unknown() -> list[str]:
    """Names with our prefix, in the environment or the file, that no setting has: a misspelt one
    leaves its default in force, and nothing else would tell."""
    known = {settings.PREFIX + name.upper() for name in Settings.model_fields}
    sources = (EnvSettingsSource(Settings), DotEnvSettingsSource(Settings))
    named = {name.upper() for source in sources for name in source.env_vars}
    return sorted(name for name in named - known if name.startswith(settings.PREFIX))


def _clock(_chosen: Settings) -> str:
    now = real_now()
    if now.year < SOONEST_YEAR:
        raise Mendable(f"the machine's clock shows {now.year}: set it, and keep it set by NTP")
    return now.isoformat(timespec="seconds")


def _zones(_chosen: Settings) -> str:
    for name, after, hours, release in CHANGED:
        try:
            offset = ZoneInfo(name).utcoffset(after)
        except Exception as error:
            raise Mendable(
                "there is no usable time zone data: install the system's tzdata, or that of pip"
            ) from error
        if offset != timedelta(hours=hours):
            raise Mendable(
                f"the time zone data is older than release {release} ({name} is wrong), and "
                "prompts would come an hour off: bring the system's tzdata up to date"
            )
    return "known, and not out of date"


def _disk(chosen: Settings) -> str:
    if not chosen.database.startswith("sqlite"):
        return "the database has its own"
    path = Path(file_of(chosen.database))
    folder = path.resolve().parent
    if not folder.is_dir():
        raise Mendable(f"there is no folder {folder} for the database")
    if not os.access(folder, os.W_OK | os.X_OK):
        raise Mendable(f"the folder {folder} cannot be written, and the database's log lies there")
    free = shutil.disk_usage(folder).free
    size = path.stat().st_size if path.exists() else 0
    if free < max(FREE_BYTES, size):
        raise Mendable(
            f"nearly full: {_megabytes(free)} free at {folder}, the database has "
            f"{_megabytes(size)}; without room the bot takes no messages"
        )
    return f"{_megabytes(free)} free at {folder}"


def _megabytes(count: int) -> str:
    return f"{count / 1e6:,.0f} MB"


def _database(chosen: Settings) -> str:
    if chosen.database.startswith("sqlite"):
        path = file_of(chosen.database)
        if not Path(path).exists():
            return f"none yet at {path}; `serve` makes it"
        if not os.access(path, os.R_OK | os.W_OK):
            raise Mendable(f"{path} is another account's: this one may not read and write it")
        sqlite.refuse_damaged(path)
    store = Store.open(chosen.database, upgrade=False)
    try:
        return ", ".join(_told(store))
    except DBAPIError as error:
        raise Mendable(store.fault(error)) from error
    finally:
        store.close()


def _told(store: Store) -> list[str]:
    with store.turn() as work:
        people, counts, parked = len(work.people()), work.outbox.counts(), work.parked()
    told = [f"version {migrations.HEAD}", f"{people} enrolled"]
    told += [f"{count} messages {state}" for state, count in sorted(counts.items())]
    if parked:
        shown = "; ".join(f"update {update}: {error}" for update, error in parked[-3:])
        told.append(f"{len(parked)} updates given up, the last ones: {shown}")
    return told + store.told()


def _metrics(chosen: Settings) -> str:
    place = chosen.metrics
    if place is None:
        return "not asked for"
    host, _, port = place.rpartition(":")
    try:
        with socket.create_server((host.strip("[]"), int(port)), family=_family(host)):
            return f"{place} is free for them"
    except OSError as error:
        reason = error.strerror or type(error).__name__
    return _as_served(place, reason)


def _family(host: str) -> socket.AddressFamily:
    return socket.AF_INET6 if ":" in host else socket.AF_INET


def _as_served(place: str, reason: str) -> str:
    """What a serving bot says there of itself; raises Mendable where it is none of ours."""
    try:
        with _DIRECTLY.open(f"http://{place}/alive", timeout=15) as answer:
            ours, words = _is_ours(answer.headers), ""
    except urllib.error.HTTPError as refused:
        ours, words = _is_ours(refused.headers), refused.read(1000).decode(errors="replace")
    except OSError:
        ours, words = False, ""
    if not ours:
        raise Mendable(f"AFTERPLATE_METRICS: nothing can listen at {place}: {reason}")
    if words:
        raise Mendable(f"the bot that serves is not well: {'; '.join(words.splitlines())}")
    return f"a bot serves and answers at {place}: alive"


def _is_ours(headers: Message) -> bool:
    return str(headers.get("Server", "")).startswith("afterplate")


def _api(chosen: Settings) -> str:
    from bot.chat.telegram import TelegramChat  # noqa: PLC0415 - not loaded with --offline

    async def ask() -> str:
        async with TelegramChat(chosen.token(), chosen.telegram_api) as chat:
            return chat.name

    name = asyncio.run(ask())
    off = _clock_off(chosen.telegram_api)
    if off is not None and abs(off) > CLOCK_OFF:
        way = "ahead of" if off > timedelta(0) else "behind"
        raise Mendable(
            f"reachable, but this machine's clock is {abs(off).total_seconds():.0f} s {way} the "
            "Bot API's: set it, and keep it set by NTP"
        )
    return f"reachable, the bot is @{name}"


def _clock_off(api: str) -> timedelta | None:
    """By how much this machine's clock is ahead of the API server's; None if it shows none."""
    try:
        with urllib.request.urlopen(api, timeout=10) as answer:  # noqa: S310 - from the settings
            shown = answer.headers.get("Date")
    except urllib.error.HTTPError as refused:
        shown = refused.headers.get("Date")
    except OSError:
        return None
    try:
        return real_now() - email.utils.parsedate_to_datetime(shown or "").astimezone(UTC)
    except ValueError:
        return None
