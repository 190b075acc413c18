"""What did the person type, once everything that makes no difference is gone?

`shown` keeps case and accents, for the words that are said back; `plain` is the same text,
character for character, in lower case and without accents, for looking things up.
"""

import re
import unicodedata
from functools import lru_cache

#: Chats allow 4,096 characters; what lies beyond is not read.
LONGEST = 4096

_SMILEYS = re.compile(
    r"(?<![0-9A-Za-z])(?:[:;=][-'^]?[)(\[\]DPpOo/\\|*3]+|<3+|[xX]D+|\^_*\^)(?![0-9A-Za-z])"
)
_IN_SMILEYS = re.compile("[:;=D^]|<3")
_REPLACED = {
    "’": "'", "‘": "'", "ʼ": "'", "´": "'", "“": '"', "”": '"', "«": '"', "»": '"',
    "–": "-", "—": "-", "−": "-", "‐": "-", "‑": "-", "⁄": "/", "∕": "/", "÷": "/",
    "٫": ".", "٬": ",", "،": ",", "؛": ";", "؟": "?", "·": ".", "。": ".", "、": ",",
    "→": ">", "⇒": ">", "➔": ">", "➡": ">", "•": ",", "…": ".", "×": "x", "™": " ", "®": " ",
}  # fmt: skip
_MEANT = frozenset("½¼¾⅓⅔°%")


@lru_cache(maxsize=4096)
def _shown(char: str) -> str:
    """One character as it is kept: never a mark that only changes the look."""
    if char in _REPLACED:
        return _REPLACED[char]
    if char < "\x7f":
        return char if char >= " " else " "
    if char in _MEANT:
        return char
    category = unicodedata.category(char)
    if category == "Nd":
        return str(unicodedata.decimal(char))
    if category in {"Cf", "Mn", "Me", "Cs", "Co", "Cn"}:
        return ""  # invisible, or a mark on the letter before it
    if category in {"So", "Sk", "Cc", "No", "Nl"} or category.startswith("Z"):
        return " "  # pictures and spaces
    wide = unicodedata.normalize("NFKC", char) if "\uff00" <= char <= "\uffef" else char
    return wide if len(wide) == 1 else char


@lru_cache(maxsize=4096)
def _plain(char: str) -> str:
    lower = char.lower()[:1] or char
    return unicodedata.normalize("NFD", lower)[0] if lower > "\x7f" else lower


def shown(text: str) -> str:
    """Give the text as it is kept: case and letters as typed, digits and spaces as usual."""
    text = text[:LONGEST]
    if not text.isascii():
        text = "".join(map(_shown, unicodedata.normalize("NFC", text)))
    elif not text.isprintable():
        text = "".join(char if " " <= char < "\x7f" else " " for char in text)
    if _IN_SMILEYS.search(text):  # far sooner told than looked for
        text = _SMILEYS.sub(" ", text)
    return " ".join(text.split())


def plain(kept: str) -> str:
    """Give `shown` text for looking up, of the same length."""
    return "".join(map(_plain, kept)) if not kept.isascii() else kept.lower()


def fold(phrase: str) -> str:
    """A phrase of a word list in plain form."""
    if phrase.isascii() and phrase.replace(" ", "").isalnum():  # nearly all: nothing to tidy
        return " ".join(phrase.lower().split())
    return plain(shown(phrase))
