"""People's records within one transaction: read by set, and decoded once for several turns."""

import threading
from collections import OrderedDict, defaultdict
from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection

from bot.participants import Participant
from bot.record import Event, Record
from bot.storage import codec
from bot.storage.backend import Backend
from bot.storage.codec import to_ms
from bot.storage.statements import EVENTS, PEOPLE, RECENT_EVENTS
from bot.turns.turn import Opened, Turn

#: How far back a turn looks without asking for the whole record.
RECENT = timedelta(days=35)
#: How far back a folded record may reach before it is folded anew from what is recent.
FOLDED = timedelta(days=42)
#: How many people's decoded events are kept at hand.
CACHED_PEOPLE = 64


@dataclass(slots=True)
class Known:
    """A person's decoded events from `start` on; `start` 0 with `whole` is the whole record."""

    made_real: int
    body: str
    participant: Participant
    events: list[Event]
    last: int
    whole: bool
    start: int = 0
    record: Record | None = None  # the recent events folded, as the last turn left them
    folded_from: datetime | None = None

    def recent(self, now: datetime) -> tuple[Event, ...]:
        """From the first event of the last 35 days on, in the order of their ids."""
        since = now - RECENT
        while self.start < len(self.events) and self.events[self.start].at < since:
            self.start += 1
        return tuple(self.events[self.start :])

    def folded(self, now: datetime) -> Record | None:
        """The record that the last turn left; None if it is too long or not at hand."""
        if self.folded_from is None or self.folded_from < now - FOLDED:
            self.record, self.folded_from = None, now - RECENT
        return self.record


class Cache:
    """Decoded events of the people last heard from; the database is asked what is newer.

    A turn has its person to itself until it has committed; what it then remembers may meet the
    next turn of the same person in another thread, so both change what is known under `lock`.
    """

    def __init__(self) -> None:
        self._known: OrderedDict[str, Known] = OrderedDict()
        self.lock = threading.Lock()

    def get(self, who: str, made_real: int) -> Known | None:
        """What is known of this life of the person."""
        with self.lock:
            known = self._known.get(who)
            if known is None or known.made_real != made_real:
                return None
            self._known.move_to_end(who)
            return known

    def peek(self, who: str) -> Known | None:
        """What is known of the person, whichever life it was."""
        return self._known.get(who)

    def put(self, who: str, known: Known) -> None:
        """Keep it, and let go of the person not heard from for longest."""
        with self.lock:
            self._known[who] = known
            if len(self._known) > CACHED_PEOPLE:
                self._known.popitem(last=False)

    def drop(self, who: str) -> None:
        """Forget a person."""
        self._known.pop(who, None)


#: A row of `statements.PEOPLE` or `PERSON_OF_CHAT`.
_Row = Any


class Records:
    """The people opened in one transaction."""

    def __init__(self, connection: Connection, cache: Cache, backend: Backend) -> None:
        self._connection = connection
        self._cache = cache
        self._find = backend.find
        #: When each of those opened was to be woken next.
        self.wakes: dict[str, datetime | None] = {}

    def open_all(self, people: Iterable[str], now: datetime) -> dict[str, Opened]:
        """Lock these people and load their last 35 days; whoever is nobody is left out."""
        # In one order, so that two who open the same people do not wait for each other.
        told = {"people": sorted(set(people))}
        return self.opened(self._find(self._connection, PEOPLE, told), now)

    def opened(self, rows: Collection[_Row], now: datetime) -> dict[str, Opened]:
        """People of these rows, which this transaction has locked."""
        return {who: self._open(who, known, now) for who, known in self._known(rows, now).items()}

    def whole(self, who: str) -> tuple[Event, ...]:
        """The whole record of a person; nothing of nobody."""
        rows = self._find(self._connection, PEOPLE, {"people": [who]})
        known = self._known(rows, codec.EPOCH).get(who)
        return () if known is None else self._whole(who, known)

    def changed(self, participant: Participant) -> bool:
        """Whether a person is another than the row that was read of them says."""
        known = self._cache.peek(participant.id)
        if known is not None and known.participant is participant:
            return False  # most turns: no field has to be compared to know it
        return known is None or known.participant != participant

    def remember(self, turn: Turn) -> None:
        """Its transaction stands: the next turn begins from where this one ended."""
        known = self._cache.peek(turn.participant.id)
        if known is None or not turn.events:
            return
        with self._cache.lock:
            if known.last == turn.events[0].id - 1:
                known.events.extend(turn.events)
                known.last = turn.events[-1].id
                known.record = turn.record

    def forget(self, people: Iterable[str]) -> None:
        """Keep nothing of them at hand."""
        for who in people:
            self._cache.drop(who)

    def _open(self, who: str, known: Known, now: datetime) -> Opened:
        return Opened(
            participant=known.participant,
            events=known.recent(now),
            last_id=known.last,
            whole=lambda: self._whole(who, known),
            record=known.folded(now),
        )

    def _known(self, rows: Collection[_Row], now: datetime) -> dict[str, Known]:
        known, missing = {}, {}
        for row in rows:
            at_hand = self._at_hand(row)
            if at_hand is None:
                missing[row.id] = row
            else:
                known[row.id] = at_hand
        return known | self._load(missing, now) if missing else known

    def _at_hand(self, row: _Row) -> Known | None:
        """What is known of a person from before, brought up to their row."""
        wake = row.next_wake_ms
        self.wakes[row.id] = None if wake is None else codec.from_ms(wake)
        known = self._cache.get(row.id, row.made_real)
        if known is None:
            return None
        if known.body != row.body:
            known.body, known.participant = row.body, codec.participant_of(row.body)
            known.record = None
        if known.last < row.last_entry:
            newer = self._events(row.id, since_id=known.last)
            with self._cache.lock:
                known.events.extend(event for event in newer if event.id > known.last)
                known.last = row.last_entry
                known.record = None
        return known

    def _load(self, rows: Mapping[str, _Row], now: datetime) -> dict[str, Known]:
        """Read the recent events of all of these together."""
        found: defaultdict[str, list[Event]] = defaultdict(list)
        told = {"people": list(rows), "since": to_ms(now - RECENT)}
        for *event, who in self._find(self._connection, RECENT_EVENTS, told):
            found[who].append(codec.event_of(event))
        loaded = {}
        for who, row in rows.items():
            events = found[who]
            loaded[who] = Known(
                made_real=row.made_real,
                body=row.body,
                participant=codec.participant_of(row.body),
                events=events,
                last=row.last_entry,
                whole=events[0].id <= 1 if events else not row.last_entry,
            )
            self._cache.put(who, loaded[who])
        return loaded

    def _whole(self, who: str, known: Known) -> tuple[Event, ...]:
        if not known.whole:
            loaded = self._events(who, since_id=0)
            known.start += len(loaded) - len(known.events)
            known.events, known.whole = loaded, True
        return tuple(known.events)

    def _events(self, who: str, *, since_id: int) -> list[Event]:
        rows = self._find(self._connection, EVENTS, {"who": who, "since": since_id})
        return [codec.event_of(row) for row in rows]
