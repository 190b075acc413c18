"""`invite`: a one-time code for somebody to join with."""

import argparse
import re
import secrets
import sys
from datetime import time, timedelta
from difflib import get_close_matches
from zoneinfo import available_timezones

from bot import settings
from bot.localtime import known_zone
from bot.mendable import Mendable
from bot.participants import Invitation, Role
from bot.storage.store import Store
from bot.units import Unit
from bot.wiring import CLEAR_LETTERS
from bot.words.language import LANGUAGES, language
from scheduler.clock import real_now

NAME = "invite"
HELP = "print a one-time code to join with, and a link if the bot's name is known"

#: Three groups of four of 31 letters: 59 bits.
GROUPS, GROUP = 3, 4
#: A code is for somebody who is about to join.
LONGEST_DAYS = 3650
KNOWN = {"yes": True, "no": False, "unknown": None}


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """What is not told here is asked when the person joins."""
    parser.add_argument(
        "--zone",
        metavar="IANA",
        type=_zone,
        help="their zone, as in Europe/Rome (default: asked when they join)",
    )
    parser.add_argument(
        "--unit",
        type=_unit,
        choices=[unit.value for unit in Unit],
        help="of their meter (default: asked when they join)",
    )
    parser.add_argument(
        "--main-meal",
        metavar="HH:MM",
        type=_clock,
        help="its usual time (default: asked when they join)",
    )
    parser.add_argument(
        "--language",
        metavar="BCP47",
        type=_language,
        default="en",
        help=f"one of {', '.join(LANGUAGES)} (default: en)",
    )
    parser.add_argument(
        "--may-go-low",
        choices=KNOWN,
        default="unknown",
        help="whether their medicine can make them go low (default: unknown, treated as yes)",
    )
    parser.add_argument(
        "--ketone-risk",
        choices=KNOWN,
        default="unknown",
        help="whether ketones are a risk, as with insulin (default: unknown, treated as yes)",
    )
    parser.add_argument(
        "--quiet",
        metavar="HH:MM-HH:MM",
        type=_span,
        default=(time(22, 30), time(6, 30)),
        help="no prompts then (default: 22:30-06:30)",
    )
    parser.add_argument(
        "--emergency-number",
        metavar="NUMBER",
        type=_number,
        help="whom to call in danger, as dialled (default: the words `your emergency number`)",
    )
    parser.add_argument(
        "--educator",
        metavar="ID",
        help="public id of the educator who may be told (default: nobody)",
    )
    parser.add_argument(
        "--as",
        dest="role",
        choices=[role.value for role in Role],
        default=Role.PARTICIPANT.value,
        help="whom the code makes of its user (default: participant)",
    )
    parser.add_argument(
        "--valid-days",
        metavar="DAYS",
        type=int,
        default=14,
        help="how long the code opens (default: 14)",
    )


def run(args: argparse.Namespace) -> int:
    """Keep the invitation, print its code."""
    if not 1 <= args.valid_days <= LONGEST_DAYS:
        raise Mendable(f"--valid-days must be from 1 to {LONGEST_DAYS}")
    code = new_code()
    now = real_now()
    store = Store.open(settings.load().database)
    with store.turn() as work:
        work.invite(code, _invitation(args), now + timedelta(days=args.valid_days))
        name = work.fact("bot")
        unheard = args.educator is not None and work.educators.get(args.educator) is None
    store.close()
    sys.stdout.write(f"{code}\n")
    if name:
        sys.stdout.write(f"https://t.me/{name}?start={code}\n")
    if unheard:
        sys.stderr.write(
            f"afterplate: take care: no educator here has the id {args.educator} yet, so nobody "
            "would be told of this participant\n"
        )
    return 0


def new_code() -> str:
    """A fresh code, easy to read out."""
    groups = ("".join(secrets.choice(CLEAR_LETTERS) for _ in range(GROUP)) for _ in range(GROUPS))
    return "-".join(groups)


def _invitation(args: argparse.Namespace) -> Invitation:
    return Invitation(
        zone=args.zone,
        unit=Unit(args.unit) if args.unit else None,
        main_meal=args.main_meal,
        language=args.language,
        may_go_low=KNOWN[args.may_go_low],
        ketone_risk=KNOWN[args.ketone_risk],
        quiet_from=args.quiet[0],
        quiet_to=args.quiet[1],
        emergency_number=args.emergency_number,
        educator=args.educator,
        role=Role(args.role),
    )


def _zone(text: str) -> str:
    if known_zone(text):
        return text
    # Asked for by its city, or in other letters: said, not guessed.
    near = get_close_matches(text.casefold(), zones := _zones(), n=1, cutoff=0.75)
    meant = f": do you mean {zones[near[0]]}?" if near else ", as in Europe/Rome"
    raise argparse.ArgumentTypeError(f"unknown zone {text!r}{meant}")


def _zones() -> dict[str, str]:
    """All zones by their names and their cities, in small letters."""
    named = sorted(available_timezones())
    cities = {zone.rpartition("/")[2].casefold(): zone for zone in named if "/" in zone}
    return cities | {zone.casefold(): zone for zone in named}


def _unit(text: str) -> str:
    """A unit of the contract's, however its letters are written."""
    return next((unit.value for unit in Unit if unit.value.casefold() == text.casefold()), text)


def _number(text: str) -> str:
    """What can be dialled; it stands in the first words of an emergency caution."""
    number = " ".join(text.split())
    if not re.fullmatch(r"[0-9+*#(][0-9 +*#()/.-]{0,31}", number):
        raise argparse.ArgumentTypeError(f"{text!r} is not a telephone number")
    return number


def _language(text: str) -> str:
    """A language with a country (`es-MX`) is spoken as the language."""
    if language(text).code != text.split("-", maxsplit=1)[0].casefold():
        spoken = ", ".join(LANGUAGES)
        raise argparse.ArgumentTypeError(f"{text!r} is not spoken here: choose from {spoken}")
    return text


def _clock(text: str) -> time:
    """A time on the participant's own clock: hours and minutes, nothing else."""
    if not re.fullmatch(r"([01]?[0-9]|2[0-3]):[0-5][0-9]", text):
        raise argparse.ArgumentTypeError(f"{text!r} is not a time as in 18:30")
    hours, _, minutes = text.partition(":")
    return time(int(hours), int(minutes))


def _span(text: str) -> tuple[time, time]:
    begins, dash, ends = text.partition("-")
    if not dash:
        raise argparse.ArgumentTypeError(f"{text!r} is not a span as in 22:30-06:30")
    return _clock(begins), _clock(ends)
