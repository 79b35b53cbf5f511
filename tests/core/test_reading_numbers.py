"""Numbers beside a session that are no pain rating, in both languages: amounts, hours, days, tablets, places.

A rating that nobody gave is the worst that can stand in the record, so each of these must leave the pain open.
"""

import pytest

from reminders.core.reading import parse_session, read_reply

CHAIR = parse_session("sit to stand 2x10; wall push-up 2x8; heel raise 2x12; tandem stance 2x20 sec each side")
NO_RATING = {
    "en": (
        "did 3 today", "did all 3 today", "3 of 4 today", "just 2 today", "did 2 and my knee hurt",
        "knee has hurt for 3 days", "hurt on the 2nd one", "took 2 pills for pain", "took 2 for the pain",
        "pain woke me 3 times", "woke at 3 with pain", "number 3 hurts", "2 and 3 hurt", "done. see you at 4",
        "pain down 2 points", "hardly any pain", "not much pain", "no pain till the 3rd set", "done in 10",
        "hurt so 1 set only", "hurting so did 1", "ten out of ten workout", "pain at 3 in the morning",
        "doesn't hurt as much", "pain 12", "Fix my last one: 2 sets, I put 1", "I didn't do a one of them",
        "my left side 10 and 10, right side 10", "did 8 out of 10 on the chair",
    ),
    "es": (
        "hice 3 hoy", "hice los 3 hoy", "solo 2 hoy", "hice 2 y me dolió la rodilla", "dolor en los 2 lados",
        "me duele la rodilla desde hace 3 días", "el 2 y el 3 me dolieron", "me duelen las 2 rodillas",
        "tomé 2 pastillas para el dolor", "la 3 me duele", "listo, como 5 minutos", "casi sin dolor",
        "poquito dolor nada más", "no tanto dolor hoy", "ya no aguanto este dolor", "bajó de 6 a 3",
    ),
}  # fmt: skip


@pytest.mark.parametrize(
    ("language", "text"), [(language, text) for language, texts in NO_RATING.items() for text in texts], ids=str
)
def test_a_number_that_is_no_rating_leaves_the_pain_open(language: str, text: str) -> None:
    assert read_reply(text, language, CHAIR, None).pain is None


RATED = {
    "how many were done behind it": ("My pain is 2 and I did 8 of the wall ones", None, 2),
    "what was meant": ("I wrote five for the pain and meant to write three", None, 3),
    "what it was in fact": ("I wrote that my pain was a 5. It was in fact a 2.", None, 2),
    "at its worst": ("worst was a six on the chair, all done", None, 6),
    "two movements": ("I'd put it at 4 when I twist and 1 when I don't", None, 4),
    "before and after": ("Before tablets 6, after tablets 2", "pain", 6),
    "a typed slip": ("did evrything 2 sts of 10 pain abt 2", None, 2),
    "two parts": ("Hip: 4\nKnee: 2", None, 4),
    "a range": ("done. 3-4", None, 4),
    "on a scale": ("6 on a scale of 1-10", None, 6),
    "quoted as too high": ("pain is nowhere near an 8 any more, call it 3", "pain", 3),
    "a question beside it": ("5. Is my visit on the 9 or the 10?", "pain", 5),
    "another's opinion": ("wife says 5 but i say 3", None, 3),
    "between": ("between 7 and 8", "pain", 8),
}


@pytest.mark.parametrize(("text", "asked", "pain"), RATED.values(), ids=RATED)
def test_the_rating_is_told_from_the_numbers_around_it(text: str, asked: str | None, pain: int) -> None:
    assert read_reply(text, "en", CHAIR, asked).pain == pain
