"""English danger signs in plain words, told by where they are and where they go, beside words that only sound alike.

Each class of sentence that hid a sign once has its rows here, with harmless ones that share its words.
"""

import pytest

from reminders.core.reading import parse_session, read_reply
from reminders.core.reading.reader import evidence_of

CHAIR = parse_session("sit to stand 2x10; wall push-up 2x8; heel raise 2x12; tandem stance 2x20 sec each side")
FALL, DIZZY, NERVE = "fall_or_injury", "faint_or_dizzy", "nerve_or_bladder"
CHEST, SPINE, SEVERE, CRISIS = "chest_or_breathing", "possible_fracture", "severe_pain", "crisis"
SIGNS = {
    # where a pain goes is no sentence about going down the road
    "there is an ache in my chest going down the left side": CHEST,
    "one set, then a tight chest and pain going down the arm": CHEST,
    "pressure in my chest is worse": CHEST,
    "chest pain all day long": CHEST,
    "both feet numb, spreading up to the knees": NERVE,
    # what stands behind "but" is no part of what is denied before it
    "did them all no pain but tightness across the chest": CHEST,
    "no pain but I can't bear this": SEVERE,
    "no pain but hip is killing me": SEVERE,
    "no pain but a ladder came down on me": FALL,
    # trouble with breath, however it is named
    "breathing trouble since last night, what to do doctor": CHEST,
    "some difficulty with my breathing": CHEST,
    "it hurts whenever I breathe in": CHEST,
    "sharp in the ribs each time I take a breath": CHEST,
    "needed my nitro twice": CHEST,
    "inhaler isn't touching it": CHEST,
    # "could not" tells of what happened, as "couldn't" does
    "I could not breathe well on the wall one": CHEST,
    "I could not feel my foot": NERVE,
    "could barely feel my toes": NERVE,
    "could not bear it": SEVERE,
    "a gripe in my chest since lunch": CHEST,
    "chest was fluttering on the last one": CHEST,
    "rushed to hospital with my heart yesterday": CHEST,
    "out of puff just walking to the door": CHEST,
    # bladder and bowels in plain words
    "pee came out before I knew": NERVE,
    "I leaked all over the seat": NERVE,
    "bowels opened on their own": NERVE,
    "can't have a wee since lunch": NERVE,
    "wet myself on the shop floor": NERVE,
    "haven't been able to go for a wee": NERVE,
    "cannot control my wee": NERVE,
    "side of my face like I've been to the dentist": NERVE,
    # legs that do not do what they are told
    "my leg won't do what I want": NERVE,
    "loss of feeling in the foot": NERVE,
    "legs not having strength since yesterday": NERVE,
    "my feet feel like cotton wool": NERVE,
    "weakness and numbness in the arm": NERVE,
    "tingling stopped but came back": NERVE,
    "didn't make it to the loo in time": NERVE,
    "no life in my left leg": NERVE,
    "leg has no strength": NERVE,
    # what others, animals and things did to her
    "a goat butted my knee": FALL,
    "the horse trod on me": FALL,
    "knocked over by a bike": FALL,
    "thrown off my horse": FALL,
    "a tin fell on my toe": FALL,
    "a kid on a scooter ran into me": FALL,
    "tore my hamstring": FALL,
    "I did go over in the garden": FALL,
    "I fel": FALL,
    "neighbours lifted me up off the floor": FALL,
    "hit the wall with my elbow": FALL,
    "carried my grandson and fell": FALL,
    "fell over backwards": FALL,
    "crashed my mobility scooter": FALL,
    "down the stairs on my backside": FALL,
    "got a nasty knock on the head": FALL,
    "fight with the back step, lost": FALL,
    "done my knee in": FALL,
    "the puppy bowled me over": FALL,
    "I fel so only one set": FALL,
    "a cow kicked my shin my husband is with me": FALL,
    # bones
    "cracked a couple of ribs": SPINE,
    "can't put any weight on my foot": SPINE,
    "bent to get the paper and crack. pain 6": SPINE,
    "something pinged in my back and it hurts bad": SPINE,
    "felt a bone shift in my spine": SPINE,
    "wrist cracked on the wall one and it's swollen": SPINE,
    "lifted my grandson and heard a pop": SPINE,
    "hospital says I have a fresh fracture": SPINE,
    "an almighty crack in the hip": SPINE,
    "back just went, so sharp": SPINE,
    "like a poker in my back": SPINE,
    # spells
    "had a queer turn after breakfast": DIZZY,
    "one of my turns again": DIZZY,
    "had another of my spells": DIZZY,
    "I had a blackout": DIZZY,
    "head keeps going round and round": DIZZY,
    "spinning head, stopped early": DIZZY,
    "conked out in the hall, woke on the tiles": DIZZY,
    "had to lie down before I dropped": DIZZY,
    "almost passed out from the heat": DIZZY,
    "head in a spin all morning": DIZZY,
    "slid down the wall in a heap": DIZZY,
    "had a blackout so one set only": DIZZY,
    "my head goes when I bend": DIZZY,
    # more than can be borne
    "I'm in bits with my hip": SEVERE,
    "the pain brought me to tears": SEVERE,
    "pain makes me scream": SEVERE,
    "the pain is very severe": SEVERE,
    "severe knee pain": SEVERE,
    "an awful lot of pain": SEVERE,
    "crippled with pain": SEVERE,
    "the pain is brutal": SEVERE,
    "in tears with my knee": SEVERE,
    "the pain is too much to bear": SEVERE,
    # not wanting to live
    "I have my tablets put by, I could take the lot": CRISIS,
    "been saving up my painkillers": CRISIS,
    "going to top myself": CRISIS,
    "want to do away with myself": CRISIS,
    "wrote my goodbye note": CRISIS,
    "fed up with living": CRISIS,
    "I'm done with living": CRISIS,
    "thinking of walking in front of a bus": CRISIS,
    "I keep thinking of driving into a tree": CRISIS,
    "might do something stupid to myself": CRISIS,
    "I wouldn't mind if I never woke up": CRISIS,
    "I want to sleep and never wake up": CRISIS,
    "I can't live like this": CRISIS,
    "going to end it tonight": CRISIS,
    "I'm dying inside": CRISIS,
    "if I had a gun": CRISIS,
    "nobody would care if I died": CRISIS,
    "don't see the point of me": CRISIS,
    "I hate my life": CRISIS,
    "tonight is the night I end it": CRISIS,
    "asking God to take me": CRISIS,
    "don't be surprised if I'm not around": CRISIS,
    "think about not being around any more": CRISIS,
}
HARMLESS = (
    "arms folded across my chest for the chairs",
    "pulled the band across my chest 3x10",
    "went over it twice",
    "new fracture clinic appointment on Friday",
    "don't see the point of it, can I skip heel raises",
    "I don't see the point of that one, can I leave it out?",
    "don't see the point of the heel raises",
    "my chest is fine",
    "a cold on my chest",
    "hit 12 with all my heart",
    "the cat sat on my chest",
    "out of puff for a moment as usual",
    "knocked it on the head today",
    "saved my tablets for after dinner",
    "agony aunt on the radio, did mine after",
    "slipped the sets in between two visits",
    "slipped them in after lunch, 2x10",
    "lost control of the dog so one set",
    "lost control of the trolley, done",
    "sat going down on to the chair slowly, 2x10",
    "fell about laughing, 2x10 done",
    "fell out with my brother, no exercises",
    "all went down a treat",
    "went down the stairs and did them",
    "went over the sheet twice",
    "went over to my daughter's, skip",
    "landed on 3 sets",
    "slid the chair against the wall, 2x10",
    "a blackout in our street, no exercises",
    "we had a blackout so did them by candle",
    "head is spinning with all these appointments",
    "unbearable heat, will do them tonight",
    "torture these exercises haha",
    "knees clicking as usual but no pain",
    "tingling gone completely",
    "my mate passed out at the pub, exercises done before",
    "husband having chest pains, in hospital with him. No exercises",
    "weak tea and strong legs",
    "can't go on Sundays",
    "no trouble breathing",
    "would not go over the limit",
    "the kids squabbled so I went over to help",
    "finished the lot, all of them, with my tablets before",
    "took my tablets and did the lot",
    "walked into town and did them after",
    "hit the floor running today, all done",
    "wrote a note to remind me",
)


@pytest.mark.parametrize(("text", "flag"), SIGNS.items(), ids=SIGNS)
def test_a_sign_in_plain_words_is_found_by_its_words(text: str, flag: str) -> None:
    """The rules see it, whatever the judge thinks."""
    evidence, _, _ = evidence_of(text, "en", CHAIR, None)
    assert flag in evidence.danger.grades


@pytest.mark.parametrize("text", HARMLESS)
def test_words_that_sound_like_a_sign_raise_none(text: str) -> None:
    """No rule and no guess sees a sign."""
    assert read_reply(text, "en", CHAIR, None).red_flags == ()


@pytest.mark.parametrize(
    ("text", "flag"),
    {
        "I slipped in between the bed and the wall": FALL,
        "lost control of my bladder near the dog": NERVE,
        "went down on the stairs": FALL,
        "feels like a band across my chest": CHEST,
        "stretched my arms and pain across my chest": CHEST,
        "tripped on the hose and went over it": FALL,
        "went over on the stairs to my daughter's": FALL,
        "fell out of the car with my sister": FALL,
        "tingling gone, now I can't feel my foot": NERVE,
        "landed on my 3 bad fingers": FALL,
        "my head is spinning and I had to sit": DIZZY,
        "I had a blackout in the kitchen": DIZZY,
        "the pain is unbearable in this heat": SEVERE,
        "torture, this back of mine": SEVERE,
        "I can't go on any longer": CRISIS,
        "going to end it here": CRISIS,
        "took my tablets, the lot, all at once": CRISIS,
        "I have chest pains, my husband is in hospital": CHEST,
        "could my knee have cracked? it is swollen and I fell": FALL,
    }.items(),
)
def test_a_true_sign_in_the_words_of_a_harmless_one_stays(text: str, flag: str) -> None:
    """What takes a sign back asks for the words right beside it."""
    assert flag in read_reply(text, "en", CHAIR, None).red_flags


@pytest.mark.parametrize("text", ["I could fall", "she could faint, be careful", "could not be better, all done"])
def test_what_could_be_is_no_sign(text: str) -> None:
    """Only "could not" tells of what happened."""
    assert read_reply(text, "en", CHAIR, None).red_flags == ()


@pytest.mark.parametrize(
    ("text", "asked", "intent", "pain"),
    [
        ("leave off texting me", None, "opt_out", None),
        ("knock off messaging us please", None, "opt_out", None),
        ("pack it in with the texts", None, "opt_out", None),
        ("give over, you're kind", None, "chat", None),
        ("who is Marjorie? this is Kofi phone", None, "wrong_number", None),
        ("deleted the message, again please", None, "resend", None),
        ("back on track from Tuesday", None, "resume", None),
        ("no exercises for a month, doctor says", None, "pause", None),
        ("used to be an 8, these days a 3", "pain", "pain", 3),
    ],
)
def test_wishes_in_other_words(text: str, asked: str | None, intent: str, pain: int | None) -> None:
    """To leave off, to have lost the list, to be back or away, and what the pain is these days."""
    reading = read_reply(text, "en", CHAIR, asked)
    assert (reading.intent, reading.pain) == (intent, pain)
