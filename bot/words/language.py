"""All the sentences of one language, and which language a person gets."""

from dataclasses import dataclass

from bot.words.asks import AskSentences
from bot.words.cautions import CautionSentences
from bot.words.digest import DigestSentences
from bot.words.educator import EducatorSentences
from bot.words.english.asks import ASKS
from bot.words.english.cautions import CAUTIONS
from bot.words.english.digest import DIGEST
from bot.words.english.educator import EDUCATOR
from bot.words.english.enrolling import ENROLLING
from bot.words.english.programme import PROGRAMME
from bot.words.english.prompts import PROMPTS
from bot.words.english.record_page import RECORD_PAGE
from bot.words.english.replies import REPLIES
from bot.words.english.requests import REQUESTS
from bot.words.english.wishes import WISHES
from bot.words.enrolling import EnrolSentences
from bot.words.programme import ProgrammeSentences
from bot.words.prompts import PromptSentences
from bot.words.record_page import RecordPageSentences
from bot.words.replies import ReplySentences
from bot.words.requests import RequestSentences
from bot.words.spanish import (
    asks,
    cautions,
    digest,
    educator,
    enrolling,
    programme,
    prompts,
    record_page,
    replies,
    requests,
    wishes,
)
from bot.words.wishes import WishSentences


@dataclass(frozen=True, slots=True, kw_only=True)
class Language:
    """One language: `code` is BCP 47."""

    code: str
    enrolling: EnrolSentences
    replies: ReplySentences
    requests: RequestSentences
    prompts: PromptSentences
    cautions: CautionSentences
    digest: DigestSentences
    educator: EducatorSentences
    asks: AskSentences
    wishes: WishSentences
    programme: ProgrammeSentences
    record_page: RecordPageSentences


ENGLISH = Language(
    code="en",
    enrolling=ENROLLING,
    replies=REPLIES,
    requests=REQUESTS,
    prompts=PROMPTS,
    cautions=CAUTIONS,
    digest=DIGEST,
    educator=EDUCATOR,
    asks=ASKS,
    wishes=WISHES,
    programme=PROGRAMME,
    record_page=RECORD_PAGE,
)

SPANISH = Language(
    code="es",
    enrolling=enrolling.ENROLLING,
    replies=replies.REPLIES,
    requests=requests.REQUESTS,
    prompts=prompts.PROMPTS,
    cautions=cautions.CAUTIONS,
    digest=digest.DIGEST,
    educator=educator.EDUCATOR,
    asks=asks.ASKS,
    wishes=wishes.WISHES,
    programme=programme.PROGRAMME,
    record_page=record_page.RECORD_PAGE,
)

LANGUAGES = {one.code: one for one in (ENGLISH, SPANISH)}


def language_named(plain: str) -> str | None:
    """The code of a language that is told by its name, in any language; None if it is none."""
    for one in LANGUAGES.values():
        if plain == one.code or plain in one.asks.language_words:
            return one.code
    return None


def language(code: str) -> Language:
    """The language with this code; English where it is not spoken yet."""
    return LANGUAGES.get(code.split("-", maxsplit=1)[0].casefold(), ENGLISH)
