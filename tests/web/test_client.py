"""One client's record: her words beside what was read, corrections kept beside them, nothing for the wrong eyes."""

from reminders.store.tables import ExerciseSession
from tests.clinic import ANA
from tests.web.desk import Desk


def weeks_of_ana(desk: Desk, *replies: str) -> int:
    client_id = desk.world.enrol(precautions="none known")
    desk.world.pass_time(days=2)
    for words in replies:
        desk.world.plan()
        desk.world.send()
        desk.world.hear(words, ANA)
        desk.world.pass_time(days=2 if desk.world.now.weekday() != 4 else 3)
    return client_id


def test_her_words_stand_beside_what_was_read_and_why(desk: Desk) -> None:
    client_id = weeks_of_ana(desk, "done 2x10 pain 3", "all of it, p4")

    page = desk.signed_in("ben@example.org").get(f"/clients/{client_id}").text

    assert "“done 2x10 pain 3”" in page
    assert "Read as: all done, 2x10, pain 3." in page
    assert "<svg" in page
    assert 'role="img"' in page


def test_a_correction_is_kept_and_counts_and_the_raw_words_stay(desk: Desk) -> None:
    client_id = weeks_of_ana(desk, "done pain 3")
    session = desk.world.sessions(client_id)[0]
    ben = desk.signed_in("ben@example.org")

    answer = ben.post(
        f"/sessions/{session.id}/correct", completed="part", pain="5", sets="", reps="", why="she said so"
    )

    assert answer.status_code == 303
    after = desk.world.rows(ExerciseSession, id=session.id)[0]
    assert (after.state, after.pain) == ("part", 5)
    page = ben.get(f"/clients/{client_id}").text
    assert "“done pain 3”" in page
    assert "Corrected by ben@example.org: she said so" in page


def test_an_upward_correction_raises_as_a_new_rating_would(desk: Desk) -> None:
    client_id = weeks_of_ana(desk, "done pain 3")
    session = desk.world.sessions(client_id)[0]

    desk.signed_in("ben@example.org").post(f"/sessions/{session.id}/correct", completed="all", pain="8")

    assert [alert.rule for alert in desk.world.alerts(client_id)] == ["severe_pain"]


def test_an_admin_sees_neither_words_nor_pain(desk: Desk) -> None:
    client_id = weeks_of_ana(desk, "done pain 3")

    assert desk.signed_in("fay@example.org").get(f"/clients/{client_id}").status_code == 403


def test_another_clinics_therapist_finds_nobody(desk: Desk) -> None:
    client_id = weeks_of_ana(desk, "done pain 3")
    cleo = desk.signed_in("cleo@example.org")

    assert cleo.get(f"/clients/{client_id}").status_code == 404
    assert cleo.post(f"/clients/{client_id}/note", words="x").status_code == 404


def test_a_note_is_kept_with_who_wrote_it(desk: Desk) -> None:
    client_id = weeks_of_ana(desk)
    ben = desk.signed_in("ben@example.org")

    ben.post(f"/clients/{client_id}/note", words="Prefers mornings.")

    assert "Prefers mornings." in ben.get(f"/clients/{client_id}").text


def test_what_a_client_writes_is_never_markup(desk: Desk) -> None:
    client_id = weeks_of_ana(desk, "done pain 3 <script>alert(1)</script>")

    page = desk.signed_in("ben@example.org").get(f"/clients/{client_id}").text

    assert "<script>alert" not in page
    assert "&lt;script&gt;alert(1)" in page
