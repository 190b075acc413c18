"""The addresses of the chat page: what a browser asks for, and what it may write.

Other sites in the same browser are kept out three times over: only this machine's own name is
answered (so that no foreign name can be made to point here), only JSON from a page of this very
origin is taken, and nothing may be framed or embedded elsewhere.
"""

import contextlib
import json
from collections.abc import Awaitable, Callable, Mapping
from importlib.resources import files
from typing import Any, Final, Protocol

from tornado.web import Application, HTTPError, RequestHandler

from bot.trial.chats import Json
from bot.trial.stand_in import HOST
from bot.trial.visit import EDUCATOR, HOUR, PARTICIPANT, Beginning, Played, Visit

PAGE: Final = files("bot.trial") / "page"
KINDS: Final = {"css": "text/css", "js": "text/javascript", "svg": "image/svg+xml"}
#: Everything comes from this machine; no inline script or style, no frame, no foreign form.
POLICY: Final = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; "
    "form-action 'none'; base-uri 'none'; frame-ancestors 'none'"
)
HEADERS: Final = {
    "Content-Security-Policy": POLICY,
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cache-Control": "no-store",
}
#: Starts of the files that a bot sends; what is none of them is downloaded as bytes.
SIGNS: Final = {b"\x89PNG": "image/png", b"%PDF": "application/pdf"}
#: Seconds that a tab waits for news before it is answered all the same.
LONGEST_WAIT: Final = 20.0
LONGEST_TEXT: Final = 4096
FASTEST: Final = 10_000


class House(Protocol):
    """What the addresses show: a visit, if one is open."""

    visit: Visit | None
    number: int
    played: Played | None
    speeds: tuple[float, ...]

    async def open(self, beginning: Beginning) -> None:
        """Open another visit."""


class _Handler(RequestHandler):
    """What all addresses of the page share."""

    def initialize(self, house: House) -> None:
        self.house = house

    def set_default_headers(self) -> None:
        for name, value in HEADERS.items():
            self.set_header(name, value)

    def prepare(self) -> None:
        if self.request.host_name not in (HOST, "localhost"):
            raise HTTPError(403)
        if self.request.method != "POST":
            return
        if self.request.headers.get("Origin") != f"http://{self.request.host}":
            raise HTTPError(403)
        if self.request.headers.get("Content-Type", "") != "application/json":
            raise HTTPError(415)

    def write_error(self, status_code: int, **_: Any) -> None:
        self.finish({"status": status_code})

    def visit(self) -> Visit:
        """The open visit; 409 where there is none."""
        if self.house.visit is None:
            raise HTTPError(409)
        return self.house.visit

    def page(self, name: str) -> None:
        self.set_header("Content-Type", "text/html; charset=utf-8")
        self.finish((PAGE / name).read_bytes())


class _Start(_Handler):
    def get(self) -> None:
        self.page("start.html")


class _Seat(_Handler):
    def get(self) -> None:
        if self.house.visit is None:
            self.redirect("/")
            return
        self.page("chat.html")


class _Nothing(_Handler):
    def get(self) -> None:
        raise HTTPError(404)

    post = get


class _Asset(_Handler):
    def get(self, name: str) -> None:
        found = PAGE / name
        if not found.is_file():
            raise HTTPError(404)
        self.set_header("Content-Type", f"{KINDS[name.rpartition('.')[2]]}; charset=utf-8")
        self.finish(found.read_bytes())


class _File(_Handler):
    def get(self, name: str) -> None:
        found = self.visit().trial.server.methods.files.get(name)
        if found is None:
            raise HTTPError(404)
        kind = SIGNS.get(found[:4], "application/octet-stream")
        if kind != "image/png":
            self.set_header("Content-Disposition", "attachment")
        self.set_header("Content-Type", kind)
        self.finish(found)


class _Visit(_Handler):
    def get(self) -> None:
        """Whether a visit is open, or how much of its beginning is played."""
        played = self.house.played
        self.finish(
            {
                "open": self.house.visit is not None,
                "opening": None if played is None else {"done": played.done, "of": played.of},
            }
        )


class _State(_Handler):
    async def get(self) -> None:
        """Answer when something has changed, or after a while."""
        visit, seen = self.visit(), _number(self.get_argument("seen", "-1"))
        server = visit.trial.server
        with contextlib.suppress(TimeoutError):
            await server.until(
                lambda: server.revision != seen or self.house.visit is not visit, LONGEST_WAIT
            )
        if self.visit() is not visit:
            raise HTTPError(409)
        try:
            state = visit.state(self.get_argument("seat", ""))
        except KeyError:
            raise HTTPError(404) from None
        self.finish(state | {"visit": self.house.number, "speeds": self.house.speeds})


class _Open(_Handler):
    async def post(self) -> None:
        """Open a trial (another one, if one is open) and play its beginning."""
        told = _told(self)
        if self.house.played is not None:
            raise HTTPError(409)
        try:
            beginning = Beginning(str(told.get("beginning")))
        except ValueError:
            raise HTTPError(400) from None
        await self.house.open(beginning)


class _Deed(_Handler):
    """Something that a visitor does: what is told is checked, what is not there is 404."""

    async def post(self, name: str) -> None:
        visit, told = self.visit(), _told(self)
        try:
            self.finish(await DEEDS[name](visit, told) or {})
        except KeyError:
            raise HTTPError(404) from None
        except TimeoutError:
            raise HTTPError(503) from None


async def _say(visit: Visit, told: Json) -> None:
    photo = told.get("photo") is True
    text = _text(told, "text", least=0 if photo else 1)
    answers = told.get("answers")
    visit.say(
        _text(told, "seat"), text, photo=photo, answers=None if answers is None else _id(answers)
    )


async def _change(visit: Visit, told: Json) -> None:
    visit.change(_text(told, "seat"), _id(told.get("message")), _text(told, "text"))


async def _press(visit: Visit, told: Json) -> None:
    visit.press(_text(told, "seat"), _id(told.get("message")), _text(told, "label"))


async def _clock(visit: Visit, told: Json) -> Json | None:
    match told.get("move"):
        case "next":
            return {"moved": await visit.to_next()}
        case "hour":
            await visit.on_by(HOUR)
            return {"moved": True}
        case "run":
            speed = told.get("speed")
            if not isinstance(speed, int | float) or not (speed == 0 or 1 <= speed <= FASTEST):
                raise HTTPError(400)
            await visit.run_clock(float(speed))
            return None
        case _:
            raise HTTPError(400)


DEEDS: Final[Mapping[str, Callable[[Visit, Json], Awaitable[Json | None]]]] = {
    "say": _say,
    "change": _change,
    "press": _press,
    "clock": _clock,
}


def _told(handler: RequestHandler) -> Json:
    """The body of a request, an object."""
    try:
        told = json.loads(handler.request.body)
    except ValueError:
        raise HTTPError(400) from None
    if not isinstance(told, dict):
        raise HTTPError(400)
    return told


def _text(told: Json, name: str, least: int = 1) -> str:
    text = told.get(name)
    if not isinstance(text, str) or not least <= len(text.strip()) <= LONGEST_TEXT:
        raise HTTPError(400)
    return text.strip()


def _id(given: object) -> int:
    if not isinstance(given, int) or isinstance(given, bool):
        raise HTTPError(400)
    return given


def _number(text: str) -> int:
    try:
        return int(text)
    except ValueError:
        raise HTTPError(400) from None


def application(house: House) -> Application:
    """All addresses."""
    given = {"house": house}
    return Application(
        [
            (r"/", _Start, given),
            (rf"/(?:{PARTICIPANT}|{EDUCATOR})", _Seat, given),
            (r"/([a-z]+\.(?:css|js|svg))", _Asset, given),
            (r"/file/([\w-]+)", _File, given),
            (r"/visit", _Visit, given),
            (r"/state", _State, given),
            (r"/open", _Open, given),
            (rf"/({'|'.join(DEEDS)})", _Deed, given),
        ],
        default_handler_class=_Nothing,
        default_handler_args=given,
        log_function=lambda _: None,
    )
