"""The meter that remembers, in the form that Prometheus reads (its text format, and OpenMetrics).

Names follow Prometheus' own advice (https://prometheus.io/docs/practices/naming/): one prefix,
base units, `_total` for what only grows.
"""

import logging
import platform
import re
from collections.abc import Callable, Iterator
from datetime import timedelta

from prometheus_client import (
    CollectorRegistry,
    Counter,
    Gauge,
    Histogram,
    ProcessCollector,
    disable_created_metrics,
)
from prometheus_client.core import GaugeMetricFamily
from prometheus_client.exposition import choose_encoder
from prometheus_client.registry import Collector

from bot import __version__
from bot.logs import fields_of
from bot.messages import Kind
from bot.metrics.meter import Figures, Heard, Loop, Meter, Turn

TURN_BUCKETS = (0.001, 0.0025, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 5)
#: A prompt asked two hours after a meal is still right some minutes later; a test counts from
#: 90 to 150 minutes after it.
LATE_BUCKETS = (1, 2, 5, 10, 30, 60, 120, 300, 600, 1800, 3600)

#: The class of an error stands first in what the log says of it.
_CLASS = re.compile(r"[A-Za-z_]\w*")


class PrometheusMeter(Meter):
    """Counts, and gives them out as text."""

    def __init__(self, monotonic: Callable[[], float]) -> None:
        super().__init__(monotonic)
        disable_created_metrics()  # type: ignore[no-untyped-call]
        self.registry = CollectorRegistry()
        ProcessCollector(registry=self.registry)
        self._heard = self._counter("messages_in", "Updates that came in, by how they ended", "how")
        self._ended = self._counter(
            "messages_out", "Messages settled, by kind and how they ended", "kind", "end"
        )
        self._short = self._counter(
            "sends_fallen_short", "Sends that did not surely arrive, by what is known", "why"
        )
        self._failures = self._counter(
            "failures", "Warnings and errors of the log, by event and class", "event", "error"
        )
        self._turns = self._histogram(
            "turn_seconds", "Turns, waiting for the database included", TURN_BUCKETS, "of"
        )
        self._late = self._histogram(
            "lateness_seconds", "From due to arrived, in the bot's time", LATE_BUCKETS, "kind"
        )
        self._parked = Gauge(
            "afterplate_updates_parked",
            "Updates given up: see `check`",
            registry=self.registry,
        )
        told = Gauge(
            "afterplate_build_info", "What runs", ["version", "python"], registry=self.registry
        )
        told.labels(__version__, platform.python_version()).set(1)
        # Told as 0 before the first one, so that a rate of them is right from the beginning.
        for how in Heard:
            self._heard.labels(how.value)
        for kind in Kind:
            self._late.labels(kind.value)
        for turn in Turn:
            self._turns.labels(turn.value)

    def _counter(self, name: str, told: str, *labels: str) -> Counter:
        return Counter(f"afterplate_{name}", told, labels, registry=self.registry)

    def _histogram(
        self, name: str, told: str, buckets: tuple[float, ...], *labels: str
    ) -> Histogram:
        return Histogram(
            f"afterplate_{name}", told, labels, buckets=buckets, registry=self.registry
        )

    def text(self, accept: str) -> tuple[bytes, str]:
        """Everything in the form that the asker accepts, and that form's content type."""
        encode, kind = choose_encoder(accept)
        return encode(self.registry), kind

    def took(self, turn: Turn, seconds: float) -> None:
        """A turn was taken."""
        self._turns.labels(turn.value).observe(seconds)

    def heard(self, how: Heard) -> None:
        """An update came in."""
        self._heard.labels(how.value).inc()
        if how is Heard.PARKED:
            self._parked.inc()

    def parked_before(self, count: int) -> None:
        """So many updates had been given up when the bot began."""
        self._parked.set(count)

    def ended(self, kind: Kind, end: str, late: timedelta) -> None:
        """A message was settled; only one that arrived has a lateness."""
        self._ended.labels(kind.value, end).inc()
        if end == "sent":
            self._late.labels(kind.value).observe(max(0.0, late.total_seconds()))

    def fell_short(self, error: str) -> None:
        """A send did not surely arrive."""
        self._short.labels(error).inc()

    def failed(self, event: str, error: str) -> None:
        """The log told of a warning or an error."""
        known = _CLASS.match(error)
        self._failures.labels(event, known.group() if known else "").inc()


class FailureCount(logging.Handler):
    """Counts what the log tells of at `warning` and above: each event by name, error by class.

    So whatever is logged as a failure is counted, with nothing to forget. Lines of libraries
    are not counted: their words are not ours.
    """

    def __init__(self, meter: PrometheusMeter) -> None:
        super().__init__(logging.WARNING)
        self._meter = meter

    def emit(self, record: logging.LogRecord) -> None:
        """Count one line."""
        fields = fields_of(record)
        if fields is not None:
            self._meter.failed(record.msg, str(fields.get("error", "")))


class StateCollector(Collector):
    """What the database and the parts say at the moment of asking."""

    def __init__(
        self,
        meter: Meter,
        ask: Callable[[], Figures | None],
    ) -> None:
        self._meter = meter
        self._ask = ask

    def describe(self) -> list[GaugeMetricFamily]:
        """Nothing ahead: registering must not ask the database."""
        return []

    def collect(self) -> Iterator[GaugeMetricFamily]:
        """Gauges of now. Without an answer of the database: that it does not answer, alone."""
        overdue = self._meter.overdue()
        alive = GaugeMetricFamily("afterplate_loop_alive", "1 while it moves", labels=["loop"])
        for loop in Loop:
            alive.add_metric([loop.value], float(loop not in overdue))
        yield alive
        figures = self._ask()
        yield _gauge("database_up", "1 while the database answers", float(figures is not None))
        if figures is None:
            return
        waiting = GaugeMetricFamily(
            "afterplate_outbox_waiting", "Messages due and not settled", labels=["kind"]
        )
        oldest = GaugeMetricFamily(
            "afterplate_outbox_oldest_seconds",
            "For how long the oldest of them has been due, in the bot's time",
            labels=["kind"],
        )
        for kind in Kind:
            waiting.add_metric([kind.value], figures.waiting.get(kind, 0))
            oldest.add_metric([kind.value], figures.oldest.get(kind, 0))
        yield from (waiting, oldest)
        version = GaugeMetricFamily(
            "afterplate_database_info", "The database", labels=["kind", "version"]
        )
        version.add_metric([figures.database, figures.schema], 1)
        yield version
        yield _gauge("participants", "Enrolled, paused and stopped ones too", figures.participants)
        if figures.next_due is not None:
            due = figures.next_due
            yield _gauge("next_due_timestamp_seconds", "The next wake-up", due.timestamp())
            late = max(0.0, (figures.at - due).total_seconds())
            yield _gauge("wake_overdue_seconds", "By how much that is past", late)


def _gauge(name: str, told: str, value: float) -> GaugeMetricFamily:
    return GaugeMetricFamily(f"afterplate_{name}", told, value=value)
