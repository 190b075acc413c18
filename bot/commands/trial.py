"""`try`: a chat on this machine, without an account and without a network."""

import argparse
import asyncio
import sys
from pathlib import Path

from tqdm import tqdm

from bot import logs, settings
from bot.mendable import Mendable
from bot.replay.story import BadStory, Enrol, Line, Message, Pass, read_story, story_lines
from bot.settings import Settings
from bot.trial.player import Player
from bot.trial.printed import printed
from bot.trial.trial import StoryClock, Trial

NAME = "try"
HELP = "a chat on this machine: the real bot, a stand-in API server, no account, no network"


MOST_PORT = 65_535


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """A chat page, unless a story is to be played."""
    parser.add_argument(
        "--speed",
        metavar="TIMES",
        type=_speed,
        default=1.0,
        help="how fast the bot's time runs (360: two hours in twenty seconds; default: 1)",
    )
    parser.add_argument(
        "--port",
        metavar="PORT",
        type=_port,
        help="of the chat page on this machine, 0 for any (default: 8420, or any if it is taken)",
    )
    parser.add_argument(
        "--headless",
        metavar="FILE",
        type=Path,
        help="play a story and print the conversation (default: a chat page)",
    )
    parser.add_argument(
        "--out",
        metavar="DIR",
        type=Path,
        help="with --headless: leave conversation, pictures and record there (default: nowhere)",
    )


def run(args: argparse.Namespace) -> int:
    """Play a story, or open a chat page until interrupted."""
    chosen = settings.load()
    # Told not to speak in between: the page or the conversation is what is to be seen.
    logs.set_up("error" if chosen.log == "info" else chosen.log)
    if args.headless is None:
        if args.out is not None:
            raise Mendable("--out goes with --headless")
        from bot.trial.chat_page import serve_page  # noqa: PLC0415 - not for a headless run

        asyncio.run(serve_page(chosen.model_copy(update={"clock_speed": args.speed}), args.port))
        return 0
    if args.speed != 1:
        raise Mendable("--speed goes with the chat page: a story sets its own time")
    asyncio.run(_play(_read(args.headless), chosen, args.out))
    return 0


def _read(path: Path) -> tuple[Line, ...]:
    story = read_story(story_lines(path))
    if not story:
        raise Mendable(f"{path} holds no line to play")
    return story


async def _play(story: tuple[Line, ...], chosen: Settings, out: Path | None) -> None:
    clock = StoryClock(story[0].at)
    hurried = chosen.model_copy(update={"send_per_second": 1000.0, "clock_speed": 1.0})
    async with Trial(hurried, clock=clock, dated_by=clock.now) as trial:
        player = Player(trial, clock)
        for line in tqdm(story, disable=None, unit=" lines", desc="playing", leave=False):
            await _take(player, line)
        await trial.at_rest()
        talks = [
            printed(trial.server.chats[chat], player.people[who].zone)
            for who, chat in player.chats.items()
        ]
        sys.stdout.write("\n\n".join(talks))
        if out is not None:
            from bot.trial.kept import keep  # noqa: PLC0415 - only where something is kept

            keep(out, talks, trial, player)
        failed = trial.parked()
    if failed:
        raise Mendable(f"the bot failed on {failed} of the messages above: a fault of its own")


async def _take(player: Player, line: Line) -> None:
    match line:
        case Enrol():
            await player.enrol(line.participant, line.at)
        case Message():
            try:
                await player.write(
                    line.sender,
                    line.text,
                    line.at,
                    name=line.id,
                    edits=line.edits,
                    answers=line.answers,
                    photo=line.photo,
                )
            except LookupError:
                raise BadStory(line.line, "`answers` names no message of this chat") from None
        case Pass():
            await player.pass_to(line.at)


def _port(text: str) -> int:
    if not (text.isascii() and text.isdigit() and int(text) <= MOST_PORT):
        raise argparse.ArgumentTypeError(f"{text!r} is not a port from 0 to {MOST_PORT}")
    return int(text)


def _speed(text: str) -> float:
    try:
        speed = float(text)
    except ValueError:
        speed = 0
    if not 1 <= speed <= 10_000:
        raise argparse.ArgumentTypeError(f"{text!r} is not a number from 1 to 10000")
    return speed
