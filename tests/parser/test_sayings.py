"""The first corpus, row by row in groups; and floors for all, so that a slip is seen."""

import importlib.util
import json
import sys
from pathlib import Path
from types import ModuleType

import pytest

HERE = Path(__file__).parent


def _report() -> ModuleType:
    spec = importlib.util.spec_from_file_location("sayings_report", HERE / "report.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module


REPORT = _report()


def _outcomes(name: str) -> list:
    lines = (HERE / name).read_text(encoding="utf-8").splitlines()
    return REPORT.outcomes(json.loads(line) for line in lines if line.strip())


# Floors: what is reached. The reader has been mended against all of them by now.
@pytest.mark.parametrize(
    ("corpus", "right", "wrong", "missed"),
    [
        ("sayings.jsonl", 1.0, 0, 0),
        ("second_sayings.jsonl", 0.99, 0.001, 0),
        ("third_sayings.jsonl", 0.98, 0.003, 0),
        ("fourth_sayings.jsonl", 0.99, 0.002, 0),
        ("fifth_sayings.jsonl", 0.99, 0.002, 0),
        ("sixth_sayings.jsonl", 0.98, 0.002, 0),
        ("seventh_sayings.jsonl", 0.95, 0.002, 0),
        ("eighth_sayings.jsonl", 0.98, 0.002, 0),
        ("ninth_sayings.jsonl", 0.98, 0.002, 0),
        ("tenth_sayings.jsonl", 0.96, 0.002, 0),
        ("eleventh_sayings.jsonl", 0.99, 0.002, 0),
    ],
)
def test_corpus(corpus: str, right: float, wrong: float, missed: int) -> None:
    outcomes = _outcomes(corpus)
    count = len(outcomes)
    assert sum(outcome.right for outcome in outcomes) >= right * count
    assert sum(outcome.wrong_reading for outcome in outcomes) <= wrong * count
    assert sum(outcome.missed_symptom for outcome in outcomes) <= missed
