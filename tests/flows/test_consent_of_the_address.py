"""Consent belongs to the address: whoever of a household says STOP, by whichever road, closes it for all on it."""

from reminders.flows import consent, details, page, receive
from reminders.store.tables import Client, Clinic, ClinicNote, ConsentEvent, Contact, ExerciseSession, Outbound
from tests.clinic import World
from tests.flows.hearing import couple, inbound, keep


def household(world: World) -> tuple[int, int]:
    """Ana and Bo have one mailbox; each was reminded by mail."""
    mailbox = {"email": "home@example.org", "channel": "email"}
    ana = world.enrol("Ana Ruiz", "", **mailbox)
    bo = world.enrol("Bo Lund", "", holder="shared", **mailbox)
    world.send()
    world.pass_time(days=2)
    world.plan()
    world.send()
    return ana, bo


def events(world: World) -> list[tuple[int | None, str]]:
    return [(one.client_id, one.change) for one in world.rows(ConsentEvent) if one.change == "withdrawn"]


def test_a_stop_in_answer_to_one_persons_mail_closes_the_shared_mailbox_for_all(world: World) -> None:
    ana, bo = household(world)
    (sent,) = world.rows(Outbound, client_id=ana, kind="reminder")
    row = inbound("STOP", "mail-1", world, source="email", address="home@example.org", answers=(sent.receipt,))
    keep(world, row)
    receive.handle_waiting(world.db, world.now)

    assert {one.consent for one in world.rows(Contact)} == {"closed"}
    assert events(world) == [(None, "withdrawn")]
    assert {note.client_id for note in world.rows(ClinicNote)} == {ana, bo}


def test_a_stop_on_her_page_closes_the_shared_phone_for_all(world: World) -> None:
    ana, _ = couple(world)
    session = world.rows(ExerciseSession, client_id=ana)[0]
    with world.db.begin() as tx:
        hers = tx.get(ExerciseSession, session.id)
        assert hers is not None
        page.submit(tx, hers, "", None, "stop texting me", "q", world.now)

    assert {one.consent for one in world.rows(Contact)} == {"closed"}
    assert events(world) == [(None, "withdrawn")]


def test_stop_all_closes_her_shared_mailbox_for_all_and_leaves_the_others_phone(world: World) -> None:
    world.enrol("Ana Ruiz", email="home@example.org", channel="sms+email")
    bo = world.enrol("Bo Lund", "+12025550102", email="home@example.org", channel="sms+email")
    world.send()

    world.hear("stop all messages")

    assert {one.kind: one.consent for one in world.rows(Contact, client_id=bo)} == {"sms": "open", "email": "closed"}
    assert world.client(bo).state == "active"


def test_one_click_closes_a_shared_mailbox_though_the_one_who_clicks_was_closed_before(world: World) -> None:
    ana, bo = household(world)
    with world.db.begin() as tx:
        client, clinic = tx.get(Client, ana), tx.get(Clinic, 1)
        assert client is not None
        assert clinic is not None
        details.consent_withdrawn(tx, clinic, client, "fay@example.org", world.now)
    assert world.rows(Contact, client_id=bo)[0].consent == "open"

    with world.db.begin() as tx:
        hers = tx.get(Contact, world.rows(Contact, client_id=ana)[0].id)
        assert hers is not None
        consent.unsubscribe(tx, hers, world.now)

    assert {one.consent for one in world.rows(Contact)} == {"closed"}
