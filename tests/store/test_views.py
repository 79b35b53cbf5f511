"""What the console's pages read, asked of either database."""

from datetime import date, timedelta

from reminders.store import audit_view, client_view, clients, desk_view, page_view, staff_view, today
from reminders.store.tables import Staff
from tests.clinic import ANA, World


def busy(world: World) -> int:
    """Ana with a danger sign and an opt-out, and somebody invited."""
    client_id = world.enrol(chart_id="K-77")
    world.enrol("Cora Bell", "+12025550102", consent_on="", consent_how="", precautions="")
    world.pass_time(days=2)
    world.plan()
    world.send()
    world.hear("done pain 9", ANA)
    world.send()
    world.hear("STOP", ANA)
    return client_id


def test_the_days_list_holds_what_needs_a_person(world: World) -> None:
    client_id = busy(world)
    ben = world.rows(Staff, email="ben@example.org")[0]
    with world.db.read() as tx:
        facts = today.facts_of(tx, ben.clinic_id, frozenset({ben.id or 0}), world.now)
        nobody = today.facts_of(tx, ben.clinic_id, frozenset({999}), world.now)

    assert "severe_pain" in {alert.rule for alert in facts.alerts}
    assert [hold.client_id for hold in facts.holds][:1] == [client_id]
    assert [client.name for client in facts.unchecked] == ["Cora Bell"]
    assert [contact.address for contact in facts.contacts[client_id]] == [ANA]
    assert [report.text for report in facts.words.values()][:1] == ["done pain 9"]
    assert {row.kind for rows in facts.told.values() for row in rows} == {"danger"}
    assert (nobody.alerts, nobody.holds, nobody.unchecked) == ([], [], [])


def test_clients_are_found_by_name_address_and_chart_number(world: World) -> None:
    client_id = busy(world)
    clinic_id = world.client(client_id).clinic_id
    with world.db.read() as tx:
        for words in ("RUIZ", "5550101", "k-77"):
            found = desk_view.clients_found(tx, clinic_id, None, words, "")
            assert [client.id for client in found] == [client_id]
        assert desk_view.clients_found(tx, clinic_id, None, "%", "closed") == []
        line = desk_view.lines(tx, [world.client(client_id)], world.now)[0]

    assert (line.therapist, line.is_held, [one.consent for one in line.contacts]) == ("Ben Ames", True, ["closed"])


def test_the_work_list_delivery_and_counts_are_the_whole_clinics(world: World) -> None:
    client_id = busy(world)
    world.pass_time(days=50)
    with world.db.read() as tx:
        clinic = clients.the_clinic(tx, world.client(client_id).clinic_id)
        todo = desk_view.work_list(tx, clinic, world.now)
        counts = desk_view.counts(tx, clinic.id or 0, date(2027, 3, 3))
        sent = desk_view.delivery(tx, clinic.id or 0, world.now - timedelta(days=90))
        failed = desk_view.failures(tx, clinic.id or 0, world.now - timedelta(days=90))

    assert [client.name for client in todo.invited] == ["Cora Bell"]
    assert [client.id for client, _ in todo.held] == [client_id]
    assert "desk" in [note.kind for note, _ in todo.notes]
    assert todo.count >= 3
    assert (counts["opted_out"], counts["invited"], counts["due today"]) == (1, 1, 1)
    assert ("reminder", "sms", "accepted", 1) in sent
    assert failed == []


def test_a_clients_record_is_whole(world: World) -> None:
    client_id = busy(world)
    with world.db.read() as tx:
        client = world.client(client_id)
        view = client_view.client_view(tx, client, clients.the_clinic(tx, client.clinic_id))

    assert view.hold is not None
    assert view.pause(world.now) is None
    assert [report.text for report in view.reports[view.sessions[-1].id]][:1] == ["done pain 9"]
    assert [event.change for event in view.consents] == ["withdrawn", "given"]
    assert {row.text for row in view.inbound} == {"done pain 9", "STOP"}


def test_the_staff_is_counted_with_what_hangs_on_each(world: World) -> None:
    client_id = busy(world)
    with world.db.read() as tx:
        team = staff_view.team(tx, world.client(client_id).clinic_id)
        ben = next(one for one in team if one.staff.email == "ben@example.org")
        assert staff_view.has_never_signed_in(tx, ben.staff.id or 0)

    assert (ben.clients, ben.alerts > 0, ben.cover) == (2, True, "")


def test_the_log_is_filtered_and_given_page_by_page(world: World) -> None:
    client_id = busy(world)
    clinic_id = world.client(client_id).clinic_id
    with world.db.read() as tx:
        wanted = audit_view.Filter(by="TEST", action="client enrolled", client_id=client_id, until=world.now)
        found = audit_view.entries(tx, clinic_id, wanted)
        assert [row.client_id for row in found] == [client_id]
        assert audit_view.entries(tx, clinic_id, wanted, before=found[0].id or 0) == []
        assert [row.id for row in audit_view.every(tx, clinic_id, wanted)] == [found[0].id]
        assert "client enrolled" in audit_view.actions(tx, clinic_id)
        assert audit_view.entries(tx, clinic_id, audit_view.Filter(since=world.now + timedelta(days=1))) == []


def test_a_page_knows_its_session_and_what_was_sent_from_it(world: World) -> None:
    client_id = busy(world)
    session = world.sessions(client_id)[0]
    with world.db.read() as tx:
        view = page_view.page_view(tx, session.id or 0)
        assert view is not None
        assert (view.client.id, view.hold is not None) == (client_id, True)
        assert page_view.page_view(tx, 999) is None
        assert page_view.current_session_id(tx, client_id, session.on_date) == session.id
        assert page_view.current_session_id(tx, client_id, session.on_date - timedelta(days=1)) is None
        assert page_view.sent_before(tx, session.id or 0) is None
        assert page_view.urgent_answer(tx, session.id or 0, "x") is None
