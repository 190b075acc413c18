"""The sentences of cautions, rechecks and lines about safety that a language has to write."""

from dataclasses import dataclass

from bot.entries import By


@dataclass(frozen=True, slots=True, kw_only=True)
class Voice:
    """The sentences of cautions and rechecks, as said to one kind of reader.

    Filled in: `{value}` a reading with its unit, `{limit}` where low begins, `{from_}` where a
    level begins, `{emergency}` the number to call, `{sugar}` what 15 g of fast sugar are, `{at}`
    a clock time, `{taken}` when a late reading was taken (`taken_today`, `taken_before`).
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
    send_number: str
    wrong_dose_call: str
    wrong_dose_tell: str
    # at the end of all
    nobody_watches: str
    care_team_first: str
    # back in range
    back: str
    back_eat: str
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
    taken_today: str
    taken_before: str
    owed: str
    sugar: str
    sugar_within_limit: str
    sugar_glucose_only: str
    back_thanks: str
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
