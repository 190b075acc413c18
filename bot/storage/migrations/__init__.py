"""The history of the tables: numbered steps, run by Alembic, configured here in code."""

from pathlib import Path

from sqlalchemy import Connection, inspect, text

from bot.mendable import Mendable
from bot.storage.tables import METADATA

#: The number of the newest step; a test holds it against the files in `versions`.
HEAD = "0004"

#: The fact that stands in a database for as long as it is not yet wholly copied.
HALF_MOVED = "half moved"


def version(connection: Connection) -> str | None:
    """The step that a database stands at; None for an empty one."""
    names = inspect(connection).get_table_names()
    if "alembic_version" not in names:
        if names:
            raise Mendable("this database was not made by this program: it holds other tables")
        return None
    found = connection.execute(text("SELECT version_num FROM alembic_version")).scalar_one()
    return str(found)


def refuse_newer(found: str | None) -> None:
    """Raise Mendable for a database made by a newer version of this program."""
    if found is not None and found > HEAD:
        raise Mendable(
            f"this database is of a newer version ({found}) than this program ({HEAD}): "
            "upgrade the program"
        )


def refuse_half_moved(connection: Connection) -> None:
    """Raise Mendable for a database into which `copy` has not brought everything."""
    mark = {"name": HALF_MOVED}
    if connection.execute(text("SELECT 1 FROM fact WHERE name = :name"), mark).one_or_none():
        raise Mendable("the copy into this database was not finished: run copy again")


def create(connection: Connection) -> None:
    """Make all tables in an empty database, as the steps would (a test compares the two).

    So the everyday start of a new bot loads no migration library, which it would keep in
    memory for as long as it serves.
    """
    METADATA.create_all(connection)
    connection.execute(
        text(
            "CREATE TABLE alembic_version (version_num VARCHAR(32) NOT NULL, "
            "CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num))"
        )
    )
    connection.execute(text("INSERT INTO alembic_version VALUES (:head)"), {"head": HEAD})


def upgrade(connection: Connection, to: str = "head") -> None:
    """Bring a database to this step, in the transaction of this connection."""
    from alembic import command  # noqa: PLC0415 - slow to load, needed once in a database's life
    from alembic.config import Config  # noqa: PLC0415

    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent).replace("%", "%%"))
    config.attributes["connection"] = connection
    command.upgrade(config, to)
