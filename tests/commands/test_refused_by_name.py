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


def test_days_beyond_the_calendar_are_no_fault_of_the_program(capsys: Any) -> None:
    assert main(["invite", "--valid-days", "99999999999"]) == 1
    assert "--valid-days" in capsys.readouterr().err
