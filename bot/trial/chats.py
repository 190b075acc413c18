"""The chats that a stand-in server holds: what people write, and the updates a bot gets of it.

In memory only. Shapes are those of the public Bot API (its object names: Update, Message, Chat,
User, CallbackQuery, ChatMemberUpdated), reduced to the fields that a bot for text needs.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime
from typing import Any

Json = dict[str, Any]

BOT: Json = {
    "id": 4200,
    "is_bot": True,
    "first_name": "Afterplate",
    "username": "afterplate_trial_bot",
    "can_join_groups": True,
    "can_read_all_group_messages": False,
    "supports_inline_queries": False,
}

# What a message of a kind without text carries. The least that the API promises of each.
WITHOUT_TEXT: dict[str, Json] = {
    "voice": {"voice": {"file_id": "voice", "file_unique_id": "v", "duration": 3}},
    "sticker": {
        "sticker": {
            "file_id": "sticker",
            "file_unique_id": "s",
            "type": "regular",
            "width": 512,
            "height": 512,
            "is_animated": False,
            "is_video": False,
        }
    },
    "contact": {"contact": {"phone_number": "+10000000000", "first_name": "Somebody"}},
    "place": {"location": {"latitude": 0.0, "longitude": 0.0}},
    "file": {"document": {"file_id": "file", "file_unique_id": "f", "file_name": "list.pdf"}},
    "video": {
        "video": {
            "file_id": "video",
            "file_unique_id": "w",
            "width": 640,
            "height": 480,
            "duration": 4,
        }
    },
}


@dataclass(slots=True)
class Chat:
    """One chat: a person (their id is the chat's) or a group.

    `history` holds every Message by its id, `pressed` the label last pressed under one.
    """

    id: int
    name: str
    group: bool = False
    blocked: bool = False
    history: dict[int, Json] = field(default_factory=dict)
    pressed: dict[int, str] = field(default_factory=dict)

    def as_json(self) -> Json:
        """The API's Chat object."""
        if self.group:
            return {"id": self.id, "type": "group", "title": self.name}
        return {"id": self.id, "type": "private", "first_name": self.name}

    def writer(self) -> Json:
        """The API's User object of the one who writes here."""
        return {"id": abs(self.id), "is_bot": False, "first_name": self.name}

    def next_message(self) -> int:
        """Message ids count up within a chat."""
        return max(self.history, default=0) + 1


class Chats:
    """All chats of one bot, and the updates that it has not confirmed yet.

    `now` dates what is written without a time of its own. `on_change` is called after each new
    update and each confirmation. Chat ids are given in the order of opening.
    """

    def __init__(self, now: Callable[[], datetime]) -> None:
        self.now = now
        self.on_change: Callable[[], None] = lambda: None
        self.updates: list[Json] = []
        self.queries: set[str] = set()  # callback queries that wait for their answer
        self._chats: dict[int, Chat] = {}
        self._next_update = 1

    def open(self, name: str, *, group: bool = False) -> int:
        """Open a chat and give its id (negative for a group, as in the API)."""
        number = 1001 + len(self._chats)
        chat = Chat(id=-number if group else number, name=name, group=group)
        self._chats[chat.id] = chat
        return chat.id

    def __getitem__(self, chat: int) -> Chat:
        return self._chats[chat]

    def __contains__(self, chat: object) -> bool:
        return chat in self._chats

    # ── what people do ───────────────────────────────────────────────────────

    def say(
        self, chat: int, text: str, *, at: datetime | None = None, quotes: int | None = None
    ) -> int:
        """Write a text, perhaps as a reply to message `quotes`; gives the message's id."""
        content: Json = {"text": text}
        if text.startswith("/"):
            length = len(text.split(maxsplit=1)[0])
            content["entities"] = [{"type": "bot_command", "offset": 0, "length": length}]
        return self._write(chat, content, at=at, quotes=quotes)

    def photo(
        self,
        chat: int,
        words: str = "",
        *,
        at: datetime | None = None,
        quotes: int | None = None,
        album: str | None = None,
    ) -> int:
        """Send a photo of a plate, with or without words under it, perhaps with others."""
        number = self._chats[chat].next_message()
        name = f"photo-{abs(chat)}-{number}"
        size = {"file_id": name, "file_unique_id": name, "width": 800, "height": 600}
        content: Json = {"photo": [size]}
        if words:
            content["caption"] = words
        if album is not None:
            content["media_group_id"] = album
        return self._write(chat, content, at=at, quotes=quotes)

    def send(self, chat: int, kind: str, *, at: datetime | None = None) -> int:
        """Send something without text: a key of WITHOUT_TEXT."""
        return self._write(chat, dict(WITHOUT_TEXT[kind]), at=at)

    def edit(self, chat: int, message: int, text: str, *, at: datetime | None = None) -> None:
        """Change the words of an earlier message; its own date stays."""
        old = self._chats[chat].history[message]
        field_name = "caption" if "photo" in old else "text"
        new = {**old, field_name: text, "edit_date": stamp(at or self.now())}
        self._chats[chat].history[message] = new
        self._add({"edited_message": new})

    def press(self, chat: int, message: int, label: str) -> None:
        """Press a button of a message of the bot; raises KeyError if it has no such button."""
        shown = self._chats[chat].history[message]
        markup = shown.get("reply_markup", {})
        for button in buttons_of(markup, "inline_keyboard"):
            if button["text"] == label:
                self._chats[chat].pressed[message] = label
                query = f"query-{self._next_update}"
                self.queries.add(query)
                self._add(
                    {
                        "callback_query": {
                            "id": query,
                            "from": self._chats[chat].writer(),
                            "message": shown,
                            "chat_instance": str(chat),
                            "data": button["callback_data"],
                        }
                    }
                )
                return
        if any(button["text"] == label for button in buttons_of(markup, "keyboard")):
            self.say(chat, label)  # a button of this sort types its text
            return
        raise KeyError(f"message {message} has no button {label!r}")

    def block(self, chat: int, blocked: bool = True) -> None:
        """The person blocks the bot (or takes it back); the bot is told, as the API does."""
        self._chats[chat].blocked = blocked
        was, is_now = ("member", "kicked") if blocked else ("kicked", "member")
        self._add(
            {
                "my_chat_member": {
                    "chat": self._chats[chat].as_json(),
                    "from": self._chats[chat].writer(),
                    "date": stamp(self.now()),
                    "old_chat_member": membership(was),
                    "new_chat_member": membership(is_now),
                }
            }
        )

    def again(self, update: Json) -> None:
        """Put an update in a second time, with the same id: a doubled delivery."""
        self.updates.append(update)
        self.on_change()

    # ── what the bot does ────────────────────────────────────────────────────

    def post(self, chat: int, content: Json) -> Json:
        """Keep a message of the bot's in a chat and give it as the API would."""
        place = self._chats[chat]
        message = {
            "message_id": place.next_message(),
            "date": stamp(self.now()),
            "chat": place.as_json(),
            "from": BOT,
            **content,
        }
        place.history[message["message_id"]] = message
        return message

    def confirm(self, offset: int) -> None:
        """Forget the updates before `offset`; a negative one keeps the last -offset of them."""
        if offset < 0:
            self.updates = self.updates[offset:]
        else:
            self.updates = [update for update in self.updates if update["update_id"] >= offset]
        self.on_change()

    # ── inside ───────────────────────────────────────────────────────────────

    def _write(
        self, chat: int, content: Json, *, at: datetime | None, quotes: int | None = None
    ) -> int:
        place = self._chats[chat]
        message: Json = {
            "message_id": place.next_message(),
            "date": stamp(at or self.now()),
            "chat": place.as_json(),
            "from": place.writer(),
            **content,
        }
        if quotes is not None:
            message["reply_to_message"] = place.history[quotes]
        place.history[message["message_id"]] = message
        self._add({"message": message})
        return int(message["message_id"])

    def _add(self, update: Json) -> None:
        self.updates.append({"update_id": self._next_update, **update})
        self._next_update += 1
        self.on_change()


def buttons_of(markup: Json, keyboard: str) -> Sequence[Json]:
    """The buttons of a keyboard, row by row; a plain string in one is a button of that text."""
    rows = markup.get(keyboard, [])
    return [button if isinstance(button, dict) else {"text": button} for r in rows for button in r]


def membership(status: str) -> Json:
    """The API's ChatMember object of the bot itself."""
    member: Json = {"status": status, "user": BOT}
    return {**member, "until_date": 0} if status == "kicked" else member


def stamp(at: datetime) -> int:
    """The API's dates: whole seconds since 1970 in UTC."""
    return int(at.astimezone(UTC).timestamp())
