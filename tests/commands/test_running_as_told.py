"""What is promised of every command, tried from outside: exit status, one clear line, streams
that are closed or full, files that cannot be read. In-process where that makes no difference."""

import os
import shutil
import socket
import subprocess
import sys
import tempfile
from pathlib import Path

import pytest

from bot.__main__ import main
from bot.chat.webhook import place_to_listen
from bot.mendable import Mendable
from bot.participants import Invitation, Participant, Role
from bot.storage.store import Store
from bot.units import Unit
from scheduler.clock import real_now

CHECKOUT = Path(__file__).resolve().parents[2]


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    return tmp_path


class Ran:
    """A command's exit status and what it said."""

    def __init__(self, capsys: pytest.CaptureFixture[str], *arguments: str) -> None:
        try:
            self.status = main(list(arguments))
        except SystemExit as ended:  # argparse's way
            self.status = int(str(ended.code))
        told = capsys.readouterr()
        self.out, self.error = told.out, told.err.strip()

    def mendable(self) -> str:
        """The one line of something that a person can mend."""
        assert self.status == 1, self.error
        assert len(self.error.splitlines()) == 1
        assert self.error.startswith("afterplate: ")
        return self.error.removeprefix("afterplate: ")

    def misused(self) -> str:
        """The last line of wrong usage."""
        assert self.status == 2
        assert self.out == ""
        return self.error.splitlines()[-1]


# ── invite ───────────────────────────────────────────────────────────────────


def invitation(code: str) -> Invitation:
    store = Store.open("sqlite:///afterplate.db")
    with store.turn() as work:
        kept = work.invitation(code, real_now())
    store.close()
    assert kept is not None
    return kept


def test_every_option_of_an_invitation_is_kept(capsys: pytest.CaptureFixture[str]) -> None:
    ran = Ran(
        capsys,
        *("invite", "--zone", "Europe/Rome", "--unit", "mmol/L", "--main-meal", "13:00"),
        *("--language", "es", "--may-go-low", "no", "--ketone-risk", "yes"),
        *("--quiet", "22:00-06:15", "--emergency-number", "112", "--valid-days", "7"),
    )
    assert ran.status == 0
    kept = invitation(ran.out.strip())
    assert (kept.zone, kept.unit, kept.language) == ("Europe/Rome", Unit.MMOL_L, "es")
    assert f"{kept.main_meal:%H:%M} {kept.quiet_from:%H:%M} {kept.quiet_to:%H:%M}" == (
        "13:00 22:00 06:15"
    )
    assert (kept.may_go_low, kept.ketone_risk, kept.emergency_number) == (False, True, "112")
    assert kept.role is Role.PARTICIPANT


def test_an_invitation_without_options_leaves_everything_open(
    capsys: pytest.CaptureFixture[str],
) -> None:
    kept = invitation(Ran(capsys, "invite").out.strip())
    assert (kept.zone, kept.unit, kept.main_meal, kept.may_go_low) == (None, None, None, None)
    assert invitation(Ran(capsys, "invite", "--as", "educator").out.strip()).role is Role.EDUCATOR


def test_an_invitation_has_a_link_once_the_bots_name_is_known(
    capsys: pytest.CaptureFixture[str],
) -> None:
    store = Store.open("sqlite:///afterplate.db")
    with store.turn() as work:
        work.set_fact("bot", "afterplate_bot")
    store.close()
    code, link = Ran(capsys, "invite").out.split()
    assert link == f"https://t.me/afterplate_bot?start={code}"


@pytest.mark.parametrize(
    ("option", "wrong", "words"),
    [
        ("--language", "xx", "'xx' is not spoken here: choose from en, es"),
        ("--zone", "europe/rome", "do you mean Europe/Rome?"),
        ("--zone", "lima", "do you mean America/Lima?"),
        ("--zone", "Moon/Sea", "unknown zone 'Moon/Sea', as in Europe/Rome"),
        ("--zone", "", "unknown zone ''"),
        ("--zone", "../../etc/passwd", "unknown zone"),
        ("--zone", "Europe", "unknown zone 'Europe'"),
        ("--unit", "stone", "choose from 'mg/dL', 'mmol/L'"),
        ("--main-meal", "7pm", "is not a time as in 18:30"),
        ("--main-meal", "18:30+02:00", "is not a time as in 18:30"),
        ("--main-meal", "24:00", "is not a time as in 18:30"),
        ("--quiet", "22:30", "is not a span as in 22:30-06:30"),
        ("--quiet", "22:30-25:00", "is not a time as in 18:30"),
        ("--emergency-number", "call me", "is not a telephone number"),
        ("--emergency-number", "", "is not a telephone number"),
        ("--may-go-low", "maybe", "choose from 'yes', 'no', 'unknown'"),
        ("--as", "king", "choose from 'participant', 'educator'"),
        ("--valid-days", "soon", "invalid int value: 'soon'"),
    ],
)
def test_an_invitation_that_cannot_be_meant_is_refused_kindly(
    option: str, wrong: str, words: str, capsys: pytest.CaptureFixture[str], folder: Path
) -> None:
    told = Ran(capsys, "invite", option, wrong).misused()
    assert option in told
    assert words in told
    assert list(folder.iterdir()) == []


@pytest.mark.parametrize("written", ["MG/DL", "mg/dl"])
def test_a_unit_is_known_however_its_letters_are_written(
    written: str, capsys: pytest.CaptureFixture[str]
) -> None:
    kept = invitation(Ran(capsys, "invite", "--unit", written).out.strip())
    assert kept.unit is Unit.MG_DL


def test_an_educator_whom_nobody_knows_is_pointed_out(capsys: pytest.CaptureFixture[str]) -> None:
    ran = Ran(capsys, "invite", "--educator", "X")
    assert ran.status == 0
    assert "no educator here has the id X yet" in ran.error
    assert invitation(ran.out.strip()).educator == "X"


# ── people, erase ────────────────────────────────────────────────────────────


@pytest.fixture
def ana() -> None:
    store = Store.open("sqlite:///afterplate.db")
    with store.turn() as work:
        person = Participant(
            id="ana", unit=Unit.MG_DL, zone="America/Lima", joined_at=real_now(), language="es"
        )
        work.enrol(person, real_now())
    store.close()


@pytest.mark.usefixtures("ana")
def test_people_are_ids_zones_and_times(capsys: pytest.CaptureFixture[str]) -> None:
    names, line = Ran(capsys, "people").out.splitlines()
    assert names.split("\t") == ["id", "state", "joined", "zone", "last word", "next due"]
    who, state, joined, zone, last, due = line.split("\t")
    assert (who, state, zone, last, due) == ("ana", "active", "America/Lima", "-", "-")
    assert joined.endswith("-05:00")


@pytest.mark.usefixtures("ana")
def test_nobody_is_erased_without_its_being_meant(capsys: pytest.CaptureFixture[str]) -> None:
    assert "add --yes if it is meant" in Ran(capsys, "erase", "ana").mendable()
    assert "ana" in Ran(capsys, "people").out
    assert Ran(capsys, "erase", "ana", "--yes").status == 0
    assert "ana" not in Ran(capsys, "people").out


# ── One clear line ───────────────────────────────────────────────────────────


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("export", "--participant", "nobody"), "nobody here has the id nobody"),
        (("export", "--out", "nowhere/x"), "cannot write nowhere/x: No such file or directory"),
        (("import", "nofile"), "cannot read nofile: No such file or directory"),
        (("restore", "nofile"), "there is no backup nofile"),
        (("backup", "nowhere/x.db"), "nowhere/x.db cannot be written: No such file or directory"),
        (("backup", "."), ". exists already"),
        (("replay", "nofile", "--out", "x"), "cannot read nofile: No such file or directory"),
        (("invite", "--valid-days", "0"), "--valid-days must be from 1"),
    ],
    ids=lambda value: " ".join(value) if isinstance(value, tuple) else "",
)
def test_what_a_person_can_mend_is_one_line(
    arguments: tuple[str, ...], words: str, capsys: pytest.CaptureFixture[str]
) -> None:
    Ran(capsys, "migrate")
    assert Ran(capsys, *arguments).mendable().startswith(words)


def test_a_database_in_a_folder_that_is_not_there(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("AFTERPLATE_DATABASE", "sqlite:///nowhere/bot.db")
    told = Ran(capsys, "people").mendable()
    assert told == "the database nowhere/bot.db cannot be opened: No such file or directory"


def as_nobody(folder: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    """A command as an account that may write nothing in the folder."""
    return subprocess.run(
        ["setpriv", "--reuid", "65534", "--regid", "65534", "--clear-groups", *arguments],
        cwd=folder,
        env={"PATH": os.environ["PATH"], "PYTHONPATH": str(CHECKOUT)},
        capture_output=True,
        text=True,
        check=False,
    )


@pytest.mark.skipif(
    os.geteuid() != 0 or shutil.which("setpriv") is None,
    reason="only root can become an account that may not write, by util-linux's setpriv",
)
def test_a_folder_that_is_read_only() -> None:
    with tempfile.TemporaryDirectory() as made:  # pytest's own are root's alone
        folder = Path(made)
        folder.chmod(0o755)
        Store.open(f"sqlite:///{folder}/afterplate.db").close()
        os.chown(folder / "afterplate.db", 65534, 65534)
        if as_nobody(folder, sys.executable, "-c", "import bot").returncode != 0:
            pytest.skip("another account may not run this Python")
        tried = as_nobody(folder, sys.executable, "-m", "bot", "people")
        assert tried.returncode == 1
        assert tried.stderr.strip() == (
            "afterplate: the database afterplate.db cannot be used: "
            "attempt to write a readonly database"
        )
        (folder / "afterplate.db").unlink()
        tried = as_nobody(folder, sys.executable, "-m", "bot", "invite")
        assert (tried.returncode, tried.stdout) == (1, "")
        assert "cannot be opened: Permission denied" in tried.stderr


# ── Settings ─────────────────────────────────────────────────────────────────


def test_a_settings_file_is_read_and_what_is_not_ours_in_it_left_alone(
    capsys: pytest.CaptureFixture[str], folder: Path
) -> None:
    (folder / ".env").write_text('AFTERPLATE_DATABASE="sqlite:///other.db"\nOTHER=1\n')
    assert Ran(capsys, "people").status == 0
    assert (folder / "other.db").exists()


def test_the_environment_goes_before_the_file(
    capsys: pytest.CaptureFixture[str], folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (folder / ".env").write_text("AFTERPLATE_LOG=loud\n")
    assert "AFTERPLATE_LOG" in Ran(capsys, "people").mendable()
    monkeypatch.setenv("AFTERPLATE_LOG", "INFO")
    assert Ran(capsys, "people").status == 0


def test_a_settings_file_that_is_no_text(capsys: pytest.CaptureFixture[str], folder: Path) -> None:
    (folder / ".env").write_bytes(b"\xff\xfe\x00")
    assert Ran(capsys, "people").mendable() == ".env is not UTF-8"


# ── The way in by webhook ────────────────────────────────────────────────────


@pytest.mark.parametrize(
    ("url", "listen"),
    [
        ("nonsense", None),
        ("ftp://bot.example.org/hook", None),
        ("http://bot.example.org:99999/hook", None),
        ("http://[::1/hook", None),
        ("https://bot.example.org/hook", "127.0.0.1:99999"),
        ("https://bot.example.org/hook", ":8443"),
        ("https://bot.example.org/hook", "127.0.0.1:0"),
        ("https://bot.example.org/hook", "8443"),
    ],
)
def test_a_webhook_that_cannot_be_is_refused_by_its_option(url: str, listen: str | None) -> None:
    with pytest.raises(Mendable, match="--webhook" if listen is None else "--listen"):
        place_to_listen(url, listen)


# ── Streams ──────────────────────────────────────────────────────────────────

LINE = '{"id":"a","text":"142 before, rice","at":"2026-03-02T12:31:00+02:00","unit":"mg/dL"}'


def shell(folder: Path, command: str) -> subprocess.CompletedProcess[str]:
    """A line of bash in which `bot` is the program."""
    return subprocess.run(
        ["bash", "-c", f'bot() {{ "{sys.executable}" -m bot "$@"; }}; {command}'],
        cwd=folder,
        env={"PATH": os.environ["PATH"], "PYTHONPATH": str(CHECKOUT)},
        capture_output=True,
        text=True,
        check=False,
    )


@pytest.mark.parametrize(
    ("command", "status"),
    [
        (f"yes '{LINE}' | head -5000 | bot read | head -1; exit ${{PIPESTATUS[2]}}", 0),
        ("bot read <&-", 0),
        ("bot people >&-", 0),
        ("bot people 2>&-", 0),
        ("bot dance >&- 2>&-", 2),
    ],
    ids=["reader left", "no input", "no output", "no errors", "neither"],
)
def test_a_stream_that_is_closed_is_no_fault(command: str, status: int, folder: Path) -> None:
    ran = shell(folder, command)
    assert (ran.returncode, ran.stderr) == (status, "")


def test_nothing_is_written_into_the_database_instead_of_a_closed_stream(folder: Path) -> None:
    assert shell(folder, "bot migrate >&- 2>&- <&-").returncode == 0
    content = (folder / "afterplate.db").read_bytes()
    assert content.startswith(b"SQLite format 3")
    assert b"the database is of version" not in content


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no /dev/full on this system")
def test_a_full_disk_is_one_clear_line(folder: Path) -> None:
    ran = shell(folder, "bot people > /dev/full")
    assert (ran.returncode, ran.stderr) == (1, "afterplate: No space left on device\n")


def test_sigterm_ends_it_while_it_waits_for_an_api_that_never_answers(folder: Path) -> None:
    with socket.create_server(("127.0.0.1", 0)) as silent:
        process = subprocess.Popen(
            [sys.executable, "-m", "bot", "serve"],
            cwd=folder,
            env={
                "PATH": os.environ["PATH"],
                "PYTHONPATH": str(CHECKOUT),
                "AFTERPLATE_TELEGRAM_TOKEN": "1:a",
                "AFTERPLATE_TELEGRAM_API": f"http://127.0.0.1:{silent.getsockname()[1]}",
            },
            stderr=subprocess.PIPE,
            text=True,
        )
        silent.settimeout(30)
        asked, _ = silent.accept()  # it has begun to ask
        process.terminate()
        try:
            _, log = process.communicate(timeout=10)
        finally:
            process.kill()
            asked.close()
    assert (process.returncode, log) == (0, "")


def test_a_port_in_use_is_told_with_its_setting(folder: Path) -> None:
    with socket.create_server(("127.0.0.1", 0)) as taken:
        place = f"127.0.0.1:{taken.getsockname()[1]}"
        ran = shell(folder, f"AFTERPLATE_METRICS={place} AFTERPLATE_TELEGRAM_TOKEN=1:a bot serve")
    assert ran.returncode == 1
    assert ran.stderr.startswith(f"afterplate: AFTERPLATE_METRICS: cannot listen at {place}: ")
    assert len(ran.stderr.splitlines()) == 1
