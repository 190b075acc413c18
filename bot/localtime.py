"""Local clock times across changes of the clock. Nothing here reads a clock."""

import unicodedata
from datetime import UTC, date, datetime, time, timedelta, timezone
from functools import lru_cache
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

MINUTE = timedelta(minutes=1)
DAY = timedelta(days=1)


# A turn asks for the same few clock times of the same few days again and again.
@lru_cache(maxsize=1024)
def at_local(day: date, clock: time, zone: str) -> datetime:
    """Give the instant at which a local clock shows this time on this day.

    A time that a change of the clock skips is the first valid minute after it; one
    that comes twice is the first of the two. Raises ZoneInfoNotFoundError for an unknown zone.
    """
    place = ZoneInfo(zone)
    wanted = datetime.combine(day, clock.replace(second=0, microsecond=0), tzinfo=place)
    late, early = wanted.astimezone(UTC), wanted.replace(fold=1).astimezone(UTC)
    if late <= early:  # the usual case, or a time that comes twice: fold=0 is the first
        return wanted
    # Skipped: read with the offset from before the change the time lies after it (late),
    # read with the one from after it, before it (early). The change is in between.
    while late - early > MINUTE:
        middle = early + (late - early) // 2
        if middle.astimezone(place).utcoffset() == early.astimezone(place).utcoffset():
            early = middle
        else:
            late = middle
    return late.replace(second=0, microsecond=0).astimezone(place)


def shifted(moment: datetime, by: timedelta) -> datetime:
    """Add elapsed time (not clock time) and keep the zone."""
    if not isinstance(moment.tzinfo, ZoneInfo):  # an offset that never changes
        return moment + by
    return (moment.astimezone(UTC) + by).astimezone(moment.tzinfo)


def in_zone(moment: datetime, zone: str) -> datetime:
    """The same instant on the clock of that zone."""
    return moment.astimezone(ZoneInfo(zone))


def local_date(moment: datetime, zone: str) -> date:
    """The calendar date that this instant has in that zone."""
    return in_zone(moment, zone).date()


def minutes_between(earlier: datetime, later: datetime) -> float:
    """Elapsed minutes between two instants (negative if they are the other way round)."""
    # Through UTC: subtracting two datetimes of one ZoneInfo would compare wall clocks.
    return (later.astimezone(UTC) - earlier.astimezone(UTC)).total_seconds() / 60


def iso(moment: datetime) -> str:
    """ISO 8601 to the second, with offset."""
    return moment.isoformat(timespec="seconds")


def fixed(moment: datetime, zone: str) -> datetime:
    """The instant with the offset that the zone has then, as a record keeps it."""
    offset = in_zone(moment, zone).utcoffset() or timedelta(0)
    return moment.astimezone(timezone(offset))


#: Areas of the zone database in which a city may lie.
AREAS = (
    "Africa",
    "America",
    "America/Argentina",
    "Asia",
    "Atlantic",
    "Australia",
    "Europe",
    "Indian",
    "Pacific",
)


#: Cities that the zone database knows by an English name only, or by another city of the zone.
ALSO_NAMED = {
    "Ciudad_De_Guatemala": "America/Guatemala",
    "Ciudad_De_Mexico": "America/Mexico_City",
    "Ciudad_De_Panama": "America/Panama",
    "La_Habana": "America/Havana",
    "Nueva_York": "America/New_York",
    "Quito": "America/Guayaquil",
}


def zone_named(words: str) -> str | None:
    """The IANA zone with this name, or of the city with this name, accents or none; else None."""
    parted = unicodedata.normalize("NFD", words.strip())
    plain = "".join(letter for letter in parted if not unicodedata.combining(letter))
    name = "_".join(part[:1].upper() + part[1:] for part in plain.split())
    candidates = [words.strip(), name, *(f"{area}/{name}" for area in AREAS)]
    if name in ALSO_NAMED:
        candidates.append(ALSO_NAMED[name])
    return next((candidate for candidate in candidates if known_zone(candidate)), None)


#: Files beside the zones that are none: this machine's own clock and rules, and the same zones
#: again, with and without leap seconds.
NO_ZONES = ("localtime", "posixrules", "Factory", "posix/", "right/")


def known_zone(name: str) -> bool:
    """Whether the zone database has a zone of exactly this name."""
    if not name or name.startswith(("/", ".", *NO_ZONES)) or "\\" in name or "\x00" in name:
        return False
    try:
        ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return False
    return True
