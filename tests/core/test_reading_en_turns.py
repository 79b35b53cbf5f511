"""English signs, harmless sentences and opt-outs as people tell them in the middle of something else.

A sign must be found by the rules alone, so that no weight can lose it.
"""

import pytest

from reminders.core.reading import parse_session, read_reply
from reminders.core.reading.reader import evidence_of
from tests.core.danger_turns_en import SIGNS
from tests.core.harmless_turns_en import HARMLESS
from tests.core.opt_out_turns_en import NO_OPT_OUTS, OPT_OUTS

CHAIR = parse_session("sit to stand 2x10; wall push-up 2x8; heel raise 2x12; tandem stance 2x20 sec each side")
BAND = parse_session("band row 3x10; hip hinge 2x10; suitcase carry 4x30 sec; side-lying hip abduction 2x10 each side")
SIT, WALL, HEEL, TANDEM = "sit to stand", "wall push-up", "heel raise", "tandem stance"
ROW, HINGE, CARRY, SIDE = "band row", "hip hinge", "suitcase carry", "side-lying hip abduction"
Line = tuple[str, int | None, int | None, str]


@pytest.mark.parametrize(("flag", "text"), [(flag, text) for flag, texts in SIGNS.items() for text in texts])
def test_a_sign_told_in_passing_is_found_by_the_rules(flag: str, text: str) -> None:
    """Behind "not doing well", beside an amount, as a supposition, in a joke."""
    evidence, _, _ = evidence_of(text, "en", CHAIR, None)
    assert flag in evidence.danger.grades


@pytest.mark.parametrize("text", HARMLESS)
def test_a_sentence_that_shares_its_words_tells_of_none(text: str) -> None:
    """Denied, another's, a thing that fell, praise out of ten."""
    assert read_reply(text, "en", CHAIR, None).red_flags == ()


@pytest.mark.parametrize("text", OPT_OUTS)
def test_a_wish_to_hear_no_more_is_kept_whatever_stands_beside_it(text: str) -> None:
    """A pain, an hour, a cause or a report beside it does not weaken it."""
    assert read_reply(text, "en", CHAIR, None).intent == "opt_out"


@pytest.mark.parametrize("text", NO_OPT_OUTS)
def test_a_sentence_that_only_looks_like_such_a_wish_ends_nothing(text: str) -> None:
    """Ending an exercise, a pain or a visit is not ending the texts."""
    assert read_reply(text, "en", CHAIR, None).intent != "opt_out"


CHAIR_LINES: dict[str, list[Line]] = {
    # exercises named by number
    "2 and 3 done, 4 not": [(WALL, None, None, "all"), (HEEL, None, None, "all"), (TANDEM, None, None, "none")],
    "no to 2 and 4": [(WALL, None, None, "none"), (TANDEM, None, None, "none")],
    "1 2x10, 3 skipped, 4 2x20": [(SIT, 2, 10, "all"), (HEEL, None, None, "none"), (TANDEM, 2, None, "all")],
    "just did numbers two and three": [(WALL, None, None, "all"), (HEEL, None, None, "all")],
    "Yes to the first two, no to the last one": [
        (SIT, None, None, "all"),
        (WALL, None, None, "all"),
        (TANDEM, None, None, "none"),
    ],
    "a) 2x10 b) none c) none": [(SIT, 2, 10, "all"), (WALL, None, None, "none"), (HEEL, None, None, "none")],
    # numbers that name none
    "1 done 3 skipped": [],
    "done, pain 2 and 3 at night": [],
    "2 sets done, 3 was too much": [],
    # amounts told once for several, or as a sum
    "10 chair stands 8 wall push ups 12 heel raises": [
        (SIT, None, 10, "part"),
        (WALL, None, 8, "part"),
        (HEEL, None, 12, "part"),
    ],
    "9 sit to stands and 7 push ups, one set": [(SIT, 1, 9, "part"), (WALL, 1, 7, "part")],
    "9 sit to stands twice": [(SIT, 2, 9, "part")],
    "20 sit to stands in two lots of 10": [(SIT, 2, 10, "all")],
    "heel raises 24 in two goes of 12": [(HEEL, 2, 12, "all")],
    "11 heel raises once": [(HEEL, 1, 11, "part")],
    "did all the chair ones and one set of 9 heel raises": [(SIT, None, None, "all"), (HEEL, 1, 9, "part")],
    "two sets chairs two sets wall no heels": [
        (SIT, 2, None, "all"),
        (WALL, 2, None, "all"),
        (HEEL, None, None, "none"),
    ],
    # words of not done
    "gave the heel raises a miss": [(HEEL, None, None, "none")],
    "did the chair but not the heels as my toe is sore": [(SIT, None, None, "all"), (HEEL, None, None, "none")],
    "heels can wait, did everything else": [(HEEL, None, None, "none")],
    "chair 2x10, heels 2x12, tandem nil": [(SIT, 2, 10, "all"), (HEEL, 2, 12, "all"), (TANDEM, None, None, "none")],
    "no chair one but did tandem": [(SIT, None, None, "none"), (TANDEM, None, None, "all")],
}
BAND_LINES: dict[str, list[Line]] = {
    "rows and hinges, nothing else": [(ROW, None, None, "all"), (HINGE, None, None, "all")],
    "couldn't face the hinge, the rest done": [(HINGE, None, None, "none")],
    "didn't lie down for the hip thing": [(SIDE, None, None, "none")],
    "hinge was too heavy so not that one, yes to the others": [(HINGE, None, None, "none")],
    "carry was dismissed, rows done": [(CARRY, None, None, "none"), (ROW, None, None, "all")],
    "4 carries but only 10 seconds each": [(CARRY, 4, None, "part")],
    "hip lifts on the right only, the rest done": [(SIDE, None, None, "part")],
    "3 sets of rows and one carry": [(ROW, 3, None, "all"), (CARRY, 1, None, "part")],
    "took a stab at the rows, got through 1x10": [(ROW, 1, 10, "part")],
    "all but lugging the suitcase": [(CARRY, None, None, "none")],
    "two sets of each: rows, hinges": [(ROW, 2, None, "part"), (HINGE, 2, None, "all")],
    "rows aye, carry naw": [(ROW, None, None, "all"), (CARRY, None, None, "none")],
    "knocked the rows out of the park but left the carry": [(ROW, None, None, "all"), (CARRY, None, None, "none")],
}


@pytest.mark.parametrize(("text", "lines"), CHAIR_LINES.items(), ids=CHAIR_LINES)
def test_what_was_done_of_a_chair_session_one_by_one(text: str, lines: list[Line]) -> None:
    """By number, by sums, by what was left out."""
    told = read_reply(text, "en", CHAIR, None).by_exercise
    assert [(one.name, one.sets, one.reps, one.completed) for one in told] == lines


@pytest.mark.parametrize(("text", "lines"), BAND_LINES.items(), ids=BAND_LINES)
def test_what_was_done_of_a_band_session_one_by_one(text: str, lines: list[Line]) -> None:
    """By turns of phrase and one side alone."""
    told = read_reply(text, "en", BAND, None).by_exercise
    assert [(one.name, one.sets, one.reps, one.completed) for one in told] == lines


@pytest.mark.parametrize(
    ("text", "pain"),
    {
        "10 out of 10 would do again": None,
        "10/10 for effort": None,
        "rate this exercise 9 out of 10": None,
        "pain 9 out of 10, would not do again": 9,
        "9/10 pain again": 9,
        "3 out of 10 pain after 9 carries": 3,
        "my back hurts too much, it is 9": 9,
        "knees crack, no pain though": 0,
        "knees crack like twigs and it hurts": None,
    }.items(),
)
def test_praise_out_of_ten_is_no_pain(text: str, pain: int | None) -> None:
    """Nor does a rating of pain become praise."""
    assert read_reply(text, "en", BAND, None).pain == pain


@pytest.mark.parametrize(
    ("text", "intent"),
    {
        "gave the exercises a miss": "skip",
        "gave it a miss": "skip",
        "choir ran till ten, didn't do them": "skip",
        "no the day": "skip",
        "ouch my knee": "pain",
    }.items(),
)
def test_what_such_a_reply_is_for(text: str, intent: str) -> None:
    """A closing "miss" is no form of address."""
    assert read_reply(text, "en", CHAIR, None).intent == intent
