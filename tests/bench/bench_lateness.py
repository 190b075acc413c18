"""How late a prompt reaches its chat, below the cap: `python tests/bench/bench_lateness.py`.

The real `serve`, the client and loopback HTTP, in real time: prompts fall due evenly, and the
stand-in server's ledger tells when each message came in.
"""

import argparse
import asyncio
import os
import sys
import tempfile
from datetime import datetime, timedelta
from pathlib import Path

from bot.entries import Food, FoodKind, Meal
from bot.participants import Participant
from bot.record import Event
from bot.storage.store import Store
from bot.storage.work import ChatSeen
from bot.trial.stand_in import TOKEN, StandIn
from bot.turns.turn import Turn
from bot.units import Unit
from scheduler.clock import real_now

#: The first prompt falls due so long after the bot is started.
START_UP = timedelta(seconds=15)
WAIT = timedelta(minutes=120)


def enrol(server: StandIn, database: str, prompts: int, per_second: float) -> dict[int, datetime]:
    """People who began a meal nearly two hours ago; when each chat's prompt falls due."""
    first = real_now().replace(microsecond=0) + START_UP
    due: dict[int, datetime] = {}
    store = Store.open(database)
    with store.turn() as work:
        for number in range(prompts):
            at = first + timedelta(milliseconds=round(1000 * number / per_second))
            started = at - WAIT
            who = Participant(
                id=f"p{number}",
                unit=Unit.MG_DL,
                zone="UTC",
                joined_at=started,
                quiet_from=(at + timedelta(hours=6)).time(),
                quiet_to=(at + timedelta(hours=7)).time(),
            )
            chat = server.chats.open(who.id)
            work.enrol(who, started)
            work.keep_chat(ChatSeen(id=str(chat), participant=who.id), started)
            food = Food(text="rice", kind=FoodKind.STARCH)
            meal = Meal(text="rice", started_at=started, foods=(food,))
            told = Event(id=1, at=started, body=meal, message="0")
            work.save(Turn(participant=who, events=(told,), wake_at=at))
            due[chat] = at
    store.close()
    return due


async def lateness(folder: Path, prompts: int, per_second: float) -> list[float]:
    """Seconds from each prompt's due time to its arrival, smallest first."""
    database = f"sqlite:///{folder / 'bot.db'}"
    async with StandIn(real_now) as server:
        due = await asyncio.to_thread(enrol, server, database, prompts, per_second)
        process = await asyncio.create_subprocess_exec(
            *(sys.executable, "-m", "bot", "serve"),
            env={
                **os.environ,
                "AFTERPLATE_TELEGRAM_TOKEN": TOKEN,
                "AFTERPLATE_TELEGRAM_API": server.url,
                "AFTERPLATE_DATABASE": database,
                "AFTERPLATE_LOG": "error",
            },
        )
        await server.until(lambda: len(server.ledger) >= prompts, prompts / per_second + 120)
        process.terminate()
        await process.wait()
    return sorted((sent.at - due[sent.chat]) / timedelta(seconds=1) for sent in server.ledger)


def main() -> None:
    """Print the spread."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--prompts", type=int, default=1200)
    parser.add_argument("--per-second", type=float, default=20)
    args = parser.parse_args()
    with tempfile.TemporaryDirectory() as name:
        late = asyncio.run(lateness(Path(name), args.prompts, args.per_second))
    half, most = late[len(late) // 2], late[len(late) * 99 // 100]
    sys.stdout.write(
        f"{len(late)} prompts, {args.per_second:g} a second: late by {half * 1000:.0f} ms (half), "
        f"{most * 1000:.0f} ms (99 of 100), {late[-1] * 1000:.0f} ms (the last)\n"
    )


if __name__ == "__main__":
    main()
