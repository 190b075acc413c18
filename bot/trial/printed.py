"""A chat's history as a person would read it on paper."""

import textwrap
from collections.abc import Iterator
from datetime import UTC, datetime
from typing import Final
from zoneinfo import ZoneInfo

from bot.trial.chats import BOT, WITHOUT_TEXT, Chat, Json
from bot.trial.methods import labels

WIDTH: Final = 88
BOT_NAME: Final = "bot"


def printed(chat: Chat, zone: str) -> str:
    """All messages of a chat, by day, with the times of that zone."""
    lines = [chat.name, "=" * len(chat.name)]
    day = None
    for message in chat.history.values():
        at = datetime.fromtimestamp(message["date"], UTC).astimezone(ZoneInfo(zone))
        if at.date() != day:
            day = at.date()
            lines += ["", f"── {at:%A} {at.day} {at:%B %Y} ".ljust(WIDTH, "─"), ""]
        lines += _spoken(at, message, chat)
    return "\n".join(lines) + "\n"


def _spoken(at: datetime, message: Json, chat: Chat) -> Iterator[str]:
    name = BOT_NAME if message["from"] == BOT else chat.name
    margin = f"{at:%H:%M}  {name:>{max(len(BOT_NAME), len(chat.name))}}  "
    text = "\n".join(_parts(message))
    for paragraph in text.split("\n"):
        yield textwrap.fill(
            paragraph,
            WIDTH,
            initial_indent=margin,
            subsequent_indent=" " * len(margin),
            break_long_words=False,
        )
        margin = " " * len(margin)


def _parts(message: Json) -> Iterator[str]:
    """What stands in one message, pictures and the like named in brackets."""
    if "reply_to_message" in message:
        yield f"[to: {_shortened(message['reply_to_message'])}]"
    if "photo" in message:
        yield "[picture]"
    for kind, content in WITHOUT_TEXT.items():
        if next(iter(content)) in message:
            yield f"[{kind}]"
    yield str(message.get("text", message.get("caption", "")))
    if "edit_date" in message:
        yield "[edited]"
    if "reply_markup" in message:
        yield "  ".join(f"[{label}]" for label in labels(message["reply_markup"]))


def _shortened(message: Json) -> str:
    text = str(message.get("text", message.get("caption", "")))
    return textwrap.shorten(text, 40, placeholder=" …")
