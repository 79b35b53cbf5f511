"""The tables of signs, wishes and of what only sounds like them, from the tests, that teach the reader's judge."""

from collections.abc import Iterable, Mapping

from tests.core import (
    danger_frames_es,
    danger_narrow_es,
    danger_phrases_en,
    danger_phrases_es,
    danger_turns_en,
    harmless_clauses,
    harmless_frames_es,
    harmless_phrases_en,
    harmless_phrases_es,
    harmless_turns_en,
    opt_out_frames_es,
    opt_out_phrases_es,
    opt_out_turns_en,
    strangers_lines_es,
    strangers_opt_outs_es,
    strangers_signs_es,
    test_reading_commands,
    test_reading_elsewhere,
    test_reading_en_signs_2,
    test_reading_en_wordings,
    test_reading_es_extra,
    test_reading_es_opt_outs,
    test_reading_es_plain,
    test_reading_numbers,
    test_reading_once_and_sides,
    test_reading_opt_outs,
    test_reading_ratings_2,
    test_reading_reports,
    test_reading_sure_signs,
    test_reading_told_again,
)


def listed(signs: Mapping[str, Iterable[str]]) -> list[tuple[str, str]]:
    """Return a table of signs by kind as pairs of kind and text."""
    return [(flag, text) for flag, texts in signs.items() for text in texts]


SIGNS = {
    "en": [
        *listed(danger_phrases_en.SIGNS),
        *listed(danger_turns_en.SIGNS),
        *((flag, text) for text, flag in test_reading_en_signs_2.SIGNS.items()),
        *((flag, text) for text, flag in test_reading_en_wordings.SIGNS.items()),
    ],
    "es": [
        *listed(danger_phrases_es.SIGNS),
        *listed(danger_frames_es.SIGNS),
        *listed(danger_narrow_es.SIGNS),
        *listed(strangers_signs_es.SIGNS),
        *listed(test_reading_es_plain.SIGNS),
    ],
}
HARMLESS = {
    "en": (
        *harmless_phrases_en.HARMLESS,
        *test_reading_en_signs_2.HARMLESS,
        *harmless_turns_en.HARMLESS,
        *test_reading_en_wordings.HARMLESS,
        *test_reading_elsewhere.HARMLESS["en"],
        *harmless_clauses.STILL_HARMLESS["en"],
        *test_reading_told_again.HARMLESS["en"],
        *test_reading_once_and_sides.HARMLESS["en"],
    ),
    "es": (
        *harmless_phrases_es.HARMLESS,
        *harmless_frames_es.HARMLESS,
        *strangers_signs_es.HARMLESS,
        *test_reading_es_plain.HARMLESS,
        *test_reading_es_extra.HARMLESS,
        *test_reading_elsewhere.HARMLESS["es"],
        *harmless_clauses.STILL_HARMLESS["es"],
        *test_reading_told_again.HARMLESS["es"],
        *test_reading_once_and_sides.HARMLESS["es"],
    ),
}
WISHES = {
    "en": (
        *test_reading_commands.ENDED,
        *opt_out_turns_en.OPT_OUTS,
        *test_reading_opt_outs.OPT_OUTS["en"],
        *test_reading_en_wordings.OPT_OUTS,
    ),
    "es": (
        *opt_out_frames_es.OPT_OUTS,
        *opt_out_phrases_es.OPT_OUTS,
        *strangers_opt_outs_es.OPT_OUTS,
        *test_reading_opt_outs.OPT_OUTS["es"],
        *test_reading_es_plain.OPT_OUTS,
    ),
}
NO_WISHES = {
    "en": (
        *opt_out_turns_en.NO_OPT_OUTS,
        *test_reading_opt_outs.MERELY_CONTAIN["en"],
        *test_reading_en_wordings.NO_OPT_OUTS,
        *test_reading_commands.NOT_ENDED,
        *(text for lang, text in test_reading_sure_signs.NO_CONSENT_WORDS if lang == "en"),
        *test_reading_told_again.NO_WISHES["en"],
        *test_reading_once_and_sides.NO_WISHES["en"],
    ),
    "es": (
        *opt_out_frames_es.NO_OPT_OUTS,
        *opt_out_phrases_es.NO_OPT_OUTS,
        *strangers_opt_outs_es.NO_OPT_OUTS,
        *test_reading_opt_outs.MERELY_CONTAIN["es"],
        *test_reading_es_opt_outs.PAUSES,
        *test_reading_es_opt_outs.STAYING,
        *test_reading_es_plain.NO_OPT_OUTS,
        *test_reading_es_extra.NOT_OPT_OUTS,
        *(text for lang, text in test_reading_sure_signs.NO_CONSENT_WORDS if lang == "es"),
        *test_reading_told_again.NO_WISHES["es"],
        *test_reading_once_and_sides.NO_WISHES["es"],
    ),
}
# (language, what was asked, text, rating): the rating is told from the numbers around it.
RATED: list[tuple[str, str | None, str, int | None]] = [
    *(
        (language, asked, text, pain)
        for table in (test_reading_ratings_2.TOLD_APART, test_reading_ratings_2.BESIDE, test_reading_ratings_2.KEPT)
        for (language, asked), told in table.items()
        for text, pain in told
    ),
    *((*said, pain) for said, pain in test_reading_elsewhere.RATINGS.items()),
    *(("en", None, text, pain) for text, pain in test_reading_en_wordings.PAINS.items()),
    *(("en", None, text, pain) for text, pain in test_reading_reports.PAINS.values()),
    *(("en", asked, text, pain) for text, asked, pain in test_reading_numbers.RATED.values()),
    *(("es", None, text, pain) for text, pain in strangers_lines_es.PAINS.items()),
    *(("es", asked, text, pain) for text, asked, pain in test_reading_es_extra.PAINS.values()),
    *test_reading_told_again.RATINGS,
    *test_reading_once_and_sides.RATINGS,
]
