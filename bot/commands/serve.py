"""`serve`: the bot itself."""

import argparse
import asyncio
import contextlib
import gc
import os
import signal
import sys
import threading
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from bot import __version__, logs, settings
from bot.mendable import Mendable
from bot.metrics.systemd import Notify
from bot.parser.ready import make_ready
from bot.settings import Settings

if TYPE_CHECKING:
    from bot.metrics.meter import Figures
    from bot.wiring import Service

NAME = "serve"
HELP = "serve the chats: fetch, answer, remind; ends cleanly on SIGTERM"


#: Once all is settled, nothing is waited for longer than so many seconds.
LONGEST_GOODBYE = 2.0


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """By long polling unless an address for a webhook is given."""
    parser.add_argument(
        "--webhook",
        metavar="URL",
        help="have updates posted to this address (default: fetch them by long polling)",
    )
    parser.add_argument(
        "--listen", metavar="HOST:PORT", help="where to listen for them (default: the URL's own)"
    )
    parser.add_argument(
        "--only",
        choices=("receive", "work"),
        help="with PostgreSQL: only take messages in, or only wake, draw and send "
        "(default: both); docs/many-machines.md",
    )


def run(args: argparse.Namespace) -> int:
    """Serve until SIGTERM or SIGINT."""
    chosen = settings.load()
    chosen.token()  # refused before anything is opened
    on_terminal = sys.stderr.isatty()
    # Who looks on wants quiet; a service's log is kept as before.
    quietly = on_terminal and "log" not in chosen.model_fields_set
    logs.set_up("warning" if quietly else chosen.log)
    if args.listen and not args.webhook:
        raise Mendable("--listen goes with --webhook")
    if args.only != "work":
        make_ready()
    service = _service(chosen, args)
    keep_what_is_loaded()
    asyncio.run(_serve(service, chosen, on_terminal=on_terminal))
    return 0


def keep_what_is_loaded() -> None:
    """Let the collector of garbage pass by all that stays for good: words, tables, classes.

    Each full round through them holds every thread, the event loop's too, for 60 to 100 ms.
    """
    gc.collect()
    gc.freeze()


def _service(chosen: Settings, args: argparse.Namespace) -> "Service":
    """The parts, loaded only now: they fill the room that making the word lists has left free
    (5 MB)."""
    from bot.wiring import Service  # noqa: PLC0415

    if chosen.database.startswith("sqlite"):
        if args.only:
            raise Mendable("--only is for several processes, and those need postgresql://")
        return Service(chosen, webhook=args.webhook, listen=args.listen)
    if args.only == "work" and args.webhook:
        raise Mendable("--webhook goes with taking messages in, not with --only work")
    try:
        from bot.many import Role, SharedService  # noqa: PLC0415 - most bots never meet it
    except ModuleNotFoundError as error:
        raise Mendable(f"for postgresql:// install the extra `postgres` ({error.name})") from error
    role = Role(args.only or "both")
    return SharedService(chosen, role=role, webhook=args.webhook, listen=args.listen)


async def _serve(service: "Service", chosen: Settings, *, on_terminal: bool) -> None:
    stop, ready = asyncio.Event(), asyncio.Event()
    loop = asyncio.get_running_loop()
    for wanted in (signal.SIGTERM, signal.SIGINT):
        loop.add_signal_handler(wanted, stop.set)
    systemd = Notify(os.environ)
    told = asyncio.create_task(_tell(service, chosen, ready, systemd, on_terminal=on_terminal))
    try:
        await _run(service, stop, ready)
    finally:
        told.cancel()
        await asyncio.gather(told, return_exceptions=True)
        systemd.tell("STOPPING=1")
    if stop.is_set():
        leave_soon()


def leave_soon() -> None:
    """End the process shortly, whatever still waits: all is settled and closed. A thread that
    waits for the answer of a name server would hold the end up for half a minute."""
    leave = threading.Timer(LONGEST_GOODBYE, os._exit, (0,))
    leave.daemon = True
    leave.start()


async def _run(service: "Service", stop: asyncio.Event, ready: asyncio.Event) -> None:
    """Serve until told to stop. Before it serves nothing is under way that is to be waited for,
    and an API that does not answer would be waited for long: it is broken off."""
    serving = asyncio.create_task(service.run(stop, ready=ready))
    stopped = asyncio.create_task(stop.wait())
    await asyncio.wait((serving, stopped), return_when=asyncio.FIRST_COMPLETED)
    stopped.cancel()
    if ready.is_set() or serving.done():
        await serving
        return
    serving.cancel()
    with contextlib.suppress(asyncio.CancelledError):
        await serving


async def _tell(
    service: "Service",
    chosen: Settings,
    ready: asyncio.Event,
    systemd: Notify,
    *,
    on_terminal: bool,
) -> None:
    """Once it serves: tell who started it, then systemd that it moves."""
    await ready.wait()
    systemd.tell("READY=1")
    if on_terminal:
        figures = await service.figures()
        sys.stderr.write("".join(f"{line}\n" for line in overview(chosen, figures)))
    await systemd.watch(lambda: service.is_stuck)


def overview(chosen: Settings, figures: "Figures") -> list[str]:
    """What a person wants to see when the bot begins: version, database, people, next due."""
    from sqlalchemy.engine import make_url  # noqa: PLC0415 - loaded long ago where this is shown

    people = f"{figures.participants} participant{'s' if figures.participants != 1 else ''}"
    database = make_url(chosen.database).render_as_string(hide_password=True)
    lines = [
        f"Afterplate {__version__} serves. Ctrl-C ends it.",
        f"database   {database} (version {figures.schema})",
        f"enrolled   {people}",
        f"next due   {_when(figures.next_due, figures.at)}",
    ]
    if chosen.metrics is not None:
        lines.append(f"metrics    http://{chosen.metrics}/metrics, /alive")
    if chosen.clock_speed != 1:
        lines.append(f"clock      {chosen.clock_speed:g} times as fast: for trials only")
    return lines


def _when(due: datetime | None, now: datetime) -> str:
    if due is None:
        return "nothing yet"
    if due <= now:
        return "now"
    wait = timedelta(minutes=-(-(due - now) // timedelta(minutes=1)))
    hours, minutes = divmod(wait // timedelta(minutes=1), 60)
    days, hours = divmod(hours, 24)
    parts = [(days, "d"), (hours, "h"), (minutes, "min")]
    return "in " + " ".join(f"{number} {unit}" for number, unit in parts if number)
