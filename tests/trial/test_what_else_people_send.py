"""Every kind of message, through the loopback API server: design of the bot, "What else people
send". Each is answered, none is lost, and nothing is kept that should not be."""

from datetime import timedelta

import pytest

from bot.record import fold
from bot.trial.faults import Fault
from tests.trial.conftest import NOON, Talk

pytestmark = pytest.mark.live


async def record_of(talk: Talk):
    def question(work):
        opened = work.open("ana", talk.clock.now())
        return fold(opened.participant, opened.whole())

    return await talk.kept(question)


@pytest.mark.parametrize("kind", ["voice", "sticker", "contact", "place", "file", "video"])
async def test_what_holds_no_text_gets_one_kind_line(ana: Talk, kind: str) -> None:
    ana.chats.send(ana.chat, kind)
    [reply] = await ana.heard()
    assert "text" in reply.text
    assert "emergency number" in reply.text
    assert not (await record_of(ana)).readings


async def test_photo_with_words_is_a_meal(ana: Talk) -> None:
    ana.chats.photo(ana.chat, "118, rice and beans")
    [reply] = await ana.heard()
    assert "14:00" in reply.text
    [meal] = (await record_of(ana)).meals
    assert meal.entry.text == "rice and beans"


async def test_photo_without_words_is_asked_about(ana: Talk) -> None:
    ana.chats.photo(ana.chat)
    [reply] = await ana.heard()
    assert "?" in reply.text or "text" in reply.text.lower()
    assert not (await record_of(ana)).meals


@pytest.mark.parametrize(
    ("words", "asked"), [(("", "", ""), True), (("118, rice and beans", "", ""), False)]
)
async def test_photos_sent_together_are_answered_once(
    ana: Talk, words: tuple[str, ...], asked: bool
) -> None:
    for under in words:
        ana.chats.photo(ana.chat, under, album="a1")
    [reply] = await ana.heard()
    assert ("cannot read it" in reply.text) == asked
    assert len((await record_of(ana)).meals) == (not asked)


async def test_words_under_a_later_photo_of_an_album_are_heard(ana: Talk) -> None:
    ana.chats.photo(ana.chat, album="a1")
    ana.chats.photo(ana.chat, "rice and beans", album="a1")
    await ana.heard()
    ana.chats.photo(ana.chat, album="a2")
    [reply] = (await ana.heard())[-1:]
    assert "cannot read it" in reply.text
    [meal] = (await record_of(ana)).meals
    assert meal.entry.text == "rice and beans"


async def test_edited_message_mends_what_it_first_said(ana: Talk) -> None:
    first = ana.chats.say(ana.chat, "118, rice and beans")
    await ana.heard()
    ana.clock.step_to(NOON + timedelta(minutes=5))
    ana.chats.edit(ana.chat, first, "128, rice and beans")
    await ana.heard()
    record = await record_of(ana)
    assert [noted.entry.value for noted in record.readings] == [128]
    assert [noted.entry.started_at for noted in record.meals] == [NOON]


async def test_edit_that_changes_nothing_changes_nothing(ana: Talk) -> None:
    first = ana.chats.say(ana.chat, "118, rice and beans")
    await ana.heard()
    ana.chats.edit(ana.chat, first, "118, rice and beans")
    await ana.heard()
    assert len((await record_of(ana)).readings) == 1


async def test_short_messages_in_a_row_are_one_report(ana: Talk) -> None:
    for text in ("118", "rice", "and beans"):
        ana.chats.say(ana.chat, text)
    await ana.heard()
    record = await record_of(ana)
    assert [noted.entry.value for noted in record.readings] == [118]
    [meal] = record.meals
    assert "rice" in meal.entry.text
    assert "beans" in meal.entry.text


async def test_quoting_a_prompt_answers_that_prompt(ana: Talk) -> None:
    await ana.say("118, rice and beans")
    [prompt] = await ana.passes(hours=2)
    await ana.passes(minutes=1)
    [closing] = await ana.say("154", quotes=prompt.message)
    assert "36" in closing.text


async def test_pressed_button_types_its_text(ana: Talk) -> None:
    *_, asked = await ana.say("112")
    assert "before a meal" in asked.buttons
    ana.chats.press(ana.chat, asked.message, "before a meal")
    assert await ana.heard()
    assert ana.trial.server.calls["answerCallbackQuery"] == 1
    [reading] = (await record_of(ana)).readings
    assert reading.entry.moment == "before_meal"


async def test_group_is_told_once_and_nothing_is_kept(stranger: Talk) -> None:
    group = stranger.chats.open("Family", group=True)
    for text in ("118, rice", "/start ABC", "hello"):
        stranger.chats.say(group, text)
        await stranger.heard()
    assert len(stranger.trial.server.sent_to(group)) == 1
    assert await stranger.kept(lambda work: work.people()) == []


async def test_update_that_comes_twice_is_handled_once(ana: Talk) -> None:
    ana.chats.say(ana.chat, "118, rice and beans")
    [update] = ana.chats.updates
    assert len(await ana.heard()) == 1
    ana.chats.again(update)
    assert await ana.heard() == []


async def test_who_blocks_the_bot_gets_nothing_and_is_taken_up_again(ana: Talk) -> None:
    await ana.say("118, rice and beans")
    ana.chats.block(ana.chat)
    assert await ana.passes(hours=2) == []
    ana.chats.block(ana.chat, blocked=False)
    assert await ana.passes(minutes=5) == []
    assert await ana.say("154")


async def test_erase_removes_everything_after_one_confirmation(ana: Talk) -> None:
    await ana.say("118, rice and beans")
    await ana.say("erase")
    assert len(await ana.kept(lambda work: work.people())) == 1
    assert await ana.say("yes")
    assert await ana.kept(lambda work: work.people()) == []
    assert await ana.passes(days=8) == []


async def test_reply_whose_answer_was_lost_comes_at_most_twice(ana: Talk) -> None:
    ana.trial.server.faults.order(Fault.LOST_REPLY, method="sendMessage", times=5)
    await ana.say("118, rice and beans")
    assert len(ana.trial.server.sent_to(ana.chat)) <= 2


@pytest.mark.parametrize(
    "text",
    ["", "🙂", "a" * 4096, "\u0000118", "１１８, rice", "'; drop table entry; --", "{}", "%s%n"],
    ids=["empty", "emoji", "long", "NUL", "full width", "SQL", "braces", "format"],
)
async def test_any_text_is_answered_and_nothing_is_parked(ana: Talk, text: str) -> None:
    if text:
        assert await ana.say(text)
    else:
        await ana.say(text)
    assert await ana.kept(lambda work: work.parked()) == []
