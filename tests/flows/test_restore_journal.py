"""What the journal puts in force in a restored database: each hold by its rule, addresses for good, nobody twice."""

from reminders.flows import care, hold, whose
from reminders.store.tables import Alert, Client, Hold
from tests.clinic import ANA
from tests.flows.test_restore import Lost
from tests.flows.test_restore import lost as lost  # the fixture

BEN = "ben@example.org"


def open_holds(lost_or_found: object, client_id: int) -> list[str]:
    rows = lost_or_found.rows(Hold, client_id=client_id)  # type: ignore[attr-defined]
    return [row.rule for row in rows if row.ended_at is None]


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
