"""What is set or asked wrongly is refused by its own name, in one line."""

from typing import Any

import pytest

from bot import settings
from bot.__main__ import main
from bot.mendable import Mendable


@pytest.mark.parametrize("wrong", ["xyz", ":9090", "localhost:", "localhost:0", "localhost:70000"])
def test_a_wrong_metrics_address_is_refused(monkeypatch: pytest.MonkeyPatch, wrong: str) -> None:
    monkeypatch.setenv("AFTERPLATE_METRICS", wrong)
    with pytest.raises(Mendable, match="AFTERPLATE_METRICS"):
        settings.load()


@pytest.mark.parametrize(
    "wrong",
    [
        *("example.org", "ftp://example.org", "http://", "http://example.org:99999"),
        *("http://example.org:0", "http://example.org/path", "http://exa mple.org"),
    ],
)
def test_a_wrong_address_of_the_api_is_refused(monkeypatch: pytest.MonkeyPatch, wrong: str) -> None:
    monkeypatch.setenv("AFTERPLATE_TELEGRAM_API", wrong)
    with pytest.raises(Mendable, match="AFTERPLATE_TELEGRAM_API: must be scheme, host and port"):
        settings.load()


@pytest.mark.parametrize("right", ["http://127.0.0.1:8081", "https://[::1]:8081", "http://api/"])
def test_an_address_of_the_api_loses_its_last_stroke_only(
    monkeypatch: pytest.MonkeyPatch, right: str
) -> None:
    monkeypatch.setenv("AFTERPLATE_TELEGRAM_API", right)
    assert settings.load().telegram_api == right.rstrip("/")


@pytest.mark.parametrize("wrong", ["sqlite://", "sqlite:///", "sqlite:///:memory:"])
def test_a_database_that_would_be_gone_at_the_end_is_refused(
    monkeypatch: pytest.MonkeyPatch, wrong: str
) -> None:
    monkeypatch.setenv("AFTERPLATE_DATABASE", wrong)
    with pytest.raises(Mendable, match="AFTERPLATE_DATABASE: must name a file"):
        settings.load()


def test_days_beyond_the_calendar_are_no_fault_of_the_program(capsys: Any) -> None:
    assert main(["invite", "--valid-days", "99999999999"]) == 1
    assert "--valid-days" in capsys.readouterr().err
