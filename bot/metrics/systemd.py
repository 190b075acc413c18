"""What systemd is told of a service: that it serves, and that it still moves.

The protocol is that of sd_notify(3): datagrams of `NAME=value` lines to the socket that
NOTIFY_SOCKET names; a watchdog expects `WATCHDOG=1` within WATCHDOG_USEC.
"""

import asyncio
import contextlib
import socket
from collections.abc import Callable, Mapping


class Notify:
    """Tells systemd; nobody where the environment names no socket."""

    def __init__(self, environment: Mapping[str, str]) -> None:
        self._address = environment.get("NOTIFY_SOCKET", "")
        told = environment.get("WATCHDOG_USEC", "")
        #: Seconds within which systemd wants to hear that the bot moves; None: it does not ask.
        self.within = int(told) / 1e6 if told.isdigit() and int(told) else None

    def tell(self, *lines: str) -> None:
        """Send lines. That nobody listens any more is no reason to stop serving."""
        if not self._address:
            return
        # A name that begins with @ stands in the abstract namespace, where that is a zero byte.
        address = f"\0{self._address[1:]}" if self._address.startswith("@") else self._address
        with contextlib.suppress(OSError), socket.socket(socket.AF_UNIX, socket.SOCK_DGRAM) as way:
            way.sendto("\n".join(lines).encode(), address)

    async def watch(self, stuck: Callable[[], bool]) -> None:
        """Tell, for as long as nothing is stuck, three times in each span; until cancelled."""
        while self.within is not None:
            if not stuck():
                self.tell("WATCHDOG=1")
            await asyncio.sleep(self.within / 3)
