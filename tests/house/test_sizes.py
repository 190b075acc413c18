"""Files stay small enough to be read in one sitting, or say why not."""

from pathlib import Path

LONGEST = 300

# File -> why it may be longer. Word lists are data and need no entry.
REASONS: dict[str, str] = {}


def test_no_file_is_long_without_a_reason(checkout: Path) -> None:
    long = {
        str(path.relative_to(checkout))
        for room in ("bot", "scheduler", "demo")
        for path in (checkout / room).rglob("*.py")
        if "vocabulary" not in path.parts
        and len(path.read_text(encoding="utf-8").splitlines()) > LONGEST
    }
    assert long == set(REASONS)


def test_no_module_collects_odds_and_ends(checkout: Path) -> None:
    banned = {"utils", "util", "helpers", "helper", "manager", "common", "misc"}
    named = {path.stem for room in ("bot", "scheduler") for path in (checkout / room).rglob("*.py")}
    assert not named & banned
