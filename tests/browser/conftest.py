"""The chat page in a real Chromium without a window, against the real bot on this machine.

Every test ends with a look into the browser's own logs: no request has left loopback, and no
script or style was refused or failed.
"""

import asyncio
import json
import shutil
import threading
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from urllib.parse import urlsplit

import pytest
from selenium.common.exceptions import StaleElementReferenceException
from selenium.webdriver import Chrome, ChromeOptions
from selenium.webdriver.chrome.service import Service
from selenium.webdriver.common.by import By
from selenium.webdriver.common.keys import Keys
from selenium.webdriver.remote.webelement import WebElement
from selenium.webdriver.support.wait import WebDriverWait
from tornado.netutil import bind_sockets

from bot.settings import Settings
from bot.trial.chat_page import ChatPage, serving

# A Monday at noon, Lisbon time (which is UTC in winter).
NOON = datetime(2026, 3, 9, 12, 0, tzinfo=UTC)
LISBON = "Europe/Lisbon"
PATIENCE = 20  # seconds for what takes milliseconds on a quiet machine

CHROMIUM, DRIVER = shutil.which("chromium"), shutil.which("chromedriver")
FLAGS = (
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--disable-dev-shm-usage",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--lang=en-GB",
    # Whatever asks for another machine's name is told that there is none.
    "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
)


class Tab:
    """What a visitor sees and does in one browser, found by what is written on it."""

    def __init__(self, driver: Chrome, address: str) -> None:
        self.driver = driver
        self.address = address

    def go(self, path: str = "") -> None:
        """Open an address of the page."""
        self.driver.get(self.address + path)

    def begin(self, beginning: str) -> None:
        """Choose on the start page, and wait for the participant's chat."""
        self.go()
        self.button(beginning).click()
        self.until(lambda: self.driver.current_url.endswith("/participant"))
        self.sees("Participant's conversation")

    def until(self, holds: Callable[[], object]) -> None:
        """Wait until something holds of the page; raises TimeoutException."""
        wait = WebDriverWait(
            self.driver,
            PATIENCE,
            poll_frequency=0.02,
            ignored_exceptions=[StaleElementReferenceException],
        )
        wait.until(lambda _: holds())

    def text(self, selector: str = "main") -> str:
        """What stands on a part of the page."""
        return self.driver.find_element(By.CSS_SELECTOR, selector).text

    def sees(self, *words: str) -> None:
        """Wait until all these words stand on the page."""
        try:
            self.until(lambda: all(one in self.text() for one in words))
        except Exception:
            raise AssertionError(f"{words} not in:\n{self.text()}") from None

    def button(self, words: str) -> WebElement:
        """The last button that says this."""
        found = self.driver.find_elements(By.XPATH, f'//button[normalize-space()="{words}"]')
        assert found, f"no button {words!r} on:\n{self.text()}"
        return found[-1]

    def one(self, selector: str) -> WebElement:
        """The one element that a CSS selector means."""
        return self.driver.find_element(By.CSS_SELECTOR, selector)

    def all(self, selector: str) -> list[WebElement]:
        """Every element that a CSS selector means, in their order."""
        return self.driver.find_elements(By.CSS_SELECTOR, selector)

    def write(self, words: str, *then: str) -> None:
        """Type a message, send it with Enter, and wait for the words that answer it."""
        self.one("#text").send_keys(words, Keys.ENTER)
        if then:
            self.sees(*then)

    def press(self, label: str, *then: str) -> None:
        """Press a button, and wait for the words that answer it."""
        self.button(label).click()
        if then:
            self.sees(*then)

    def keys(self, *keys: str) -> None:
        """Type into whatever has the focus."""
        self.driver.switch_to.active_element.send_keys(*keys)

    def focus(self) -> str:
        """What has the focus, as a reader of the screen would name it."""
        return str(self.driver.switch_to.active_element.accessible_name)

    def runs(self, script: str, *given: object) -> object:
        """What a script in the page gives."""
        return self.driver.execute_script(script, *given)  # type: ignore[no-untyped-call]

    def second_tab(self, path: str) -> None:
        """Open an address in a tab of its own, and look at that."""
        self.driver.switch_to.new_window("tab")
        self.go(path)

    def turn_to(self, number: int) -> None:
        """Look at another tab, counted from 0."""
        self.driver.switch_to.window(self.driver.window_handles[number])

    def size(self, width: int, height: int) -> None:
        """Be a window of exactly this many pixels, as a telephone or a desk has it."""
        self.driver.execute_cdp_cmd(
            "Emulation.setDeviceMetricsOverride",
            {"width": width, "height": height, "deviceScaleFactor": 1, "mobile": False},
        )

    def offline(self, is_off: bool) -> None:
        """Lose the connection to the page's own server, or get it back."""
        self.driver.set_network_conditions(offline=is_off, latency=0, throughput=-1)

    def scheme(self, name: str) -> None:
        """Prefer light or dark."""
        feature = {"name": "prefers-color-scheme", "value": name}
        self.driver.execute_cdp_cmd("Emulation.setEmulatedMedia", {"features": [feature]})


@pytest.fixture(scope="session")
def chromium(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Chrome]:
    """One browser for all tests, with a profile and a folder for downloads of its own."""
    if CHROMIUM is None or DRIVER is None:
        pytest.skip(
            "no chromium and chromedriver on PATH (on Debian: apt install chromium chromium-driver)"
        )
    options = ChromeOptions()
    options.binary_location = CHROMIUM
    for flag in FLAGS:
        options.add_argument(flag)
    options.add_argument(f"--user-data-dir={tmp_path_factory.mktemp('profile')}")
    options.set_capability("goog:loggingPrefs", {"performance": "ALL", "browser": "ALL"})
    driver = Chrome(options=options, service=Service(executable_path=DRIVER))
    driver.get("about:blank")  # away from the browser's own first page, which asks for much
    try:
        yield driver
    finally:
        driver.quit()


@pytest.fixture
def address() -> Iterator[str]:
    """A chat page of its own for each test, on a machine where it is Monday noon in Lisbon."""
    loop = asyncio.new_event_loop()
    served: list[str] = []
    ready, stop = threading.Event(), asyncio.Event()

    async def serve() -> None:
        settings = Settings(_env_file=None, send_per_second=1000)
        page = ChatPage(settings, zone=LISBON, now=lambda: NOON)
        async with serving(page, bind_sockets(0, "127.0.0.1")) as place:
            served.append(place)
            ready.set()
            await stop.wait()

    thread = threading.Thread(target=loop.run_until_complete, args=(serve(),))
    thread.start()
    assert ready.wait(PATIENCE)
    yield served[0]
    loop.call_soon_threadsafe(stop.set)
    thread.join(PATIENCE)
    assert not thread.is_alive()
    loop.run_until_complete(loop.shutdown_default_executor())
    loop.close()


def asked_for(driver: Chrome) -> set[str]:
    """Every address on a network that the browser asked for since it was last looked at."""
    events = [json.loads(one["message"])["message"] for one in driver.get_log("performance")]
    urls = {
        event["params"]["request"]["url"]
        for event in events
        if event["method"] == "Network.requestWillBeSent"
    }
    own = ("about", "blob", "chrome", "data")  # the browser asks itself
    return {url for url in urls if not urlsplit(url).scheme.startswith(own)}


@pytest.fixture
def tab(chromium: Chrome, address: str) -> Iterator[Tab]:
    """The browser, at a telephone's size, on a page of its own."""
    opened = Tab(chromium, address)
    opened.size(360, 740)
    opened.scheme("light")
    asked_for(chromium)
    chromium.get_log("browser")
    yield opened
    first, *others = chromium.window_handles
    for handle in others:
        chromium.switch_to.window(handle)
        chromium.close()
    chromium.switch_to.window(first)
    complaints = [one["message"] for one in chromium.get_log("browser")]
    chromium.get("about:blank")
    asked = asked_for(chromium)
    assert {urlsplit(url).hostname for url in asked} == {"127.0.0.1"}
    assert complaints == []


@pytest.fixture
def elsewhere() -> Iterator[str]:
    """An empty page of another origin on this machine."""

    class Empty(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            self.send_response(200)
            self.send_header("Content-Type", "text/html")
            self.end_headers()
            self.wfile.write(b"<!doctype html><title>elsewhere</title><link rel=icon href=data:,>")

        def log_message(self, *_: object) -> None:
            """Stay silent."""

    with ThreadingHTTPServer(("127.0.0.1", 0), Empty) as server:
        threading.Thread(target=server.serve_forever, daemon=True).start()
        yield f"http://127.0.0.1:{server.server_port}/"
        server.shutdown()
