"""Is a symptom only supposed or asked about? `what do I do if I faint?`, `how do I know if I'm low?`

Only where the question leads straight into it: `what do I do, I feel faint` is felt now. What may
be happening to somebody now (`what if he won't wake up`) is never only supposed, nor is what somebody
asks what to do about (`what should I do when I feel shaky`).
"""

# ruff: noqa: E501 - patterns and word lists, one a line

import re

from bot.entries import Suggests
from bot.parser.page import Page

_IF = re.compile(
    r"(?:what|wat|wot|how|who|and|but|so|que|a quien|y)(?: [a-z]+){0,5}? (?:if|when|incase|in case|si|cuando)"
    r"|(?:^|.* )(?:in case|if ever|if i ever|just in case|por si|en caso de que|en caso de|y si)"
    r"|(?:what|wat|which|cuales|que)(?: (?:is|are|does|causes|cause|were|son|es|causa|significa|would|be|r))+"
    r"|(?:whats|wats|wots) (?:a|an|the)"
    r"|how (?:will|would|do|can|does) (?:i|you|one|we) (?:know|tell|recogni[sz]e|spot)"
    r"|(?:can|could|does|do|will|would|might) [a-z]+(?: [a-z]+)? (?:make|give) (?:you|u|people)"
    r"|(?:can|could|does|do|will|would|might) (?:it|this|that|they|metformin|low sugar|high sugar|exercise|fasting|skipping meals|the [a-z]+) (?:make|cause|give)"
    r"|(?:should|can|could|shall|may|must|do) (?:i|we) (?:still )?(?:skip|miss|stop|hold|take|inject|cut|halve|reduce|lower|double|increase) (?!(?:the |some |my |more |a )?(?:sugar|glucose|juice|carbs|food|something|sweets|candy|honey|coke))[a-z]+(?: [a-z]+){0,3} if"
    r"|(?:debo|puedo|tengo que) (?:saltarme|dejar|suspender|tomar|tomarme|ponerme|inyectarme|bajar|subir) (?!azucar|jugo|miel|algo|dulce|comida)[a-z]+(?: [a-z]+){0,3} si"
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
    """.split()  # noqa: SIM905 - a block is read more easily
)
#: Words that say it is so now.
_SO_NOW = frozenset(
    ["now", "right", "still", "this", "already", "since", "ahora", "ya", "asi", "todavia", "sigo"]
)
#: What nobody could text about while it happens to them.
_GONE = re.compile(
    r"(?:faints?|pass(?:es)? out|black(?:s)? out|collapses?|lose(?:s)? consciousness|(?:have|has|having) (?:a )?(?:seizure|fit|fits)|seizures?"
    r"|(?:me |se )?desmay[aoe]|desmayarme|desmayarse|pierd[oe] el conocimiento|convulsion[ao]?)"
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
    ]
)


def is_supposed(page: Page, start: int, end: int, suggests: Suggests, supposed: set[int]) -> bool:
    """Whether the words before a sign only suppose it; `supposed` are the tokens of signs before
    it that were."""
    words = page.words(0, len(page.tokens))
    first = max(start - _REACH, 0)
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
        if _IF.fullmatch(" ".join(words[first:at])):
            return _WHAT_TO_DO.fullmatch(" ".join(words[first : start + 1])) is None
        if words[at - 1] not in _SMALL and at - 1 not in supposed:
            return False
        at -= 1
    return False
