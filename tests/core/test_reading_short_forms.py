"""The short answers that every reminder invites ("Y3", "S3"): whatever stands behind them, they are a whole session.

Judged on what the rules find, and on the pain that a reading gives; how other reports are read is tested elsewhere.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.reading import read_reply
from reminders.core.reading.completion import completed_of
from reminders.core.reading.intent import decide
from reminders.core.reading.reader import evidence_of

YES = {"en": ("Y", "y", "Yes", "yes", "YES", "yep"), "es": ("S", "s", "Sí", "si", "SI", "sí")}
FORMS = {
    "close": "{yes}{pain}",
    "with a space": "{yes} {pain}",
    "with a comma": "{yes}, {pain}",
    "with a full stop": "{yes}. {pain}",
    "ended by a stop": "{yes}{pain}.",
    "ended by a mark": "{yes}{pain}!",
    "with a hyphen": "{yes}-{pain}",
    "with a dash": "{yes} - {pain}",
    "with a colon": "{yes}:{pain}",
    "with an equals sign": "{yes}={pain}",
    "in brackets": "{yes}({pain})",
    "out of ten": "{yes} {pain}/10",
    "turned round": "{pain} {yes}",
}
TAILS = {
    "en": (
        "", " thanks", "! :)", " 😊", ", worst was in the knee", " knee", " and I feel great",
        " sorry for the late reply", ". Thank you Ben", " my hip was sore", ", easy today",
        " a little stiff this morning", " lol", " no problems",
        " but my back is stiff", " tired", ", left knee again", " have a nice day", " have a good weekend",
    ),
    "es": (
        "", " gracias", "! :)", " 😊", ", me dolió la cadera", " la rodilla", " perdón la demora", " bendiciones",
        ", un poco cansada", " todo bien", ", me molestó el hombro", " pero la rodilla tiesa", " jaja",
        ", que tenga buen dia",
    ),
}  # fmt: skip


def _read_by_rules(text: str, language: str) -> tuple[str, str | None, int | None]:
    """Return intent, completion and pain as the rules alone have them."""
    evidence, _, _ = evidence_of(text, language, (), None)
    return decide(evidence), completed_of(evidence, "report", ()), evidence.pain.value


@pytest.mark.parametrize("form", FORMS.values(), ids=FORMS)
@pytest.mark.parametrize("language", YES)
def test_an_invited_answer_is_a_whole_session_with_its_pain_whatever_follows(language: str, form: str) -> None:
    """Every word for yes, every rating, every tail."""
    wrong = [
        text
        for yes in YES[language]
        for pain in range(11)
        for tail in TAILS[language]
        if _read_by_rules(text := form.format(yes=yes, pain=pain) + tail, language) != ("report", "all", pain)
    ]
    assert wrong == []


@pytest.mark.parametrize("text", ["3y", "0Y", "10y thanks", "Y5", "y 4"])
@pytest.mark.parametrize("language", ["en", "es"])
def test_an_english_letter_is_understood_from_a_spanish_client_and_no_pain_is_made_up(text: str, language: str) -> None:
    """ "Y" is "and" in Spanish, yet "Y5" alone can only be the invited answer."""
    pain = read_reply(text, language, (), None).pain
    assert pain in (int("".join(filter(str.isdigit, text))), None)
    assert (language == "es" and text[0].isdigit()) or pain is not None


NOT_INVITED = {
    "sets are no pain": ("Y 2 sets of 10", "en"),
    "an amount is no pain": ("yes 2x10", "en"),
    "seconds are no pain": ("3s cada lado", "es"),
    "seconds of a hold are no pain": ("10s por lado", "es"),
    "series are no pain": ("sí 2 series", "es"),
    "weeks are no pain": ("yes 2 weeks from now", "en"),
    "off the scale is no pain": ("Y12", "en"),
    "off the Spanish scale is no pain": ("S 15", "es"),
}


@pytest.mark.parametrize(("text", "language"), NOT_INVITED.values(), ids=NOT_INVITED)
def test_a_yes_before_another_number_gives_no_pain(text: str, language: str) -> None:
    """A number that counts something else never enters the record as pain."""
    assert read_reply(text, language, (), None).pain is None


@given(st.sampled_from(["y", "Y", "yes"]), st.integers(0, 10), st.text(alphabet=" .,!-()", max_size=3))
def test_signs_between_yes_and_the_number_change_nothing(yes: str, pain: int, between: str) -> None:
    """Thumbs hit odd keys."""
    assert _read_by_rules(f"{yes}{between}{pain}", "en") == ("report", "all", pain)
