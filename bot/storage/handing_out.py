"""What a reader is handed as a file: their own record, or that of somebody who shares it with them.

Looked up when the file is made, not when it was asked for: whoever took access away in between is
not in it.
"""

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from sqlalchemy import select

from bot.messages import Passed
from bot.record import fold
from bot.storage import tables
from bot.storage.codec import from_ms
from bot.storage.work import Work


def handed_out(work: Work, reader: str, what: str, now: datetime) -> Mapping[str, Any]:
    """What `bot.export.made` makes the file of, but for the drawing.

    `what` is a saying's `attachment`: a form and, behind a colon, whose record. The texts of the
    last 30 days go into a participant's own export and into nothing else. Raises LookupError
    where the reader may not have it.
    """
    form, _, whose = what.partition(":")
    who = whose or reader
    opened = work.open(who, now)
    if opened is None:
        raise LookupError("nobody to make a file for")
    person = opened.participant
    if whose and not (person.educator == reader and person.tell_educator):
        raise LookupError("not shared with this reader")
    own_export = form == "export" and not whose
    return {
        "attachment": form,
        "record": fold(person, work.events(who)),
        "messages": passed(work, who) if own_export else (),
    }


def passed(work: Work, who: str) -> tuple[Passed, ...]:
    """What a participant and the bot wrote to one another, as far as it is still kept."""
    heard, box = tables.heard, tables.outbox
    told = work.connection.execute(
        select(heard.c.at_ms, heard.c.text).where(heard.c.participant == who)
    )
    said = work.connection.execute(
        select(box.c.due_ms, box.c.text).where(
            box.c.reader == who, box.c.text != "", box.c.state == "sent"
        )
    )
    texts = [
        *(Passed(at=from_ms(row.at_ms), text=row.text) for row in told),
        *(Passed(at=from_ms(row.due_ms), text=row.text, by_bot=True) for row in said),
    ]
    return tuple(sorted(texts, key=lambda one: (one.at, one.by_bot)))
