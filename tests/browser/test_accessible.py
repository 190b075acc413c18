"""The chat page is for everybody: by eye, by ear, and at the beginning of a conversation.

The states later in a conversation are held to the same in `test_conversations`.
"""

from pathlib import Path

import pytest

from tests.browser.conftest import Tab
from tests.browser.everybody import for_everybody, violations

pytestmark = pytest.mark.live


def test_page_is_for_everybody_from_the_start(tab: Tab, tmp_path: Path) -> None:
    tab.go()
    for_everybody(tab, "start", tmp_path)
    tab.begin("Begin empty")
    for_everybody(tab, "empty", tmp_path)
    tab.press("Send my code", "Are you 18 or older")
    tab.press("Answer this", "Answering: Welcome")
    for_everybody(tab, "asked", tmp_path)


def test_axe_sees_what_is_wrong(tab: Tab) -> None:
    tab.go()
    assert violations(tab) == []
    tab.runs("document.querySelector('main').append(document.createElement('input'))")
    assert any(one.startswith("label (critical)") for one in violations(tab))


def test_a_reader_of_the_screen_is_told_what_is_new_and_no_more(tab: Tab) -> None:
    tab.begin("Begin empty")
    log = tab.one("#log")
    tab.until(lambda: log.get_attribute("aria-live") == "polite")
    assert log.aria_role == "log"
    assert log.accessible_name == "Participant's conversation"
    assert tab.one("html").get_attribute("lang") == "en"
    tab.runs(
        """
        window.added = [];
        new MutationObserver((all) => {
            for (const one of all) for (const node of one.addedNodes) added.push(node.className);
        }).observe(document.getElementById("entries"), { childList: true, subtree: true });
        """
    )
    tab.press("Send my code", "Are you 18 or older")
    tab.press("yes", "You pressed: yes", "May I tell your educator")
    assert tab.runs("return added") == ["day", "mine", "bots", "note pressed", "bots"]


def test_what_is_said_in_another_language_is_marked_as_that(tab: Tab) -> None:
    """WCAG 2.2, 3.1.2: words, buttons and what an answer quotes, each in its own language."""
    tab.begin("Begin with a week played")
    tab.write("español")
    tab.until(lambda: tab.runs("return document.querySelector('.bots .said[lang=es]') !== null"))
    assert tab.all(".bots .said[lang=en]")
    assert tab.runs("return document.querySelectorAll('.bots .said:not([lang])').length") == 0
    assert violations(tab) == []
