"""What clients and staff are told by the clinical rules: both languages, short, plain, and what must stand there."""

from typing import Any

import pytest
import textstat

from reminders.core.segments import parts, plain
from reminders.flows.explain import rule_words, sentence
from reminders.texts import Texts
from tests.test_answer_texts import ALL_3, LONG, SHORT

# name -> its own values
DANGER: dict[str, dict[str, Any]] = {
    "danger_call_now": {"on_call": False},
    "danger_today": {"on_call": False},
    "crisis": {"on_call": False, "call_now": True, "crisis": "988", "crisis_outside_us": False},
    "stop_level": {"on_call": False, "pain": 7, "held": True},
    "concern": {"on_call": False, "held": True},
}
OTHERS: dict[str, dict[str, Any]] = {
    "flare": {"sessions": 3},
    "read_by": {"reader": "Bartholomew Long", "crisis_words": True, "crisis": "988", "crisis_outside_us": False},
    "hold_cleared": {"therapist": "Bartholomew Long", "next": "2027-03-10"},
    "evening": {},
    "morning": {},
    "reason": {},
    "ask_effort": {},
    "ask_falls": {"since": "2027-03-10"},
    "ask_where": {},
    "ask_keep": {},
    "ask_days": {"names": ["feet-together stance", "steady walk"]},
}
CLIENT = {**DANGER, **OTHERS}
LINE = {
    "number": 1234,
    "level": "urgent",
    "initials": "A.R.",
    "client_id": 1234,
    "words": "chest, breathing",
    "state": "open",
    "step": 4,
    "corrected": True,
    "sentences": [],
    "said": [],
    "link": "https://reminders.example.org/a/ya-S66xk_fvnGzxF7vluAE9",
    "home": "https://reminders.example.org",
}
STAFF: dict[str, dict[str, Any]] = {
    "alert": LINE,
    "note": {**LINE, "alerts": [LINE] * 4, "more": 3, "link": ""},
    "hold_long": {**LINE, "days": 8},
}
TEXTS = Texts()
LANGUAGES = ("en", "es")


def said(name: str, language: str = "en", values: dict[str, Any] = LONG, **more: Any) -> str:
    own = {**CLIENT, **STAFF}[name]
    return plain(TEXTS.text(name, language, {**values, **own, "language": language, **more}))


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", [*CLIENT, *STAFF])
def test_a_text_is_two_parts_at_most_and_never_begins_with_the_bare_word_stop(name: str, language: str) -> None:
    body = said(name, language)
    assert parts(body) <= 2
    assert not body.lower().startswith(("stop", "pare", "alto"))


@pytest.mark.parametrize("name", CLIENT)
def test_english_reads_at_grade_six(name: str) -> None:
    body = said(name, "en", SHORT, reader="Ben", therapist="Ben", names=["walk"])
    assert textstat.automated_readability_index(body) <= 6
    assert textstat.coleman_liau_index(body) <= 6


@pytest.mark.parametrize("name", CLIENT)
def test_spanish_is_easy(name: str) -> None:
    """Fernández Huerta, Medidas sencillas de lecturabilidad, 1959: from 70 on a text is rather easy."""
    textstat.set_lang("es")
    try:
        assert textstat.fernandez_huerta(said(name, "es", SHORT, reader="Ben", therapist="Ben", names=["paseo"])) >= 70
    finally:
        textstat.set_lang("en_US")


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", DANGER)
def test_every_grave_text_names_the_clinic_and_the_emergency_number_and_reassures_of_nothing(
    name: str, language: str
) -> None:
    body = said(name, language)
    for words in ("911", "+1 202 555 0100", "8:00 am"):
        assert words in body
    for words in ("don't worry", "nothing serious", "is normal", "told", "will call you", "no se preocupe", "normal"):
        assert words not in body.lower()


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", ["danger_call_now", "crisis"])
def test_where_minutes_count_the_emergency_number_is_the_first_line_alone(name: str, language: str) -> None:
    first = said(name, language).splitlines()[0]
    assert first in ("Call 911 now.", "Llame ya al 911.")


@pytest.mark.parametrize(("language", "word"), [("en", "exercise"), ("es", "ejercicio")])
def test_crisis_wording_says_nothing_of_exercise_and_gives_the_crisis_line(language: str, word: str) -> None:
    body = said("crisis", language, call_now=False)
    assert word not in body.lower()
    assert "988" in body


def test_the_spanish_crisis_line_is_key_two_and_the_word_ayuda() -> None:
    """988 Lifeline, What to expect: press 2 for Spanish, or text AYUDA to 988."""
    body = said("crisis", "es", call_now=False)
    assert "marque 2" in body
    assert "AYUDA al 988" in body


def test_outside_the_us_the_crisis_line_is_the_clinics_own() -> None:
    body = said("crisis", call_now=False, crisis="116 123", crisis_outside_us=True)
    assert "call 116 123" in body
    assert "988" not in body


@pytest.mark.parametrize(("language", "words"), [("en", "more exercises"), ("es", "haga más ejercicios")])
@pytest.mark.parametrize("name", ["danger_call_now", "danger_today", "stop_level"])
def test_danger_and_stop_level_say_to_do_no_more(name: str, language: str, words: str) -> None:
    assert words in TEXTS.text(name, language, {**LONG, **DANGER[name], "language": language})


@pytest.mark.parametrize("name", DANGER)
@pytest.mark.parametrize(
    ("values", "words"),
    [
        ({"is_open": True}, "Nobody may read it soon."),
        ({"is_open": False}, "Nobody may read it before Wednesday 8:00 am."),
        ({"is_open": False, "on_call": True}, "Nobody may read it soon."),
    ],
    ids=["open", "closed", "closed with somebody on call"],
)
def test_it_says_that_a_computer_reads_it_and_when_somebody_may(name: str, values: dict[str, Any], words: str) -> None:
    body = said(name, **values)
    assert "A computer reads this line." in body
    assert words in body


def test_a_stop_level_answer_with_what_was_recorded_still_fits_two_parts() -> None:
    both = [
        {"text": "stop_level", "details": DANGER["stop_level"]},
        {"text": "thanks", "details": {"r": {**ALL_3, "pain": 7}, "easy": False, "day": None}},
    ]
    body = plain(TEXTS.text("together", "en", {**LONG, "name": "", "hours": "Mon-Fri 8:00 am-5:00 pm", "parts": both}))
    assert parts(body) <= 2


@pytest.mark.parametrize("name", STAFF)
def test_staff_texts_carry_no_name(name: str) -> None:
    assert "Maximiliana" not in said(name)


def test_an_alert_text_has_level_number_initials_client_words_and_link() -> None:
    body = said("alert", corrected=False, step=0)
    assert body == (
        "URGENT alert 1234: A.R., client 1234, chest, breathing. Reply ok 1234 to take it. "
        "https://reminders.example.org/a/ya-S66xk_fvnGzxF7vluAE9"
    )


@pytest.mark.parametrize("language", LANGUAGES)
def test_an_alert_mail_renders_in_both_languages_and_shows_words_only_when_given(language: str) -> None:
    values = {**LONG, **LINE, "language": language}
    discreet = TEXTS.mail("alert", language, values)
    open_mail = TEXTS.mail("alert", language, {**values, "said": ["I <fell>"], "sentences": ["A fall."]})
    assert "1234" in discreet.subject
    assert LINE["link"] in discreet.text
    assert LINE["link"] in discreet.html
    assert "I <fell>" in open_mail.text
    assert "I &lt;fell&gt;" in open_mail.html


def test_both_languages_name_and_explain_the_same_rules() -> None:
    """Each rule has two words of its own, and each form its sentence, in both languages."""
    shapes = []
    for language in LANGUAGES:
        words = rule_words(language)
        shapes.append({name: set(words[name]) for name in ("names", "levels", "reasons", "steps", "riders")})
        shapes[-1] |= {f"sentences.{rule}": set(forms) for rule, forms in words["sentences"].items()}
    assert shapes[0] == shapes[1]


ONE = {
    ("en", "counted"): "1 fall since Wed Mar 3, she answers.",
    ("en", "told"): "1 fall since we last asked, she answers.",
    ("es", "counted"): "1 caída desde mié 3 mar, responde.",
    ("es", "told"): "1 caída desde la última pregunta, responde.",
}


@pytest.mark.parametrize("case", ONE, ids=str)
def test_one_fall_is_a_fall_and_two_are_falls(case: tuple[str, str]) -> None:
    language, form = case
    values = {"since_on": "2027-03-03"}
    assert sentence("falls_counted", form, {**values, "count": 1}, language) == ONE[case]
    several = sentence("falls_counted", form, {**values, "count": 2}, language)
    assert several == ONE[case].replace("1 fall", "2 falls").replace("1 caída", "2 caídas")


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("kind", ["danger", "stop_level"])
def test_an_urgent_answer_by_mail_asks_to_be_read_now_whatever_session_it_speaks_of(language: str, kind: str) -> None:
    values = {**LONG, "language": language, "kind": kind, "words": "x", "session_date": "Wed Mar 3", "is_easy": False}
    urgent, plain_one = (TEXTS.mail("message", language, {**values, "kind": one}).subject for one in (kind, "thanks"))
    assert ("now" if language == "en" else "ahora") in urgent
    assert "Mar 3" not in urgent
    assert "Mar 3" in plain_one


@pytest.mark.parametrize("language", LANGUAGES)
def test_one_easy_day_is_one(language: str) -> None:
    one, three = (TEXTS.text("flare", language, {**LONG, "sessions": count}) for count in (1, 3))
    assert "1" not in one.split("+1")[0]
    assert "3" in three.split("+1")[0]
