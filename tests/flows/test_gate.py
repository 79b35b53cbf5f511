"""Whether a message may go at this instant, by what holds at its claim and not by what held when it was written."""

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from reminders.flows import care, details
from reminders.store.tables import Client, Clinic
from tests.clinic import World
from tests.flows.rounds import started, until

NEW_YORK = "America/New_York"


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
    "her window begins later": (details.Wanted({"window": "10:00-18:00"}), NEW_YORK, "Thu 10:00"),
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
