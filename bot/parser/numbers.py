"""Which numbers are told in words, and which digits are they?"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache

from bot.parser.page import Token


@dataclass(frozen=True, slots=True, eq=False)
class Numerals:
    """How a language says numbers, one of a kind; `tens` join a unit with `joined`
    (`cuarenta y dos`)."""

    units: Mapping[str, int]
    teens: Mapping[str, int]
    tens: Mapping[str, int]
    hundreds: Mapping[str, int]
    hundred: frozenset[str]
    thousand: frozenset[str]
    zero: frozenset[str]
    point: frozenset[str]
    joined: frozenset[str]
    shy: frozenset[str]  # a number only in company: `one`
    company_before: frozenset[str]
    company_after: frozenset[str]
    parts_of: frozenset[str]  # behind the shy one it is no number: `one side of my face`
    after_hundred: frozenset[str]
    fractions: Mapping[tuple[str, ...], str]  # behind a whole number: `and a half`
    at_home: frozenset[str] = frozenset()  # something else in other languages: `quince`
    slips: frozenset[str] = frozenset()  # those of the words that are misspelt
    rough: frozenset[str] = frozenset()  # behind a hundred: it is not the whole number

    @property
    def words(self) -> frozenset[str]:
        """Every word that can begin a number."""
        named = {*self.units, *self.teens, *self.tens, *self.hundreds}
        return frozenset(named) | self.hundred


@cache
def _begin(say: Numerals, *, home: bool) -> frozenset[str]:
    """The words that begin a number, in the participant's own language or in another."""
    return say.words if home else say.words - say.at_home


@cache
def _spoken_with(numerals: tuple[Numerals, ...]) -> frozenset[str]:
    """One of these words stands in every number in words."""
    begun = (_begin(say, home=say is numerals[0]) for say in numerals)
    ended = {words[-1] for say in numerals for words in say.fractions}
    return frozenset(ended).union(*begun, *(say.point for say in numerals))


def spoken(tokens: list[Token], numerals: tuple[Numerals, ...]) -> list[Token]:
    """Replace numbers in words by one token of digits each (`one hundred and forty two`)."""
    if _spoken_with(numerals).isdisjoint([token.word for token in tokens]):
        return tokens
    result: list[Token] = []
    index = 0
    points = frozenset().union(*(say.point for say in numerals))
    begun_by = [(say, _begin(say, home=say is numerals[0])) for say in numerals]
    while index < len(tokens):
        if index + 2 < len(tokens) and tokens[index + 1].word in points:
            whole, tenth = tokens[index].word, tokens[index + 2].word
            if whole.isdigit() and tenth.isdigit():  # `7 point 2`, as dictation writes it
                written = f"{whole}.{tenth}"
                result.append(Token(tokens[index].start, tokens[index + 2].end, written))
                index += 3
                continue
        for language, words in begun_by:
            if tokens[index].word in words:
                end, written = _number(tokens, index, language)
                break
        else:
            end, written = index, ""
        if written and not _shy(tokens, index, end, numerals):
            pointed = end < len(tokens) and tokens[end].word in points
            if pointed and (tenth := _sounds_like(tokens, end + 1)):  # `eight point for`
                result.append(Token(tokens[index].start, tokens[-1].end, f"{written}.{tenth}"))
                break
            result.append(Token(tokens[index].start, tokens[end - 1].end, written))
            index = end
            if written.endswith("0") and (last := _sounds_like(tokens, end)):
                # `one forty too`: 142, or 140 also? Two numbers are asked about.
                result.append(Token(tokens[end].start, tokens[end].end, last))
                index += 1
        else:
            result.append(tokens[index])
            index += 1
    return _with_fractions(result, numerals)


#: No glucose above this is told with a fraction: `118 and a half sandwich`.
_LARGEST_WITH_FRACTION = 33


def _with_fractions(tokens: list[Token], numerals: Sequence[Numerals]) -> list[Token]:
    """Make one number of `eight and a half`."""
    here = {token.word for token in tokens}
    told = [(words, say) for say in numerals for words in say.fractions if words[-1] in here]
    if not told:
        return tokens
    result: list[Token] = []
    index = 0
    while index < len(tokens):
        token, end = tokens[index], index + 1
        for words, say in told:
            after = end + len(words)
            if tuple(one.word for one in tokens[end:after]) == words:
                whole = str(say.units.get(token.word, token.word))  # `one` may still be a word
                if whole.isdigit() and int(whole) <= _LARGEST_WITH_FRACTION:
                    written = whole + say.fractions[words]
                    token, end = Token(token.start, tokens[after - 1].end, written), after
                    break
        result.append(token)
        index = end
    return result


#: Words that dictation writes for a digit, at the end of a message only.
_SOUNDS = {"too": "2", "to": "2", "for": "4", "ate": "8"}


def _sounds_like(tokens: list[Token], index: int) -> str:
    """The digit that the last word of a message sounds like behind a number in words."""
    if index != len(tokens) - 1 or tokens[index - 1].word[0].isdigit():
        return ""
    return _SOUNDS.get(tokens[index].word, "")


def _shy(tokens: list[Token], start: int, end: int, numerals: Sequence[Numerals]) -> bool:
    """Whether a single word is no number here: `one` in `skip this one`."""
    word = tokens[start].word
    before = tokens[start - 1].word if start else ""
    after = tokens[end].word if end < len(tokens) else ""
    return end == start + 1 and any(
        word in say.shy
        and after not in say.company_after
        and (before not in say.company_before or after in say.parts_of)
        for say in numerals
    )


def _number(tokens: list[Token], start: int, say: Numerals) -> tuple[int, str]:
    """Read one number from `start`; give where it ends and its digits ("" if it is none)."""
    words = [token.word for token in tokens[start : start + 9]]
    end, value, size = _below_hundred(words, 0, say)
    if end == 0 and words[0] in say.hundreds:
        if rough := _rough(words, 1, say):
            return start + rough, _NOT_SURE
        end, value, size = 1, say.hundreds[words[0]], 3
        end, value = _rest(words, end, value, say)
        return _scaled(words, end, value, start, say)
    if end < len(words) and words[end] in say.hundred:  # `two hundred`, and `hundred` alone
        if rough := _rough(words, end + 1, say):
            return start + rough, _NOT_SURE
        if end == 0 and len(words) > 1 and words[1] not in say.words | say.after_hundred:
            return (start + 1, "100") if words[0] in say.hundred else (start, "")
        value = (value or 1) * 100
        end, value = _rest(words, end + 1, value, say)
        return _scaled(words, end, value, start, say)
    if end == 0:
        return start, ""
    if value in {10, 11, 12}:  # `twelve thirty`
        last, minutes, digits = _below_hundred(words, end, say)
        if digits == 2 and minutes < 60 and last > end:
            return start + last, f"{value}:{minutes:02d}"
    if size == 1:  # `one forty two`, `one oh five`, `one four two`
        longer, tail = _tail(words, end, say)
        if longer > end and words[longer - 1] in say.tens and words[longer : longer + 1] == ["too"]:
            return start + longer + 1, _NOT_SURE  # 142, or 140 once more?
        if longer > end:
            return start + longer, f"{value}{tail}"
    return _scaled(words, end, value, start, say)


def _below_hundred(words: list[str], at: int, say: Numerals) -> tuple[int, int, int]:
    """Read 1 to 99 at a place: where it ends, its value, and how many digits it has."""
    if at >= len(words):
        return at, 0, 0
    word = words[at]
    if word in say.units:
        return at + 1, say.units[word], 1
    if word in say.teens:
        return at + 1, say.teens[word], 2
    if word in say.tens:
        value, end = say.tens[word], at + 1
        after = end + 1 if end < len(words) and words[end] in say.joined else end
        if (not say.joined or after > end) and after < len(words) and words[after] in say.units:
            return after + 1, value + say.units[words[after]], 2
        return end, value, 2
    return at, 0, 0


def _tail(words: list[str], at: int, say: Numerals) -> tuple[int, str]:
    """The last two digits after a single one: `forty two`, `oh five`, `four two`."""
    if at < len(words) and words[at] in say.zero:
        end, value, size = _below_hundred(words, at + 1, say)
        return (end, f"0{value}") if size == 1 else (at, "")
    end, value, size = _below_hundred(words, at, say)
    if size == 2:
        return end, f"{value:02d}"
    if size == 1:
        last, unit, unit_size = _below_hundred(words, end, say)
        if unit_size == 1:
            return last, f"{value}{unit}"
    return at, ""


#: A number that no meter shows is asked about.
_NOT_SURE = "0"


def _rough(words: list[str], at: int, say: Numerals) -> int:
    """Where a number ends that is only about so large (`a hundred and something`); 0 for others."""
    if at < len(words) and words[at] in say.after_hundred:
        at += 1
    if at >= len(words) or words[at] not in say.rough:
        return 0
    at += 1
    while at < len(words) and words[at] in say.words:
        at += 1
    return at


def _rest(words: list[str], at: int, value: int, say: Numerals) -> tuple[int, int]:
    """What follows a hundred."""
    after = at + 1 if at < len(words) and words[at] in say.after_hundred else at
    end, rest, size = _below_hundred(words, after, say)
    return (end, value + rest) if size else (at, value)


def _scaled(words: list[str], end: int, value: int, start: int, say: Numerals) -> tuple[int, str]:
    """A thousand or a decimal after the number."""
    if end < len(words) and words[end] in say.thousand:
        return start + end + 1, str(value * 1000)
    if end < len(words) and words[end] in say.point and value < 100:
        if end + 1 < len(words) and words[end + 1] in say.zero:
            return start + end + 2, f"{value}.0"
        last, tenth, size = _below_hundred(words, end + 1, say)
        if size:
            return start + last, f"{value}.{tenth}"
        if end + 1 < len(words) and words[end + 1].isdigit():
            return start + end + 2, f"{value}.{words[end + 1]}"
        if end + 1 < len(words) and words[end + 1].isalpha() and words[end + 1] not in _SOUNDS:
            return start + end + 1, _NOT_SURE  # `six point sixmmol`
    return start + end, str(value)
