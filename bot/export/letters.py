"""What a participant and the bot wrote to one another, as a table for the participant alone."""

import csv
from collections.abc import Sequence
from io import StringIO

from bot.export.table import guarded
from bot.localtime import in_zone, iso
from bot.messages import Passed

COLUMNS = ("at", "by", "text")


def letters_bytes(messages: Sequence[Passed], zone: str) -> bytes:
    """A row for each message: when, by whom (`me`, `bot`), its text. UTF-8 with its mark."""
    written = StringIO()
    rows = csv.writer(written, lineterminator="\r\n")
    rows.writerow(COLUMNS)
    for one in messages:
        by = "bot" if one.by_bot else "me"
        rows.writerow((iso(in_zone(one.at, zone)), by, guarded(one.text)))
    return b"\xef\xbb\xbf" + written.getvalue().encode()
