"""Copies of a database under writes, and their way back."""

import sqlite3
import stat
import threading
from pathlib import Path

import pytest

from bot.mendable import Mendable
from bot.storage.backup import back_up, restore
from bot.storage.store import Store
from tests.conversation.echo import START, person, saying


def filled(path: Path, people: int = 3) -> Store:
    store = Store.open(f"sqlite:///{path}")
    with store.turn() as work:
        for number in range(people):
            work.enrol(person(f"p{number}"), START)
    return store


def count(path: Path) -> int:
    store = Store.open(f"sqlite:///{path}", upgrade=False)
    with store.turn() as work:
        number = len(work.people())
    store.close()
    return number


def test_a_copy_made_under_writes_is_whole_and_private(tmp_path: Path) -> None:
    store = filled(tmp_path / "bot.db")
    stop, written = threading.Event(), []

    def write() -> None:
        while not stop.is_set():
            with store.turn() as work:
                work.outbox.queue([saying("p0", "hi", f"k{len(written)}")], START)
            written.append(1)

    writer = threading.Thread(target=write)
    writer.start()
    try:
        while len(written) < 20:
            pass
        back_up(str(tmp_path / "bot.db"), tmp_path / "copy.db")
    finally:
        stop.set()
        writer.join()
    assert count(tmp_path / "copy.db") == 3
    assert stat.S_IMODE((tmp_path / "copy.db").stat().st_mode) == 0o600
    with store.turn() as work:
        assert len(work.outbox.pending()) == len(written)
    assert not list(tmp_path.glob("*.part"))


def test_a_backup_comes_back_as_the_database(tmp_path: Path) -> None:
    filled(tmp_path / "bot.db").close()
    back_up(str(tmp_path / "bot.db"), tmp_path / "copy.db")
    restore(tmp_path / "copy.db", str(tmp_path / "again.db"))
    assert count(tmp_path / "again.db") == 3


def test_nothing_is_overwritten(tmp_path: Path) -> None:
    filled(tmp_path / "bot.db").close()
    filled(tmp_path / "other.db", people=1).close()
    with pytest.raises(Mendable, match="exists already"):
        back_up(str(tmp_path / "bot.db"), tmp_path / "other.db")
    with pytest.raises(Mendable, match="exists already"):
        restore(tmp_path / "bot.db", str(tmp_path / "other.db"))
    assert count(tmp_path / "other.db") == 1


@pytest.mark.parametrize("what", ["damaged", "foreign", "newer", "missing"])
def test_what_is_no_backup_of_ours_is_not_restored(tmp_path: Path, what: str) -> None:
    backup = tmp_path / "backup.db"
    if what == "damaged":
        backup.write_bytes(b"SQLite format 3\0" + b"x" * 5000)
    elif what == "foreign":
        sqlite3.connect(backup).execute("CREATE TABLE recipes (name TEXT)").connection.close()
    elif what == "newer":
        filled(backup).close()
        with sqlite3.connect(backup) as connection:
            connection.execute("UPDATE alembic_version SET version_num = '9999'")
        connection.close()
    with pytest.raises(Mendable):
        restore(backup, str(tmp_path / "bot.db"))
    assert not (tmp_path / "bot.db").exists()
    assert not list(tmp_path.glob("*.part"))
