"""docs/educators.md holds to the code: texts that it gives are understood, its figures are true."""

import re
from pathlib import Path

import pytest

from bot.educator import alerts, bounds, group, roster
from bot.programme.strips import KEPT
from bot.turns.teaching_reading import wished
from bot.words.educator import Wish
from bot.words.language import ENGLISH


@pytest.fixture
def page(checkout: Path) -> str:
    return (checkout / "docs/educators.md").read_text(encoding="utf-8")


def test_every_text_of_the_table_is_a_wish_and_every_wish_is_there(page: str) -> None:
    table = page.split("## What you can text")[1].split("\n## ", maxsplit=1)[0]
    told = [text for row in table.splitlines()[5:] for text in re.findall(r"`([^`]+)`", row)]
    assert len(told) > 20
    found = set()
    for text in told:
        if text == "Ana":  # a name alone: the record
            found.add(Wish.SHOW)
            continue
        wish = wished(text, ENGLISH.educator)
        assert wish is not None, text
        found.add(wish.wish)
    found |= {Wish.HELP, Wish.INVITE, Wish.ACCEPT, Wish.DECLINE}  # told elsewhere on the page
    assert found == set(Wish)


def test_every_reason_of_the_roster_stands_there(page: str) -> None:
    table = page.split("## The roster")[1].split("\n## ", maxsplit=1)[0]
    rows = [row for row in table.splitlines() if row.startswith("| ")][2:]
    tiers = {"safety": roster.Tier.SAFETY, "silence": roster.Tier.SILENCE}
    found = [tiers.get(row.split("|")[1].strip(), roster.Tier.PROGRESS) for row in rows]
    assert found == [roster.TIER_OF[reason] for reason in roster.Reason]


def test_figures_are_those_of_the_code(page: str) -> None:
    minutes = int(alerts.UNSEEN_FOR.total_seconds() // 60)
    assert f"nobody has seen for {minutes} minutes" in page
    assert (group.PEOPLE, group.PAIRS_EACH, group.SPAN.days) == (5, 3, 7)
    assert (roster.STUCK_NEEDS, roster.STUCK_OF, roster.BEFORE_VALUES, KEPT) == (5, 6, 4, 6)
    assert (bounds.BEFORE_LOW, bounds.BEFORE_HIGH) == ((70, 100), (95, 180))
    assert (bounds.AFTER_HIGH, bounds.LOW[1], bounds.HIGH[0]) == ((120, 200), 80, 200)


def test_every_alert_says_that_nobody_watches() -> None:
    say = ENGLISH.educator
    for text in (say.nobody_watches, say.missed, say.alerts_none, say.alerts_head, say.welcome):
        assert "Nobody watches this chat day and night" in text
