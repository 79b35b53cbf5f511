"""The desk's pages: clients and their details, the work list, the clinic, its wording and its staff."""

import re
from datetime import date

import pytest
from sqlmodel import select

from reminders.store.tables import (
    Client,
    ClientProgram,
    Clinic,
    ClinicNote,
    Contact,
    Outbound,
    Pause,
    Staff,
)
from tests.clinic import ANA, World
from tests.web.desk import Desk

FAY, BEN, DEE = "fay@example.org", "ben@example.org", "dee@example.org"


def clinic_of(world: World) -> Clinic:
    return world.rows(Clinic, name="Alder Hill Physio")[0]


def test_details_days_addresses_consent_pause_and_end_are_kept_from_their_forms(desk: Desk) -> None:
    client_id = desk.world.enrol()
    fay = desk.signed_in(FAY)
    path = f"/clients/{client_id}"
    form = {
        "name": "Ana Vega",
        "language": "es",
        "channel": "sms",
        "holder": "helper",
        "time": "10:00",
        "birth_year": "1949",
    }

    assert fay.post(f"{path}/details", **form, days=["tue", "thu"]).status_code == 303
    assert fay.post(f"{path}/contacts", sms=ANA, email="ana@example.org").status_code == 303
    assert fay.post(f"{path}/consent", do="given", how="spoken at desk", on="2027-03-01").status_code == 303
    assert fay.post(f"{path}/pause", until="2027-03-20", reason="visits her sister").status_code == 303
    page = fay.get(f"{path}/details").text
    assert "paused until Sat Mar 20" in page
    assert fay.post(f"{path}/resume").status_code == 303
    assert fay.post(f"{path}/resume").status_code == 409
    assert fay.post(f"{path}/consent", do="withdrawn").status_code == 303
    assert desk.world.client(client_id).state == "opted_out"
    assert fay.post(f"{path}/close", reason="moved").status_code == 303
    assert fay.post(f"{path}/reopen").status_code == 303

    client = desk.world.client(client_id)
    assert (client.name, client.holder, client.birth_year, client.state) == ("Ana Vega", "helper", 1949, "invited")
    assert desk.world.rows(Pause)[0].reason == "visits her sister"


@pytest.mark.parametrize(
    ("path", "fields", "sentence"),
    [
        ("consent", {"do": "given", "how": "signed form", "on": "2027-03-09"}, "lies ahead"),
        ("pause", {"until": "2027-02-01"}, "lies behind"),
        ("pause", {"until": "soon"}, "must be a date such as"),
        ("close", {"reason": "bored"}, "The reason must be one of"),
        ("details", {"name": ""}, "The name is empty"),
    ],
)
def test_a_detail_that_does_not_fit_is_one_sentence(
    desk: Desk, path: str, fields: dict[str, str], sentence: str
) -> None:
    client_id = desk.world.enrol()

    answer = desk.signed_in(FAY).post(f"/clients/{client_id}/{path}", **fields)

    assert answer.status_code == 422
    assert sentence in answer.text


def test_the_consent_sheet_comes_in_both_languages(desk: Desk) -> None:
    client_id = desk.world.enrol()
    fay = desk.signed_in(FAY)

    assert "Messages about my home exercises" in fay.get(f"/clients/{client_id}/consent-sheet").text
    assert "Mensajes sobre mis ejercicios" in fay.get(f"/clients/{client_id}/consent-sheet?lang=es").text


def test_the_desk_finds_clients_by_name_number_and_chart_a_page_at_a_time(desk: Desk) -> None:
    desk.world.enrol(chart_id="K-77")
    for number in range(51):
        desk.world.enrol(f"Client {number}", "", email=f"client{number}@example.org")
    fay = desk.signed_in(FAY)

    for words in ("ruiz", "5550101", "K-77"):
        page = fay.get(f"/clients?q={words}").text
        assert "Ana Ruiz" in page
        assert "Client 1<" not in page
    assert "Nobody found" in fay.get("/clients?q=nobody").text
    assert "Nobody found" in fay.get("/clients?state=closed").text
    first = fay.get("/clients").text
    after = re.search(r"after=(\d+)", first)
    assert after is not None
    assert "Client 50" in fay.get(f"/clients?after={after[1]}").text
    assert "Client 50" not in first


def test_the_work_list_gathers_what_the_desk_should_look_at(desk: Desk) -> None:
    held = desk.world.enrol("Hana Orr", "+12025550111")
    desk.world.enrol("Inez Orr", "+12025550112", consent_on="", consent_how="")
    failing = desk.world.enrol("Faye Low", "+12025550113")
    late = desk.world.enrol("Lena Orr", "+12025550114")
    silent = desk.world.enrol("Silo Orr", "+12025550115")
    desk.world.hear("my chest feels tight", "+12025550111")
    with desk.world.db.begin() as tx:
        for row in tx.exec(select(Contact)):
            row.unusable = "landline" if row.client_id == failing else ""
            row.reminders_unconfirmed, row.confirmed_at = (
                (3, None) if row.client_id == silent else (0, row.confirmed_at)
            )
        for version in tx.exec(select(ClientProgram).where(ClientProgram.client_id == late)):
            version.recheck_on = date(2027, 3, 2)
    desk.world.pass_time(days=4)

    page = desk.signed_in(FAY).get("/work").text

    for words in (
        "Invited three days ago",
        "Inez Orr",
        "landline",
        "Held",
        "Hana Orr",
        "Past their re-check",
        "Silo Orr",
    ):
        assert words in page
    assert held


def test_an_orphan_and_a_desk_item_are_on_the_work_list_and_an_item_is_settled(desk: Desk) -> None:
    client_id = desk.world.enrol()
    desk.world.hear("STOP")
    with desk.world.db.begin() as tx:
        ben = tx.exec(select(Staff).where(Staff.email == BEN)).one()
        ben.is_active = False
        client = tx.get(Client, client_id)
        assert client is not None
        client.state = "active"
    fay = desk.signed_in(FAY)
    page = fay.get("/work").text
    assert "Without a therapist" in page
    assert "opted out" in page
    note = re.search(r"/notes/(\d+)/close", page)
    assert note is not None

    assert fay.post(f"/notes/{note[1]}/close").headers["location"].startswith("/work")
    assert "/notes/" not in fay.get("/work").text


def test_the_clinics_details_are_kept_or_shown_again_with_the_sentence(desk: Desk) -> None:
    fay = desk.signed_in(FAY)
    row = clinic_of(desk.world)
    given = {name: getattr(row, name) for name in ("name", "phone", "time_zone", "hours", "window", "emergency_number")}
    given |= {
        "crisis_line": "988",
        "note_hours": "11:30,16:00",
        "retain_days": "2555",
        "closed_days": "2027-12-24\n2027-12-25",
    }

    assert fay.post("/clinic", **given).status_code == 303
    assert clinic_of(desk.world).closed_days == ["2027-12-24", "2027-12-25"]
    answer = fay.post("/clinic", **{**given, "hours": "always"})
    assert (answer.status_code, "hours:" in answer.text, 'value="always"' in answer.text) == (422, True, True)


def test_wording_is_kept_or_refused_with_the_sentence(desk: Desk) -> None:
    fay = desk.signed_in(FAY)
    own = "{{ first_name }}, a word from {{ writer }}: {{ words }}"

    assert fay.post("/wording", key="en/therapist_note", words=own).status_code == 303
    assert clinic_of(desk.world).wording == {"en/therapist_note": own}
    answer = fay.post("/wording", key="en/therapist_note", words="{{ secret }}")
    assert answer.status_code == 422
    assert "cannot be used here" in answer.text


def test_somebody_is_added_changed_covered_and_sent_a_link(desk: Desk) -> None:
    fay = desk.signed_in(FAY)
    assert fay.post("/staff", role="therapist", name="Pia Lott", email="pia@example.org").status_code == 303
    pia = desk.world.rows(Staff, email="pia@example.org")[0]
    ben = desk.world.rows(Staff, email=BEN)[0]
    session = desk.signed_in("pia@example.org")

    form = {
        "role": "assistant",
        "is_active": "yes",
        "cover_id": str(ben.id),
        "cover_from": "2027-03-01",
        "no_code": "yes",
    }
    assert fay.post(f"/staff/{pia.id}", **form).status_code == 303
    assert session.get("/").headers["location"] == "/sign-in", "a new role ends her sessions"
    after = desk.world.rows(Staff, email="pia@example.org")[0]
    assert (after.role, after.cover_id) == ("assistant", ben.id)
    assert fay.post(f"/staff/{pia.id}/link").status_code == 303
    assert len(desk.world.queued("sign_in")) == 2
    assert fay.post(f"/staff/{pia.id}/move").status_code == 422
    desk.world.enrol()
    dee = desk.world.rows(Staff, email=DEE)[0]
    assert fay.post(f"/staff/{ben.id}/move", to=str(dee.id)).status_code == 303
    assert desk.world.rows(Client)[0].therapist_id == dee.id


def test_an_item_for_the_desk_says_what_it_is_about_but_never_what_a_client_wrote(desk: Desk) -> None:
    client_id = desk.world.enrol()
    row = desk.world.hear("could we do tuesdays instead", "+12025550101")
    with desk.world.db.begin() as tx:
        for words, inbound_id in (("never answered", None), ("could we do tuesdays instead", row)):
            kind = "desk" if inbound_id is None else "reschedule"
            note = ClinicNote(clinic_id=1, client_id=client_id, kind=kind, words=words, at=desk.world.now)
            note.inbound_id = inbound_id
            tx.add(note)

    page = desk.signed_in(FAY).get("/work").text

    assert "never answered" in page
    assert "wants other days" in page
    assert "tuesdays" not in page


def test_delivery_and_lists_say_what_became_of_messages_as_a_person_says_it(desk: Desk) -> None:
    desk.world.enrol()
    desk.world.pass_time(days=2)
    desk.world.plan()
    desk.world.send()
    with desk.world.db.begin() as tx:
        for row in tx.exec(select(Outbound).where(Outbound.kind == "reminder")):
            row.state, row.why = "expired", "cap"
            tx.add(row)
    fay = desk.signed_in(FAY)

    delivery, listed = fay.get("/delivery").text, fay.get("/clients").text

    assert "not sent, too late (no room left that day or week)" in delivery
    assert "accepted" not in delivery + listed
    assert "+12025550101 (agreed)" in listed
