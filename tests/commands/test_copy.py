"""`copy` as a person runs it: everything arrives, it goes on, and it never overwrites."""

import os
import sqlite3
import subprocess
import sys
from pathlib import Path

import pytest


def run(folder: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    environment = {name: value for name, value in os.environ.items() if "AFTERPLATE" not in name}
    environment["PYTHONPATH"] = str(Path(__file__).resolve().parents[2])
    return subprocess.run(
        [sys.executable, "-m", "bot", *arguments],
        cwd=folder,
        env=environment,
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )


def copy(folder: Path) -> subprocess.CompletedProcess[str]:
    return run(folder, "copy", "--from", "sqlite:///afterplate.db", "--to", "sqlite:///there.db")


def change(path: Path, statement: str) -> None:
    connection = sqlite3.connect(path)
    with connection:
        connection.execute(statement)
    connection.close()


def codes(path: Path) -> list[tuple[object, ...]]:
    connection = sqlite3.connect(path)
    rows = connection.execute("SELECT * FROM invitation ORDER BY code_hash").fetchall()
    connection.close()
    return rows


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    for _ in range(2):
        assert run(tmp_path, "invite").returncode == 0
    return tmp_path


def test_every_row_arrives_and_a_stopped_copy_goes_on(folder: Path) -> None:
    first = copy(folder)
    assert first.returncode == 0, first.stderr
    assert "copied: 2 rows" in first.stdout
    wanted = codes(folder / "afterplate.db")
    assert len(wanted) == 2
    assert codes(folder / "there.db") == wanted
    change(folder / "there.db", "DELETE FROM invitation WHERE rowid = 1")
    assert copy(folder).returncode == 0
    assert codes(folder / "there.db") == wanted


@pytest.mark.parametrize(
    ("statement", "told"),
    [
        ("UPDATE invitation SET body = '{}'", "another row of `invitation`"),
        ("INSERT INTO fact VALUES ('bot', 'other')", "that --from does not have"),
    ],
)
def test_another_bots_rows_are_never_overwritten(folder: Path, statement: str, told: str) -> None:
    assert copy(folder).returncode == 0
    change(folder / "there.db", statement)
    refused = copy(folder)
    assert refused.returncode == 1
    assert told in refused.stderr
    assert len(refused.stderr.strip().splitlines()) == 1


def test_nothing_to_copy_or_onto_itself_is_refused(folder: Path) -> None:
    for source, target in (("none.db", "there.db"), ("afterplate.db", "./afterplate.db")):
        refused = run(
            folder, "copy", "--from", f"sqlite:///{source}", "--to", f"sqlite:///{target}"
        )
        assert refused.returncode == 1
        assert len(refused.stderr.strip().splitlines()) == 1
        assert not (folder / "none.db").exists()
