"""`serve`: the bot itself."""

import argparse
import asyncio
import signal

from bot import logs, settings
from bot.wiring import Service

NAME = "serve"
HELP = "serve the chats: fetch, answer, remind; ends cleanly on SIGTERM"


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """By long polling unless an address for a webhook is given."""
    parser.add_argument("--webhook", metavar="URL", help="have updates posted to this address")
    parser.add_argument(
        "--listen", metavar="HOST:PORT", help="where to listen for them (default: the URL's own)"
    )


def run(args: argparse.Namespace) -> int:
    """Serve until SIGTERM or SIGINT."""
    chosen = settings.load()
    chosen.token()  # refused before anything is opened
    logs.set_up(chosen.log)
    if args.listen and not args.webhook:
        from bot.mendable import Mendable  # noqa: PLC0415

        raise Mendable("--listen goes with --webhook")
    service = Service(chosen, webhook=args.webhook, listen=args.listen)
    asyncio.run(_serve(service))
    return 0


async def _serve(service: Service) -> None:
    stop = asyncio.Event()
    loop = asyncio.get_running_loop()
    for wanted in (signal.SIGTERM, signal.SIGINT):
        loop.add_signal_handler(wanted, stop.set)
    await service.run(stop)
