"""Does the message mend what was said before?"""

# ruff: noqa: E501 - patterns and word lists, one a line
# ruff: noqa: SIM102 - one question an `if`
# ruff: noqa: SIM905 - word sets read best as one string

import re
from dataclasses import dataclass, fields
from datetime import datetime
from functools import cache

from bot.entries import Ask, Correction, Moment, Removal
from bot.parser import activity, food, moments, times
from bot.parser.instants import When, resolved
from bot.parser.languages import gathered
from bot.parser.lexicon import either
from bot.parser.page import Page, Pattern, as_written, needed_by
from bot.parser.values import Value
from bot.units import Unit

_N = r"\d+(?:\.\d+)?"
_UNIT = r"(?: (?P<mg>mg / dl|mg dl|mg %|mgs?)| (?P<mmol>mmols? / l|mmols?|mm))?"


#: Behind a few small words only what says that something was wrong calls for a correction.
_WRONG = (
    r"(?:(?:that|thats|the|last|one|reading|number|value|i|got|it|its|is|was|sorry|oops|my|previous|text|message|to|a|just) ){1,6}"
    r"(?:should be|should have been|shouldve been|should read|should say|was meant to be|ought to be|typo|wrong|incorrect|mistake|error|mistyped|misread|mixed up)"
    r"|i (?:put|typed|wrote|sent|entered|texted) (?:it |that |the )?(?:in )?wrong(?:ly)?"
    r"|(?:fat|clumsy|slippery|cold|butter) (?:fingers?|fingered|thumbs?)|wrong (?:key|button|digit|digits)|autocorrect"
)


@dataclass(frozen=True, slots=True)
class _Patterns:
    swapped: Pattern
    not_then: Pattern
    put_but: Pattern
    replaced: Pattern
    should_be: Pattern
    cued: Pattern
    cued_after: Pattern
    starred: Pattern
    that_was: Pattern
    ate_at: Pattern
    not_food: Pattern
    food_not: Pattern
    said_but: Pattern
    meant: Pattern


@cache
def _patterns(language: str) -> _Patterns:
    cue = either(gathered(language, "correction"))
    cue_after = either(gathered(language, "correction_after"))
    instead = either(  # `142 no 124` is no English for `142 not 124`
        tuple(w for w in gathered(language, "instead_of") if w != "no" or language.startswith("es"))
    )
    should = either(gathered(language, "should_be"))
    that_was = either(gathered(language, "that_was"))
    small = r"(?:(?:,|\.|:|!|-|its|it|is|was|i|meant|mean|to|be|say|the|my|mine|hers|his|her|theirs|sugar|reading|number|that|thats|should|make|sorry|oops|no|not|es|era|eran|son|fue|fueron|quise|decir|put|write|wrote|actually|really|glucose|last|one|value|have|been|ment|azucar|glucosa|typed|type|mistyped|entered|sent|gave|said|says|read|reads|saw|told|you|meter|in|as|a|typo|wrong|by|mistake|error|for|so|fat|finger|fingers|fingered|thumb|thumbs|glasses|off|on|hit|key|button|correct|correction|misread|display|screen|regret|right|please|change|replace|swap|fix|update|edit|earlier|just|now|this|escribi|puse|mande|dije|correcto|cambia|cambiar|reemplaza) )*"
    tail = r"(?: (?:,|\.|!|my mistake|my bad|sorry|oops|please|mg|instead|thanks|now|by|not sure why|typo|ah|lah|eh|oh|mix(?:ed)? (?:it|them|that) up|swapped (?:it|them)))*"
    glue = r"(?: (?:,|\.|;|-|its|it|is|was|should|be|but|the|sino|es|era|fue))*"
    return _Patterns(
        swapped=as_written(
            rf"(?:{cue} )?{small}(?P<new>{_N}){_UNIT}(?: (?:that|it) (?:was|were|is))?(?: ,)? (?:and )?{instead} (?:the )?(?P<old>{_N}){tail}"
        ),
        not_then=as_written(
            rf"(?:{cue} )?{small}(?:not|no|isnt|wasnt|no (?:es|era|fue|son|eran)) (?P<old>{_N}){glue} (?P<new>{_N}){_UNIT}{tail}"
        ),
        put_but=as_written(
            rf"{small}(?:typed|put|wrote|sent|entered|said|gave|told you|read|saw|misread|puse|escribi|mande|dije)(?: (?:it|as|in|you|the|number))* (?P<old>{_N})(?: (?:,|\.|;|-|but|and|it|its|was|is|should|be|actually|really|meant|i|have|been|to|say|the|meter|says|said|number|pero|era|es|fue|in|fact|put|type|right|instead|of))+ (?P<new>{_N}){_UNIT}{tail}"
        ),
        replaced=as_written(
            rf"(?:please )?(?:replace|change|swap|update|fix|correct|cambia|reemplaza|corrige) (?:the |that |my |el )?(?P<old>{_N}) (?:with|to|for|into|by|por|a|con) (?P<new>{_N}){_UNIT}{tail}"
        ),
        should_be=as_written(
            rf"{small}(?:change |fix |correct )?(?P<old>{_N})(?: ,)? {should}{glue} (?P<new>{_N}){_UNIT}{tail}"
        ),
        cued=as_written(
            rf"(?:(?:hey|hi|hello|ok|okay|oh|ah|um|uh|well|so|no(?= (?:, )?(?:i|we) )|nope|nah|wait) (?:, )?)*(?:{cue}|no ,|{_WRONG}) {small}(?P<new>{_N}){_UNIT}{tail}"
        ),
        cued_after=as_written(rf"{small}(?P<new>{_N}){_UNIT}(?: ,)? {cue_after}"),
        starred=as_written(
            rf"(?:{cue} )?(?:[:,] )?\* (?P<new>{_N}){_UNIT}{tail}|(?P<new2>{_N}) \*"
        ),
        that_was=as_written(
            rf"(?:(?:oh|ah|oh no|oh wait|wrong|mistake|my mistake|my bad|error|sorry|oops|no|wait|actually|perdon|perdona|disculpa|disculpe|ups|espera|me equivoque|que pena|correction) (?:, )?)*{that_was} (?:(?:my|the|a|actually|really|taken|from|,|:|in fact|not before ,?) )*(?P<rest>.+)"
        ),
        ate_at=as_written(
            rf"(?:(?:sorry|oops|no|actually|correction|perdon|wait|my bad|my mistake|{_WRONG}) (?:[,.] )?)*(?:i |we |she |he |yo )?(?:actually |really |only |in fact )?(?:ate|eaten|started(?: eating)?|had (?:it|my meal)|began|meal was|my meal was|comi|empece)(?: it| eating| my meal| actually)? (?P<rest>(?:at|a las?|about|around|\d|half|noon|an|1|hace|20).*)"
        ),
        not_food=as_written(
            r"(?:(?:sorry|oops|no|wait|actually|perdon|i meant) (?:, )?)*(?:it was |that was )?(?:not|no|wasnt|it wasnt|it was not|no era|no fue) (?P<old>[^,.;]+?)(?: (?:,|\.|;|but|it was|its|sino|era|-))+ (?P<new>[^,.;]+)"
        ),
        said_but=as_written(
            r"(?:(?:sorry|oops|no|wait|actually|perdon) (?:, )?)*(?:i |we |she |he |yo )?(?:said|put|wrote|typed|logged|told you|sent|dije|puse|escribi|mande) (?P<old>[^,.;0-9]+?)(?: ,)? (?:but|pero|when)(?: (?:it|i|we|was|had|is|its|actually|really|in|fact|ate|meant|era|fue|comi|it was|should|be|have|been))+ (?P<new>[^,.;]+)"
        ),
        food_not=as_written(
            rf"(?:(?:sorry|oops|no|wait|actually|i meant|i mean|it was|that was|was|i had|i ate|era|fue|perdon|quise decir|meant|correction|:|,) )*(?P<new>[^,.;]+?)(?: ,)? {instead} (?P<old>[^,.;]+)"
        ),
        meant=as_written(
            r"(?:(?:sorry|oops|no|perdon) (?:, )?)*(?:i meant|i mean|i ment|correction|make that|quise decir)"
            r"(?: (?::|,|it was|to say))* (?P<new>[^,.;]+)"
        ),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Mend:
    """What a correcting message comes to: an entry, or what has to be asked."""

    entry: Correction | Removal | None = None
    ask: Ask | None = None
    value: Value | None = None


#: With these something new is told behind a mend (`that was after, and having papaya now`).
REPORTING = frozenset(
    "before after fasting having eating ate walked antes despues comiendo".split()
)


_A_TIME = re.compile(r"(?:at |a las? )?\d{1,2}(?: ?[:.] ?\d\d)?(?: ?[ap]m)?")
#: No correction has more tokens.
_LONGEST = 80
#: `can i eat durian or not` mends nothing.
_QUESTION = re.compile(r"(?:can|could|may|should|shall|am|is|are|do|does|puedo|debo|podria) ")
_ASKS = frozenset({"?"})
_SORRY_BEHIND = re.compile(r" [.,;!] (?:my mistake|my bad|sorry|oops|typo|perdon|mi error)$")
#: What a meter shows, and no mistake of the person's (`error 5`).
_ERROR_CODE = re.compile(
    r"(?:(?:the|my|meter|it|says|shows|an|got|gives|code) )*(?:error|err)(?: code)? \d{1,2}"
)


@cache
def _needed(language: str) -> frozenset[str] | None:
    """One of these words stands in every correction."""
    patterns = _patterns(language)
    return needed_by(getattr(patterns, field.name) for field in fields(patterns))


def find(page: Page, language: str, at: datetime, own: Unit) -> Mend | None:
    """A message that is nothing but a correction or a removal."""
    needed = _needed(language)
    if len(page.tokens) > _LONGEST or not (needed is None or page.holds(needed)):
        return None
    patterns = _patterns(language)
    words = page.said()
    if _ERROR_CODE.fullmatch(words):
        return None
    for sought in (
        patterns.swapped,
        patterns.not_then,
        patterns.put_but,
        patterns.replaced,
        patterns.should_be,
        patterns.cued,
        patterns.cued_after,
        patterns.starred,
    ):
        if match := sought.whole(words, page.held):
            return _mended(match, own)
    if match := patterns.ate_at.whole(words, page.held):
        told, instead, otherwise = match["rest"].partition(" not ")
        end = match.start("rest") + len(told) if instead else None
        only = not instead or _A_TIME.fullmatch(otherwise)  # `i ate at 1 not 2 and now 8.4`
        if only and (when := _only_time(page, match.start("rest"), end, language)):
            if instant := resolved(when, at):
                return Mend(entry=Correction(at=instant))
    if (match := patterns.that_was.whole(words, page.held)) and (
        mend := _moment(page, match, language, at)
    ):
        return mend
    told = _SORRY_BEHIND.sub("", words)
    if _QUESTION.match(told) or page.holds(_ASKS):
        return None  # `is honey ok instead of sugar?`
    for sought in (patterns.said_but, patterns.not_food, patterns.food_not):
        if (match := sought.whole(told, page.held)) and not _left_out(told, match, language):
            return _food(page, match, language)
    if match := patterns.meant.whole(words, page.held):
        return _meant_food(page, match, language)
    return None


def _left_out(words: str, match: re.Match[str], language: str) -> bool:
    """`burger, no bun` is a meal; behind a word for a mistake or in Spanish it mends (`pan, no
    arroz`), unless what is left out is only put into food (`café, no azúcar`)."""
    between = words[match.end("new") : match.start("old")].strip(" ,")
    if between != "no" or match.start("new") != 0:
        return False
    return not language.startswith("es") or match["old"].split()[-1] in _PUT_IN


_PUT_IN = frozenset("azucar sal leche crema mantequilla hielo miel salsa mayonesa sugar".split())


def _meant_food(page: Page, match: re.Match[str], language: str) -> Mend | None:
    """`I meant bread`: nothing but food behind it."""
    start = _index(page, match.start("new"))
    first = (
        start + 1 if page.tokens[start].word in {"a", "an", "the", "some", "un", "una"} else start
    )
    joined = {"and", "with", "y", "con", "of", "de"}
    words = range(first, _index(page, match.end("new") + 1))
    foods = _foods(page, language)
    if not all(i in foods or page.tokens[i].word in joined for i in words) or first not in foods:
        return None
    text = page.text(start, words.stop)
    return Mend(entry=Correction(text=text, foods=food.kinds_of(text, language)))


def _mended(match: re.Match[str], own: Unit) -> Mend:
    groups = match.groupdict()
    written = groups["new"] or groups.get("new2") or "0"
    unit = Unit.MG_DL if groups.get("mg") else Unit.MMOL_L if groups.get("mmol") else None
    value = Value(start=0, end=0, number=float(written), decimal="." in written, unit=unit)
    judged = value.judged(own)
    if isinstance(judged, Ask):
        return Mend(ask=judged, value=value)
    old = groups.get("old")
    return Mend(
        entry=Correction(value=value.number, unit=judged, replaces=float(old) if old else None)
    )


def _foods(page: Page, language: str) -> set[int]:
    """The tokens that name food."""
    dishes = food.find(page.afresh(), language)
    return {index for dish in dishes for index in range(dish.start, dish.end)}


def _index(page: Page, place: int) -> int:
    """The token that begins at a place of the joined words."""
    at = 0
    for index, token in enumerate(page.tokens):
        if at >= place:
            return index
        at += len(token.word) + 1
    return len(page.tokens)


def part_of(page: Page, start: int, end: int) -> Page:
    return Page(page.shown, page.tokens[start:end])


def _only_time(page: Page, place: int, end: int | None, language: str) -> When | None:
    """A time, with nothing behind it but what it is not."""
    last = len(page.tokens) if end is None else _index(page, end)
    rest = part_of(page, _index(page, place), last)
    found = times.find(rest, language)
    left = [word for _, word in rest.find_words(0, len(rest.tokens)) if word[0].isalnum()]
    return found[0] if len(found) == 1 and not left else None


def _moment(page: Page, match: re.Match[str], language: str, at: datetime) -> Mend | None:
    rest = part_of(page, _index(page, match.start("rest")), len(page.tokens))
    when = times.find(rest, language)
    left = [word for _, word in rest.find_words(0, len(rest.tokens)) if word[0].isalnum()]
    if when and not left:
        instant = resolved(when[0], at)
        return Mend(entry=Correction(at=instant)) if instant else None
    rest = part_of(page, _index(page, match.start("rest")), len(page.tokens))
    if any(token.word[0].isdigit() for token in rest.tokens) and not re.search(
        r"(?:hours?|hrs?|h|min|minutes|horas?)\b", " ".join(token.word for token in rest.tokens)
    ):
        return None
    cues = moments.find(
        rest, language, activity.tokens_of(activity.find(rest, language)), _foods(rest, language)
    )
    cues = cues or moments.find_long(rest, language)
    left = [word for _, word in rest.find_words(0, len(rest.tokens)) if word[0].isalnum()]
    if not REPORTING.isdisjoint(left):
        return None  # `that was before. eating manti`
    if cues and cues[0].moment is not None and cues[0].start <= 1 and len(left) <= 2:
        first = cues[0]
        not_first = rest.tokens[first.start - 1].word in {"not", "no"} if first.start else False
        if any(word[0].isdigit() for word in left):
            return None  # `it's 10.6 two hours after dinner` is a reading
        chosen = cues[1].moment if not_first and len(cues) > 1 else first.moment
        if not_first and len(cues) == 1:
            chosen = Moment.AFTER_MEAL if first.moment is Moment.BEFORE_MEAL else Moment.BEFORE_MEAL
        return Mend(entry=Correction(moment=chosen))
    return None


#: What one has not, rather than what was not eaten.
_LACKING = frozenset(
    "now today yet hungry tengo tenemos hay puedo pude quiero have strips time more".split()
)
_DENYING = frozenset("does do did is are am was were has have can could will would".split())
_LEADING = frozenset("it was had i ate the its un era fue meant is".split())


def _food(page: Page, match: re.Match[str], language: str) -> Mend | None:
    old_at = _index(page, match.start("old"))
    new_at, new_end = _index(page, match.start("new")), _index(page, match.end("new") + 1)
    old = range(old_at, _index(page, match.end("old") + 1))
    if _foods(page, language).isdisjoint({*old, *range(new_at, new_end)}):
        return None
    if page.tokens[max(new_end - 1, 0)].word in _DENYING:
        return None  # `her breath does not smell of fruit`
    if not {"but", "pero"}.isdisjoint(page.words(old_at, old.stop)):
        return None  # `el medidor no sirve pero ceno caldo`
    if page.tokens[old_at].word in _LACKING or not REPORTING.isdisjoint(
        page.words(old_at, old.stop)
    ):
        return None  # `no tengo tiras, cena tortilla`, `after not before and having papaya now`
    while new_at < new_end and page.tokens[new_at].word in _LEADING:
        new_at += 1
    text = page.text(new_at, new_end).strip(" .,;!")
    if not text or any(
        token.word[0].isdigit() and float(token.word.replace(":", "")) > 20
        for token in page.tokens[new_at:new_end]
        if token.word.replace(".", "").isdigit()
    ):
        return None
    return Mend(entry=Correction(text=text, foods=food.kinds_of(text, language)))
