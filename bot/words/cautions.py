"""Cautions, rechecks and the lines about safety: chosen and filled here, written per language.

Every text is put together from whole sentences, one instruction each, in the order of what to
do. The code joins sentences and fills in numbers and times; it never builds a sentence.
"""

from dataclasses import dataclass
from datetime import datetime

from bot.caution.caution import Caution, Why
from bot.caution.ladder import Recheck, RecheckKind
from bot.caution.thresholds import BEFORE_ACTIVITY, RECHECK_AFTER_RECOVERY, VERY_HIGH, Level
from bot.entries import By, OffScale, Reading
from bot.localtime import in_zone, shifted
from bot.participants import Participant, State
from bot.record import Noted
from bot.record.fold import when
from bot.words.amounts import clock, mg_dl_words, value_words


@dataclass(frozen=True, slots=True, kw_only=True)
class Voice:
    """The sentences of cautions and rechecks, as said to one kind of reader.

    Filled in: `{value}` a reading with its unit, `{limit}` where low begins, `{from_}` where a
    level begins, `{emergency}` the number to call, `{sugar}` what 15 g of fast sugar are, `{at}`
    and `{taken}` clock times.
    """

    # what to do about a low
    sugar_now: str
    sugar_now_again: str
    sugar_if_still_low: str
    treat_as_low: str
    sugar_if_low: str
    retest_asked: str
    retest_alone: str
    not_alone: str
    no_driving: str
    no_driving_yet: str
    then_eat: str
    low_alarm: str
    # what to do about a high
    wash: str
    test_again: str
    water: str
    water_within_limit: str
    call_if_repeat: str
    call_if_it_stays: str
    urgent_if_high_again: str
    urgent_care: str
    high_signs: str
    # what a value is
    very_low: str
    meter_low: str
    low: str
    very_high: str
    meter_high: str
    meter_high_again: str
    high: str
    high_again: str
    was_low: str
    was_high: str
    planned: str
    fingers: str
    # an emergency
    emergency_call: str
    emergency_value: str
    emergency_signs: str
    emergency_still_low: str
    nothing_by_mouth: str
    emergency_sugar: str
    glucagon: str
    stay: str
    # calls to the care team
    call_today: str
    call_this_week: str
    two_days: str
    third_high: str
    second_low: str
    only_they: str
    find_reason: str
    # symptoms and wrong doses
    feeling_counts: str
    then_test: str
    test_now: str
    wrong_dose_call: str
    wrong_dose_tell: str
    # at the end of all
    nobody_watches: str
    care_team_first: str
    # rechecks
    recheck: str
    recheck_second: str
    recheck_hour: str
    recheck_high: str
    recheck_alarm: str


@dataclass(frozen=True, slots=True, kw_only=True)
class CautionSentences:
    """Every sentence about safety in one language: two voices, and single lines.

    The lines take the same fillings as the voices, and `{before}` or `{repeat}` for a second
    reading.
    """

    own: Voice
    helper: Voice
    local_emergency: str
    sugar: str
    sugar_glucose_only: str
    back: str
    back_thanks: str
    back_eat: str
    back_one_more: str
    doubtful: str
    surprise: str
    just_under_goal: str
    activity_first: str
    activity_sugar: str
    low_taken_back: str
    educator_told: str
    medicine_advice: str
    pregnancy: str
    other_people: str
    others_low_first: str
    others_emergency: str
    others_who: str

    def voice(self, by: By) -> Voice:
        """The voice for who writes."""
        return self.helper if by is By.HELPER else self.own


def caution_words(
    caution: Caution,
    participant: Participant,
    sentences: CautionSentences,
    *,
    now: datetime,
    by: By = By.SELF,
) -> str:
    """A caution in full: the action first, at the end (but for an emergency) the care team."""
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
    said.append(voice.nobody_watches)
    if caution.level is not Level.EMERGENCY and not caution.planned:
        said.append(voice.care_team_first)
    if caution.planned:
        said = [voice.planned]
    return _filled(said, participant, sentences, caution=caution)


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
    return _filled([first, voice.recheck_alarm, voice.nobody_watches], participant, sentences)


def ladder_closed_words(
    back: Noted[Reading], participant: Participant, sentences: CautionSentences
) -> str:
    """The one kind line after a low; it names the next recheck if one follows."""
    said = [sentences.back, sentences.back_thanks, sentences.back_eat]
    if participant.can_go_low and participant.state is not State.STOPPED:
        said.append(sentences.back_one_more)
    once_more = shifted(when(back), RECHECK_AFTER_RECOVERY)
    return _filled(said, participant, sentences, reading=back.entry, at=once_more)


def doubtful_words(
    first: Reading, repeat: Reading, participant: Participant, sentences: CautionSentences
) -> str:
    """The repeat overrules: the first reading is kept, and does not count."""
    line = sentences.doubtful.replace("{repeat}", value_words(repeat))
    return _filled([line], participant, sentences, reading=first)


def surprise_words(
    reading: Reading, before: Reading, participant: Participant, sentences: CautionSentences
) -> str:
    """A reading far from the last one is asked for again."""
    line = sentences.surprise.replace("{before}", value_words(before))
    return _filled([line], participant, sentences, reading=reading)


def just_under_goal_words(
    reading: Reading, participant: Participant, sentences: CautionSentences
) -> str:
    """From 70 to 79: just under the goal, not a low."""
    return _filled([sentences.just_under_goal], participant, sentences, reading=reading)


def activity_words(reading: Reading, participant: Participant, sentences: CautionSentences) -> str:
    """Carbohydrate before activity."""
    said = [sentences.activity_first, sentences.activity_sugar]
    return _filled(said, participant, sentences, reading=reading, from_=BEFORE_ACTIVITY)


def low_taken_back_words(participant: Participant, sentences: CautionSentences) -> str:
    """A low was corrected upwards: one fresh reading, to be sure."""
    return _filled([sentences.low_taken_back], participant, sentences)


def educator_told_words(participant: Participant, sentences: CautionSentences) -> str:
    """What the participant is told when a word went to the educator."""
    return _filled([sentences.educator_told], participant, sentences)


def medicine_advice_words(participant: Participant, sentences: CautionSentences) -> str:
    """A question about a drug or a dose goes to the care team."""
    return _filled([sentences.medicine_advice], participant, sentences)


def pregnancy_words(participant: Participant, sentences: CautionSentences) -> str:
    """Numbers are kept and not judged until the care team sets goals."""
    return _filled([sentences.pregnancy], participant, sentences)


def other_people_words(participant: Participant, sentences: CautionSentences) -> str:
    """Children and other people have other goals."""
    return _filled([sentences.other_people], participant, sentences)


def others_symptom_words(participant: Participant, sentences: CautionSentences) -> str:
    """Somebody else's symptom: what to do first, then the question who it is."""
    said = [sentences.others_low_first, sentences.others_emergency, sentences.others_who]
    return _filled(said, participant, sentences)


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
    off_scale = caution.reading is not None and caution.reading.entry.value is None
    if caution.late:
        said = [voice.test_now, voice.was_low, voice.sugar_if_still_low]
    else:
        said = [
            voice.sugar_now_again if caution.repeat else voice.sugar_now,
            (voice.meter_low if off_scale else voice.very_low) if grave else voice.low,
        ]
    said += [voice.not_alone, voice.no_driving] if grave else [voice.no_driving_yet]
    said.append(voice.retest_asked if caution.asked_again else voice.retest_alone)
    if not grave:
        said.append(voice.then_eat)
    said.append(voice.low_alarm)
    if grave:
        said.append(voice.call_today)
    return said


def _high(caution: Caution, participant: Participant, voice: Voice) -> list[str]:
    grave = caution.level is Level.VERY_HIGH
    off_scale = caution.reading is not None and caution.reading.entry.off_scale is OffScale.HIGH
    if off_scale and caution.repeat:
        said = [voice.urgent_care, voice.meter_high_again]
    elif caution.repeat:
        said = [voice.call_today] if grave else []
        said.append(voice.high_again)
    else:
        said = [voice.test_now if caution.late else "", voice.wash]
        said += [] if caution.late else [voice.test_again]
        said.append(_what_is_high(caution, voice, off_scale=off_scale))
        if not caution.shorter:
            said.append(voice.fingers)
    said.append(voice.water_within_limit if participant.fluid_limit else voice.water)
    if not grave:
        said.append(voice.call_if_it_stays)
    elif not caution.repeat:
        said += [voice.call_if_repeat, voice.urgent_if_high_again]
    said.append(voice.high_signs)
    return said


def _what_is_high(caution: Caution, voice: Voice, *, off_scale: bool) -> str:
    if caution.late:
        return voice.was_high
    if off_scale:
        return voice.meter_high
    return voice.very_high if caution.level is Level.VERY_HIGH else voice.high


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


def _filled(
    said: list[str],
    participant: Participant,
    sentences: CautionSentences,
    *,
    caution: Caution | None = None,
    reading: Reading | None = None,
    at: datetime | None = None,
    from_: float = VERY_HIGH,
) -> str:
    noted = caution.reading if caution is not None else None
    shown = noted.entry if noted is not None else reading
    unit = shown.unit if shown is not None else participant.unit
    level = caution.level if caution is not None else None
    begins = participant.limits.high if level is Level.REPEATED_HIGH else from_
    retest = caution.retest_at if caution is not None else at
    sugar = sentences.sugar_glucose_only if participant.acarbose else sentences.sugar
    fillings = {
        "{value}": value_words(shown) if shown is not None else "",
        "{limit}": mg_dl_words(participant.limits.low, unit),
        "{from_}": mg_dl_words(begins, unit),
        "{emergency}": participant.emergency_number or sentences.local_emergency,
        "{sugar}": sugar,
        "{at}": clock(in_zone(retest, participant.zone)) if retest is not None else "",
        "{taken}": clock(in_zone(when(noted), participant.zone)) if noted is not None else "",
    }
    text = " ".join(sentence for sentence in said if sentence)
    for name, filling in fillings.items():
        text = text.replace(name, filling)
    return text
