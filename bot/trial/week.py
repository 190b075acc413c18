"""A week of an invented participant, told up to the meal of its Sunday.

For a visitor who wants to see how a week ends without writing one: play it, and the test after
Sunday's meal and the weekly picture are what comes next.
"""

from collections.abc import Iterator
from datetime import date, datetime, time, timedelta
from typing import Final

from bot.localtime import at_local
from bot.participants import Invitation
from bot.units import Unit

#: What the educator says of this participant. Lows are possible: the educator releases steps.
INVITATION: Final = Invitation(
    unit=Unit.MG_DL,
    main_meal=time(12, 30),
    may_go_low=True,
    ketone_risk=False,
    emergency_number="112",
)

#: The first line's instant is when the participant joins.
OPENS: Final = time(8, 30)

_TOLD: Final = """
0 09:00  {start}
0 09:01  yes
0 09:02  yes
0 12:24  138, rice and beans with bread
0 14:27  214
1 12:26  131 before, pasta with tomato sauce and juice
1 14:28  226
2 11:22  52
2 11:38  84
2 12:41  112, cod, potatoes and salad
2 14:42  163
3 12:27  129, rice and fish
3 14:30  188
4 12:25  126, chicken, salad and a little rice
4 14:26  152
5 12:31  124, bean soup and bread
5 13:05  walked 20 min
5 13:16  139
5 14:33  146
6 12:28  122, omelette and salad
"""


def last_monday(today: date) -> date:
    """The Monday of the last week that has ended by this day."""
    return today - timedelta(days=today.weekday() + 7)


def opening(monday: date, zone: str) -> datetime:
    """When the week begins, before anybody writes."""
    return at_local(monday, OPENS, zone)


def told(monday: date, zone: str, code: str) -> Iterator[tuple[datetime, str]]:
    """What the participant writes and when, beginning with the invitation's code."""
    for line in _TOLD.strip().splitlines():
        when, text = line.split("  ", 1)
        day, clock = when.split()
        at = at_local(monday + timedelta(days=int(day)), time.fromisoformat(clock), zone)
        yield at, text.format(start=f"/start {code}")
