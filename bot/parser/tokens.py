"""Where does each word, number and mark of the text begin and end?"""

# ruff: noqa: E501 - patterns and word lists, one a line

import re

from bot.parser.page import Token
from bot.parser.vocabulary.spelt import SPELT
from bot.units import Unit, plausible

#: The word on the line for an address on the net or of a mailbox.
LINK = "\x02link"

_ALIKE = str.maketrans({"o": "0", "l": "1", "i": "1", "|": "1", "s": "5", "b": "8"})
_TOKEN = re.compile(
    r"""
      (?P<plain>(?<![\w'|.,])[a-z]{3,}(?=[,.!?]?(?:[ ]|$))(?<!type))  # most words, far sooner
    | (?P<link>(?:https?://|www\.)\S+|[^\s@]{1,64}@[^\s@]{1,255}\.[a-z]{2,}\S*)
    | (?P<fixed>(?:hb\s?a1c|hba1|a1c|a[ -](?:1|one)[ -]c|b4|spo2|h2o|o2|b12|7\s?up|v8|2day|2nite|2mrw|m8|gr8|l8r|4got|co2|type\s?[12]|t[12]d?m?)(?![a-z0-9]))
    | (?P<without>(?<![a-z0-9])w\s?/\s?o(?:ut)?(?![a-z0-9]))
    | (?P<with>(?<![a-z0-9])w\s?/(?=\s?[a-z]))
    | (?P<ampm>(?<=\d)\s?(?P<half>[ap])(?:\s?m|\.\s?m\.?)(?![a-z0-9]))
    | (?P<clock>(?<![\d.,:])[012]?\d(?::|h(?=\d\d))[0-5]\d(?::\d\d)?(?!\d|:\d))
    | (?P<thousands>(?<![\d.,])\d{1,3},\d{3}(?=\s?(?:steps?|pasos|cals?|kcals?|calories|calorias|m\b|meters|metres))|\d{1,2},\d00(?![\d.,]))
    | (?P<alike>(?<![a-z0-9|.,'])(?=[a-z|.,]*\d)(?=[0-9.,]*[a-z|])(?:(?:[0-9oli|]{2,4}|[1-5][sb]\d)(?:[.,][0-9ol]{1,2})?|[0-9l][.,][ol]|[ol][.,]\d)(?![a-z0-9|']|[.,]\d))
    | (?P<decimal>\d+(?:\.\d+|,\d{1,2}(?!\d)))
    | (?P<digits>\d+)
    | (?P<hours>(?<=\d)h(?:rs?)?(?=pp(?![a-z])))
    | (?P<word>[^\W\d_]+(?:'[^\W\d_]+)*)
    | (?P<arrow>-+>|=+>|>+)
    | (?P<mark>(?:(?<=\s)-(?=\s))|(?P<again>[^\w\s'"])(?P=again)*)
    """,
    re.VERBOSE,
)
#: As many numbers and marks are no report of anybody's; what comes behind them is not looked at,
#: words always are.
_MOST_SIGNS = 1000
#: `15l before dinner` is 151, `15l` so many litres.
_MOMENT = re.compile(r" (?:before|after|b4|fasting|antes|despues)\b")
_NEEDED_ALIKE = re.compile(r"\d{1,2}l|\d+")
#: `my arm's gone weak`: no more than one.
#: What `'s` behind them is: a verb (`weight's 82`).
_WITH_IS = frozenset(
    """
    chest's arm's leg's face's speech's breath's weight's cholesterol's
    pressure's pulse's temperature's temp's bp's oxygen's height's
    """.split()  # noqa: SIM905 - a block is read more easily
)
#: As they are said without an h.
_NO_H = frozenset(
    """
    ad ave avin aving alf ead eart ungry ome ouse ospital ands usband
    """.split()  # noqa: SIM905 - a block is read more easily
)
_FIXED = {
    "gr8": "great",
    "l8r": "later",
    "4got": "forgot",
    "b4": "before",
    "2day": "today",
    "2nite": "tonight",
    "hba1c": "a1c",
    "hba1": "a1c",
}
#: `walked 1h20` tells a length, `19h30` and `at 2h30` a time.
FEW_HOURS = frozenset("12345")
_AT = frozenset({"at", "las", "la", "around", "about", "from", "till", "until", "to", "by"})
_SPOKEN = {"&": "and", "@": "at", ";": ","}


def cut(plain: str) -> list[Token]:
    """Split the plain text; numbers in digits come out with a decimal point, thousands without a mark."""
    found: list[Token] = []
    signs = 0
    for match in _TOKEN.finditer(plain):
        kind = match.lastgroup
        start, end = match.span()
        if kind in {"digits", "mark"}:
            signs += 1
            if signs > _MOST_SIGNS:
                continue
        if kind == "plain":
            word = plain[start:end]
            found.append(Token(start, end, SPELT.get(word, word)))
            continue
        raw = plain[start:end].strip()
        if kind in {"ampm", "half"}:
            word = f"{match['half']}m"
        elif kind == "fixed":
            squeezed = raw.replace(" ", "").replace("-", "").replace("one", "1")
            word = _FIXED.get(squeezed, squeezed)
        elif kind in {"with", "without"}:
            word = kind
        elif kind == "alike":
            found.extend(_mended(match, plain))
            continue
        elif kind == "link":
            word = LINK
        elif kind == "clock":
            word = raw.replace("h", ":")
            if raw[1] == "h" and raw[0] in FEW_HOURS and (not found or found[-1].word not in _AT):
                found += (Token(start, end, word), Token(end, end, "h"))
                continue
        elif kind == "decimal":
            word = raw.replace(",", ".")
        elif kind == "thousands":
            word = raw.replace(",", "")
        elif kind == "word":
            word = raw.removesuffix("'s") if raw in _WITH_IS else raw.replace("'", "")
            if word in _NO_H and plain[start - 1 : start] == "'":
                word = f"h{word}"
            word = SPELT.get(word, word)
        elif kind == "arrow":
            word = ">"
        elif raw == "-" and _inside_word(start, plain):
            continue
        elif raw.startswith("..") or (raw == "-" and _parts(start, plain)):
            word = ","  # `had rice... 142 before - long day`
        else:
            word = raw if kind == "digits" else _SPOKEN.get(raw[0], raw[0])
        found.append(Token(end - len(plain[start:end].lstrip()), end, word))
    return found


def _inside_word(place: int, plain: str) -> bool:
    before, after = plain[place - 1 : place], plain[place + 1 : place + 2]
    return before.isalpha() and after.isalpha()


def _parts(place: int, plain: str) -> bool:
    """`rice - fish`, `142 - rice`: a dash with spaces around it is a comma, not so between two
    numbers (`2 - 3 rotis`)."""
    before, after = plain[max(place - 2, 0) : place], plain[place + 1 : place + 3]
    numbers = before[:1].isdigit() and after[1:].isdigit()
    return before[1:] == " " == after[:1] and not numbers


#: Before a road's number (`on i80`) a letter is no digit. Its words take less than that room.
_ROAD, _ROAD_ROOM = re.compile(r"\b(?:on|off|along|via|onto|down) (?:the )?$"), 20


def _mended(match: re.Match[str], plain: str) -> list[Token]:
    """A number with letters for digits, if that alone makes it one; else its two halves."""
    raw = match.group()
    before = plain[max(match.start() - _ROAD_ROOM, 0) : match.start()]
    alone = raw == plain.strip()
    many = len(raw) > 2 and (alone or _MOMENT.match(plain, match.end()))
    litres = _NEEDED_ALIKE.fullmatch(raw) and not many
    if not litres and not _ROAD.search(before):
        mended = raw.translate(_ALIKE).replace(",", ".")
        value = float(mended)
        digits = sum(char.isdigit() for char in raw)
        written = raw[0] in "ol" and raw[1] in ".,"  # `O.4` is 0.4 and no 4
        if digits >= 1 and (written or any(plausible(value, unit) for unit in Unit)):
            return [Token(match.start(), match.end(), mended)]
    return [
        Token(match.start() + part.start(), match.start() + part.end(), part.group())
        for part in re.finditer(r"\d+(?:[.,]\d+)?|[a-z]+", raw)
    ]
