"""The endpoint of one running bot: /metrics for a monitor, /alive for whoever would restart it."""

import asyncio
import logging
from collections.abc import Awaitable, Callable, Iterator
from contextlib import contextmanager
from http import HTTPStatus

from bot.logs import say
from bot.metrics.meter import Figures, Meter
from scheduler.clock import Clock

_LOG = logging.getLogger(__name__)


@contextmanager
def watched(
    place: str | None,
    ask: Callable[[], Awaitable[Figures]],
    given_up: Callable[[], int],
    clock: Clock,
) -> Iterator[Meter]:
    """Answer at HOST:PORT while the block lasts, and give the meter that the parts tell.

    With `place` None nothing listens, and the libraries for it are not loaded. `ask` gives the
    database's figures, `given_up` counts the updates parked before. To be entered in the loop
    that is watched. Raises Mendable where nothing can listen there.
    """
    if place is None:
        yield Meter(clock.monotonic)
        return
    # Some 4 MB that a bot nobody watches does without.
    from bot.metrics.alive import Liveness  # noqa: PLC0415
    from bot.metrics.endpoint import Answer, listening  # noqa: PLC0415
    from bot.metrics.prometheus import (  # noqa: PLC0415
        FailureCount,
        PrometheusMeter,
        StateCollector,
    )

    meter = PrometheusMeter(clock.monotonic)
    liveness = Liveness(meter, asyncio.get_running_loop(), ask)
    meter.registry.register(StateCollector(meter, liveness.figures_or_none))

    def metrics(accept: str) -> Answer:
        content, kind = meter.text(accept)
        return Answer(status=HTTPStatus.OK, content=content, kind=kind)

    def alive(_accept: str) -> Answer:
        wrong = liveness.wrong()
        status = HTTPStatus.SERVICE_UNAVAILABLE if wrong else HTTPStatus.OK
        return Answer(status=status, content=("\n".join(wrong or ("alive",)) + "\n").encode())

    counting = FailureCount(meter)
    with listening(place, {"/metrics": metrics, "/alive": alive}):
        meter.parked_before(given_up())
        logging.getLogger().addHandler(counting)
        say(_LOG, logging.INFO, "metrics", at=place)
        try:
            yield meter
        finally:
            logging.getLogger().removeHandler(counting)
