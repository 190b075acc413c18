"""The clinicians' page says what the code does."""

import importlib.util
import re
from pathlib import Path

import pytest

from bot.caution.thresholds import SEND_ORDER
from tests.caution.decision_table import rows

THRESHOLDS = Path("bot") / "caution" / "thresholds.py"


@pytest.fixture(scope="module")
def safety(checkout: Path) -> str:
    return (checkout / "docs" / "safety.md").read_text(encoding="utf-8")


def test_every_level_has_its_row_in_order(safety: str) -> None:
    named = re.findall(r"^\| `(\w+)` \|", safety, re.MULTILINE)
    assert named == [level.value for level in SEND_ORDER]


def test_every_limit_stands_in_its_row(safety: str) -> None:
    for row in rows():
        line = next(line for line in safety.splitlines() if line.startswith(f"| `{row.level}` |"))
        if row.level in ("repeated_high", "repeated_low", "symptoms"):
            continue  # their limits are those of high and low
        for number in re.findall(r"\d+(?:\.\d)?", f"{row.mg_dl} {row.mmol_l}"):
            assert number in line, (row.level, number)


def test_every_test_named_in_the_hazards_exists(safety: str, checkout: Path) -> None:
    named = re.findall(r"`(tests/[\w/]+\.py)::([\w.]+)`", safety)
    assert len(named) > 20
    for path, name in named:
        holder = _load(checkout / path)
        for part in name.split("."):
            assert hasattr(holder, part), f"{path}::{name}"
            holder = getattr(holder, part)


def test_every_limit_in_the_code_has_its_source_beside_it(checkout: Path) -> None:
    """A limit without a source says that it has none."""
    text = (checkout / THRESHOLDS).read_text(encoding="utf-8")
    limits = re.findall(r"((?:^#:.*\n)+)^([A-Z_]+) = .*(?:\d|timedelta)", text, re.MULTILINE)
    assert len(limits) > 15
    bare = set(re.findall(r"^([A-Z_]+) = ", text, re.MULTILINE)) - {name for _, name in limits}
    assert bare <= {"SEND_ORDER"}
    source = r"ADA|project rule|common practice|leaflet"
    for remark, name in limits:
        seven_days = name == "SEVEN_DAYS"  # a definition: the hours of seven days
        assert seven_days or re.search(source, remark), name


def _load(path: Path) -> object:
    spec = importlib.util.spec_from_file_location(f"named_{path.stem}", path)
    if spec is None or spec.loader is None:
        raise FileNotFoundError(path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module
