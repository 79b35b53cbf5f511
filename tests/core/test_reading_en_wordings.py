"""English wordings that were read wrong once: signs that hid behind harmless words, and harmless words like signs.

Each class stands beside sentences that use the same words and mean the opposite, so that no rule swallows a sign.
"""

import pytest

from reminders.core.reading import parse_session, read_reply

CHAIR = parse_session("sit to stand 2x10; wall push-up 2x8; heel raise 2x12; tandem stance 2x20 sec each side")
BAND = parse_session("band row 3x10; hip hinge 2x10; suitcase carry 4x30 sec; side-lying hip abduction 2x10 each side")
FALL, DIZZY, NERVE = "fall_or_injury", "faint_or_dizzy", "nerve_or_bladder"
CHEST, SPINE, SEVERE = "chest_or_breathing", "possible_fracture", "severe_pain"
SIGNS = {
    # "used" is a habit of old only before "to", and a thing that was used is not who fell
    "I used the green band and fell": FALL,
    "used my stick and still fell": FALL,
    "had my cane with me and fell": FALL,
    "grabbed the rail but fell anyway": FALL,
    "I am not used to the band and fell on my elbow": FALL,
    "used a towel for the pulls and felt a snap in my back": SPINE,
    # "didn't ... and" goes on to what did happen
    "wasn't watching my feet and fell in the hallway": FALL,
    "I never saw the hose and tripped over it": FALL,
    "did not hold on to the counter and slipped": FALL,
    "didn't have breakfast and passed out": DIZZY,
    "never fell before but did this morning": FALL,
    "don't worry but I fell": FALL,
    "don't worry I fell but I'm ok": FALL,
    "not today, hit my head": FALL,
    "not tonight hit my elbow on the door": FALL,
    "fell a short way down the stairs": FALL,
    "fell two short steps from the door": FALL,
    "last night fell on the steps": FALL,
    "slipped in my socks": FALL,
    "knocked back a step by the door": FALL,
    "not just sore, numb in my toes": NERVE,
    "jaw and arm hurt": CHEST,
    "pain between my shoulder blades and sweating": CHEST,
    "tired of living": "crisis",
    "sick of this life.": "crisis",
    "I fell for a third time this week": FALL,
    "fell for the second time today": FALL,
    "my husband fell and I hurt my back lifting him": FALL,
    "threw my back out moving the sofa": FALL,
    "hurt my shoulder catching the toddler": FALL,
    "came off my bike by the church": FALL,
    "the dog yanked me off my feet": FALL,
    "a car clipped me in the lot": FALL,
    "he ran into me and over I went": FALL,
    "a rib cracked when I coughed": SPINE,
    "back was screaming 9 so I quit": SEVERE,
    "hip hollering at me, 8. one set": SEVERE,
    # the same words as in the harmless ones below
    "my foot fell through the porch boards": FALL,
    "plans changed and I fell through the deck": FALL,
    "the dog knocked over the lamp and I fell": FALL,
    "the cat knocked me over": FALL,
    "I fell hook in hand off the dock": FALL,
    "broke a leg on the ice": FALL,
    "I nearly fainted when I stood up to pay the bill": DIZZY,
    "I fainted when I saw the bill": DIZZY,
    "my feet are dead, I can't feel them": NERVE,
    "long day and my left leg went dead": NERVE,
    "legs like jelly after, I could not stand": NERVE,
    "chest is clear they say but there is pressure in it": CHEST,
    "chest is fine, pain in my chest at night though": CHEST,
    "my back when I was lifting went pop and now it hurts": SPINE,
    "the twins knocked me down the steps": FALL,
    "my mother had a stroke": NERVE,
    "the wife says I fell": FALL,
    "Doris had a dizzy spell": DIZZY,
}
HARMLESS = (
    "dinner plans fell through so no exercises",
    "hinges fell through today, rows done",
    "the cat knocked over my plant and I had to clean up, did 1 set",
    "fell hook, line and sinker for a quiz show, none today",
    "we broke a leg tonight as they say, what a show. exercises done",
    "nearly fainted when I saw the plumber's bill, all done",
    "about passed out at the price of coffee, done pain 1",
    "triple shift, my feet are dead. not tonight",
    "long day, my legs are dead, skipping",
    "legs were like jelly by the end but did them all",
    "pins and needles from kneeling in the garden, gone now",
    "Doctor says chest is clear, no pain there. All done, 2 in the hip",
    "that last heel raise knocked the wind out of my sails, all done",
    "Back when I drove truck my back was in agony. Today pain 1, all done",
    "the twins fell off the swing, both ok, but no time for my exercises",
    "the wife fell on the steps, been busy with her, no exercises",
    "Earl had a dizzy spell and I stayed with him so no time for my exercises",
    "not afraid of falling any more, done",
    "fell one rep short on the wall ones",
    "fell two short on the heels",
    "dusk fell before I got to them",
    "slept like the dead, did them this morning",
    "slipped in a quick set before dinner",
    "slipped away to the lake, no exercises",
    "knocked back a coffee and did them",
    "tired of living out of boxes, moving day",
    "I have not slipped and fallen",
    "never tripped and fell, all done",
    "used to faint a lot, not now",
    "fell for a good book, no exercises",
)
OPT_OUTS = (
    "Kindly discontinue these notices.",
    "please stop this correspondence",
    "no more notices please",
    "I would like these reminders stopped",
    "lay off with the texts",
    "I no longer require this service",
    "Please refrain from messaging me",
    "get my number off this list",
    "I don't wish to hear from you",
    "dont want to hear from yall no more",
    "quit blowing up my phone",
    "s t o p",
    "terminate the messages",
    "I decline further messages",
    "no thank you to the texts",
    "text me no more",
)
NO_OPT_OUTS = (
    "done with your exercises",
    "had to leave off with the rows",
    "refrain from lifting?",
    "filling up my bottle, then the exercises",
    "pain off and on",
    "I need to be dropped off at 5",
    "I want these texts to start again",
    "I would like my texts stopped until June",
    "No texts from Friday to Monday please, we are at the lake",
    "Going to Maine Feb 2 to 19, no texts those days please",
    "This is my new number, use this one",
)
PAINS = {
    "pain is 5 today, was 7 on Monday": 5,
    "Tuesday was a 6, today is a 3": 3,
    "pain was 8 on sunday but 4 today": 4,
    "it was a 9 in the spring, 3 now, that is my pain": 3,
    "the 9 was a typo, pain should be a 6": 6,
    "used the red band instead of the green, pain about 3": 3,
    "Pain level: one.": 1,
    "all done, paim 3": 3,
    "neck is killing me 8 today": 8,
    "knee was barking 7": 7,
    "Back 9 was slow, my back is a 6": 6,
    "played the back 9, pain 2": 2,
    "pain would be 8 without the pills, 4 with them": 4,
    "husband would say 8, I'd say 5": 5,
    "3 before 5 after": 5,
    "did all 4 pain free": 0,
    "it would be a 9 if I did more": None,
    "all but 2": None,
    "fell short, only 8": None,
    "knee barking for 3 days": None,
}


@pytest.mark.parametrize(("text", "sign"), SIGNS.items(), ids=str)
def test_a_sign_beside_harmless_words_is_seen(text: str, sign: str) -> None:
    assert sign in read_reply(text, "en", CHAIR, None).red_flags


@pytest.mark.parametrize("text", HARMLESS)
def test_words_that_only_sound_like_a_sign_are_none(text: str) -> None:
    assert read_reply(text, "en", BAND if "hinge" in text else CHAIR, None).red_flags == ()


@pytest.mark.parametrize("text", OPT_OUTS)
def test_a_wish_to_hear_no_more_is_kept(text: str) -> None:
    assert read_reply(text, "en", CHAIR, None).intent == "opt_out"


@pytest.mark.parametrize("text", NO_OPT_OUTS)
def test_other_wishes_end_nothing(text: str) -> None:
    assert read_reply(text, "en", CHAIR, None).intent not in ("opt_out", "wrong_number")


@pytest.mark.parametrize(("text", "pain"), PAINS.items(), ids=str)
def test_the_rating_is_the_one_of_this_session(text: str, pain: int | None) -> None:
    assert read_reply(text, "en", CHAIR, None).pain == pain


LINES: dict[str, list[tuple[str, int | None, int | None, str]]] = {
    "the rows and half the hinges": [("band row", None, None, "all"), ("hip hinge", None, None, "part")],
    "A and B but not C": [
        ("band row", None, None, "all"),
        ("hip hinge", None, None, "all"),
        ("suitcase carry", None, None, "none"),
    ],
    "rows done, the bags I left and the leg ones I left": [
        ("band row", None, None, "all"),
        ("suitcase carry", None, None, "none"),
        ("side-lying hip abduction", None, None, "none"),
    ],
    "squeezed in the rows and the hinges before work, 2 sets each": [
        ("band row", 2, None, "part"),
        ("hip hinge", 2, None, "all"),
    ],
    "hinges x2 sets but only 8 each": [("hip hinge", 2, 8, "part")],
    "hinges twice, ten each": [("hip hinge", 2, 10, "all")],
    "rows 3x10, on the carries, only 2 of the 4": [("band row", 3, 10, "all"), ("suitcase carry", 2, None, "part")],
    "rows 10 10 10, hinges 10 10": [("band row", 3, 10, "all"), ("hip hinge", 2, 10, "all")],
    "right side only on the leg lifts, rows all": [
        ("side-lying hip abduction", None, None, "part"),
        ("band row", None, None, "all"),
    ],
    "the copy says hinge 2x10, I managed just 2x6": [("hip hinge", 2, 6, "part")],
    "bandrows 3x10": [("band row", 3, 10, "all")],
    "did the rose three sets of ten and the hinges two sets of ten": [
        ("band row", 3, 10, "all"),
        ("hip hinge", 2, 10, "all"),
    ],
    "all xcpt the suitcase": [("suitcase carry", None, None, "none")],
    "no weights here so I carried milk. everything done": [],
    "band got all tangled but everything done": [],
}


@pytest.mark.parametrize(("text", "lines"), LINES.items(), ids=LINES)
def test_what_was_done_is_told_one_by_one(text: str, lines: list[tuple[str, int | None, int | None, str]]) -> None:
    told = read_reply(text, "en", BAND, None).by_exercise

    assert [(one.name, one.sets, one.reps, one.completed) for one in told] == lines


CORRECTED = {
    "I told you 2x10 this morning, make that 2x8": (2, 8),
    "Error in my last: 1 set, not 2": (1, None),
}


@pytest.mark.parametrize(("text", "amount"), CORRECTED.items(), ids=CORRECTED)
def test_what_was_said_before_is_put_right(text: str, amount: tuple[int, int | None]) -> None:
    reading = read_reply(text, "en", CHAIR, None)

    assert (reading.sets, reading.reps, reading.correction) == (*amount, True)


INTENTS = {
    "no not tonite": "skip",
    "off the ship now, fire em up again": "resume",
    "I wish to begin receiving the messages once more": "opt_in",
    "hold on, I said I skipped but that was Wed. Today I did em all": "report",
    "could not finish, pain 4": "report",
    "gave it a miss": "skip",
    "ran out of steam before I began": "skip",
    "the doc cleared me, let's go again": "resume",
    "sorted": "report",
    "ok I'll give it a go, thanks": "chat",
    "This is my number now, use it": "unclear",
    "this is my number now, I don't know any clinic": "wrong_number",
}


@pytest.mark.parametrize(("text", "intent"), INTENTS.items(), ids=INTENTS)
def test_what_a_reply_is_for(text: str, intent: str) -> None:
    assert read_reply(text, "en", CHAIR, None).intent == intent


@pytest.mark.parametrize("text", ["got through about 3/4 of it", "2/3 of it done"])
def test_a_share_is_part(text: str) -> None:
    assert read_reply(text, "en", CHAIR, None).completed == "part"
