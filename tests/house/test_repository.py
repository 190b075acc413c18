"""What must not stand in any file of the repository, and what must hold of its scripts."""

import os
import subprocess
from pathlib import Path

import pytest

# Written in parts, so that this file does not find itself.
NEVER = ("/ro" + "ot/", "/wo" + "rk/", "pypi." + "org", "pythonhosted" + ".org")


@pytest.fixture(scope="module")
def tracked(checkout: Path) -> list[Path]:
    listed = subprocess.run(
        ["git", "ls-files"], cwd=checkout, capture_output=True, text=True, check=False
    )
    if listed.returncode != 0:
        # An unpacked sdist has no list of tracked files; every checkout, CI's too, has.
        pytest.skip("not a git checkout")
    return [checkout / name for name in listed.stdout.splitlines()]


def test_no_file_names_a_place_of_one_machine(tracked: list[Path]) -> None:
    found = []
    for path in tracked:
        if path.suffix in {".png", ".pdf"} or not path.exists():
            continue
        text = path.read_text(encoding="utf-8")
        found += [f"{path.name}: {never}" for never in NEVER if never in text]
    assert not found


@pytest.mark.parametrize("script", ["deploy/setup.sh", "tests/run.sh", "demo/run.sh"])
def test_script_is_plain_shell(script: str, checkout: Path) -> None:
    read = subprocess.run(["sh", "-n", checkout / script], capture_output=True, check=False)
    assert read.returncode == 0, read.stderr


def a_machine_with(folder: Path, python: str | None) -> dict[str, str]:
    """An environment whose PATH holds the shell's tools and this `python3` alone."""
    for tool in ("sh", "dirname", "cat", "cksum"):
        where = next(
            Path(place) / tool for place in ("/usr/bin", "/bin") if (Path(place) / tool).exists()
        )
        (folder / tool).symlink_to(where)
    if python is not None:
        (folder / "python3").write_text(f"#!/bin/sh\n{python}\n", encoding="utf-8")
        (folder / "python3").chmod(0o755)
    return {"PATH": str(folder), "HOME": os.environ.get("HOME", "/")}


# A stand-in interpreter: answers to --version, and fails the questions it should fail.
TOO_OLD = 'case "$1" in --version) echo "Python 3.9.2" ;; *) exit 1 ;; esac'
WITHOUT_VENV = 'case "$2" in *ensurepip*) exit 1 ;; *) exit 0 ;; esac'


@pytest.mark.parametrize(
    ("python", "words"),
    [
        (None, "Python 3.11 or newer is needed"),
        (TOO_OLD, "Python 3.11 or newer is needed; found: Python 3.9.2"),
        (WITHOUT_VENV, "no venv module"),
    ],
    ids=["no Python", "too old", "no venv"],
)
@pytest.mark.parametrize("script", ["tests/run.sh", "demo/run.sh"])
def test_script_says_what_is_missing(
    script: str, python: str | None, words: str, checkout: Path, tmp_path: Path
) -> None:
    tree, tools = tmp_path / "tree", tmp_path / "tools"
    tools.mkdir()
    for name in ("deploy/setup.sh", script, "requirements.lock", "requirements-test.lock"):
        (tree / name).parent.mkdir(parents=True, exist_ok=True)
        (tree / name).write_bytes((checkout / name).read_bytes())
    (tree / "pyproject.toml").write_bytes((checkout / "pyproject.toml").read_bytes())
    ran = subprocess.run(
        ["/bin/sh", tree / script],
        env=a_machine_with(tools, python),
        capture_output=True,
        text=True,
        check=False,
    )
    assert ran.returncode == 1
    assert words in ran.stderr
    assert len(ran.stderr.splitlines()) == 1
    assert not (tree / ".venv").exists()
