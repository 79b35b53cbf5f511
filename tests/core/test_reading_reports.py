"""What replies say of a session: how much, which exercises, how much pain; rows as a receptionist would note them.

Danger signs, opt-outs and the invited short answers have tables of their own.
"""

from datetime import date
from typing import Any

import pytest

from reminders.core.reading import parse_session, read_reply, why

CHAIR = parse_session("sit to stand 2x10; wall push-up 2x8; heel raise 2x12; tandem stance 2x20 sec each side")
BAND = parse_session("band row 3x10; hip hinge 2x10; suitcase carry 4x30 sec; side-lying hip abduction 2x10 each side")
SILLA = parse_session(
    "sentarse y pararse 2x10; flexión en la pared 2x8; elevación de talones 2x12;"
    " equilibrio en tándem 2x20 seg cada lado"
)
WHOLE = {
    "sets by repetitions": ("2x10", 2, 10, "all"),
    "with the sign for times": ("did 2 × 10", 2, 10, "all"),
    "by in words": ("2 by 10 done", 2, 10, "all"),
    "in number words": ("two sets of ten", 2, 10, "all"),
    "as dictation hears it": ("did too sets of ten", 2, 10, "all"),
    "repetitions first": ("10 reps, 2 sets", 2, 10, "all"),
    "set by set": ("10 and 10", 2, 10, "all"),
    "three sets listed, the last uneven": ("did 10,10,8", 3, None, "all"),
    "fewer sets than prescribed": ("only 1 set", 1, None, "part"),
    "one of two sets": ("1 of 2 sets", 1, None, "part"),
    "rounds": ("did two rounds", 2, None, "all"),
    "done and nothing more": ("done", None, None, "all"),
    "half": ("did half", None, None, "part"),
    "everything": ("did everything on the list", None, None, "all"),
    "the prescription instead of another": ("did 3 rounds instead of 2", 3, None, "all"),
}


@pytest.mark.parametrize(("text", "sets", "reps", "completed"), WHOLE.values(), ids=WHOLE)
def test_an_amount_for_the_whole_session(text: str, sets: int | None, reps: int | None, completed: str) -> None:
    reading = read_reply(text, "en", CHAIR, None)

    assert (reading.intent, reading.sets, reading.reps, reading.completed) == ("report", sets, reps, completed)


LINES: dict[str, tuple[str, list[tuple[str, int | None, int | None, str]]]] = {
    "names with amounts": (
        "rows 3x10, hinge 1x10",
        [("band row", 3, 10, "all"), ("hip hinge", 1, 10, "part")],
    ),
    "amounts with names": (
        "3x10 on the rows and 2x10 on the hinges",
        [("band row", 3, 10, "all"), ("hip hinge", 2, 10, "all")],
    ),
    "all but one": ("all but the carry", [("suitcase carry", None, None, "none")]),
    "letters": (
        "A yes B yes C no",
        [("band row", None, None, "all"), ("hip hinge", None, None, "all"), ("suitcase carry", None, None, "none")],
    ),
    "words of done behind the names": (
        "rows done hinges done no carry",
        [("band row", None, None, "all"), ("hip hinge", None, None, "all"), ("suitcase carry", None, None, "none")],
    ),
    "seconds are never repetitions": ("carries 2x30 sec", [("suitcase carry", 2, None, "part")]),
    "names and amounts in turn": ("rows and hinges 3x10 and 2x8", [
        ("band row", 3, 10, "all"), ("hip hinge", 2, 8, "part")]),
    "sets for each of a list": ("1 set each of rows, hinges and carries", [
        ("band row", 1, None, "part"), ("hip hinge", 1, None, "part"), ("suitcase carry", 1, None, "part")]),
    "uneven sides": ("leg lifts on the left 2x10 and the right 1x10", [
        ("side-lying hip abduction", None, None, "part")]),
    "a no closes one name of a list": ("did rows and hinges, carries no, side leg ok", [
        ("band row", None, None, "all"), ("hip hinge", None, None, "all"), ("suitcase carry", None, None, "none"),
        ("side-lying hip abduction", None, None, "all")]),
    "the others told as a group are not listed": ("left my band at home so no rows, did the other three", [
        ("band row", None, None, "none")]),
    "by place": ("first one done, skipped the last one", [
        ("band row", None, None, "all"), ("side-lying hip abduction", None, None, "none")]),
    "one letter off": ("hip hindge 2x10", [("hip hinge", 2, 10, "all")]),
    "the place where it hurt is not listed": ("got dizzy during the hinge", []),
}  # fmt: skip


@pytest.mark.parametrize(("text", "lines"), LINES.values(), ids=LINES)
def test_exercises_told_one_by_one(text: str, lines: list[Any]) -> None:
    reading = read_reply(text, "en", BAND, None)

    assert [(one.name, one.sets, one.reps, one.completed) for one in reading.by_exercise] == lines


PAINS = {
    "in short": ("done p3", 3),
    "out of ten": ("did them, 3 out of 10", 3),
    "a range counts its upper end": ("done, pain 3-4", 4),
    "in words": ("all done, about a three for pain", 3),
    "none": ("did them no pain", 0),
    "the worst of the session": ("done, pain was 6 now 2", 6),
    "the worse of two places": ("done. knee 2 shoulder 4", 4),
    "off the scale is none": ("done, pain 12", None),
    "another day's is none": ("done. last month it was a 9", None),
    "weights, hours and pressures are none": ("done at 6 with 5 lb, bp 128/76", None),
    "a question about it is none": ("is a 4 too much pain?", None),
    "soreness without a number is none": ("done, a bit sore", None),
    "taken back within the text": ("done pain 3 wait no pain 4", 4),
}


@pytest.mark.parametrize(("text", "pain"), PAINS.values(), ids=PAINS)
def test_the_pain_that_is_stated(text: str, pain: int | None) -> None:
    assert read_reply(text, "en", CHAIR, None).pain == pain


SPANISH = {
    "sets of": ("dos de diez", 2, 10, "all", None),
    "with pain": ("ya los hice todos, dolor de 3", None, None, "all", 3),
    "by ear": ("si ya los ise me dolio un 2", None, None, "all", 2),
    "no pain": ("terminé, sin dolor", None, None, "all", 0),
    "one round": ("solo una vuelta", 1, None, "part", None),
    "half": ("la mitad nomás", None, None, "part", None),
}


@pytest.mark.parametrize(("text", "sets", "reps", "completed", "pain"), SPANISH.values(), ids=SPANISH)
def test_spanish_reports(text: str, sets: int | None, reps: int | None, completed: str, pain: int | None) -> None:
    reading = read_reply(text, "es", SILLA, None)

    assert (reading.sets, reading.reps, reading.completed, reading.pain) == (sets, reps, completed, pain)


def test_a_client_set_to_spanish_who_writes_english_is_read() -> None:
    reading = read_reply("I did all of them this morning, pain was a 2", "es", SILLA, None)

    assert (reading.intent, reading.completed, reading.pain) == ("report", "all", 2)


def test_a_bare_number_with_nothing_asked_is_asked_about() -> None:
    reading = read_reply("7", "en", CHAIR, None)

    assert (reading.intent, reading.pain, reading.ask) == ("unclear", None, "meaning")


def test_a_bare_number_belongs_to_the_pain_question() -> None:
    assert read_reply("7", "en", CHAIR, "pain").pain == 7


def test_a_correction_is_one() -> None:
    reading = read_reply("sorry, pain 5 not 3", "en", CHAIR, None)

    assert (reading.correction, reading.pain) == (True, 5)


def test_a_report_of_yesterday_says_so() -> None:
    assert read_reply("Yesterday's: 2x10 & pain 1", "en", CHAIR, None).when == "yesterday"


def test_a_day_and_month_get_the_year_that_fits() -> None:
    assert read_reply("did them all on march 3", "en", CHAIR, None, today=date(2027, 3, 5)).when == "2027-03-03"


def test_every_field_says_which_words_led_to_it() -> None:
    told = why("did 2x10, pain 3", "en", CHAIR, None)

    assert told["pain"] == "3"
    assert "2 x 10" in told["sets"]


def test_a_helper_speaks_of_the_client() -> None:
    reading = read_reply("Mom fell in the kitchen", "en", CHAIR, None, "helper")

    assert (reading.red_flags, reading.about) == (("fall_or_injury",), "client")


@pytest.mark.parametrize(
    ("text", "concern"),
    [
        ("My calf is hot and swollen", ("clot_or_wound",)),
        ("left calf is red, warm and swollen since yesterday", ("clot_or_wound",)),
        ("my cow's calf is swollen", ()),
    ],
)
def test_a_calf_is_her_leg_unless_an_animal_is_named(text: str, concern: tuple[str, ...]) -> None:
    assert read_reply(text, "en", (), None).concerns == concern
