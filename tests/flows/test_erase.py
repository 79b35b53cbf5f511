from collections.abc import Iterator
from typing import Any

import pytest
from sqlalchemy import text
from sqlmodel import select

from reminders.errors import NotFound, SendError
from reminders.flows import alert, audit, details, digest, erase, hold, receive
from reminders.store.tables import Alert, Client, Clinic, ConsentEvent, InboundRow, Outbound, Report, metadata
from reminders.texts import Texts
from tests.clinic import ANA, World
from tests.flows.hearing import inbound, keep

BO = "+12025550102"
WORDS = "done 2x10, my left hip burned pain 4"


@pytest.fixture
def ana(world: World) -> int:
    """Ana with every kind of trace: reminded, answered, alerted, held, in a digest."""
    client_id = world.enrol("Ana Quillfeather", email="ana@example.org", channel="sms+email", emergency_note="dog Pip")
    world.plan()
    world.pass_time(days=2)
    world.send()
    world.hear(WORDS)
    world.hear("Am I Quillfeather enough to swim?")
    with world.db.begin() as tx:
        client, clinic = tx.get(Client, client_id), tx.get(Clinic, 1)
        assert client is not None
        assert clinic is not None
        alert.raise_alert(tx, clinic, client, "severe_pain", "urgent", {"words": WORDS}, world.now)
        hold.open_hold(tx, client, "severe_pain", "rule", world.now, note="Quillfeather said so")
    world.send()
    world.pass_time(days=5)
    digest.run(world.db, Texts(), world.now)
    world.send()
    return client_id


def erased(world: World, client_id: int) -> erase.Erased:
    with world.db.begin() as tx:
        return erase.erase(tx, Texts(), 1, client_id, "command", "she asked", world.now)


def everything(world: World) -> Iterator[str]:
    """Every value of every row of the database, as text."""
    with world.db.read() as tx:
        for table in metadata.sorted_tables:
            for row in tx.execute(table.select()).mappings():
                for value in row.values():
                    yield bytes(value).decode(errors="replace") if isinstance(value, bytes) else str(value)


def test_nothing_that_names_her_or_that_she_wrote_is_left_anywhere(world: World, ana: int) -> None:
    traces = ("Quillfeather", ANA.removeprefix("+"), "ana@example.org", "left hip", "dog Pip")
    before = {trace for trace in traces for value in everything(world) if trace in value}
    erased(world, ana)

    assert before == set(traces)
    assert {trace for trace in traces for value in everything(world) if trace in value} == set()


def test_her_number_her_alerts_numbers_and_the_audit_log_stay(world: World, ana: int) -> None:
    numbers = [row.number for row in world.rows(Alert)]
    done = erased(world, ana)

    assert world.client(ana).closed_reason == "erased"
    assert [row.number for row in world.rows(Alert)] == numbers
    assert done.alerts == len(numbers) > 0
    with world.db.read() as tx:
        assert audit.broken_entries(tx) == []
        assert [one.action for one in audit.entries(tx)][-1] == "record erased"


def test_an_address_that_opted_out_is_known_again_and_stays_closed(world: World, ana: int) -> None:
    world.hear("STOP")
    assert erased(world, ana).closed_addresses >= 1
    again = world.enrol("Ana Vega")
    world.plan()
    world.pass_time(days=3)
    world.send()

    assert world.client(again).state == "invited"
    assert [row.state for row in world.rows(Outbound, client_id=again)] == []


def test_an_address_that_never_opted_out_may_be_enrolled_anew(world: World, ana: int) -> None:
    assert erased(world, ana).closed_addresses == 0
    again = world.enrol("Ana Vega")

    assert world.client(again).state == "active"


def test_what_a_husband_told_on_their_shared_phone_stays_his(world: World, ana: int) -> None:
    other = world.enrol("Bo Quill", holder="shared")
    with world.db.begin() as tx:
        inbound = tx.exec(select(Report.inbound_id).where(Report.client_id == ana)).first()
        tx.add(Report(client_id=other, at=world.now, channel="sms", text="both done", inbound_id=inbound))
    erased(world, ana)

    (kept,) = world.rows(Report, client_id=other)
    assert kept.text == "both done"
    assert kept.inbound_id == inbound
    assert {row.address for row in world.rows(ConsentEvent)} >= {ANA}


def test_she_cannot_be_erased_twice_nor_by_another_clinic(world: World, ana: int) -> None:
    with pytest.raises(NotFound), world.db.begin() as tx:
        erase.erase(tx, Texts(), 2, ana, "command", "she asked", world.now)
    erased(world, ana)
    with pytest.raises(NotFound):
        erased(world, ana)


def test_nothing_waits_to_be_sent_to_her(world: World, ana: int) -> None:
    erased(world, ana)
    world.plan()

    assert world.rows(Outbound, client_id=ana) == []


def test_no_row_names_one_that_is_gone(world: World, ana: int) -> None:
    erased(world, ana)

    if not world.db.is_postgres:
        with world.db.read() as tx:
            found: Any = tx.execute(text("PRAGMA foreign_key_check")).all()
        assert found == []


def bo_beside(world: World) -> int:
    """Bo, another client of Ben's, on a phone of his own."""
    bo = world.enrol("Bo Lund", BO)
    world.send()
    return bo


def test_a_call_to_staff_that_still_waits_is_taken_back_and_the_sender_goes_on(world: World) -> None:
    ana, bo = world.enrol(), bo_beside(world)
    world.sms.errors = [SendError("busy", code="20429")] * 2
    world.hear("I fell and hit my head")
    world.send()
    waiting = [row.id for row in world.queued("alert") if row.state == "waiting"]
    erased(world, ana)
    world.pass_time(days=2)
    world.plan()
    world.send()

    assert waiting
    assert {(row.state, row.why) for row in world.rows(Outbound) if row.id in waiting} == {
        ("withdrawn", "record erased")
    }
    assert "reminded" in {session.state for session in world.sessions(bo)}


def test_a_call_whose_answer_was_lost_is_never_sent_again_without_its_words(world: World) -> None:
    ana = world.enrol()
    world.sms.errors = [SendError("lost", unknown=True)] * 3
    world.hear("I fell and hit my head")
    world.send()
    erased(world, ana)
    sent = len(world.sms.sent)
    world.pass_time(minutes=3)
    world.send()

    assert len(world.sms.sent) == sent
    assert {row.state for row in world.queued("alert") if row.channel == "sms"} == {"withdrawn"}


def test_a_digest_that_still_waits_goes_without_her(world: World) -> None:
    ana = world.enrol()
    bo_beside(world)
    world.pass_time(days=2)
    world.plan()
    world.send()
    world.pass_time(days=5)
    digest.run(world.db, Texts(), world.now)
    erased(world, ana)
    world.send()

    (mail,) = world.queued("digest")
    assert mail.state == "accepted"
    assert "B.L." in mail.body
    assert "A.R." not in mail.body


def test_a_digest_that_still_waits_and_told_of_her_alone_is_taken_back(world: World) -> None:
    ana = world.enrol()
    world.pass_time(days=7)
    digest.run(world.db, Texts(), world.now)
    erased(world, ana)
    world.send()

    assert [(row.state, row.body) for row in world.queued("digest")] == [("withdrawn", "")]


def test_what_others_were_sent_keeps_its_words_when_her_name_is_a_piece_of_them(world: World) -> None:
    al, bo = world.enrol("Al", "+12025550120"), bo_beside(world)
    world.pass_time(days=2)
    world.plan()
    world.send()
    world.hear("All done, pain 3", BO)
    world.send()
    with world.db.begin() as tx:
        for key, clinic, staff, state in (("theirs", 2, None, "accepted"), ("note", 1, 1, "accepted")):
            tx.add(a_text(key, clinic, staff, state, "All clients were reminded.", world))
    before = {row.key: row.body for row in world.queued() if row.client_id != al}
    erased(world, al)

    assert {row.key: row.body for row in world.queued()} == before
    assert [row.body for row in world.queued() if row.client_id == bo] != []


def test_a_message_to_staff_that_is_under_way_keeps_the_body_that_the_provider_is_asked_for(world: World) -> None:
    al = world.enrol("Al", "+12025550120")
    with world.db.begin() as tx:
        tx.add(a_text("under way", 1, 1, "unknown", "Al was moved.", world))
        tx.add(a_text("settled", 1, 1, "delivered", "Al was moved.", world))
    erased(world, al)

    assert {row.key: row.body for row in world.queued("desk")} == {"under way": "Al was moved.", "settled": ""}


def a_text(key: str, clinic: int, staff: int | None, state: str, body: str, world: World) -> Outbound:
    """A text with these words in it, in a state."""
    return Outbound(
        key=key, clinic_id=clinic, staff_id=staff, kind="desk", channel="sms", to="+12025550177", body=body,
        state=state, due_at=world.now, created_at=world.now,
    )  # fmt: skip


def test_a_text_of_hers_that_the_providers_list_still_has_does_not_come_back(world: World, ana: int) -> None:
    world.hear("This is Quillfeather, I fell", provider_id="SM-fell")
    erased(world, ana)
    sent = len(world.queued())
    world.hear("This is Quillfeather, I fell", provider_id="SM-fell")

    assert [value for value in everything(world) if "Quillfeather" in value] == []
    assert len(world.queued()) == sent
    assert {row.outcome for row in world.rows(InboundRow)} == {"erased"}


def test_a_former_number_that_was_closed_stays_closed_and_is_kept_as_a_hash_only(world: World) -> None:
    ana = world.enrol()
    world.send()
    world.hear("STOP")
    with world.db.begin() as tx:
        clinic, client = tx.get(Clinic, 1), tx.get(Client, ana)
        assert clinic is not None
        assert client is not None
        details.change_address(tx, clinic, client, "sms", "+12025550133", "fay@example.org", world.now)
    erased(world, ana)
    again = world.enrol("Ana Vega")

    assert world.client(again).state == "invited"
    assert {row.address[:5] for row in world.rows(ConsentEvent)} == {"hash:"}


def test_one_who_was_closed_by_name_on_a_shared_phone_leaves_it_open_for_the_other(world: World) -> None:
    ana = world.enrol()
    bo = world.enrol("Bo Lund", ANA, holder="shared")
    world.hear("STOP Bo")
    done = erased(world, bo)

    assert done.closed_addresses == 0
    assert [(row.client_id, row.change) for row in world.rows(ConsentEvent)] == [(ana, "given")]


def test_a_shared_phone_that_was_closed_for_all_stays_closed_for_all(world: World, ana: int) -> None:
    bo = world.enrol("Bo Lund", ANA, holder="shared")
    world.hear("STOP")
    erased(world, ana)
    erased(world, bo)

    assert world.client(world.enrol("Cy Moss", ANA)).state == "invited"


def test_what_came_from_her_address_and_counted_as_nobodys_goes_too(world: World) -> None:
    world.hear("I fell and my left hip is broken")  # nobody's number yet: an alert for the lead
    client_id = world.enrol()
    keep(world, inbound("I am away, my left hip is being mended", "SM-away", world, automatic=True))
    receive.handle_waiting(world.db, world.now)
    world.send()
    assert sum("left hip" in value for value in everything(world)) > 2

    erased(world, client_id)

    assert [value for value in everything(world) if "left hip" in value or ANA.removeprefix("+") in value] == []


def test_what_nobody_was_named_for_on_a_phone_that_another_still_has_stays(world: World) -> None:
    client_id = world.enrol()
    world.enrol("Bo Ash", ANA)
    told = world.hear("the hip burned and nobody says whose")

    erased(world, client_id)

    assert world.rows(InboundRow, id=told)[0].text == "the hip burned and nobody says whose"
