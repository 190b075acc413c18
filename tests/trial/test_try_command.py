"""`try`: a story played without a page, and the page itself."""

import asyncio
import contextlib
import json
import os
import re
import signal
import subprocess
import sys
from datetime import timedelta
from pathlib import Path

import pytest
from tornado.httpclient import AsyncHTTPClient
from tornado.netutil import bind_sockets

from bot.replay.story import Enrol, Message, read_story

pytestmark = pytest.mark.live

STORY = """
{"at": "2026-03-02T09:00:00Z", "enrol": {"id": "ana", "unit": "mg/dL", "zone": "Europe/Lisbon"}}
{"at": "2026-03-02T12:00:00+00:00", "from": "ana", "text": "118, rice and beans", "id": "m1"}
{"at": "2026-03-02T12:01:00+00:00", "from": "ana", "text": "128, rice and beans", "edits": "m1"}
{"at": "2026-03-02T14:02:00+00:00", "from": "ana", "text": "154", "answers": 3}
{"at": "2026-03-08T18:00:00+00:00", "pass": true}
""".strip()


async def tried(checkout: Path, *arguments: str, optimize: str = "0") -> tuple[int, str, str]:
    process = await asyncio.create_subprocess_exec(
        sys.executable,
        "-m",
        "bot",
        "try",
        *arguments,
        cwd=checkout,
        env={**os.environ, "PYTHONOPTIMIZE": optimize},
        stdout=asyncio.subprocess.PIPE,
        stderr=asyncio.subprocess.PIPE,
    )
    out, err = await process.communicate()
    assert process.returncode is not None
    return process.returncode, out.decode(), err.decode()


# The units run it without assertions and documentation (PYTHONOPTIMIZE=2); nothing may change.
@pytest.mark.parametrize("optimize", ["0", "2"])
async def test_story_is_played_and_printed_as_a_conversation(
    checkout: Path, tmp_path: Path, optimize: str
) -> None:
    story = tmp_path / "story.jsonl"
    story.write_text(STORY, encoding="utf-8")
    out = tmp_path / "out"
    status, said, err = await tried(
        checkout, "--headless", str(story), "--out", str(out), optimize=optimize
    )
    assert (status, err) == (0, "")
    assert "── Monday 2 March 2026" in said
    assert "12:00  ana  128, rice and beans" in said
    assert "[edited]" in said
    assert "14:00  bot  It is two hours since rice and beans" in said
    assert "rose 26" in said
    assert (out / "conversation.txt").read_text(encoding="utf-8") == said
    assert [path.name for path in out.glob("*.png")] == ["ana-2026-03-08.png"]
    record = (out / "record.jsonl").read_text(encoding="utf-8").splitlines()
    kinds = [json.loads(line)["type"] for line in record]
    assert kinds.count("reading") == 2
    assert kinds.count("pair") == 1


@pytest.mark.parametrize(
    ("story", "words"),
    [
        (STORY.replace('"128, rice and beans"', "128"), "line 3"),
        (STORY.replace('"answers": 3', '"answers": 9'), "line 4"),
        ("", "no line"),
    ],
    ids=["not text", "answers nothing", "empty"],
)
async def test_broken_story_is_refused_with_its_line(
    checkout: Path, tmp_path: Path, story: str, words: str
) -> None:
    path = tmp_path / "story.jsonl"
    path.write_text(story, encoding="utf-8")
    out = tmp_path / "out"
    status, said, err = await tried(checkout, "--headless", str(path), "--out", str(out))
    assert (status, said) == (1, "")
    assert words in err
    assert len(err.splitlines()) == 1
    assert not out.exists()


@pytest.mark.parametrize(
    "arguments",
    [
        ("--speed", "0"),
        ("--speed", "fast"),
        ("--headless",),
        ("--sideways",),
        ("--port", "65536"),
        ("--port", "-1"),
    ],
)
async def test_wrong_usage_ends_with_two(checkout: Path, arguments: tuple[str, ...]) -> None:
    status, _, _ = await tried(checkout, *arguments)
    assert status == 2


def test_demo_story_is_what_its_writer_writes(checkout: Path) -> None:
    written = subprocess.run(
        [sys.executable, checkout / "demo/write_story.py"],
        capture_output=True,
        check=True,
    ).stdout
    assert written == (checkout / "demo/story.jsonl").read_bytes()


def test_demo_story_has_people_of_different_units_zones_and_habits(checkout: Path) -> None:
    lines = read_story((checkout / "demo/story.jsonl").read_text(encoding="utf-8").splitlines())
    people = [line.participant for line in lines if isinstance(line, Enrol)]
    assert len(people) == 3
    assert {person.unit for person in people} == {"mg/dL", "mmol/L"}
    assert len({person.zone for person in people}) == 3
    assert lines[-1].at - lines[0].at >= timedelta(days=13)
    assert sum(isinstance(line, Message) for line in lines) > 90


@pytest.mark.slow
async def test_demo_is_played_whole(checkout: Path, tmp_path: Path) -> None:
    out = tmp_path / "out"
    status, said, err = await tried(checkout, "--headless", "demo/story.jsonl", "--out", str(out))
    assert (status, err) == (0, "")
    assert len(list(out.glob("*.png"))) == 6
    for expected in ("Treat this as a low", "15 g of fast sugar", "is very high", "mango"):
        assert expected in said


async def test_page_is_served_until_interrupted(checkout: Path, tmp_path: Path) -> None:
    process = await asyncio.create_subprocess_exec(
        sys.executable,
        *("-m", "bot", "try", "--port", "0"),
        cwd=checkout,
        env=os.environ | {"TMPDIR": str(tmp_path)},
        stdout=asyncio.subprocess.PIPE,
        stderr=asyncio.subprocess.PIPE,
    )
    assert process.stdout is not None
    said = (await process.stdout.readline()).decode()
    place = re.search(r"http://127\.0\.0\.1:\d+/", said)
    assert place is not None
    headers = {"Origin": place.group().rstrip("/"), "Content-Type": "application/json"}
    opened = await AsyncHTTPClient().fetch(
        f"{place.group()}open", method="POST", headers=headers, body='{"beginning": "empty"}'
    )
    assert opened.code == 200
    assert os.listdir(tmp_path) != []
    process.send_signal(signal.SIGINT)
    rest, err = await process.communicate()
    assert process.returncode == 0
    assert rest.decode() == "The trial has ended. Nothing of it is kept.\n"
    assert err == b""
    assert os.listdir(tmp_path) == []


async def test_taken_port_is_named(checkout: Path) -> None:
    [taken] = bind_sockets(0, "127.0.0.1")
    with contextlib.closing(taken):
        port = taken.getsockname()[1]
        status, said, err = await tried(checkout, "--port", str(port))
    assert (status, said) == (1, "")
    assert f"port {port} is in use" in err
    assert len(err.splitlines()) == 1
