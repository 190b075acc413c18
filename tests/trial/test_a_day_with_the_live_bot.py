"""What a participant meets, through the real client, the real file and the real alarm clock."""

from datetime import UTC, datetime, timedelta

import pytest

from bot.participants import Invitation
from bot.units import Unit
from tests.trial.conftest import LISBON, NOON, Talk

pytestmark = pytest.mark.live

# A word of a question, and what Ana answers to it.
ANSWERS = {
    "agree": "yes",
    "your educator about": "no",
    "largest meal": "13:00",
    "too low": "no",
    "ketones": "no",
}


def answer_to(question: str) -> str:
    return next(answer for word, answer in ANSWERS.items() if word in question)


async def test_joining_takes_a_code_and_a_yes(stranger: Talk) -> None:
    code = stranger.trial.invite(Invitation(zone=LISBON, unit=Unit.MG_DL))
    [how] = await stranger.say("hello")
    assert "code" in how.text
    assert await stranger.kept(lambda work: work.chat(str(stranger.chat))) is None

    [welcome] = await stranger.say(f"/start {code}")
    assert welcome.buttons == ("yes", "no")
    assert await stranger.kept(lambda work: work.people()) == []

    asked = [welcome]
    for _ in range(len(ANSWERS)):
        if await stranger.kept(lambda work: work.people()):
            break
        asked = await stranger.say(answer_to(asked[-1].text))
    assert "118, rice and beans" in asked[-1].text
    [enrolled] = await stranger.kept(lambda work: work.people())
    assert enrolled.participant.zone == LISBON
    assert enrolled.participant.tell_educator is False
    assert enrolled.participant.may_go_low is False

    again = stranger.chats.open("Ben")
    stranger.chats.say(again, f"/start {code}")
    await stranger.heard()
    assert "code" in stranger.trial.server.sent_to(again)[-1].text
    assert len(await stranger.kept(lambda work: work.people())) == 1


async def test_reading_and_meal_are_said_back_and_asked_about_two_hours_later(ana: Talk) -> None:
    [reply] = await ana.say("118, rice and beans")
    assert "118" in reply.text
    assert "ice and beans" in reply.text
    assert "14:00" in reply.text

    assert await ana.passes(minutes=119) == []
    [prompt] = await ana.passes(minutes=1)
    assert prompt.at == NOON + timedelta(hours=2)
    assert "ice and beans" in prompt.text

    [closing] = await ana.say("154")
    assert "154" in closing.text
    assert "36" in closing.text
    assert await ana.passes(hours=2) == []


async def test_low_brings_its_caution_at_once_and_a_recheck(ana: Talk) -> None:
    cautions = await ana.say("62")
    assert "15 g" in cautions[0].text
    assert cautions[0].at == NOON
    [recheck] = await ana.passes(minutes=15)
    assert recheck.at == NOON + timedelta(minutes=15)
    assert "15 g" not in (await ana.say("92"))[0].text


async def test_emergency_words_come_first(ana: Talk) -> None:
    first, *_ = await ana.say("chest pain, 118, rice")
    assert "emergency" in first.text.lower()


async def test_week_ends_with_a_picture_and_its_words(ana: Talk) -> None:
    for _ in range(6):
        await ana.say("118, rice and beans")
        await ana.passes(hours=2)
        await ana.say("154")
        await ana.passes(hours=22)
    sunday = await ana.passes(hours=6)
    [digest] = [sent for sent in sunday if sent.picture is not None]
    assert digest.at == datetime(2026, 3, 8, 18, 0, tzinfo=UTC)
    assert digest.picture is not None
    assert digest.picture.startswith(b"\x89PNG")
    assert len(digest.picture) <= 60_000
    assert 0 < len(digest.text.split()) <= 120


async def test_stop_is_silence_and_a_low_still_gets_its_caution(ana: Talk) -> None:
    await ana.say("118, rice and beans")
    assert await ana.say("stop")
    assert await ana.passes(days=10) == []
    cautions = await ana.say("62")
    assert "15 g" in cautions[0].text


async def test_prompt_that_fell_due_while_the_bot_was_down_comes_if_still_useful(
    ana: Talk,
) -> None:
    await ana.say("118, rice and beans")
    await ana.trial.stop_bot()
    ana.clock.step_to(NOON + timedelta(hours=2, minutes=10))
    await ana.trial.start_bot()
    assert len(await ana.heard()) == 1


async def test_prompt_that_is_of_no_use_any_more_never_comes(ana: Talk) -> None:
    await ana.say("118, rice and beans")
    await ana.trial.stop_bot()
    ana.clock.step_to(NOON + timedelta(hours=5))
    await ana.trial.start_bot()
    assert await ana.heard() == []
