"""Words from a shared phone that nobody was named for: the therapist sees on whose phone, and says whose they are."""

import pytest

from reminders.flows import receive
from reminders.store.tables import ClinicNote
from tests.clinic import ANA
from tests.web.desk import Desk

FIRST, SECOND = "done, pain 4", "it was one of us"


@pytest.fixture
def couple(desk: Desk) -> tuple[int, int]:
    """Let words of Ana's and Hugo's phone come to the desk; return their ids."""
    hugo = desk.world.enrol("Hugo Ruiz", holder="shared")
    ana = desk.world.enrol(holder="shared")
    desk.world.pass_time(days=2)
    desk.world.plan()
    desk.world.send()
    for words in (FIRST, SECOND):
        desk.world.pass_time(minutes=5)
        desk.world.hear(words)
    return ana, hugo


def note_of(desk: Desk, words: str) -> ClinicNote:
    found: ClinicNote = desk.world.rows(ClinicNote, words=words)[0]
    return found


def test_the_day_names_everybody_on_that_phone(desk: Desk, couple: tuple[int, int]) -> None:
    page = desk.signed_in("ben@example.org").get("/today").text

    assert f"“{FIRST}”" in page
    assert "Somebody unknown" not in page
    for name in ("Ana Ruiz", "Hugo Ruiz"):
        assert f"It was {name}" in page


def test_what_she_wrote_is_then_read_again_as_hers_and_said_back(desk: Desk, couple: tuple[int, int]) -> None:
    ana, hugo = couple
    ben, note = desk.signed_in("ben@example.org"), note_of(desk, FIRST)

    assert ben.post(f"/notes/{note.id}/hers", client=ana).status_code == 303
    receive.handle_waiting(desk.world.db, desk.world.now)

    assert (desk.world.sessions(ana)[0].state, desk.world.sessions(ana)[0].pain) == ("done", 4)
    assert desk.world.reports(hugo) == []
    assert [row.details["r"]["pain"] for row in desk.world.queued("thanks")] == [4]
    assert FIRST not in ben.get("/today").text
    assert ben.post(f"/notes/{note.id}/hers", client=hugo).status_code == 409


def test_only_somebody_on_that_phone_may_be_named(desk: Desk, couple: tuple[int, int]) -> None:
    other = desk.world.enrol("Cora Bell", "+12025550102")

    answer = desk.signed_in("ben@example.org").post(f"/notes/{note_of(desk, FIRST).id}/hers", client=other)

    assert answer.status_code == 409
    assert desk.world.reports(other) == []
    assert ANA not in answer.text
