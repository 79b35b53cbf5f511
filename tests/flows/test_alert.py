"""An alert's life: numbered, added to, taken, opened again, closed; and what the client hears of it."""

from datetime import timedelta
from typing import Any

import pytest

from reminders.errors import BadInput, Refused
from reminders.flows import alert, hold
from reminders.store.tables import Alert, AlertEvent, Client, Clinic
from tests.clinic import ANA, World
from tests.flows.rounds import calls, go, sent, started, until


def raised(world: World, rule: str, level: str, client_id: int | None, **because: Any) -> int:
    with world.db.begin() as tx:
        clinic = tx.get(Clinic, 1)
        client = tx.get(Client, client_id) if client_id else None
        assert clinic is not None
        made = alert.raise_alert(tx, clinic, client, rule, level, because or {"form": "told", "values": {}}, world.now)
        return made.id or 0


def acknowledged(world: World, alert_id: int, how: str = "link", opened: bool = False) -> None:
    with world.db.begin() as tx:
        one = tx.get(Alert, alert_id)
        assert one is not None
        if opened:
            one.words_opened_by = "ben@example.org"
        alert.acknowledge(tx, one, "ben@example.org", how, world.now)


def closed(world: World, alert_id: int, outcome: str = "called", note: str = "spoke to her") -> None:
    with world.db.begin() as tx:
        one = tx.get(Alert, alert_id)
        assert one is not None
        alert.close(tx, one, "ben@example.org", outcome, note, world.now)


def the(world: World, alert_id: int) -> Alert:
    found: Alert = world.rows(Alert, id=alert_id)[0]
    return found


def test_numbers_are_short_per_clinic_and_never_reused(world: World) -> None:
    ana = started(world)
    first = raised(world, "missed", "routine", ana)
    closed(world, first, note="")
    raised(world, "missed", "routine", ana)
    raised(world, "fever", "today", ana)
    assert [one.number for one in world.alerts()] == [1, 2, 3]


def test_one_open_alert_a_client_and_rule(world: World) -> None:
    ana = started(world)
    first = raised(world, "pain_up", "today", ana)
    assert raised(world, "pain_up", "today", ana) == first
    closed(world, first)
    assert raised(world, "pain_up", "today", ana) != first


def test_of_a_flood_the_first_things_and_the_newest_are_kept(world: World) -> None:
    ana = started(world)
    for number in range(60):
        last = raised(world, "fever", "today", ana, form="told", values={"number": number})
    kept = [one["values"]["number"] for one in the(world, last).because]
    assert len(kept) == 50
    assert (kept[0], kept[-1]) == (0, 59)


# level raised first, rule, then: level, days later -> opens the acknowledged alert again
AGAIN = {
    "the same day, the same level": ("fever", "today", "today", 0, False),
    "a later day": ("fever", "today", "today", 1, True),
    "a danger sign the same day": ("fall_or_injury", "urgent", "urgent", 0, True),
    "a higher level the same day": ("fall_or_injury", "today", "urgent", 0, True),
}


@pytest.mark.parametrize("case", AGAIN.values(), ids=AGAIN.keys())
def test_what_opens_an_acknowledged_alert_again(world: World, case: tuple[str, str, str, int, bool]) -> None:
    rule, first, second, days, again = case
    ana = started(world)
    one = raised(world, rule, first, ana)
    acknowledged(world, one)
    world.pass_time(minutes=20, days=days)

    raised(world, rule, second, ana)

    assert the(world, one).state == ("open" if again else "acknowledged")
    assert the(world, one).round == (2 if again else 1)


def test_acknowledged_and_not_closed_by_the_next_working_noon_opens_again_and_calls_as_new(world: World) -> None:
    ana = started(world)
    one = raised(world, "fall_or_injury", "urgent", ana)
    acknowledged(world, one)
    before = len(calls(world))

    until(world, world.now.replace(hour=16, minute=59) + timedelta(days=1))
    assert the(world, one).state == "acknowledged"
    until(world, world.now + timedelta(minutes=2))

    assert the(world, one).state == "open"
    assert len(calls(world)) == before + 2


def test_a_friday_acknowledgement_waits_until_monday_noon(world: World) -> None:
    ana = started(world)
    world.pass_time(days=2)
    one = raised(world, "fever", "today", ana)
    acknowledged(world, one)
    due = the(world, one).next_step_at
    assert due is not None
    assert (due.strftime("%a"), due.hour) == ("Mon", 17)  # noon in New York


def test_the_client_hears_who_has_read_it_only_after_the_words_were_opened_behind_sign_in(world: World) -> None:
    ana = started(world)
    for how, opened in (("link", True), ("text", True), ("console", False), ("console", True)):
        one = raised(world, "fall_or_injury", "urgent", ana)
        acknowledged(world, one, how, opened)
        go(world)
        closed(world, one)
    told = sent(world, ANA, "read_by")
    assert len(told) == 1
    assert told[0].body.startswith("Ben Ames of Alder Hill Physio has read your message.")


def test_an_acknowledgement_of_a_today_alert_tells_her_nothing(world: World) -> None:
    ana = started(world)
    acknowledged(world, raised(world, "fever", "today", ana), "console", opened=True)
    assert world.queued("read_by") == []


def test_closing_asks_what_was_done_and_an_urgent_one_for_a_note(world: World) -> None:
    ana = started(world)
    urgent = raised(world, "fall_or_injury", "urgent", ana)
    with pytest.raises(BadInput, match="note"):
        closed(world, urgent, note=" ")
    with pytest.raises(BadInput, match="what was done"):
        closed(world, urgent, outcome="fine")
    closed(world, raised(world, "missed", "routine", ana), "nothing", "")
    assert the(world, urgent).state == "open"


def test_only_staff_close_pain_and_danger(world: World) -> None:
    ana = started(world)
    one = raised(world, "pain_up", "today", ana)
    with pytest.raises(Refused), world.db.begin() as tx:
        alert.close_by_report(tx, tx.get(Alert, one), world.now)  # type: ignore[arg-type]
    assert the(world, one).state == "open"


def test_closing_ends_easy_days_and_waiting_calls_but_no_hold(world: World) -> None:
    ana = started(world)
    world.hear("Y6")
    with world.db.begin() as tx:
        tx.get(Client, ana).easy_until_alert_closed = True  # type: ignore[union-attr]
    one = world.alerts()[0]

    closed(world, one.id or 0)

    assert not world.client(ana).easy_until_alert_closed
    with world.db.read() as tx:
        assert hold.is_held(tx, ana)


def test_the_share_that_led_to_something_is_kept_per_rule(world: World) -> None:
    ana = started(world)
    for outcome in ("called", "nothing", "expected", "changed dose"):
        closed(world, raised(world, "pain_up", "today", ana), outcome)
    with world.db.read() as tx:
        found = alert.shares(tx, tx.get(Clinic, 1))  # type: ignore[arg-type]
    assert found == {"pain_up": {"closed": 4, "led": 2}}


def test_the_story_of_an_alert_is_kept_line_by_line(world: World) -> None:
    ana = started(world)
    one = raised(world, "fall_or_injury", "urgent", ana)
    acknowledged(world, one)
    closed(world, one)
    assert [line.kind for line in world.rows(AlertEvent, alert_id=one)] == [
        "opened",
        "called",
        "acknowledged",
        "closed",
    ]


def test_the_sentence_says_why_it_fired_with_its_values(world: World) -> None:
    started(world)
    world.hear("Y6")
    one = world.alerts()[0]
    assert alert.sentences(one, "en") == ["Pain 6 on Wed Mar 3: her usual is 2, she stops from 6."]
    assert alert.sentences(one, "es") == ["Dolor 6 el mié 3 mar: su dolor habitual es 2, se detiene desde 6."]


def test_nothing_of_one_clinic_is_called_to_another(world: World) -> None:
    ana = started(world)
    raised(world, "fall_or_injury", "urgent", ana)
    until(world, world.now + timedelta(hours=3))
    told = {to for to, _ in calls(world)}
    assert told == {"+12025550150", "ben@example.org", "+12025550170", "dee@example.org"}


def test_taking_it_twice_changes_nothing_and_a_closed_one_cannot_be_taken(world: World) -> None:
    ana = started(world)
    one = raised(world, "fever", "today", ana)
    acknowledged(world, one)
    acknowledged(world, one)
    with pytest.raises(BadInput, match="acknowledged by"):
        acknowledged(world, one, "shouting")
    closed(world, one)
    closed(world, one)
    with pytest.raises(Refused):
        acknowledged(world, one)
    assert [line.kind for line in world.rows(AlertEvent, alert_id=one)] == ["opened", "acknowledged", "closed"]


def test_nobody_is_told_who_read_it_while_it_may_be_one_of_two(world: World) -> None:
    ana = started(world)
    one = raised(world, "fall_or_injury", "urgent", ana)
    with world.db.begin() as tx:
        tx.get(Alert, one).one_of_two = True  # type: ignore[union-attr]
    acknowledged(world, one, "console", opened=True)
    assert world.queued("read_by") == []
    assert alert.sentences(the(world, one))[-1] == "The phone is shared: it may be one of two clients."


def test_shares_count_from_an_instant(world: World) -> None:
    ana = started(world)
    closed(world, raised(world, "fever", "today", ana))
    with world.db.read() as tx:
        clinic = tx.get(Clinic, 1)
        assert clinic is not None
        assert alert.shares(tx, clinic, world.now + timedelta(minutes=1)) == {}
        assert alert.shares(tx, clinic, world.now - timedelta(minutes=1)) == {"fever": {"closed": 1, "led": 1}}


def test_a_clinic_without_an_open_day_in_sight_still_gets_its_note(world: World) -> None:
    ana = started(world)
    with world.db.begin() as tx:
        first = world.now.date()
        tx.get(Clinic, 1).closed_days = [  # type: ignore[union-attr]
            (first + timedelta(days=day)).isoformat() for day in range(-1, 70)
        ]
    assert the(world, raised(world, "fever", "today", ana)).next_step_at == world.now + timedelta(days=1)
