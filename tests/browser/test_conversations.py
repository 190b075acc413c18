"""Whole conversations on the chat page, as a visitor has them."""

import json
from pathlib import Path

import pytest
from selenium.webdriver.common.keys import Keys

from tests.browser.conftest import Tab
from tests.browser.everybody import for_everybody, violations

pytestmark = pytest.mark.live


def test_participant_joins_tests_in_a_pair_and_the_educator_hears_of_a_low(tab: Tab) -> None:
    tab.begin("Begin empty")
    tab.press("Send my code", "Are you 18 or older")
    tab.press("yes", "You pressed: yes", "May I tell your educator")
    tab.press("yes", "What does your meter show")
    tab.press("mg/dL", "largest meal")
    tab.write("13:00", "too low")
    tab.press("no", "ketone")
    tab.press("no", "You are in")

    tab.write("118, rice and beans", "118 mg/dL before eating", "I will ask at 14:00")
    tab.press(
        "Go to what comes next", "It is two hours since rice and", "It is Monday 9 March, 14:00"
    )
    tab.write("154", "It rose 36, from 118 mg/dL")

    said = tab.text("#log")
    tab.driver.refresh()
    tab.until(lambda: tab.text("#log") == said)

    tab.write("50", "very low", "15 g of fast sugar")
    tab.until(lambda: "Educator (" in tab.text("nav"))
    tab.second_tab("educator")
    tab.sees("has joined with your code", "very low", "50 mg/dL", "Nobody watches this chat")
    tab.press("seen 1", "You pressed: seen 1")
    tab.turn_to(0)
    assert "seen 1" not in tab.text("#log")


def test_week_ends_with_its_picture_and_files_are_saved(tab: Tab, tmp_path: Path) -> None:
    tab.begin("Begin with a week played")
    tab.sees("You are in", "Omelette and salad, from 12:28")
    tab.press("Go to what comes next", "It is two hours since omelette and salad")
    tab.press("Answer this", "Answering: It is two hours since omelette")
    tab.write("148", "It rose 26, from 122 mg/dL")
    assert tab.text("#entries li.mine:last-of-type, #entries li.mine .quote")
    assert "to: It is two hours since omelette" in tab.text("#log")
    tab.press("Change", "Changing what you wrote")
    field = tab.one("#text")
    assert field.get_property("value") == "148"
    field.send_keys(Keys.BACKSPACE, "4", Keys.ENTER)
    tab.sees("changed", "It rose 22")

    tab.button("Go to what comes next").click()
    tab.until(lambda: tab.runs("return document.querySelector('#log img')?.naturalWidth > 0"))
    [picture] = tab.all("#log img")
    words = picture.find_element("xpath", "..").find_element("css selector", ".said").text
    assert picture.get_property("alt") == words
    assert "226" in words
    tab.sees("It is Sunday 8 March, 18:00")
    for_everybody(tab, "week", tmp_path)

    tab.one(".photo").click()
    tab.write("rice and a fried egg", "photo of a plate", "Rice and a fried egg")
    assert not tab.one("#photo").is_selected()

    behaviour = {"behavior": "allow", "downloadPath": str(tmp_path)}
    tab.driver.execute_cdp_cmd("Browser.setDownloadBehavior", behaviour)
    tab.write("export")
    tab.until(lambda: tab.all("#log .file a"))
    [link, *_] = tab.all("#log .file a")
    name = str(link.get_attribute("download"))
    link.click()
    tab.until((tmp_path / name).exists)
    assert (tmp_path / name).stat().st_size > 0
    assert violations(tab) == []

    tab.go("educator")
    tab.sees("Alert 1", "Nobody watches this chat")
    for_everybody(tab, "educator", tmp_path)
    tab.go()
    tab.sees("A trial is open")
    for_everybody(tab, "again", tmp_path)


def test_clock_is_paused_and_hurried(tab: Tab) -> None:
    tab.begin("Begin empty")
    began = tab.text("#now")
    assert began == "Monday 9 March, 12:00"
    tab.one("label:has([value='360'])").click()
    tab.until(lambda: tab.text("#now") != began)
    tab.one("label:has([value='0'])").click()

    def told() -> dict[str, object]:
        clock = "fetch('state?seat=participant').then((one) => one.json()).then((one) => one.clock)"
        found = tab.runs(f"return {clock}")
        assert isinstance(found, dict)
        return found

    tab.until(lambda: told()["speed"] == 0)
    stood = told()
    assert told() == stood
    tab.press("One hour on")
    tab.until(lambda: told()["wall"] != stood["wall"])
    hours = [int(str(one["wall"])[11:13]) for one in (stood, told())]
    assert hours[1] - hours[0] == 1
    tab.sees("It is Monday 9 March, 1")
    tab.press("Go to what comes next", "Nothing is to come. Write something first.")


def test_everything_by_keyboard(tab: Tab) -> None:
    tab.go()
    tab.keys(Keys.TAB)
    assert tab.focus() == "Begin empty"
    assert outlined(tab)
    tab.keys(Keys.ENTER)
    tab.until(lambda: tab.focus() == "Your message")
    backwards = []
    for _ in range(2):
        tab.keys(Keys.SHIFT + Keys.TAB)
        assert outlined(tab)
        backwards.append(tab.focus())
    assert backwards == ["Send my code", "Participant's conversation"]
    tab.keys(Keys.TAB, Keys.NULL)
    tab.keys(Keys.SPACE)
    tab.sees("Are you 18 or older")
    tab.until(lambda: tab.focus() == "Your message")
    tab.keys(Keys.SHIFT + Keys.TAB)
    assert tab.focus() == "no"
    tab.keys(Keys.SHIFT + Keys.TAB)
    assert tab.focus() == "yes"
    assert outlined(tab)
    tab.keys(Keys.ENTER)
    tab.sees("May I tell your educator", "You pressed: yes")

    tab.driver.refresh()
    tab.sees("May I tell your educator")
    tab.runs("document.querySelector('.skip').focus()")
    assert tab.focus() == "Skip to writing"
    order = [following(tab) for _ in range(6)]
    assert order == [
        "Participant",
        "Educator",
        "New trial",
        "1×: as fast as the real one",
        "Go to what comes next",
        "One hour on",
    ]
    tab.runs("document.querySelector('.skip').focus()")
    tab.keys(Keys.ENTER)
    assert tab.focus() == "Your message"


def following(tab: Tab) -> str:
    """Go on by one with the Tab key; what has the focus then is to be seen."""
    tab.keys(Keys.TAB)
    assert outlined(tab), tab.focus()
    return tab.focus()


def outlined(tab: Tab) -> bool:
    """Whether a line stands around what has the focus (or around its face)."""
    script = """
        const one = document.activeElement;
        const face = one.type === "radio" ? one.nextElementSibling : one;
        const style = getComputedStyle(face);
        return style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2;
    """
    return tab.runs(script) is True


def test_escape_lets_go_and_shift_enter_begins_a_line(tab: Tab) -> None:
    tab.begin("Begin empty")
    tab.press("Send my code", "Are you 18 or older")
    tab.press("Answer this", "Answering: Welcome")
    assert tab.focus() == "Your message"
    tab.keys(Keys.ESCAPE)
    tab.until(lambda: not tab.one("#about").is_displayed())
    tab.keys("y", Keys.SHIFT + Keys.ENTER + Keys.NULL, "z")
    assert tab.one("#text").get_property("value") == "y\nz"
    assert "y\nz" not in tab.text("#log")


def test_what_could_not_be_sent_is_said_and_kept(tab: Tab) -> None:
    tab.begin("Begin empty")
    tab.offline(True)
    tab.write("118, rice", "The bot on this machine does not answer")
    assert tab.one("#text").get_property("value") == "118, rice"
    tab.driver.get_log("browser")  # it complains of that, rightly
    tab.offline(False)
    tab.keys(Keys.ENTER)
    tab.sees("You need a code from your educator")
    tab.until(lambda: not tab.one("#trouble").is_displayed())
    tab.driver.get_log("browser")


def test_other_sites_page_cannot_write(tab: Tab, elsewhere: str) -> None:
    tab.begin("Begin empty")
    tab.second_tab("participant")
    tab.driver.get(elsewhere)
    body = json.dumps({"seat": "participant", "text": "written from elsewhere"})
    script = """
        const [address, body] = arguments;
        const kinds = ["text/plain", "application/x-www-form-urlencoded", "application/json"];
        return Promise.allSettled(kinds.map((kind) => fetch(address + "say", {
            method: "POST", mode: kind.endsWith("json") ? "cors" : "no-cors",
            headers: { "Content-Type": kind }, body,
        }))).then((all) => all.map((one) => one.value ? one.value.type : "refused"));
    """
    answers = tab.runs(script, tab.address, body)
    assert answers == ["refused", "refused", "refused"]
    tab.driver.get_log("browser")  # it complains of these, rightly
    tab.turn_to(0)
    tab.write("<b>written here</b>", "You need a code from your educator")
    assert "written from elsewhere" not in tab.text("#log")
    assert "<b>written here</b>" in tab.text("#log")  # text, whatever it looks like
    assert tab.all("#log b") == []
