"""`replay`: the whole bot over a file of messages, on virtual time."""

import argparse
from pathlib import Path

from tqdm import tqdm

from bot.chart import draw
from bot.replay.play import play
from bot.replay.story import read_story, story_lines

NAME = "replay"
HELP = "play a file of timed messages and write down what the bot would have sent"


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare the command's arguments."""
    parser.add_argument("story", type=Path, metavar="STORY.jsonl", help="the messages, in order")
    parser.add_argument("--out", type=Path, required=True, metavar="DIR", help="where to write")


def run(args: argparse.Namespace) -> int:
    """Play the story; nothing is written unless all of it could be played."""
    story = read_story(story_lines(args.story))
    # No bar where nobody watches (disable=None): only a terminal shows it.
    play(tqdm(story, disable=None, unit="line"), draw).write(args.out)
    return 0
