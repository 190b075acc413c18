"""The three commands that take JSON lines, given files as people's editors and machines make them:
what leaves the meaning whole is taken, the rest is refused in one line, and nothing is a fault of
the program. Real processes, since the machine's language counts."""

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

CHECKOUT = Path(__file__).resolve().parents[2]
MARK = b"\xef\xbb\xbf"
ENROL: dict[str, Any] = {
    "at": "2026-03-02T07:00:00+02:00",
    "enrol": {"id": "ana", "unit": "mg/dL", "zone": "Africa/Johannesburg"},
}
WRITE: dict[str, Any] = {"at": "2026-03-02T12:00:00+02:00", "from": "ana", "text": "118, rice"}
PASS: dict[str, Any] = {"at": "2026-03-02T15:00:00+02:00", "pass": True}
SAY: dict[str, Any] = {
    "id": "a1",
    "text": "142 antes, jamón",
    "at": "2026-03-02T12:31:00+02:00",
    "unit": "mg/dL",
    "language": "es",
}
PERSON: dict[str, Any] = {
    "participant": "ana",
    "type": "participant",
    "joined_at": "2026-03-02T07:00:00+02:00",
    "unit": "mg/dL",
    "zone": "Africa/Johannesburg",
}
MEAL: dict[str, Any] = {
    "participant": "ana",
    "type": "meal",
    "text": "rice",
    "name": None,
    "started_at": "2026-03-02T12:00:00+02:00",
}
#: A number that Python refuses to read, and brackets that it cannot follow.
MONSTERS = [b'{"at": ' + b"9" * 5000 + b"}", b"[" * 100_000]


def written(*lines: dict[str, Any]) -> bytes:
    return "".join(json.dumps(line, ensure_ascii=False) + "\n" for line in lines).encode()


class Bot:
    """Commands run in a folder of their own."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def run(
        self, *arguments: str, given: bytes = b"", **environment: str
    ) -> subprocess.CompletedProcess[bytes]:
        return subprocess.run(
            [sys.executable, "-m", "bot", *arguments],
            cwd=self.folder,
            env={"PATH": os.environ["PATH"], "PYTHONPATH": str(CHECKOUT), **environment},
            input=given,
            capture_output=True,
            check=False,
            timeout=60,
        )

    def takes(self, command: str, given: bytes) -> subprocess.CompletedProcess[bytes]:
        """The command with what is given it, by whichever way it takes it."""
        if command != "replay":
            return self.run(command, given=given)
        (self.folder / "story.jsonl").write_bytes(given)
        return self.run("replay", "story.jsonl", "--out", "played")

    def played(self, name: str) -> list[dict[str, Any]]:
        text = (self.folder / "played" / f"{name}.jsonl").read_text(encoding="utf-8")
        return [json.loads(line) for line in text.split("\n") if line]


@pytest.fixture
def bot(tmp_path: Path) -> Bot:
    return Bot(tmp_path)


WHOLE = {
    "read": written(SAY, SAY),
    "replay": written(ENROL, WRITE, PASS),
    "import": written(PERSON, MEAL),
}


@pytest.mark.parametrize("command", WHOLE)
def test_a_mark_crlf_and_blank_lines_make_no_difference(command: str, tmp_path: Path) -> None:
    (tmp_path / "plain").mkdir()
    (tmp_path / "edited").mkdir()
    plain = Bot(tmp_path / "plain").takes(command, WHOLE[command])
    edited = MARK + b"\r\n" + WHOLE[command].replace(b"\n", b"\r\n\r\n")
    other = Bot(tmp_path / "edited").takes(command, edited)
    assert (plain.returncode, plain.stderr) == (0, b"")
    assert (other.returncode, other.stdout, other.stderr) == (0, plain.stdout, b"")


@pytest.mark.parametrize("command", WHOLE)
@pytest.mark.parametrize("bad", [*MONSTERS, b'{"at": "\xff"}'], ids=["number", "nest", "bytes"])
def test_what_nobody_can_read_is_one_line_and_no_fault(command: str, bad: bytes, bot: Bot) -> None:
    ran = bot.takes(command, WHOLE[command] + bad + b"\n" + WHOLE[command])
    assert ran.returncode == 1
    assert len(ran.stderr.strip().splitlines()) == 1
    assert b"fault of the program" not in ran.stderr
    assert not (bot.folder / "played").exists()
    if command == "read":
        assert ran.stdout.count(b"\n") == 2, "what came before is answered"
    if command == "import":
        assert bot.run("export").stdout == b"", "nothing of it is kept"


@pytest.mark.parametrize("command", WHOLE)
@pytest.mark.parametrize("year", ["0001", "9999"])
def test_the_ends_of_the_calendar_are_refused(command: str, year: str, bot: Bot) -> None:
    moved = WHOLE[command].replace(b"2026-03-02", f"{year}-01-01".encode())
    ran = bot.takes(command, moved)
    assert ran.returncode == 1
    assert b"years that can be reckoned with" in ran.stderr


def test_an_instant_that_no_export_could_print_is_not_imported(bot: Bot) -> None:
    ran = bot.takes("import", written(PERSON, {**MEAL, "started_at": "9999-12-31T23:59:00-12:00"}))
    assert (ran.returncode, ran.stdout) == (1, b"")
    assert bot.run("export").stdout == b""


@pytest.mark.parametrize("language", ["C", "POSIX", "C.UTF-8"])
@pytest.mark.parametrize("encoding", ["", "latin-1", "ascii"])
def test_read_speaks_utf_8_whatever_the_machine_speaks(
    language: str, encoding: str, bot: Bot
) -> None:
    ran = bot.run("read", given=written(SAY), LC_ALL=language, PYTHONIOENCODING=encoding)
    assert json.loads(ran.stdout.decode("utf-8"))["entries"][1]["text"] == "jamón"


@pytest.mark.parametrize("separator", ["\u2028", "\u2029", "\x85"])
def test_only_a_line_feed_ends_a_line_of_a_story(separator: str, bot: Bot) -> None:
    """RFC 8259, section 7: a JSON text may hold these as they are."""
    said = {**WRITE, "text": f"118, rice{separator}and beans"}
    assert bot.takes("replay", written(ENROL, said, PASS)).returncode == 0
    assert [line["type"] for line in bot.played("record")] == ["reading", "meal", "pair"]


def test_half_a_pair_and_nul_go_no_further_than_the_door(bot: Bot) -> None:
    """A smiley cut in half, as some programs write it: the number beside it counts."""
    half = json.dumps({**WRITE, "text": "118 \ud83d before"}).encode() + b"\n"
    assert bot.takes("replay", written(ENROL) + half + written(PASS)).returncode == 0
    assert [line["value"] for line in bot.played("record")] == [118]
    meal = json.dumps({**MEAL, "text": "ri\ud83d\u0000ce"}).encode()
    assert bot.takes("import", written(PERSON) + meal).returncode == 0
    [text] = [
        line["text"]
        for line in map(json.loads, bot.run("export").stdout.splitlines())
        if line["type"] == "meal"
    ]
    assert text == "ri\ufffdce"


def test_an_id_is_given_back_as_it_was_spelt(bot: Bot) -> None:
    half = json.dumps({**SAY, "id": "\ud83d"}).encode()
    ran = bot.run("read", given=half)
    assert json.loads(ran.stdout)["id"] == "\ud83d"


@pytest.mark.parametrize("who", ["", " ", "ana\nben", "ana\tben"])
def test_an_id_that_would_break_the_list_of_people_is_refused(who: str, bot: Bot) -> None:
    ran = bot.takes("import", written({**PERSON, "participant": who}))
    assert ran.returncode == 1
    assert ran.stderr == b"afterplate: line 1: `participant` is no public id\n"


@pytest.mark.parametrize("number", [0, -1, 1.5, True, 10**30, "1", None])
def test_a_number_of_an_entry_that_no_database_holds_is_refused(number: object, bot: Bot) -> None:
    kept = {"lines": [{"id": number}]}
    ran = bot.takes("import", written({**PERSON, "kept": kept}, MEAL))
    assert ran.returncode == 1
    assert b"line 2: " in ran.stderr
