"""Where do the words around a sign begin and end? `threw up my toast`, `dizzy on the stairs`: what
leads into it and what goes with it is no meal, no doing and no time of a reading."""

# ruff: noqa: SIM905 - word sets read best as one string

from bot.parser.page import Page

VOMITED = (
    "vomit", "throw", "threw", "puk", "chuck", "brought", "bring", "devolv", "spew", "barf",
    "chunder", "bok", "boak", "heav", "retch", "hurl", "sick", "being", "been", "hoy",
)  # fmt: skip
_LONG = (
    ["whole"],
    ["entire"],
    ["last"],
    ["day"],
    ["night"],
    ["morning"],
    ["time"],
    ["dia"],
    ["noche"],
)
_MINE = frozenset("all my his her the la el mi lo todo toda up".split())


def brought_up(page: Page, start: int, end: int) -> int:
    """Where `my toast` behind `threw up` ends: it is no meal."""
    if page.words(end - 1, end) in (["swallow"], ["tragar"]):
        at = end
        while at < min(end + _FEW, len(page.tokens)) and page.tokens[at].word.isalpha():
            at += 1
        return at  # `can't swallow his tablets or water`
    if not page.words(start, start + 1)[0].startswith(VOMITED):
        return end
    at = end
    while page.words(at, at + 1) and page.tokens[at].word in _MINE:
        at += 1
    known = at > end and page.words(at, at + 1) and page.tokens[at].word.isalpha()
    long = page.words(at, at + 1) in _LONG  # `threw up all day`
    return at + 1 if known and not long else end


def where(page: Page, end: int) -> int:
    """Where `on the stairs` or `since last night` behind a symptom ends: a place and nothing that
    was done, a time that is no reading's."""
    end = _not_even(page, likened(page, end))
    words = page.words(end, end + 3)
    if words[:1] == ["since"] and words[1:2] in (["a"], ["an"], ["one"], ["half"]):
        while end < len(page.tokens) and page.tokens[end].word in _LENGTH:
            end += 1  # `since an hour`
        return end
    if words[:1] in (["since"], ["desde"]):
        hour = 1 + (words[1:2] in (["las"], ["la"]))
        while words[1:2] and (words[1] in _DAYS or (words[1].isdigit() and hour > 0)):
            end, words, hour = end + 1, page.words(end + 1, end + 4), hour - 1
        on_a_place = words[1:2] and words[1] in _THE and words[2:] and words[2] in _PLACES
        return end + 3 if on_a_place else end + 1  # `chest pain since the stairs`
    if words[:2] in (["just", "now"], ["just", "noo"]):
        end, words = end + 2, page.words(end + 2, end + 5)
    there = len(words) == 3 and words[0] in _AT and words[1] in _THE and words[2] in _PLACES
    return end + 3 if there else end


def _not_even(page: Page, end: int) -> int:
    """Where `, even sips of water` behind what does not stay down ends."""
    at = end + (page.words(end, end + 1) == [","])
    at += page.words(at, at + 1) in (["not"], ["ni"])
    none = page.words(at - 1, at + 1) in (["ni", "el"], ["ni", "agua"], ["ni", "la"])
    if page.words(at, at + 1) not in (["even"], ["siquiera"]) and not none:
        return end
    while at < len(page.tokens) and page.tokens[at].word.isalpha() and at < end + _FEW:
        at += 1
    return at


_FEW = 9
_LENGTH = frozenset("since a an one half hour hours day days week weeks couple of few".split())


def likened(page: Page, end: int) -> int:
    """Where `have started again` or `as a duck`, `like yesterday` behind a symptom ends: that it is
    here, and what it is likened to."""
    words = page.words(end, end + 3)
    if words[:1] in (["have"], ["has"], ["just"]) and words[1:2] and words[1] in _BEGUN:
        return end + 2 + (words[2:] == ["again"])
    if words[:1] and words[0] in _BEGUN and words[1:2] in ([], ["again"], ["."], [","], ["up"]):
        return end + 1 + (words[1:2] in (["again"], ["up"]))
    if words[:1] in (["as"], ["like"], ["como"]):
        article = words[1:2] in (["a"], ["an"], ["the"], ["un"], ["una"])
        likened = words[1 + article : 2 + article]
        if likened and likened[0].isalpha() and likened[0] not in _NOT_LIKENED:
            return end + 2 + article
    return end


_BEGUN = frozenset("started starting begun empezo empezando".split())
_NOT_LIKENED = frozenset(
    "i im its it my after before when if that this you well soon last girl boy kid child teen "
    "teenager baby student youngster lad lass".split()
)
_DAYS = frozenset(
    "lunchtime dinnertime teatime suppertime bedtime noon midday midnight dawn "
    "yesterday last this night morning afternoon evening lunch dinner breakfast supper brunch tea "
    "monday tuesday wednesday thursday friday saturday sunday anoche ayer la el en hoy manana "
    "tarde noche antier lunes martes miercoles jueves viernes sabado domingo".split()
)
_AT = frozenset("on in at by down outside en por".split())
_THE = frozenset("the my our a la las el los mi".split())
_PLACES = frozenset(
    """
    stairs stair steps garden yard pool kitchen bathroom bath shower shop shops street
    field allotment bus train office gym hallway porch driveway escaleras escalera
    jardin patio cocina bano ducha tienda calle oficina gimnasio
    """.split()
)


_FEEL = frozenset("feel feels feeling felt fealing siento sintio senti sentir".split())
_BEFORE_FEEL = frozenset("and then now so but i im am was is just me y ahora luego pero ya".split())


def led_in(page: Page, start: int) -> int:
    """Where `and now i feel` before a symptom begins: no part of what was eaten before it."""
    words = page.words(max(start - 12, 0), start)
    if words[-1:] == ["after"] and words[-2:-1] in (["is"], ["am"], ["im"], ["are"], ["was"]):
        return start - 2  # `nana is after having a fit`: it has just happened
    first = start - len(words)
    if words[-1:] and words[-1] in _FEEL | {"all", "really", "very", "so", "a", "bit", "muy"}:
        at = len(words) - 1
        while at >= 0 and words[at] not in _FEEL and len(words) - at < 4:
            at -= 1
        if at >= 0 and words[at] in _FEEL:
            while at > 0 and words[at - 1] in _BEFORE_FEEL:
                at -= 1
            return first + at
    return start
