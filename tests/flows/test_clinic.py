"""A clinic's own details and wording, changed within what is safe."""

from datetime import date

import pytest
from sqlmodel import select

from reminders.core.languages import LANGUAGES
from reminders.errors import BadInput
from reminders.flows import clinic
from reminders.flows.clinic import WORDABLE
from reminders.store.db import Tx
from reminders.store.tables import Audit, Clinic
from reminders.texts import Texts
from tests.clinic import World

FAY = "fay@example.org"
WELCOME = (
    "{{ clinic }}: exercises on {{ days | days }} at {{ time | hour }}. A computer reads this. Emergency: "
    "{{ emergency }}. Phone {{ phone }}. HELP for help, STOP to end."
)


def ours(tx: Tx) -> Clinic:
    return tx.exec(select(Clinic).where(Clinic.name == "Alder Hill Physio")).one()


def change(world: World, **given: str) -> list[str]:
    with world.db.begin() as tx:
        return clinic.change(tx, ours(tx), given, FAY, world.now)


def reword(world: World, language: str, name: str, words: str) -> None:
    with world.db.begin() as tx:
        clinic.reword(tx, ours(tx), Texts(), language, name, words, FAY, world.now)


def test_changed_details_are_kept_and_named_in_the_log(world: World) -> None:
    assert change(world, hours="mon-thu/09:00-16:00", window="9:00-19:00", name="Alder Hill Physio") == [
        "hours",
        "window",
    ]

    with world.db.read() as tx:
        assert (ours(tx).hours, ours(tx).window) == ("mon-thu/09:00-16:00", "09:00-19:00")
    assert world.rows(Audit, action="clinic changed")[-1].details == {"fields": ["hours", "window"]}
    assert change(world, name="Alder Hill Physio") == []


def test_a_closed_day_moves_the_sessions_that_fall_on_it_and_one_open_again_brings_them_back(world: World) -> None:
    client_id = world.enrol()
    assert [row.on_date for row in world.sessions(client_id)] == [date(2027, 3, 3)]

    change(world, closed_days="2027-03-03, 2026-12-25")

    assert [row.on_date for row in world.sessions(client_id)] == [date(2027, 3, 5)]
    change(world, closed_days="2026-12-25")
    assert [row.on_date for row in world.sessions(client_id)] == [date(2027, 3, 3)]


WRONG = {
    "name": "  ",
    "phone": "12",
    "time_zone": "Mars/Base",
    "hours": "always",
    "closed_days": "tomorrow",
    "emergency_number": "help",
    "window": "20:00-08:00",
    "note_hours": "noon",
    "lead_email": "dee",
    "retain_days": "3",
    "words_in_mail": "maybe",
}


@pytest.mark.parametrize(("field", "text"), WRONG.items(), ids=WRONG.keys())
def test_a_field_that_does_not_fit_is_named_and_nothing_is_kept(world: World, field: str, text: str) -> None:
    with pytest.raises(BadInput, match=field.replace("_", " ")):
        change(world, **{"crisis_line": "113", field: text})

    with world.db.read() as tx:
        assert ours(tx).crisis_line == "988"


def test_a_window_that_leaves_out_a_clients_hour_is_refused(world: World) -> None:
    world.enrol()

    with pytest.raises(BadInput, match=r"window: it leaves out the reminder hours of clients \(1 of them, .* 08:30"):
        change(world, window="09:00-19:00")

    assert change(world, window="08:00-19:00") == ["window"]


@pytest.mark.parametrize("name", WORDABLE)
@pytest.mark.parametrize("language", LANGUAGES)
def test_our_own_wording_is_safe_by_the_rules_for_others(language: str, name: str) -> None:
    texts = Texts()
    clinic.refuse_unsafe(texts, language, name, clinic.ours(texts, language, name))


def test_a_clinics_own_wording_goes_out_and_an_empty_one_brings_ours_back(world: World) -> None:
    reword(world, "en", "welcome", WELCOME)
    world.enrol()
    world.send()
    assert world.sms.sent[-1].body.startswith(
        "Alder Hill Physio: exercises on Monday, Wednesday and Friday at 8:30 am."
    )

    reword(world, "en", "welcome", "  ")
    with world.db.read() as tx:
        assert ours(tx).wording == {}


UNSAFE = {
    "safety wording": ("danger_call_now", "All fine.", "cannot be changed"),
    "a value gone": ("welcome", WELCOME.replace("{{ emergency }}", "911"), "must keep the value emergency"),
    "a word gone": ("welcome", WELCOME.replace("STOP", "QUIT"), "must keep the word STOP"),
    "no computer": ("welcome", WELCOME.replace("computer", "person"), "must keep the word computer"),
    "a foreign value": ("welcome", WELCOME + " {{ password }}", "cannot be used here"),
    "a program": ("welcome", WELCOME + " {{ ''.__class__ }}", "cannot be used here"),
    "a block": ("welcome", WELCOME + " {% for x in y %}", "stand only around values"),
    "a bare Stop first": ("welcome", "Stop, " + WELCOME, "must not begin with the word Stop"),
    "too long": ("welcome", WELCOME + " x" * 300, "more than three text parts"),
}


@pytest.mark.parametrize(("name", "words", "sentence"), UNSAFE.values(), ids=UNSAFE.keys())
def test_a_wording_that_is_not_safe_is_refused(world: World, name: str, words: str, sentence: str) -> None:
    with pytest.raises(BadInput, match=sentence):
        reword(world, "en", name, words)


def test_a_language_we_do_not_have_has_no_wording(world: World) -> None:
    with pytest.raises(BadInput, match="cannot be changed"):
        reword(world, "fr", "welcome", WELCOME)
