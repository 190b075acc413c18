"""Two weeks after joining: the educator gets what a visit needs, and a reminder to call."""

from bot.educator.visits import due_visits, reminded
from bot.participants import Participant
from bot.turns.teaching_desk import Lesson, unasked
from bot.turns.teaching_showing import person_buttons, person_words


def tell_visits(lesson: Lesson) -> None:
    """Give the reminders that are due, each with the page to print where values are shared."""
    due = due_visits(lesson.educator, lesson.now)
    people = {person.id: person for person in lesson.desk.own}
    for visit in due:
        person = people.get(visit.participant)
        if person is not None:
            _tell(lesson, person)
    lesson.educator = reminded(lesson.educator, due, lesson.now)


def _tell(lesson: Lesson, person: Participant) -> None:
    say, who, shares = lesson.asks, lesson.who(person), person.tell_educator
    text = (say.visit if shares else say.visit_not_shared).format(who=who)
    lesson.says.append(
        unasked(
            lesson.educator,
            f"{text}\n\n{person_words(lesson, person)}" if shares else text,
            f"visit:{person.id}",
            lesson.now,
            buttons=person_buttons(lesson, person) if shares else (),
            attachment=f"record:{person.id}" if shares else None,
        )
    )
