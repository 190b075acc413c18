"""Every level and limit of the cautions, each with its published source beside it.

Values are mg/dL; they are compared in the unit in which a reading was typed, by the published
pairs (70 is 3.9, 250 is 13.9). "ADA 2026" is the American Diabetes Association's Standards of
Care in Diabetes 2026, Diabetes Care 49, supplement 1. Where `low` and `high` begin is kept with
the participant (`bot.participants.Limits`), because a care team may narrow them.
"""

from datetime import timedelta
from enum import StrEnum


class Level(StrEnum):
    """Kinds of caution, in the order in which they are sent."""

    EMERGENCY = "emergency"
    VERY_LOW = "very_low"
    LOW = "low"
    VERY_HIGH = "very_high"
    HIGH = "high"
    TWO_DAYS_VERY_HIGH = "two_days_very_high"
    REPEATED_HIGH = "repeated_high"
    REPEATED_LOW = "repeated_low"
    SYMPTOMS = "symptoms"


#: The order of sending: an emergency, the lows, the highs, then the calls to the care team.
SEND_ORDER = tuple(Level)

#: Below it `very_low`. ADA 2026, section 6, p. 145: level 2, below 54 mg/dL (3.0 mmol/L).
VERY_LOW = 54.0

#: Below it `low` unless the care team raised it. ADA 2026, section 6, p. 145: level 1.
LOW = 70.0

#: Below it carbohydrate before activity, where lows are possible. ADA 2026, section 5, p. 112.
BEFORE_ACTIVITY = 90.0

#: From it `high` unless the care team lowered it. ADA 2026, section 13, p. 297 (call a clinician
#: promptly when values stay above 250 within 24 hours; written for care homes).
HIGH = 250.0

#: From it `very_high`. ADA 2026, section 13, p. 297 (above 300 over two days: call promptly;
#: care homes) and hospital leaflets (staying at 300 or above: call the care team).
VERY_HIGH = 300.0

#: A low is tested again after it. ADA 2026, section 6, p. 144 and recommendation 6.15.
RECHECK_AFTER = timedelta(minutes=15)

#: Then once more (common practice, no source).
SECOND_RECHECK_AFTER = timedelta(minutes=10)

#: Once back from a low, one more test: sugar is soon used up (common practice, no source).
RECHECK_AFTER_RECOVERY = timedelta(minutes=60)

#: A recheck is still worth asking for, and an answer still one to it, for this long: the hour
#: for which the bot waits for a reading (common practice, no source).
RECHECK_OPEN = timedelta(minutes=60)

#: A reading that comes later than this after a low is no answer to it any more. Two rechecks,
#: each with its wait, fit in (common practice, no source).
LOW_OPEN = timedelta(minutes=120)

#: A washed repeat comes within it. "Wash, dry, repeat" is hospital leaflets' advice; the half
#: hour is common practice, no source.
REPEAT_WITHIN = timedelta(minutes=30)

#: An episode is over this long after its last reading out of range (common practice, no source).
EPISODE_GAP = timedelta(minutes=30)

#: Told later than this after it was taken, a reading says too little of now
#: (common practice, no source).
LATE_AFTER = timedelta(minutes=60)

#: A sign and a number told within it of each other belong together (common practice, no source).
SIGN_AND_NUMBER = timedelta(minutes=60)

#: The third reading in one low still below the limit is an emergency: treated twice to no avail.
#: Emergency number when not recovering: ADA education sheet 2024; the count is common practice.
READINGS_IN_ONE_LOW = 3

#: Seven days, as hours, so that a change of the clock makes no difference.
SEVEN_DAYS = timedelta(hours=168)

#: So many lows within seven days, and the care team is to look at medicine (common practice, no
#: source; ADA 2026, section 6, asks for a review of treatment after lows).
LOWS_IN_SEVEN_DAYS = 2

#: So many highs within seven days, and the care team is to be called (common practice, no source).
HIGHS_IN_SEVEN_DAYS = 3

#: How long a plan lasts that an educator records for somebody who is high for weeks
#: (project rule).
HIGH_PLAN = timedelta(days=14)
