"""The page about the week shows what the bot says and draws today."""

import re
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image

from bot.chart import draw
from bot.picture import to_mapping
from bot.words.english.picture import PICTURE
from bot.words.picture import week_picture
from demo.contact_sheet import told
from demo.weeks import WEEKS

SHOWN = {
    "mixed": "week-of-seven-meals",
    "with_low": "week-with-a-low",
    "mmol": "week-in-mmol",
}


@pytest.mark.parametrize("name", SHOWN)
def test_the_words_are_those_of_today(name: str, checkout: Path) -> None:
    page = (checkout / "docs/week.md").read_text(encoding="utf-8")
    assert f"```text\n{told(WEEKS[name][0]())}\n```" in page


@pytest.mark.parametrize("name", SHOWN)
def test_the_picture_has_the_lines_of_today(name: str, checkout: Path) -> None:
    drawn = Image.open(BytesIO(draw(to_mapping(week_picture(WEEKS[name][0](), PICTURE)))))
    with Image.open(checkout / f"docs/pictures/{SHOWN[name]}.png") as shown:
        assert shown.size == drawn.size
    assert f"pictures/{SHOWN[name]}.png" in (checkout / "docs/week.md").read_text(encoding="utf-8")


def test_every_picture_of_the_page_is_there(checkout: Path) -> None:
    page = (checkout / "docs/week.md").read_text(encoding="utf-8")
    links = re.findall(r"\]\((pictures/[^)]+)\)", page)
    assert len(links) == len(SHOWN)
    assert all((checkout / "docs" / link).is_file() for link in links)
