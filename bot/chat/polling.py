"""Fetching by long polling: an update is confirmed only once it is handled and committed.

The next `getUpdates` confirms whatever lies before its offset; so the offset moves on only
behind a commit, and whatever is killed in between comes again.
"""

import asyncio
import logging
import random
from collections.abc import Awaitable, Callable, Mapping, Sequence
from typing import Any, Protocol

from bot.chat.port import ChatError, Throttled
from bot.logs import place_of, say
from bot.mendable import Mendable

_LOG = logging.getLogger(__name__)

SHORTEST_WAIT = 0.5
LONGEST_WAIT = 30.0

#: Takes raw updates in their order; raises where they must come again.
TakeUpdates = Callable[[Sequence[Mapping[str, Any]]], Awaitable[None]]


class Fetches(Protocol):
    """The client, as far as it fetches."""

    async def fetch(self, offset: int) -> list[dict[str, Any]]:
        """Updates from `offset` on, confirming all before it."""


async def poll(client: Fetches, take: TakeUpdates) -> None:
    """Fetch for ever; each batch in its order, the next one only behind it."""
    offset = 0
    failures = 0
    while True:
        try:
            updates = await client.fetch(offset)
            if updates:
                await take(updates)
                offset = int(updates[-1]["update_id"]) + 1
            failures = 0
        except Mendable:
            raise  # nothing to wait for: a person has to see to it
        except Exception as error:
            failures += 1
            known = isinstance(error, ChatError)
            say(
                _LOG,
                logging.WARNING,
                "fetching failed" if known else "update not taken",
                error=f"{type(error).__name__} {error}" if known else place_of(error),
                failures=failures,
            )
            await asyncio.sleep(wait_after(error, failures))


def wait_after(error: Exception, failures: int) -> float:
    """Seconds to wait: what the API asks for, or twice as long each time, with jitter."""
    if isinstance(error, Throttled):
        return error.retry_after
    wait: float = min(LONGEST_WAIT, SHORTEST_WAIT * 2 ** min(failures - 1, 10))
    return wait * random.uniform(0.5, 1)  # noqa: S311 - spreads retries, guards nothing
