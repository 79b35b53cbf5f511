"""The therapist's day: what stands on it, in which order, and what each button does."""

from sqlmodel import col, select

from reminders.store.tables import Alert, Audit, Client, Hold, Outbound
from tests.clinic import ANA
from tests.web.desk import Desk

CORA = "+12025550102"


def ana_hurts(desk: Desk, words: str = "done pain 9") -> int:
    client_id = desk.world.enrol(precautions="none known")
    desk.world.pass_time(days=2)
    desk.world.plan()
    desk.world.send()
    desk.world.hear(words, ANA)
    return client_id


def test_a_row_says_who_what_she_wrote_why_and_what_may_be_done(desk: Desk) -> None:
    ana_hurts(desk)

    page = desk.signed_in("ben@example.org").get("/today")

    assert page.status_code == 200
    for words in (
        "Ana Ruiz",
        "“done pain 9”",
        "Pain 9: 8 and more is severe.",
        "I have it",
        f"Call {ANA}",
        "Write back",
    ):
        assert words in page.text
    assert "queued" in page.text


def test_a_clinic_apart_sees_nothing(desk: Desk) -> None:
    ana_hurts(desk)

    assert "Nothing needs you now" in desk.signed_in("cleo@example.org").get("/today").text


def test_danger_stands_before_pain_before_new_ones(desk: Desk) -> None:
    ana_hurts(desk)
    desk.world.enrol("Cora Bell", CORA, precautions="")

    page = desk.signed_in("ben@example.org").get("/today").text

    assert page.index('id="danger"') < page.index('id="to-check"')
    assert "Cora Bell" in page


def test_acknowledging_here_tells_the_client_who_has_read_it(desk: Desk) -> None:
    client_id = ana_hurts(desk)
    alert = desk.world.alerts(client_id)[0]

    answer = desk.signed_in("ben@example.org").post(f"/alerts/{alert.id}/acknowledge")

    assert answer.headers["location"] == "/today?done=acknowledged"
    after = desk.world.alerts(client_id)[0]
    assert (after.state, after.acknowledged_by, after.acknowledged_how) == (
        "acknowledged",
        "ben@example.org",
        "console",
    )
    assert [row.details["reader"] for row in desk.world.queued("read_by")] == ["Ben Ames"]


def test_closing_asks_what_was_done_and_an_urgent_one_a_note(desk: Desk) -> None:
    client_id = ana_hurts(desk)
    alert = desk.world.alerts(client_id)[0]
    ben = desk.signed_in("ben@example.org")

    assert ben.post(f"/alerts/{alert.id}/close", outcome="called").status_code == 422
    assert ben.post(f"/alerts/{alert.id}/close", outcome="", note="x").status_code == 422
    assert ben.post(f"/alerts/{alert.id}/close", outcome="called", note="rang her, resting").status_code == 303
    assert desk.world.alerts(client_id)[0].outcome == "called"


def test_writing_back_goes_once_however_often_the_form_is_sent(desk: Desk) -> None:
    client_id = ana_hurts(desk)
    ben = desk.signed_in("ben@example.org")

    for _ in range(2):
        assert ben.post(f"/clients/{client_id}/write", words="Rest today. I call at 3.", once="77").status_code == 303

    rows = desk.world.queued("therapist_note")
    assert [(row.to, row.details["words"]) for row in rows] == [(ANA, "Rest today. I call at 3.")]
    assert desk.world.client(client_id).staff_wrote_at == desk.world.now


def test_writing_to_someone_who_opted_out_is_refused_with_the_way_out(desk: Desk) -> None:
    client_id = ana_hurts(desk, "STOP")

    answer = desk.signed_in("ben@example.org").post(f"/clients/{client_id}/write", words="Hello")

    assert answer.status_code == 409
    assert "phone instead" in answer.text
    assert not desk.world.queued("therapist_note")


def test_a_hold_is_cleared_by_a_therapist_and_told_once(desk: Desk) -> None:
    client_id = ana_hurts(desk)
    ben = desk.signed_in("ben@example.org")

    assert desk.world.rows(Hold, client_id=client_id)[0].ended_at is None
    assert ben.post(f"/clients/{client_id}/clear").status_code == 303
    assert ben.post(f"/clients/{client_id}/clear").status_code == 409

    assert desk.world.rows(Hold, client_id=client_id)[0].ended_by == "ben@example.org"
    assert len(desk.world.queued("hold_cleared")) == 1
    assert desk.world.client(client_id).next_session_easy


def test_a_cover_sees_her_colleagues_clients_while_she_covers(desk: Desk) -> None:
    from datetime import timedelta

    from reminders.store.tables import Clinic, Staff

    client_id = ana_hurts(desk)
    today = desk.world.now.date()
    with desk.world.db.begin() as tx:
        ben = tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one()
        clinic = tx.exec(select(Clinic).where(col(Clinic.id) == ben.clinic_id)).one()
        gil = Staff(clinic_id=clinic.id or 0, role="therapist", name="Gil Roe", email="gil@example.org")
        tx.add(gil)
        tx.flush()
        ben.cover_id, ben.cover_from_on, ben.cover_until_on = gil.id, today, today + timedelta(days=2)
        tx.add(ben)
    alert = desk.world.alerts(client_id)[0]
    assert "Ana Ruiz" in desk.signed_in("gil@example.org").get("/today").text

    desk.world.pass_time(days=3)

    gil_later = desk.signed_in("gil@example.org")
    assert "Ana Ruiz" not in gil_later.get("/today").text
    assert gil_later.post(f"/alerts/{alert.id}/acknowledge").status_code == 404


def test_every_view_and_change_leaves_a_line_in_the_log(desk: Desk) -> None:
    client_id = ana_hurts(desk)
    ben = desk.signed_in("ben@example.org")
    ben.get("/today")
    ben.post(f"/clients/{client_id}/easy")

    lines = [(row.by, row.action) for row in desk.world.rows(Audit) if row.by == "ben@example.org"]

    assert lines == [("ben@example.org", "day's list viewed"), ("ben@example.org", "easy day set")]


def test_what_she_was_told_is_shown_with_what_became_of_it(desk: Desk) -> None:
    ana_hurts(desk)
    with desk.world.db.begin() as tx:
        for row in tx.exec(select(Outbound).where(Outbound.kind == "danger")):
            row.state = "failed"
            tx.add(row)

    assert "NOT delivered" in desk.signed_in("ben@example.org").get("/today").text


def test_nothing_of_another_client_is_changed(desk: Desk) -> None:
    client_id = ana_hurts(desk)
    other = desk.world.enrol("Cora Bell", CORA)
    desk.signed_in("ben@example.org").post(f"/clients/{client_id}/easy")

    assert not desk.world.rows(Client, id=other)[0].next_session_easy
    assert not desk.world.rows(Alert, client_id=other)


def test_whose_a_sign_from_a_shared_phone_was_is_said_here_and_ends_the_others_alert(desk: Desk) -> None:
    ana, eva = (desk.world.enrol(name, ANA, holder="shared") for name in ("Ana Ruiz", "Eva Ruiz"))
    desk.world.hear("fell down the stairs, cannot get up", ANA)
    ben = desk.signed_in("ben@example.org")
    page = ben.get("/today").text
    alert = desk.world.alerts(ana)[0]
    assert "“fell down the stairs, cannot get up”" in page, "whose it was is open, what was said is not"
    assert ("one of two" in page, "It was Ana Ruiz" in page, "It was Eva Ruiz" in page) == (True, True, True)

    assert ben.post(f"/alerts/{alert.id}/hers").status_code == 303

    assert {row.client_id: row.state for row in desk.world.alerts()} == {ana: "open", eva: "closed"}
    assert [row.client_id for row in desk.world.rows(Hold) if row.ended_at is None] == [ana]
    logged = {row.client_id: row.details["is_hers"] for row in desk.world.rows(Audit, action="whose it was settled")}
    assert logged == {ana: True, eva: False}
    assert ben.post(f"/alerts/{alert.id}/hers").status_code == 409


def test_a_hold_tops_the_list_by_the_days_that_her_own_levels_give(desk: Desk) -> None:
    client_id = ana_hurts(desk)
    ben = desk.signed_in("ben@example.org")
    assert 'id="long-holds"' not in ben.get("/today").text
    desk.world.pass_time(days=2)
    with desk.world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        client.levels = {"hold_top_days": 1}
        tx.add(client)

    page = desk.signed_in("ben@example.org").get("/today").text

    assert page.index('id="long-holds"') < page.index('id="danger"')


def test_a_hold_whose_alert_is_closed_still_says_what_she_wrote_and_was_told_and_since_when(desk: Desk) -> None:
    ana_hurts(desk)
    ben = desk.signed_in("ben@example.org")
    alert = desk.world.alerts()[0]
    ben.post(f"/alerts/{alert.id}/close", outcome="called", note="rang her")
    assert "Held since today." in ben.get("/today").text

    desk.world.pass_time(days=1)
    page = desk.signed_in("ben@example.org").get("/today").text

    for words in ("Held for 1 working day.", "“done pain 9”", "Pain 9: 8 and more is severe.", "Told by text:"):
        assert words in page
