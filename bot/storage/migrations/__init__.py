"""The history of the tables: numbered steps, run by Alembic, configured here in code."""

from pathlib import Path

from sqlalchemy import Connection, inspect, text

from bot.mendable import Mendable
from bot.storage.tables import METADATA

#: The number of the newest step; a test holds it against the files in `versions`.
HEAD = "0003"


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


def upgrade(connection: Connection) -> None:
    """Bring a database to this version, in the transaction of this connection."""
    from alembic import command  # noqa: PLC0415 - slow to load, needed once in a database's life
    from alembic.config import Config  # noqa: PLC0415

    config = Config()
    config.set_main_option("script_location", str(Path(__file__).parent).replace("%", "%%"))
    config.attributes["connection"] = connection
    command.upgrade(config, "head")
