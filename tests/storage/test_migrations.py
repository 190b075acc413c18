"""A database made at once and one brought up step by step have the same tables."""

from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, create_engine, event, inspect

from bot.storage import migrations


def shape(engine: Engine) -> dict[str, Any]:
    """Columns and indexes by table."""
    seen = inspect(engine)
    found: dict[str, Any] = {}
    for table in seen.get_table_names():
        columns = [
            (column["name"], str(column["type"]), column["nullable"])
            for column in seen.get_columns(table)
        ]
        indexes = [
            (index["name"], index["column_names"], index["unique"], partial(engine, index["name"]))
            for index in seen.get_indexes(table)
        ]
        found[table] = (sorted(columns), sorted(indexes, key=str))
    return found


def partial(engine: Engine, index: str | None) -> str:
    """For which rows an index is kept."""
    with engine.connect() as connection:
        sql = connection.exec_driver_sql(
            "SELECT sql FROM sqlite_master WHERE type = 'index' AND name = ?", (index,)
        ).scalar_one()
    return str(sql).partition(" WHERE ")[2]


def begun(path: Path) -> Engine:
    engine = create_engine(f"sqlite:///{path}")

    @event.listens_for(engine, "begin")
    def _begin(connection: Connection) -> None:
        connection.exec_driver_sql("BEGIN IMMEDIATE")

    return engine


def test_made_at_once_and_step_by_step_are_the_same(tmp_path: Path) -> None:
    at_once, by_steps = begun(tmp_path / "once.db"), begun(tmp_path / "steps.db")
    with at_once.begin() as connection:
        migrations.create(connection)
    with by_steps.begin() as connection:
        migrations.upgrade(connection)
    assert shape(at_once) == shape(by_steps)
    for engine in (at_once, by_steps):
        with engine.begin() as connection:
            assert migrations.version(connection) == migrations.HEAD
        engine.dispose()
