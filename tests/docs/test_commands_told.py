"""Every command that README or a page tells people to type is one that works.

Commands of the program that end by themselves are run, each in a folder of its own with a small
database; those that serve until they are stopped, or need a network, are read by the program's
own parser (they are run in tests/trial, and tests/many). Scripts have to be there and be read by
the shell that they are for.
"""

import re
import shlex
import subprocess
import sys
from io import StringIO
from pathlib import Path

import pytest

from bot.__main__ import COMMANDS, main, parser_of
from bot.storage.store import Store
from bot.turns.turn import Turn
from demo.diary import Diary
from scheduler.clock import real_now

CHECKOUT = Path(__file__).parents[2]
PAGES = [
    CHECKOUT / "README.md",
    CHECKOUT / "DEVELOPERS.md",
    *sorted((CHECKOUT / "docs").glob("*.md")),
]
#: What stands for something of the reader's own, and what it is in these tests.
STANDS_FOR = {
    "ID": "p1",
    "FILE": "file",
    "STORY.jsonl": "story.jsonl",
    "DIR": "out",
    "CORPUS": "tests/parser/sayings.jsonl",
}
#: These go on until they are stopped, or need another machine.
ONLY_READ = {"serve", "try", "copy"}
OURS = re.compile(r"(?:(?:\.venv/bin/)?python -m bot|(?:\.venv/bin/)?afterplate) ([a-z].*)")
SCRIPT = re.compile(r"(?:PYTHONPATH=\. |WRITE_DOCS=1 )?(?:\.venv/bin/)?(sh|bash|python) (\S+)")


def told() -> list[tuple[str, str]]:
    """Each line of a block, and each piece of inline code, with the page it is on."""
    found = []
    for page in PAGES:
        text = re.sub(r" *\\\n *", " ", page.read_text(encoding="utf-8"))
        rows = re.findall(r"^    (\S.*)$", text, re.MULTILINE)
        for block in re.findall(r"^```\w*\n(.*?)^```", text, re.MULTILINE | re.DOTALL):
            rows += block.splitlines()
        rows = [re.split(r"\s{3,}|\s+#", row)[0] for row in rows]  # what it does stands behind it
        inline = re.sub(r"^```.*?^```", "", text, flags=re.MULTILINE | re.DOTALL)
        rows += [" ".join(code.split()) for code in re.findall(r"`([^`]+)`", inline)]
        found += [(page.name, row.strip()) for row in rows]
    return found


PROGRAM = sorted({(match[1], page) for page, row in told() if (match := OURS.fullmatch(row))})
SCRIPTS = sorted({(row, page) for page, row in told() if SCRIPT.match(row)})


def words(command: str) -> list[str]:
    return [STANDS_FOR.get(word, word) for word in shlex.split(command)]


def test_the_pages_do_tell_commands() -> None:
    assert {shlex.split(command)[0] for command, _ in PROGRAM} <= set(COMMANDS)
    assert len(PROGRAM) >= 5
    assert len(SCRIPTS) >= 5


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder with a database of one person, a story, and a line to read."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("AFTERPLATE_DATABASE", "sqlite:///afterplate.db")
    diary = Diary().meal(0, "12:30", "rice", 118, 154)
    store = Store.open("sqlite:///afterplate.db")
    with store.turn() as work:
        work.enrol(diary.who, real_now())
        work.save(Turn(participant=diary.who, events=tuple(diary.events)))
    store.close()
    (tmp_path / "story.jsonl").write_text(
        '{"at": "2026-03-02T07:00:00+02:00", "enrol": '
        '{"id": "ana", "unit": "mg/dL", "zone": "Africa/Johannesburg"}}\n',
        encoding="utf-8",
    )
    return tmp_path


@pytest.mark.parametrize(("command", "page"), PROGRAM)
def test_a_command_told_on_a_page_works(
    command: str, page: str, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    name, *rest = words(command)
    monkeypatch.setattr(sys, "stdin", StringIO())
    if name in ONLY_READ:
        assert parser_of([name]).parse_args([name, *rest])
        return
    if name == "restore":
        assert main(["backup", rest[0]]) == 0
        for there in folder.glob("afterplate.db*"):
            there.unlink()
    if name == "import":
        assert main(["export", "--out", rest[0]]) == 0
        (folder / "afterplate.db").unlink()
    # `check` ends with 1 where something is wrong, and here there is no token.
    assert main([name, *rest]) in ({0, 1} if name == "check" else {0})


@pytest.mark.parametrize(("row", "page"), SCRIPTS)
def test_a_script_told_on_a_page_is_there(row: str, page: str) -> None:
    shell, path = SCRIPT.match(row).groups()  # type: ignore[union-attr]
    if path == "-m":
        module = row.split(" -m ")[1].split(maxsplit=1)[0]
        found = subprocess.run(
            [sys.executable, "-c", f"import importlib.util as u; assert u.find_spec({module!r})"],
            cwd=CHECKOUT, check=False,
        )  # fmt: skip
        assert found.returncode == 0, row
        return
    assert (CHECKOUT / path).is_file(), row
    if shell != "python":
        assert subprocess.run([shell, "-n", CHECKOUT / path], check=False).returncode == 0
