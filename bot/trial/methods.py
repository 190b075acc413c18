"""What each method of the Bot API does to the chats of the stand-in server.

Names, parameters and limits follow the public Bot API (texts of 1 to 4,096 characters, captions
up to 1,024, callback data up to 64 bytes). The wording of its refusals is from memory; the client
library looks at their numbers only.
"""

import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Final

from bot.trial.chats import BOT, Chat, Chats, Json, buttons_of

TEXT_LIMIT: Final = 4096
CAPTION_LIMIT: Final = 1024
BUTTON_LIMIT: Final = 64
PICTURE_LIMIT: Final = 10_000_000


@dataclass(frozen=True, slots=True)
class Upload:
    """A file that came with a call."""

    name: str
    body: bytes


class Refusal(Exception):
    """What the API refuses: `code` is its HTTP status and error code."""

    def __init__(self, code: int, description: str, **parameters: int) -> None:
        super().__init__(description)
        self.code = code
        self.description = description
        self.parameters = parameters


@dataclass(frozen=True, slots=True, kw_only=True)
class Call:
    """One call of a method: its parameters as text (JSON where they are structures), its files."""

    method: str
    parameters: Mapping[str, str]
    files: Mapping[str, Upload] = field(default_factory=dict)

    @property
    def chat(self) -> int | None:
        """The chat that is meant, if any."""
        given = self.parameters.get("chat_id", "")
        return int(given) if given.lstrip("-").isdigit() else None

    def structure(self, name: str) -> Json:
        """A parameter that is an object, empty if it was not given."""
        parsed = json.loads(self.parameters.get(name) or "{}")
        if not isinstance(parsed, dict):
            raise Refusal(400, f"Bad Request: can't parse {name}")
        return parsed


@dataclass(frozen=True, slots=True, kw_only=True)
class Sent:
    """One message that reached a chat: a line of the ledger."""

    chat: int
    message: int
    text: str
    at: datetime
    picture: bytes | None = None
    file: Upload | None = None
    buttons: tuple[str, ...] = ()
    quotes: int | None = None


class Methods:
    """The methods of the API, working on the chats; whatever reaches a chat is in `ledger`."""

    def __init__(self, chats: Chats) -> None:
        self.chats = chats
        self.ledger: list[Sent] = []
        self.files: dict[str, bytes] = {}
        self._by_name: dict[str, Callable[[Call], object]] = {
            "getMe": lambda _: BOT,
            "sendMessage": self._send_message,
            "sendPhoto": self._send_photo,
            "sendDocument": self._send_document,
            "editMessageText": self._edit,
            "editMessageCaption": self._edit,
            "editMessageReplyMarkup": self._edit,
            "deleteMessage": self._delete,
            "answerCallbackQuery": self._answer_query,
            "getChat": lambda call: self._place(call).as_json() | {"accent_color_id": 0},
            "getFile": self._get_file,
            # Accepted, and of no effect that a chat on this machine could show.
            "sendChatAction": lambda _: True,
            "setMyCommands": lambda _: True,
            "deleteMyCommands": lambda _: True,
            "setMyDescription": lambda _: True,
            "setMyShortDescription": lambda _: True,
        }

    def do(self, call: Call) -> object:
        """Carry out a call and give its result; raises Refusal."""
        if call.method not in self._by_name:
            raise Refusal(404, "Not Found")
        return self._by_name[call.method](call)

    def _send_message(self, call: Call) -> Json:
        text = call.parameters.get("text", "")
        if not text.strip():
            raise Refusal(400, "Bad Request: message text is empty")
        if len(text) > TEXT_LIMIT:
            raise Refusal(400, "Bad Request: message is too long")
        return self._post(call, {"text": text})

    def _send_photo(self, call: Call) -> Json:
        picture = self._uploaded(call, "photo")
        if len(picture.body) > PICTURE_LIMIT:
            raise Refusal(413, "Request Entity Too Large")
        name = self._keep(picture)
        size = {"file_id": name, "file_unique_id": name, "width": 800, "height": 600}
        return self._post(call, {"photo": [size]}, picture=picture.body)

    def _send_document(self, call: Call) -> Json:
        document = self._uploaded(call, "document")
        name = self._keep(document)
        content = {"file_id": name, "file_unique_id": name, "file_name": document.name}
        return self._post(call, {"document": content}, file=document)

    def _post(
        self,
        call: Call,
        content: Json,
        *,
        picture: bytes | None = None,
        file: Upload | None = None,
    ) -> Json:
        place = self._place(call)
        caption = call.parameters.get("caption", "")
        if len(caption) > CAPTION_LIMIT:
            raise Refusal(400, "Bad Request: message caption is too long")
        if caption:
            content["caption"] = caption
        markup = self._markup(call)
        if markup:
            content["reply_markup"] = markup
        quoted = call.structure("reply_parameters").get("message_id")
        if quoted is not None:
            if quoted not in place.history:
                raise Refusal(400, "Bad Request: message to be replied not found")
            content["reply_to_message"] = place.history[quoted]
        message = self.chats.post(place.id, content)
        self.ledger.append(
            Sent(
                chat=place.id,
                message=message["message_id"],
                text=content.get("text", caption),
                at=self.chats.now(),
                picture=picture,
                file=file,
                buttons=labels(markup),
                quotes=quoted,
            )
        )
        return message

    def _edit(self, call: Call) -> Json:
        place = self._place(call)
        number = int(call.parameters.get("message_id", "0"))
        if number not in place.history:
            raise Refusal(400, "Bad Request: message to edit not found")
        old = place.history[number]
        new = {key: value for key, value in old.items() if key != "reply_markup"}
        new |= {key: call.parameters[key] for key in ("text", "caption") if key in call.parameters}
        markup = self._markup(call)
        if markup:
            new["reply_markup"] = markup
        if new == old:
            raise Refusal(400, "Bad Request: message is not modified")
        place.history[number] = new
        return new

    def _delete(self, call: Call) -> bool:
        place = self._place(call)
        number = int(call.parameters.get("message_id", "0"))
        if place.history.pop(number, None) is None:
            raise Refusal(400, "Bad Request: message to delete not found")
        return True

    def _answer_query(self, call: Call) -> bool:
        query = call.parameters.get("callback_query_id", "")
        if query not in self.chats.queries:
            raise Refusal(400, "Bad Request: query is too old or its id is invalid")
        self.chats.queries.discard(query)
        return True

    def _get_file(self, call: Call) -> Json:
        name = call.parameters.get("file_id", "")
        if name not in self.files:
            raise Refusal(400, "Bad Request: invalid file_id")
        return {"file_id": name, "file_unique_id": name, "file_path": name}

    def _place(self, call: Call) -> Chat:
        chat = call.chat
        if chat is None or chat not in self.chats:
            raise Refusal(400, "Bad Request: chat not found")
        place = self.chats[chat]
        if place.blocked:
            raise Refusal(403, "Forbidden: bot was blocked by the user")
        return place

    def _markup(self, call: Call) -> Json:
        markup = call.structure("reply_markup")
        for button in buttons_of(markup, "inline_keyboard"):
            if len(button.get("callback_data", "").encode()) > BUTTON_LIMIT:
                raise Refusal(400, "Bad Request: BUTTON_DATA_INVALID")
        return markup

    def _uploaded(self, call: Call, name: str) -> Upload:
        given = call.parameters.get(name, "")
        part = given.removeprefix("attach://") if given.startswith("attach://") else name
        if part not in call.files:
            raise Refusal(400, f"Bad Request: there is no {name} in the request")
        return call.files[part]

    def _keep(self, upload: Upload) -> str:
        name = f"file-{len(self.files) + 1}"
        self.files[name] = upload.body
        return name


def labels(markup: Json) -> tuple[str, ...]:
    """What stands on the buttons under a message, in their order."""
    shown = [*buttons_of(markup, "inline_keyboard"), *buttons_of(markup, "keyboard")]
    return tuple(str(button["text"]) for button in shown)
