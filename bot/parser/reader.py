"""What does this message mean? The findings put together, or one question back.

The order of the finders is the order of certainty: what nobody should miss (symptoms) and what
is surely no glucose come first, then times and moments, then values, and food last of all.
"""

# ruff: noqa: SIM102 - one question an `if`
# ruff: noqa: SIM905 - word sets read best as one string

from dataclasses import replace
from datetime import datetime

from bot.entries import (
    Ask,
    Asked,
    By,
    Correction,
    Doubt,
    Removal,
    Request,
    Symptom,
    Understood,
    What,
)
from bot.parser import (
    asides,
    corrections,
    courtesies,
    intents,
    mends_beside,
    numbers,
    numerals_meant,
    removals,
    requests,
    skips,
    symptoms,
    values,
)
from bot.parser.assembly import assembled
from bot.parser.context import Context
from bot.parser.findings import Findings, found
from bot.parser.languages import numerals
from bot.parser.misspelt import mended
from bot.parser.page import Page
from bot.parser.subjects import Subjects
from bot.parser.things import SaidOf
from bot.parser.tidy import plain, shown
from bot.parser.tokens import cut
from bot.units import Unit


def read(
    text: str,
    *,
    at: datetime,
    unit: Unit,
    language: str = "en",
    by: By = By.SELF,
    asked: Asked | None = None,
) -> Understood:
    """Read one message. `at` is when it came, with the participant's own offset; never raises."""
    context = Context(at=at, unit=unit, language=language, by=by, asked=asked)
    page = _page(text, language)
    if not page.tokens:
        return Understood(ask=Ask.MEANING)
    if (value := values.alone(page)) is not None:
        return assembled(page, context, _nothing_but(page, context, value))
    feelings = symptoms.find(page, language)
    return (
        _whole(page, context, felt=any(each.of is not SaidOf.A_THING for each in feelings))
        or _mend_and_more(page, context, felt=bool(feelings))
        or _parts(page, context, feelings)
    )


def _nothing_but(page: Page, context: Context, value: values.Value) -> Findings:
    """What is found where a message is one number, the commonest of all: no other question has
    an answer then, and none is asked (`test_reader_properties` compares the two ways)."""
    subjects = Subjects(page, context.language, context.by)
    return Findings(
        subjects=subjects, clauses=[0], feelings=[], wishes=[], dishes=[], values=[value]
    )


def _mend_and_more(page: Page, context: Context, *, felt: bool) -> Understood | None:
    """What is taken back or mended first, and then something else; where a sign is told (`felt`)
    no words are (`vomita y no retiene ni el agua`)."""
    opening = mends_beside.opening(page, context.language, context.at, context.unit)
    if opening is None and (end := mends_beside.closes(page, context.language)) is not None:
        before = Page(page.shown, page.tokens[:end])
        if _tells_why(before, _parts(before, context, symptoms.find(before, context.language))):
            return Understood(entries=(Removal(),))
    if opening is None:
        return None
    start, mend = opening
    if felt and isinstance(mend.entry, Correction) and mend.entry.text is not None:
        mended = Page(page.shown, page.tokens[:start])
        if symptoms.find(mended, context.language):
            return None
    after = Page(page.shown, page.tokens[start:])
    rest = _parts(after, context, symptoms.find(after, context.language))
    if (
        mend.entry is not None
        and mends_beside.plainly(page, mend.entry)
        and _tells_why(after, rest)
    ):
        return Understood(entries=(mend.entry,))
    if mend.entry is None or not rest.entries or rest.entries[0] == _CHATTER:
        return None
    if rest.entries == (_NOT_GLUCOSE,):  # `sorry i meant 7.3 n took 5 mg glipizide`
        return Understood(entries=(mend.entry,))
    if mends_beside.stands_beside(page, mend.entry, after, rest):
        return replace(rest, entries=(mend.entry, *rest.entries))  # `sorry 6.5, now 8.0 after`
    starred = page.tokens[0].word == "*"  # `*148 n ate tofu at 6pm`
    if isinstance(mend.entry, Correction) and mend.entry.replaces is None and not starred:
        # `sorry 62 and shaky`; beside all else, `sorry` may only be polite (`sorry, 162, rice`)
        if rest.ask is not None or not all(isinstance(each, Symptom) for each in rest.entries):
            return None
    return replace(rest, entries=(mend.entry, *rest.entries))


def _tells_why(page: Page, rest: Understood) -> bool:
    """`delete that last one, it was my sister's`: neither an entry nor a number behind it."""
    silent = not rest.entries and rest.ask is Ask.MEANING
    return (silent or rest.entries == (_CHATTER,)) and not page.numbers


_CHATTER = Request(what=What.CHATTER)
_NOT_GLUCOSE = Request(what=What.NOT_GLUCOSE)


def _page(text: str, language: str) -> Page:
    kept = shown(text)
    tokens = courtesies.without(cut(plain(kept)), kept, language)
    tokens = asides.without(tokens, language)
    tokens = numerals_meant.mended(tokens, language)
    tokens = numbers.spoken(tokens, numerals(language))
    return Page(kept, mended(tokens, language))


_OFF = frozenset({"hi", "lo", "high", "low", "alto", "alta", "bajo", "baja"})
#: Beside one of these they tell of a value that is not named (`it was hi`, `too high`).
_ABOUT_IT = _OFF | frozenset(
    "its it is was just only a bit too very really way still so again today now muy estaba esta "
    "salio un poco".split()
)


def _whole(page: Page, context: Context, *, felt: bool) -> Understood | None:
    """A message that is one thing altogether."""
    language = context.language
    if page.holds(_BRIEF) and (brief := _in_a_word(page, context)) is not None:
        return brief
    if felt:
        return None
    asked = context.wants_reading
    if removals.takes_back(page, language):
        return Understood(entries=(Removal(),))
    if values.off_scale(page.afresh(), language):  # `LO, what do I do`: what the meter shows first
        return None
    if intents.small_talk(page, language):
        return Understood(entries=(Request(what=What.CHATTER),))
    if (request := requests.whole(page, language, asked=asked)) is not None:
        return Understood(entries=(request,))
    if (skip := skips.find(page, language, asked=asked, by=context.by)) is not None:
        return Understood(entries=(skip,))
    mend = corrections.find(page, language, context.at, context.unit)
    if mend is None:
        return None
    if mend.entry is not None:
        return Understood(entries=(mend.entry,))
    doubt = Doubt() if mend.value is None else Doubt(numbers=(mend.value.number,))
    return Understood(ask=mend.ask, doubt=doubt)


#: A message that is answered by one word, or by what the meter shows, holds one of these.
_BRIEF = _OFF | {"hello", "hola", "hey"}


def _in_a_word(page: Page, context: Context) -> Understood | None:
    """`hi`, `low`, `it was high`: a greeting, or a value that is not named."""
    words = [token.word for token in page.tokens if any(map(str.isalnum, token.word))]
    if words in (["hi"], ["hello"], ["hola"], ["hey"]) and not _shouted(page):
        if context.wants_reading:
            return Understood(ask=Ask.VALUE)
        return Understood(entries=(Request(what=What.CHATTER),))
    if (
        words in (["low"], ["high"], ["lo"], ["alto"], ["bajo"], ["alta"], ["baja"])
        and context.wants_reading
    ):
        if words != ["lo"] or not _shouted(page):
            return Understood(ask=Ask.VALUE)
    if context.wants_reading and _OFF.intersection(words) and _ABOUT_IT.issuperset(words):
        if not values.off_scale(page.afresh(), context.language):
            return Understood(ask=Ask.VALUE)
    return None


def _shouted(page: Page) -> bool:
    return page.text(0, len(page.tokens)).isupper()


def _parts(page: Page, context: Context, feelings: list[symptoms.Feeling]) -> Understood:
    findings = found(page, context, feelings)
    return assembled(page, context, findings)
