"""JSON lines as they come in, from whatever editor: read, replay and import share this door.

A byte-order mark, CRLF and blank lines are nobody's fault and let pass. Only a line feed ends a
line: what people write may hold other separators (U+2028, next line), which JSON allows in text.
"""

import json
from datetime import MAXYEAR, MINYEAR, datetime
from typing import Any


class NotALine(ValueError):
    """A line, or a time in it, that cannot be taken; says why, without its words."""


def lines_of(given: bytes) -> list[str]:
    """The lines of a file. Raises UnicodeDecodeError where it is not UTF-8."""
    return given.decode("utf-8-sig").split("\n")


def object_of(line: str) -> dict[str, Any]:
    """The object of a line. Raises NotALine."""
    try:
        found = json.loads(line.removeprefix("\ufeff"))  # also of a file put behind another
    except json.JSONDecodeError as fault:
        raise NotALine(f"not JSON ({fault.msg})") from None
    except (ValueError, RecursionError):  # a number of thousands of digits; nested without end
        raise NotALine("not JSON that can be read") from None
    if not isinstance(found, dict):
        raise NotALine("not a JSON object")
    return found


def instant_of(written: str) -> datetime:
    """An ISO 8601 time with its offset. Raises NotALine: `no ISO 8601 time`, `no offset`."""
    try:
        moment = datetime.fromisoformat(written)
    except ValueError:
        raise NotALine("is no ISO 8601 time") from None
    if moment.utcoffset() is None:
        raise NotALine("has no offset")
    # At either end of the calendar an hour more or less, or another zone, cannot be reckoned.
    if not MINYEAR < moment.year < MAXYEAR:
        raise NotALine("lies outside the years that can be reckoned with")
    return moment


def storable(value: Any) -> Any:
    """The same without what a database refuses: NUL, and halves of surrogate pairs.

    JSON can spell both (`\\u0000`, `\\ud83d`); a chat's text is rid of them in the same way.
    """
    match value:
        case str():
            whole = value.encode("utf-16", "surrogatepass").decode("utf-16", "replace")
            return whole.replace("\0", "")
        case dict():
            return {storable(name): storable(one) for name, one in value.items()}
        case list():
            return [storable(one) for one in value]
        case _:
            return value
