"""The chat page for everybody: checked by axe, at a telephone's width, in both colour schemes.

axe-core 4.4 checks what a program can check of WCAG 2.1 and of good practice. Reflow: WCAG 2.1,
success criterion 1.4.10 (320 CSS pixels wide without scrolling sideways); twice the text size:
1.4.4.
"""

from collections.abc import Callable
from pathlib import Path

import pytest
from axe_core_python.selenium import Axe

from tests.browser.conftest import Tab

pytestmark = pytest.mark.live

#: Telephone, desk, the narrowest that counts, and a desk of 1280 x 720 at 200 %.
SIZES = ((360, 740), (1280, 800), (320, 256), (640, 360))
#: Each control is at least so many pixels high and wide (WCAG 2.2, 2.5.8, exceptions aside).
LEAST_TARGET = 24


def empty(tab: Tab) -> None:
    tab.begin("Begin empty")


def asked(tab: Tab) -> None:
    tab.begin("Begin empty")
    tab.press("Send my code", "Are you 18 or older")
    tab.press("Answer this", "Answering: Welcome")


def week(tab: Tab) -> None:
    tab.begin("Begin with a week played")
    tab.press("Go to what comes next", "It is two hours since omelette")
    tab.one(".photo").click()
    tab.write("148", "It rose 26")
    tab.write("export")
    tab.until(lambda: tab.all("#log .file a"))
    tab.button("Go to what comes next").click()
    tab.until(lambda: tab.runs("return document.querySelector('#log img')?.naturalWidth > 0"))


def educator(tab: Tab) -> None:
    tab.go("educator")
    tab.sees("Alert 1", "Nobody watches this chat")
    tab.press("seen 1", "You pressed: seen 1")


def start_again(tab: Tab) -> None:
    tab.go()
    tab.sees("A trial is open")


def violations(tab: Tab) -> list[str]:
    """What axe finds: the rule, its impact and where."""
    found = Axe().run(tab.driver, options={"resultTypes": ["violations"]})
    return [
        f"{one['id']} ({one['impact']}): {node['html']}"
        for one in found["violations"]
        for node in one["nodes"]
    ]


def too_wide(tab: Tab) -> bool:
    """Whether the page or the conversation scrolls sideways."""
    script = """
        return [document.documentElement, document.getElementById("log")]
            .some((one) => one && one.scrollWidth > one.clientWidth);
    """
    return tab.runs(script) is True


def overlaps(tab: Tab) -> bool:
    """Whether what stands below the conversation or the choice lies over it."""
    script = """
        const low = [...document.querySelectorAll("main *")]
            .filter((one) => one.offsetParent !== null && !one.closest("#log, .unseen"))
            .map((one) => one.getBoundingClientRect().bottom);
        return Math.max(...low) > document.querySelector("footer").getBoundingClientRect().top + 1;
    """
    return tab.runs(script) is True


def too_small(tab: Tab) -> list[str]:
    """What is to be pressed and is smaller than a finger can meet."""
    script = f"""
        return [...document.querySelectorAll("button, nav a, fieldset span, .file a")]
            .filter((one) => one.offsetParent !== null)
            .filter((one) => Math.min(one.offsetHeight, one.offsetWidth) < {LEAST_TARGET})
            .map((one) => one.textContent);
    """
    found = tab.runs(script)
    assert isinstance(found, list)
    return found


@pytest.mark.parametrize("states", [(empty,), (asked,), (week, educator, start_again)])
def test_page_is_for_everybody(
    tab: Tab, tmp_path: Path, states: tuple[Callable[[Tab], None], ...]
) -> None:
    for state in states:
        state(tab)
        for scheme in ("dark", "light"):
            tab.scheme(scheme)
            for width, height in SIZES:
                tab.size(width, height)
                picture = tmp_path / f"{state.__name__}-{scheme}-{width}.png"
                assert tab.driver.save_screenshot(str(picture))
                assert not too_wide(tab), (state.__name__, width)
                assert not overlaps(tab), (state.__name__, width)
            tab.size(360, 740)
            assert violations(tab) == [], (state.__name__, scheme)
        assert too_small(tab) == [], state.__name__
        tab.runs("document.documentElement.style.fontSize = '200%'")
        tab.driver.save_screenshot(str(tmp_path / f"{state.__name__}-large.png"))
        assert not too_wide(tab), f"{state.__name__}, text twice as large"
        assert not overlaps(tab), f"{state.__name__}, text twice as large"


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
