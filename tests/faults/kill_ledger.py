"""Kill the real process again and again while prompts fall due and people write.

The test beside it makes a short run; the long one by hand is
`PYTHONPATH=. python tests/faults/kill_ledger.py --kills 200 --prompts 10000`.
What reached the chats is compared with what was due and with what was written.
"""

import argparse
import asyncio
import os
import random
import signal
import sqlite3
import sys
import tempfile
from collections import Counter
from dataclasses import dataclass
from datetime import timedelta
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

#: People who write all the while; the others only wait for their prompt.
WRITERS = 5
#: Prompts fall due over this long.
SPREAD = timedelta(seconds=40)


@dataclass(frozen=True, kw_only=True)
class Ledger:
    """What came of it."""

    prompts_due: int
    prompts_lost: int
    prompts_lost_and_marked_unsure: int
    prompts_doubled: int
    most_copies: int
    messages_written: int
    messages_kept: int
    replies_made: int
    replies_lost: int
    replies_unsure: int
    replies_expired: int
    kills: int

    @property
    def holds(self) -> bool:
        """Nothing lost, nothing more often than its class allows."""
        return (
            self.prompts_lost == 0
            and self.replies_made == self.messages_written
            and self.replies_lost == 0
            and self.most_copies <= 2
            and self.messages_kept == self.messages_written
        )


async def run(folder: Path, *, kills: int, prompts: int, seed: int = 1) -> Ledger:
    """Serve, kill and serve again until everything due was said."""
    chance = random.Random(seed)  # noqa: S311 - when to kill, no secret
    async with StandIn(real_now) as server:
        database = f"sqlite:///{folder / 'bot.db'}"
        chats = await asyncio.to_thread(_enrol, server, database, prompts)
        writers, readers = chats[:WRITERS], chats[WRITERS:]
        writing = asyncio.create_task(_write(server, writers))
        for _ in range(kills):
            process = await _serve(server, database)
            before = len(server.ledger)
            await _progress(server, before + 1)
            await asyncio.sleep(chance.uniform(0, 0.5))
            process.send_signal(signal.SIGKILL)
            await process.wait()
        process = await _serve(server, database)
        writing.cancel()
        await server.taken(600)  # hundreds may wait, and the machine may be busy
        await _quiet(server, folder / "bot.db")
        process.send_signal(signal.SIGTERM)
        await process.wait()
        return _compare(server, folder / "bot.db", writers, readers, kills)


def _enrol(server: StandIn, database: str, prompts: int) -> list[int]:
    store = Store.open(database)
    now = real_now().replace(microsecond=0)
    chats = []
    with store.turn() as work:
        for number in range(WRITERS + prompts):
            # Meals two hours ago, spread so that prompts fall due all through the run.
            started = now - timedelta(minutes=120) + SPREAD * number / prompts
            who = Participant(
                id=f"p{number}",
                unit=Unit.MG_DL,
                zone="UTC",
                joined_at=started,
                quiet_from=(now + timedelta(hours=6)).time(),
                quiet_to=(now + timedelta(hours=7)).time(),
            )
            chats.append(server.chats.open(who.id))
            work.enrol(who, now)
            work.keep_chat(ChatSeen(id=str(chats[-1]), participant=who.id), now)
            if number >= WRITERS:
                rice = Meal(
                    text="rice",
                    started_at=started,
                    foods=(Food(text="rice", kind=FoodKind.STARCH),),
                )
                meal = Event(id=1, at=started, body=rice, message="0")
                due = started + timedelta(minutes=120)
                work.save(Turn(participant=who, events=(meal,), wake_at=due))
    store.close()
    return chats


async def _serve(server: StandIn, database: str) -> asyncio.subprocess.Process:
    return await asyncio.create_subprocess_exec(
        sys.executable,
        "-m",
        "bot",
        "serve",
        env={
            **os.environ,
            "AFTERPLATE_TELEGRAM_TOKEN": TOKEN,
            "AFTERPLATE_TELEGRAM_API": server.url,
            "AFTERPLATE_DATABASE": database,
            "AFTERPLATE_SEND_PER_SECOND": "300",
            "AFTERPLATE_LOG": "error",
        },
    )


async def _write(server: StandIn, writers: list[int]) -> None:
    number = 0
    while True:
        server.chats.say(writers[number % len(writers)], "help")
        number += 1
        await asyncio.sleep(0.5)


async def _progress(server: StandIn, length: int) -> None:
    try:
        await server.until(lambda: len(server.ledger) >= length, 30)
    except TimeoutError:
        return


async def _quiet(server: StandIn, path: Path) -> None:
    """Wait until nobody is due and nothing waits in the outbox."""
    while True:
        await asyncio.sleep(1)
        with sqlite3.connect(f"file:{path}?mode=ro", uri=True) as connection:
            (waiting,) = connection.execute(
                "SELECT count(*) FROM outbox WHERE state IN ('pending', 'claimed', 'sending')"
            ).fetchone()
            (due,) = connection.execute(
                "SELECT count(*) FROM participant WHERE next_wake_ms <= ?",
                ((real_now() + SPREAD).timestamp() * 1000,),
            ).fetchone()
        connection.close()
        if not waiting and not due:
            return


def _compare(
    server: StandIn, path: Path, writers: list[int], readers: list[int], kills: int
) -> Ledger:
    patient = set(readers)
    prompts = Counter(sent.chat for sent in server.ledger if sent.chat in patient)
    answers = Counter((str(sent.chat), sent.text) for sent in server.ledger)
    copies = Counter((sent.chat, sent.text) for sent in server.ledger if sent.chat in patient)
    written = [
        message
        for chat in writers
        for message in server.chats[chat].history.values()
        if not message["from"]["is_bot"]
    ]
    with sqlite3.connect(path) as connection:
        kept = connection.execute(
            "SELECT count(*), count(DISTINCT participant || message) FROM heard"
        ).fetchone()
        replies = connection.execute(
            "SELECT chat, text, state FROM outbox WHERE kind = 'reply'"
        ).fetchall()
        unsure = {
            int(chat)
            for (chat,) in connection.execute(
                "SELECT chat FROM outbox WHERE kind = 'prompt' AND state = 'unsure'"
            )
        }
    connection.close()
    assert kept[0] == kept[1]
    # A reply is worth sending for ten minutes; a run on a busy machine takes longer.
    certain = Counter(
        (chat, text) for chat, text, state in replies if state not in ("unsure", "expired")
    )
    return Ledger(
        prompts_due=len(readers),
        prompts_lost=sum(1 for chat in readers if not prompts[chat] and chat not in unsure),
        prompts_lost_and_marked_unsure=sum(
            1 for chat in readers if not prompts[chat] and chat in unsure
        ),
        prompts_doubled=sum(1 for number in copies.values() if number > 1),
        most_copies=max(copies.values(), default=0),
        messages_written=len(written),
        messages_kept=kept[0],
        replies_made=len(replies),
        replies_lost=(certain - answers).total(),
        replies_unsure=sum(state == "unsure" for _, _, state in replies),
        replies_expired=sum(state == "expired" for _, _, state in replies),
        kills=kills,
    )


def main() -> None:
    """The long run by hand."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--kills", type=int, default=200)
    parser.add_argument("--prompts", type=int, default=10_000)
    args = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        ledger = asyncio.run(run(Path(folder), kills=args.kills, prompts=args.prompts))
    sys.stdout.write(f"{ledger}\nholds: {ledger.holds}\n")


if __name__ == "__main__":
    main()
