"""The endpoint of the whole live bot: what it counts, and what it never shows."""

import asyncio
import logging
from collections.abc import AsyncIterator, Iterator
from contextlib import asynccontextmanager, contextmanager
from datetime import time, timedelta
from pathlib import Path

import pytest
from prometheus_client.openmetrics.parser import text_string_to_metric_families
from pydantic import SecretStr

from bot import __version__
from bot.mendable import Mendable
from bot.participants import Invitation
from bot.settings import Settings
from bot.storage import migrations
from bot.storage.store import Store
from bot.trial.faults import Fault
from bot.trial.stand_in import TOKEN, StandIn
from bot.units import Unit
from bot.wiring import Service
from scheduler.clock import real_now
from tests.metrics.asking import ask, asked, free_place, values

pytestmark = pytest.mark.live
CODE = "ABCD-EFGH-JKMN"


@asynccontextmanager
async def served(server: StandIn, folder: Path, place: str) -> AsyncIterator[Service]:
    settings = Settings(
        _env_file=None,
        telegram_token=SecretStr(TOKEN),
        telegram_api=server.url,
        database=f"sqlite:///{folder / 'bot.db'}",
        metrics=place,
        send_per_second=1000,
    )
    store = Store.open(settings.database)
    known = Invitation(
        zone="Europe/Lisbon",
        unit=Unit.MG_DL,
        may_go_low=False,
        ketone_risk=False,
        main_meal=time(13),
        emergency_number="112",
    )
    with store.turn() as work:
        work.invite(CODE, known, real_now() + timedelta(days=1))
    store.close()
    stop, ready = asyncio.Event(), asyncio.Event()
    service = Service(settings)
    running = asyncio.create_task(service.run(stop, ready=ready))
    waiting = asyncio.create_task(ready.wait())
    await asyncio.wait({running, waiting}, timeout=30, return_when=asyncio.FIRST_COMPLETED)
    waiting.cancel()
    if running.done():
        await running  # it could not begin: why comes out here
    try:
        yield service
    finally:
        stop.set()
        await running


@contextmanager
def warnings_are_made() -> Iterator[None]:
    root = logging.getLogger()
    before = root.level
    root.setLevel(logging.WARNING)
    try:
        yield
    finally:
        root.setLevel(before)


async def all_begun(place: str) -> None:
    async with asyncio.timeout(20):
        while (await asked(place, "alive"))[0] == 503:  # noqa: ASYNC110 - another thread answers
            await asyncio.sleep(0.05)


async def counted(place: str, what: str) -> None:
    """Wait until this is counted at all."""
    async with asyncio.timeout(20):
        while what not in values((await asked(place, "metrics"))[1]):  # noqa: ASYNC110 - another thread answers
            await asyncio.sleep(0.05)


async def joined(server: StandIn) -> int:
    """Somebody who has joined; their chat."""
    chat = server.chats.open("Persephone")
    for count, text in enumerate((f"/start {CODE}", "yes", "no"), start=1):
        server.chats.say(chat, text)
        await server.sent(chat, count, seconds=20)
    return chat


async def test_a_whole_story_is_counted_and_nothing_of_it_is_shown(tmp_path: Path) -> None:
    place = free_place()
    async with StandIn(real_now) as server, served(server, tmp_path, place) as service:
        with warnings_are_made():
            chat = await joined(server)
            server.chats.say(chat, "137 before, quinoa chowder")
            await server.sent(chat, 4, seconds=20)
            server.faults.order(Fault.LOST_REPLY, method="sendMessage")
            server.chats.say(chat, "43 feeling shaky")
            await server.until(lambda: any("43" in sent.text for sent in server.ledger), 20)
            server.chats._add({"message": {"text": "quinoa", "date": "odd", "chat": "Persephone"}})
            await server.taken(20)
            # The stand-in has a message before the bot knows that it cannot know.
            await counted(place, 'afterplate_sends_fallen_short_total{why="Unsure"}')
            status, text = await asked(place, "metrics")
            people = await service._writer.run(service._read, lambda work: work.people())
    assert status == 200
    told = values(text)
    assert told['afterplate_messages_in_total{how="answered"}'] == 5
    assert told['afterplate_messages_in_total{how="parked"}'] == 1
    assert told["afterplate_updates_parked"] == 1
    assert told['afterplate_messages_out_total{end="sent",kind="reply"}'] >= 4
    assert told['afterplate_lateness_seconds_count{kind="reply"}'] >= 4
    assert told['afterplate_turn_seconds_count{of="message"}'] == 5
    assert told['afterplate_sends_fallen_short_total{why="Unsure"}'] == 1
    assert told['afterplate_failures_total{error="OddUpdate",event="update parked"}'] == 1
    assert told["afterplate_participants"] == 1
    assert told["afterplate_next_due_timestamp_seconds"] > 1.7e9
    assert told[f'afterplate_database_info{{kind="sqlite",version="{migrations.HEAD}"}}'] == 1
    assert f'version="{__version__}"' in text
    for loop in ("intake", "delivery", "alarm"):
        assert told[f'afterplate_loop_alive{{loop="{loop}"}}'] == 1
    (who,) = (one.participant.id for one in people)
    for secret in (
        *("Persephone", "quinoa", "chowder", "shaky", "137", "Lisbon", "112", CODE, "ABCD"),
        *(who, str(chat), TOKEN, TOKEN.split(":")[1], str(tmp_path)),
    ):
        names = [line.rpartition(" ")[0] for line in text.splitlines()]
        assert not [name for name in names if secret in name], secret


async def test_what_waits_in_the_outbox_is_told_by_kind_and_age(tmp_path: Path) -> None:
    place = free_place()
    async with StandIn(real_now) as server, served(server, tmp_path, place):
        chat = await joined(server)
        for _ in range(3):
            server.faults.order(Fault.SLOW, method="sendMessage", seconds=3)
        server.chats.say(chat, "help")
        told: dict[str, float] = {}
        async with asyncio.timeout(20):
            while not told.get('afterplate_outbox_oldest_seconds{kind="reply"}'):
                told = values((await asked(place, "metrics"))[1])
        assert told['afterplate_outbox_waiting{kind="reply"}'] == 1
        assert 0 < told['afterplate_outbox_oldest_seconds{kind="reply"}'] < 20
        assert told['afterplate_outbox_waiting{kind="caution"}'] == 0


async def test_the_pages_are_what_their_readers_expect(tmp_path: Path) -> None:
    place = free_place()
    async with StandIn(real_now) as server, served(server, tmp_path, place):
        await all_begun(place)
        assert await asked(place, "alive") == (200, "alive\n")
        status, kind, plain = await asyncio.to_thread(ask, place, "metrics")
        assert (status, kind.partition(";")[0]) == (200, "text/plain")
        assert "# HELP afterplate_messages_in_total" in plain
        openly = "application/openmetrics-text; version=1.0.0"
        status, kind, text = await asyncio.to_thread(ask, place, "metrics", "GET", openly)
        assert kind.startswith("application/openmetrics-text")
        # The library's strict parser of the OpenMetrics text format reads it.
        families = {family.name for family in text_string_to_metric_families(text)}
        assert {"afterplate_turn_seconds", "afterplate_failures"} <= families
        assert (await asyncio.to_thread(ask, place, "metrics", "HEAD"))[::2] == (200, "")
        for page, method, refused in (("", "GET", 404), ("metrics", "POST", 501)):
            assert (await asyncio.to_thread(ask, place, page, method))[0] == refused


async def test_a_place_in_use_is_refused_by_the_settings_name(tmp_path: Path) -> None:
    place = free_place()
    async with StandIn(real_now) as server, served(server, tmp_path, place):
        (tmp_path / "other").mkdir()
        with pytest.raises(Mendable, match="AFTERPLATE_METRICS: cannot listen at"):
            async with served(server, tmp_path / "other", place):
                pass


async def test_a_database_that_does_not_answer_is_told_and_the_counts_stay(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def away(_work: object, _now: object) -> None:
        raise OSError("the disk is gone")

    place = free_place()
    async with StandIn(real_now) as server, served(server, tmp_path, place):
        await all_begun(place)
        monkeypatch.setattr("bot.wiring.figures", away)
        status, wrong = await asked(place, "alive")
        told = values((await asked(place, "metrics"))[1])
        assert status == 503
        assert wrong == "database: OSError\n"
        assert told["afterplate_database_up"] == 0
        assert 'afterplate_messages_in_total{how="answered"}' in told
