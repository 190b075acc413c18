"""A page on this machine on which a visitor talks with the bot.

It shows what the stand-in server holds and writes there what the visitor writes; the bot behind
it is the real one. Served on loopback only, to this machine's own name only, without anything
from elsewhere.
"""

import contextlib
import json
import sys
from datetime import UTC, datetime
from importlib.resources import files
from typing import Any, Final
from zoneinfo import ZoneInfo

from tornado.httpserver import HTTPServer
from tornado.netutil import bind_sockets
from tornado.web import Application, HTTPError, RequestHandler
from tzlocal import get_localzone_name

from bot.participants import Invitation
from bot.settings import Settings
from bot.trial.chats import BOT, WITHOUT_TEXT, Json
from bot.trial.methods import labels
from bot.trial.stand_in import HOST
from bot.trial.trial import Trial
from scheduler.clock import Clock, LiveClock, Rate, real_now

PAGE: Final = files("bot.trial") / "page"
KINDS: Final = {"chat.css": "text/css", "chat.js": "text/javascript"}
CLOCK_SECONDS: Final = 1.0  # the page's clock moves at least this often


class ChatPage:
    """One visitor's chat: `state` is what the page shows, the rest is what they do."""

    def __init__(self, trial: Trial, clock: Clock, *, zone: str, code: str, speed: float) -> None:
        self.trial = trial
        self._clock = clock
        self._zone = ZoneInfo(zone)
        self._code = code
        self._speed = speed
        self.chat = trial.server.chats.open("You")

    def state(self) -> Json:
        """The whole chat, and the bot's clock."""
        history = self.trial.server.chats[self.chat].history
        return {
            "revision": self.trial.server.revision,
            "now": f"{self._clock.now().astimezone(self._zone):%A %H:%M}",
            "speed": self._speed,
            "messages": [self._shown(message) for message in history.values()],
        }

    def begin(self) -> None:
        """Send the invitation's code, as its link would."""
        self.trial.server.chats.say(self.chat, f"/start {self._code}")

    def say(self, text: str, *, photo: bool) -> None:
        """Write a message, perhaps with a photo of a plate."""
        if photo:
            self.trial.server.chats.photo(self.chat, text)
        else:
            self.trial.server.chats.say(self.chat, text)

    def press(self, message: int, label: str) -> None:
        """Press a button; raises KeyError if there is none such."""
        self.trial.server.chats.press(self.chat, message, label)

    def _shown(self, message: Json) -> Json:
        mine = message["from"] != BOT
        at = self._clock.bot_time(datetime.fromtimestamp(message["date"], UTC))
        sent = [kind for kind, content in WITHOUT_TEXT.items() if next(iter(content)) in message]
        shown: dict[str, Any] = {
            "id": message["message_id"],
            "mine": mine,
            "at": f"{at.astimezone(self._zone):%H:%M}",
            "text": message.get("text", message.get("caption", "")),
            "edited": "edit_date" in message,
            "buttons": labels(message.get("reply_markup", {})),
            "note": f"[{sent[0]}]" if sent and mine else "",
        }
        if "photo" in message and mine:
            shown["note"] = "[photo]"
        elif "photo" in message:
            shown["picture"] = f"file/{message['photo'][-1]['file_id']}"
        if "document" in message and not mine:
            document = message["document"]
            shown["file"] = {
                "name": document["file_name"],
                "address": f"file/{document['file_id']}",
            }
        return shown


class _Handler(RequestHandler):
    """What all addresses of the page share."""

    def initialize(self, page: ChatPage) -> None:
        self.page = page

    def set_default_headers(self) -> None:
        self.set_header("Content-Security-Policy", "default-src 'self'; img-src 'self' data:")
        self.set_header("X-Content-Type-Options", "nosniff")
        self.set_header("Cache-Control", "no-store")

    def prepare(self) -> None:
        """Another site's page in the same browser gets nothing and can write nothing."""
        if self.request.host_name not in (HOST, "localhost"):
            raise HTTPError(403)
        kind = self.request.headers.get("Content-Type", "")
        if self.request.method == "POST" and kind != "application/json":
            raise HTTPError(415)

    def told(self) -> Json:
        """The body of a request."""
        told = json.loads(self.request.body)
        if not isinstance(told, dict):
            raise HTTPError(400)
        return told


class _Index(_Handler):
    def get(self) -> None:
        self.finish((PAGE / "index.html").read_bytes())


class _Asset(_Handler):
    def get(self, name: str) -> None:
        self.set_header("Content-Type", KINDS[name])
        self.finish((PAGE / name).read_bytes())


class _File(_Handler):
    def get(self, name: str) -> None:
        found = self.page.trial.server.methods.files.get(name)
        if found is None:
            raise HTTPError(404)
        is_picture = found.startswith(b"\x89PNG")
        self.set_header("Content-Type", "image/png" if is_picture else "application/octet-stream")
        self.finish(found)


class _State(_Handler):
    async def get(self) -> None:
        """Answer when something has changed, or when the clock is to move."""
        seen = int(self.get_argument("seen", "-1"))
        server = self.page.trial.server
        with contextlib.suppress(TimeoutError):
            await server.until(lambda: server.revision != seen, CLOCK_SECONDS)
        self.finish(self.page.state())


class _Begin(_Handler):
    def post(self) -> None:
        self.page.begin()


class _Say(_Handler):
    def post(self) -> None:
        told = self.told()
        self.page.say(str(told["text"]), photo=bool(told.get("photo")))


class _Press(_Handler):
    def post(self) -> None:
        told = self.told()
        try:
            self.page.press(int(told["message"]), str(told["label"]))
        except KeyError:
            raise HTTPError(404) from None


def application(page: ChatPage) -> Application:
    """The page's addresses."""
    given = {"page": page}
    return Application(
        [
            (r"/", _Index, given),
            (r"/(chat\.css|chat\.js)", _Asset, given),
            (r"/file/([\w-]+)", _File, given),
            (r"/state", _State, given),
            (r"/begin", _Begin, given),
            (r"/say", _Say, given),
            (r"/press", _Press, given),
        ],
        log_function=lambda _: None,
    )


async def serve_page(settings: Settings, port: int) -> None:
    """Run bot, stand-in server and page until cancelled; says on standard output where."""
    now = real_now()
    clock = LiveClock(Rate(real=now, bot=now, speed=settings.clock_speed))
    zone = get_localzone_name()
    async with Trial(settings, clock=clock) as trial:
        code = trial.invite(Invitation(zone=zone))
        page = ChatPage(trial, clock, zone=zone, code=code, speed=settings.clock_speed)
        served = HTTPServer(application(page))
        sockets = _listen(port)
        served.add_sockets(sockets)
        address = f"http://{HOST}:{sockets[0].getsockname()[1]}/"
        sys.stdout.write(f"The chat is open at {address} (end with Ctrl+C).\n")
        sys.stdout.flush()
        try:
            await trial.ended()
        finally:
            served.stop()
            await served.close_all_connections()


def _listen(port: int) -> Any:
    try:
        return bind_sockets(port, HOST)
    except OSError:  # somebody else is there: any free one will do
        return bind_sockets(0, HOST)
