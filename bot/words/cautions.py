"""Cautions, rechecks and the lines about safety: chosen and filled here, written per language.

Every text is put together from whole sentences, one instruction each, in the order of what to
do. The code joins sentences and fills in numbers and times; it never builds a sentence.
"""

from datetime import datetime

from bot.caution.caution import Caution, Why
from bot.caution.ladder import Recheck, RecheckKind, retest_after_recovery
from bot.caution.thresholds import BEFORE_ACTIVITY, VERY_HIGH, Level
from bot.entries import By, Reading
from bot.localtime import local_date
from bot.participants import Participant, State
from bot.record import Noted
from bot.record.fold import when
from bot.words.amounts import value_words
from bot.words.caution_filling import Filling
from bot.words.caution_sentences import CautionSentences, Voice

__all__ = [
    "CautionSentences",
    "Voice",
    "activity_words",
    "caution_words",
    "doubtful_words",
    "educator_told_words",
    "just_under_goal_words",
    "ladder_closed_words",
    "low_taken_back_words",
    "medicine_advice_words",
    "other_people_words",
    "others_symptom_words",
    "pregnancy_words",
    "recheck_words",
    "surprise_words",
]


#: Below 70, from 300 or unwell: a fast ends (design of the programme). An emergency's own words
#: say what is to be done, and nothing else.
ENDS_A_FAST = frozenset({Level.VERY_LOW, Level.LOW, Level.VERY_HIGH, Level.SYMPTOMS})


def caution_words(
    caution: Caution,
    participant: Participant,
    sentences: CautionSentences,
    *,
    now: datetime,
    by: By = By.SELF,
    fast: str = "",
) -> str:
    """A caution in full: the action first, at the end (but for an emergency) the care team.

    `fast` tells somebody who fasts today to end the fast; it stands where the day calls for it.
    """
    voice = sentences.voice(by)
    match caution.level:
        case Level.EMERGENCY:
            said = _emergency(caution, voice)
        case Level.VERY_LOW | Level.LOW:
            said = _low(caution, voice)
        case Level.VERY_HIGH | Level.HIGH:
            said = _high(caution, participant, voice)
        case Level.TWO_DAYS_VERY_HIGH:
            said = [voice.call_today, voice.two_days, voice.high_signs]
        case Level.REPEATED_HIGH:
            said = [voice.call_this_week, voice.third_high, voice.find_reason]
        case Level.REPEATED_LOW:
            said = [voice.call_this_week, voice.second_low, voice.only_they]
        case Level.SYMPTOMS:
            said = _symptoms(caution, participant, voice)
    if caution.level in ENDS_A_FAST and participant.fasts_on(local_date(now, participant.zone)):
        said.append(fast)
    said.append(voice.nobody_watches)
    if caution.level is not Level.EMERGENCY:
        said.append(voice.care_team_first)
    noted = caution.reading
    third_high = caution.level is Level.REPEATED_HIGH
    return Filling(
        participant,
        sentences,
        reading=noted.entry if noted is not None else None,
        taken_at=when(noted) if noted is not None else None,
        now=now,
        at=caution.retest_at,
        begins=participant.limits.high if third_high else VERY_HIGH,
    ).text(said)


def recheck_words(
    recheck: Recheck,
    participant: Participant,
    sentences: CautionSentences,
    *,
    by: By = By.SELF,
) -> str:
    """The prompt for a new test. It names no value, so it may stand on a shared screen."""
    voice = sentences.voice(by)
    first = {
        RecheckKind.FIRST: voice.recheck,
        RecheckKind.SECOND: voice.recheck_second,
        RecheckKind.AFTER_HOUR: voice.recheck_hour,
        RecheckKind.HIGH: voice.recheck_high,
    }[recheck.kind]
    return Filling(participant, sentences).text([first, voice.recheck_alarm, voice.nobody_watches])


def ladder_closed_words(
    back: Noted[Reading],
    participant: Participant,
    sentences: CautionSentences,
    *,
    by: By = By.SELF,
) -> str:
    """The one kind line after a low; it names the next recheck if one follows."""
    voice = sentences.voice(by)
    said = [voice.back, sentences.back_thanks, voice.back_eat]
    if participant.can_go_low and participant.state is not State.STOPPED:
        said.append(sentences.back_one_more)
    once_more = retest_after_recovery(back)
    return Filling(participant, sentences, reading=back.entry, at=once_more).text(said)


def doubtful_words(
    first: Reading, repeat: Reading, participant: Participant, sentences: CautionSentences
) -> str:
    """The repeat overrules: the first reading is kept, and does not count."""
    line = sentences.doubtful.replace("{repeat}", value_words(repeat))
    return Filling(participant, sentences, reading=first).text([line])


def surprise_words(
    reading: Reading, before: Reading, participant: Participant, sentences: CautionSentences
) -> str:
    """A reading far from the last one is asked for again."""
    line = sentences.surprise.replace("{before}", value_words(before))
    return Filling(participant, sentences, reading=reading).text([line])


def just_under_goal_words(
    reading: Reading, participant: Participant, sentences: CautionSentences
) -> str:
    """From 70 to 79: just under the goal, not a low."""
    return Filling(participant, sentences, reading=reading).text([sentences.just_under_goal])


def activity_words(reading: Reading, participant: Participant, sentences: CautionSentences) -> str:
    """Carbohydrate before activity."""
    said = [sentences.activity_first, sentences.activity_sugar]
    return Filling(participant, sentences, reading=reading, begins=BEFORE_ACTIVITY).text(said)


def low_taken_back_words(participant: Participant, sentences: CautionSentences) -> str:
    """A low was corrected upwards: one fresh reading, to be sure."""
    return Filling(participant, sentences).text([sentences.low_taken_back])


def educator_told_words(participant: Participant, sentences: CautionSentences) -> str:
    """What the participant is told when a word went to the educator."""
    return Filling(participant, sentences).text([sentences.educator_told])


def medicine_advice_words(participant: Participant, sentences: CautionSentences) -> str:
    """A question about a drug or a dose goes to the care team."""
    return Filling(participant, sentences).text([sentences.medicine_advice])


def pregnancy_words(participant: Participant, sentences: CautionSentences) -> str:
    """Numbers are kept and not judged until the care team sets goals."""
    return Filling(participant, sentences).text([sentences.pregnancy])


def other_people_words(participant: Participant, sentences: CautionSentences) -> str:
    """Children and other people have other goals."""
    return Filling(participant, sentences).text([sentences.other_people])


def others_symptom_words(participant: Participant, sentences: CautionSentences) -> str:
    """Somebody else's symptom: what to do first, then the question who it is."""
    said = [sentences.others_low_first, sentences.others_emergency, sentences.others_who]
    return Filling(participant, sentences).text(said)


def _emergency(caution: Caution, voice: Voice) -> list[str]:
    said = [voice.emergency_call]
    if caution.reading is not None:
        said.append(voice.emergency_value)
    if caution.why is Why.KETONES:
        said.append(voice.emergency_signs)
    elif caution.why in (Why.THIRD_LOW, Why.VERY_LOW_AFTER_SUGAR):
        said.append(voice.emergency_still_low)
    return [
        *said,
        voice.nothing_by_mouth,
        voice.emergency_sugar,
        voice.glucagon,
        voice.stay,
    ]


def _low(caution: Caution, voice: Voice) -> list[str]:
    grave = caution.level is Level.VERY_LOW
    if caution.late:
        said = [voice.test_now, voice.was_low, voice.sugar_if_still_low]
    else:
        said = [
            voice.sugar_now_again if caution.repeat else voice.sugar_now,
            _what_is_low(caution, voice),
        ]
    said += [voice.not_alone, voice.no_driving] if grave else [voice.no_driving_yet]
    said.append(voice.retest_asked if caution.asked_again else voice.retest_alone)
    if not grave:
        said.append(voice.then_eat)
    said.append(voice.low_alarm)
    if grave:
        said.append(voice.call_today)
    return said


def _what_is_low(caution: Caution, voice: Voice) -> str:
    if caution.level is Level.LOW:
        return voice.low
    return voice.meter_low if _off_scale(caution) else voice.very_low


def _high(caution: Caution, participant: Participant, voice: Voice) -> list[str]:
    if caution.planned:
        return [voice.test_now if caution.late else "", voice.planned]
    water = voice.water_within_limit if participant.fluid_limit else voice.water
    if caution.repeat and not caution.late:
        return [*_high_again(caution, water, voice), voice.high_signs]
    said = [voice.test_now, voice.wash] if caution.late else [voice.wash, voice.test_again]
    said.append(_what_is_high(caution, voice))
    if not caution.shorter:
        said.append(voice.fingers)
    said.append(water)
    if caution.level is Level.VERY_HIGH:
        said += [voice.call_if_repeat, voice.urgent_if_high_again]
    else:
        said.append(voice.call_if_it_stays)
    return [*said, voice.high_signs]


def _high_again(caution: Caution, water: str, voice: Voice) -> list[str]:
    """A repeat as high stands: no third test, but whom to call."""
    if _off_scale(caution):
        return [voice.urgent_care, voice.meter_high_again, water]
    if caution.level is Level.VERY_HIGH:
        return [voice.call_today, voice.high_again, water]
    return [water, voice.high_again, voice.call_if_it_stays]


def _what_is_high(caution: Caution, voice: Voice) -> str:
    if caution.late:
        return voice.was_high
    if _off_scale(caution):
        return voice.meter_high
    return voice.very_high if caution.level is Level.VERY_HIGH else voice.high


def _off_scale(caution: Caution) -> bool:
    return caution.reading is not None and caution.reading.entry.off_scale is not None


def _symptoms(caution: Caution, participant: Participant, voice: Voice) -> list[str]:
    said: list[str] = []
    if caution.wrong_dose:
        said += [voice.wrong_dose_call, voice.wrong_dose_tell]
    if caution.low_symptoms and participant.can_go_low:
        said += [voice.treat_as_low, voice.then_test]
    elif caution.high_symptoms and not caution.low_symptoms:
        said += [voice.wash, voice.test_now]
    else:
        said.append(voice.test_now)
    said.append(voice.send_number)
    if caution.low_symptoms:
        if not participant.can_go_low:
            said.append(voice.sugar_if_low)
        if not caution.shorter:
            said.append(voice.feeling_counts)
        said += [voice.no_driving_yet, voice.low_alarm]
    if caution.high_symptoms:
        said.append(voice.water_within_limit if participant.fluid_limit else voice.water)
        said.append(voice.high_signs)
    return said
