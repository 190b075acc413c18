"""Asking a running bot's endpoint, as a monitor does."""

import asyncio
import socket
import urllib.error
import urllib.request


def free_place() -> str:
    """HOST:PORT on loopback that nobody listens at."""
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        return f"127.0.0.1:{free.getsockname()[1]}"


def ask(place: str, page: str, method: str = "GET", accept: str = "") -> tuple[int, str, str]:
    """Status, content type and text of a page."""
    wanted = urllib.request.Request(
        f"http://{place}/{page}", method=method, headers={"Accept": accept} if accept else {}
    )
    try:
        with urllib.request.urlopen(wanted, timeout=20) as answer:  # noqa: S310
            return answer.status, answer.headers["Content-Type"], answer.read().decode()
    except urllib.error.HTTPError as refused:
        with refused:
            return refused.code, refused.headers["Content-Type"], refused.read().decode()


async def asked(place: str, page: str) -> tuple[int, str]:
    """The same without holding up the loop that answers."""
    status, _, text = await asyncio.to_thread(ask, place, page)
    return status, text


def values(text: str) -> dict[str, float]:
    """Samples by name and labels, as they are printed."""
    lines = [line for line in text.splitlines() if line and not line.startswith("#")]
    return {name: float(value) for name, _, value in (line.rpartition(" ") for line in lines)}
