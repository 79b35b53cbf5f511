"""The client's page: one session, reported without sign-in, judged at once."""

from datetime import date

import pytest
from sqlmodel import select

from reminders.core.tokens import CLIENT_SHEET, make_token
from reminders.store.tables import Client, ExerciseSession, Hold, InboundRow
from tests.web.desk import SECRET, Desk, page_path, sheet_path


def reminded(desk: Desk, **columns: str) -> tuple[int, str]:
    """Enrol Ana, let her first reminder go out; return her id and her page's path."""
    client_id = desk.world.enrol(**columns)
    desk.world.pass_time(days=2)
    desk.world.plan()
    desk.world.send()
    session = desk.world.rows(ExerciseSession, client_id=client_id)[0]
    return client_id, page_path(desk.world, session.id or 0)


def test_the_page_shows_first_name_and_exercises_and_nothing_else_of_hers(desk: Desk) -> None:
    _, path = reminded(desk, chart_id="K-77", email="ana@example.org")

    page = desk.visitor().get(path)

    assert page.status_code == 200
    assert "Hello Ana" in page.text
    assert "Sit to stand" in page.text or "sit to stand" in page.text
    for hidden in ("Ruiz", "K-77", "ana@example.org", "5550101", "Ames"):
        assert hidden not in page.text


def test_opening_the_page_changes_nothing(desk: Desk) -> None:
    client_id, path = reminded(desk)
    before = desk.world.client(client_id).model_dump(), [row.model_dump() for row in desk.world.sessions(client_id)]

    for _ in range(3):
        assert desk.visitor().get(path).status_code == 200

    assert before == (
        desk.world.client(client_id).model_dump(),
        [row.model_dump() for row in desk.world.sessions(client_id)],
    )
    assert desk.world.rows(InboundRow) == []


def test_what_she_sends_is_recorded_and_shown(desk: Desk) -> None:
    client_id, path = reminded(desk)

    page = desk.visitor().post(path, data={"done": "all", "pain": "3", "words": "felt good"})

    assert page.status_code == 200
    assert "All of them" in page.text
    assert "pain 3" in page.text
    session = desk.world.sessions(client_id)[0]
    assert (session.state, session.pain) == ("done", 3)


def test_a_second_submission_is_a_correction_and_the_first_is_shown_first(desk: Desk) -> None:
    client_id, path = reminded(desk)
    browser = desk.visitor()
    browser.post(path, data={"done": "all", "pain": "5"})

    again = browser.get(path).text
    assert "You sent this before" in again
    assert "pain 5" in again
    browser.post(path, data={"done": "some", "pain": "3"})

    session = desk.world.sessions(client_id)[0]
    assert (session.state, session.pain) == ("part", 3)
    first, second = desk.world.reports(client_id)
    assert second.replaces == first.id


def test_the_same_form_sent_twice_counts_once(desk: Desk) -> None:
    client_id, path = reminded(desk)
    browser = desk.visitor()

    for _ in range(2):
        assert browser.post(path, data={"done": "all", "pain": "2", "once": "one"}).status_code == 200

    assert len(desk.world.reports(client_id)) == 1


def test_pain_of_eight_is_judged_at_once_warned_of_on_the_next_page_and_asked_about(desk: Desk) -> None:
    client_id, path = reminded(desk)

    page = desk.visitor().post(path, data={"done": "all", "pain": "8", "once": "x"})

    assert [alert.rule for alert in desk.world.alerts(client_id)] == ["severe_pain"]
    assert "You marked 8" in page.text
    assert page.text.index('role="alert"') < page.text.index("This is what we wrote down")
    assert "Alder Hill Physio" in page.text
    assert "+1 202 555 0100" in page.text
    reload = desk.visitor().post(path, data={"done": "all", "pain": "8", "once": "x"})
    assert 'role="alert"' in reload.text


def test_danger_words_in_the_box_warn_with_the_emergency_number_first(desk: Desk) -> None:
    client_id, path = reminded(desk)

    page = desk.visitor().post(path, data={"words": "my chest feels tight and I cannot breathe"})

    alert = desk.world.alerts(client_id)[0]
    assert (alert.rule, alert.level) == ("chest_or_breathing", "urgent")
    warning = page.text[page.text.index('role="alert"') :]
    assert warning.index("911") < warning.index("555 0100")


def test_a_held_client_sees_no_exercises(desk: Desk) -> None:
    client_id, path = reminded(desk)
    with desk.world.db.begin() as tx:
        tx.add(Hold(client_id=client_id, rule="test", opened_at=desk.world.now))

    page = desk.visitor().get(path).text

    assert "No exercises for now" in page
    assert "exercise-" not in page
    assert 'class="exercise"' not in page


@pytest.mark.parametrize(
    ("fields", "sentence"),
    [
        ({"pain": "11"}, "pain must be a whole number from 0 to 10"),
        ({"pain": "three"}, "pain must be a whole number from 0 to 10"),
        ({"done": "maybe"}, "done must be one of"),
        ({}, "Mark what you did"),
        ({"words": "x" * 1601}, "words is longer than 1600 letters"),
    ],
)
def test_a_form_that_does_not_fit_is_shown_again_with_one_sentence(
    desk: Desk, fields: dict[str, str], sentence: str
) -> None:
    client_id, path = reminded(desk)

    page = desk.visitor().post(path, data=fields)

    assert page.status_code == 422
    assert sentence in page.text
    assert not desk.world.reports(client_id)


def test_spanish_is_hers_and_either_language_can_be_asked_for(desk: Desk) -> None:
    _, path = reminded(desk, language="es")

    assert "Hola Ana" in desk.visitor().get(path).text
    assert "Hello Ana" in desk.visitor().get(f"{path}?lang=en").text


def test_a_link_lives_fourteen_days_past_its_session_and_then_leads_on(desk: Desk) -> None:
    client_id, path = reminded(desk)
    first = desk.world.sessions(client_id)[0].on_date
    while desk.world.now.date() < date.fromordinal(first.toordinal() + 15):
        desk.world.pass_time(days=1)
        desk.world.plan()
        desk.world.send()

    answer = desk.visitor().get(path)

    assert answer.status_code == 303
    newest = max((one for one in desk.world.sessions(client_id) if one.reminded_at), key=lambda one: one.on_date)
    assert answer.headers["location"] == page_path(desk.world, newest.id or 0)


@pytest.mark.parametrize("token", ["x", "1-AAAAAAAAAAAAAAAAAAAA", "1-" + "é" * 20])
def test_a_link_that_we_did_not_make_shows_nobody(desk: Desk, token: str) -> None:
    assert desk.visitor().get(f"/c/{token}").status_code == 404
    assert desk.visitor().post(f"/c/{token}", data={"done": "all"}).status_code == 404


def test_a_page_without_a_script_carries_the_whole_job(desk: Desk) -> None:
    _, path = reminded(desk)

    page = desk.visitor().get(path)

    assert "<script" not in page.text
    assert "script-src 'self'" in page.headers["content-security-policy"]
    assert "style=" not in page.text


def test_a_printed_code_leads_to_whichever_session_is_current(desk: Desk) -> None:
    client_id = desk.world.enrol()
    code = sheet_path(desk.world, client_id)
    assert desk.visitor().get(code).status_code == 404, "no session has been yet"

    for days in (2, 2):
        desk.world.pass_time(days=days)
        desk.world.plan()
        desk.world.send()
        newest = max((one for one in desk.world.sessions(client_id) if one.reminded_at), key=lambda one: one.on_date)
        assert desk.visitor().get(code).headers["location"] == page_path(desk.world, newest.id or 0)

    with desk.world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        client.state = "closed"
    assert desk.visitor().get(code).status_code == 404
    assert desk.visitor().get(f"/c/{make_token([SECRET], CLIENT_SHEET, 999)}").status_code == 404


def test_the_page_that_answers_crisis_words_says_nothing_about_exercises(desk: Desk) -> None:
    _, path = reminded(desk)

    page = desk.visitor().post(path, data={"done": "no", "words": "I do not want to live any more"}).text

    main = page[page.index("<main") :]
    assert "988" in main
    assert "exercise" not in main.lower()


def test_a_link_opens_nothing_once_its_number_is_another_clients_session(desk: Desk) -> None:
    ana, path = reminded(desk)
    session = desk.world.sessions(ana)[0]
    bo = desk.world.enrol("Bo Lund", "+12025550102")
    with desk.world.db.begin() as tx:  # as after an erasure, or in a database restored from an older file
        found = tx.get(ExerciseSession, session.id)
        assert found is not None
        for other in tx.exec(select(ExerciseSession).where(ExerciseSession.client_id == bo)):
            tx.delete(other)
        tx.flush()
        found.client_id = bo

    assert desk.visitor().get(path).status_code == 404
    assert desk.visitor().post(path, data={"done": "all", "pain": "9"}).status_code == 404
    assert [one.pain for one in desk.world.sessions(bo)] == [None]


def test_a_printed_code_leads_nowhere_once_its_number_is_another_clients(desk: Desk) -> None:
    ana, _ = reminded(desk)
    code = sheet_path(desk.world, ana)
    assert desk.visitor().get(code).status_code == 303
    with desk.world.db.begin() as tx:  # a database restored from an older file gives numbers again
        client = tx.get(Client, ana)
        assert client is not None
        client.created_at = desk.world.now

    assert desk.visitor().get(code).status_code == 404
