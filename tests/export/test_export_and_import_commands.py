"""`export` and `import` as a person runs them: real processes, real files."""

import csv
import json
import os
import subprocess
import sys
from io import StringIO
from pathlib import Path

import pytest
from pypdf import PdfReader

from bot.storage.store import Store
from bot.turns.turn import Turn
from demo.diary import Diary, somebody
from scheduler.clock import real_now


def run(folder: Path, *arguments: str, given: bytes = b"") -> subprocess.CompletedProcess[bytes]:
    environment = {
        **os.environ,
        "AFTERPLATE_DATABASE": f"sqlite:///{folder}/bot.db",
        "PYTHONPATH": str(Path(__file__).resolve().parents[2]),
    }
    return subprocess.run(
        [sys.executable, "-m", "bot", *arguments],
        cwd=folder, env=environment, capture_output=True, check=False, timeout=60, input=given,
    )  # fmt: skip


def refused(result: subprocess.CompletedProcess[bytes]) -> str:
    assert result.returncode == 1
    [line] = result.stderr.decode().strip().splitlines()
    return line


def keep(folder: Path, *diaries: Diary) -> None:
    store = Store.open(f"sqlite:///{folder}/bot.db")
    with store.turn() as work:
        for diary in diaries:
            work.enrol(diary.who, real_now())
            work.save(Turn(participant=diary.who, events=tuple(diary.events)))
    store.close()


@pytest.fixture
def here(tmp_path: Path) -> Path:
    """A folder with the database of a bot that knows two people."""
    folder = tmp_path / "here"
    folder.mkdir()
    ana = Diary().meal(0, "12:30", "rice", 118, 154).caution(0, "15:00", "high")
    ben = Diary(who=somebody(id="p2")).meal(1, "12:30", "beans", 110, 141)
    keep(folder, ana, ben)
    return folder


def test_what_is_exported_is_imported_elsewhere_and_exported_the_same(
    here: Path, tmp_path: Path
) -> None:
    there = tmp_path / "there"
    there.mkdir()
    exported = run(here, "export").stdout
    assert b'"rice"' in exported
    taken = run(there, "import", given=exported)
    assert taken.returncode == 0, taken.stderr
    assert b"2 participants" in taken.stdout
    assert run(there, "export").stdout == exported


def test_nothing_is_imported_over_somebody_who_is_here(here: Path, tmp_path: Path) -> None:
    there = tmp_path / "there"
    there.mkdir()
    only_ana = run(here, "export", "--participant", "p1").stdout
    everybody = run(here, "export").stdout
    (there / "file.jsonl").write_bytes(only_ana)
    assert run(there, "import", "file.jsonl").returncode == 0
    assert "p1 is here already" in refused(run(there, "import", given=everybody))
    assert run(there, "export").stdout == only_ana


def test_a_bad_line_is_named_and_nothing_is_kept(here: Path, tmp_path: Path) -> None:
    there = tmp_path / "there"
    there.mkdir()
    exported = run(here, "export").stdout.replace(b'"moment": "after_meal"', b'"moment": "x"')
    assert "line 6: " in refused(run(there, "import", given=exported))
    assert run(there, "export").stdout == b""


@pytest.mark.parametrize("given", [b"\xff\xfe", b"{}", b"nonsense"])
def test_what_is_no_export_is_refused_in_one_line(tmp_path: Path, given: bytes) -> None:
    refused(run(tmp_path, "import", given=given))


def test_next_wake_is_worked_out_for_the_newcomer(here: Path, tmp_path: Path) -> None:
    there = tmp_path / "there"
    there.mkdir()
    run(there, "import", given=run(here, "export").stdout)
    store = Store.open(f"sqlite:///{there}/bot.db")
    with store.turn() as work:
        assert all(person.next_wake is not None for person in work.people())
    store.close()


def test_each_form_is_written_to_a_file_of_the_owners_own(here: Path) -> None:
    for form in ("jsonl", "csv", "fhir", "pdf"):
        result = run(here, "export", "--format", form, "--out", f"record.{form}")
        assert (result.returncode, result.stdout) == (0, b""), result.stderr
        assert (here / f"record.{form}").stat().st_mode & 0o777 == 0o600
    table = csv.DictReader(StringIO((here / "record.csv").read_text("utf-8-sig"), newline=""))
    assert {row["participant"] for row in table} == {"p1", "p2"}
    assert json.loads((here / "record.fhir").read_text())["resourceType"] == "Bundle"
    assert len(PdfReader(here / "record.pdf").pages) == 2


def test_nobody_of_that_id_and_no_place_to_write_are_said_in_one_line(here: Path) -> None:
    assert "nobody here has the id x" in refused(run(here, "export", "--participant", "x"))
    assert "cannot write" in refused(run(here, "export", "--out", "nowhere/file"))
    assert run(here, "export", "--format", "xml").returncode == 2
