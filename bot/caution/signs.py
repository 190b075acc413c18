"""Which high symptoms may mean ketones: vomiting, belly pain, fast deep breathing.

The reader says that a symptom is one of high glucose and keeps its words; here they are told
apart from thirst, passing water and blurred sight. Misspelt words count, and words that fit
neither list count as a sign: one question too many to the emergency number costs less than one
too few.

Source of the signs: health service pages on ketoacidosis; consensus report 2024 on
hyperglycaemic crises, doi 10.2337/dci24-0032.
"""

import re
import unicodedata

from bot.entries import Suggests, Symptom

#: English and Spanish, without accents.
KETONE_WORDS = (
    "vomit", "vomits", "vomiting", "vomited", "vom", "throwing", "throw", "threw", "thrown",
    "boke", "boked", "boking", "boak", "chundering", "spewed", "heave", "hoying", "puke",
    "puking", "puked", "barf", "barfing", "spew", "spewing", "upchuck", "chunder",
    "chundered", "hurling", "hurled", "heaving", "heaves", "retching", "emesis", "nausea",
    "nauseous", "queasy", "sick", "sicked", "bringing", "brought", "bile", "belly", "bellyache",
    "stomach", "stomachache", "tummy", "tummyache", "abdomen", "abdominal", "gut", "guts",
    "tum", "cramps", "collywobbles", "breathing", "breath", "breathe", "breaths", "panting",
    "hyperventilating", "kussmaul", "fruity", "acetone", "ketone", "ketones", "vomito",
    "vomitos", "vomitando", "vomitado", "vomite", "devolviendo", "devolvi", "devuelto",
    "arcadas", "trasboque", "basca", "deponiendo", "nauseas", "barriga", "panza", "vientre",
    "estomago", "tripa", "tripas", "guata", "respirando", "respiracion", "respiro", "jadeo",
    "jadeando", "aliento", "cetonas",
)  # fmt: skip

#: What else high glucose does, and how people say it.
OTHER_WORDS = (
    "thirst", "thirsty", "thirstier", "parched", "dehydrated", "drinking", "drink", "drank",
    "quench", "gallons", "water", "dry", "mouth", "mouthed", "throat", "tongue", "lips", "pee",
    "peeing", "peed", "piss", "pissing", "wee", "weeing", "weewee", "urine", "urinating",
    "urinate", "urinated", "urination", "widdling", "tinkling", "bathroom", "restroom",
    "washroom", "toilet", "loo", "lav", "bed", "polyuria", "polydipsia", "blurred", "blurry",
    "blur", "blurring", "fuzzy", "hazy", "cloudy", "misty", "foggy", "dim", "wavy", "smudgy",
    "bleary", "unclear", "site", "night", "wicked", "salty", "two", "everything", "blurriness",
    "double", "vision", "sight", "eyesight", "eye", "eyes", "see", "seeing", "view", "focus",
    "high", "hyper", "hyperglycemia", "hyperglycaemia", "hyperglycemic", "sugar", "sugars",
    "tired", "exhausted", "weak", "headache", "beber", "tomar", "deshidratado", "deshidratada",
    "resequedad", "meo", "micciono", "viendo", "empanado", "turbio", "sed", "sediento",
    "sedienta", "boca", "seca", "agua", "bebo", "bebiendo", "tomando", "orinar", "orino",
    "orinando", "orina", "mear", "meando", "pis", "pipi", "bano", "bien", "claro", "vista",
    "borrosa", "borroso", "nublada", "doble", "veo", "ver", "ojos", "alta", "alto", "azucar",
    "hiperglucemia", "cansado", "cansada",
)  # fmt: skip

#: Words that carry no meaning of their own here.
_EMPTY = frozenset((
    "a", "ache", "aching", "all", "alot", "am", "and", "bad", "been", "being", "can", "cannot",
    "day", "deep", "fast", "puedo", "feel", "feeling", "get", "gets", "getting", "going", "got",
    "have",
    "having", "heavy", "her", "his", "hurts", "i", "im", "in", "is", "it", "keep", "last",
    "lot", "lots", "me", "much", "my", "of", "off", "on", "pain", "pains", "passing", "rapid",
    "really", "since", "so", "the", "three", "trip", "trips", "time", "times", "to", "today",
    "up", "very", "was", "con", "de", "del", "dolor", "el", "en", "estoy", "ha", "he", "la",
    "las", "lo", "los", "mi", "mucha", "mucho", "muy", "que", "se", "tengo", "todo", "un",
    "una", "y",
))  # fmt: skip

#: How alike two spellings are, in per cent, to be one word.
_LIKENESS = 75.0


def may_mean_ketones(symptom: Symptom) -> bool:
    """Tell whether a high symptom is one that goes with ketones."""
    if symptom.suggests is not Suggests.HIGH:
        return False
    words = [word for word in re.findall(r"[^\W\d_]+", _plain(symptom.text)) if word not in _EMPTY]
    if not words:
        return True
    of_ketones = [_likeness(word, KETONE_WORDS) for word in words]
    of_others = [_likeness(word, OTHER_WORDS) for word in words]
    known_sign = any(
        sign >= _LIKENESS and sign >= other
        for sign, other in zip(of_ketones, of_others, strict=True)
    )
    return known_sign or max(of_others) < _LIKENESS


def _likeness(word: str, among: tuple[str, ...]) -> float:
    from rapidfuzz import fuzz, process  # noqa: PLC0415 - 3 MB, for a high symptom only

    return process.extractOne(word, among, scorer=fuzz.ratio)[1]


def _plain(text: str) -> str:
    apart = unicodedata.normalize("NFKD", text.casefold().replace("'", "").replace("’", ""))
    return "".join(sign for sign in apart if not unicodedata.combining(sign))
