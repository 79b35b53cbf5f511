"""What was and what is: an old rating beside now, a rest for some time beside a wish for no more, a hand gone dead."""

from typing import Any

import pytest

from reminders.core.attribution import tells_of_death
from reminders.core.reading import read_reply

RATINGS: list[tuple[str, str, int | None]] = [
    ("en", "a year ago it was a 9, now it barely bothers me", None),
    ("es", "hace un año era 9, ahorita molesta apenas", None),
    ("en", "an hour ago 5", 5),
    ("es", "hace rato era 5", 5),
]
WISHES = [
    ("Off to Goa 10 to 24 December, no reminders please", "pause"),
    ("Please no messages this fortnight.", "pause"),
    ("no texts for the next two weeks please", "pause"),
    ("no messages this week please", "pause"),
    ("no texts please", "opt_out"),
    ("partway. grandkid needed picked up", "report"),
    ("partway. I am done with these texts", "opt_out"),
    ("no more texts this week or ever", "opt_out"),
    ("this week was hard. no more texts please", "opt_out"),
    ("no more texts please this is the third this week", "opt_out"),
]
HANDS = [
    ("my right hand keeps going dead", ("nerve_or_bladder",)),
    ("hand keeps going dead and i want to die", ("nerve_or_bladder", "crisis")),
    ("soon im going dead and nobody cares", ("crisis",)),
]
DEATHS = {
    "Ana died last night": True,
    "I am sorry, Ana has died. Her son": True,
    "Ana Ruiz died": True,
    "This is Ana's son, Ana died last night": True,
    "Ana murió anoche": True,
    "Ana se nos murió el lunes": True,
    "Ana's dog died": False,
    "el perro de Ana murió anoche": False,
    "Ana died a little doing these": False,
    "Ana died laughing": False,
    "did them all and Ana died lol": False,
    "Ana murió de risa": False,
    "Hugo died last night": False,
    "": False,
}


@pytest.mark.parametrize(("language", "text", "pain"), RATINGS)
def test_a_rating_of_then_is_none_of_now(language: str, text: str, pain: int | None) -> None:
    assert read_reply(text, language, (), "pain").pain == pain


@pytest.mark.parametrize(("text", "intent"), WISHES)
def test_no_texts_for_some_time_is_a_pause_no_texts_the_end_and_a_session_cut_short_neither(
    text: str, intent: str
) -> None:
    assert read_reply(text, "en", (), None).intent == intent


@pytest.mark.parametrize(("text", "flags"), HANDS)
def test_a_hand_that_goes_dead_is_numb_and_no_wish_to_die(text: str, flags: tuple[Any, ...]) -> None:
    assert set(read_reply(text, "en", (), None).red_flags) == set(flags)


@pytest.mark.parametrize(("text", "expected"), DEATHS.items())
def test_a_text_tells_of_her_death_where_it_names_her_as_who_died(text: str, expected: bool) -> None:
    assert tells_of_death(text, ("Ana Ruiz", "Ana")) is expected
