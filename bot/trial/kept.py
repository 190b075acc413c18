"""What a played story leaves behind: the conversation, the pictures, the record."""

import json
from collections.abc import Sequence
from pathlib import Path

from bot.export.lines import record_lines
from bot.localtime import in_zone
from bot.mendable import Mendable
from bot.record import fold
from bot.storage.store import Store
from bot.trial.player import Player
from bot.trial.trial import Trial


def keep(folder: Path, talks: Sequence[str], trial: Trial, player: Player) -> None:
    """Write conversation.txt, a PNG for each picture sent, and record.jsonl into a folder.

    Raises Mendable where it cannot be written.
    """
    try:
        folder.mkdir(parents=True, exist_ok=True)
        (folder / "conversation.txt").write_text("\n\n".join(talks), encoding="utf-8")
        for name, picture in _pictures(trial, player).items():
            (folder / name).write_bytes(picture)
        (folder / "record.jsonl").write_text(_record(trial.url), encoding="utf-8")
    except OSError as fault:
        raise Mendable(f"cannot write to {folder}: {fault.strerror}") from fault


def _pictures(trial: Trial, player: Player) -> dict[str, bytes]:
    """Named for whom they were sent to and on which of their days."""
    found = {}
    for who, chat in player.chats.items():
        for sent in trial.server.sent_to(chat):
            if sent.picture is not None:
                day = in_zone(sent.at, player.people[who].zone)
                found[f"{who}-{day:%Y-%m-%d}.png"] = sent.picture
    return found


def _record(url: str) -> str:
    store = Store.open(url)
    with store.turn() as work:
        lines = [
            line
            for enrolled in work.people()
            for line in record_lines(
                fold(enrolled.participant, work.events(enrolled.participant.id))
            )
        ]
    store.close()
    return "".join(json.dumps(line, ensure_ascii=False) + "\n" for line in lines)
