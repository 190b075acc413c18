"""Which time belongs to which reading, meal or activity?"""

from collections.abc import Iterable

from bot.parser.times import When

Place = tuple[int, int]


def shared_out(
    whens: Iterable[When], places: Iterable[Place], clauses: list[int]
) -> dict[int, When]:
    """Give each time to one thing: in its clause the nearest before it, else the nearest after.

    A clause that is nothing but a time gives it to what stands before it, at the beginning of
    the message to what comes. The result is by the place where the thing begins.
    """
    given: dict[int, When] = {}
    known = sorted(places)
    for when in whens:
        here = clauses[when.start]
        free = [place for place in known if place[0] not in given]
        near = [
            place for place in free if clauses[place[0]] == here or clauses[place[1] - 1] == here
        ]
        chosen = _nearest(near, when, forward=False)
        if chosen is None and not any(clauses[place[0]] == here for place in known):
            chosen = _nearest(free, when, forward=when.start == 0)
        if chosen is not None:
            given[chosen[0]] = when
    return given


def _nearest(places: list[Place], when: When, *, forward: bool) -> Place | None:
    first = min((place for place in places if place[0] >= when.end), default=None)
    last = max((place for place in places if place[0] < when.start), default=None)
    return (first or last) if forward else (last or first)
