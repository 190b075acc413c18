"""What a person sees who starts the bot, or waits for a long command, at a terminal."""

import asyncio
import json
import os
import signal
import subprocess
import sys
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from bot import __version__
from bot.commands.serve import overview
from bot.metrics.meter import Figures
from bot.participants import Participant
from bot.settings import Settings
from bot.storage import migrations
from bot.storage.store import Store
from bot.trial.stand_in import TOKEN, StandIn
from bot.units import Unit
from scheduler.clock import real_now
from tests.commands.on_a_terminal import CHECKOUT, on_a_terminal

AT = datetime(2026, 3, 2, 12, tzinfo=UTC)
STORY = [
    {"at": "2026-03-02T08:00:00+00:00", "enrol": {"id": "ana", "unit": "mg/dL", "zone": "UTC"}},
    {"at": "2026-03-02T12:31:00+00:00", "from": "ana", "text": "142 before, rice and beans"},
    {"at": "2026-03-02T14:31:00+00:00", "pass": True},
]


@pytest.mark.parametrize(
    ("due", "words"),
    [
        (None, "nothing yet"),
        (AT, "now"),
        (AT - timedelta(days=2), "now"),
        (AT + timedelta(seconds=1), "in 1 min"),
        (AT + timedelta(hours=2), "in 2 h"),
        (AT + timedelta(days=1, hours=3, minutes=59, seconds=30), "in 1 d 4 h"),
        (AT + timedelta(days=6, minutes=5), "in 6 d 5 min"),
    ],
)
def test_next_due_is_told_as_a_wait(due: datetime | None, words: str) -> None:
    lines = overview(Settings(_env_file=None), Figures(at=AT, next_due=due, schema="0003"))
    assert lines[3] == f"next due   {words}"


def test_the_overview_shows_no_password() -> None:
    chosen = Settings(
        _env_file=None,
        database="postgresql://bot:very-secret@db/afterplate",
        metrics="127.0.0.1:9108",
        clock_speed=360,
    )
    told = "\n".join(overview(chosen, Figures(at=AT, participants=1, schema="0003")))
    assert "very-secret" not in told
    assert "1 participant\n" in told
    assert "http://127.0.0.1:9108/metrics" in told
    assert "360 times" in told


@pytest.mark.live
async def test_serve_tells_once_and_is_quiet_then(tmp_path: Path) -> None:
    async with StandIn(real_now) as server:
        settings = {"telegram_token": TOKEN, "telegram_api": server.url}
        with on_a_terminal(tmp_path, "serve", **settings) as seen:
            await _in_thread(seen.until, lambda text: "next due" in text)
            told = seen.text
            assert f"Afterplate {__version__} serves" in told
            assert f"sqlite:///afterplate.db (version {migrations.HEAD})" in told
            assert "0 participants" in told
            chat = server.chats.open("Efua")
            server.chats.say(chat, "hello")
            await server.sent(chat, 1, seconds=20)
            seen.process.send_signal(signal.SIGTERM)
            assert await _in_thread(seen.ended) == 0
            rest = seen.text.removeprefix(told).strip().splitlines()
            assert "{" not in seen.text  # no structured line
            assert len(rest) <= 1


@pytest.mark.live
async def test_a_log_level_that_was_asked_for_is_kept_at_a_terminal(tmp_path: Path) -> None:
    async with StandIn(real_now) as server:
        settings = {"telegram_token": TOKEN, "telegram_api": server.url, "log": "info"}
        with on_a_terminal(tmp_path, "serve", **settings) as seen:
            await _in_thread(seen.until, lambda text: '"event": "serving"' in text)
            seen.process.send_signal(signal.SIGTERM)
            assert await _in_thread(seen.ended) == 0


async def _in_thread(call: Callable[..., object], *arguments: object) -> object:
    return await asyncio.to_thread(call, *arguments)


def quietly(folder: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    environment = {name: value for name, value in os.environ.items() if "AFTERPLATE" not in name}
    return subprocess.run(
        [sys.executable, "-m", "bot", *arguments],
        cwd=folder,
        env={**environment, "PYTHONPATH": str(CHECKOUT)},
        capture_output=True,
        text=True,
        check=False,
    )


@pytest.mark.slow
def test_long_commands_show_progress_at_a_terminal_and_nothing_elsewhere(tmp_path: Path) -> None:
    (tmp_path / "story.jsonl").write_text("".join(json.dumps(line) + "\n" for line in STORY))
    for arguments, word in (
        (("replay", "story.jsonl", "--out", "played"), "line"),
        (("import", "record.jsonl"), "reading"),
        (("export", "--out", "out.jsonl"), "people"),
        (("restore", "copy.db"), "restoring"),
    ):
        if arguments[0] == "import":
            (tmp_path / "record.jsonl").write_text(exported(tmp_path / "other"))
        if arguments[0] == "restore":
            assert quietly(tmp_path, "backup", "copy.db").returncode == 0
            for leftover in tmp_path.glob("afterplate.db*"):
                leftover.unlink()
        with on_a_terminal(tmp_path, *arguments) as seen:
            assert seen.ended() == 0, seen.text
            assert word in seen.text, arguments
    assert quietly(tmp_path, "export", "--out", "again.jsonl").stderr == ""
    assert quietly(tmp_path, "replay", "story.jsonl", "--out", "again").stderr == ""


def exported(folder: Path) -> str:
    """A record of somebody, as the command writes it."""
    folder.mkdir()
    store = Store.open(f"sqlite:///{folder / 'afterplate.db'}")
    with store.turn() as work:
        work.enrol(Participant(id="ana", unit=Unit.MG_DL, zone="UTC", joined_at=AT), AT)
    store.close()
    return quietly(folder, "export").stdout
