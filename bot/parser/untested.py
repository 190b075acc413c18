"""Could a test not be done, and why, in a message that tells a sign besides?"""

# ruff: noqa: SIM905 - word sets read best as one string

from bot.entries import Skip
from bot.parser.page import Page, pattern

#: A test that could not be done; why follows.
_UNTESTED = pattern(
    r"(?:(?:i|we|she|he|no|nah|sorry) )*(?:(?:skip|skipping|skipped)(?: (?:it|this|one|love|mate))*"
    r"(?= (?:,|no|cos|because|as|meter|strips))|(?:cant|cannot|can not|couldnt|could not|unable to"
    r"|not able to|wont be able to|no fit|no puedo|no pude|no pudo|no podre) (?:test|check|prick"
    r"|do it|do the test|do my test|medirme|medirla|medir|hacerme la prueba|checarme))"
    r"(?: (?:now|today|lah|po|yet|my sugar|sugar|it|atm|ahora|hoy|el azucar|la glucosa))*"
)
_LEADS_ON = frozenset(", : - ; . as because cos cause since and n so porque y".split())
_LEADS_OUT = _LEADS_ON | frozenset(
    "i im am ah my me but feel feeling pero tambien also very so too really "
    "quite bit a muy tan bien super mucha mucho".split()
)


def find(page: Page) -> tuple[int, int, Skip] | None:
    """Claim `can't test` and what says why, up to the sign behind it."""
    span = page.first(_UNTESTED)
    if span is None or page.numbers:
        return None
    start = span.end
    while start < len(page.tokens) and page.tokens[start].word in _LEADS_ON:
        start += 1
    end = start
    while end < len(page.tokens) and page.free(end):
        end += 1
    if end < len(page.tokens):
        while end > start and page.tokens[end - 1].word in _LEADS_OUT:
            end -= 1
    page.claim(span.start, max(end, span.end))
    reason = page.text(start, end) if end > start else None
    return span.start, max(end, span.end), Skip(reason=reason)
