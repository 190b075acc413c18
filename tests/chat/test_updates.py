"""Updates as the Bot API sends them, and as nobody should (shapes: its public manual)."""

from contextlib import suppress
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.chat.updates import OddUpdate, clean, incoming, press_of
from bot.messages import Content
from bot.trial.chats import WITHOUT_TEXT, Chats

NOW = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)


@pytest.fixture
def chats() -> Chats:
    return Chats(lambda: NOW - timedelta(minutes=5))


def last(chats: Chats) -> Any:
    return incoming(chats.updates[-1], now=NOW)


def test_a_text_is_said_when_it_was_written_not_when_it_is_read(chats: Chats) -> None:
    ann = chats.open("Ann")
    message = chats.say(ann, "118 rice")
    heard = last(chats)
    assert (heard.chat, heard.message, heard.text) == (str(ann), str(message), "118 rice")
    assert heard.at == NOW - timedelta(minutes=5)
    assert heard.private
    assert not heard.edits


def test_an_edit_keeps_when_it_was_first_said_and_comes_now(chats: Chats) -> None:
    ann = chats.open("Ann")
    message = chats.say(ann, "118 rice")
    chats.edit(ann, message, "181 rice")
    heard = last(chats)
    assert (heard.message, heard.text, heard.edits) == (str(message), "181 rice", True)
    assert heard.said_at == NOW - timedelta(minutes=5)
    assert heard.at == NOW


def test_a_photo_comes_with_its_id_and_its_words(chats: Chats) -> None:
    ann = chats.open("Ann")
    chats.photo(ann, "118 this plate")
    heard = last(chats)
    assert (heard.content, heard.text) == (Content.PHOTO, "118 this plate")
    assert heard.photo.startswith("photo-")


@pytest.mark.parametrize("kind", sorted(WITHOUT_TEXT))
def test_what_holds_no_text_is_told_apart(chats: Chats, kind: str) -> None:
    chats.send(chats.open("Ann"), kind)
    assert (last(chats).content, last(chats).text) == (Content.OTHER, "")


def test_a_reply_names_what_it_quotes(chats: Chats) -> None:
    ann = chats.open("Ann")
    asked = chats.post(ann, {"text": "test now"})["message_id"]
    chats.say(ann, "150", quotes=asked)
    assert last(chats).quotes == str(asked)


def test_a_press_types_the_text_of_the_button_under_its_message(chats: Chats) -> None:
    ann = chats.open("Ann")
    button = [[{"text": "yes", "callback_data": "yes"}]]
    asked = chats.post(ann, {"text": "go on?", "reply_markup": {"inline_keyboard": button}})
    chats.press(ann, asked["message_id"], "yes")
    heard = last(chats)
    assert (heard.text, heard.quotes, heard.at) == ("yes", str(asked["message_id"]), NOW)
    assert press_of(chats.updates[-1]) in chats.queries
    assert press_of({"message": {}}) is None


def test_a_group_is_told_apart(chats: Chats) -> None:
    chats.say(chats.open("Family", group=True), "hello")
    assert not last(chats).private


def test_a_real_date_is_turned_into_the_bots_time(chats: Chats) -> None:
    chats.say(chats.open("Ann"), "118")
    heard = incoming(chats.updates[-1], now=NOW, bot_time=lambda real: real + timedelta(days=3))
    assert heard is not None
    assert heard.at == NOW - timedelta(minutes=5) + timedelta(days=3)


def test_what_is_not_for_us_to_answer_gives_nothing(chats: Chats) -> None:
    chats.block(chats.open("Ann"))
    assert last(chats) is None


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=5),
    lambda inner: (
        st.lists(inner, max_size=3)
        | st.dictionaries(
            st.sampled_from(
                (
                    "message_id",
                    "date",
                    "chat",
                    "id",
                    "type",
                    "text",
                    "photo",
                    "from",
                    "caption",
                    "reply_to_message",
                    "data",
                    "message",
                    "file_id",
                )
            ),
            inner,
            max_size=6,
        )
    ),
    max_leaves=20,
)


@given(st.sampled_from(("message", "edited_message", "callback_query")), JSON)
def test_any_shape_is_read_or_refused_and_never_breaks(kind: str, body: Any) -> None:
    with suppress(OddUpdate):
        incoming({"update_id": 1, kind: body}, now=NOW)


@given(st.text())
def test_text_can_always_be_kept(text: str) -> None:
    kept = clean(text + "\0\ud83d")
    assert "\0" not in kept
    kept.encode("utf-8")


def test_a_place_that_goes_on_being_shared_says_nothing_anew() -> None:
    message = {
        "message_id": 5,
        "date": 1772452800,
        "edit_date": 1772452860,
        "chat": {"id": 7, "type": "private"},
        "location": {"latitude": 1.0, "longitude": 2.0, "live_period": 900},
    }
    now = datetime(2026, 3, 2, 12, 1, tzinfo=UTC)
    assert incoming({"update_id": 1, "edited_message": message}, now=now) is None
    first = incoming({"update_id": 1, "message": message}, now=now)
    assert first is not None
    assert first.content is Content.OTHER
