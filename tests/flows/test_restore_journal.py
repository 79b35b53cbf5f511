"""What the journal puts in force in a restored database: each hold by its rule, addresses for good, nobody twice."""

from datetime import date

import pytest

from reminders.errors import Refused
from reminders.flows import care, closing, consent, details, hold, whose
from reminders.store import restored
from reminders.store.tables import Alert, Client, Clinic, ConsentEvent, Contact, Hold
from tests.clinic import ANA, World
from tests.flows.test_restore import Lost
from tests.flows.test_restore import lost as lost  # the fixture

BEN, FAY = "ben@example.org", "fay@example.org"


def open_holds(lost_or_found: object, client_id: int) -> list[str]:
    rows = lost_or_found.rows(Hold, client_id=client_id)  # type: ignore[attr-defined]
    return [row.rule for row in rows if row.ended_at is None]


def consent_at_the_desk(world: World, client_id: int) -> None:
    with world.db.begin() as tx:
        client, clinic = tx.get(Client, client_id), tx.get(Clinic, 1)
        assert client is not None
        assert clinic is not None
        details.consent_given(tx, clinic, client, "signed form", date(2027, 3, 1), FAY, world.now)


def discharge(lost: Lost, ana: int) -> None:
    with lost.world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        closing.close(tx, client, "lost", FAY, lost.world.now)


def open_again(lost: Lost, ana: int) -> None:
    with lost.world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        closing.reopen(tx, client, FAY, lost.world.now)


def test_a_hold_outlives_the_end_of_another_rules_hold(lost: Lost) -> None:
    ana = lost.world.enrol("Ana Ruiz")
    bo = lost.world.enrol("Bo Lund", ANA, holder="shared")
    lost.world.send()
    lost.back_up()
    lost.world.pass_time(minutes=10)
    with lost.world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        care.put_on_hold(tx, client, "saw her", BEN, lost.world.now)
    lost.world.hear("I fell and hit my head")
    with lost.world.db.begin() as tx:
        bos = tx.get(Alert, lost.world.alerts(bo)[0].id)
        assert bos is not None
        whose.settle_whose(tx, bos, BEN, lost.world.now)
    world = lost.bring_back()
    lost.resume(world)

    assert open_holds(lost.world, ana) == ["by_hand"]
    assert open_holds(world, ana) == ["by_hand"]


def test_a_second_rules_hold_is_opened_beside_one_that_the_file_has(lost: Lost) -> None:
    ana = lost.world.enrol("Ana Ruiz")
    for rule in ("pain_up", "by_hand"):
        with lost.world.db.begin() as tx:
            client = tx.get(Client, ana)
            assert client is not None
            hold.open_hold(tx, client, rule, BEN, lost.world.now)
        if rule == "pain_up":
            lost.back_up()
            lost.world.pass_time(minutes=5)
    world = lost.bring_back()

    assert lost.resume(world).journal.holds == 1
    assert open_holds(world, ana) == ["pain_up", "by_hand"]


def test_a_client_opened_again_after_her_discharge_is_not_discharged_by_a_restore(lost: Lost) -> None:
    ana = lost.world.enrol()
    lost.world.send()
    lost.back_up()
    lost.world.pass_time(minutes=10)
    discharge(lost, ana)
    open_again(lost, ana)
    with lost.world.db.begin() as tx:
        client, clinic = tx.get(Client, ana), tx.get(Clinic, 1)
        assert client is not None
        assert clinic is not None
        details.consent_given(tx, clinic, client, "signed form", date(2027, 3, 1), FAY, lost.world.now)
    world = lost.bring_back()

    assert lost.resume(world).journal.discharged == 0
    assert world.client(ana).state == "active"


def test_a_client_discharged_once_more_stays_discharged(lost: Lost) -> None:
    ana = lost.world.enrol()
    lost.back_up()
    for step in (discharge, open_again, discharge):
        lost.world.pass_time(minutes=1)
        step(lost, ana)
    world = lost.bring_back()
    lost.resume(world)

    assert world.client(ana).state == "closed"


def test_a_client_opened_again_without_a_new_consent_gets_nothing_after_a_restore(lost: Lost) -> None:
    ana = lost.world.enrol()
    lost.world.send()
    lost.back_up()
    lost.world.pass_time(minutes=10)
    discharge(lost, ana)
    open_again(lost, ana)
    world = lost.bring_back()
    lost.resume(world)
    given = lost.world.sms.given
    world.pass_time(days=2)
    world.plan()
    world.send()

    assert world.client(ana).state == "invited"
    assert [row.consent for row in world.rows(Contact, client_id=ana)] == ["none"]
    assert lost.world.sms.given == given


@pytest.mark.parametrize("number", ["", "+12025550133"], ids=["taken away", "changed"])
def test_a_number_that_she_left_is_not_written_to_after_a_restore(lost: Lost, number: str) -> None:
    ana = lost.world.enrol()
    lost.world.send()
    lost.back_up()
    lost.world.pass_time(minutes=5)
    with lost.world.db.begin() as tx:
        client, clinic = tx.get(Client, ana), tx.get(Clinic, 1)
        assert client is not None
        assert clinic is not None
        details.change_address(tx, clinic, client, "sms", number, FAY, lost.world.now)
    world = lost.bring_back()
    lost.resume(world)
    given = lost.world.sms.given
    world.pass_time(days=2)
    world.plan()
    world.send()

    assert lost.world.sms.given == given


def test_a_client_who_was_enrolled_and_opted_out_after_the_backup_is_only_invited_when_enrolled_again(
    lost: Lost,
) -> None:
    lost.back_up()
    lost.world.pass_time(minutes=5)
    ana = lost.world.enrol("Ana Ruiz", "", email="ana@example.org", channel="email")
    lost.world.send()
    with lost.world.db.begin() as tx:
        hers = tx.get(Contact, lost.world.rows(Contact, client_id=ana)[0].id)
        assert hers is not None
        consent.unsubscribe(tx, hers, lost.world.now)
    world = lost.bring_back()
    lost.resume(world)
    given = lost.world.email.given
    again = world.enrol("Ana Ruiz", "", email="ana@example.org", channel="email")
    world.send()

    assert world.client(again).state == "invited"
    assert lost.world.email.given == given


def test_an_invited_client_who_refused_after_the_backup_is_not_opened_at_the_desk(lost: Lost) -> None:
    ana = lost.world.enrol(consent_on="", consent_how="")
    lost.back_up()
    lost.world.pass_time(minutes=5)
    with lost.world.db.begin() as tx:
        client, clinic = tx.get(Client, ana), tx.get(Clinic, 1)
        assert client is not None
        assert clinic is not None
        details.consent_withdrawn(tx, clinic, client, FAY, lost.world.now)
    world = lost.bring_back()
    lost.resume(world)

    with pytest.raises(Refused, match="comes back only by START"):
        consent_at_the_desk(world, ana)

    world.inbound = 100
    world.hear("START")
    assert world.client(ana).state == "active"


def test_what_the_file_knows_already_is_not_told_twice_nor_written_into_the_journal_again(lost: Lost) -> None:
    lost.world.enrol()
    lost.world.hear("STOP")
    lost.back_up()
    lost.world.pass_time(minutes=5)
    lost.world.hear("START")
    before = (lost.folder / "clinic.journal").read_text()
    world = lost.bring_back()
    events = len(world.rows(ConsentEvent))
    world.db.journal = lost.world.db.journal
    lost.resume(world)
    kept = world.rows(ConsentEvent)
    with world.db.begin() as tx:
        restored.mark_restored(tx, world.now)
    lost.resume(world)

    assert [one.change for one in kept[events:]] == ["closed", "restored"]
    assert world.rows(ConsentEvent) == kept
    assert (lost.folder / "clinic.journal").read_text() == before
    assert [row.consent for row in world.rows(Contact)] == ["closed"]
