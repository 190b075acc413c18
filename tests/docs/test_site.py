"""The pages as a site: it builds without a warning, every link in it leads somewhere, and the
picture of the rooms is what the code is."""

import re
import subprocess
import sys
from html.parser import HTMLParser
from pathlib import Path
from urllib.parse import unquote, urldefrag

import pytest

CHECKOUT = Path(__file__).parents[2]
PAGES = [
    CHECKOUT / "README.md",
    CHECKOUT / "DEVELOPERS.md",
    CHECKOUT / "CHANGELOG.md",
    *sorted((CHECKOUT / "docs").glob("*.md")),
]


class _Links(HTMLParser):
    """The places that a page links to, and the anchors that it has."""

    def __init__(self) -> None:
        super().__init__()
        self.targets: list[str] = []
        self.anchors: set[str] = set()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        for name, value in attrs:
            if name in ("href", "src") and value:
                self.targets.append(value)
            elif name == "id" and value:
                self.anchors.add(value)


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    out = tmp_path_factory.mktemp("site")
    built = subprocess.run(
        [sys.executable, "-m", "sphinx", "-W", "--keep-going", "-q", "-b", "html", "docs", out],
        cwd=CHECKOUT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert built.returncode == 0, built.stderr
    return out


def test_every_link_of_the_site_leads_to_a_page_and_place_that_are_there(site: Path) -> None:
    pages = {path: _Links() for path in site.glob("*.html")}
    for path, links in pages.items():
        links.feed(path.read_text(encoding="utf-8"))
    lost = []
    for path, links in pages.items():
        for target in links.targets:
            if re.match(r"https?:|mailto:|data:", target):
                continue
            place, anchor = urldefrag(target)
            file = unquote(place.split("?")[0])
            there = (path.parent / file).resolve() if file else path
            known = pages[there].anchors if there in pages else {unquote(anchor)}
            if not there.exists() or (anchor and unquote(anchor) not in known):
                lost.append(f"{path.name}: {target}")
    assert not lost


def test_the_site_fetches_nothing_from_elsewhere(site: Path) -> None:
    for path in site.glob("*.html"):
        loaded = re.findall(
            r'<(?:script|link|img)[^>]+(?:src|href)="(https?:[^"]+)"', path.read_text()
        )
        assert not loaded, path.name


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_links_between_the_files_of_the_checkout_hold(page: Path) -> None:
    text = re.sub(r"^```.*?^```", "", page.read_text(encoding="utf-8"), flags=re.M | re.S)
    for target in re.findall(r"\]\(([^)\s]+)\)", text):
        place, _ = urldefrag(target)
        if place and not re.match(r"https?:", place):
            assert (page.parent / place).exists(), target


def test_every_page_is_in_the_index() -> None:
    index = (CHECKOUT / "docs/index.md").read_text(encoding="utf-8")
    for page in (CHECKOUT / "docs").glob("*.md"):
        assert page.stem == "index" or re.search(rf"^{page.stem}$", index, re.MULTILINE), page.name


def test_the_picture_of_the_rooms_is_what_the_code_is() -> None:
    drawn = subprocess.run(
        [sys.executable, "docs/draw_rooms.py", "--check"], cwd=CHECKOUT, check=False
    )
    assert drawn.returncode == 0, "python docs/draw_rooms.py writes it anew"
