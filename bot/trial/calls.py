"""The addresses of the stand-in server: what arrives over HTTP becomes a call, and its answer."""

import asyncio
import json
from collections import Counter
from typing import Any, Protocol

from tornado.web import RequestHandler

from bot.trial.faults import Fault, Faults, Ordered
from bot.trial.methods import Call, Methods, Refusal, Upload

TOKEN = "4200:trial-token-of-no-account"  # noqa: S105 (opens nothing)


class Server(Protocol):
    """The server behind the addresses."""

    calls: Counter[str]
    faults: Faults
    methods: Methods

    async def answer(self, call: Call) -> object:
        """Carry out one call; raises Refusal."""

    async def stopped(self) -> None:
        """Wait until the server stops."""

    def stop_waiting(self) -> None:
        """Answer the one who fetches with what there is."""


class CallHandler(RequestHandler):
    """One call of a method, by GET or POST, as a form, JSON or multipart."""

    def initialize(self, server: Server) -> None:
        self.server = server
        self.method = ""

    async def get(self, token: str, method: str) -> None:
        await self.post(token, method)

    async def post(self, token: str, method: str) -> None:
        self.method = method
        self.server.calls[method] += 1
        if token != TOKEN:
            return self._refuse(Refusal(401, "Unauthorized"))
        call = Call(method=method, parameters=self._parameters(), files=self._files())
        ordered = self.server.faults.take(method, call.chat)
        try:
            if ordered is None:
                self._give(await self.server.answer(call))
            else:
                await self._go_wrong(ordered, call)
        except Refusal as refusal:
            self._refuse(refusal)

    def on_connection_close(self) -> None:
        if self.method == "getUpdates":
            self.server.stop_waiting()

    async def _go_wrong(self, ordered: Ordered, call: Call) -> None:
        match ordered.fault:
            case Fault.TOO_MANY:
                wait = int(ordered.seconds)
                raise Refusal(429, f"Too Many Requests: retry after {wait}", retry_after=wait)
            case Fault.REFUSES:
                raise Refusal(400, "Bad Request: can't parse entities")
            case Fault.BLOCKED:
                raise Refusal(403, "Forbidden: bot was blocked by the user")
            case Fault.BREAKS:
                self.set_status(502)
                self.set_header("Content-Type", "text/html")
                self.finish("<html><body>Bad Gateway</body></html>")
            case Fault.SLOW:
                await asyncio.sleep(ordered.seconds)
                self._give(await self.server.answer(call))
            case Fault.LOST_REPLY:
                await self.server.answer(call)
                self.detach().close()
            case Fault.HANGS:
                await self.server.answer(call)
                await self.server.stopped()

    def _parameters(self) -> dict[str, str]:
        if self.request.headers.get("Content-Type", "").startswith("application/json"):
            given: dict[str, Any] = json.loads(self.request.body or b"{}")
            return {
                name: value if isinstance(value, str) else json.dumps(value)
                for name, value in given.items()
            }
        return {name: values[-1].decode() for name, values in self.request.arguments.items()}

    def _files(self) -> dict[str, Upload]:
        return {
            name: Upload(name=files[-1].filename, body=files[-1].body)
            for name, files in self.request.files.items()
        }

    def _give(self, result: object) -> None:
        self.finish({"ok": True, "result": result})

    def _refuse(self, refusal: Refusal) -> None:
        self.set_status(refusal.code)
        body: dict[str, Any] = {
            "ok": False,
            "error_code": refusal.code,
            "description": refusal.description,
        }
        if refusal.parameters:
            body["parameters"] = refusal.parameters
        self.finish(body)


class FileHandler(RequestHandler):
    """Gives back a file that the bot has sent."""

    def initialize(self, server: Server) -> None:
        self.server = server

    def get(self, token: str, name: str) -> None:
        if token != TOKEN or name not in self.server.methods.files:
            self.send_error(404)
            return
        self.finish(self.server.methods.files[name])
