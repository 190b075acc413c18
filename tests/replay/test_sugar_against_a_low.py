"""Sugar told after a low is its treatment, however it is called: no test two hours after it.

The rule is the contract's of cautions; the wordings are our own.
"""

import pytest

from tests.replay.told import Story, of_type


@pytest.mark.parametrize(
    "text",
    [
        "had 4 glucose tablets",
        "4 glucose tablets",
        "i took glucose",
        "took 3 sugar tablets",
        "took glucose gel",
        "had some juice",
        "a tablespoon of sugar",
        "3 jelly babies",
    ],
)
def test_it_asks_for_no_test_two_hours_later(text: str) -> None:
    played = Story().says("12:05", "62").says("12:08", text).passes("2026-03-02 16:00").play()
    assert of_type(played, "meal") == []
    assert len(of_type(played, "treatment")) == 1
    assert not any("two hours since" in line["text"] for line in played.sent)
