"""The record as files: JSON lines, CSV, FHIR, a printable page.

What lives here: the forms that a record takes outside. What it must not know: the store, the
chat, drawing (a function that draws is handed in), the clock. Everything is a function from a
record to text or bytes; commands and delivery write them where they belong.
"""

from collections.abc import Callable, Mapping
from typing import Any, Literal

#: Makes a PNG of a picture's mapping (`bot.picture.to_mapping`).
Draw = Callable[[Mapping[str, Any]], bytes]
Paper = Literal["a4", "letter"]

#: What a saying's `attachment` may name, and the name of the file that is sent for it.
ATTACHMENTS: Mapping[str, str] = {"record": "record.pdf", "export": "export.zip"}


def made(asked: Mapping[str, Any]) -> bytes:
    """The file `asked["attachment"]` of `asked["record"]`, its charts drawn by `asked["draw"]`.

    `asked["messages"]`, if there are any, go into a participant's own export.

    For a process of its own: it loads the libraries that write tables and pages, which the bot
    itself never does. Raises ValueError for an attachment that there is none of.
    """
    from bot.export.files import attachment  # noqa: PLC0415 - see above

    messages = asked.get("messages", ())
    _, content = attachment(asked["attachment"], asked["record"], asked["draw"], messages)
    return content
