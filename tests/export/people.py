"""Records to write out: the three people of the demo's story, and a diary that holds every kind."""

from functools import cache
from pathlib import Path

from bot.entries import Moment, Skip, Step, Strips, Suggests, Symptom, Treatment
from bot.export.lines import Line, digest_line
from bot.glucose.week import digest_instants, week, week_of
from bot.messages import Incoming
from bot.record import Record, fold
from bot.replay.story import Enrol, Message, Pass, read_story
from bot.wiring import Replay
from demo.diary import Diary, somebody

STORY = Path(__file__).parents[2] / "demo" / "story.jsonl"


@cache
def told() -> tuple[Record, ...]:
    """What the demo's three people leave behind, played through the live parts."""
    replay = Replay()
    for line in read_story(STORY.read_text(encoding="utf-8").splitlines()):
        match line:
            case Enrol():
                replay.enrol(line.participant, line.at)
            case Pass():
                replay.pass_to(line.at)
            case Message():
                replay.hear(
                    Incoming(
                        update=line.line,
                        chat=line.sender,
                        message=line.id or f"line {line.line}",
                        at=line.at,
                        said_at=line.at,
                        text=line.text,
                        by=line.by,
                    )
                )
    records = tuple(fold(person, replay.events(person.id)) for person in replay.participants())
    replay.close()
    return records


def everything(**known: object) -> Record:
    """A fortnight with an entry of every kind, a washed repeat, HI and LO, and words to trip on."""
    diary = Diary(who=somebody(**known))
    diary.meal(0, "12:30", "rice and beans", 118, 154).meal(1, "19:00", "pasta", 122, 204)
    diary.meal(2, "12:30", '=HYPERLINK("x")', 78, 150).meal(3, "12:30", "línea\u2028dos", 120)
    diary.activity(1, "17:30", "walked", 20, before=170, after=129)
    diary.reading(4, "11:00", "LO").reading(4, "11:16", 84, Moment.RECHECK)
    diary.tell(diary.at(4, "11:02"), Treatment(text="sugar", taken_at=diary.at(4, "11:02")))
    diary.tell(diary.at(4, "10:59"), Symptom(text="shaky", suggests=Suggests.LOW))
    diary.reading(5, "21:00", 310).reading(5, "21:12", 188)
    diary.reading(6, "20:00", "HI").reading(7, "07:00", 101, Moment.FASTING)
    diary.tell(diary.at(7, "12:00"), Skip(reason="@work"))
    diary.tell(diary.at(7, "12:01"), Strips(left=23))
    diary.step(7, "13:00", Step.LIGHTER_MEAL).answer(8, "18:05", "hunger", "less")
    diary.caution(4, "11:00", "very_low").meal(9, "12:30", "lentil soup", 110, 141)
    return diary.record()


def digests(record: Record) -> list[Line]:
    """The digests of the record's first ten weeks."""
    lines = []
    instants = digest_instants(record.participant, record.participant.joined_at)
    for instant, _ in zip(instants, range(10), strict=False):
        start, end, _, _ = week_of(record.participant, instant)
        lines.append(digest_line(week(record, start=start, end=end), None))
    return lines
