"""The week told: figures, comparison, suggestion become a caption and the figures of a picture."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from bot.entries import Answer, What
from bot.glucose.height import height
from bot.glucose.week import Week, digest_instants, week, week_of
from bot.localtime import DAY, shifted
from bot.picture import to_mapping
from bot.planning.due import Topic
from bot.planning.weekly import digests
from bot.programme.compare import compare_steps
from bot.programme.suggest import suggest
from bot.record import Record
from bot.words.digest import digest_words
from bot.words.language import Language
from bot.words.picture import week_picture

#: The least by which two instants of a record differ: it keeps milliseconds.
AN_INSTANT = timedelta(milliseconds=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekTold:
    """A week's words, and the figures of its picture as JSON."""

    text: str
    picture: Mapping[str, Any]


def digest(record: Record, end: datetime, words: Language) -> WeekTold:
    """The week that ends at a digest's instant, from the record of everything since joining."""
    start, end, _, _ = week_of(record.participant, end)
    return _told(record, week(record, start=start, end=end), words, so_far=False)


def summary(record: Record, now: datetime, words: Language) -> WeekTold:
    """The week so far, for somebody who asks in the middle of it."""
    end = next(digest_instants(record.participant, now))
    start, _, _, _ = week_of(record.participant, end)
    # A week ends before its end, but what was told in the second of the question is before it.
    asked = shifted(now, AN_INSTANT)
    return _told(record, week(record, start=start, end=asked), words, so_far=True)


def asked_for(record: Record, now: datetime, words: Language) -> WeekTold:
    """What `summary` gives: the week so far; or first the last one, if its digest was dropped."""
    end = _dropped(record, now)
    return summary(record, now, words) if end is None else digest(record, end, words)


def _dropped(record: Record, now: datetime) -> datetime | None:
    """The end of the last week if its digest could not be sent and nobody has asked for it yet.

    The request at hand is in the record already.
    """
    said = {spoken.entry.key for spoken in record.spoke}
    for item in digests(record, shifted(now, -7 * DAY)):
        if item.topic is Topic.DIGEST and item.until < now and item.key not in said:
            asked = [
                noted
                for noted in record.requests
                if noted.entry.what is What.SUMMARY and noted.at > item.until
            ]
            return item.week_end if len(asked) <= 1 else None
    return None


def _told(record: Record, figures: Week, words: Language, *, so_far: bool) -> WeekTold:
    where = height(figures.complete, record.participant)
    compared = compare_steps(figures.steps)
    comparison = compared[-1] if compared else None
    more = comparison.all_meals.more_pairs if comparison is not None else None
    say = words.digest
    text = digest_words(
        figures,
        suggestion=suggest(figures, height=where, more_pairs=more),
        sentences=say,
        comparison=comparison,
        height=where,
        answers=_answers(record, figures),
        so_far=so_far,
    )
    picture = week_picture(figures, say.picture, so_far=so_far)
    return WeekTold(text=text, picture=to_mapping(picture))


def _answers(record: Record, figures: Week) -> tuple[Answer, ...]:
    """The answers to the weekly question that were given in the week."""
    return tuple(noted.entry for noted in record.answers if figures.start <= noted.at < figures.end)
