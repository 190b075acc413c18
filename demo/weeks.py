"""Twenty-four invented weeks, from empty to crowded, in both units and several scripts."""

from collections.abc import Callable
from random import Random

from bot.entries import MealName, Moment, Step
from bot.glucose.week import Week
from bot.participants import Goals
from bot.units import Unit
from demo.diary import Diary, somebody

BREAKFAST, LUNCH, DINNER, SNACK = MealName


def empty() -> Week:
    return Diary().week()


def one_pair() -> Week:
    return Diary().meal(2, "12:30", "rice and beans", 118, 154, name=LUNCH).week()


def one_reading() -> Week:
    return Diary().reading(3, "07:00", 124, Moment.FASTING).week()


def only_before() -> Week:
    diary = Diary()
    for day, dish in enumerate(("oat porridge", "ugali", "rice", "chapati")):
        diary.meal(day, "12:30", dish, 112 + 6 * day)
    return diary.week()


def good() -> Week:
    return (
        Diary()
        .meal(0, "12:30", "rice and beans", 118, 154, name=LUNCH)
        .meal(1, "19:00", "grilled fish and greens", 104, 121, name=DINNER)
        .meal(2, "12:30", "lentil soup", 128, 137, name=LUNCH)
        .meal(4, "13:00", "chicken salad", 110, 126, name=LUNCH)
        .meal(5, "19:00", "beans and half a chapati", 99, 148, name=DINNER)
        .week()
    )


def mixed() -> Week:
    return (
        Diary()
        .meal(-6, "12:30", "pasta", 120, 190)
        .meal(-5, "12:30", "white bread and jam", 110, 170)
        .step(0, "08:00", Step.LIGHTER_MEAL)
        .meal(0, "12:30", "rice and beans", 118, 154, name=LUNCH)
        .meal(0, "19:00", "pasta with tomato sauce and bread", 122, 204, name=DINNER)
        .meal(1, "12:30", "ugali with greens", 101, 131)
        .activity(1, "17:30", "walked", 20, before=170, after=129)
        .meal(2, "12:30", "lentil soup", 128, 126)
        .meal(2, "19:00", "chapati", 124)
        .meal(3, "12:30", "fish", 96, 138, minutes=165)
        .reading(3, "07:00", 101, Moment.FASTING)
        .meal(4, "13:00", "rice and beans", 130, 170)
        .meal(5, "12:30", "matoke and beans", 99, 142)
        .reading(5, "07:00", 112, Moment.FASTING)
        .week()
    )


def with_low() -> Week:
    return (
        Diary()
        .meal(0, "12:30", "rice and beans", 118, 154, name=LUNCH)
        .reading(2, "11:40", 62)
        .caution(2, "11:40", "low")
        .reading(2, "11:57", 84, Moment.RECHECK)
        .meal(2, "12:30", "stew with potatoes", 92, 140, name=LUNCH)
        .meal(4, "19:00", "noodle soup", 110, 165, name=DINNER)
        .week()
    )


def with_hi() -> Week:
    return (
        Diary()
        .meal(0, "12:30", "rice", 138, 214, name=LUNCH)
        .meal(3, "13:00", "cola and pizza", 160, "HI", name=LUNCH)
        .caution(3, "15:00", "very_high")
        .reading(3, "15:20", "HI", Moment.RECHECK)
        .caution(3, "15:20", "very_high")
        .meal(5, "19:00", "vegetable curry", 142, 176, name=DINNER)
        .week()
    )


def with_lo() -> Week:
    return (
        Diary()
        .reading(1, "06:50", "LO")
        .caution(1, "06:50", "very_low")
        .reading(1, "07:05", 58, Moment.RECHECK)
        .caution(1, "07:05", "low")
        .caution(1, "07:05", "repeated_low")
        .reading(1, "07:25", 88, Moment.RECHECK)
        .meal(1, "08:00", "porridge with milk", 96, 150, name=BREAKFAST)
        .week()
    )


def washed() -> Week:
    return (
        Diary()
        .meal(1, "12:30", "mango", 112, 286, name=LUNCH)
        .caution(1, "14:30", "high")
        .reading(1, "14:45", 152, Moment.RECHECK)
        .meal(3, "12:30", "rice and fish", 108, 149, name=LUNCH)
        .week()
    )


def high_start() -> Week:
    diary = Diary()
    for day, (before, after) in enumerate(((168, 182), (174, 196), (159, 188), (181, 187))):
        diary.meal(day, "19:00", ("stew", "fish", "egg curry", "beans")[day], before, after)
    return diary.week()


def very_high_range() -> Week:
    diary = Diary()
    for day, (before, after) in enumerate(((190, 320), (230, 412), (160, 240), (205, 296))):
        diary.meal(day, "12:30", ("rice", "cake", "salad", "bread")[day], before, after)
    diary.caution(0, "14:30", "very_high").caution(1, "14:30", "very_high")
    diary.caution(1, "14:30", "two_days_very_high").caution(3, "14:30", "high")
    return diary.week()


def flat() -> Week:
    diary = Diary()
    for day in range(6):
        diary.meal(day, "12:30", ("omelette", "salad with egg")[day % 2], 108 + day, 108 + day // 2)
    return diary.week()


def falling() -> Week:
    return (
        Diary()
        .meal(0, "19:00", "soup", 150, 118, name=DINNER)
        .meal(2, "19:00", "salad", 141, 122, name=DINNER)
        .activity(3, "20:40", "danced", 30, before=176, after=120)
        .activity(4, "18:00", "swept the yard", None, before=150, after=144)
        .meal(5, "19:00", "beans", 120, 119, name=DINNER)
        .week()
    )


def uncounted() -> Week:
    return (
        Diary()
        .meal(0, "12:30", "rice", 118)
        .meal(1, "12:30", "bread", 121, 180, minutes=170)
        .meal(2, "12:30", "yam", 109, 160)
        .meal(2, "13:30", "sweet tea and cake")
        .meal(3, "12:30", "beans", None, 149)
        .reading(4, "11:00", 66)
        .caution(4, "11:00", "low")
        .meal(4, "12:00", "rice and egg", 95, 150)
        .week()
    )


def long_names() -> Week:
    return (
        Diary()
        .meal(0, "12:30", "slow-cooked black beans with brown rice, plantain and salad", 112, 149)
        .meal(1, "12:30", "Donaudampfschifffahrtskapitänsauflauf", 118, 171)
        .meal(2, "12:30", "two thin slices of my neighbour's sourdough", 108, 190, name=BREAKFAST)
        .meal(3, "12:30", "$5 menu: burger_with_fries & {sauce}", 130, 233, name=SNACK)
        .week()
    )


def scripts() -> Week:
    return (
        Diary()
        .meal(0, "12:30", "दाल चावल और भिंडी की सब्ज़ी", 128, 172, name=LUNCH)
        .meal(1, "12:30", "أرز مع الدجاج والخضار المشوية", 101, 131, name=LUNCH)
        .meal(2, "12:30", "麻婆豆腐と白いご飯と味噌汁", 110, 162, name=DINNER)
        .meal(3, "12:30", "김치찌개와 밥", 118, 150, name=DINNER)
        .meal(4, "12:30", "борщ с чёрным хлебом", 122, 158, name=LUNCH)
        .meal(5, "08:30", "சாம்பார் இட்லி", 117, 149, name=BREAKFAST)
        .meal(5, "19:30", "ข้าวผัดกุ้ง 🍤", 108, 181, name=DINNER)
        .week()
    )


def mmol() -> Week:
    diary = Diary(who=somebody(unit=Unit.MMOL_L, zone="Europe/London"))
    return (
        diary.meal(0, "12:30", "jacket potato", 117, 169, name=LUNCH)
        .meal(1, "18:30", "fish and peas", 104, 128, name=DINNER)
        .meal(3, "12:30", "egg sandwich", 133, 187, name=LUNCH)
        .activity(4, "17:00", "walked the dog", 25, before=160, after=122)
        .meal(5, "18:30", "lentil dal", 110, 131, name=DINNER)
        .week()
    )


def mmol_low() -> Week:
    diary = Diary(who=somebody(unit=Unit.MMOL_L, zone="Europe/London"))
    return (
        diary.reading(1, "10:15", 63)
        .caution(1, "10:15", "low")
        .meal(2, "12:30", "rice", 128, 239, name=LUNCH)
        .meal(3, "12:30", "curry", 140, "HI", name=LUNCH)
        .caution(3, "14:30", "very_high")
        .week()
    )


def pregnant() -> Week:
    diary = Diary(who=somebody(pregnant=True))
    diary.meal(0, "12:30", "rice and beans", 92, 128, name=LUNCH)
    return diary.meal(2, "12:30", "chapati and egg", 98, 141, name=LUNCH).week()


def own_goals() -> Week:
    diary = Diary(who=somebody(goals=Goals(before_low=90, before_high=150, after_high=200)))
    diary.meal(0, "12:30", "rice", 142, 192, name=LUNCH)
    return diary.meal(2, "12:30", "stew", 155, 210, name=LUNCH).week()


def many_lone() -> Week:
    diary, chance = Diary(), Random(7)  # noqa: S311 - invented values
    for day in range(6):
        for hour in (7, 10, 16, 22):
            diary.reading(day, f"{hour:02}:00", chance.randint(88, 190))
    return diary.meal(3, "12:30", "rice", 118, 166, name=LUNCH).week()


def crowded(pairs: int = 40, seed: int = 3) -> Week:
    """As many pairs as one can have: every meal and snack, with names in a row."""
    diary, chance = Diary(), Random(seed)  # noqa: S311
    dishes = ("rice and beans", "ugali, greens", "egg", "pasta", "lentil soup", "yam and fish")
    clocks = ("06:30", "09:00", "11:30", "14:00", "16:30", "19:00")
    for number in range(pairs):
        day, slot = divmod(number, len(clocks))
        before = chance.randint(88, 138)
        diary.meal(
            day,
            clocks[slot],
            dishes[chance.randrange(len(dishes))],
            before,
            before + chance.randint(4, 92),
            name=(BREAKFAST, SNACK, LUNCH, SNACK, SNACK, DINNER)[slot] if number % 3 else None,
            minutes=118,
        )
    return diary.week()


def fourteen() -> Week:
    diary, chance = Diary(), Random(11)  # noqa: S311
    for day in range(6):
        for clock, name in (("13:00", LUNCH), ("19:30", DINNER)):
            before = chance.randint(92, 140)
            dish = ("rice and beans", "bread and egg", "yam", "fish stew")[chance.randrange(4)]
            diary.meal(day, clock, dish, before, before + chance.randint(10, 80), name=name)
    diary.activity(2, "17:30", "walked", 30, before=152, after=118)
    return diary.activity(4, "17:30", "worked in the garden", 45, before=140, after=101).week()


def so_far() -> Week:
    diary = Diary().meal(0, "12:30", "rice and beans", 118, 154, name=LUNCH)
    diary.meal(2, "12:30", "lentil soup", 121, name=LUNCH)
    return diary.week(until=diary.at(2, "13:40"))


#: By name, with whether the week still runs.
WEEKS: dict[str, tuple[Callable[[], Week], bool]] = {
    make.__name__: (make, make is so_far)
    for make in (
        *(empty, one_pair, one_reading, only_before, good, mixed, with_low, with_hi, with_lo),
        *(washed, high_start, very_high_range, flat, falling, uncounted, long_names, scripts),
        *(mmol, mmol_low, pregnant, own_goals, many_lone, fourteen, so_far),
    )
}
WEEKS["crowded"] = (crowded, False)
