"""What stands around a dish and is no food: where it was eaten, who cooked it, where it came from.

`maqluba at my aunt's wedding`, `my wife made soup`, `kottu from the shop`, `peanuts watching the
match`. Every wording here has to stand right beside food; elsewhere it may tell something else
(why nobody could test) and is left alone.
"""

# ruff: noqa: E501 - patterns, one a line
# ruff: noqa: SIM905 - word lists read best as one string

from bisect import bisect_left
from functools import cache

from bot.entries import MealName
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.moments import meal_names
from bot.parser.page import Page, Pattern, pattern
from bot.parser.vocabulary.places import EATING_PLACES, KEPT_IN, OCCASIONS

#: What may follow the words around a dish.
_ENDS = r"(?= (?:[.,;:!?)(+=-]|\d|at \d|after |before |b4 |pre |post |today |now |then |and |with |w |bg |bs |sugar |was |on (?:mon|tues|wednes|thurs|fri|satur|sun)day |y |antes |despues |a las |con |hoy |$))"
_WHOSE = (
    r"(?:(?:my|me|our|the|a|an|this|that|some|his|her|their|mi|la|el|un|una|tu|nuestra|los|las) )?"
)


@cache
def _behind(language: str) -> Pattern:
    """Places, hosts and cooks behind a dish."""
    people = either(gathered(language, "others"))
    place = either((*EATING_PLACES, *OCCASIONS))
    host = rf"(?:{_WHOSE}(?:[a-z]+ ){{0,2}}{place}(?: of (?:my|the|our|his|her) [a-z]+)?|(?:{people}|{_WHOSE}(?:[a-z]+ )?[a-z]+)s(?: (?:house|place|home|flat|kitchen))?|{people} (?:house|place|home|flat)|[a-z]{{3,}}s)"
    where = r"(?: (?:down|on|by|in|at|near|round|around|across|up|from|outside|afuera|del?|en) (?:the |my |our |la |el )?(?:corner|road|street|station|market|gate|school|work|bus stop|park|beach|mosque|church|esquina|calle|mercado|plaza))?"
    cooked = r"(?:has |had |just )?(?:made|cooked|brought|prepared|baked|fixed|sent|gave me|fried|hizo|preparo|trajo)"
    return pattern(
        rf"(?:(?:at|from|in|by|en|de|del) (?!ayunas ){host}{where}"
        rf"|(?:at|from|by) (?:the|a|this|some|my) (?:[a-z]+ )?(?:lady|man|guy|woman|aunty|auntie|uncle|mama|vendor|girl|boy){where}"
        rf"|(?:(?:left|leftover|left over|reheated|warmed up|cold|straight|out) )?(?:from|out of|de) (?:{_WHOSE}(?:{either(KEPT_IN)})|last night|yesterday|yesterdays [a-z]+|lunch|dinner|anoche|ayer|the weekend|{either(OCCASIONS)})"
        rf"|(?:that |which |que )?(?:{people}|(?:my|the|our|mi) [a-z]+) {cooked}(?: (?:it|for (?:me|us)|me|us))?"
        rf"|shared (?:it )?(?:with|w|wi|between) (?:{people}|my [a-z]+|us|a [a-z]+)"
        rf"|(?:(?:while|whilst|when|mientras) )?(?:i |we |im )?(?:was |were )?(?:watching|listening|chatting|scrolling|waiting|viendo|mirando)(?: (?!before |after |b4 |pre |post |and |then |now )[a-z]+){{0,4}}"
        rf"|down the [a-z]+|en lo de (?:(?:mi|la|el) )?[a-z]+|(?:outside|afuera)(?: del?)? (?:the |my |la |el )?[a-z]+"
        rf"|(?:night|day|tuesday|friday|monday|wednesday|thursday|saturday)(?= [!.,:;])"
        rf"|to break (?:my|the|our) fast|out of hunger){_ENDS}"
    )


@cache
def _ahead(language: str) -> Pattern:
    """Cooks in front of a dish, and how it comes to be there."""
    people = either(gathered(language, "others"))
    cooked = r"(?:has |had |just )?(?:made|cooked|brought|prepared|baked|fixed|ordered|served|fried|gave|bought|got|sent|hizo|preparo|trajo|cocino|sirvio)"
    return pattern(
        rf"(?:(?:{people}|(?:my|the|our|mi) [a-z]+) {cooked}(?: (?:me|us|his|her|their|my|some|nos|me|su))*"
        rf"|(?:what was|whats|what is|wot was) left (?:of|from|over from)(?: the)?(?: (?:kids|childrens|[a-z]+s))?"
        rf"|(?:last nights|yesterdays|sundays|saturdays))"
    )


@cache
def _ahead_words(language: str) -> frozenset[str]:
    return frozenset(
        "made cooked brought prepared baked fixed ordered served fried gave bought got sent left nights "
        "yesterdays sundays saturdays hizo preparo trajo cocino sirvio".split()
    )


_BEHIND_WORDS = frozenset(
    "down outside afuera night day tuesday friday monday wednesday thursday saturday at from in by en de del out made cooked brought prepared baked fixed sent gave fried hizo preparo "
    "trajo shared watching listening chatting scrolling waiting viendo mirando break".split()
)


def claim_surroundings(page: Page, language: str, dishes: list[tuple[int, int]]) -> None:
    """Claim the words around the dishes, given as their starts and ends in order."""
    if not dishes:
        return
    names = meal_names(language)
    starts = {start for start, _ in dishes}
    food_at = {index for start, end in dishes for index in range(start, end)}
    if len(dishes) == 1 and _fond(page, *dishes[0]):
        page.claim(*dishes[0])
    if page.holds(_LEAVING):
        _claim_left(page, food_at)
    if page.holds(_BEHIND_WORDS):
        for span in page.find(_behind(language)):
            eaten = food_at & set(range(span.start, span.end))
            places = all(page.tokens[at].word in _PLACES for at in eaten)
            if eaten and page.words(span.start, span.start + 1) == ["de"]:
                continue  # `un vaso de soda`, which is also where one eats
            if not _NO_HOST.isdisjoint(page.words(span.start, span.end)):
                continue  # `my sugar at noon was 7.9`
            if places and (_beside(page, dishes, span.start) or _at_meal(page, span.start, names)):
                page.claim(span.start, span.end)
    if page.holds(_ahead_words(language)):
        for span in page.find(_ahead(language)):
            behind = next((at for at in range(span.end, span.end + 3) if at in starts), None)
            if behind is not None and food_at.isdisjoint(range(span.start, span.end)):
                page.claim(span.start, span.end)


_NO_HOST = frozenset({"was", "is", "has", "noon", "midnight", "midday"})


def _at_meal(page: Page, start: int, names: dict[str, MealName]) -> bool:
    """`dinner at my sister's, brisket and kugel`."""
    return start > 0 and page.tokens[start - 1].word in names


#: `at the braai`, `at the picnic`: dishes by name, and yet where one ate.
_PLACES = frozenset({*EATING_PLACES, *OCCASIONS})
_LEFT = pattern(
    r"(?:(?:but|and|i|we|pero|y) )*(?:did not|didnt|dint|havent|no) (?:eat|drink|have|touch|want|comi|tome"
    r"|probe)(?: (?:the|my|any|all|much|el|la|los|las))* (?P<food>[a-z]+)(?= [.,;!)]| $)"
)
_LEAVING = frozenset("eat drink have touch want comi tome probe".split())


def _claim_left(page: Page, food_at: set[int]) -> None:
    """`didn't eat the cake, just salad`: what was left is not eaten, where anything else was."""
    for span in page.find(_LEFT):
        inside = set(range(span.start, span.end))
        if food_at & inside and food_at - inside:
            page.claim(span.start, span.end)


def _fond(page: Page, start: int, end: int) -> bool:
    """`168 honey`: said to somebody dear, behind the number and at the end."""
    last = all(not token.word[0].isalnum() for token in page.tokens[end:])
    before = [word for word in page.words(max(start - 2, 0), start) if word != ","]
    return (
        last
        and page.words(start, end)[0] in _DEAR
        and end - start == 1
        and bool(before)
        and before[-1].replace(".", "").isdigit()
        and float(before[-1]) >= _NO_COUNT
    )


_DEAR = frozenset(
    "honey sugar sweetie pumpkin peach petal cupcake candy cookie dumpling muffin".split()
)
#: Below it a number may count what is eaten.
_NO_COUNT = 30
_REACH = 4


def _beside(page: Page, dishes: list[tuple[int, int]], at: int) -> bool:
    """Whether a dish ends close before a place, with no mark between."""
    place = bisect_left(dishes, (at, 0)) - 1
    if place < 0:
        return False
    end = dishes[place][1]
    between = page.words(end, at)
    return at - end <= _REACH and all(word.isalnum() for word in between)
