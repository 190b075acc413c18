"""The meals of a message: which words, which name, and whether it begins now."""


# ruff: noqa: SIM905 - word sets read best as one string

from dataclasses import dataclass, field
from datetime import datetime

from bot.entries import Meal, MealName, Moment
from bot.parser import dish_lists, meals
from bot.parser.findings import Findings
from bot.parser.food import kinds_of
from bot.parser.instants import When, is_today, resolved
from bot.parser.lead_ins import PAST, Lead, begins
from bot.parser.page import Page
from bot.parser.strangers import Kind
from bot.parser.subjects import Whose
from bot.parser.unlisted import opens_a_list, surely_food


@dataclass(slots=True, kw_only=True)
class Plate:
    """A meal being put together; `over` where it is named only as what is over."""

    start: int
    spans: list[tuple[int, int]] = field(default_factory=list)
    name: MealName | None = None
    past: bool = False
    over: bool = False
    led: bool = False

    @property
    def end(self) -> int:
        return self.spans[-1][1] if self.spans else self.start + 1

    def started(self, when: When | None, at: datetime) -> datetime | None:
        """The instant that its time names."""
        if when is None:
            return None
        morning = self.name is MealName.BREAKFAST
        return resolved(when, at, ahead=not self.past, morning=morning)

    def entry(self, page: Page, when: When | None, at: datetime, language: str) -> Meal:
        """The meal with its start."""
        text = dish_lists.text_of(page, self.spans)
        timed = when is not None and when.ago != 0 and not is_today(when, at)
        return Meal(
            text=text,
            name=self.name,
            started_at=self.started(when, at) if timed else None if self.over else at,
            foods=kinds_of(text, language) if text else (),
        )


def plates(page: Page, language: str, found: Findings, *, answer: bool = False) -> list[Plate]:
    """Put the meals together, in the order of the text; `answer` is whether the message answers
    what is on the plate."""
    result: list[Plate] = []
    used: set[int] = set()
    for start, end in meals.runs(page, found.amounts, found.subjects.numbered(page)):
        lead = _lead_before(page, found, start, used)
        led = lead is not None and not _any_start(page, lead)
        led = led or surely_food(page, language, found, start, end)
        led = led or (answer and not result and opens_a_list(page, language, start, end))
        piece = meals.judged(page, start, end, language, found.dishes, found.amounts, led=led)
        if result and dish_lists.how_much(page, language, found, result[-1].spans, start, end):
            result[-1].spans.append((start, end))
            continue
        if result and lead is None and not (piece is not None and piece.food):
            more = dish_lists.goes_on(
                page, language, found, result[-1].spans, start, end, answer=answer
            )
            if more is not None:
                result[-1].spans.append(more)
                continue
        if piece is None or not piece.food or _planned(found, start, end, piece.start):
            continue
        if _priced(page, found, end) or _others_food(page, found, piece):
            continue
        if _washed_down(page, found, piece.start):
            continue
        plate = _joined(page, found, result, piece.start, lead)
        if plate is None:
            plate = Plate(start=piece.start)
            result.append(plate)
        plate.spans.append((piece.start, piece.end))
        if lead is not None:
            used.add(lead.start)
            _led(plate, lead, found, used)
    _name(page, found, result, used)
    _empty(page, language, found, result, used)
    for plate in result:
        _tense(page, found, plate)
    for plate in result:
        for span in plate.spans:
            page.claim(*span)
    return sorted(result, key=lambda plate: plate.start)


_STARTS = frozenset("i just have am im now about to start started starting begin began".split())


def _any_start(page: Page, lead: Lead) -> bool:
    """`start the car`: what is begun is food only where food is named."""
    return _STARTS.issuperset(page.words(lead.start, lead.end))


_MARKS = frozenset(":,-=.(")


def _lead_before(page: Page, found: Findings, start: int, used: set[int]) -> Lead | None:
    """The lead-in right before a run; marks, values and times may lie between."""
    nearest = start
    while nearest and (not page.free(nearest - 1) or page.tokens[nearest - 1].word in _MARKS):
        nearest -= 1
    best = None
    for lead in found.leads:
        if nearest <= lead.end <= start and lead.strong and lead.start not in used:
            words = [word for _, word in page.find_words(lead.end, start)]
            if words != ["."]:
                best = lead
    if best is None:
        return None
    gap = [index for index in range(best.end, start) if not page.free(index)]
    if not gap:
        return best
    inside = {index for lead in found.leads for index in range(lead.start, lead.end)}
    timed = {index for when in found.whens for index in range(when.start, when.end)}
    if any(index not in inside | timed for index in gap):
        return None if not best.is_name else best
    return best


def _led(plate: Plate, lead: Lead, found: Findings, used: set[int]) -> None:
    plate.led = True
    plate.past = plate.past or lead.past
    plate.over = plate.over or lead.blamed
    plate.name = plate.name or lead.name
    for other in found.leads:  # `having lunch: rice`
        if other.end == lead.start or (other.end <= lead.start and lead.start - other.end <= 1):
            plate.name = plate.name or other.name
            plate.past = plate.past or other.past
            used.add(other.start)


def _planned(found: Findings, start: int, end: int, first: int) -> bool:
    clause = found.clauses[start]
    return any(
        found.clauses[place] == clause and (place <= first or place < end + 3)
        for place, _ in found.planned
    )


_EATS = PAST | frozenset("giving eats eat has having eating likes loves drinks wants come".split())


def _others_food(page: Page, found: Findings, piece: meals.Piece) -> bool:
    """`my friend eats fufu every day`; what `my wife made` is eaten all the same."""
    words = page.words(max(piece.start - 6, 0), piece.end)
    return found.subjects.whose(piece.start) is Whose.OTHER and not _EATS.isdisjoint(words)


_PRICE = frozenset("cost costs costed cuesta costo".split())


def _priced(page: Page, found: Findings, end: int) -> bool:
    """`the fish cost 120`, `tomatoes 120 a kilo`: bought, and perhaps not eaten."""
    return any(
        stranger.start == end
        and (page.tokens[end].word in _PRICE or page.words(end + 1, end + 2) in (["a"], ["per"]))
        for stranger in found.strangers
    )


def _washed_down(page: Page, found: Findings, start: int) -> bool:
    """`850 mg metformin with water`: what a medicine was taken with is no meal."""
    words = page.words(max(start - 1, 0), start + 1)
    if words[:1] not in (["with"], ["con"]) or words[1:] not in (["water"], ["agua"]):
        return False
    return any(
        stranger.end == start - 1 and stranger.kind is Kind.MEASURED for stranger in found.strangers
    )


def _joined(
    page: Page, found: Findings, result: list[Plate], start: int, lead: Lead | None
) -> Plate | None:
    """The plate that a further piece belongs to: no new name and no new lead-in between."""
    if not result:
        return None
    last = result[-1]
    if lead is not None and (lead.name not in {None, last.name} or lead.start > last.start):
        new_name = lead.is_name and last.name is not None
        return (
            None if new_name or lead.name or not meals.listed(page, last.end, lead.start) else last
        )
    return last


def _name(page: Page, found: Findings, result: list[Plate], used: set[int]) -> None:
    """Names behind the food (`rice for lunch`), and those in a moment's words before it."""
    for lead in found.leads:
        if not lead.is_name or lead.start in used or not result:
            continue
        before = [plate for plate in result if plate.start < lead.start]
        plate = before[-1] if before else result[0]
        if plate.name is None:
            plate.name = lead.name
            used.add(lead.start)
    for cue in reversed(found.cues):
        if cue.meal is not None and cue.moment is Moment.BEFORE_MEAL:
            after = [plate for plate in result if plate.start > cue.start]
            if after and after[0].name is None:
                after[0].name = cue.meal


def _empty(page: Page, language: str, found: Findings, result: list[Plate], used: set[int]) -> None:
    """A name alone, or `eating` alone: a meal without words."""
    if result or not found.leads or found.planned or found.under_way is not None:
        return
    if found.strangers and not _begun_with_a_value(page, found):
        return
    if found.same_as is not None or page.holds(_NOT_EATEN):
        return
    if any(index for index, word in page.find_words(0, len(page.tokens)) if word == "?"):
        return
    names = [lead for lead in found.leads if lead.is_name]
    if found.values:
        names = [lead for lead in names if not _tells_the_hour(page, lead)]
    if meals.strange_words(page, language) or page.holds(_TO_COME):
        names = []
    if names:
        lead = names[0]
        past = any(other.past for other in found.leads)
        result.append(Plate(start=lead.start, name=lead.name, past=past))
        result[-1].over = page.holds(_FINISHED)
        return
    leads = [lead for lead in found.leads if not lead.is_name]
    leads = [lead for lead in leads if _HOW.isdisjoint(page.words(lead.end, lead.end + 2))]
    if leads and begins(page, leads[0]) and not meals.strange_words(page, language):
        result.append(Plate(start=leads[0].start, name=leads[0].name, past=leads[0].past))


def _begun_with_a_value(page: Page, found: Findings) -> bool:
    """`starting dinner now 7.0 n bp 128/79`: beside another measurement, too."""
    measured = all(stranger.kind is Kind.MEASURED for stranger in found.strangers)
    begun = any(_STARTED.intersection(page.words(lead.start, lead.end)) for lead in found.leads)
    return bool(found.values) and measured and begun


_STARTED = frozenset("starting started begin beginning empiezo empezando".split())


def _tells_the_hour(page: Page, lead: Lead) -> bool:
    """`at lunchtime i was 171`."""
    words = page.words(lead.start, lead.end)
    return words[0] == "at" and words[-1].endswith("time")


#: Behind a verb they tell of eating, not of a meal (`it's 164 but i ate late`).
_HOW = frozenset("late early out less badly well loads lots everything".split())
#: With one of these no meal is begun (`nothing to eat yet 118`).
_NOT_EATEN = frozenset(
    "no not nothing didnt dont havent hasnt never skipped skipping missed without nada".split()
)
_FINISHED = frozenset({"finished", "done", "termine", "terminado", "over"})
_TO_COME = frozenset("will wont shall".split())


def _told_of(page: Page, plate: Plate) -> bool:
    """`dinner was tartiflette`."""
    first = plate.spans[0][0]
    return page.words(first - 1, first) in (["was"], ["fue"], ["era"]) if first else False


def _led_from(page: Page, found: Findings, plate: Plate) -> int:
    """Where the words begin that lead to a plate (`2h after tucking into rice`)."""
    first = plate.spans[0][0]
    while first and page.words(first - 1, first)[0] in _TELLING:
        first -= 1
    return next((lead.start for lead in found.leads if lead.end == first), first)


_TELLING = frozenset("which was is that it the my of".split())


#: `9.1 after dinner n a glass of milk now`: the milk is another meal.
_AND = frozenset({"and", "n", "y"})


def _tense(page: Page, found: Findings, plate: Plate) -> None:
    """Whether the meal is named only as what is over."""
    if plate.spans and not plate.led and found.values:  # `201. too much naan i think`
        plate.over = any(
            meals.too_much(page, at) for at in (plate.spans[0][0], max(plate.end - 2, 0))
        )
    after = [cue for cue in found.cues if cue.moment is Moment.AFTER_MEAL]
    paired = found.then and len(found.values) > 1 and not found.cues
    if paired and plate.spans and not plate.led:
        plate.over = True  # `6.2 -> 9.5, mince and tatties`
    if not after or not plate.spans:
        return
    first = _led_from(page, found, plate)
    direct = any(cue.open and 0 <= first - cue.end <= 1 for cue in after)
    named = [cue for cue in after if cue.meal and 0 <= first - cue.end <= 1]
    named = [cue for cue in named if _AND.isdisjoint(page.words(cue.end, first))]
    if named and not plate.led:  # `171 after dinner, chapati and beans`
        direct, plate.name = True, plate.name or named[0].meal
    before = any(cue.moment is Moment.BEFORE_MEAL for cue in found.cues)
    if direct or plate.past:
        plate.over = True
    elif not before and not (plate.led and not _told_of(page, plate)):
        plate.over = any(cue.open for cue in after)
    elif before and any(cue.open for cue in after) and not plate.led:
        plate.over = True
