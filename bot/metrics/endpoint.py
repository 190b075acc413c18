"""A small HTTP server in a thread of its own: it answers even while the event loop hangs.

The library's own server would do for the metrics, but it knows one page only; this one has the
few lines more that a second page, the other methods and a clean end take.
"""

import socket
import threading
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from typing import ClassVar

from bot.mendable import Mendable

#: Seconds that an asker may take to ask.
ASKING_SECONDS = 5


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """What a page says."""

    status: HTTPStatus
    content: bytes
    kind: str = "text/plain; charset=utf-8"


#: Makes a page for what the asker accepts (the header of that name).
Page = Callable[[str], Answer]


@contextmanager
def listening(place: str, pages: Mapping[str, Page]) -> Iterator[None]:
    """Answer at HOST:PORT for as long as the block lasts.

    Raises Mendable, naming the setting, where the place is taken or not this machine's.
    """
    handler = type("_Pages", (_Handler,), {"pages": pages})
    host, _, port = place.rpartition(":")
    try:
        found = socket.getaddrinfo(host.strip("[]"), int(port), type=socket.SOCK_STREAM)
        server = _server(found[0][0], handler, found[0][4])
    except OSError as error:
        raise Mendable(f"AFTERPLATE_METRICS: cannot listen at {place}: {error.strerror}") from error
    thread = threading.Thread(target=server.serve_forever, name="metrics", daemon=True)
    thread.start()
    try:
        yield
    finally:
        server.shutdown()
        server.server_close()
        thread.join()


def _server(
    family: int, handler: type[BaseHTTPRequestHandler], address: tuple[object, ...]
) -> ThreadingHTTPServer:
    of_family = {"address_family": family, "block_on_close": False}
    made: ThreadingHTTPServer = type("_Server", (ThreadingHTTPServer,), of_family)(address, handler)
    return made


class _Handler(BaseHTTPRequestHandler):
    """GET and HEAD of the pages; everything else is refused."""

    pages: ClassVar[Mapping[str, Page]] = {}
    timeout = ASKING_SECONDS
    server_version = "afterplate"
    sys_version = ""

    def do_GET(self) -> None:
        """Answer with a page."""
        page = self.pages.get(self.path.partition("?")[0])
        if page is None:
            self.send_error(HTTPStatus.NOT_FOUND)
            return
        answer = page(self.headers.get("Accept", ""))
        self.send_response(answer.status)
        self.send_header("Content-Type", answer.kind)
        self.send_header("Content-Length", str(len(answer.content)))
        self.end_headers()
        if self.command != "HEAD":
            self.wfile.write(answer.content)

    do_HEAD = do_GET  # noqa: N815 - its name there

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002 - its name there
        """Nothing: who asks is no business of the log."""
