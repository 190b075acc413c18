"""`export` and `record` in a chat with the whole live bot: the file arrives with the words."""

import json
from collections.abc import AsyncIterator
from datetime import time
from io import BytesIO
from zipfile import ZipFile

import pytest
from pypdf import PdfReader

from bot.export import ATTACHMENTS
from bot.export.files import FORMATS, MESSAGES
from tests.trial.conftest import Talk, talking

pytestmark = pytest.mark.live


@pytest.fixture
async def ana() -> AsyncIterator[Talk]:
    """Somebody who has joined and logged a plate."""
    async with talking() as talk:
        await talk.enrol(main_meal=time(13), may_go_low=False, ketone_risk=False)
        await talk.say("118, rice and beans")
        yield talk


async def test_record_is_a_page_to_print(ana: Talk) -> None:
    *_, sent = await ana.say("record")
    assert sent.file is not None
    assert sent.file.name == ATTACHMENTS["record"]
    [page] = PdfReader(BytesIO(sent.file.body)).pages
    assert "rice and beans" in page.extract_text()


async def test_export_is_everything_in_every_form(ana: Talk) -> None:
    *_, sent = await ana.say("export")
    assert sent.file is not None
    assert sent.file.name == ATTACHMENTS["export"]
    with ZipFile(BytesIO(sent.file.body)) as archive:
        assert archive.namelist() == [*FORMATS.values(), MESSAGES]
        lines = archive.read("record.jsonl").decode().splitlines()
        assert "118, rice and beans" in archive.read(MESSAGES).decode()
    assert "rice and beans" in [json.loads(line).get("text") for line in lines]
