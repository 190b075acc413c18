"""How each kind of message queues, is retried and grows worthless.

A message can be lost, doubled or late; which of these is the least harm differs by kind. An
outcome is unsure when the chat's answer was lost: the message may or may not have arrived.
The whole table with its reasons is docs/delivery.md.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import timedelta

from bot.messages import Kind


@dataclass(frozen=True, slots=True, kw_only=True)
class Urgency:
    """The rules of one kind.

    `handicap` is how much younger a message of kind "reply" may be and still go first; since
    it is fixed, whatever waits long enough goes first in the end. That of a prompt is longer
    than a reply is worth sending: no reply grows too old behind the prompts of a rush.
    `again_after` are the waits before each further copy while the outcome is unsure. `worth` is
    how long (real time) it is worth sending; None: the saying tells it itself.
    """

    handicap: timedelta
    again_after: tuple[timedelta, ...]
    worth: timedelta | None

    @property
    def copies(self) -> int:
        """How many may arrive at most."""
        return 1 + len(self.again_after)


#: How long after it was made a caution that did not surely arrive is still said to a reader who
#: writes again.
CAUTION_OWED = timedelta(hours=24)

URGENCY: Mapping[Kind, Urgency] = {
    Kind.CAUTION: Urgency(
        handicap=timedelta(days=-1),
        # The last copy waits until a short outage of the chat program is over.
        again_after=(timedelta(seconds=5), timedelta(minutes=3)),
        worth=timedelta(minutes=30),
    ),
    Kind.REPLY: Urgency(
        handicap=timedelta(0),
        again_after=(timedelta(seconds=5),),
        worth=timedelta(minutes=10),
    ),
    Kind.PROMPT: Urgency(
        handicap=timedelta(minutes=15),
        again_after=(timedelta(seconds=30),),
        worth=None,
    ),
    Kind.DIGEST: Urgency(handicap=timedelta(minutes=30), again_after=(), worth=None),
    Kind.NOTE: Urgency(handicap=timedelta(minutes=30), again_after=(), worth=None),
}
