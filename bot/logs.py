"""Structured lines on standard error: what happened, never what was said.

No message text, glucose value, name or token can get in: fields are ids, counts, kinds and
durations; of an error only its class and its place in the code are shown, since its message
may quote what it choked on. The chat library's own lines are kept out (they hold addresses
with the token and payloads).
"""

import json
import logging
import re
import sys
import traceback
from collections.abc import Mapping
from typing import IO, Any

_FIELDS = "fields"
#: Files of this program, by their path within it.
_OWN = re.compile(r"/((?:bot|scheduler)/[\w/]+\.py)$")
#: Libraries whose lines may hold a token, a parameter or a payload.
_QUIET = (
    *("httpx", "httpcore", "telegram", "apscheduler", "alembic", "tornado", "asyncio"),
    *("procrastinate", "psycopg"),
)


def say(logger: logging.Logger, level: int, event: str, **fields: Any) -> None:
    """Log an event by name, with fields that identify but tell nothing."""
    logger.log(level, event, extra={_FIELDS: fields})


def fields_of(record: logging.LogRecord) -> Mapping[str, Any] | None:
    """The fields of a line that `say` made; None for a line of somebody else."""
    return getattr(record, _FIELDS, None)


def place_of(error: BaseException) -> str:
    """The class of an error and where it was raised: `KeyError bot/turns/hearing.py:31`."""
    frames = traceback.extract_tb(error.__traceback__)
    if not frames:
        return type(error).__name__
    own = [frame for frame in frames if _OWN.search(frame.filename)]
    last = (own or frames)[-1]
    place = _OWN.search(last.filename)
    name = place.group(1) if place else last.filename.rpartition("/")[2]
    return f"{type(error).__name__} {name}:{last.lineno}"


class Lines(logging.Formatter):
    """One JSON object a line."""

    def format(self, record: logging.LogRecord) -> str:
        """Time, level, event and fields; of an exception its class and place only."""
        fields = fields_of(record)
        line = {
            "at": self.formatTime(record, "%Y-%m-%dT%H:%M:%S%z"),
            "level": record.levelname.lower(),
            "event": record.msg if fields is not None else f"line of {record.name}",
            **(fields or {}),
        }
        if record.exc_info and record.exc_info[1] is not None:
            line["error"] = place_of(record.exc_info[1])
        return json.dumps(line, default=str)


def set_up(level: str, stream: IO[str] | None = None) -> None:
    """Send lines from this level up to a stream (standard error)."""
    handler = logging.StreamHandler(stream or sys.stderr)
    handler.setFormatter(Lines())
    handler.setLevel(level.upper())
    root = logging.getLogger()
    root.handlers[:] = [handler]
    # Warnings are made whatever is shown: the metrics count them.
    root.setLevel(min(logging.WARNING, handler.level))
    for name in _QUIET:
        logging.getLogger(name).setLevel(logging.CRITICAL)
