"""The commands as a person runs them: real processes, real files, exit codes, one clear line."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from bot.__main__ import COMMANDS

TOKEN = "4200:never-to-be-shown"  # noqa: S105 - opens nothing


def run(folder: Path, *arguments: str, **settings: str) -> subprocess.CompletedProcess[str]:
    environment = {name: value for name, value in os.environ.items() if "AFTERPLATE" not in name}
    environment |= {f"AFTERPLATE_{name.upper()}": value for name, value in settings.items()}
    environment["PYTHONPATH"] = str(Path(__file__).resolve().parents[2])
    return subprocess.run(
        [sys.executable, "-m", "bot", *arguments],
        cwd=folder,
        env=environment,
        capture_output=True,
        text=True,
        check=False,
        timeout=60,
    )


def one_line(result: subprocess.CompletedProcess[str], status: int = 1) -> str:
    assert result.returncode == status, result.stderr
    lines = result.stderr.strip().splitlines()
    assert len(lines) == 1, result.stderr
    assert "Traceback" not in result.stderr
    return lines[0]


def test_every_command_has_help(tmp_path: Path) -> None:
    result = run(tmp_path, "--help")
    assert result.returncode == 0
    for name in COMMANDS:
        assert name in result.stdout
    assert "--webhook" in run(tmp_path, "serve", "--help").stdout


@pytest.mark.parametrize("arguments", [(), ("dance",), ("invite", "--zone", "Moon/Sea")])
def test_wrong_usage_ends_with_two(tmp_path: Path, arguments: tuple[str, ...]) -> None:
    assert run(tmp_path, *arguments).returncode == 2


def test_serving_without_a_token_says_which_setting(tmp_path: Path) -> None:
    assert "AFTERPLATE_TELEGRAM_TOKEN is not set" in one_line(run(tmp_path, "serve"))
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    ("name", "value"),
    [
        ("clock_speed", "0.5"),
        ("clock_speed", "fast"),
        ("send_per_second", "-1"),
        ("telegram_token", "not a token 77777"),
        ("telegram_api", "example.org"),
        ("log", "loud"),
        ("database", "mysql://x/y"),
        ("webhook_secret", "with space"),
    ],
)
def test_a_wrong_setting_is_refused_by_name_and_without_its_value(
    tmp_path: Path, name: str, value: str
) -> None:
    settings = {"telegram_token": TOKEN, "telegram_api": "http://127.0.0.1:9", name: value}
    line = one_line(run(tmp_path, "serve", **settings))
    assert f"AFTERPLATE_{name.upper()}" in line
    assert "77777" not in line


def test_settings_come_from_a_file_too(tmp_path: Path) -> None:
    (tmp_path / ".env").write_text("AFTERPLATE_CLOCK_SPEED=fast\n")
    assert "AFTERPLATE_CLOCK_SPEED" in one_line(run(tmp_path, "people"))


def test_an_api_out_of_reach_is_one_clear_line_without_the_token(tmp_path: Path) -> None:
    result = run(
        tmp_path, "serve", telegram_token=TOKEN, telegram_api="http://127.0.0.1:9", log="error"
    )
    line = one_line(result)
    assert "cannot be reached" in line
    assert "never-to-be-shown" not in result.stderr + result.stdout


def test_an_invitation_is_a_code_that_opens_one_place(tmp_path: Path) -> None:
    result = run(tmp_path, "invite", "--zone", "America/Lima", "--quiet", "21:00-07:00")
    assert result.returncode == 0
    (code,) = result.stdout.split()
    assert len(code) == 14
    again = run(tmp_path, "invite")
    assert again.stdout.strip() != code
    assert code.encode() not in (tmp_path / "afterplate.db").read_bytes()


def test_people_of_an_empty_bot_are_a_line_of_names(tmp_path: Path) -> None:
    result = run(tmp_path, "people")
    assert result.stdout == "id\tstate\tjoined\tzone\tlast word\tnext due\n"


def test_erasing_asks_to_be_meant_and_names_who_is_unknown(tmp_path: Path) -> None:
    assert "nobody here has the id XYZ" in one_line(run(tmp_path, "erase", "XYZ", "--yes"))


def test_a_backup_made_comes_back(tmp_path: Path) -> None:
    run(tmp_path, "invite")
    assert run(tmp_path, "backup", "copy.db").returncode == 0
    assert "exists already" in one_line(run(tmp_path, "restore", "copy.db"))
    (tmp_path / "afterplate.db").unlink()
    for leftover in tmp_path.glob("afterplate.db-*"):
        leftover.unlink()
    assert run(tmp_path, "restore", "copy.db").returncode == 0
    assert run(tmp_path, "people").returncode == 0


def test_check_tells_each_thing_and_ends_with_one_when_something_is_wrong(tmp_path: Path) -> None:
    run(tmp_path, "migrate")
    good = run(tmp_path, "check", "--offline")
    assert good.returncode == 0, good.stderr
    assert "database: version" in good.stdout
    bad = run(tmp_path, "check", telegram_token=TOKEN, telegram_api="http://127.0.0.1:9")
    assert bad.returncode == 1
    assert "API: WRONG" in bad.stdout
    assert "never-to-be-shown" not in bad.stdout + bad.stderr


def test_check_says_that_a_database_is_damaged(tmp_path: Path) -> None:
    run(tmp_path, "migrate")
    path = tmp_path / "afterplate.db"
    content = bytearray(path.read_bytes())
    content[5000:9000] = b"\xff" * 4000
    path.write_bytes(bytes(content))
    assert "database" in one_line(run(tmp_path, "check", "--offline"))


def test_a_command_that_needs_no_database_loads_none() -> None:
    code = (
        "import sys; import bot.__main__ as m\n"
        "m.parser_of(['read']); print('sqlalchemy' in sys.modules, 'telegram' in sys.modules)"
    )
    result = subprocess.run(
        [sys.executable, "-c", code],
        cwd=Path(__file__).resolve().parents[2],
        capture_output=True,
        text=True,
        check=True,
    )
    assert result.stdout.split() == ["False", "False"]
