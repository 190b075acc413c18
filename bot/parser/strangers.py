"""Which numbers are surely no glucose? Doses, weights, pressure, prices, dates, telephones.

`find` claims them, so that no later finder can take one for a value.
"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

from dataclasses import dataclass
from enum import Enum, auto
from functools import cache

from bot.parser import codes, measurements
from bot.parser.food import Dish
from bot.parser.languages import gathered, glucose
from bot.parser.lexicon import either
from bot.parser.measurements import N
from bot.parser.misspelt import known_words
from bot.parser.page import Page, Pattern, Several, Span, pattern
from bot.parser.tokens import LINK


class Kind(Enum):
    """What such a number makes of the message if it holds nothing else."""

    MEASURED = auto()  # another measurement or a dose: `not_glucose`
    ODD = auto()  # a price, an address: asked about
    ERROR = auto()  # a meter's error code


@dataclass(frozen=True, slots=True, kw_only=True)
class Stranger:
    """A number that is no glucose, or a word that measures something else."""

    start: int
    end: int
    kind: Kind


_NOT_COUNTED = "(?:ago|back|earlier|portions?|meals?|menu|sized?)"


@dataclass(frozen=True, slots=True)
class _Patterns:
    error: Pattern
    odd: Several
    places: Pattern  # one of `odd`: `house 12`
    dates: Pattern  # one of `odd`, too
    weight_change: Several
    age: Pattern
    counted: Pattern
    drug: Pattern
    taken: Pattern
    brand: Pattern


@cache
def _patterns(language: str) -> _Patterns:
    def words(*fields: str) -> str:
        return either(*(gathered(language, field) for field in fields))

    months, money, places = words("months"), words("money"), words("places")
    drugs = words("drugs")
    numbered = pattern(
        rf"{places}(?: (?:number|no|nr|#|num|numero|is|was|:|the)){{0,2}}(?: [a-z]{{1,2}})? \d+(?:\.\d\d)?(?: [a-z])?(?! (?:min|mins|minutes|minutos|h|hr|hrs|hours|hour|km|steps|miles|g|kg|mg|mmol|units))"
    )
    dates = pattern(
        r"\d{4} - \d{1,2} - \d{1,2}|\d{1,2} / \d{1,2} / \d{2,4}|\d{1,2} - \d{1,2} - \d{4}|\d{1,2}\.\d{1,2} \. \d{2,4}|20[2-3]\d"
    )
    return _Patterns(
        places=numbered,
        dates=dates,
        error=pattern(r"(?:error|err|code|error code) (?:- )?\d{1,3}|(?:e|er|err) (?:- )?\d{1,3}"),
        odd=Several(
            pattern(
                r"(?:call|phone|tel|number|text|cell|mobile|whatsapp|dial|telefono|celular|llama|ring|fax)"
                r"(?: [a-z]+| :| \(| \+){0,4} \d{3,5}(?: [-.)(])?(?: \d{2,4}(?: [-.)(])?){1,4}"
                r"|\(? ?\+ ?\d[\d ().-]{6,}\d|\( ?\d{3} \) \d{3} ?-? ?\d{4}|0\d{2,4}(?: [-.)(])?(?: \d{3,4}(?: [-.)(])?){2,3}|0\d{2,4} \d{5,8}"
                r"|\d{3}(?: [-.])? \d{3}(?: [-.])? \d{4}|\d{3} - \d{4}(?! (?:steps?|pasos|paces|m|meters|metres))|\d{7,}"
            ),
            pattern(f"{LINK}|(?:password|passcode|pin|login|user|otp)(?: [a-z]+| :){{0,2}} \\d+"),
            pattern(
                rf"[$€£¥₹₦₱₵] {N}(?: for (?:a|an|the|some|my) [a-z]+)?|{N} [$€£¥₹₦₱₵]|(?!{N} (?:won|peso) \d){N} (?:{money}|{words('currencies')}|mad(?= (?:for|on)))|{words('currencies')} (?:\. )?{N}|(?:paid|cost|costs|costed|prices?|spent|charged|pague|cuesta|costo|bill of|(?:the |my )?(?:bill|fare|total|ticket)(?= (?:was|is|came)))(?: (?:is|was|me|now|only|of|about|around|just|went|gone|has|are|up|down|to|from|rose)){{0,4}} {N}"
            ),
            dates,
            pattern(
                rf"(?:the )?\d{{1,2}}(?: (?:st|nd|rd|th))?(?: of| de)? {months}(?: (?:de )?\d{{4}})?|{months}(?: the)? \d{{1,2}}(?: (?:st|nd|rd|th))?(?: ,? ?\d{{4}})?"
            ),
            numbered,
            pattern(
                r"\d{1,3}(?: [a-z])?(?: (?:number|no))? (?:route|bus|buses|tram|trolleybus|matatu)(?! (?:and|,|stop))"
            ),
            # roads and lines: `on i80`, `driving the 50`
            pattern(
                r"(?:on|off|along|via|onto) (?:the )?(?:i|us|route|rt|hwy|highway|interstate|exit|motorway) (?:- )?\d{1,4}"
                r"|(?:on|off|along|via) (?:the )?(?:m|a) \d{1,4}(?= (?:and|cant|so|,|\.|now|still|in|driving))"
                r"|(?:driving|drive|drives|on|catching|waiting for|riding) the \d{1,3}(?: bus| tram| train)?"
                r"|(?:doing|at|going|drove|driving) \d{1,3} (?:on|down|along) the (?:motorway|highway|freeway|interstate|road)"
            ),
            # what it cost: no meter shows two decimals of that
            pattern(
                rf"(?!(?:it|this|that|mine|now|reading|number|level|{words('glucose')}) )[a-z]+ (?:was|is|were|fue|era) \d+\.\d\d|{N} mil(?: pesos)?(?! (?:de )?(?:pasos|m|metros))"
            ),
            # how to find it, and how high the sea is
            pattern(
                rf"(?:go|to|at|outside|moved|move go|shop|house) number \d+(?! (?:before|after))|{N} (?:foot|feet|ft)(?= (?:today|tonight|now|waves?|deep|high|,|\.|swell|surf))"
            ),
            pattern(
                r"(?:(?<!y )(?<!menos )cuarto|habitacion|piso|aula|puerta) \d+|(?:somos|eramos|fuimos) \d+"
                r"|(?:at|in|to|from|outside) (?:block|blk|gate|bay|platform|pier|plot|stall) \d+"
                r"|(?:rent|salary|wages?|fees?|petrol|fuel|tax|loan|mortgage)(?: (?:is|was|are|now|has|gone|went|goes|up|down|to|of)){1,4} \d+"
                r"|(?:exam|school|maths?) (?:marks?|score|grade|result)s?"
                r"(?: (?:is|was|were|are|of|my|his|her|the|boy|girl|son|daughter|kid)){0,4} \d+"
            ),
            pattern(
                r"(?:patient|patients|pt|resident|client|man|woman|lady) in (?:bed|room|ward|bay|cubicle) \d+"
            ),
            pattern(r"(?:live at|lives at|living at|vivo en el)(?: number| no)? \d+(?: \w+){0,2}"),
            pattern(
                r"\d{1,5}(?! (?:before|after|fasting|on|and|then|now|in) )(?: [a-z]+){1,2} (?:street(?! food)|st|avenue|ave|road|rd|drive|lane|blvd|boulevard|court|close|terrace)"
            ),
            pattern(
                r"(?:print|echo|alert|eval|exec|return|select) \( ?\d+|(?:value|x|y|n|id) = \d+"
            ),
            pattern(r"born(?: [a-z]+){0,2} \d{1,4}|nacid[oa] en \d+|naci en \d+"),
            pattern(
                rf"(?:won|win|lost|lose|beat|beaten|drew|draw|match|game|final|rugby|football|cricket|hockey|netball|score|scored|ganamos|perdimos|ganaron|perdieron|partido|marcador)(?: [a-z]+){{0,4}} {N} (?:-|:|to|a|,) {N}"
            ),
            pattern(rf"[a-z]+ (?:vs|v|beat|beats|ganó|gano) [a-z]+ {N} ?-? ?{N}"),
            pattern(r"# \d+|no \. \d+|number \d+ (?:street|road|avenue|in|on|of)"),
            # shares, ranks and companies: `7 out of 10`, `2 for 150`, `3 sets of 50`, `table for 6`
            pattern(
                rf"{N} (?:out of|de cada|(?:sets?|rounds?|reps|lots?|packs?|boxes) of|for(?: only| just)?) {N}(?! (?:mins?|minutes|hours?|hrs?|h)\b)|{N} for the (?:lot|pair|set|two|both)"
                rf"|(?:table|party|group|family|team|class|crowd|queue|reservation|booked|room|seats|space) (?:for|of) {N}(?! (?:mins?|minutes|hours?|hrs?) )"
                rf"|(?:we are|we were|there are|there were|there is|theres) (?:only |about |like )?{N}|slept (?:only |about |for |just |like )?{N}"
                rf"|(?:(?<!all )(?<!the )(?<!every )(?<!this )(?<!to )(?<!whole )(?<!entire )(?<!a )(?:day|week|month)|stage|phase|(?<!on )top|pain|pain level|pain is|rated|rating|rate it|rated it|score it) {N}(?! (?:mins?|minutes|hours?|hrs?) )"
                rf"|{N} (?:a|per) (?:kilo|kg|litre|liter|piece|dozen|bag|bottle|head|ticket|night|month|week|year|pop|bunch|person|box|pound|unit|pair|packet)(?! of )|{N} (?:each|apiece)"
            ),
            pattern(
                rf"(?:score|scored|points|won|lottery|jackpot|bet|lost)(?: [a-z]+){{0,4}} {N}(?: (?:at|in|on) [a-z]+)?|(?:laid|caught|sold) \d{{1,2}}(?! (?:mins?|minutes|hours?)\b)"
            ),
            pattern(r"(?:password|pincode|chapter|verse|psalm|version|v) \d+(?: : \d+)?|www [^ ]+"),
            pattern(r"\d{1,4} (?:st|nd|rd|th)(?! (?:half|time))"),
            # how many strips, or what they cost: asked
            pattern(
                rf"{words('strips')} (?:are|son|were|was|cost|fueron) (?:only |now |just )?{N}"
            ),
            # `over 200` is no value: which one it was has to be asked
            pattern(
                rf"(?<!\d )(?:over|under|above|below|(?:less|more|higher|lower) than) {N}(?! (?:min|mins|minutes|hours?|hrs?|km|steps|miles))"
            ),
        ),
        weight_change=Several(
            pattern(
                rf"(?:lost|lose|gained|gain|put on|dropped|shed|losing|gaining|baje|subi|perdi|he bajado|he subido|aumente|down|up)(?: [a-z]+)? {N} {words('weight')}(?: (?:of weight|this week|already|de peso))?"
            ),
            pattern(
                rf"{N} {words('weight')}(?: (?:,|now|and|it|i|last|week))* (?:was|from|down|up|to|antes|era)(?: (?:from|to|last|week|it|was))* {N}(?: {words('weight')})?"
            ),
            pattern(rf"{N} (?:stone|st) {N}(?: (?:lbs?|pounds?))?"),
        ),
        age=pattern(
            rf"{N} {words('age')}|(?:age|aged|turned|turning|turn|tengo) (?:1[01]\d|\d{{1,2}}) anos|(?:age|aged|turned|turning|turn) (?:1[01]\d|\d{{1,2}})|tengo \d{{1,2}}|(?:cumplo|cumple|cumplio|cumpli|cumplimos|cumplen|cumplia) (?:1[01]\d|\d{{1,2}})(?: anos)?|(?<=, )(?:im|i am) \d{{2}}(?= (?:today|next|this|tomorrow|now))|(?:edad) \d{{1,3}}"
        ),
        counted=pattern(rf"{N} {words('counted')}(?! {_NOT_COUNTED} )"),
        drug=pattern(
            f"(?:{words('taken')} )?(?:(?:my|the|his|her|mi|la|el|mis|las|los|morning|evening|daily|night|blood pressure|bp|diabetes|sugar|water) ){{0,3}}{drugs}"
        ),
        taken=pattern(words("taken")),
        brand=pattern(
            rf"(?:took|taken|take|taking|had|having|swallowed|started|tome|tomo|tomando|me puse)(?: (?:my|the|his|her|mi|la|el|una|un|a|one|some|1))* (?P<brand>[a-z]{{4,}}) {N}(?: (?:mgs?|mcg|milligrams|miligramos)| / {N})(?: (?:mgs?|mcg))?(?! / dl)"
        ),
    )


def find(page: Page, language: str, dishes: list[Dish], *, asked: bool = False) -> list[Stranger]:
    """Claim every number that is surely none of glucose, and give what it is. `asked` says that a
    reading is asked for: `tengo 61` is no age then."""
    patterns = _patterns(language)
    found: list[Stranger] = []

    several = {dish.start for dish in dishes if dish.end - dish.start > 1}

    def claim(span: Span, kind: Kind) -> None:
        last = span.end - 1
        if last in several and page.tokens[last - 1].word[0].isdigit():
            return  # `142 shot of rum`, `142 birthday cake`
        page.claim(span.start, span.end)
        found.append(Stranger(start=span.start, end=span.end, kind=kind))

    within = {at for dish in dishes for at in range(dish.start + 1, dish.end)}
    digits = any(map(page.free, page.numbers))
    if digits:
        for span in page.find(patterns.error):
            claim(span, Kind.ERROR)
        for sought in page.worth(patterns.weight_change):
            for span in page.find(sought):
                claim(span, Kind.MEASURED)
        for sought in page.worth(patterns.odd):
            for span in page.find(sought):
                if sought is patterns.places and (
                    _in_the_house(page, span) or span.start in within
                ):
                    continue  # `dim sum 6 pieces`
                if sought is patterns.dates and not codes.in_one_piece(page, span):
                    continue  # `9.6. 30 min walk`
                claim(span, Kind.ODD)
        for span in measurements.found(page, language, dishes, asked=asked):
            claim(span, Kind.MEASURED)
        food_at = {dish.start for dish in dishes}
        for span in page.find(patterns.brand):  # `took Glycomet 500 mg`
            if span["brand"] not in known_words(language):
                claim(span, Kind.MEASURED)
        for span in codes.find(page, language):
            claim(span, Kind.ODD)
        for span in page.find(patterns.age):
            # `tengo 61` is an age only where nothing speaks of a reading
            others = len(page.numbers) > 1
            bare = page.words(span.start, span.end)[0] == "tengo" and span.end - span.start == 2
            more = page.any_taken(0, len(page.tokens))  # `tengo 57, puedo tomar jugo?`
            if not (bare and (asked or dishes or others or more)):
                claim(span, Kind.ODD)
        for span in page.find(patterns.counted):
            if span.start and page.tokens[span.start - 1].word in glucose(language):
                continue  # `sugar 54 nights this week`
            if not (
                page.tokens[span.end - 1].word == "%"
                and span.end in food_at | {f - 1 for f in food_at}
            ):
                claim(span, Kind.ODD)
    return found


def _in_the_house(page: Page, span: Span) -> bool:
    """`cleaned the house 142`: a place that was worked in, and no number of it."""
    before = page.words(max(span.start - 2, 0), span.start)
    worked_in = before[-1:] in (["the"], ["my"], ["la"], ["el"])
    numbered = not _NUMBERED.isdisjoint(page.words(span.start, span.end))
    return worked_in and not numbered and before[0] not in _RIDING


#: Behind one of these one is in it, or rides on it (`tome el bus 42`).
_RIDING = frozenset(
    "on in at en took take taking caught catch catching rode ride riding missed boarded tome tomo "
    "tomamos tomar tomando cogi cogimos coger subi agarre agarramos perdi perdimos espero "
    "esperando esperamos".split()
)
_NUMBERED = frozenset("number no nr # num numero is was :".split())


def find_medicine(page: Page, language: str, other: set[int]) -> list[Stranger]:
    """Claim medicine that was taken, or a measurement that is only named; `other` are words that
    are something else (`glucose tablets`, `shot hoops`)."""
    patterns = _patterns(language)
    found = []
    for span in page.find(patterns.drug):
        if not other.isdisjoint(range(span.start, span.end)):
            continue
        page.claim(span.start, span.end)
        found.append(Stranger(start=span.start, end=span.end, kind=Kind.MEASURED))
    return found
