"""Exercises told one by one: what is said of each, whatever it is called and wherever the mark or the amount stands.

A to D are the exercises of the session in their order; an exercise that nothing is said of has no line.
"""

from typing import Any

import pytest

from reminders.core.reading import parse_session, read_reply

CHAIR = parse_session("sit to stand 2x10; wall push-up 2x8; heel raise 2x12; tandem stance 2x20 sec each side")
BAND = parse_session("band row 3x10; hip hinge 2x10; suitcase carry 4x30 sec; side-lying hip abduction 2x10 each side")
SILLA = parse_session(
    "sentarse y pararse 2x10; flexión en la pared 2x8; elevación de talones 2x12;"
    " equilibrio en tándem 2x20 seg cada lado"
)
LEFT_OUT = {
    "the chair and the wall done, the heels and the balance got left behind": "A all, B all, C none, D none",
    "did the sit to stands. The wall push ups were left undone and so was the tandem": "A all, B none, D none",
    "sit to stands 2x10, wall didn't get done, heels 2x12": "A 2x10 all, B none, C 2x12 all",
    "wall was skipped, rest fine": "B none",
    "never touched the tandem, did everything else": "D none",
    "I held off on the heel raises": "C none",
    "I left out the heel raises and the tandem too": "C none, D none",
    "skipt the heels": "C none",
    "only the wall got left out, did the heels": "B none, C all",
    "I gave the heel raises a miss": "C none",
    "almost everything, ran out of time for the tandem": "D none",
    "the wall and the chair both done, balance not": "A all, B all, D none",
    "Skipped only the balance": "D none",
    "chair 2x10, tandem negative": "A 2x10 all, D none",
    "my heel hurts so no heel raises": "C none",
    "no wall or heels, pain 3": "B none, C none",
}
LEFT_OUT_BAND = {
    "skipped the lying down ones": "D none",
    "did rows, hinges and carries but the ones lying on my side had to be left": "A all, B all, C all, D none",
    "rows 3x10, hinges 2x10; have not tried the carry": "A 3x10 all, B 2x10 all, C none",
    "hinge hurt so I skipped it, did the others": "B none",
    "the rows bothered my shoulder so I left them out, rest done": "A none",
    "couldn't get down to do the side lying, did the rest": "D none",
    "did the rows but my shoulder didn't like it, hinges fine": "A all, B all",
    "left the hips out": "D none",
    "rows left arm only": "A part",
    "carries were tough but I got through them, rows easy": "A all, C all",
    "did rows, no hips today, my hip is a 4": "A all, D none",
    "rows 3x10 on both arms, couldn't do the left. Hinges 2x10": "A 3x10 part, B 2x10 all",
    "I left my band at my daughter's so no rows, rest done": "A none",
    "did rows and hinges, left the other two": "A all, B all",
}
MARKS = {
    "sits y, wall n, heels y, balance n": "A all, B none, C all, D none",
    "chair yes wall yes heels yes balance no": "A all, B all, C all, D none",
    "yes chair, yes wall, no heels, yes balance": "A all, B all, C none, D all",
    "✅ chair ✅ wall ✅ heels ❌ tandem": "A all, B all, C all, D none",
    "chair ✅ wall ✅ heels ❌ tandem ✅": "A all, B all, C none, D all",
    "SS 2x10 WP 2x8 HR 1x12 TS 2x20": "A 2x10 all, B 2x8 all, C 1x12 part, D 2x- all",
    "sit/stand y, wall y": "A all, B all",
}
NAMES = {
    "chair rises, calf raises and the heel to toe, no wall": "A all, B none, C all, D all",
    "getting up from the chair ones 2x10, wall ones 2x8": "A 2x10 all, B 2x8 all",
    "stands 2x10, calf raises 2x12, heel to toe 2x20": "A 2x10 all, C 2x12 all, D 2x- all",
    "did the up on my toes ones and the wall ones": "B all, C all",
    "did the wall ones on the porch and calf raises in the kitchen": "B all, C all",
    "three of the four done: chair, wall, heels": "A all, B all, C all",
    "I got two done, the wall and the heels.": "B all, C all",
    "I skipped two of them: the wall and the heels": "B none, C none",
    "All done before lunch, chair, wall, heels and balance.": "A all, B all, C all, D all",
    "heel raises and that's it": "C all",
    "could only manage the wall": "B all",
}
AMOUNTS = {
    "two sets of ten stands, two of eight at the wall, two of twelve on my toes": "A 2x10 all, B 2x8 all, C 2x12 all",
    "Only the chair, two of ten": "A 2x10 all",
    "did 6 of 10 sit to stands": "A -x6 part",
    "sit to stand two sets of ten, tandem one time each side": "A 2x10 all, D 1x- part",
    "sit to stand two sets of ten, tandem just the one time each side": "A 2x10 all, D 1x- part",
    "tandem 20 seconds in the hall, two each side": "D 2x- all",
    "I put 2x10 on the chair but it was 1x10": "A 1x10 part",
    "I said 2x8 for the wall, it was 2x6": "B 2x6 part",
    "heels and tandem 0, wall 2x8": "B 2x8 all, C none, D none",
}
AMOUNTS_BAND = {
    "rows three of ten, hinges two of ten": "A 3x10 all, B 2x10 all",
    "carries, three of the four": "C 3x- part",
    "carries 1 lap": "C 1x- part",
    "4 carries half a minute each": "C 4x- all",
    "carries all four, no side lying": "C 4x- all, D none",
    "half the rows and all the hinges": "A part, B all",
    "all but one set of 8 each side for the lying down ones": "D 1x8 part",
    "row I do 3 set, carry I do 4 time 30 second": "A 3x- all, C 4x- all",
    "did my darn rows and the boring hinges": "A all, B all",
    "squeezed in rows and carries": "A all, C all",
}
ONLY_A_PLACE = {
    "I can't stand it when it rains, all done": "",
    "every time I stand my head swims, no exercise": "",
    "had to sit a while but did them all": "",
    "one set then never got to the second": "",
    "got dizzy standing up, all done": "",
    "knee is sore getting up from the chair, did all": "",
    "no dizziness standing up from the chair, all done": "",
    "same as the last four times, done": "",
    "did my exercises. One set of each": "",
    "All done. But standing from the chair was hard at first": "",
}
ONLY_A_PLACE_BAND = {
    "my bag is packed, all done": "",
    "in love with my new band, all done": "",
    "the old band broke so I used a new one, all done": "",
    "I love those carries, all done": "",
    "thought I would drop doing those carries, all done": "",
    "it was a 3 in the hip, all done": "",
    "dead tired, going to bed, no exercises": "",
    "I was bending to feed the dog and it hurt": "",
    "went for my walk, only got as far as the corner": "",
}
SPANISH = {
    "silla y pared hechas, talones y equilibrio quedaron fuera": "A all, B all, C none, D none",
    "hice la silla y la pared, los talones y el tándem los dejé para mañana": "A all, B all, C none, D none",
    "hice la silla 2x10, y los talones y el tándem los dejé": "A 2x10 all, C none, D none",
    "talones quedan pa luego, lo demás listo": "C none",
    "el equilibrio lo omití, todo lo demás sí": "D none",
    "salté solamente el tándem": "D none",
    "silla 2x10 y pared 2x8, talones y tándem cero": "A 2x10 all, B 2x8 all, C none, D none",
    "Los talones sí los hice, la silla y la pared no": "A none, B none, C all",
    "silla s, pared s, talones n, tándem s": "A all, B all, C none, D all",
    "✅ silla ✅ pared ❌ talones ✅ equilibrio": "A all, B all, C none, D all",
    "silla una de diez, pared una de ocho, talones una de doce": "A 1x10 part, B 1x8 part, C 1x12 part",
    "hice la silla dos de diez y la pared una de ocho": "A 2x10 all, B 1x8 part",
    "talones dos de doce": "C 2x12 all",
    "el tándem 20 segundos, dos por lado": "D 2x- all",
    "el equilibrio al despertar, dos por lado": "D 2x- all",
    "el equilibrio nada más con la pierna derecha": "D part",
    "puse 2 de 10 en la silla pero fue 1 de 10": "A 1x10 part",
    "hice tres: la silla, la pared y los talones": "A all, B all, C all",
    "hice el de pararse en rayita y el de la pared": "B all, D all",
    "la muralla 2x8 y las sentadas 2x10": "A 2x10 all, B 2x8 all",
    "todo menos apoyarme en la pared": "B none",
    "hice la silla, las otras tres quedaron debiendo": "A all",
    "ejercicios hechos. Una serie de cada uno": "",
    "compré una silla nueva, hice todo": "",
}
TABLES = [
    *((text, "en", CHAIR, wanted) for text, wanted in (LEFT_OUT | MARKS | NAMES | AMOUNTS | ONLY_A_PLACE).items()),
    *((text, "en", BAND, wanted) for text, wanted in (LEFT_OUT_BAND | AMOUNTS_BAND | ONLY_A_PLACE_BAND).items()),
    *((text, "es", SILLA, wanted) for text, wanted in SPANISH.items()),
]


@pytest.mark.parametrize(("text", "language", "session", "wanted"), TABLES, ids=[row[0] for row in TABLES])
def test_each_exercise_named_gets_what_is_said_of_it(text: str, language: str, session: Any, wanted: str) -> None:
    letters = dict(zip([one.name for one in session], "ABCD", strict=True))
    lines = []
    for one in read_reply(text, language, session, None).by_exercise:
        amount = "" if one.sets is None and one.reps is None else f"{one.sets or '-'}x{one.reps or '-'} "
        lines.append(f"{letters[one.name]} {amount}{one.completed}")

    assert ", ".join(sorted(lines)) == wanted


WHOLE = {
    "all of them twice": ("all", 2, None),
    "went through everything twice": ("all", 2, None),
    "10 reps, twice": ("all", 2, 10),
    "all four, both sets": ("all", 2, None),
    "I told you 2x10 but it was 1x10": ("part", 1, 10),
    "nearly all of them": ("part", None, None),
    "not the whole shebang but some of it": ("part", None, None),
    "three quarters done": ("part", None, None),
    "did half before lunch and half after": ("all", None, None),
    "Painted half the morning. All four done": ("all", None, None),
    "Did everything but my back was sore": ("all", None, None),
    "wall ones only, both full": ("part", None, None),
    "4 sit to stands. That's all I had in me": ("part", None, None),
}


@pytest.mark.parametrize(("text", "wanted"), WHOLE.items())
def test_how_much_of_the_whole_was_done(text: str, wanted: tuple[str, int | None, int | None]) -> None:
    reading = read_reply(text, "en", CHAIR, None)

    assert (reading.completed, reading.sets, reading.reps) == wanted


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("I have not exercised at all today", "en"),
        ("Too late now for exercises, off to bed", "en"),
        ("I regret I was unable to finish today's session", "en"),
        ("heck no, it's my birthday", "en"),
        ("ni toqué los ejercicios, me acosté", "es"),
        ("los ejercicios quedan para otro día", "es"),
        ("hoy no hubo rutina, llegó visita", "es"),
    ],
)
def test_a_session_not_done_is_none(text: str, language: str) -> None:
    assert read_reply(text, language, SILLA if language == "es" else CHAIR, None).completed == "none"
