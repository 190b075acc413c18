"""Nobody's first message waits for a word list: all are made before the bot serves."""

import importlib
import json
import pkgutil
import subprocess
import sys
from datetime import datetime
from pathlib import Path

from bot import parser
from bot.entries import Asked, By
from bot.parser import read
from bot.parser.ready import make_ready
from bot.units import Unit

SAYINGS = Path(__file__).parent


def lists_made() -> dict[str, int]:
    """How many lists and patterns each function of the reader has made so far."""
    made = {}
    for found in pkgutil.iter_modules(parser.__path__, "bot.parser."):
        for name, function in vars(importlib.import_module(found.name)).items():
            # One that may keep any number keeps what single messages ask of it.
            if getattr(function, "__module__", "") == found.name and hasattr(
                function, "cache_info"
            ):
                kept = function.cache_info()
                if kept.maxsize is None:
                    made[f"{found.name}.{name}"] = kept.currsize
    return made


def read_much() -> None:
    """Read every other saying of every corpus, with the words of either language first."""
    for corpus in SAYINGS.glob("*sayings.jsonl"):
        for row in map(json.loads, corpus.read_text(encoding="utf-8").splitlines()[::2]):
            said = row["in"]
            for language in ("en", "es"):
                read(
                    said["text"],
                    at=datetime.fromisoformat(said["at"]),
                    unit=Unit(said["unit"]),
                    language=language,
                    by=By(said.get("by", "self")),
                    asked=Asked(said["asked"]) if said.get("asked") else None,
                )


def left_for_later() -> dict[str, int]:
    """What reading makes after all was made ready; a message of `ready.py` should ask for it."""
    make_ready()
    before = lists_made()
    read_much()
    return {name: made - before[name] for name, made in lists_made().items() if made > before[name]}


def test_no_list_is_left_for_the_first_message_that_needs_it() -> None:
    """In a process of its own: here other tests have asked for most already."""
    told = subprocess.run(
        [sys.executable, __file__], capture_output=True, text=True, check=True, timeout=120
    )
    assert json.loads(told.stdout) == {}


if __name__ == "__main__":
    sys.stdout.write(json.dumps(left_for_later()))
