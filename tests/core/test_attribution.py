"""Where a report goes and whose it is, as tables."""

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.attribution import Holder, KnownSession, Place, named_day, place, whose

WED = date(2027, 3, 10)  # a Wednesday; sessions on Mon 8, Wed 10 and the week before
MON, FRI_BEFORE, LONG_AGO = date(2027, 3, 8), date(2027, 3, 5), date(2027, 3, 1)


def known(**states: str) -> list[KnownSession]:
    days = {"long_ago": LONG_AGO, "fri": FRI_BEFORE, "mon": MON, "wed": WED, "next_fri": date(2027, 3, 12)}
    return [KnownSession(number, days[name], state) for number, (name, state) in enumerate(states.items(), 1)]


CASES = {
    "without a day it is today's session": (None, WED, known(mon="missed", wed="reminded"), Place(2, WED)),
    "today's session takes it before its reminder": (None, WED, known(mon="missed", wed="planned"), Place(2, WED)),
    "today's done session takes a second report": (None, WED, known(mon="missed", wed="done"), Place(2, WED)),
    "today's held session takes it": (None, WED, known(mon="missed", wed="held"), Place(2, WED)),
    "on a day off it is the latest that was reminded": (
        None,
        date(2027, 3, 9),
        known(fri="missed", mon="reminded"),
        Place(2, MON),
    ),
    "a done session is passed over": (None, date(2027, 3, 9), known(fri="missed", mon="done"), Place(1, FRI_BEFORE)),
    "a skipped one may still be done": (None, date(2027, 3, 9), known(mon="skipped"), Place(1, MON)),
    "an unsent one may still be done": (None, date(2027, 3, 9), known(mon="unsent"), Place(1, MON)),
    "a paused or held one is not": (
        None,
        date(2027, 3, 9),
        known(fri="paused", mon="held"),
        Place(None, date(2027, 3, 9)),
    ),
    "all done makes an extra": (None, date(2027, 3, 9), known(mon="done"), Place(None, date(2027, 3, 9))),
    "seven days back still counts": (None, date(2027, 3, 8), known(long_ago="missed"), Place(1, LONG_AGO)),
    "eight days back does not": (None, date(2027, 3, 9), known(long_ago="missed"), Place(None, date(2027, 3, 9))),
    "a session to come takes nothing": (
        None,
        date(2027, 3, 11),
        known(wed="done", next_fri="planned"),
        Place(None, date(2027, 3, 11)),
    ),
    "the named day's session, though today has one": ("mon", WED, known(mon="missed", wed="reminded"), Place(1, MON)),
    "yesterday had none: the latest before it": ("yesterday", WED, known(mon="missed", wed="reminded"), Place(1, MON)),
    "a named day takes it even when done": ("yesterday", WED, known(fri="missed", mon="done"), Place(2, MON)),
    "a named day before every session is an extra of that day": (
        "2027-03-04",
        WED,
        known(mon="missed"),
        Place(None, date(2027, 3, 4)),
    ),
    "a day still to come names nothing": ("2027-04-01", WED, known(wed="reminded"), Place(1, WED)),
}


@pytest.mark.parametrize(("when", "today", "sessions", "expected"), CASES.values(), ids=CASES)
def test_a_report_goes_to(when: str | None, today: date, sessions: list[KnownSession], expected: Place) -> None:
    assert place(when, today, sessions) == expected


PAIN_CASES = {
    "joins today's session": (WED, known(wed="reminded"), 1),
    "joins an earlier one that is still awaited": (date(2027, 3, 9), known(mon="reminded"), 1),
    "does not turn a missed one": (date(2027, 3, 9), known(mon="missed"), None),
}


@pytest.mark.parametrize(("today", "sessions", "expected"), PAIN_CASES.values(), ids=PAIN_CASES)
def test_a_reply_of_pain_alone(today: date, sessions: list[KnownSession], expected: int | None) -> None:
    assert place(None, today, sessions, only_pain=True).session_id == expected


DAYS = {
    "today": ("today", WED),
    "yesterday": ("yesterday", date(2027, 3, 9)),
    "the same weekday is today": ("wed", WED),
    "a weekday is the latest one": ("thu", date(2027, 3, 4)),
    "a date": ("2027-03-02", date(2027, 3, 2)),
    "a date to come is none": ("2027-03-11", None),
    "no date at all is none": ("soon", None),
    "nothing is none": (None, None),
}


@pytest.mark.parametrize(("when", "expected"), DAYS.values(), ids=DAYS)
def test_the_day_that_a_reply_names(when: str | None, expected: date | None) -> None:
    assert named_day(when, WED) == expected


states = st.sampled_from(["planned", "reminded", "done", "part", "skipped", "missed", "unsent", "paused", "held"])
lists = st.dictionaries(st.integers(-12, 12), states, max_size=12)


@given(lists, st.sampled_from([None, "today", "yesterday", "mon", "sun", "2027-03-06"]))
def test_no_report_ever_goes_to_a_session_to_come_or_older_than_a_week(found: dict[int, str], when: str | None) -> None:
    sessions = [KnownSession(n, WED + timedelta(days=offset), state) for n, (offset, state) in enumerate(found.items())]

    where = place(when, WED, sessions)

    assert where.on_date <= WED
    chosen = [one for one in sessions if one.id == where.session_id]
    assert all(WED - timedelta(days=7) <= one.on_date <= WED for one in chosen)


ANA, BEN_SENIOR = Holder(1, ("Ana Ruiz", "Ana")), Holder(2, ("Benjamín Ruiz", "Benjamín"))


def awaiting(holder: Holder, *, asked: bool = False) -> Holder:
    return Holder(holder.client_id, holder.names, awaits=True, was_asked=asked)


WHOSE = {
    "one client alone on the phone": ("done", [ANA], False, 1),
    "who is named": ("Ana did all of hers", [awaiting(ANA), awaiting(BEN_SENIOR)], False, 1),
    "a name without its accent": ("benjamin 3", [awaiting(ANA), awaiting(BEN_SENIOR)], False, 2),
    "a possessive": ("that was Ana's", [ANA, BEN_SENIOR], False, 1),
    "both named is nobody's": ("Ana and Benjamin are done", [awaiting(ANA), awaiting(BEN_SENIOR)], False, None),
    "a name inside another word is none": ("banana for breakfast", [awaiting(ANA), awaiting(BEN_SENIOR)], False, None),
    "only one could have sent it": ("done", [ANA, awaiting(BEN_SENIOR)], False, 2),
    "nobody could have": ("done", [ANA, BEN_SENIOR], False, None),
    "who was asked and answers": ("3", [awaiting(ANA, asked=True), awaiting(BEN_SENIOR)], True, 1),
    "who was asked, but it answers nothing": ("Y3", [awaiting(ANA, asked=True), awaiting(BEN_SENIOR)], False, None),
}


@pytest.mark.parametrize(("text", "holders", "is_answer", "expected"), WHOSE.values(), ids=WHOSE)
def test_a_reply_from_a_phone_is_hers(text: str, holders: list[Holder], is_answer: bool, expected: int | None) -> None:
    assert whose(text, holders, is_answer=is_answer) == expected


def test_a_danger_sign_without_a_name_may_be_anybodys_even_when_one_alone_is_awaited() -> None:
    couple = [
        Holder(1, ("Ana Ruiz", "Ana"), awaits=True, was_asked=False),
        Holder(2, ("Hugo Ruiz", "Hugo"), awaits=False, was_asked=False),
    ]

    assert whose("I fell in the kitchen", couple, is_answer=False, is_danger=True) is None
    assert whose("all done", couple, is_answer=False) == 1
    assert whose("Hugo fell in the kitchen", couple, is_answer=False, is_danger=True) == 2


TOLD_OF = {
    "another who helps her": ("I fell, Hugo is calling the ambulance", None),
    "in Spanish": ("me caí, Hugo llama a la ambulancia", None),
    "another who is asked to come": ("Hugo, I fell", None),
    "herself by a greeting": ("Hugo here: I fell and hit my head", 2),
    "herself by a word before": ("this is Hugo, I fell", 2),
    "herself in Spanish": ("soy Hugo, me caí", 2),
    "herself with a colon": ("Hugo: I have chest pain", 2),
    "herself by a signature": ("I fell and hit my head\nHugo", 2),
    "one's kin": ("my husband Hugo fell and hit his head", 2),
    "in the third person": ("Hugo fell in the kitchen", 2),
}


@pytest.mark.parametrize(("text", "expected"), TOLD_OF.values(), ids=TOLD_OF)
def test_whoever_speaks_of_herself_beside_anothers_name_may_be_either(text: str, expected: int | None) -> None:
    couple = [Holder(1, ("Ana Ruiz", "Ana")), Holder(2, ("Hugo Ruiz", "Hugo"))]

    assert whose(text, couple, is_answer=False, is_danger=True) == expected
    assert whose(text, couple, is_answer=False) == 2
