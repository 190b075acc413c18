"""What all tests share: the hypothesis profiles, and a place without a person's own settings."""

import os
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings

from tests.postgres import database_url, empty_postgres_url, postgres_server, postgres_url

#: Fixtures for everybody (see tests/postgres.py).
__all__ = ["database_url", "empty_postgres_url", "postgres_server", "postgres_url"]

# `ci` gives the same examples in every run; `dev` looks for new ones.
settings.register_profile(
    "ci",
    derandomize=True,
    deadline=None,
    max_examples=100,
    database=None,
    suppress_health_check=[HealthCheck.too_slow],
)
settings.register_profile("dev", deadline=None, max_examples=500)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "ci"))


@pytest.fixture(autouse=True)
def no_settings_of_this_machine(monkeypatch: pytest.MonkeyPatch) -> None:
    """A token or database in the developer's environment never reaches a test."""
    for name in list(os.environ):
        if name.startswith("AFTERPLATE_"):
            monkeypatch.delenv(name)


@pytest.fixture(scope="session")
def checkout() -> Path:
    """The root of the checkout."""
    return Path(__file__).resolve().parent.parent
