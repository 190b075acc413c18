"""The real process killed twenty times over a thousand prompts: nothing lost, nothing thrice."""

from pathlib import Path

import pytest

from tests.faults.kill_ledger import run

pytestmark = [pytest.mark.live, pytest.mark.slow, pytest.mark.timeout(300)]


async def test_twenty_kills_lose_no_prompt_and_no_message_and_double_within_the_class(
    tmp_path: Path,
) -> None:
    ledger = await run(tmp_path, kills=20, prompts=1000)
    assert ledger.kills == 20
    assert ledger.prompts_lost == 0
    assert ledger.most_copies <= 2
    assert ledger.messages_kept == ledger.messages_written
    assert ledger.replies_made == ledger.messages_written
    assert ledger.replies_lost == 0
    assert ledger.replies_expired == 0
