"""The chat page's addresses: what they show, what they take, and from whom."""

import json
from collections.abc import AsyncIterator
from contextlib import AbstractAsyncContextManager
from datetime import UTC, datetime, timedelta
from typing import Any
from urllib.parse import urlsplit

import pytest
from tornado.httpclient import AsyncHTTPClient, HTTPClientError, HTTPRequest, HTTPResponse
from tornado.netutil import bind_sockets

from bot.localtime import in_zone
from bot.settings import Settings
from bot.trial.chat_page import ChatPage, serving
from bot.trial.visit import Beginning, Visit, visit
from bot.trial.visitors_clock import VisitorsClock
from bot.trial.week import last_monday, told

pytestmark = pytest.mark.live

LISBON = "Europe/Lisbon"
NOON = datetime(2026, 3, 9, 12, 0, tzinfo=UTC)
SETTINGS = Settings(_env_file=None, send_per_second=1000)


class Caller:
    """A browser's requests, without a browser."""

    def __init__(self, address: str) -> None:
        self.address = address
        self.origin = address.rstrip("/")

    async def get(self, path: str, **headers: str) -> HTTPResponse:
        return await AsyncHTTPClient().fetch(
            HTTPRequest(self.address + path, headers=headers, follow_redirects=False)
        )

    async def post(self, path: str, body: object, **headers: str) -> Any:
        """Post as a page of this origin would, unless other headers say so."""
        sent = {"Content-Type": "application/json", "Origin": self.origin} | headers
        answer = await AsyncHTTPClient().fetch(
            HTTPRequest(self.address + path, method="POST", body=json.dumps(body), headers=sent)
        )
        return json.loads(answer.body) if answer.body else None

    async def state(self, seat: str, seen: int = -1) -> dict[str, Any]:
        found: dict[str, Any] = json.loads((await self.get(f"state?seat={seat}&seen={seen}")).body)
        return found

    async def refused(self, path: str, body: object, **headers: str) -> int:
        """The status with which a post is refused."""
        with pytest.raises(HTTPClientError) as refused:
            await self.post(path, body, **headers)
        return int(refused.value.code)


@pytest.fixture
async def page() -> ChatPage:
    return ChatPage(SETTINGS, zone=LISBON, now=lambda: NOON)


@pytest.fixture
async def caller(page: ChatPage) -> AsyncIterator[Caller]:
    async with serving(page, bind_sockets(0, "127.0.0.1")) as address:
        yield Caller(address)


def texts(state: dict[str, Any], *, mine: bool) -> list[str]:
    return [one["text"] for one in state["messages"] if one["mine"] is mine]


async def with_a(kind: str, caller: Caller) -> list[dict[str, Any]]:
    """The participant's messages that carry a picture or a file."""
    return [one for one in (await caller.state("participant"))["messages"] if kind in one]


async def test_participant_joins_and_the_educator_is_told(caller: Caller, page: ChatPage) -> None:
    await caller.post("open", {"beginning": "empty"})
    assert page.visit is not None
    rest = page.visit.trial.at_rest
    empty = await caller.state("participant")
    assert empty["messages"] == []
    assert empty["clock"] == {"wall": empty["clock"]["wall"], "speed": 1.0}
    assert empty["clock"]["wall"].startswith("2026-03-09T12:00:")

    await caller.post("say", {"seat": "participant", "text": f"/start {empty['code']}"})
    await rest()
    asked = await caller.state("participant", empty["revision"])
    question = asked["messages"][-1]
    assert question["buttons"] == ["yes", "no"]
    assert (question["at"], question["day"]) == ("12:00", "Monday 9 March")

    yes = {"seat": "participant", "message": question["id"], "label": "yes"}
    await caller.post("press", yes)
    for answer in ("yes", "mg/dL", "13:00", "no", "no"):
        await rest()
        await caller.post("say", {"seat": "participant", "text": answer})
    await rest()
    joined = await caller.state("participant")
    assert "You are in" in texts(joined, mine=False)[-1]
    assert joined["messages"][1]["pressed"] == "yes"
    assert "has joined with your code" in texts(await caller.state("educator"), mine=False)[-1]

    await caller.post("say", {"seat": "participant", "text": "50"})
    await rest()
    alert = texts(await caller.state("educator"), mine=False)[-1]
    assert "very low" in alert
    assert "50 mg/dL" in alert


async def test_words_are_changed_and_answer_earlier_ones(caller: Caller, page: ChatPage) -> None:
    await caller.post("open", {"beginning": "week"})
    assert page.visit is not None
    assert await caller.post("clock", {"move": "next"}) == {"moved": True}
    prompt = (await caller.state("participant"))["messages"][-1]
    assert prompt["text"].startswith("It is two hours since omelette and salad")
    answer = {"seat": "participant", "text": "148", "answers": prompt["id"]}
    await caller.post("say", answer)
    await page.visit.trial.at_rest()
    mine = [one for one in (await caller.state("participant"))["messages"] if one["mine"]][-1]
    assert mine["answers"]["id"] == prompt["id"]

    await caller.post("change", {"seat": "participant", "message": mine["id"], "text": "158"})
    await page.visit.trial.at_rest()
    after = await caller.state("participant")
    assert next(one for one in after["messages"] if one["id"] == mine["id"])["edited"]
    assert "rose 36" in texts(after, mine=False)[-1]
    change_the_bots = {"seat": "participant", "message": prompt["id"], "text": "x"}
    assert await caller.refused("change", change_the_bots) == 404

    photo = {"seat": "participant", "text": "", "photo": True, "answers": None}
    await caller.post("say", photo)
    assert (await caller.state("participant"))["messages"][-1]["note"] == "photo of a plate"


async def test_week_ends_with_a_picture_whose_words_say_it_all(
    caller: Caller, page: ChatPage
) -> None:
    await caller.post("open", {"beginning": "week"})
    assert page.visit is not None
    await caller.post("clock", {"move": "next"})
    await caller.post("say", {"seat": "participant", "text": "148"})
    await caller.post("clock", {"move": "next"})
    [digest] = await with_a("picture", caller)
    assert (digest["at"], digest["day"]) == ("18:00", "Sunday 8 March")
    assert digest["picture"]["words"] == digest["text"]
    assert "226" in digest["text"]
    image = await caller.get(digest["picture"]["address"])
    assert image.headers["Content-Type"] == "image/png"
    assert image.body.startswith(b"\x89PNG")

    await caller.post("say", {"seat": "participant", "text": "export"})
    await page.visit.trial.at_rest()
    sent = await with_a("file", caller)
    assert sent
    for one in sent:
        found = await caller.get(one["file"]["address"])
        assert found.headers["Content-Disposition"] == "attachment"
        assert found.body


async def test_other_sites_neither_write_nor_read(caller: Caller) -> None:
    begin = {"beginning": "empty"}
    assert await caller.refused("open", begin, Origin="http://elsewhere.example") == 403
    assert await caller.refused("open", begin, Origin="null") == 403
    assert await caller.refused("open", begin, Origin="") == 403
    assert await caller.refused("open", begin, Host="elsewhere.example") == 403
    port = urlsplit(caller.address).port
    rebound = f"elsewhere.example:{port}"
    assert await caller.refused("open", begin, Host=rebound, Origin=f"http://{rebound}") == 403
    assert await caller.refused("open", begin, Origin=f"{caller.origin}1") == 403
    text = {"Content-Type": "text/plain"}
    assert await caller.refused("open", begin, **text) == 415
    with pytest.raises(HTTPClientError, match="403"):
        await caller.get("", Host="elsewhere.example")
    start = await caller.get("")
    policy = start.headers["Content-Security-Policy"]
    assert "default-src 'none'" in policy
    assert "frame-ancestors 'none'" in policy
    assert "unsafe" not in policy
    assert "*" not in policy
    assert "Access-Control-Allow-Origin" not in start.headers
    assert start.headers["Cross-Origin-Resource-Policy"] == "same-origin"


async def test_what_is_not_there_or_not_meant_is_refused(caller: Caller) -> None:
    say = {"seat": "participant", "text": "118"}
    assert await caller.refused("say", say) == 409
    with pytest.raises(HTTPClientError, match="302"):
        await caller.get("participant")
    assert await caller.refused("open", {"beginning": "elsewhere"}) == 400
    await caller.post("open", {"beginning": "empty"})
    for path, body, status in (
        ("say", {"seat": "nobody", "text": "118"}, 404),
        ("say", {"seat": "participant", "text": "  "}, 400),
        ("say", {"seat": "participant", "text": "x" * 4097}, 400),
        ("say", {"seat": "participant", "text": "118", "answers": 99}, 404),
        ("say", {"seat": "participant", "text": "118", "answers": "1"}, 400),
        ("say", ["118"], 400),
        ("press", {"seat": "educator", "message": 2, "label": "maybe"}, 404),
        ("change", {"seat": "educator", "message": True, "text": "x"}, 400),
        ("clock", {"move": "back"}, 400),
        ("clock", {"move": "run", "speed": -1}, 400),
        ("clock", {"move": "run", "speed": "60"}, 400),
        ("nothing", {}, 404),
    ):
        assert await caller.refused(path, body) == status, (path, body)
    for path in ("file/none", "secret.txt", "nothing.css", "state?seat=nobody"):
        with pytest.raises(HTTPClientError, match="404"):
            await caller.get(path)


async def test_another_trial_ends_the_first(caller: Caller, page: ChatPage) -> None:
    await caller.post("open", {"beginning": "empty"})
    first, number = page.visit, page.number
    assert first is not None
    await caller.post("open", {"beginning": "empty"})
    assert page.visit is not first
    assert page.number == number + 1
    await first.trial.ended()  # without an error


async def test_nothing_is_to_come_where_nobody_has_joined(caller: Caller) -> None:
    await caller.post("open", {"beginning": "empty"})
    assert await caller.post("clock", {"move": "next"}) == {"moved": False}


def played_week() -> AbstractAsyncContextManager[Visit]:
    return visit(SETTINGS, beginning=Beginning.WEEK, zone=LISBON, now=NOON)


async def test_clock_moves_on_an_hour_with_all_that_is_due_on_the_way() -> None:
    async with played_week() as week:
        await week.run_clock(0)
        before = week.clock.now()
        heard = len(week.trial.server.ledger)
        await week.on_by(timedelta(hours=3))
        assert week.clock.now() == before + timedelta(hours=3)
        prompt, nudge = week.trial.server.ledger[heard:]
        assert in_zone(prompt.at, LISBON).strftime("%H:%M") == "14:28"
        assert "two hours" in prompt.text
        assert in_zone(nudge.at, LISBON).strftime("%H:%M") == "14:43"
        assert week.speed == week.clock.speed == 0


def test_clock_runs_stands_and_never_goes_back() -> None:
    clock = VisitorsClock(NOON)
    assert clock.now() == NOON
    assert clock.real_time(NOON) <= clock.real_now()
    assert clock.real_time(NOON + timedelta(hours=1)) > clock.real_now() + timedelta(hours=1)
    clock.step_to(NOON + timedelta(hours=1))
    with pytest.raises(ValueError, match="back"):
        clock.step_to(NOON)
    clock.run(3600)
    in_an_hour = clock.real_time(clock.now() + timedelta(hours=1)) - clock.real_now()
    assert timedelta(seconds=0.5) < in_an_hour <= timedelta(seconds=1.1)
    clock.run(0)
    stood = clock.now()
    assert stood >= NOON + timedelta(hours=1)
    assert clock.now() == stood


@pytest.mark.parametrize("day", range(7))
def test_week_is_the_last_that_has_ended(day: int) -> None:
    today = (NOON + timedelta(days=day)).date()
    monday = last_monday(today)
    assert monday.weekday() == 0
    assert monday + timedelta(days=7) <= today < monday + timedelta(days=14)
    lines = list(told(monday, LISBON, "CODE"))
    assert lines[0][1] == "/start CODE"
    assert [at for at, _ in lines] == sorted(at for at, _ in lines)


async def test_what_waits_for_the_end_of_quiet_time_comes_next() -> None:
    async with played_week() as week:
        await week.run_clock(0)
        await week.on_by(timedelta(hours=11))
        heard = len(week.trial.server.ledger)
        joined = week.trial.server.sent_to(week.seats["educator"].chat)
        who = next(sent.text for sent in joined if "has joined" in sent.text).split()[0]
        week.say("educator", f"note {who}: see you on Monday")
        await week.trial.at_rest()
        assert len(week.trial.server.ledger) == heard + 1  # said to the educator
        assert await week.to_next()
        note = week.trial.server.ledger[-1]
        assert note.chat == week.seats["participant"].chat
        assert "see you on Monday" in note.text
        assert in_zone(note.at, LISBON).strftime("%H:%M") == "06:30"


async def test_hurried_clock_brings_the_prompt_by_itself() -> None:
    async with played_week() as week:
        heard = len(week.trial.server.ledger)
        await week.run_clock(3600)
        await week.trial.server.until(lambda: len(week.trial.server.ledger) > heard)
        prompt = week.trial.server.ledger[heard]
        assert "two hours since omelette" in prompt.text
        assert timedelta(0) <= prompt.at - datetime(2026, 3, 8, 14, 28, tzinfo=UTC)
