"""Which time belongs to which reading, meal or activity?"""

from collections import defaultdict
from collections.abc import Collection, Iterable, Sequence
from datetime import datetime, timedelta

from bot.localtime import shifted
from bot.parser.instants import Half, When

Place = tuple[int, int]


def shared_out(
    whens: Sequence[When],
    places: Iterable[Place],
    clauses: list[int],
    moments: Collection[int] = (),
) -> dict[int, When]:
    """Give each time to one thing: in its clause the nearest before it, else the nearest after.

    A clause that is nothing but a time gives it to what stands before it, at the beginning of
    the message to what comes, once all others have theirs (`a seizure an hour ago, 92 now`).
    `moments` are the tokens of words for a moment, which may stand between `now` and what is told
    (`now 2h after 166`). The result is by the place where the thing begins.
    """
    given: dict[int, When] = {}
    if not whens:
        return given
    known = sorted(places)
    alone = []
    within: dict[int, list[Place]] = defaultdict(list)  # by the clauses of both ends
    for place in known:
        for clause in {clauses[place[0]], clauses[place[1] - 1]}:
            within[clause].append(place)
    for when in whens:
        here = clauses[when.start]
        near = [place for place in within[here] if place[0] not in given]
        before_it = any(
            start >= when.end and all(at in moments for at in range(when.end, start))
            for start, _ in near
        )
        chosen = _nearest(near, when, forward=when.ago == 0 and before_it)  # `now 190`
        if chosen is not None:
            given[chosen[0]] = when
        elif not any(clauses[place[0]] == here for place in within[here]):
            alone.append(when)
    for when in alone:
        free = [place for place in known if place[0] not in given]
        if chosen := _nearest(free, when, forward=when.start == 0):
            given[chosen[0]] = when
    return given


def _nearest(places: list[Place], when: When, *, forward: bool) -> Place | None:
    first = min((place for place in places if place[0] >= when.end), default=None)
    last = max((place for place in places if place[0] < when.start), default=None)
    return (first or last) if forward else (last or first)


def days_apart(whens: list[When | None]) -> bool:
    """`145 today, 152 yesterday`: readings of different days are no pair."""
    days = [when for when in whens if when is not None]
    same = len(days) == len(whens) and len({(when.day, when.weekday) for when in days}) == 1
    return len(whens) > 1 and any(when.before_today for when in days) and not same


def in_order(taken: list[datetime | None], whens: list[When | None]) -> list[datetime | None]:
    """Half a day back where the earlier reading would lie behind the later one and its words
    leave the half of the day open (`131 at 7, 188 at 9` in the evening)."""
    ordered = list(taken)
    for at in range(len(ordered) - 2, -1, -1):
        when, this, following = whens[at], ordered[at], ordered[at + 1]
        if when is None or this is None or following is None or this <= following:
            continue
        if when.half is Half.EITHER and when.day is None and when.ago is None:
            ordered[at] = shifted(this, timedelta(hours=-12))
    return ordered
