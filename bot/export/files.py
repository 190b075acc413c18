"""Each form of file by its name: for the command line, and for what is sent in a chat."""

from collections.abc import Iterable, Sequence
from io import BytesIO
from typing import Literal
from zipfile import ZIP_DEFLATED, ZipFile, ZipInfo

from bot.export import ATTACHMENTS, Draw, Paper
from bot.export.fhir import bundle_bytes
from bot.export.jsonl import export_lines, to_text
from bot.export.letters import letters_bytes
from bot.export.table import csv_bytes
from bot.messages import Passed
from bot.record import Record

Format = Literal["jsonl", "csv", "fhir", "pdf"]

#: The forms, each with the name of its file in a chat.
FORMATS: dict[Format, str] = {
    "jsonl": "record.jsonl",
    "csv": "record.csv",
    "fhir": "record.fhir.json",
    "pdf": "record.pdf",
}

#: The file of what was written, beside them.
MESSAGES = "messages.csv"


def file_of(
    form: Format,
    records: Iterable[Record],
    draw: Draw,
    *,
    paper: Paper = "a4",
    whole: bool = False,
) -> bytes:
    """These records as one file.

    `draw` draws the charts of the printable record, which is of the last fortnight unless it is
    to be of the `whole` record; the other forms always hold everything.
    """
    match form:
        case "jsonl":
            return to_text(line for record in records for line in export_lines(record)).encode()
        case "csv":
            return csv_bytes(records)
        case "fhir":
            return bundle_bytes(records)
        case "pdf":
            from bot.export.page import pdf_bytes  # noqa: PLC0415 - loads fonts and Pillow

            return pdf_bytes(records, draw, paper=paper, whole=whole)


def attachment(
    name: str, record: Record, draw: Draw, messages: Sequence[Passed] = ()
) -> tuple[str, bytes]:
    """The file that a saying's `attachment` names: its name in the chat, and its bytes.

    `record` is the last fortnight, printable; `export` everything in every form, in one ZIP, with
    the `messages` that are still kept.
    Raises ValueError for another name.
    """
    if name not in ATTACHMENTS:
        raise ValueError(f"no attachment is called {name!r}")
    paper = paper_of(record.participant.zone)
    if name == "record":
        content = file_of("pdf", [record], draw, paper=paper)
    else:
        files = [
            (file, file_of(form, [record], draw, paper=paper, whole=True))
            for form, file in FORMATS.items()
        ]
        if messages:
            files.append((MESSAGES, letters_bytes(messages, record.participant.zone)))
        content = _zipped(files)
    return ATTACHMENTS[name], content


def paper_of(zone: str) -> Paper:
    """Letter in the Americas, A4 elsewhere (common practice, no source)."""
    return "letter" if zone.startswith(("America/", "US/", "Canada/")) else "a4"


def _zipped(files: Sequence[tuple[str, bytes]]) -> bytes:
    packed = BytesIO()
    with ZipFile(packed, "w", ZIP_DEFLATED) as archive:
        for name, content in files:
            # ZipInfo's own date: the same record gives the same bytes.
            archive.writestr(ZipInfo(name), content, ZIP_DEFLATED)
    return packed.getvalue()
