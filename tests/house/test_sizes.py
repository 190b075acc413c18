"""Files stay small enough to be read in one sitting, or say why not."""

from pathlib import Path

LONGEST = 330  # "about 300"

# File -> why it is longer, and how long it may get. One that shrinks again has to leave the list.
REASONS: dict[str, tuple[int, str]] = {
    "bot/parser/english.py": (600, "word lists and patterns of one language, no function"),
    "bot/parser/spanish.py": (400, "word lists and patterns of one language, no function"),
    "bot/parser/times.py": (375, "one grammar of lengths of time and times on the clock"),
    "bot/storage/work.py": (400, "all that one transaction can do, in thirty short methods"),
    "bot/wiring.py": (550, "the one place where parts are put together, live and for replay"),
}


def lengths(checkout: Path) -> dict[str, int]:
    """Lines of every module but the word lists."""
    return {
        str(path.relative_to(checkout)): len(path.read_text(encoding="utf-8").splitlines())
        for room in ("bot", "scheduler", "demo")
        for path in (checkout / room).rglob("*.py")
        if "vocabulary" not in path.parts
    }


def test_no_file_is_long_without_a_reason(checkout: Path) -> None:
    long = {name: lines for name, lines in lengths(checkout).items() if lines > LONGEST}
    assert long.keys() == REASONS.keys()
    assert not [name for name, lines in long.items() if lines > REASONS[name][0]]


def test_no_module_collects_odds_and_ends(checkout: Path) -> None:
    banned = {"utils", "util", "helpers", "helper", "manager", "common", "misc"}
    named = {path.stem for room in ("bot", "scheduler") for path in (checkout / room).rglob("*.py")}
    assert not named & banned
