"""Whether a message may go at this instant, by what holds at its claim and not by what held when it was written."""

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from reminders.core.channel import StatusReport
from reminders.core.schedule import local_date
from reminders.errors import SendError
from reminders.flows import alert, calling, care, deliver, delivery_status, details, inquire
from reminders.store.tables import Alert, Client, Clinic, Contact
from tests.clinic import ANA, World
from tests.flows.rounds import go, started, until

NEW_YORK = "America/New_York"
STRANGER = "+12025550188"


def at(day: int, hour: int, minute: int = 0) -> datetime:
    """Return an instant of March 2027, in UTC; New York is five hours behind."""
    return datetime(2027, 3, day, hour, minute, tzinfo=UTC)


def write_note(world: World, ana: int, words: str = "Please call me.") -> None:
    with world.db.begin() as tx:
        care.write(
            tx, tx.get_one(Clinic, 1), tx.get_one(Client, ana), words, "Ben Ames", "ben@example.org", 7, world.now
        )


def change(world: World, ana: int, wanted: details.Wanted) -> None:
    with world.db.begin() as tx:
        details.change(tx, tx.get_one(Clinic, 1), tx.get_one(Client, ana), wanted, "fay@example.org", world.now)


def hours_of(world: World, kind: str, zone: str = NEW_YORK) -> list[str]:
    """Return the local hours at which messages of a kind were accepted."""
    accepted = [row.accepted_at for row in world.queued(kind) if row.accepted_at is not None]
    return [one.astimezone(ZoneInfo(zone)).strftime("%a %H:%M") for one in accepted]


MOVED = {
    "she moves west": (details.Wanted({}, time_zone="Pacific/Honolulu"), "Pacific/Honolulu", "Thu 08:00"),
    "her window begins later": (details.Wanted({"window": "08:30-18:00"}), NEW_YORK, "Thu 08:30"),
}


@pytest.mark.parametrize(("wanted", "zone", "hour"), MOVED.values(), ids=MOVED.keys())
def test_what_waits_for_her_window_goes_by_the_window_and_zone_she_has_then(
    world: World, wanted: details.Wanted, zone: str, hour: str
) -> None:
    ana = started(world)
    world.now = at(4, 2)  # Wednesday 21:00: it waits for 08:00
    write_note(world, ana)
    change(world, ana, wanted)

    until(world, at(4, 22), hours=0.5)

    assert hours_of(world, "therapist_note", zone) == [hour]


def test_an_evening_prompt_is_dropped_when_her_new_zone_has_night(world: World) -> None:
    ana = started(world)
    world.now = at(3, 15)
    change(world, ana, details.Wanted({}, time_zone="Europe/Madrid"))

    until(world, at(4, 8), hours=0.5)  # 18:00 in New York is midnight in Madrid

    assert [row.why for row in world.queued("evening")] == ["outside her window"]


def test_the_clinics_own_window_counts_as_it_is_when_the_message_goes(world: World) -> None:
    ana = started(world)
    world.now = at(4, 2)
    write_note(world, ana)
    with world.db.begin() as tx:
        tx.get_one(Clinic, 1).window = "09:30-18:00"

    until(world, at(4, 22), hours=0.5)

    assert hours_of(world, "therapist_note") == ["Thu 09:30"]


def test_an_answer_that_could_not_go_in_the_evening_waits_for_her_morning(world: World) -> None:
    started(world)
    world.now = at(4, 2)  # Wednesday 21:00
    world.hear("Y2")
    world.now = at(4, 8)  # the sender comes back at 03:00

    world.send()
    assert [(row.state, row.due_at) for row in world.queued("thanks")] == [("waiting", at(4, 13))]

    until(world, at(4, 15), hours=0.5)
    assert hours_of(world, "thanks") == ["Thu 08:00"]


def test_a_danger_answer_that_could_not_go_in_the_evening_goes_at_night(world: World) -> None:
    started(world)
    world.now = at(4, 2)
    world.hear("I fell and hit my head")
    world.now = at(4, 8)

    world.send()

    assert hours_of(world, "danger") == ["Thu 03:00"]


# who texts, what, how many hours before 03:00 -> the kind of its answer, when it goes
HEARD_LATE = {
    "HELP of a stranger": (STRANGER, "HELP", 7, "stranger", "Thu 08:00"),
    "danger words of a stranger": (STRANGER, "I fell and hit my head", 7, "stranger", "Thu 03:00"),
    "old danger words of a stranger": (STRANGER, "I fell and hit my head", 20, "stranger", "Thu 08:00"),
    "a high rating": (ANA, "all done, pain 7", 9, "stop_level", "Thu 08:00"),
    "old danger words": (ANA, "I fell and hit my head", 12, "danger", "Thu 08:00"),
}


@pytest.mark.parametrize(("address", "text", "hours", "kind", "hour"), HEARD_LATE.values(), ids=HEARD_LATE.keys())
def test_only_danger_answers_to_young_texts_go_at_night(
    world: World, address: str, text: str, hours: int, kind: str, hour: str
) -> None:
    started(world)
    world.now = at(4, 8)  # 03:00
    world.hear(text, address, at=world.now - timedelta(hours=hours))
    go(world)

    until(world, at(4, 15), hours=0.5)

    assert hours_of(world, kind) == [hour]


def new_number(world: World, ana: int) -> None:
    with world.db.begin() as tx:
        client, clinic = tx.get_one(Client, ana), tx.get_one(Clinic, 1)
        details.change_address(tx, clinic, client, "sms", "+12025550133", "fay@example.org", world.now)
        details.consent_given(
            tx, clinic, client, "spoken at desk", local_date(world.now, NEW_YORK), "fay@example.org", world.now
        )


def test_a_failure_of_her_old_number_says_nothing_of_the_new_one(world: World) -> None:
    ana = started(world)
    old = world.queued("reminder")[0]
    new_number(world, ana)

    with world.db.begin() as tx:
        report = StatusReport(old.receipt, "undelivered", "30005", ANA, old.id or 0, 1, b"")
        delivery_status.record(tx, report, world.now)

    assert world.queued("reminder")[0].state == "failed"
    assert [one.unusable for one in world.rows(Contact, client_id=ana)] == [""]


def test_a_text_that_was_cut_off_does_not_go_again_to_an_old_number(world: World) -> None:
    ana = started(world)
    write_note(world, ana)
    world.sms.errors.append(SendError("cut off", unknown=True))
    world.send()
    new_number(world, ana)

    until(world, world.now + timedelta(minutes=15), hours=0.02)

    assert [(row.state, row.why) for row in world.queued("therapist_note")] == [("withdrawn", "no consent")]


def test_the_address_is_read_again_before_the_call(world: World) -> None:
    ana = started(world)
    write_note(world, ana)
    claims, _, _ = deliver.claim(world.sender)
    new_number(world, ana)

    deliver.hand_over(world.sender, claims)

    assert [row.state for row in world.queued("therapist_note")] == ["withdrawn"]


def test_a_note_that_was_cut_off_does_not_come_after_her_death(world: World) -> None:
    ana = started(world, holder="helper")
    write_note(world, ana, "See you Friday")
    world.sms.errors.append(SendError("cut off", unknown=True))
    world.send()
    world.pass_time(minutes=1)
    world.hear("Ana passed away last night")

    until(world, world.now + timedelta(minutes=15), hours=0.02)

    assert [(row.state, row.why) for row in world.queued("therapist_note")] == [("withdrawn", "death")]


def test_a_call_that_was_cut_off_is_not_made_again_once_the_alert_is_acknowledged(world: World) -> None:
    started(world)
    world.hear("I fell and hit my head")
    world.sms.errors.append(SendError("cut off", unknown=True))
    world.send()
    assert [row.state for row in world.queued("alert") if row.channel == "sms"] == ["unknown"]
    with world.db.begin() as tx:
        alert.acknowledge(tx, tx.get_one(Alert, 1), "ben@example.org", "link", world.now)

    until(world, world.now + timedelta(minutes=5), hours=0.02)

    calls = [row for row in world.queued("alert") if row.channel == "sms"]
    assert [(row.state, row.why) for row in calls] == [("withdrawn", "acknowledged")]


def test_a_correction_of_an_acknowledged_alert_is_told(world: World) -> None:
    started(world)
    world.hear("I fell and hit my head")
    world.send()
    with world.db.begin() as tx:
        one = tx.get_one(Alert, 1)
        alert.acknowledge(tx, one, "ben@example.org", "link", world.now)
        calling.tell_correction(tx, tx.get_one(Clinic, 1), one, world.now)

    world.send()

    assert {row.state for row in world.queued("alert") if row.details["corrected"]} == {"accepted"}


def test_the_provider_tries_a_note_no_longer_than_to_the_end_of_her_window(world: World) -> None:
    ana = started(world)
    until(world, at(5, 0, 50))  # 19:50 in New York
    write_note(world, ana)
    world.send()

    assert world.sms.sent[-1].valid_seconds == timedelta(minutes=10).total_seconds()


def test_the_provider_tries_an_answer_at_night_for_a_quarter_of_an_hour_and_a_danger_answer_as_long_as_it_can(
    world: World,
) -> None:
    started(world)
    until(world, at(4, 3))  # 22:00 in New York
    world.hear("done, pain 2")
    world.send()
    usual = world.sms.sent[-1].valid_seconds
    world.hear("I fell and hit my head")
    world.send()

    assert usual == timedelta(minutes=15).total_seconds()
    assert world.sms.sent[-1].valid_seconds > usual


def test_of_two_texts_that_waited_for_the_same_window_the_note_goes_and_the_question_leaves_the_reminder_its_place(
    world: World,
) -> None:
    ana = started(world)
    world.now = at(5, 2)  # Thursday 21:00, and Friday is an exercise day
    with world.db.begin() as tx:
        inquire.begin(tx, tx.get_one(Clinic, 1), tx.get_one(Client, ana), "reason", "reason", world.now)
    write_note(world, ana)

    until(world, at(6, 22), hours=0.5)

    told = {kind: hours_of(world, kind)[-1:] for kind in ("therapist_note", "reminder", "reason")}
    assert told == {"therapist_note": ["Fri 08:00"], "reminder": ["Fri 08:30"], "reason": ["Sat 08:00"]}
