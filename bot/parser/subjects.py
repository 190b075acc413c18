"""Whose is it: the participant's, or somebody else's?"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM905 - word sets read best as one string

from enum import Enum, auto
from functools import cache

from bot.entries import By
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.misspelt import is_strange, no_slips
from bot.parser.page import Page, Pattern, needed_by, pattern
from bot.parser.vocabulary.things import OWN

_BREAKS = frozenset(". ; ! ? ,".split())
_COMPANY = frozenset("with for to by from at of than con para like and tell told gave give".split())


_ARTICLES = frozenset("the our some all both los las el la unos".split())


def _has_a_number(page: Page, end: int) -> bool:
    """Whether `is 205` stands behind whom a message names (`mother` of `mother in law`)."""
    end += 2 * (page.words(end, end + 2) == ["in", "law"])
    owned = page.words(end, end + 1) in _OWNED
    return owned and any(word[0].isdigit() for word in page.words(end + 1, end + 3))


class Whose(Enum):
    """Whose a number or a symptom is said to be."""

    UNSAID = auto()
    OWN = auto()
    OTHER = auto()


#: `a kids portion of fries` is one's own.
_OF_A_CHILD = "(?:portions?|meals?|menu|sized?|helpings?|servings?|plates?)"


@cache
def _pattern(language: str) -> Pattern:
    return pattern(
        f"(?P<other>{either(gathered(language, 'others'))})(?! {_OF_A_CHILD} )|(?P<own>{either(gathered(language, 'mine'))})"
    )


_OF_A_TEST = r"(?:capillary|venous|random|\w*prandial|serum|plasma|interstitial|overnight) "


@cache
def _of_a_stranger(language: str) -> Pattern:
    """`my frobble sugar was 260`: behind `my` a word that no list knows is somebody's name."""
    glucose = either(gathered(language, "glucose"))
    return pattern(
        rf"(?:my|mi|meh) (?:[a-z]+ )?(?P<who>(?!{_OF_A_TEST})[a-z]+) {glucose} (?:is|was|at|:|=)"
    )


@cache
def _somebodys(language: str) -> Pattern:
    """`my abbu's sugar`: whoever that is, it is not the participant."""
    glucose = either(gathered(language, "glucose"))
    return pattern(rf"my (?!{_OF_ONES_OWN} )[a-z]+s {glucose}")


#: Right behind a number they say that it is somebody else's.
_NOT_MINE = pattern(
    "(?:hers|his|theirs|its|thats|that is|this is)?(?: ,)? ?not (?:mine|my own|me|my sugar|my reading)"
)
_NEAR = 3
_OF_ONES_OWN = "(?:todays|yesterdays|mornings|evenings|nights|meters|machines|doctors|lunchs|dinners|breakfasts)"


#: Behind `I` they only lead in whoever is spoken of: `i think gogo is shaky`.
_TELLING = tuple(
    [word] for word in ("think", "reckon", "guess", "believe", "suppose", "fear", "creo")
)


_MINE = frozenset({"mine", "mines", "mio", "mia"})
_I_HAD = [
    said.split()
    for said in ("i got", "i had", "ah huv", "ah hae", "i was", "i am", "me i", "yo tuve")
]
#: With none of these nothing is said to be mine.
_MINE_WITH = _MINE.union({"me", "im"}, (said[-1] for said in _I_HAD))
_OWNING = frozenset({"my", "our", "meh", "mi"})
_HAD = frozenset(
    "na ka own reads got is was had has reading hit s sugar tuvo tiene le salio".split()
)
#: As people call their own in many places.
_CALLED = frozenset(
    """
    grandson granddaughter grandchild
    wee lad lass mam mammy mumsy ma pa ouma oupa gogo mkhulu aunty tita tito lola lolo tatay nanay kuya amma appa
    akka thatha paati ammi abbu baba mzee bibi babu shosho guka nonna nonno yiayia oma opa babcia
    machan bhabhi dadi nani didi bhai chacha bro sis cuz cuzzy cuzzie hubby missus sista bredda abuela
    """.split()
)


def _against_mine(page: Page, language: str) -> list[tuple[int, int, bool]]:
    """Who has the other number, where one is said to be mine: `ouma's reading is 12.4, mine 6.1`."""
    if not page.holds(_MINE_WITH):
        return []
    tokens = page.tokens
    mine = next(
        (
            at
            for at in range(len(tokens) - 1, 0, -1)
            if tokens[at].word in _MINE
            or page.words(at, at + 2) in _I_HAD
            or (
                tokens[at].word in {"me", "im"}
                and tokens[min(at + 1, len(tokens) - 1)].word[0].isdigit()
            )
        ),
        0,
    )
    found = []
    known = no_slips(language)
    start = 0  # of the clause
    for at in range(mine):
        word = tokens[at].word
        if word in _BREAKS:
            start = at + 1
        elif word[0].isdigit() and at - start <= _NEARBY:
            owned = tokens[start].word in _OWNING  # `my cuz got 4.0, mine is 7.9`
            who = tokens[min(start + owned, at)].word
            named = not _KIN.isdisjoint((who, who.removesuffix("s"))) or is_strange(who, known)
            named = named or "madam" in page.words(start, start + 2)
            if named and not _HAD.isdisjoint(page.words(start + 1, at)):
                found.append((start, start + 1, True))
    return found


#: So far from the clause's beginning its number still belongs to whoever is named there.
_NEARBY = 12


#: Whom not even a helper writes for: `grandma is 13.8, her sister was 6.2`.
_BEYOND = pattern(
    r"(?:her|his|their) (?:sister|brother|son|daughter|friend|neighbou?r|cousin|husband|wife|mother"
    r"|father|roommate|aunt|uncle|niece|nephew|mate)s?"
)
_KIN = _CALLED | frozenset(
    "mum mom dad wife husband sister brother son daughter friend cousin neighbour neighbor tantie "
    "oga madam uncle granny gran nan grandma grandad grandpa partner boss colleague flatmate".split()
)
#: Several people at once.
_SEVERAL = frozenset(
    "kids children boys girls grandkids grandchildren parents guests friends neighbours neighbors "
    "colleagues others everyone else family sisters brothers cousins aunties uncles lads gang twins "
    "ninos ninas hijos hijas nietos nietas amigos amigas vecinos primos hermanos padres todos".split()
)
_OWNED_WITH = frozenset({"was", "is", "own", "na", "got", "at"})
_OWNED = tuple([word] for word in _OWNED_WITH)


def _of_kin(page: Page) -> list[tuple[int, int, bool]]:
    """Whose number it is, where nothing says that it is glucose: `147 before, ammi's was 210`."""
    if not page.holds(_OWNED_WITH):
        return []
    return [
        (at, at + 1, True)
        for at, token in enumerate(page.tokens)
        if token.word.endswith("s")
        and token.word[:-1] in _KIN
        and page.words(at + 1, at + 2) in _OWNED
        and any(word[0].isdigit() for word in page.words(at + 1, at + 5))
    ]


#: `a1c 7.4 the doctor said and now sugar 136`: what follows is no longer theirs.
_CARE = frozenset(
    "they doctor doc dr nurse dietitian educator clinic medico doctora enfermera".split()
)
_SAID = frozenset("say says said tell tells told dijo dice".split())
_NOW = frozenset({"now", "ahora"})


@cache
def _needed(language: str) -> frozenset[str] | None:
    """One of these words stands wherever somebody is named."""
    sought = (
        _somebodys(language),
        _of_a_stranger(language),
        _NOT_MINE,
        _BEYOND,
        _pattern(language),
    )
    needs = needed_by(sought)
    return None if needs is None else needs | _MINE_WITH | _OWNED_WITH


class Subjects:
    """Who is spoken of at each place of a message."""

    __slots__ = ("_by", "_not_mine", "_page", "_said")

    def __init__(self, page: Page, language: str, by: By) -> None:
        self._page, self._by = page, by
        self._said: list[tuple[int, int, bool]] = []
        self._not_mine: list[int] = []
        needed = _needed(language)
        if needed is not None and not page.holds(needed):
            return  # most messages name nobody
        somebody = set()
        for span in page.find(_somebodys(language)):
            if "'" in page.text(span.start + 1, span.start + 2).replace("’", "'"):
                self._said.append((span.start, span.start + 2, True))
                somebody |= {span.start, span.start + 1}
        for span in page.find(_of_a_stranger(language)):
            if is_strange(span["who"] or "", no_slips(language)):
                self._said.append((span.start, span.end - 1, True))
                somebody.add(span.start)
        self._not_mine = [span.start for span in page.find(_NOT_MINE)]
        for span in page.find(_pattern(language)):
            if span.start in somebody:
                continue
            before = self._before(span.start)
            other = span["other"] is not None
            named = before not in _COMPANY if other else before != "of"  # `a friend of mine`
            named = named or (before == "and" and _has_a_number(page, span.end))
            if other and page.words(span.start, span.end) == ["they"] and before in OWN:
                continue  # `my knees they are trembling`
            if named and page.words(span.end, span.end + 1) not in _TELLING:
                self._said.append((span.start, span.end, other))
        self._said += _against_mine(page, language)
        self._said += _of_kin(page)
        for span in page.find(_BEYOND) if by is By.HELPER else ():
            self._said = [each for each in self._said if not span.start <= each[0] < span.end]
            self._said.append((span.start, span.end, False))
        self._said.sort()

    def _before(self, index: int) -> str:
        """The word before a person is named, articles left out (`con los muchachos`)."""
        words = self._page.words(max(index - 2, 0), index)
        if len(words) == 2 and words[1] in _ARTICLES:
            words.pop()
        return words[-1] if words else ""

    def pass_over(self, tokens: set[int]) -> None:
        """Name nobody by these words: they are part of what was done (`walked the dog 142`)."""
        self._said = [said for said in self._said if tokens.isdisjoint(range(said[0], said[1]))]

    def numbered(self, page: Page) -> set[int]:
        """Where others are named whose number follows: `rice n mother in law is 205`."""
        return {
            at
            for start, end, other in self._said
            if other and _has_a_number(page, end)
            for at in range(start, end)
        }

    def whose(self, index: int, end: int | None = None, *, ones: bool = False) -> Whose:
        """Whose what stands at `index` is, by the nearest word before it in its clause, or by
        `that's my dad's` right behind it. `ones` says that it is one person's, and never that of
        several who do something (`kids are screaming 129 before noodles`)."""
        if not self._said and not self._not_mine:
            return Whose.UNSAID
        nearest: bool | None = None
        for start, last, other in reversed(self._said):
            if start < index and not (ones and self._several_at_work(last)):
                nearest = None if self._parted(start, index) else other
                break
        if nearest is None and end is not None:
            nearest = self._behind(end)
        if end is not None and any(0 <= place - end <= _NEAR for place in self._not_mine):
            nearest = True  # `had a glucose of 420, hers not mine`
        if nearest is None:
            return Whose.UNSAID
        if self._by is By.HELPER:  # the helper's `she` is the participant
            return Whose.OWN if nearest else Whose.OTHER
        return Whose.OTHER if nearest else Whose.OWN

    def _several_at_work(self, end: int) -> bool:
        """Whether several people are named there, with what they are doing."""
        name, *behind = self._page.words(end - 1, end + 2)
        if behind[:1] in (["are"], ["r"], ["were"], ["all"], ["estan"]):
            behind.pop(0)
        doing = bool(behind) and behind[0].endswith(("ing", "ando", "iendo"))
        return doing and behind[0] != "reading" and name in _SEVERAL

    def _parted(self, start: int, index: int) -> bool:
        words = self._page.words(start, index)
        if not _BREAKS.isdisjoint(words):
            return True
        told = not (_CARE.isdisjoint(words[:2]) or _SAID.isdisjoint(words))
        return told and not _NOW.isdisjoint(words)

    def _behind(self, end: int) -> bool | None:
        for start, _, other in self._said:
            if not 0 <= start - end <= 4:
                continue
            between = self._page.words(end, start)
            if set(between) <= {
                ",",
                "thats",
                "that",
                "what",
                "is",
                "was",
                "its",
                "it",
                "-",
                "(",
                "for",
                "of",
            } and {"thats", "that", "is", "was", "its", "(", "for"} & set(between):
                return other
        return None
