"""One story on both databases: what is said and what is kept are the same, to the letter."""

from pathlib import Path

import pytest

from bot.replay.play import Played, play
from bot.replay.story import read_story
from bot.storage.store import Store

PNG = b"\x89PNG\r\n\x1a\n"


def told(checkout: Path) -> Played:
    lines = (checkout / "demo/story.jsonl").read_text(encoding="utf-8").splitlines()
    return play(read_story(lines), lambda _picture: PNG)


def test_two_weeks_of_three_people_are_the_same_on_both(
    checkout: Path, postgres_url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    on_sqlite = told(checkout)
    on_postgresql = Store.open(postgres_url, own_clock=False)
    monkeypatch.setattr(Store, "in_memory", lambda: on_postgresql)
    again = told(checkout)
    assert len(again.sent) > 100
    assert again.sent == on_sqlite.sent
    assert again.record == on_sqlite.record
    assert again.digests == on_sqlite.digests
