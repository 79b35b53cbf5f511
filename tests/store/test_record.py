from datetime import date, timedelta

import pytest

from reminders.flows import alert, hold
from reminders.store import record
from reminders.store.tables import Client, Clinic, InboundRow, Pause, Report
from tests.clinic import ANA, World

# The shapes that commands, API and exports promise; more may stand beside them.
CLIENT = [
    "id",
    "name",
    "state",
    "therapist",
    "program",
    "days",
    "time",
    "time_zone",
    "contacts",
    "usual_pain",
    "holds",
    "pauses",
]
SESSION = ["date", "state", "due", "reminded", "completed", "sets", "reps", "pain", "reports"]
REPORT = ["at", "channel", "text", "reading", "by", "replaces"]
MESSAGE = ["id", "client", "direction", "kind", "channel", "to", "body", "state", "due", "accepted", "parts", "key"]
ALERT = ["id", "client", "rule", "level", "state", "opened", "acknowledged", "closed", "told", "because", "sessions"]


@pytest.fixture
def ana(world: World) -> int:
    """Ana reminded, answering, alerted and told."""
    client_id = world.enrol(usual_pain="3", days="mon+wed+fri", time="08:30")
    world.send()
    world.plan()
    world.pass_time(days=2)
    world.send()
    world.hear("done 2x10 pain 3")
    with world.db.begin() as tx:
        client, clinic = tx.get(Client, client_id), tx.get(Clinic, 1)
        assert client is not None
        assert clinic is not None
        session = min(one.id or 0 for one in world.sessions(client_id))
        alert.raise_alert(tx, clinic, client, "pain_up", "urgent", {"pain": 7}, world.now, session_ids=(session,))
    world.send()
    return client_id


def test_a_client_has_the_promised_shape(world: World, ana: int) -> None:
    with world.db.read() as tx:
        (row,) = record.clients_json(tx, 1, world.now)

    assert set(CLIENT) <= set(row)
    assert (row["days"], row["time"], row["usual_pain"]) == ("mon+wed+fri", "08:30", 3)
    assert (row["therapist"], row["time_zone"]) == ("ben@example.org", "America/New_York")
    assert [(one["channel"], one["address"], one["consent"]) for one in row["contacts"]] == [("sms", ANA, "open")]


def test_only_open_holds_and_pauses_stand_with_a_client(world: World, ana: int) -> None:
    today = date(2027, 3, 3)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        hold.open_hold(tx, client, "pain_up", "rule", world.now)
        for first, last in ((today - timedelta(days=9), today - timedelta(days=1)), (today, today)):
            tx.add(Pause(client_id=ana, from_on=first, until_on=last, opened_at=world.now))
    with world.db.read() as tx:
        (held,) = record.clients_json(tx, 1, world.now)
        (later,) = record.clients_json(tx, 1, world.now + timedelta(days=1))

    assert [one["rule"] for one in held["holds"]] == ["pain_up"]
    assert [one["until"] for one in held["pauses"]] == ["2027-03-03"]
    assert later["pauses"] == []
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        hold.end_hold(tx, client, "ben@example.org", world.now)
    with world.db.read() as tx:
        assert record.clients_json(tx, 1, world.now)[0]["holds"] == []


def test_a_session_has_the_promised_shape_with_its_reports(world: World, ana: int) -> None:
    with world.db.read() as tx:
        rows = record.sessions_json(tx, ana)
    done = next(row for row in rows if row["state"] == "done")

    assert set(SESSION) <= set(done)
    assert (done["date"], done["completed"], done["sets"], done["reps"], done["pain"]) == (
        "2027-03-03",
        "all",
        2,
        10,
        3,
    )
    assert done["due"] == "2027-03-03T13:30:00Z"
    assert set(REPORT) <= set(done["reports"][0])
    assert (done["reports"][0]["text"], done["reports"][0]["channel"]) == ("done 2x10 pain 3", "sms")
    assert rows == sorted(rows, key=lambda row: row["date"])


def test_messages_come_in_the_order_of_time_both_ways(world: World, ana: int) -> None:
    with world.db.read() as tx:
        rows = record.messages_json(tx, 1, ana)
        late = record.messages_json(tx, 1, ana, world.now)

    assert all(set(MESSAGE) <= set(row) for row in rows)
    kinds = [(row["direction"], row["kind"]) for row in rows]
    assert kinds.index(("out", "welcome")) < kinds.index(("in", "report")) < kinds.index(("out", "thanks"))
    assert [row["at"] for row in rows] == sorted(row["at"] for row in rows)
    assert 0 < len(late) < len(rows)


def test_an_alert_says_who_was_told_and_whether_it_arrived(world: World, ana: int) -> None:
    with world.db.read() as tx:
        (row,) = record.alerts_json(tx, 1)

    assert set(ALERT) <= set(row)
    assert (row["client"], row["rule"], row["level"], row["state"]) == (ana, "pain_up", "urgent", "open")
    assert row["sessions"] == ["2027-03-03"]
    assert {(one["who"], one["channel"], one["state"]) for one in row["told"]} >= {("staff", "sms", "accepted")}


def test_another_clinic_sees_none_of_it(world: World, ana: int) -> None:
    world.hear("hello from nowhere", "+12025550188")
    with world.db.read() as tx:
        assert record.clients_json(tx, 2, world.now) == []
        assert record.messages_json(tx, 2) == []
        assert record.alerts_json(tx, 2) == []


def test_what_a_strange_number_wrote_belongs_to_the_one_clinic_there_is(world: World) -> None:
    with world.db.begin() as tx:
        other = tx.get(Clinic, 2)
        tx.add(
            InboundRow(
                source="sms",
                provider_id="SM9",
                address="+12025550188",
                text="who is this",
                raw=b"",
                received_at=world.now,
                kept_at=world.now,
            )
        )
        assert other is not None
        tx.flush()
        assert record.messages_json(tx, 1) == []
        tx.connection().exec_driver_sql("DELETE FROM staff WHERE clinic_id = 2")
        tx.delete(other)
        tx.flush()
        assert [row["body"] for row in record.messages_json(tx, 1)] == ["who is this"]


def test_a_report_of_no_session_is_not_lost(world: World, ana: int) -> None:
    with world.db.begin() as tx:
        tx.add(Report(client_id=ana, at=world.now, channel="sms", text="pain 2 today"))
    with world.db.read() as tx:
        assert [row["text"] for row in record.loose_reports_json(tx, ana)] == ["pain 2 today"]
