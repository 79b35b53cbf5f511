"""How far an opt-out reaches."""

import pytest

from reminders.core.scope import is_keyword, means_every_way

KEYWORDS = {
    "STOP": True,
    "stop.": True,
    "Stopall": True,
    "cancel": True,
    "START": True,
    "stop please": False,
    "": False,
}


@pytest.mark.parametrize(("text", "expected"), KEYWORDS.items(), ids=repr)
def test_a_bare_carrier_word_is_one(text: str, expected: bool) -> None:
    assert is_keyword(text) is expected


REACH = {
    ("STOP", "sms"): False,
    ("please stop texting me", "sms"): False,
    ("stop all these texts", "sms"): False,
    ("no más mensajes por favor", "sms"): False,
    ("stop everything", "sms"): True,
    ("STOPALL", "sms"): True,
    ("stop the texts and the emails", "sms"): True,
    ("quiero dejar todo", "sms"): True,
    ("unsubscribe", "email"): False,
    ("stop all emails", "email"): False,
    ("no more mails and no more texts", "email"): True,
    ("stop all messages", "email"): True,
}


@pytest.mark.parametrize(("said", "expected"), REACH.items(), ids=repr)
def test_an_opt_out_reaches_the_other_way_only_when_it_says_so(said: tuple[str, str], expected: bool) -> None:
    assert means_every_way(*said) is expected
