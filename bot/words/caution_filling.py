"""Numbers, times and what depends on the person, filled into sentences about safety."""

from collections.abc import Iterable
from dataclasses import KW_ONLY, dataclass
from datetime import datetime

from bot.caution.thresholds import VERY_HIGH
from bot.entries import Reading
from bot.localtime import in_zone, local_date
from bot.participants import Participant
from bot.words.amounts import clock, mg_dl_words, value_words
from bot.words.caution_sentences import CautionSentences


@dataclass(frozen=True, slots=True)
class Filling:
    """What the gaps of a text are filled with.

    `reading` is the one that is named, in its own unit, `taken_at` when it was taken, seen from
    `now`; `at` a time to come; `begins` where a level begins, in mg/dL.
    """

    participant: Participant
    sentences: CautionSentences
    _: KW_ONLY
    reading: Reading | None = None
    taken_at: datetime | None = None
    now: datetime | None = None
    at: datetime | None = None
    begins: float = VERY_HIGH

    def text(self, said: Iterable[str]) -> str:
        """Join sentences into a text, empty ones left out, gaps filled."""
        text = " ".join(sentence for sentence in said if sentence)
        for gap, filling in self._gaps().items():
            text = text.replace(gap, filling)
        return text

    def _gaps(self) -> dict[str, str]:
        who = self.participant
        unit = self.reading.unit if self.reading is not None else who.unit
        return {
            "{value}": value_words(self.reading) if self.reading is not None else "",
            "{limit}": mg_dl_words(who.limits.low, unit),
            "{from_}": mg_dl_words(self.begins, unit),
            "{emergency}": who.emergency_number or self.sentences.local_emergency,
            "{sugar}": self._sugar(),
            "{at}": clock(in_zone(self.at, who.zone)) if self.at is not None else "",
            "{taken}": self._taken(),
        }

    def _sugar(self) -> str:
        """What 15 g of fast sugar are: glucose alone works beside acarbose, and juice counts as
        fluid (and is no good choice for weak kidneys). ADA leaflet 2017; NIDDK."""
        if self.participant.acarbose:
            return self.sentences.sugar_glucose_only
        if self.participant.fluid_limit:
            return self.sentences.sugar_within_limit
        return self.sentences.sugar

    def _taken(self) -> str:
        """When a late reading was taken."""
        if self.taken_at is None or self.now is None:
            return ""
        return day_and_time(self.taken_at, self.now, self.participant.zone, self.sentences)


def day_and_time(taken_at: datetime, now: datetime, zone: str, sentences: CautionSentences) -> str:
    """A clock time alone says nothing of another day."""
    if local_date(taken_at, zone) != local_date(now, zone):
        return sentences.taken_before
    return sentences.taken_today.replace("{clock}", clock(in_zone(taken_at, zone)))
