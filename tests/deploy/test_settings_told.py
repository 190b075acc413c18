"""Every setting stands in the example with its meaning and its default, and the example works."""

import re
from pathlib import Path

import pytest
from dotenv import dotenv_values

from bot import settings
from bot.settings import PREFIX, Settings

CHECKOUT = Path(__file__).resolve().parents[2]
EXAMPLE = CHECKOUT / "deploy/afterplate.env.example"
NAMES = [PREFIX + name.upper() for name in Settings.model_fields]
#: The example tells a place where the program's default is one in the working folder, and a
#: place for what is off unless it is asked for.
SHOWN_OTHERWISE = {
    "AFTERPLATE_DATABASE",
    "AFTERPLATE_METRICS",
    "AFTERPLATE_TELEGRAM_TOKEN",
    "AFTERPLATE_TELEGRAM_API",
    "AFTERPLATE_WEBHOOK_SECRET",
}


def with_all_switched_on() -> str:
    return re.sub(rf"^#({PREFIX})", r"\1", EXAMPLE.read_text(encoding="utf-8"), flags=re.MULTILINE)


@pytest.mark.parametrize("name", NAMES)
def test_setting_stands_in_readme_and_example_below_a_comment(name: str) -> None:
    assert f"| `{name}` |" in (CHECKOUT / "README.md").read_text(encoding="utf-8")
    lines = EXAMPLE.read_text(encoding="utf-8").splitlines()
    (place,) = (at for at, line in enumerate(lines) if re.match(rf"#?{name}=", line))
    assert lines[place - 1].startswith("# "), "what does it mean?"


def test_the_example_names_no_setting_that_there_is_not() -> None:
    assert set(re.findall(rf"^#?({PREFIX}[A-Z_]+)=", EXAMPLE.read_text(), re.MULTILINE)) == set(
        NAMES
    )


def test_a_default_that_is_shown_is_the_programs(tmp_path: Path) -> None:
    (tmp_path / "all.env").write_text(with_all_switched_on(), encoding="utf-8")
    plain = Settings(_env_file=None)
    for name, shown in dotenv_values(tmp_path / "all.env").items():
        if name not in SHOWN_OTHERWISE:
            default = getattr(plain, name.removeprefix(PREFIX).lower())
            assert shown == (f"{default:g}" if isinstance(default, float | int) else default), name


def test_the_example_is_read_as_it_is_and_with_all_switched_on(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / ".env").write_bytes(EXAMPLE.read_bytes())
    assert settings.load().database.startswith("sqlite:////var/lib/afterplate/")
    assert settings.load().telegram_token is None
    (tmp_path / ".env").write_text(with_all_switched_on(), encoding="utf-8")
    assert settings.load().metrics is not None
