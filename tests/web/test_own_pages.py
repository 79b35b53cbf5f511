"""A therapist's own pages: levels and rehearsal, digest, settings, reports put to their day, and alert links."""

import html
import re
from datetime import timedelta

from sqlmodel import select

from reminders.store.tables import (
    Alert,
    Clinic,
    Report,
    Staff,
)
from tests.clinic import World
from tests.web.desk import Desk
from tests.web.test_speed import fill

FAY, BEN, DEE = "fay@example.org", "ben@example.org", "dee@example.org"


def clinic_of(world: World) -> Clinic:
    return world.rows(Clinic, name="Alder Hill Physio")[0]


def test_levels_are_kept_for_her_for_the_clinic_and_for_one_client(desk: Desk) -> None:
    client_id = desk.world.enrol()
    ben, dee = desk.signed_in(BEN), desk.signed_in(DEE)

    assert ben.post("/levels", stop_floor="5").status_code == 303
    assert dee.post("/levels", stop_floor="7").status_code == 303
    assert (
        ben.post(f"/clients/{client_id}/levels", severe="9", pinned_usual="2.5", stop_with_easy_days="yes").status_code
        == 303
    )

    assert desk.world.rows(Staff, email=BEN)[0].levels == {"stop_floor": 5}
    assert clinic_of(desk.world).levels == {"stop_floor": 7}
    client = desk.world.client(client_id)
    assert (client.levels, client.pinned_usual, client.stop_with_easy_days) == ({"severe": 9}, 2.5, True)
    assert ben.post("/levels", severe="9").status_code == 422, "severe is one client's alone"
    assert ben.post("/levels", stop_floor="99").status_code == 422
    assert ben.post(f"/clients/{client_id}/levels", pinned_usual="twelve").status_code == 422


def test_a_rehearsal_shows_what_would_have_been_raised_and_keeps_nothing(desk: Desk) -> None:
    desk.world.enrol()
    desk.world.pass_time(days=2)
    desk.world.plan()
    desk.world.send()
    desk.world.hear("done pain 5")

    page = desk.signed_in(BEN).post("/levels/rehearse", stop_floor="4", stop_above="0").text

    assert "What these levels would have done" in page
    assert "Nothing was sent" in page
    assert desk.world.rows(Staff, email=BEN)[0].levels == {}
    assert desk.world.rows(Alert) == []
    assert desk.signed_in(BEN).post("/levels/rehearse", stop_floor="99").status_code == 422


def test_her_own_settings_password_and_code(desk: Desk) -> None:
    import pyotp

    ben = desk.signed_in(BEN)
    other = desk.signed_in(BEN)
    page = ben.get("/settings").text
    secret = re.search(r'name="secret" value="(\w+)"', page)
    assert secret is not None

    form = {"alert_channels": "email", "note_hours": "16:00, 9:30", "mobile": "202 555 0151"}
    assert ben.post("/settings", **form).status_code == 303
    staff = desk.world.rows(Staff, email=BEN)[0]
    assert (staff.alert_channels, staff.note_hours, staff.mobile) == ("email", "09:30,16:00", "+12025550151")
    assert ben.post("/settings", **{**form, "note_hours": "noon"}).status_code == 422
    assert ben.post("/settings", **{**form, "mobile": "12"}).status_code == 422

    assert ben.post("/settings/password", new_password="one of my own words", again="another").status_code == 422
    assert ben.post("/settings/password", new_password="password1234", again="password1234").status_code == 422
    words = "one of my own words"
    assert ben.post("/settings/password", new_password=words, again=words).status_code == 303
    assert other.get("/").headers["location"] == "/sign-in"
    assert ben.get("/").headers["location"] == "/today"

    assert ben.post("/settings/code", secret=secret[1], code="000000").status_code == 422
    code = pyotp.TOTP(secret[1]).at(desk.world.now)
    assert ben.post("/settings/code", secret=secret[1], code=code).status_code == 303
    assert desk.world.rows(Staff, email=BEN)[0].totp_secret == secret[1]
    assert "Switch it off" in ben.get("/settings").text
    assert ben.post("/settings/code", do="off").status_code == 303
    assert desk.world.rows(Staff, email=BEN)[0].totp_secret == ""


def test_the_digest_is_shown_by_week_and_a_lead_chooses_the_therapist(desk: Desk) -> None:
    desk.world.enrol()
    ben = desk.world.rows(Staff, email=BEN)[0]

    assert "Week 2027-W09" in desk.signed_in(BEN).get("/digest?week=2027-W09").text
    assert desk.signed_in(BEN).get("/digest?week=soon").status_code == 422
    dee = desk.world.rows(Staff, email=DEE)[0]
    assert desk.signed_in(BEN).get(f"/digest?therapist={dee.id}").status_code == 404
    page = desk.signed_in(DEE).get(f"/digest?therapist={ben.id}&week=2027-W09&now_too=yes").text
    assert "Ana Ruiz" in page


def test_a_long_digest_comes_in_parts_that_stay_with_what_would_be_now(desk: Desk) -> None:
    fill(desk.world, 51)
    browser = desk.signed_in(BEN)

    first = browser.get("/digest?now_too=yes").text
    link = re.search(r'href="([^"]*part=2)"', first)
    assert link is not None
    second = browser.get("/digest" + html.unescape(link[1])).text

    assert "now_too=yes" in link[1]
    assert (">Client 0 (" in first, ">Client 9 (" in first) == (True, False)
    assert (">Client 0 (" in second, ">Client 9 (" in second) == (False, True)
    assert "51 in all, part 2 of 2" in second
    assert 'start="51"' in second
    assert "part=1" in second


def test_a_report_that_stood_alone_is_put_to_its_day(desk: Desk) -> None:
    client_id = desk.world.enrol()
    desk.world.pass_time(days=2)
    desk.world.plan()
    desk.world.send()
    with desk.world.db.begin() as tx:
        report = Report(client_id=client_id, at=desk.world.now, channel="sms", text="all fine 3", reading={"pain": 3})
        tx.add(report)
        tx.flush()
        report_id = report.id
    ben = desk.signed_in(BEN)
    assert "Not about a session of hers" in ben.get(f"/clients/{client_id}").text
    path = f"/reports/{report_id}/correct"

    assert ben.post(path, on="2027-03-03", completed="all", pain="3").status_code == 303
    assert desk.world.sessions(client_id)[0].pain == 3
    later = (desk.world.now + timedelta(days=3)).date().isoformat()
    assert ben.post(path, on=later, completed="all").status_code == 422
    assert ben.post(path, completed="all").status_code == 422


def test_the_confirmation_takes_a_password_and_goes_on_with_the_work(desk: Desk) -> None:
    from reminders.web import passwords

    with desk.world.db.begin() as tx:
        fay_row = tx.exec(select(Staff).where(Staff.email == FAY)).one()
        fay_row.password_hash = passwords.hashed("three quiet herons wade")
    fay = desk.signed_in(FAY)
    for _ in range(2):
        desk.world.pass_time(minutes=6)
        fay.get("/work")

    asked = fay.post("/staff", role="therapist", name="Pia Lott", email="pia@example.org")
    kept = re.search(r'name="kept" value="([^"]+)"', asked.text)
    assert asked.status_code == 401
    assert kept is not None
    assert fay.post("/confirm", password="wrong", kept=kept[1], next="/staff").status_code == 401
    page = fay.post("/confirm", password="three quiet herons wade", kept=kept[1], next="/staff")
    assert 'value="Pia Lott"' in page.text
    assert fay.post("/staff", role="therapist", name="Pia Lott", email="pia@example.org").status_code == 303
    assert fay.post("/confirm", password="three quiet herons wade", next="/staff").headers["location"] == "/staff"
    assert "is it you?" in fay.get("/confirm").text


def test_an_alert_link_acknowledges_and_ends_with_the_alert(desk: Desk) -> None:
    from tests.web.desk import alert_path

    desk.world.enrol()
    desk.world.hear("my chest feels tight")
    alert = desk.world.alerts()[0]
    path = alert_path(desk.world, alert.id or 0)
    visitor = desk.visitor()

    page = visitor.get(path).text
    assert "A.R. (1)" in page
    assert "chest" not in page
    assert desk.world.alerts()[0].state == "open", "opening the page changes nothing"
    assert "Acknowledged" in visitor.post(path).text
    assert desk.world.queued("read_by") == []
    desk.signed_in(BEN).post(f"/alerts/{alert.id}/close", outcome="called", note="rang her")
    assert visitor.get(path).status_code == 410
    assert visitor.post(path).status_code == 410
    assert visitor.get("/a/x").status_code == 410


def test_a_strangers_alert_is_acknowledged_by_its_link_too(desk: Desk) -> None:
    from tests.web.desk import alert_path

    desk.world.hear("I cannot breathe", "+12025550177")
    alert = desk.world.alerts()[0]

    page = desk.visitor().get(alert_path(desk.world, alert.id or 0)).text

    assert "a number nobody knows" in page
    assert "+12025550177" in desk.signed_in(DEE).get("/today").text


def test_an_alert_link_does_not_acknowledge_a_later_alert_of_its_number(desk: Desk) -> None:
    from tests.web.desk import alert_path

    desk.world.enrol()
    desk.world.hear("my chest feels tight")
    (alert,) = desk.world.alerts()
    path = alert_path(desk.world, alert.id or 0)
    with desk.world.db.begin() as tx:  # a database restored from an older file gives numbers again
        found = tx.get(Alert, alert.id)
        assert found is not None
        found.opened_at += timedelta(minutes=20)

    assert desk.visitor().post(path).status_code == 410
    assert [one.state for one in desk.world.alerts()] == ["open"]
