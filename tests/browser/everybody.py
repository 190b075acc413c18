"""What a page must be for everybody: checked by axe, at a telephone's width, in both schemes.

axe-core 4.4 checks what a program can check of WCAG 2.1 and of good practice. Reflow: WCAG 2.1,
success criterion 1.4.10 (320 CSS pixels wide without scrolling sideways); twice the text size:
1.4.4.
"""

from pathlib import Path

from axe_core_python.selenium import Axe

from tests.browser.conftest import Tab

#: Telephone, desk, the narrowest that counts, and a desk of 1280 x 720 at 200 %.
SIZES = ((360, 740), (1280, 800), (320, 256), (640, 360))
#: Pictures of these widths are left in the test's own folder, to be looked at.
PICTURED = (360, 1280)
#: Each control is at least so many pixels high and wide (WCAG 2.2, 2.5.8, exceptions aside).
LEAST_TARGET = 24


def for_everybody(tab: Tab, state: str, folder: Path) -> None:
    """Hold the page as it stands to all of it; pictures of it are left in the folder."""
    for scheme in ("dark", "light"):
        tab.scheme(scheme)
        for width, height in SIZES:
            tab.size(width, height)
            if width in PICTURED:
                assert tab.driver.save_screenshot(str(folder / f"{state}-{scheme}-{width}.png"))
            assert not too_wide(tab), (state, width)
            assert not overlaps(tab), (state, width)
        tab.size(360, 740)
        assert violations(tab) == [], (state, scheme)
    assert too_small(tab) == [], state
    tab.runs("document.documentElement.style.fontSize = '200%'")
    assert not too_wide(tab), f"{state}, text twice as large"
    assert not overlaps(tab), f"{state}, text twice as large"
    tab.runs("document.documentElement.style.fontSize = ''")


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
