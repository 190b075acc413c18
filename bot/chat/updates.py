"""An update of the Bot API as an `Incoming`. No I/O, and no trust: any shape may come.

Read from the raw JSON, not through the client's types, which refuse a whole update for one
field that is none of ours.
"""

from collections.abc import Callable, Mapping
from datetime import UTC, datetime
from typing import Any

from bot.messages import Content, Incoming

#: A Bot API message's text is at most this long; more can only be somebody's test of us.
LONGEST = 4096


class OddUpdate(ValueError):
    """An update that does not hold what the Bot API's manual says it holds."""


def incoming(
    update: Mapping[str, Any],
    *,
    now: datetime,
    bot_time: Callable[[datetime], datetime] = lambda real: real,
) -> Incoming | None:
    """Read one update; None if it holds nothing that is for us to answer.

    `now` dates what has no date of its own; `bot_time` turns a real date into the bot's time.
    Raises OddUpdate.
    """
    try:
        number = int(update["update_id"])
        if (press := update.get("callback_query")) is not None:
            return _press(number, press, now)
        if (message := update.get("edited_message")) is not None:
            edited = _message(number, message, bot_time, edited_at=now)
            # A place that goes on being shared is edited by the chat program, not by the person.
            return None if edited.content is Content.OTHER else edited
        if (message := update.get("message")) is not None:
            return _message(number, message, bot_time, edited_at=None)
    except (KeyError, TypeError, ValueError, AttributeError, OverflowError) as error:
        raise OddUpdate(type(error).__name__) from error
    return None


def press_of(update: Mapping[str, Any]) -> str | None:
    """The id of a button's press, to be told that it was taken."""
    press = update.get("callback_query")
    return str(press["id"]) if isinstance(press, Mapping) and "id" in press else None


def _press(number: int, press: Mapping[str, Any], now: datetime) -> Incoming:
    under = press.get("message") or {}
    chat = under.get("chat") or press["from"]
    return Incoming(
        update=number,
        chat=str(int(chat["id"])),
        message=f"press:{press['id']}",
        at=now,
        text=clean(press.get("data") or ""),
        quotes=str(int(under["message_id"])) if "message_id" in under else None,
        private=under.get("chat", {}).get("type", "private") == "private",
    )


def _message(
    number: int,
    message: Mapping[str, Any],
    bot_time: Callable[[datetime], datetime],
    *,
    edited_at: datetime | None,
) -> Incoming:
    said_at = bot_time(datetime.fromtimestamp(int(message["date"]), UTC))
    photo = _photo(message)
    text = message.get("text")
    if text is None:
        text = message.get("caption") or ""
    quoted = message.get("reply_to_message")
    return Incoming(
        update=number,
        chat=str(int(message["chat"]["id"])),
        message=str(int(message["message_id"])),
        at=edited_at or said_at,
        text=clean(text),
        content=_content(message, photo),
        said_at=said_at if edited_at else None,
        edits=edited_at is not None,
        quotes=str(int(quoted["message_id"])) if quoted else None,
        photo=photo,
        album=str(message["media_group_id"]) if "media_group_id" in message else None,
        private=message["chat"]["type"] == "private",
    )


def _content(message: Mapping[str, Any], photo: str | None) -> Content:
    if photo is not None:
        return Content.PHOTO
    return Content.TEXT if "text" in message else Content.OTHER


def _photo(message: Mapping[str, Any]) -> str | None:
    sizes = message.get("photo")
    return str(sizes[-1]["file_id"]) if sizes else None


def clean(text: str) -> str:
    """Take out what a database refuses: NUL, and halves of surrogate pairs."""
    whole = text.encode("utf-16", "surrogatepass").decode("utf-16", "replace")
    return whole.replace("\0", "")[:LONGEST]
