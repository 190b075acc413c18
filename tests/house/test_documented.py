"""Every command, setting and library is written down where a person looks for it."""

import re
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest

from bot.__main__ import COMMANDS
from bot.settings import PREFIX, Settings


@pytest.mark.parametrize("command", COMMANDS)
def test_command_has_help_and_stands_in_the_readme(command: str, checkout: Path) -> None:
    helped = subprocess.run(
        [sys.executable, "-m", "bot", command, "--help"],
        cwd=checkout,
        capture_output=True,
        text=True,
        check=False,
    )
    assert helped.returncode == 0, helped.stderr
    assert helped.stdout.startswith(f"usage: afterplate {command}")
    assert f"`{command}`" in (checkout / "README.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("setting", [PREFIX + name.upper() for name in Settings.model_fields])
def test_setting_stands_in_readme_and_example(setting: str, checkout: Path) -> None:
    for place in ("README.md", "deploy/afterplate.env.example"):
        assert setting in (checkout / place).read_text(encoding="utf-8"), place


def test_every_library_has_its_reason(checkout: Path) -> None:
    told = tomllib.loads((checkout / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    wanted = [*told["dependencies"]]
    for extra in told["optional-dependencies"].values():
        wanted += extra
    page = (checkout / "docs/libraries.md").read_text(encoding="utf-8")
    for requirement in wanted:
        name = re.split(r"[\[<>=]", requirement)[0]
        assert name in page, name


@pytest.mark.parametrize("lock", ["requirements.lock", "requirements-test.lock"])
def test_lock_pins_every_library_with_hashes_and_names_no_place(lock: str, checkout: Path) -> None:
    text = (checkout / lock).read_text(encoding="utf-8")
    assert "://" not in text
    told = tomllib.loads((checkout / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    for requirement in told["dependencies"]:
        name = re.split(r"[\[<>=]", requirement)[0]
        pinned = re.search(
            rf"^{re.escape(name)}==(\S+).*\\\n    --hash=sha256:", text, re.MULTILINE
        )
        assert pinned, name
