"""Every conversation printed in README and docs is one that the bot really has.

A block marked `text told` holds lines `HH:MM you …` and `HH:MM bot …`; a line without a time goes
on with the one above. It is played by a participant of the story's defaults, and everything the
bot says up to the minute of the last line has to stand there, word for word.
"""

import json
import re
from pathlib import Path
from typing import NamedTuple

import pytest

from bot.replay.play import play
from bot.replay.story import read_story
from tests.replay.told import PNG, Story
from tests.words.reading_level import grade

CHECKOUT = Path(__file__).parents[2]
PAGES = [CHECKOUT / "README.md", *sorted((CHECKOUT / "docs").glob("*.md"))]
TOLD = re.compile(r"^```text told\n(.*?)^```", re.MULTILINE | re.DOTALL)


class Line(NamedTuple):
    clock: str
    who: str
    text: str


def lines_of(block: str) -> list[Line]:
    lines: list[Line] = []
    for row in block.splitlines():
        begun = re.match(r"(\d\d:\d\d) (you|bot) (.*)", row)
        if begun:
            lines.append(Line(*begun.groups()))
        else:
            lines[-1] = lines[-1]._replace(text=f"{lines[-1].text}\n{row}")
    return lines


SAMPLES = [
    pytest.param(block, id=f"{page.name}-{place}")
    for page in PAGES
    for place, block in enumerate(TOLD.findall(page.read_text(encoding="utf-8")))
]


@pytest.mark.parametrize("block", SAMPLES)
def test_a_printed_conversation_is_what_the_bot_says(block: str) -> None:
    told = lines_of(block)
    story = Story()
    for line in told:
        if line.who == "you":
            story.says(line.clock, line.text)
    last = told[-1].clock
    said = [
        Line(line["at"][11:16], "bot", line["text"])
        for line in story.passes(f"{last[:3]}{int(last[3:]) + 1:02d}").play().sent
    ]
    assert said == [line for line in told if line.who == "bot"]


def test_the_readme_conversation_stands_in_the_demo() -> None:
    demo = (CHECKOUT / "demo/story.jsonl").read_text(encoding="utf-8").splitlines()
    played = play(read_story(demo), lambda _picture: PNG)
    said = {(line["to"], line["at"][11:16], _flat(line["text"])) for line in played.sent}
    written = {
        (row["from"], row["at"][11:16], _flat(row.get("text", "")))
        for row in map(json.loads, demo)
        if "from" in row
    }
    readme = (CHECKOUT / "README.md").read_text(encoding="utf-8")
    block = readme.split("## A conversation")[1].split("\n## ")[0]
    rows = re.findall(r"^    (\d\d:\d\d) +(bot|efua) +(.*(?:\n {8,}.*)*)", block, re.MULTILINE)
    assert len(rows) == 6
    for clock, who, text in rows:
        if who == "bot":
            assert ("efua", clock, _flat(text)) in said, text
        else:
            assert ("efua", clock, _flat(text)) in written, text


def _flat(text: str) -> str:
    return " ".join(text.split())


def test_the_page_for_participants_is_one_page_of_grade_six() -> None:
    page = (CHECKOUT / "docs/participants.md").read_text(encoding="utf-8")
    plain = re.sub(r"^```.*?^```|^\|.*$|^#.*$|[*`]", "", page, flags=re.MULTILINE | re.DOTALL)
    assert len(re.sub(TOLD, "", page).split()) < 700
    assert grade(plain) <= 6
