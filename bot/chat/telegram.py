"""The Bot API through python-telegram-bot's client. Its updater and job queue stay unused.

The client's error classes do not tell whether a message left (a lost answer and a full
connection pool are both `TimedOut`), so the cause is looked at.
"""

import asyncio
import ipaddress
import re
from types import TracebackType
from typing import Any, Self
from urllib.parse import urlencode, urlsplit

import httpx
from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup, InputFile, ReplyKeyboardMarkup
from telegram.error import (
    BadRequest,
    ChatMigrated,
    Forbidden,
    InvalidToken,
    RetryAfter,
    TelegramError,
)
from telegram.request import HTTPXRequest

from bot.chat.port import ChatError, Gone, NotSent, Part, Refused, Throttled, Unsure
from bot.chat.trust import trusted
from bot.mendable import Mendable
from bot.messages import Delivered

#: Bytes that a pressed inline button can give back (Bot API manual, callback_data).
PRESS_BYTES = 64
#: How long one long poll waits for something to come, and how much longer for its answer.
POLL_SECONDS = 25
POLL_MARGIN = 10
READ_SECONDS = 15
CONNECT_SECONDS = 5
SENDS_AT_ONCE = 64
START_TRIES = 3

#: Kinds of update that the bot asks for.
WANTED = ("message", "edited_message", "callback_query")

#: How the API begins what it says of error 429, and how long to wait where it tells no time.
_TOO_MANY, DEFAULT_RETRY = "Too Many Requests", 5.0
#: What the client says of an answer that holds nothing but its status.
_BARE = re.compile(r"[A-Za-z' -]+ \(\d{3}\)")
_NEVER_LEFT = (httpx.ConnectError, httpx.ConnectTimeout, httpx.PoolTimeout, httpx.ProxyError)
#: Descriptions of error 400 that mean the chat itself is gone.
_NO_SUCH_CHAT = ("chat not found", "user is deactivated", "peer_id_invalid", "user not found")


class TelegramChat:
    """One bot's account. `async with` asks the API who it is, then sends and fetches."""

    def __init__(self, token: str, api: str) -> None:
        own: dict[str, Any] = {"verify": trusted()}  # one for both
        if _is_this_machine(api):
            own["trust_env"] = False
        self._sends = HTTPXRequest(
            connection_pool_size=SENDS_AT_ONCE,
            read_timeout=READ_SECONDS,
            write_timeout=READ_SECONDS,
            connect_timeout=CONNECT_SECONDS,
            httpx_kwargs=own,
        )
        self._polls = HTTPXRequest(
            connection_pool_size=1,
            read_timeout=POLL_SECONDS + POLL_MARGIN,
            connect_timeout=CONNECT_SECONDS,
            pool_timeout=CONNECT_SECONDS,
            httpx_kwargs=own,
        )
        self.bot = Bot(
            token,
            base_url=f"{api}/bot",
            base_file_url=f"{api}/file/bot",
            request=self._sends,
            get_updates_request=self._polls,
        )

    async def __aenter__(self) -> Self:
        for tries_left in reversed(range(START_TRIES)):
            try:
                await self.bot.initialize()
            except InvalidToken:
                await self._close()
                raise Mendable("the Bot API does not know AFTERPLATE_TELEGRAM_TOKEN") from None
            except TelegramError as error:
                if not tries_left:
                    await self._close()
                    raise Mendable(
                        f"the Bot API cannot be reached ({type(error).__name__}): "
                        "see AFTERPLATE_TELEGRAM_API and the network"
                    ) from None
                await asyncio.sleep(1)
            else:
                break
        return self

    async def __aexit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        await self._close()

    async def _close(self) -> None:
        await self._sends.shutdown()
        await self._polls.shutdown()

    @property
    def name(self) -> str:
        """The bot's user name, for links."""
        return self.bot.username

    async def send(self, chat: str, part: Part) -> Delivered:
        """Send one part; raises a ChatError by what is known of it."""
        try:
            sent = await self._send(chat, part)
        except TelegramError as error:
            raise fault_of(error) from error
        return Delivered(message=str(sent.message_id))

    async def _send(self, chat: str, part: Part) -> Any:
        # No parse mode anywhere: nothing in a text can be taken for formatting.
        markup = keyboard(part.buttons)
        if part.picture is not None:
            return await self.bot.send_photo(
                chat, InputFile(part.picture, "week.png"), caption=part.text, reply_markup=markup
            )
        if part.file is not None:
            return await self.bot.send_document(
                chat, InputFile(part.file, part.file_name), caption=part.text, reply_markup=markup
            )
        return await self.bot.send_message(chat, part.text, reply_markup=markup)

    async def fetch(self, offset: int) -> list[dict[str, Any]]:
        """Wait for updates from `offset` on, confirming all before it; raw, as they came.

        The client's own call reads a whole batch at once, so that one odd update would hide
        the others. Raises a ChatError.
        """
        query = urlencode(
            {
                "offset": offset,
                "timeout": POLL_SECONDS,
                "allowed_updates": str(list(WANTED)).replace("'", '"'),
            }
        )
        try:
            found = await self._polls.post(f"{self.bot.base_url}/getUpdates?{query}")
        except TelegramError as error:
            raise fault_of(error) from error
        if not isinstance(found, list):
            raise Unsure("getUpdates gave no list")
        return found

    async def press_seen(self, query: str) -> None:
        """Tell the chat program that a button's press was taken; best effort."""
        try:
            await self.bot.answer_callback_query(query)
        except TelegramError:
            return

    async def fetch_by_polling(self) -> None:
        """Give up a webhook that was set earlier; what waits stays. Raises a ChatError."""
        try:
            await self.bot.delete_webhook(drop_pending_updates=False)
        except TelegramError as error:
            raise fault_of(error) from error

    async def fetch_by_webhook(self, url: str, secret: str, *, connections: int = 1) -> None:
        """Have updates posted to this address with this secret, so many at a time.

        Raises a ChatError.
        """
        try:
            await self.bot.set_webhook(
                url, secret_token=secret, allowed_updates=WANTED, max_connections=connections
            )
        except TelegramError as error:
            raise fault_of(error) from error


def keyboard(buttons: tuple[str, ...]) -> InlineKeyboardMarkup | ReplyKeyboardMarkup | None:
    """Buttons under a message, one a row; a press gives back the very text of the button."""
    if not buttons:
        return None
    if all(len(text.encode()) <= PRESS_BYTES for text in buttons):
        rows = [[InlineKeyboardButton(text, callback_data=text)] for text in buttons]
        return InlineKeyboardMarkup(rows)
    return ReplyKeyboardMarkup([[text] for text in buttons], one_time_keyboard=True)


def fault_of(error: TelegramError) -> ChatError:
    """What an error of the client tells of the message that it was about."""
    name = type(error).__name__
    if isinstance(error, RetryAfter):
        return Throttled(_seconds(error))
    if error.message.startswith(_TOO_MANY):
        return Throttled(DEFAULT_RETRY)  # without a time, or by a proxy
    if _is_a_proxys(error):
        return Unsure(name)
    if isinstance(error, (Forbidden, ChatMigrated)):
        return Gone(name)
    if isinstance(error, InvalidToken):
        return NotSent(name)
    if isinstance(error, BadRequest):
        told = error.message.casefold()
        return Gone(name) if any(words in told for words in _NO_SUCH_CHAT) else Refused(name)
    if isinstance(error.__cause__, _NEVER_LEFT):
        return NotSent(type(error.__cause__).__name__)
    return Unsure(name)


def _is_a_proxys(error: TelegramError) -> bool:
    """Whether the answer was none of the API's, which always tells what it means in JSON: a page
    (the client chains what it could not parse), or nothing but a status (`Forbidden (403)`)."""
    return isinstance(error.__cause__, TelegramError) or bool(_BARE.fullmatch(error.message))


def _seconds(error: RetryAfter) -> float:
    after = error.retry_after
    return float(after) if isinstance(after, (int, float)) else after.total_seconds()


def _is_this_machine(api: str) -> bool:
    host = urlsplit(api).hostname or ""
    try:
        return ipaddress.ip_address(host).is_loopback
    except ValueError:
        return host == "localhost"
