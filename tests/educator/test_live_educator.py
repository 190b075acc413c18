"""An educator's chat through the real client, the real file and the real alarm clock."""

from io import BytesIO

import pytest
from pypdf import PdfReader

from bot.participants import Invitation, Role
from tests.trial.conftest import LISBON, Talk, talking

pytestmark = pytest.mark.live


async def test_educator_joins_invites_and_is_alerted_by_buttons() -> None:
    async with talking() as teacher:
        await a_morning_with(teacher)


async def a_morning_with(teacher: Talk) -> None:
    trial = teacher.trial
    code = trial.invite(Invitation(zone=LISBON, role=Role.EDUCATOR))
    answers = (f"/start {code}", "yes", "Mon-Fri 8:00-16:00", "none", "invite", "yes", LISBON)
    for answer in (*answers, "mg/dL", "English", "ask them", "no", "no", "none", "112", "Ana"):
        [told] = await teacher.say(answer)
    code = told.text.split("/start ")[1].split()[0]

    participant = trial.server.chats.open("Ana")
    for text in (f"/start {code}", "yes", "yes", "it varies", "48"):
        trial.server.chats.say(participant, text)
        await trial.at_rest()
    caution = trial.server.sent_to(participant)[-1].text
    assert caution.startswith("Take 15 g of fast sugar now")

    joined, alert = await teacher.heard()
    assert "Ana" in joined.text
    assert "very low" in alert.text
    assert "48 mg/dL" in alert.text
    assert "Nobody watches this chat day and night" in alert.text
    [seen, called, closed] = alert.buttons
    for button, words in ((seen, "seen"), (called, "called"), (closed, "closed")):
        [answer] = await teacher.say(button)
        assert words in answer.text

    [roster] = await teacher.say("roster")
    assert "SAFETY" in roster.text
    [page] = await teacher.say(roster.buttons[0])
    assert "Lowest 48 mg/dL" in page.text
    chart = await teacher.say("chart ana")
    assert any(sent.picture for sent in chart)
    [printed] = await teacher.say("print ana")
    assert printed.file is not None
    assert "48" in PdfReader(BytesIO(printed.file.body)).pages[0].extract_text()
