"""What an outage of a quarter of an hour, a clock gone wrong or a broken file may not cost."""

import asyncio
import sqlite3
import subprocess
import sys
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy.exc import OperationalError
from telegram.error import BadRequest, Forbidden, NetworkError, TelegramError

from bot.chat.port import ChatError, Gone, NotSent, Refused, Throttled, Unsure
from bot.chat.telegram import DEFAULT_RETRY, fault_of
from bot.conversation import Conversation
from bot.letterbox import Letterbox
from bot.making import Makes
from bot.mendable import Mendable
from bot.messages import Incoming, Kind
from bot.storage.backup import back_up, restore
from bot.storage.letters import Letter
from bot.storage.sqlite import OneServer
from bot.storage.store import Store
from bot.trial.faults import Fault
from bot.words.language import language
from scheduler.clock import real_now
from tests.conversation.echo import START, WallClock, echo_turns, person, saying, served, until
from tests.faults.test_delivery import given_back, of, queue, settled, states

pytestmark = pytest.mark.live


# --- what an answer tells ----------------------------------------------------------------------


def by_a_proxy(error: TelegramError) -> TelegramError:
    """As the client raises it for a page that is no JSON."""
    error.__cause__ = TelegramError("Invalid server response")
    return error


@pytest.mark.parametrize(
    ("error", "told"),
    [
        (Forbidden("Forbidden: bot was blocked by the user"), Gone),
        (Forbidden("Forbidden (403)"), Unsure),
        (by_a_proxy(Forbidden("Forbidden (403). Parsing the server response failed")), Unsure),
        (BadRequest("Bad Request: message text is empty"), Refused),
        (by_a_proxy(BadRequest("Bad Request (400). Parsing the server response failed")), Unsure),
        (NetworkError("Too Many Requests"), Throttled),
        (by_a_proxy(NetworkError("Too Many Requests (429). Parsing failed")), Throttled),
    ],
)
def test_only_the_api_itself_says_that_a_chat_or_a_message_is_given_up(
    error: TelegramError, told: type[ChatError]
) -> None:
    fault = fault_of(error)
    assert type(fault) is told
    if isinstance(fault, Throttled):
        assert fault.retry_after == DEFAULT_RETRY


async def test_an_answer_that_is_none_is_unsure_and_no_lease_has_to_run_out(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        real, answers = bot.service._delivery._chat.send, iter([KeyError("result")])

        async def send(chat: str, part: Any) -> Any:
            if (odd := next(answers, None)) is not None:
                raise odd
            return await real(chat, part)

        monkeypatch.setattr(bot.service._delivery._chat, "send", send)
        await queue(bot, of(Kind.CAUTION, "sugar now"))
        await until(lambda: next(answers, 1) == 1 and bot.service.is_idle)
        bot.shift(seconds=6)
        await settled(bot)
        assert states(bot) == {"sent": 1}
    assert bot.texts(ann) == ["sugar now"]


# --- an outage ---------------------------------------------------------------------------------


async def test_the_last_copy_of_a_caution_waits_until_a_short_outage_is_over(
    tmp_path: Path,
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        bot.server.faults.order(Fault.BREAKS, method="sendMessage", times=2)
        await queue(bot, of(Kind.CAUTION, "sugar now"))
        await given_back(bot, 1)
        bot.shift(seconds=6)
        await given_back(bot, 2)
        bot.shift(seconds=170)
        await asyncio.sleep(0.05)
        assert bot.texts(ann) == []
        bot.shift(seconds=11)
        await settled(bot)
        assert bot.texts(ann) == ["sugar now"]


async def test_many_sends_that_fail_at_one_time_are_one_failure(tmp_path: Path) -> None:
    async with served(tmp_path) as bot:
        delivery = bot.service._delivery
        began = bot.clock.monotonic()
        for _ in range(50):
            delivery._hold(NotSent("ConnectError"), began)
        assert delivery._pace.wait(bot.clock.monotonic()) <= 0.5


async def test_a_caution_does_not_wait_behind_the_buttons_that_others_pressed(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    async with served(tmp_path) as bot:
        ann, ben = await bot.enrolled("Ann"), await bot.enrolled("Ben")

        async def hangs(_press: str) -> None:
            await asyncio.Event().wait()

        monkeypatch.setattr(bot.service._taking, "_press_seen", hangs)
        bot.server.chats.say(ben, "buttons")
        await bot.server.sent(ben, 1)
        bot.server.chats.press(ben, bot.server.sent_to(ben)[0].message, "yes")
        await bot.server.sent(ben, 2)
        bot.server.chats.say(ann, "caution, 48")
        await bot.server.sent(ann, 2)
    assert "caution, 48" in bot.texts(ann)


async def test_a_caution_passes_the_picture_that_is_being_drawn_for_its_reader(
    tmp_path: Path,
) -> None:
    drawn = asyncio.Event()

    async def draw(_row: int, _picture: Any) -> bytes:
        await drawn.wait()
        return b"\x89PNG"

    async with served(tmp_path, makes=Makes(draw=draw)) as bot:
        ann = await bot.enrolled()
        week = of(Kind.DIGEST, "your week", picture={"figures": 1})
        await queue(bot, week)
        await until(lambda: states(bot) == {"claimed": 1})
        await queue(bot, of(Kind.CAUTION, "sugar now"))
        await bot.server.sent(ann, 1)
        assert bot.texts(ann) == ["sugar now"]
        drawn.set()
        await settled(bot)
    assert bot.texts(ann) == ["sugar now", "your week"]


async def test_words_are_whole_where_the_picture_fails_that_arrived_before_a_break() -> None:
    words = "w" * 1025  # too long for a caption: the picture was a part of its own
    letter = Letter(
        id=1,
        reader="ann",
        chat="7",
        kind=Kind.DIGEST,
        about=None,
        key="week",
        text=words,
        due_at=START,
        expires_at=None,
        picture={"figures": 1},
        buttons=(),
        attachment=None,
        attempts=1,
        copies=0,
        parts_done=1,
    )
    parts = await Makes().parts(letter)  # nothing can be drawn
    assert "".join(part.text for part in parts[letter.parts_done :]) == words


async def test_what_is_claimed_while_the_bot_stops_is_given_back(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        delivery = bot.service._delivery
        claim = delivery._box.claim

        def claim_and_stop(*args: Any) -> Any:
            letter = claim(*args)
            if letter is not None:
                delivery._stopping = True
            return letter

        monkeypatch.setattr(delivery._box, "claim", claim_and_stop)
        await queue(bot, of(Kind.DIGEST, "your week"))
        await until(lambda: delivery._stopping and states(bot) == {"pending": 1})
        await bot.stop()
        await bot.start()
        await settled(bot)
    assert bot.texts(ann) == ["your week"]


async def test_a_day_without_room_on_the_disk_is_told_like_a_day_away(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    async with served(tmp_path) as bot:
        ann = await bot.enrolled()
        real = bot.service._taking.take_all

        async def full(_updates: Any) -> None:
            raise OperationalError("COMMIT", None, sqlite3.OperationalError("disk is full"))

        monkeypatch.setattr(bot.service._taking, "take_all", full)
        bot.server.chats.say(ann, "118")
        await asyncio.sleep(0.1)
        bot.shift(hours=26)
        monkeypatch.setattr(bot.service._taking, "take_all", real)
        await bot.server.sent(ann, 1)
        bot.shift(hours=9)  # past a night's quiet time
        await bot.server.sent(ann, 2)
    assert language("en").prompts.away in bot.texts(ann)


# --- a clock that is set back ------------------------------------------------------------------


async def test_nothing_waits_an_hour_because_the_clock_was_set_back(tmp_path: Path) -> None:
    async with served(tmp_path, clock=WallClock()) as bot:
        ann = await bot.enrolled()
        bot.server.faults.order(Fault.TOO_MANY, method="sendMessage", seconds=1)
        await queue(bot, of(Kind.CAUTION, "sugar now"), of(Kind.PROMPT, "test now", to="ben"))
        await given_back(bot, 1)
        bot.shift(hours=-1)
        await bot.server.sent(ann, 1)
    assert bot.texts(ann) == ["sugar now"]


async def test_a_clock_that_was_wrong_for_a_moment_loses_no_prompt(tmp_path: Path) -> None:
    async with served(tmp_path, clock=WallClock()) as bot:
        ann = await bot.enrolled()
        bot.shift(hours=9)
        await bot.heard(ann, "ring 60")  # its wake is nine hours away once the clock is right
        await until(lambda: abs(bot.service._setback.by()) < timedelta(minutes=1))
        bot.shift(hours=-9)
        await bot.server.sent(ann, 2)
    assert bot.texts(ann)[-1].startswith("prompt")


# --- a file that is broken, lost or another's --------------------------------------------------


@pytest.fixture
def database(tmp_path: Path) -> Path:
    path = tmp_path / "bot.db"
    store = Store.open(f"sqlite:///{path}")
    with store.turn() as work:
        for number in range(400):
            work.enrol(person(f"p{number}", name="x" * 200), START)
            work.outbox.queue([saying(f"p{number}", "hello " * 30, "k")], START)
    store.close()
    return path


def break_pages(path: Path) -> None:
    """Write over all but the first pages, as a failing disk may."""
    whole = bytearray(path.read_bytes())
    page = 4096
    for start in range(12 * page, len(whole), page):
        whole[start : start + 64] = b"\xff" * 64
    path.write_bytes(whole)


async def test_a_damaged_database_is_not_served(database: Path, tmp_path: Path) -> None:
    break_pages(database)
    with pytest.raises(Mendable, match="damaged"):
        async with served(tmp_path):
            pass


def test_a_database_that_turns_out_damaged_ends_the_turn_for_a_person_to_see_to(
    database: Path,
) -> None:
    store = Store.open(f"sqlite:///{database}")
    break_pages(database)
    with pytest.raises(Mendable, match="restore a backup"), store.turn() as work:
        work.people()
    store.close()


def test_a_log_without_its_database_is_kept(database: Path) -> None:
    log = Path(f"{database}-wal")
    log.write_bytes(b"what was committed last")
    database.rename(database.with_suffix(".away"))
    with pytest.raises(Mendable, match="bring the file back"):
        Store.open(f"sqlite:///{database}")
    assert log.read_bytes() == b"what was committed last"
    assert not database.exists()


async def test_a_second_bot_changes_nothing_before_it_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "bot.db"
    mark = OneServer(str(path))
    mark.take()
    try:
        with pytest.raises(Mendable, match="serves this database already"):
            async with served(tmp_path):
                pass
    finally:
        mark.release()
    assert path.stat().st_size == 0


def test_a_served_file_is_not_restored_under_another_name(database: Path, tmp_path: Path) -> None:
    copy, link = tmp_path / "copy.db", tmp_path / "link.db"
    back_up(str(database), copy)
    link.symlink_to(database)
    mark = OneServer(str(link))
    mark.take()
    try:
        database.rename(tmp_path / "away.db")
        with pytest.raises(Mendable, match="serves this database already"):
            restore(copy, str(database))
    finally:
        mark.release()


def test_an_index_that_lacks_rows_is_damage(database: Path, tmp_path: Path) -> None:
    with sqlite3.connect(database) as connection:
        connection.execute("PRAGMA writable_schema = ON")
        connection.execute("UPDATE sqlite_schema SET sql = sql || ' ' WHERE type = 'index'")
        (root,) = connection.execute(
            "SELECT rootpage FROM sqlite_schema WHERE name = 'outbox_said_once'"
        ).fetchone()
    connection.close()
    whole = bytearray(database.read_bytes())
    start = (root - 1) * 4096
    whole[start : start + 8] = bytes([10, 0, 0, 0, 0, 16, 0, 0])  # an empty leaf of an index
    database.write_bytes(whole)
    with pytest.raises(Mendable, match="not whole"):
        back_up(str(database), tmp_path / "copy.db")


# --- who is written to -------------------------------------------------------------------------


@pytest.mark.parametrize(("seconds", "states"), [(-1, {"pending": 2}), (1, {"cancelled": 2})])
def test_whoever_writes_while_a_send_finds_them_gone_is_taken_for_back(
    seconds: int, states: dict[str, int]
) -> None:
    store, back = Store.in_memory(), START + timedelta(minutes=5)
    box = Letterbox(store, WallClock(), lambda _work: True)
    talk = Conversation(store, echo_turns, real_now=lambda: START, new_id=lambda: "x")
    talk.enrol(person("ann"), START, chat="100")
    with store.turn() as work:
        work.outbox.queue([saying("ann", "your week", "k", kind=Kind.REPLY)], START)
        letter = work.outbox.claim(START, START)
    assert letter is not None
    talk.hear(Incoming(update=1, chat="100", message="1", at=back, text="I am back"), back)
    box.chat_gone(letter, back + timedelta(seconds=seconds))
    with store.turn() as work:
        assert work.outbox.counts() == states
        assert (work.outbox.chat_of("ann") is None) == (seconds > 0)
    store.close()


def test_nothing_is_kept_of_a_chat_that_is_nobodys_and_takes_no_messages() -> None:
    store, now = Store.in_memory(), START
    with store.turn() as work:
        work.outbox.queue([saying("chat:7", "who are you?", "k", at=now)], now)
        work.outbox.cancel_for("chat:7", now)
        assert work.outbox.counts() == {}
    store.close()


async def test_whoever_wants_silence_gets_nothing_that_still_waits(tmp_path: Path) -> None:
    from bot.wiring import live_turns  # noqa: PLC0415

    async with served(tmp_path, turns=live_turns()) as bot:
        ann = await bot.enrolled()
        later = real_now() + timedelta(hours=1)
        await queue(
            bot,
            *(
                saying("ann", kind.value, kind.value, at=later, kind=kind)
                for kind in (Kind.PROMPT, Kind.DIGEST, Kind.NOTE)
            ),
        )
        await bot.heard(ann, "stop")
        await until(lambda: bot.service.is_idle)
        assert states(bot) == {"cancelled": 3, "sent": 1}


def test_a_name_server_that_does_not_answer_holds_up_no_end() -> None:
    code = (
        "import asyncio, time; from bot.commands import serve\n"
        "async def main():\n"
        "    asyncio.get_running_loop().run_in_executor(None, time.sleep, 60)\n"
        "    serve.leave_soon()\n"
        "asyncio.run(main())"
    )
    ended = subprocess.run([sys.executable, "-c", code], timeout=30, check=False)
    assert ended.returncode == 0
