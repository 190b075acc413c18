"""The rooms: who may import whom, and that the rules cover every room there is."""

import subprocess
import sys
import tomllib
from pathlib import Path
from typing import Any

import pytest

PURE_FLOORS_BEGIN = "turns"


@pytest.fixture(scope="module")
def rules(checkout: Path) -> list[dict[str, Any]]:
    told = tomllib.loads((checkout / "pyproject.toml").read_text(encoding="utf-8"))
    contracts: list[dict[str, Any]] = told["tool"]["importlinter"]["contracts"]
    return contracts


def floors(rules: list[dict[str, Any]]) -> list[list[str]]:
    """The rooms of each floor, from the top."""
    marks = str.maketrans(dict.fromkeys("()|:", " "))
    return [floor.translate(marks).split() for floor in rules[0]["layers"]]


def test_import_rules_are_kept(checkout: Path) -> None:
    found = subprocess.run(
        [Path(sys.executable).with_name("lint-imports"), "--no-logo"],
        cwd=checkout,
        capture_output=True,
        text=True,
        check=False,
    )
    assert found.returncode == 0, found.stdout


@pytest.fixture(scope="module")
def rooms(checkout: Path) -> set[str]:
    """The rooms that are built."""
    return {
        path.stem
        for path in (checkout / "bot").iterdir()
        if path.suffix == ".py" or (path / "__init__.py").exists()
    } - {"__init__"}


def test_every_room_stands_on_a_floor(rules: list[dict[str, Any]], rooms: set[str]) -> None:
    assert rooms <= {room for floor in floors(rules) for room in floor}


def test_pure_rule_names_every_room_from_turns_down(
    rules: list[dict[str, Any]], rooms: set[str]
) -> None:
    names = floors(rules)
    first = next(at for at, floor in enumerate(names) if PURE_FLOORS_BEGIN in floor)
    pure = {f"bot.{room}" for floor in names[first:] for room in floor if room in rooms}
    assert set(rules[1]["source_modules"]) == pure


@pytest.mark.parametrize(
    ("where", "planted"),
    [
        ("bot/glucose/planted.py", "import time"),
        ("bot/caution/planted.py", "import sqlalchemy"),
        ("bot/words/planted.py", "from scheduler import clock"),
        ("bot/parser/planted.py", "from bot.record import fold"),
        ("bot/planning/planted.py", "from bot.words import amounts"),
        ("bot/replay/planted.py", "from scheduler.in_process import InProcessEngine"),
        ("bot/trial/planted.py", "from bot.replay import story"),
        ("scheduler/planted.py", "from bot import units"),
        ("bot/unplaced.py", "x = 1"),
    ],
)
def test_planted_fault_is_caught(where: str, planted: str, checkout: Path, tmp_path: Path) -> None:
    for name in ("bot", "scheduler", "pyproject.toml"):
        (tmp_path / name).symlink_to(checkout / name)
    root = tmp_path / where.split("/", maxsplit=1)[0]
    root.unlink()
    _copy_of_links(checkout / where.split("/", maxsplit=1)[0], root)
    (tmp_path / where).write_text(planted + "\n", encoding="utf-8")
    found = subprocess.run(
        [Path(sys.executable).with_name("lint-imports"), "--no-logo", "--no-cache"],
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
    )
    assert found.returncode == 1
    assert "planted" in found.stdout or "unplaced" in found.stdout


def _copy_of_links(source: Path, target: Path) -> None:
    """The same folders, each file a link to the real one."""
    target.mkdir()
    for path in source.iterdir():
        if path.is_dir():
            _copy_of_links(path, target / path.name)
        elif path.suffix == ".py":
            (target / path.name).symlink_to(path)
