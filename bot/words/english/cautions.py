"""Cautions, rechecks and lines about safety in English.

Read each aloud before changing it: one instruction a sentence, short words, no dose, no drug to
take (glucagon that was prescribed apart), no diagnosis, no praise beside bad news.
"""

from dataclasses import replace

from bot.words.cautions import CautionSentences, Voice

OWN = Voice(
    sugar_now="Take 15 g of fast sugar now: {sugar}.",
    sugar_now_again="Take 15 g of fast sugar now, once more: {sugar}.",
    sugar_if_still_low=(
        "Still below {limit}, or feeling low? Take 15 g of fast sugar now: {sugar}."
    ),
    treat_as_low="Treat this as a low. Take 15 g of fast sugar now: {sugar}.",
    sugar_if_low="If it is below {limit}, take 15 g of fast sugar now: {sugar}.",
    retest_asked="Test again 15 minutes after the sugar. I will ask at {at}.",
    retest_alone="Test again 15 minutes after the sugar, at {at}.",
    not_alone="Do not stay alone. Ask someone to be with you.",
    no_driving="Do not drive.",
    no_driving_yet=(
        "Do not drive until you are back at {limit} and feel well. "
        "Then wait as long as your care team says."
    ),
    then_eat="Once you are back, eat if your next meal is over an hour away.",
    low_alarm=(
        "Call {emergency} if you cannot swallow, if you get worse, "
        "or if you are no better in 15 minutes."
    ),
    wash="Wash and dry your hands.",
    test_again="Then test again now.",
    water="Drink water, unless you were told to limit fluids.",
    water_within_limit="Keep to your fluid limit. Drink water only within it.",
    call_if_repeat="If the new test is as high, call your care team today.",
    call_if_it_stays="Call your care team if it stays this high for a day.",
    urgent_if_high_again="If your meter shows HI again, get urgent care now.",
    urgent_care="Get urgent care now.",
    high_signs=(
        "Call {emergency} if you vomit, or if you have belly pain. "
        "Call too for fruity breath, for fast deep breathing, "
        "or if you feel drowsy or confused."
    ),
    very_low="{value} is very low.",
    meter_low="LO on the meter means very low.",
    low="{value} is low.",
    very_high="{value} is very high.",
    meter_high="HI on the meter means very high.",
    meter_high_again="The meter shows HI again.",
    high="{value} is high.",
    high_again="It is high again, at {value}, so it counts.",
    was_low="{value} {taken} was low.",
    was_high="{value} {taken} was high.",
    planned=(
        "{value} is high, as your care team knows. "
        "Call {emergency} if you vomit, have belly pain or feel very unwell."
    ),
    fingers="Food on the fingers can make a test read too high.",
    emergency_call="Call {emergency} now.",
    emergency_value="The meter showed {value}.",
    emergency_signs="These signs need a doctor right away.",
    emergency_still_low="The sugar has not been enough so far.",
    nothing_by_mouth="If a person is not fully awake, give nothing by mouth.",
    emergency_sugar="Anyone who is awake and low needs 15 g of fast sugar now: {sugar}.",
    glucagon="If they are low and not awake, use glucagon if it was prescribed.",
    stay="Stay with someone until help comes. Do not drive.",
    call_today="Call your care team today.",
    call_this_week="Call your care team this week.",
    two_days="You had {from_} or more on two days in a row. It was {value} this time.",
    third_high="You had three highs within seven days, each {from_} or more.",
    second_low="You had two lows within seven days, each below {limit}.",
    only_they="Only they can look at your medicine. Do not change it on your own.",
    find_reason="They can help you find out why. Do not change any medicine on your own.",
    feeling_counts="How you feel counts more than the number.",
    then_test="Then test.",
    test_now="Test now.",
    send_number="Send me the number.",
    wrong_dose_call="Call your care team or {emergency} now.",
    wrong_dose_tell="Tell them what you took and when.",
    nobody_watches="Nobody watches this chat day and night.",
    care_team_first="Your care team's own advice comes first.",
    back="{value}: you are back at {limit} or above.",
    back_eat="Eat something if your next meal is over an hour away.",
    recheck="Please test again now, and send me the number.",
    recheck_second="I have no new number yet. Please test now, or ask someone to help you.",
    recheck_hour="Please test once more now. A low can come back once the sugar is used up.",
    recheck_high="Please wash and dry your hands. Then test again, and send me the number.",
    recheck_alarm="Call {emergency} if you feel worse.",
)

#: For a grandson, a wife, a carer who writes for the person.
HELPER = replace(
    OWN,
    sugar_now="Give 15 g of fast sugar now, if they are awake: {sugar}.",
    sugar_now_again="Give 15 g of fast sugar now, once more, if they are awake: {sugar}.",
    sugar_if_still_low=(
        "Still below {limit}, or feeling low? If they are awake, "
        "give 15 g of fast sugar now: {sugar}."
    ),
    treat_as_low=(
        "Treat this as a low. If they are awake and can swallow, "
        "give 15 g of fast sugar now: {sugar}."
    ),
    sugar_if_low="If it is below {limit}, give 15 g of fast sugar now: {sugar}.",
    not_alone="Do not leave them alone.",
    no_driving="They must not drive.",
    no_driving_yet=(
        "They must not drive until they are back at {limit} and feel well. "
        "Then they wait as long as their care team says."
    ),
    then_eat="Once they are back, give food if the next meal is over an hour away.",
    low_alarm=(
        "Call {emergency} if they cannot swallow, if they get worse, "
        "or if they are no better in 15 minutes."
    ),
    wash="Wash and dry their hands.",
    water="Give water, unless they were told to limit fluids.",
    water_within_limit="Keep to their fluid limit. Give water only within it.",
    call_if_repeat="If the new test is as high, call their care team today.",
    call_if_it_stays="Call their care team if it stays this high for a day.",
    urgent_if_high_again="If the meter shows HI again, get urgent care now.",
    high_signs=(
        "Call {emergency} if they vomit, or if they have belly pain. "
        "Call too for fruity breath, for fast deep breathing, "
        "or if they are drowsy or confused."
    ),
    planned=(
        "{value} is high, as their care team knows. "
        "Call {emergency} if they vomit, have belly pain or are very unwell."
    ),
    stay="Stay with them until help comes. They must not drive.",
    call_today="Call their care team today.",
    call_this_week="Call their care team this week.",
    two_days="They had {from_} or more on two days in a row. It was {value} this time.",
    third_high="They had three highs within seven days, each {from_} or more.",
    second_low="They had two lows within seven days, each below {limit}.",
    only_they="Only the care team can look at their medicine. Do not change it on your own.",
    find_reason=("The care team can help find out why. Do not change any medicine on your own."),
    feeling_counts="How they feel counts more than the number.",
    wrong_dose_call="Call their care team or {emergency} now.",
    wrong_dose_tell="Say what they took and when.",
    care_team_first="Their care team's own advice comes first.",
    back="{value}: they are back at {limit} or above.",
    back_eat="Give food if their next meal is over an hour away.",
    recheck="Please test them again now, and send me the number.",
    recheck_second="I have no new number yet. Please test them now.",
    recheck_hour="Please test them once more now. A low can come back once the sugar is used up.",
    recheck_high="Please wash and dry their hands. Then test again, and send me the number.",
    recheck_alarm="Call {emergency} if they get worse.",
)

CAUTIONS = CautionSentences(
    own=OWN,
    helper=HELPER,
    local_emergency="your local emergency number",
    taken_today="at {clock}",
    taken_before="on an earlier day",
    owed="This warning may not have reached you {taken}:",
    sugar="1 tablespoon of sugar, or half a cup (120 mL) of juice",
    sugar_within_limit="1 tablespoon of sugar or honey",
    sugar_glucose_only="glucose tablets or glucose gel. Nothing else works fast enough for you",
    back_thanks="Thank you for testing again.",
    back_one_more="I will ask for one more test at {at}.",
    doubtful=("I kept your {value}, but it does not count. The repeat, {repeat}, takes its place."),
    surprise=(
        "{value} is far from your last one, {before}. "
        "Please wash and dry your hands. Then test again, and send me the number."
    ),
    just_under_goal="{value} is just under your goal, not a low.",
    activity_first="Before you move, eat some bread or fruit: {value} is below {from_}.",
    activity_sugar="Keep fast sugar at hand.",
    low_taken_back="Thank you for putting it right. Please test once more now, to be sure.",
    educator_told=(
        "I told your educator about this, as you agreed. They may not see it at once. "
        "Nobody watches this chat day and night."
    ),
    medicine_advice=(
        "I cannot help with medicine or how much of it to take. Please ask your care team "
        "or your pharmacist. Do not change it on your own. "
        "If you feel very unwell, call {emergency}."
    ),
    pregnancy=(
        "Thank you for telling me. Call your care team today: in pregnancy the goals are others. "
        "Until they set yours I keep your numbers and do not judge them. "
        "I still warn you about lows and very high values."
    ),
    other_people=(
        "I can only help one adult with type 2 diabetes: you. "
        "Children and other people have other goals. Please ask their own care team. "
        "If somebody is very unwell, call {emergency}."
    ),
    others_low_first=(
        "If they have diabetes and are awake, give 15 g of fast sugar now: "
        "1 tablespoon of sugar, or half a cup (120 mL) of juice."
    ),
    others_emergency=("If they are not fully awake, give nothing by mouth and call {emergency}."),
    others_who="Who is it? If it is about you, tell me how you feel.",
)
