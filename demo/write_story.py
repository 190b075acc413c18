"""Writes story.jsonl: two weeks of three people who do not exist.

    .venv/bin/python demo/write_story.py > demo/story.jsonl

Each person's days are written below as they would be told, by their own clock: the day of March
2026, the time, and what they text. The lines of all three are put in order of their instants.
"""

import json
import sys
from datetime import datetime
from zoneinfo import ZoneInfo

# A retired tram driver in Lisbon. Tablets that cannot bring lows, so he takes each step himself.
ARTUR = {
    "id": "artur",
    "unit": "mg/dL",
    "zone": "Europe/Lisbon",
    "main_meal": "13:00",
    "may_go_low": False,
    "ketone_risk": False,
    "emergency_number": "112",
}
ARTUR_TEXTS = """
02 12:50  134, rice and beans with bread
02 14:52  212
03 12:47  128 before, potatoes, cod and bread
03 14:49  196
03 17:30  50 strips
04 12:55  126, pasta with tomato sauce and orange juice
04 14:56  221
05 12:50  131, rice and fish
05 14:51  194
06 12:52  125, bean soup and bread
06 14:54  171
06 19:10  next step
07 12:58  124, grilled chicken, salad and a little rice
07 15:00  158
08 12:50  129, cod with greens and beans
08 14:50  152
08 18:05  less
08 18:20  thank you
09 12:50  122, omelette and salad
09 14:55  139
10 12:49  127, rice and beans, half portion
10 14:51  168
10 19:00  next step
11 12:50  124, half a plate of salad, chicken and potatoes
11 14:52  149
11 15:30  can I eat mango?
12 12:51  photo: 121, half a plate of vegetables, fish and rice
12 14:50  146
13 12:50  126, half a plate of cabbage, beans and sausage
13 14:52  151
13 18:00  next step
14 12:50  123, rice and beans
14 13:35  walked 25 min
14 13:46  141
14 14:52  138
15 12:50  119, chicken, salad and potatoes
15 13:30  walked 20 min, 136
15 14:50  133
"""

# A market seller in Accra. Her tablets can bring lows, so her nurse releases each step.
EFUA = {
    "id": "efua",
    "unit": "mmol/L",
    "zone": "Africa/Accra",
    "main_meal": "18:30",
    "week_ends": "saturday",
    "digest_at": "17:00",
    "quiet": ["22:30", "05:00"],
    "may_go_low": True,
    "ketone_risk": False,
    "emergency_number": "112",
    "tell_educator": True,
}
EFUA_TEXTS = """
02 18:20  7.4 before, fufu and light soup
02 20:22  12.1
03 18:25  7.1, banku and okro stew
03 20:30  11.4
04 11:40  feeling shaky and sweaty
04 11:44  3.4
04 11:47  sugar water
04 12:01  4.6
04 13:03  6.2
04 18:30  6.8, kenkey and fish
04 20:31  10.9
05 18:22  71, rice and stew
05 18:23  sorry 7.1
05 20:25  11.8
06 18:28  6.9, jollof rice and chicken
06 20:29  12.6
07 18:40  7.0, boiled yam and kontomire
07 20:41  10.2
08 09:15  next step
08 18:30  6.9, plantain and beans
08 20:32  11.1
09 18:31  7.2, kontomire stew, egg and half the yam
09 20:30  8.9
10 18:20  6.8, grilled tilapia, salad and a little banku
10 20:24  8.4
10 20:26  sorry 9.4
11 19:00  6.7, fried rice
11 19:01  and a cola
12 18:30  6.6, okro stew with fish
12 20:35  7.9
13 10:30  danced 30 min, 6.1
13 18:25  6.5, beans and gari
13 18:30  not gari, plantain
13 20:27  9.1
14 18:30  6.4, groundnut soup and a small rice ball
14 20:33  9.0
15 18:20  6.6 before, tilapia and salad
15 20:22  7.4
"""

# A hospital cleaner in Chicago who works nights and sleeps by day. The clock goes forward in the
# night of the 8th, and in her second week she does not write for days.
JUNE = {
    "id": "june",
    "unit": "mg/dL",
    "zone": "America/Chicago",
    "main_meal": "01:30",
    "digest_at": "17:30",
    "quiet": ["09:30", "16:30"],
    "may_go_low": False,
    "ketone_risk": True,
    "emergency_number": "911",
}
JUNE_TEXTS = """
03 01:25  148, turkey sandwich and chips
03 03:30  203
04 01:30  152, pizza
04 03:33  238
05 01:28  141, chicken noodles and an apple
05 03:31  189
06 01:30  312, donut
06 01:38  washed, 164
06 03:33  219
07 17:40  very thirsty
07 17:46  186
08 01:15  144, ham sandwich and salad
08 04:18  161
09 02:00  139, chili with beans
09 04:03  172
13 16:45  every day
14 01:32  146, chicken salad and an apple
14 02:10  walked 15 min
14 02:22  151
14 03:35  143
15 01:30  143, soup and half a sandwich
15 03:31  159
"""

JOINING = "02 09:00"
END = datetime(2026, 3, 15, 18, 0, tzinfo=ZoneInfo("America/Chicago"))


def instant(day_and_time: str, zone: str) -> datetime:
    """The instant of `DD HH:MM` in March 2026 on that zone's clock."""
    return datetime.strptime(f"2026-03-{day_and_time}", "%Y-%m-%d %H:%M").replace(
        tzinfo=ZoneInfo(zone)
    )


def lines_of(person: dict[str, object], texts: str) -> list[tuple[datetime, dict[str, object]]]:
    """A person's lines of the story, each with its instant."""
    zone = str(person["zone"])
    lines: list[tuple[datetime, dict[str, object]]] = [(instant(JOINING, zone), {"enrol": person})]
    for line in texts.strip().splitlines():
        when, text = line.split("  ", 1)
        told: dict[str, object] = {"from": person["id"], "text": text.removeprefix("photo: ")}
        if text.startswith("photo: "):
            told["photo"] = True
        lines.append((instant(when, zone), told))
    return lines


def main() -> None:
    """Print the story."""
    lines = [
        *lines_of(ARTUR, ARTUR_TEXTS),
        *lines_of(EFUA, EFUA_TEXTS),
        *lines_of(JUNE, JUNE_TEXTS),
        (END, {"pass": True}),
    ]
    for at, fields in sorted(lines, key=lambda line: line[0].timestamp()):
        sys.stdout.write(json.dumps({"at": at.isoformat(), **fields}, ensure_ascii=False) + "\n")


if __name__ == "__main__":
    main()
