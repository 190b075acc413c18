"""What do the findings come to? Entries in the order of the text, or one question back."""

# ruff: noqa: SIM905 - word sets read best as one string

from bisect import bisect_right
from dataclasses import dataclass, field

from bot.entries import (
    Ask,
    Asked,
    By,
    Doubt,
    Meal,
    Request,
    Said,
    Skip,
    Suggests,
    Symptom,
    Understood,
    What,
)
from bot.parser import activities_told, greeted, meals, meals_told, readings_told, timing
from bot.parser.context import Context
from bot.parser.findings import Findings
from bot.parser.food import kinds_of
from bot.parser.instants import When
from bot.parser.meals_told import Plate
from bot.parser.page import Page
from bot.parser.strangers import Kind
from bot.parser.subjects import Whose
from bot.parser.symptoms import Feeling
from bot.parser.things import SaidOf

#: Of several doubts the one that is asked about.
WORST_FIRST = (Ask.UNIT, Ask.VALUE, Ask.MEANING, Ask.WHEN_DONE)


@dataclass(slots=True)
class _Sheet:
    """Entries with their places, and what has to be asked."""

    entries: list[tuple[int, Said]] = field(default_factory=list)
    asks: list[Ask] = field(default_factory=list)
    denied: bool = False
    others: bool = False
    others_feel: Suggests | None = None


def assembled(page: Page, context: Context, found: Findings) -> Understood:
    """Put the findings together."""
    sheet = _Sheet()
    _symptoms(page, context, found, sheet)
    activities = activities_told.told(page, context.language, found)
    answer = context.asked is Asked.MEAL
    plates = meals_told.plates(page, context.language, found, answer=answer)
    values, others = readings_told.own_values(page, found, context.unit)
    places = [(value.start, value.end) for value in values]
    places += [(plate.start, plate.end) for plate in plates]
    places += [(done.start, done.end) for done in activities.done]
    places += [(stranger.start, stranger.end) for stranger in found.strangers]
    places += [(feeling.start, feeling.end) for feeling in found.feelings]  # `shaky yesterday`
    given = _behind_leads(found, plates)
    free = [when for when in found.whens if when not in given.values()]
    moments = {at for cue in found.cues for at in range(cue.start, cue.end)}
    open_places = [at for at in places if at[0] not in given]
    given |= timing.shared_out(free, open_places, found.clauses, moments)
    to_come = [
        (plate.start, plate.end) for plate in plates if plate.start not in given and not plate.past
    ]
    given |= timing.shared_out(found.ahead, to_come, found.clauses)
    readings = readings_told.told(page, context, found, values, given, plates, activities)
    sheet.others = sheet.others or others
    sheet.entries += readings.entries
    _same_again(page, context, found, sheet, plates)
    for plate in plates:
        meal = plate.entry(page, given.get(plate.start), context.at, context.language)
        sheet.entries.append((plate.start, meal))
    for done in activities.done:
        sheet.entries.append((done.start, done.entry(given.get(done.start), context.at)))
    if found.skip is not None and not readings.entries:
        alone = not (sheet.entries or found.strips or found.wishes or found.values)
        skip = _with_reason(page, found.skip) if alone else found.skip[2]
        sheet.entries.append((found.skip[0], skip))
    sheet.entries += [(start, strips) for start, _, strips in found.strips]
    sheet.entries += [(wish.start, wish.request) for wish in found.wishes]
    if readings.ask is not None:
        sheet.asks.append(readings.ask)
    if activities.under_way is not None:
        sheet.asks.append(Ask.WHEN_DONE)
    if not sheet.entries and not sheet.asks:
        return _remainder(page, context, found, sheet)
    if found.unsure and not sheet.asks:  # `118, rice and <b>beans</b>`: no value is lost unasked
        sheet.asks.append(Ask.VALUE)
        readings.numbers = tuple(value.number for value in found.unsure)
    entries = tuple(entry for _, entry in sorted(sheet.entries, key=lambda placed: placed[0]))
    ask = next((ask for ask in WORST_FIRST if ask in sheet.asks), None)
    doubt = Doubt(
        readings=readings.doubtful,
        numbers=readings.numbers,
        activity=activities.under_way,
        others_feel=sheet.others_feel,
    )
    return Understood(entries=entries, ask=ask, doubt=doubt)


def _with_reason(page: Page, skip: tuple[int, int, Skip]) -> Skip:
    """Why there is none, where the rest of the message says so (`at a funeral, can't test`)."""
    start, end, said = skip
    spans = [(0, start), (end, len(page.tokens))]
    rest = next(((a, b) for a, b in spans if any(w.isalpha() for w in page.words(a, b))), None)
    if said.reason is not None or rest is None:
        return said
    first, last = rest
    while last > first and page.words(last - 1, last)[0] in _JOINING:
        last -= 1  # `breakfast was late and`, `no medí`
    return Skip(reason=page.text(first, last).strip(" .,;:!?-") or None)


_JOINING = frozenset({"and", "so", "but", "y", "e", "pero", ",", ".", ";"})


def _same_again(
    page: Page, context: Context, found: Findings, sheet: _Sheet, plates: list[Plate]
) -> None:
    """`same as yesterday`: food behind a lead-in or where it is asked for, else a question."""
    if found.same_as is None or any(plate.spans for plate in plates):
        return
    start, end = found.same_as
    lead = next((lead for lead in found.leads if lead.end <= start), None)
    if lead is None and context.asked is not Asked.MEAL:
        sheet.asks.append(Ask.MEANING)
        return
    plates[:] = [Plate(start=start, spans=[(start, end)], name=lead.name if lead else None)]


def _behind_leads(found: Findings, plates: list[Plate]) -> dict[int, When]:
    """Times right behind `eating` and the like belong to what is eaten, wherever that stands
    behind them (`eating at 7:15, cabbage rolls`); by the place where the plate begins."""
    leads = {lead.end: lead for lead in found.leads if not lead.is_name}
    given: dict[int, When] = {}
    for when in found.whens:
        plate = next((plate for plate in plates if plate.start >= when.end), None)
        if when.start in leads and plate is not None and plate.start not in given:
            given[plate.start] = when
            plate.past = plate.past or leads[when.start].past
    return given


def _symptoms(page: Page, context: Context, found: Findings, sheet: _Sheet) -> None:
    """Enter each level once, in the order of first mention."""
    seen: set[Suggests] = set()
    index = 0
    feelings = found.feelings
    while index < len(feelings):
        feeling, last = feelings[index], index
        while last + 1 < len(feelings) and _joined(page, found, last):
            last += 1
        run, index = feelings[index : last + 1], last + 1
        grave = any(each.suggests is Suggests.EMERGENCY for each in run)
        suggests = Suggests.EMERGENCY if grave else feeling.suggests
        if not feeling.now or _over(page, found, feeling.start, context.language):
            sheet.denied = True
        elif not grave and _anothers(found, feeling, context.by):
            sheet.others = True
            sheet.others_feel = sheet.others_feel or suggests
            sheet.asks.append(Ask.MEANING)
        elif suggests not in seen:
            seen.add(suggests)
            text = page.text(feeling.start, feelings[last].end)
            sheet.entries.append((feeling.start, Symptom(text=text, suggests=suggests)))


def _anothers(found: Findings, feeling: Feeling, by: By) -> bool:
    """Whether somebody else feels it; whom a helper speaks of by a noun is the participant."""
    if feeling.of is SaidOf.ANOTHER:
        return by is not By.HELPER
    whose = found.subjects.whose(feeling.start, feeling.end)
    return feeling.of is SaidOf.SOMEBODY or whose is Whose.OTHER


_JOINING = frozenset("and y e , & also very a so still".split())


def _joined(page: Page, found: Findings, index: int) -> bool:
    this, following = found.feelings[index], found.feelings[index + 1]
    between = page.words(this.end, following.start)
    near = len(between) <= 2 and set(between) <= _JOINING
    since = between[:1] in (["since"], ["desde"]) and len(between) <= 4
    if not (this.now and following.now and (near or since)):
        return False
    return this.suggests is following.suggests or _sick_and_worse(page, this, following)


_SICK = ("vomit", "throw", "threw", "puk", "sick", "devolv")
_WORSE = ("keep", "hold", "stay", "confus", "reten", "retien", "down")


def _sick_and_worse(page: Page, one: Feeling, other: Feeling) -> bool:
    """`vomiting and cannot keep fluids down` is one emergency, not a high sign beside it."""
    if {one.suggests, other.suggests} != {Suggests.HIGH, Suggests.EMERGENCY}:
        return False
    high, grave = (one, other) if one.suggests is Suggests.HIGH else (other, one)
    sick = any(word.startswith(_SICK) for word in page.words(high.start, high.end))
    return sick and any(word.startswith(_WORSE) for word in page.words(grave.start, grave.end))


def _over(page: Page, found: Findings, index: int, language: str) -> bool:
    """Whether it was over before today."""
    if found.still:
        return False
    clause = found.clauses[index]
    days = [when.start for when in found.whens if when.before_today]
    days += [start for start, _ in found.long_ago]
    here = [start for start in days if found.clauses[start] == clause]
    return any(start > index for start in here) or (
        here != [] and not _again(page, found.clauses, index)
    )


def _again(page: Page, clauses: list[int], index: int) -> bool:
    """`had a stroke in 2018 and my arm is weak again today`: it is of today."""
    end = min(bisect_right(clauses, clauses[index]), index + _NEAR)
    behind = set(page.words(index, end))
    return not _TODAY.isdisjoint(behind) and _MENDED.isdisjoint(behind)


_NEAR = 12
_TODAY = frozenset("today now again tonight hoy ahora".split())
_MENDED = frozenset("fine ok okay better good well gone bien mejor".split())


_ASKED_BACK = frozenset({"?"})
#: Beside a greeting's words (`not feeling good`, `no me siento bien`) they greet nobody.
_UNWELL = frozenset({"not", "isnt", "arent", "dont", "doesnt", "feel", "feeling", "siento"})


def _remainder(page: Page, context: Context, found: Findings, sheet: _Sheet) -> Understood:
    """A message without an entry."""
    kinds = {stranger.kind for stranger in found.strangers}
    if sheet.others:
        return Understood(ask=Ask.MEANING, doubt=Doubt(others=True))
    if Kind.ERROR in kinds:
        if context.wants_reading:
            error = next(each for each in found.strangers if each.kind is Kind.ERROR)
            return Understood(entries=(Skip(reason=page.text(error.start, error.end)),))
        return Understood(ask=Ask.MEANING)
    if Kind.MEASURED in kinds:
        return Understood(entries=(Request(what=What.NOT_GLUCOSE),))
    if sheet.denied:
        return Understood(entries=(Request(what=What.CHATTER),))
    if context.asked is Asked.MEAL and (meal := _answer(page, context, found)) is not None:
        return Understood(entries=(meal,))
    thanked = not kinds and greeted.claimed(page, context.language)
    unwell = page.holds(_UNWELL)
    if thanked and not unwell and not greeted.says_more(page, context.language, thanked):
        return Understood(entries=(Request(what=What.CHATTER),))
    return Understood(ask=Ask.MEANING)


def _answer(page: Page, context: Context, found: Findings) -> Meal | None:
    """What is on the plate, in words that nobody has listed (rule 11)."""
    if found.strangers or page.holds(_ASKED_BACK):
        return None
    whole = (0, len(page.tokens))
    if (same := found.same_as) is not None:
        text = page.text(*same)
        return Meal(text=text, started_at=context.at, foods=kinds_of(text, context.language))
    piece = meals.judged(page, *whole, context.language, found.dishes, found.amounts, led=True)
    if piece is None or not piece.food or not _words(page, piece.start, piece.end):
        return None
    text = page.text(piece.start, piece.end).strip(" .,;:!?")
    return Meal(text=text, started_at=context.at, foods=kinds_of(text, context.language))


def _words(page: Page, start: int, end: int) -> bool:
    """Whether it could be words: a vowel and no code."""
    tokens = page.words(start, end)
    return any(any(c in "aeiouy" for c in word) for word in tokens if word.isalpha()) and not any(
        word in "{}[]<>=_|\\^~" for word in tokens
    )
