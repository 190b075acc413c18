"""A message of a chat as the chat page shows it: plain values, text as text."""

import textwrap
from datetime import UTC, datetime
from typing import Any, Final
from zoneinfo import ZoneInfo

from bot.trial.chats import BOT, WITHOUT_TEXT, Chat, Json
from bot.trial.methods import labels
from bot.trial.spoken import spoken

#: Where a picture's words did not fit under it, they are the message after it.
WORDS_FOLLOW: Final = "A chart. The next message says all that it shows."


def shown(chat: Chat, zone: str) -> list[Json]:
    """All messages of a chat, with the times of that zone."""
    return [_message(message, chat, ZoneInfo(zone)) for message in chat.history.values()]


def _message(message: Json, chat: Chat, zone: ZoneInfo) -> Json:
    at = datetime.fromtimestamp(message["date"], UTC).astimezone(zone)
    words = _words(message)
    found: dict[str, Any] = {
        "id": message["message_id"],
        "mine": message["from"] != BOT,
        "at": f"{at:%H:%M}",
        "day": f"{at:%A} {at.day} {at:%B}",
        "when": at.isoformat(),
        "text": words,
        "edited": "edit_date" in message,
        "buttons": labels(message.get("reply_markup", {})),
        "pressed": chat.pressed.get(message["message_id"]),
    }
    if (answered := message.get("reply_to_message")) is not None:
        found["answers"] = {
            "id": answered["message_id"],
            "text": textwrap.shorten(_words(answered), 60, placeholder=" …"),
            "lang": spoken(_words(answered)),
        }
    if found["mine"]:
        return found | _of_mine(message)
    return found | {"lang": spoken(_all_words(message))} | _of_the_bot(message, words)


def _all_words(message: Json) -> str:
    """With those of its buttons: under a picture there may be no others."""
    return " ".join((_words(message), *labels(message.get("reply_markup", {}))))


def _words(message: Json) -> str:
    return str(message.get("text", message.get("caption", "")))


def _of_mine(message: Json) -> Json:
    kinds = [kind for kind, content in WITHOUT_TEXT.items() if next(iter(content)) in message]
    if "photo" in message:
        kinds = ["photo of a plate"]
    return {"note": kinds[0]} if kinds else {}


def _of_the_bot(message: Json, words: str) -> Json:
    if "photo" in message:
        # The bot's rule: the words under a picture carry every fact that it shows.
        picture = {"address": f"file/{message['photo'][-1]['file_id']}"}
        return {"picture": {**picture, "words": words or WORDS_FOLLOW}}
    if "document" in message:
        document = message["document"]
        return {
            "file": {"name": document["file_name"], "address": f"file/{document['file_id']}"},
        }
    return {}
