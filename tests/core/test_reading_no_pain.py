"""Words for no pain count where they are meant so; where they only share its words the pain is asked for."""

import pytest

from reminders.core.reading import no_pain, read_reply
from reminders.core.reading.reader import evidence_of
from tests.corpus.measure import PARSED

SESSIONS = {"en": PARSED["S1"], "es": PARSED["S3"]}
MEANT = (
    ("en", None, "all done, no pain"),
    ("en", None, "did the lot and nothing hurt"),
    ("en", "pain", "none"),
    ("es", None, "listo, sin dolor"),
    ("es", None, "hice todo y no me dolió nada"),
    ("es", "pain", "nada"),
)
NOT_MEANT = (
    ("en", None, "did the wall then a sharp pain so no more"),
    ("en", "pain", "not to bad"),
    ("es", None, "no he podido hacer nada por el dolor"),
    ("es", None, "no tengo dolor de pecho ni nada raro, solo cansancio"),
)


@pytest.mark.parametrize(("language", "asked", "text"), MEANT)
def test_no_pain_is_recorded_as_nought(language: str, asked: str | None, text: str) -> None:
    assert read_reply(text, language, SESSIONS[language], asked).pain == 0


@pytest.mark.parametrize(("language", "asked", "text"), NOT_MEANT)
def test_words_that_only_share_those_of_no_pain_record_nothing(language: str, asked: str | None, text: str) -> None:
    assert read_reply(text, language, SESSIONS[language], asked).pain is None


def test_what_is_meant_is_believed_in_far_more_than_what_only_sounds_so() -> None:
    beliefs = {}
    for language, asked, text in (*MEANT, *NOT_MEANT):
        evidence, _, _ = evidence_of(text, language, SESSIONS[language], asked)
        if no_pain.spans_of(evidence):
            beliefs[text] = no_pain.OPINION.belief(no_pain.features_of(evidence))
    meant = [beliefs[text] for _, _, text in MEANT if text in beliefs]
    other = [beliefs[text] for _, _, text in NOT_MEANT if text in beliefs]

    assert meant
    assert other
    assert min(meant) > no_pain.LEAST > max(other)
