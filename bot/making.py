"""What a message of the outbox goes out as: its parts, and what is made just before it leaves."""

import asyncio
import logging
from collections.abc import Awaitable, Callable, Mapping
from dataclasses import dataclass
from typing import Any

from bot.chat.pieces import pieces
from bot.chat.port import Part
from bot.logs import place_of, say
from bot.storage.letters import Letter

_LOG = logging.getLogger(__name__)

#: Longest texts (Bot API manual, sendMessage and sendPhoto).
TEXT_LIMIT = 4096
CAPTION_LIMIT = 1024

#: How long making a picture or file may take before the words go out alone.
MAKING_SECONDS = 20.0

#: Draws the picture of a row of the outbox, from its figures.
Draw = Callable[[int, Mapping[str, Any]], Awaitable[bytes]]
#: Makes the file of an attachment for a reader: its name and bytes.
Attach = Callable[[str, str], Awaitable[tuple[str, bytes]]]


async def draw_nothing(_row: int, _picture: Mapping[str, Any]) -> bytes:
    """For a bot without a drawing process: the words go out alone."""
    raise NotImplementedError


async def attach_nothing(_reader: str, _what: str) -> tuple[str, bytes]:
    """For a bot that makes no files: the words go out alone."""
    raise NotImplementedError


@dataclass(frozen=True, slots=True, kw_only=True)
class Makes:
    """What delivery has made just before a message leaves."""

    draw: Draw = draw_nothing
    attach: Attach = attach_nothing

    async def parts(self, letter: Letter) -> tuple[Part, ...]:
        """What goes out; what cannot be made in time is left out, its words are not."""
        picture, file = None, None
        try:
            async with asyncio.timeout(MAKING_SECONDS):
                if letter.picture is not None:
                    picture = await self.draw(letter.id, letter.picture)
                if letter.attachment is not None:
                    file = await self.attach(letter.reader, letter.attachment)
        except Exception as error:
            say(_LOG, logging.ERROR, "not made", row=letter.id, error=place_of(error))
        parts = parts_of(letter, picture=picture, file=file)
        if letter.parts_done and picture is None and file is None:
            # What arrived before a break was the picture: it keeps its place, the words theirs.
            return (Part(text=""), *parts)
        return parts


def parts_of(
    letter: Letter, *, picture: bytes | None = None, file: tuple[str, bytes] | None = None
) -> tuple[Part, ...]:
    """Cut a message into what the chat program takes; buttons stand under the last part."""
    parts: list[Part] = []
    text = letter.text
    if picture is not None or file is not None:
        caption = text if len(text) <= CAPTION_LIMIT else ""
        name, content = file if file is not None else ("", None)
        parts.append(Part(text=caption, picture=picture, file=content, file_name=name))
        text = "" if caption else text
    parts.extend(Part(text=piece) for piece in pieces(text, TEXT_LIMIT))
    if not parts:
        return ()
    last = parts[-1]
    parts[-1] = Part(
        text=last.text,
        picture=last.picture,
        file=last.file,
        file_name=last.file_name,
        buttons=letter.buttons,
    )
    return tuple(parts)
