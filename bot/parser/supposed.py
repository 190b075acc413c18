"""Is a symptom only supposed or asked about? `what do I do if I faint?`, `how do I know if I'm low?`

Only where the question leads straight into it: `what do I do, I feel faint` is felt now. What may
be happening to somebody now (`what if he won't wake up`) is never only supposed, nor is what somebody
asks what to do about (`what should I do when I feel shaky`).
"""

# ruff: noqa: SIM905 - word sets read best as one string
# ruff: noqa: E501 - patterns and word lists, one a line

import re

from bot.entries import Suggests
from bot.parser.page import Page

_IF = re.compile(
    r"(?:what|wat|wot|how|who|and|but|so|que|a quien|y)(?: [a-z]+){0,5}? (?:if|when|incase|in case|si|cuando)"
    r"|(?:^|.* )(?:in case|if ever|if i ever|just in case|por si|en caso de que|en caso de|y si)"
    r"|(?:what|wat|which|cuales|que)(?: (?:is|are|does|causes|cause|were|son|es|causa|significa|would|be|r))+"
    r"|(?:whats|wats|wots) (?:a|an|the)"
    r"|(?:[a-z]+ ){0,3}(?:said|says|told me|told us|advised)(?: me)? to (?:test|check|eat|sit|stop|rest|call|ring)(?: [a-z]+){0,3} (?:if|when|whenever)"
    r"|how (?:will|would|do|can|does) (?:i|you|one|we|people|they|someone) (?:know|tell|recogni[sz]e|spot)(?: theyre)?"
    r"|(?:can|could|does|do|will|would|might|which|what)(?: [a-z]+){1,4} (?:make|give|makes|gives|cause) (?:you|u|people|folk|folks|someone|somebody|a person|one)"
    r"|(?:can|could|does|do|will|would|might) (?:it|this|that|they|metformin|low sugar|high sugar|exercise|fasting|skipping meals|the [a-z]+) (?:make|cause|give)"
    r"|(?P<anybody>why|how|when|what|can|could|do|does|will|would)(?: do| does| would| can| might| should)? (?:all |most |many |some |other |lots of |a lot of )?(?:you|people|diabetics|patients|someone|somebody|everyone|everybody|one|a person)(?: (?:with|who have) [a-z]+(?: [a-z0-9]+)?)?(?: treat| prevent| avoid)?"
    r"|(?:por que|porque) (?:da|dan|causa|produce|provoca|se siente)|como (?:se|puedo saber|saber|reconozco|sabe uno) (?:si|que)"
    r"|is it (?:dangerous|bad|serious|normal) (?:if|when) (?:someone|somebody|you|people)"
    r"|(?:can|could|does|do|will|would|might) [a-z]+(?: [a-z]+)? (?:cause|lead to|bring on)"
    r"|(?:por que )?(?:la |el )(?:metformina|insulina|glibenclamida|pastilla|medicina|diabetes|azucar(?: alta| baja)?)(?: pueden?)? (?:da|dan|dar|causa|causar|produce|producir|provoca|provocar)"
    r"|(?:.* )?why (?:do|does|did) (?:you|it|the bot) (?:keep )?ask(?:ing)?(?: me)? (?:if|about|whether)"
    r"|(?:.* )?(?:scared|afraid|frightened|terrified|worried) (?:of|about) (?:having|getting)(?: a)?"
    r"|(?:.* )?(?:ill|i will|let you know|tell you|text you|voy a avisar|te aviso|aviso)(?: [a-z]+){0,3} (?:if|when|si|cuando)"
    r"|(?:.* )?(?:leaflet|book|website|article|poster|label|google) (?:says|said|mentions|lists|warns|talks)(?: about| of| that)?"
    r"|(?:should|can|could|shall|may|must|do) (?:i|we) (?:still )?(?:skip|miss|stop|hold|take|inject|cut|halve|reduce|lower|double|increase) (?!(?:the |some |my |more |a )?(?:sugar|glucose|juice|carbs|food|something|sweets|candy|honey|coke))[a-z]+(?: [a-z]+){0,3} if"
    r"|(?:debo|puedo|tengo que) (?:saltarme|dejar|suspender|tomar|tomarme|ponerme|inyectarme|bajar|subir) (?!azucar|jugo|miel|algo|dulce|comida)[a-z]+(?: [a-z]+){0,3} si"
)
#: What only tells of signs: `watching a film about a coma`.
_TALE = re.compile(
    r".*(?:article|film|movie|book|poem|song|story|documentary|programme|novel|podcast|lecture|cpr|first aid|charity|course|lesson|class|training)s? (?:about|on|for|of)(?: a| an| the| some)?"
)
#: What is asked by somebody who may well feel it now.
_WHAT_TO_DO = re.compile(
    r"(?:.* )?(?:do|doing|hago|hacer) (?:now )?(?:when|cuando) (?:i|im|me|mi|my|estoy|tengo|ando|siento)(?: .*)?"
)
#: What may stand between the question and what it asks about.
_SMALL = frozenset(
    """
    i im we he she they my it you one someone somebody anyone anybody person people the a an some main usual
    common early first typical ever suddenly start starts started begin to feel feels feeling get gets getting
    become going go have has having had am are was is were be do does should really very too so again me
    of or and signs sign symptoms symptom warning effects side from with mean means like s
    yo me siento da dan empiezo a tengo estoy llego un una los las el la de se le te pongo sintiera siente
    muy mareo signos sintomas senales
    """.split()
)
#: Words that say it is so now.
_SO_NOW = frozenset(
    ["now", "right", "still", "this", "already", "since", "ahora", "ya", "asi", "todavia", "sigo"]
)
#: Words of whoever feels it.
_ONESELF = frozenset("i im my me yo mi".split())
#: What nobody could text about while it happens to them.
_GONE = re.compile(
    r"(?:faints?|pass(?:es)? out|black(?:s)? out|collapses?|lose(?:s)? consciousness|(?:have|has|having) (?:a )?(?:seizure|fit|fits)|seizures?"
    r"|(?:me |se )?desmay[aoe]|desmayarme|desmayarse|pierd[oe] el conocimiento|convulsion[ao]?)"
)


_ENDS = frozenset([".", "?", "!", ";", "¿", ","])
_ASKS = frozenset("can could what whats is are isnt arent does do es son".split())
_OF_SOMEBODY = frozenset(
    "i im ive my me we our us he she they his her him them hes shes mum mom dad wife husband mi yo "
    "now today tonight still this that help mama papa".split()
)
_A_SIGN = re.compile(
    r"(?: [a-z]+){0,3} (?:signs?|symptoms?|side effects?|means?|sintomas?|signos?|efectos?|senal(?:es)?)(?: .*)?"
)
#: One of these has to be said for a sign to be only spoken of so.
_TOLD_ABOUT = frozenset(
    "sign signs symptom symptoms side mean means if si sintoma sintomas signo signos efecto efectos "
    "senal senales".split()
)
#: How many words before a sign a question may begin.
_REACH = 20
_OPENERS = frozenset(
    [
        "if",
        "when",
        "incase",
        "case",
        "si",
        "cuando",
        "ever",
        "what",
        "wat",
        "whats",
        "wats",
        "wots",
        "how",
        "which",
        "cuales",
        "que",
        "can",
        "could",
        "does",
        "do",
        "will",
        "would",
        "might",
        "should",
        "debo",
        "puedo",
        "caso",
        "why",
        "porque",
        "por",
        "como",
        "ill",
        "will",
        "aviso",
        "scared",
        "afraid",
        "frightened",
        "terrified",
        "worried",
        "says",
        "said",
        "mentions",
        "lists",
        "warns",
        "talks",
    ]
)


def is_supposed(page: Page, start: int, end: int, suggests: Suggests, supposed: set[int]) -> bool:
    """Whether the words before a sign only suppose it; `supposed` are the tokens of signs before
    it that were."""
    words = page.words(0, len(page.tokens))
    first = max(start - _REACH, 0)
    if not _TOLD_ABOUT.isdisjoint(words) and (
        _is_a_sign(words, start, end) or _would_answer(words, start, end)
    ):
        return True
    if start > 1 and _TALE.fullmatch(" ".join(words[max(start - 5, 0) : start])) is not None:
        return True
    if _OPENERS.isdisjoint(words[first:start]):
        return False
    if suggests is Suggests.EMERGENCY and _GONE.fullmatch(" ".join(words[start:end])) is None:
        return False
    if not _SO_NOW.isdisjoint(words[end:]):
        return False
    marks = [at for at in range(first, start) if words[at] in {".", "?", "!", ";", "¿"}]
    first = marks[-1] + 1 if marks else first
    at = start
    while at > first:
        if (asked := _IF.fullmatch(" ".join(words[first:at]))) is not None:
            if asked["anybody"] and not _ONESELF.isdisjoint(words[at:start]):
                return False  # `what can you do im dizzy`
            return _WHAT_TO_DO.fullmatch(" ".join(words[first : start + 1])) is None
        if words[at - 1] not in _SMALL and at - 1 not in supposed:
            return False
        at -= 1
    return False


def _is_a_sign(words: list[str], start: int, end: int) -> bool:
    """`is blurred vision a sign of high sugar?`, of nobody and not now."""
    first = start - next(
        (at for at, word in enumerate(words[:start][::-1]) if word in _ENDS), start
    )
    last = next((at for at in range(end, len(words)) if words[at] in _ENDS), len(words))
    if words[end : end + 1] in (["es"], ["son"]) and words[last : last + 1] == ["?"]:
        return _A_SIGN.fullmatch(f" {' '.join(words[end + 1 : last])}") is not None
    return (
        words[first] in _ASKS
        and start - first <= 3
        and _OF_SOMEBODY.isdisjoint(words[first:last])
        and _A_SIGN.fullmatch(f" {' '.join(words[end:last])}") is not None
    )


def _would_answer(words: list[str], start: int, end: int) -> bool:
    """`if i get dizzy i will sit down`: what would be done about it."""
    first = words[max(start - 4, 0) : start]
    return ("if" in first or "si" in first) and any(
        words[at : at + 2] == ["i", "will"] or words[at] in {"ill", "id", "voy", "aviso", "avisare"}
        for at in range(end, min(end + 3, len(words)))
    )
