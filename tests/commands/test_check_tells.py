"""`check`, thing by thing: what is wrong is told in words, and the way to mend it."""

import json
import os
import shutil
import sqlite3
import threading
from collections import namedtuple
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from email.utils import format_datetime
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from importlib.resources import files
from pathlib import Path
from zoneinfo import ZoneInfo, reset_tzpath

import pytest

from bot.__main__ import main
from bot.commands import check
from bot.metrics.endpoint import Answer, listening
from bot.storage import migrations
from scheduler.clock import real_now
from tests.metrics.asking import free_place

TOKEN = "4200:never-to-be-shown"  # noqa: S105 - opens nothing
Usage = namedtuple("Usage", "total used free")


class Checked:
    """The command's lines by what they are about, its exit status, its line of error."""

    def __init__(self, capsys: pytest.CaptureFixture[str], *arguments: str) -> None:
        self.status = main(["check", *arguments])
        told = capsys.readouterr()
        self.error = told.err.strip()
        self.lines = dict(line.split(": ", 1) for line in told.out.splitlines())

    def wrong(self, name: str) -> str:
        """What is said of the only thing that is wrong."""
        assert self.status == 1
        words = self.lines[name].removeprefix("WRONG: ")
        assert self.error == f"afterplate: {name}: {words}"
        assert [line for line, told in self.lines.items() if told.startswith("WRONG")] == [name]
        return words


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    return tmp_path


@contextmanager
def api(*, known: bool = True, shows: datetime | None = None) -> Iterator[str]:
    """The one call of the Bot API that `check` makes, and its clock."""

    class Api(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            self.do_POST()

        def do_POST(self) -> None:
            me = {"id": 4200, "is_bot": True, "first_name": "A", "username": "afterplate_bot"}
            told = {"ok": True, "result": me}
            if not known:
                told = {"ok": False, "error_code": 401, "description": "Unauthorized"}
            content = json.dumps(told).encode()
            self.send_response(200 if known else 401)
            self.send_header("Content-Length", str(len(content)))
            self.end_headers()
            self.wfile.write(content)

        def date_time_string(self, timestamp: object = None) -> str:
            return format_datetime(shows or real_now(), usegmt=True)

        def log_message(self, *_: object) -> None:
            pass

    server = ThreadingHTTPServer(("127.0.0.1", 0), Api)
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    try:
        yield f"http://127.0.0.1:{server.server_port}"
    finally:
        server.shutdown()
        server.server_close()
        thread.join()


def test_a_fresh_installation_is_told_what_is_still_to_come(
    capsys: pytest.CaptureFixture[str], folder: Path
) -> None:
    told = Checked(capsys, "--offline")
    assert told.status == 0
    assert "no AFTERPLATE_TELEGRAM_TOKEN yet" in told.lines["settings"]
    assert told.lines["database"] == "none yet at afterplate.db; `serve` makes it"
    assert list(folder.iterdir()) == []  # looking changes nothing
    assert list(told.lines) == ["settings", "clock", "zones", "disk", "database", "metrics"]


def test_no_token(capsys: pytest.CaptureFixture[str]) -> None:
    assert Checked(capsys).wrong("API") == "AFTERPLATE_TELEGRAM_TOKEN is not set"


def test_a_token_of_the_wrong_form_is_refused_by_name(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("AFTERPLATE_TELEGRAM_TOKEN", "hunter2")
    assert main(["check"]) == 1
    told = capsys.readouterr().err
    assert "AFTERPLATE_TELEGRAM_TOKEN: does not look like a bot token" in told
    assert "hunter2" not in told


def test_a_token_that_nobody_knows(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    with api(known=False) as address:
        monkeypatch.setenv("AFTERPLATE_TELEGRAM_TOKEN", TOKEN)
        monkeypatch.setenv("AFTERPLATE_TELEGRAM_API", address)
        told = Checked(capsys)
    assert told.wrong("API") == "the Bot API does not know AFTERPLATE_TELEGRAM_TOKEN"
    assert "never-to-be-shown" not in told.error


@pytest.mark.parametrize(
    ("ahead", "words"),
    [
        (timedelta(seconds=10), None),
        (timedelta(minutes=5), "clock is 300 s behind the Bot API's"),
        (timedelta(hours=-1), "clock is 3600 s ahead of the Bot API's"),
    ],
)
def test_a_clock_that_is_off_is_seen_by_the_servers(
    ahead: timedelta,
    words: str | None,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    now = real_now().replace(microsecond=0)
    monkeypatch.setattr(check, "real_now", lambda: now)
    with api(shows=now + ahead) as address:
        monkeypatch.setenv("AFTERPLATE_TELEGRAM_TOKEN", TOKEN)
        monkeypatch.setenv("AFTERPLATE_TELEGRAM_API", address)
        told = Checked(capsys)
    if words is None:
        assert told.status == 0
        assert told.lines["API"] == "reachable, the bot is @afterplate_bot"
    else:
        assert words in told.wrong("API")


def test_a_clock_that_was_never_set(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(check, "real_now", lambda: datetime(1970, 1, 1, tzinfo=UTC))
    assert "the machine's clock shows 1970" in Checked(capsys, "--offline").wrong("clock")


def test_an_api_out_of_reach(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.chat.telegram.START_TRIES", 1)
    monkeypatch.setenv("AFTERPLATE_TELEGRAM_TOKEN", TOKEN)
    monkeypatch.setenv("AFTERPLATE_TELEGRAM_API", f"http://{free_place()}")
    assert "the Bot API cannot be reached" in Checked(capsys).wrong("API")


@pytest.fixture
def zone_data(tmp_path: Path) -> Iterator[Path]:
    """A zone database of our own, asked before all others."""
    place = tmp_path / "zones"
    place.mkdir()
    reset_tzpath([str(place)])
    ZoneInfo.clear_cache()
    yield place
    reset_tzpath()
    ZoneInfo.clear_cache()


def test_zone_data_that_is_out_of_date(capsys: pytest.CaptureFixture[str], zone_data: Path) -> None:
    # As it was before 2022: Mexico City an hour ahead in summer, like New Orleans.
    known = Path(os.environ.get("TZDIR", "/usr/share/zoneinfo")) / "America/Chicago"
    if not known.exists():
        known = Path(str(files("tzdata.zoneinfo.America") / "Chicago"))
    (zone_data / "America").mkdir()
    shutil.copy(known, zone_data / "America/Mexico_City")
    told = Checked(capsys, "--offline").wrong("zones")
    assert "older than release 2022f (America/Mexico_City is wrong)" in told


def test_zone_data_that_is_broken(capsys: pytest.CaptureFixture[str], zone_data: Path) -> None:
    (zone_data / "America").mkdir()
    (zone_data / "America/Mexico_City").write_bytes(b"nonsense")
    assert "no usable time zone data" in Checked(capsys, "--offline").wrong("zones")


def test_a_disk_that_is_nearly_full(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(check.shutil, "disk_usage", lambda _: Usage(10**12, 10**12, 50_000_000))
    assert "nearly full: 50 MB free" in Checked(capsys, "--offline").wrong("disk")


def test_a_folder_that_is_not_there(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, folder: Path
) -> None:
    monkeypatch.setenv("AFTERPLATE_DATABASE", f"sqlite:///{folder}/nowhere/bot.db")
    assert "there is no folder" in Checked(capsys, "--offline").wrong("disk")


def test_a_folder_that_cannot_be_written(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    # Asked of the system in its own words, since whoever runs the tests may be allowed anything.
    monkeypatch.setattr(check.os, "access", lambda _path, mode: mode == os.R_OK)
    assert "cannot be written" in Checked(capsys, "--offline").wrong("disk")


def change(folder: Path, statement: str) -> None:
    connection = sqlite3.connect(folder / "afterplate.db")
    with connection:
        connection.execute(statement)
    connection.close()


@pytest.mark.parametrize(
    ("version", "words"),
    [
        ("0001", f"is of version 0001, this program needs {migrations.HEAD}: run migrate first"),
        ("9999", f"is of a newer version (9999) than this program ({migrations.HEAD}): upgrade"),
    ],
    ids=["old", "newer"],
)
def test_a_database_of_another_version(
    version: str, words: str, capsys: pytest.CaptureFixture[str], folder: Path
) -> None:
    assert main(["migrate"]) == 0
    capsys.readouterr()
    change(folder, f"UPDATE alembic_version SET version_num = '{version}'")  # noqa: S608
    assert words in Checked(capsys, "--offline").wrong("database")


def test_a_database_that_is_damaged(capsys: pytest.CaptureFixture[str], folder: Path) -> None:
    (folder / "afterplate.db").write_bytes(b"these are no pages of a database" * 400)
    told = Checked(capsys, "--offline").wrong("database")
    assert "damaged" in told
    assert "restore" in told


def test_somebody_elses_database(capsys: pytest.CaptureFixture[str], folder: Path) -> None:
    change(folder, "CREATE TABLE songs (title TEXT)")
    assert "was not made by this program" in Checked(capsys, "--offline").wrong("database")


def test_a_postgresql_of_this_version(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, postgres_url: str
) -> None:
    monkeypatch.setenv("AFTERPLATE_DATABASE", postgres_url)
    told = Checked(capsys, "--offline")
    assert told.status == 0, told.error
    assert told.lines["database"].startswith(f"version {migrations.HEAD}, 0 enrolled")
    assert told.lines["disk"] == "the database has its own"


def test_a_postgresql_without_tables(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, empty_postgres_url: str
) -> None:
    monkeypatch.setenv("AFTERPLATE_DATABASE", empty_postgres_url)
    assert "run migrate first" in Checked(capsys, "--offline").wrong("database")


def test_a_postgresql_out_of_reach(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    place = free_place()
    monkeypatch.setenv("AFTERPLATE_DATABASE", f"postgresql://bot:never-to-be-shown@{place}/bot")
    told = Checked(capsys, "--offline")
    assert "Connection refused" in told.wrong("database")
    assert "never-to-be-shown" not in told.error


def test_metrics_whose_place_is_free(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    place = free_place()
    monkeypatch.setenv("AFTERPLATE_METRICS", place)
    assert Checked(capsys, "--offline").lines["metrics"] == f"{place} is free for them"


def test_metrics_whose_place_another_program_has(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    with api() as address:
        monkeypatch.setenv("AFTERPLATE_METRICS", address.removeprefix("http://"))
        told = Checked(capsys, "--offline").wrong("metrics")
    assert "AFTERPLATE_METRICS: nothing can listen at" in told
    assert "in use" in told


@pytest.mark.parametrize(
    ("status", "content", "words"),
    [
        (200, b"alive\n", "a bot serves and answers at {place}: alive"),
        (503, b"alarm: not begun yet\n", "WRONG: the bot that serves is not well: alarm: not"),
    ],
)
def test_metrics_of_the_bot_that_serves_here(
    status: int,
    content: bytes,
    words: str,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    place = free_place()
    answer = Answer(status=HTTPStatus(status), content=content)
    monkeypatch.setenv("AFTERPLATE_METRICS", place)
    with listening(place, {"/alive": lambda _accept: answer}):
        told = Checked(capsys, "--offline")
    assert told.lines["metrics"].startswith(words.format(place=place))


def test_a_file_of_secrets_that_others_can_read(
    capsys: pytest.CaptureFixture[str], folder: Path
) -> None:
    file = folder / ".env"
    file.write_text(f"AFTERPLATE_TELEGRAM_TOKEN={TOKEN}\n")
    file.chmod(0o644)
    told = Checked(capsys, "--offline")
    assert told.status == 0
    assert told.lines["settings"].endswith(
        "others can read .env, which holds secrets: chmod 600 .env"
    )


def test_several_faults_are_told_together(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch, folder: Path
) -> None:
    monkeypatch.setattr(check.shutil, "disk_usage", lambda _: Usage(1, 1, 0))
    (folder / "afterplate.db").write_bytes(b"x" * 8000)
    told = Checked(capsys, "--offline")
    assert told.status == 1
    assert told.error.startswith("afterplate: disk: nearly full")
    assert "; database: " in told.error
    assert len(told.error.splitlines()) == 1


def test_a_misspelt_setting_is_told_by_its_name_and_not_by_its_value(
    capsys: pytest.CaptureFixture[str], folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("AFTERPLATE_DATABSE", "sqlite:///secret.db")
    (folder / ".env").write_text("AFTERPLATE_SPEED=2\nOTHER=1\nAFTERPLATE_LOG=info\n")
    (folder / ".env").chmod(0o600)
    told = Checked(capsys, "--offline").lines["settings"]
    assert "AFTERPLATE_DATABSE is no setting: is it misspelt?" in told
    assert "AFTERPLATE_SPEED is no setting: is it misspelt?" in told
    assert "secret" not in told
    assert "OTHER" not in told
    assert "AFTERPLATE_LOG" not in told
