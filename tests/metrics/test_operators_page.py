"""The operators' page tells every metric, every line of `check`, and no other."""

import re
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.messages import Kind
from bot.metrics.meter import Figures, Heard, Loop, Meter
from bot.metrics.prometheus import PrometheusMeter, StateCollector
from bot.storage.letters import End


@pytest.fixture(scope="module")
def page(checkout: Path) -> str:
    return (checkout / "docs/operators.md").read_text(encoding="utf-8")


def test_every_metric_stands_there_and_no_other(page: str) -> None:
    meter = PrometheusMeter(lambda: 0.0)
    at = datetime(2026, 3, 2, tzinfo=UTC)
    meter.registry.register(StateCollector(meter, lambda: Figures(at=at, next_due=at)))
    text = meter.text("")[0].decode()
    given = set(re.findall(r"^# TYPE (afterplate_\w+) ", text, re.MULTILINE))
    told = set(re.findall(r"`(afterplate_\w+)`", page))
    assert told == given


def test_every_word_of_a_label_stands_there(page: str) -> None:
    for word in (*Heard, *Kind, *Loop):
        assert f"`{word.value}`" in page, word
    for end in End:
        assert f"`{end.value}`" in page, end


def test_every_line_of_check_stands_there(page: str, capsys: pytest.CaptureFixture[str]) -> None:
    from bot.__main__ import main  # noqa: PLC0415

    main(["check", "--offline"])
    names = [line.partition(":")[0] for line in capsys.readouterr().out.splitlines()]
    rows = re.findall(r"^\| `(\w+)` \| ", page.partition("## What `check` says")[2], re.MULTILINE)
    assert rows[: len(names) + 1] == [*names, "API"]


def test_a_meter_that_forgets_costs_nothing_to_tell() -> None:
    meter = Meter(lambda: 0.0)
    meter.heard(Heard.ANSWERED)
    meter.fell_short("Unsure")
    meter.parked_before(3)
    assert meter.overdue() == dict.fromkeys(Loop)
