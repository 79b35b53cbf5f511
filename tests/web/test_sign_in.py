"""Signing in and out: password, link, code; sessions that end; guessing that is slowed."""

import re

import pyotp
import pytest
from sqlmodel import select

from reminders.flows.sign_in import make_link
from reminders.store.tables import Outbound, Staff, WebSession
from reminders.web import passwords
from tests.web.desk import Desk

PASSWORD = "three quiet herons wade"


def give_password(desk: Desk, email: str = "ben@example.org", code: str = "") -> None:
    with desk.world.db.begin() as tx:
        staff = tx.exec(select(Staff).where(Staff.email == email)).one()
        staff.password_hash, staff.totp_secret = passwords.hashed(PASSWORD), code
        tx.add(staff)


def test_the_right_password_signs_in_and_the_cookie_is_kept_from_scripts(desk: Desk) -> None:
    give_password(desk)
    browser = desk.visitor()

    answer = browser.post("/sign-in", data={"email": "Ben@Example.org", "password": PASSWORD})

    assert answer.status_code == 303
    assert "HttpOnly" in answer.headers["set-cookie"]
    assert "SameSite=lax" in answer.headers["set-cookie"]
    assert browser.get("/").status_code == 303


@pytest.mark.parametrize("email", ["ben@example.org", "nobody@example.org"])
def test_a_wrong_password_and_an_unknown_e_mail_get_the_same_answer(desk: Desk, email: str) -> None:
    give_password(desk)

    answer = desk.visitor().post("/sign-in", data={"email": email, "password": "not her password"})

    assert answer.status_code == 401
    assert "do not go together" in answer.text


def test_guessing_is_slowed_for_the_guesser_and_not_for_the_owner_elsewhere(desk: Desk) -> None:
    give_password(desk)
    guesser = desk.visitor()
    for _ in range(6):
        guesser.post("/sign-in", data={"email": "ben@example.org", "password": "a guess of mine"})

    assert guesser.post("/sign-in", data={"email": "ben@example.org", "password": PASSWORD}).status_code == 429

    desk.world.pass_time(seconds=5)
    assert guesser.post("/sign-in", data={"email": "ben@example.org", "password": PASSWORD}).status_code == 303


def test_a_link_is_used_by_a_button_once(desk: Desk) -> None:
    with desk.world.db.begin() as tx:
        token = make_link(tx, tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one(), desk.world.now)
    browser = desk.visitor()

    assert "Sign in now" in browser.get(f"/sign-in/{token}").text
    assert "Sign in now" in browser.get(f"/sign-in/{token}").text
    assert browser.post(f"/sign-in/{token}").status_code == 303
    assert browser.post(f"/sign-in/{token}").status_code == 410


@pytest.mark.parametrize(
    ("first", "minutes", "works"), [(False, 10, True), (False, 11, False), (True, 1440, True), (True, 1441, False)]
)
def test_a_link_lives_ten_minutes_and_the_first_one_a_day(desk: Desk, first: bool, minutes: int, works: bool) -> None:
    with desk.world.db.begin() as tx:
        staff = tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one()
        token = make_link(tx, staff, desk.world.now, first=first)

    desk.world.pass_time(minutes=minutes)

    assert (desk.visitor().post(f"/sign-in/{token}").status_code == 303) is works


def test_a_link_is_mailed_only_to_who_works_here_and_the_page_does_not_say(desk: Desk) -> None:
    browser = desk.visitor()

    known = browser.post("/sign-in/link", data={"email": "ben@example.org"})
    unknown = browser.post("/sign-in/link", data={"email": "nobody@example.org"})

    assert known.text == unknown.text
    queued = desk.world.rows(Outbound, kind="sign_in")
    assert [row.to for row in queued] == ["ben@example.org"]
    assert re.search(r"/sign-in/[\w-]{40,}$", queued[0].details["link"])


def test_a_second_factor_is_asked_and_its_code_serves_once(desk: Desk) -> None:
    secret = pyotp.random_base32()
    give_password(desk, code=secret)
    code = pyotp.TOTP(secret).at(desk.world.now)

    def give(given: str) -> int:
        browser = desk.visitor()
        page = browser.post("/sign-in", data={"email": "ben@example.org", "password": PASSWORD}).text
        step = re.search(r'name="step" value="([^"]+)"', page)
        assert step is not None
        return browser.post("/sign-in/code", data={"step": step[1], "code": given}).status_code

    assert give("000000" if code != "000000" else "111111") == 401
    assert give(code) == 303
    assert give(code) == 401


def test_a_session_ends_after_fifteen_idle_minutes_and_after_twelve_hours(desk: Desk) -> None:
    browser = desk.signed_in("ben@example.org")
    for _ in range(51):
        desk.world.pass_time(minutes=14)
        assert browser.get("/").headers["location"] == "/today"

    desk.world.pass_time(minutes=14)
    assert browser.get("/").headers["location"] == "/sign-in"

    idle = desk.signed_in("ben@example.org")
    desk.world.pass_time(minutes=15, seconds=1)
    assert idle.get("/").headers["location"] == "/sign-in"


def test_staying_moves_the_idle_end_on(desk: Desk) -> None:
    browser = desk.signed_in("ben@example.org")
    desk.world.pass_time(minutes=14, seconds=30)

    assert browser.post("/stay").status_code == 204

    desk.world.pass_time(minutes=14)
    assert browser.get("/").headers["location"] == "/today"


def test_signing_out_ends_the_session_on_the_server(desk: Desk) -> None:
    browser = desk.signed_in("ben@example.org")
    token = browser.client.cookies["console"]

    assert browser.post("/sign-out").status_code == 303

    browser.client.cookies.set("console", token)
    assert browser.get("/").headers["location"] == "/sign-in"
    assert all(row.ended_at for row in desk.world.rows(WebSession))


def test_a_form_without_this_sessions_token_is_refused(desk: Desk) -> None:
    browser = desk.signed_in("ben@example.org")

    assert browser.client.post("/sign-out", data={"csrf": "another"}).status_code == 403
    assert browser.client.post("/sign-out").status_code == 403
    assert browser.get("/").headers["location"] == "/today"


def test_a_sign_in_form_from_another_site_is_refused(desk: Desk) -> None:
    give_password(desk)

    answer = desk.visitor().post(
        "/sign-in",
        data={"email": "ben@example.org", "password": PASSWORD},
        headers={"origin": "https://elsewhere.example.org"},
    )

    assert answer.status_code == 403


def test_work_posted_after_the_session_ended_is_kept_and_saved_after_signing_in(desk: Desk) -> None:
    give_password(desk)
    browser = desk.signed_in("ben@example.org")
    desk.world.pass_time(minutes=20)

    late = browser.post("/settings", note_hours="09:00")
    assert late.status_code == 401
    kept = re.search(r'name="kept" value="([^"]+)"', late.text)
    assert kept is not None
    after = browser.client.post(
        "/sign-in", data={"email": "ben@example.org", "password": PASSWORD, "kept": kept[1], "next": "/settings"}
    )

    assert after.status_code == 200
    assert 'name="note_hours" value="09:00"' in after.text
    assert 'action="/settings"' in after.text


def test_a_person_who_is_switched_off_is_out_at_once(desk: Desk) -> None:
    browser = desk.signed_in("ben@example.org")
    with desk.world.db.begin() as tx:
        staff = tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one()
        staff.is_active = False
        tx.add(staff)

    assert browser.get("/").headers["location"] == "/sign-in"


@pytest.mark.parametrize(
    "next_page", ["//elsewhere.example.org", "https://elsewhere.example.org", "/\\elsewhere.example.org"]
)
def test_signing_in_never_leads_to_another_site(desk: Desk, next_page: str) -> None:
    give_password(desk)

    answer = desk.visitor().post("/sign-in", data={"email": "ben@example.org", "password": PASSWORD, "next": next_page})

    assert answer.headers["location"] == "/"


def test_a_trusted_proxys_word_counts_and_anybody_elses_does_not(desk: Desk) -> None:
    give_password(desk)
    spoofing = desk.visitor()
    for number in range(6):
        spoofing.post(
            "/sign-in",
            data={"email": "ben@example.org", "password": "a guess of mine"},
            headers={"x-forwarded-for": f"203.0.113.{number}"},
        )

    answer = spoofing.post(
        "/sign-in", data={"email": "ben@example.org", "password": PASSWORD}, headers={"x-forwarded-for": "203.0.113.99"}
    )
    assert answer.status_code == 429
