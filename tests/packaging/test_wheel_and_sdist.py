"""The package as somebody gets it: built, looked into, installed elsewhere, run. No network."""

import json
import os
import re
import subprocess
import sys
import tarfile
import tomllib
from email import message_from_string
from pathlib import Path
from zipfile import ZipFile

import pytest

from bot import __version__

pytestmark = pytest.mark.slow
NAME = f"afterplate-{__version__}"


def python(*arguments: str | Path, **more: object) -> subprocess.CompletedProcess[str]:
    ran = subprocess.run(
        [sys.executable, *arguments], capture_output=True, text=True, check=False, **more
    )  # type: ignore[call-overload]
    assert ran.returncode == 0, ran.stderr
    return ran  # type: ignore[no-any-return]


def quiet_pip(*arguments: str | Path) -> None:
    """Pip without an index: whatever it would fetch makes it fail."""
    python("-m", "pip", "--disable-pip-version-check", "--no-input", *arguments, "--no-index")


@pytest.fixture(scope="module")
def sdist(checkout: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("sdist")
    python("-m", "hatchling", "build", "-t", "sdist", "-d", folder, cwd=checkout)
    return folder / f"{NAME}.tar.gz"


@pytest.fixture(scope="module")
def wheel(sdist: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Built from the sdist, as for a system's own package: nothing else of the tree is at hand."""
    folder = tmp_path_factory.mktemp("wheel")
    quiet_pip("wheel", "-q", "--no-deps", "--no-build-isolation", "-w", folder, sdist)
    return folder / f"{NAME}-py3-none-any.whl"


@pytest.fixture(scope="module")
def inside(wheel: Path) -> set[str]:
    with ZipFile(wheel) as archive:
        return set(archive.namelist())


def test_the_wheel_holds_the_program_whole(inside: set[str], checkout: Path) -> None:
    wanted = {
        str(path.relative_to(checkout))
        for room in ("bot", "scheduler")
        for path in (checkout / room).rglob("*")
        if path.is_file() and "__pycache__" not in path.parts
    }
    held = {name for name in inside if not name.startswith(f"{NAME}.dist-info/")}
    assert held == wanted
    assert any(name.startswith("bot/trial/page/") for name in held)
    assert any(name.startswith("bot/storage/migrations/versions/") for name in held)


def test_the_wheel_holds_nothing_that_is_not_for_running(inside: set[str]) -> None:
    tops = {name.split("/", maxsplit=1)[0] for name in inside}
    assert tops == {"bot", "scheduler", f"{NAME}.dist-info"}
    assert not [name for name in inside if re.search(r"(^|/)tests?(/|_)|\.(db|env|lock)$", name)]


def test_the_sdist_holds_what_it_takes_to_check_it(sdist: Path) -> None:
    with tarfile.open(sdist) as archive:
        held = {name.removeprefix(f"{NAME}/") for name in archive.getnames()}
    assert {
        *("LICENSE", "README.md", "CHANGELOG.md", "DEVELOPERS.md", "pyproject.toml", ".ci/run"),
        *("requirements.lock", "requirements-test.lock", "deploy/setup.sh", "tests/run.sh"),
        *("demo/run.sh", "demo/story.jsonl", "docs/libraries.md", "tests/conftest.py"),
    } <= held
    # (What a developer's own folder may hold, and nobody else should get.)
    assert not [
        name
        for name in held
        if re.search(r"(^|/)(\.venv|\.git|__pycache__|\.hypothesis)(/|$)|\.db$|(^|/)\.env$", name)
    ]


def test_what_the_wheel_says_of_itself(wheel: Path, checkout: Path) -> None:
    with ZipFile(wheel) as archive:
        told = message_from_string(archive.read(f"{NAME}.dist-info/METADATA").decode())
        starts = archive.read(f"{NAME}.dist-info/entry_points.txt").decode()
    project = tomllib.loads((checkout / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert told["Name"] == "afterplate"
    assert told["Version"] == __version__
    assert told["Requires-Python"] == project["requires-python"]
    assert told["License-Expression"] == project["license"]
    assert set(told.get_all("Provides-Extra", [])) == set(project["optional-dependencies"])
    assert "afterplate = bot.__main__:main" in starts


@pytest.fixture(scope="module")
def installed(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("installed")
    quiet_pip("install", "-q", "--no-deps", "--target", folder, wheel)
    return folder


def run(installed: Path, elsewhere: Path, *arguments: str, said: str = "") -> str:
    """The installed command by its name on PATH, from a folder that knows nothing of the tree."""
    ran = subprocess.run(
        ["afterplate", *arguments],
        cwd=elsewhere,
        env={
            "PATH": f"{installed / 'bin'}{os.pathsep}{os.environ['PATH']}",
            "PYTHONPATH": str(installed),
            "HOME": str(elsewhere),
        },
        input=said,
        capture_output=True,
        text=True,
        check=False,
    )
    assert ran.returncode == 0, ran.stderr
    return ran.stdout


def test_the_installed_command_is_the_installed_program(installed: Path, tmp_path: Path) -> None:
    assert run(installed, tmp_path, "--version") == f"afterplate {__version__}\n"
    where = python(
        "-c", "import bot; print(bot.__file__)", cwd=tmp_path, env={"PYTHONPATH": str(installed)}
    )
    assert where.stdout.startswith(str(installed))


def test_the_installed_command_reads_plays_and_keeps(installed: Path, tmp_path: Path) -> None:
    line = {
        "id": "a1",
        "text": "142 before, rice and beans",
        "at": "2026-03-02T12:31:00+02:00",
        "unit": "mg/dL",
        "asked": None,
    }
    read = json.loads(run(installed, tmp_path, "read", said=json.dumps(line) + "\n"))
    assert [entry["type"] for entry in read["entries"]] == ["reading", "meal"]
    story = [
        {
            "at": "2026-03-02T08:00:00+02:00",
            "enrol": {"id": "ana", "unit": "mg/dL", "zone": "Africa/Johannesburg"},
        },
        {"at": line["at"], "from": "ana", "text": line["text"]},
        {"at": "2026-03-08T18:00:00+02:00", "pass": True},
    ]
    (tmp_path / "story.jsonl").write_text("".join(json.dumps(part) + "\n" for part in story))
    run(installed, tmp_path, "replay", "story.jsonl", "--out", "played")
    sent = (tmp_path / "played/sent.jsonl").read_text(encoding="utf-8").splitlines()
    # The digest has its chart: the fonts and the drawing came with the libraries.
    assert any(json.loads(said)["picture"] for said in sent)
    run(installed, tmp_path, "migrate")
    assert "enrolled" in run(installed, tmp_path, "check", "--offline")


def test_the_version_stands_in_one_place(checkout: Path) -> None:
    told = tomllib.loads((checkout / "pyproject.toml").read_text(encoding="utf-8"))
    assert told["project"]["dynamic"] == ["version"]
    assert told["tool"]["hatch"]["version"]["path"] == "bot/__init__.py"
    assert re.fullmatch(r"\d+\.\d+\.\d+", __version__)
    elsewhere = [
        path.relative_to(checkout)
        for room in ("bot", "scheduler", "deploy", "demo")
        for path in (checkout / room).rglob("*")
        if path.is_file()
        and path.suffix not in {".pyc", ".png"}
        and path != checkout / "bot/__init__.py"
        and f'"{__version__}"' in path.read_text(encoding="utf-8")
    ]
    assert elsewhere == []


def test_the_changelog_has_a_heading_for_the_version(checkout: Path) -> None:
    text = (checkout / "CHANGELOG.md").read_text(encoding="utf-8")
    headings = re.findall(r"^## (\S+?),? ", text, re.MULTILINE)
    assert headings[0] == __version__
    assert len(set(headings)) == len(headings)
