"""A consistent copy of an SQLite database while the bot serves, and its way back."""

import os
import sqlite3
from collections.abc import Callable
from pathlib import Path

from bot.mendable import Mendable
from bot.storage import migrations, sqlite

#: Told after each step of a copy: SQLite's status, pages that remain, pages in all.
Copied = Callable[[int, int, int], object]
#: Pages a step of a copy from a file that nobody writes to.
STEP = 1000


def back_up(database: str, target: Path) -> None:
    """Copy a database in one step, check the copy, then give it its name.

    Read-only beside a serving bot. Raises Mendable if there is no database, the target exists
    or the copy is not whole.
    """
    if not Path(database).exists():
        raise Mendable(f"there is no database {database}")
    if target.exists():
        raise Mendable(f"{target} exists already")
    _copy(database, target)


def restore(backup: Path, database: str, copied: Copied | None = None) -> None:
    """Bring a backup back where no database is yet. Raises Mendable if it cannot be, or while a
    bot serves the file of that name, moved away though it may be."""
    if not backup.exists():
        raise Mendable(f"there is no backup {backup}")
    mark = sqlite.OneServer(database)
    mark.take()
    try:
        _restore(backup, database, copied)
    finally:
        mark.release()


def _restore(backup: Path, database: str, copied: Copied | None) -> None:
    for path in (database, f"{database}-wal"):
        if Path(path).exists():
            raise Mendable(f"{path} exists already: move it away first")
    if (wrong := sqlite.damage(str(backup))) is not None:
        raise Mendable(f"{backup} is damaged: {wrong}")
    _see_that_it_is_ours(backup)
    _copy(str(backup), Path(database), copied)


def _copy(source: str, target: Path, copied: Copied | None = None) -> None:
    unfinished = target.with_name(target.name + ".part")
    try:
        os.close(os.open(unfinished, os.O_RDWR | os.O_CREAT | os.O_TRUNC, 0o600))
        # One step: a copy in several begins anew with each write of somebody else's.
        origin = sqlite3.connect(f"file:{source}?mode=ro", uri=True)
        copy = sqlite3.connect(unfinished)
        try:
            origin.backup(copy, pages=STEP if copied else -1, progress=copied)
            copy.execute("PRAGMA journal_mode = DELETE")
        finally:
            copy.close()
            origin.close()
        if (wrong := sqlite.damage(str(unfinished))) is not None:
            raise Mendable(f"the copy is not whole: {wrong}")
        unfinished.replace(target)
    except OSError as error:
        raise Mendable(f"{target} cannot be written: {error.strerror}") from error
    except sqlite3.Error as error:
        raise Mendable(f"{target} cannot be written: {error}") from error
    finally:
        unfinished.unlink(missing_ok=True)


def _see_that_it_is_ours(backup: Path) -> None:
    connection = sqlite3.connect(f"file:{backup}?mode=ro", uri=True)
    try:
        (found,) = connection.execute("SELECT version_num FROM alembic_version").fetchone()
    except (sqlite3.Error, TypeError) as error:
        raise Mendable(f"{backup} is no backup of this program") from error
    finally:
        connection.close()
    migrations.refuse_newer(str(found))
