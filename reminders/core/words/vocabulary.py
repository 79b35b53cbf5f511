"""The shape of one language's words, as the reader wants them.

Only the shape belongs here: the words themselves stand in a folder a language, and what is done with them in `reading`.
"""

from collections.abc import Mapping
from dataclasses import dataclass


@dataclass(frozen=True)
class Vocabulary:
    """All words of one language.

    `concepts`: concept name → words with spaces between (`mare*` is a stem). `rules`: label → patterns, one a line, in
    the notation of `reading/patterns.py`. `numbers`: number words. `near_numbers`: words that are a number only before
    a word for sets or repetitions ("too sets"). `aliases`: exercise name → what people call it ("chair?" counts only
    beside something that is plainly about exercises). `common`: the language's frequent small words, to tell it from
    others. `lookalikes`: real words that must never be mended into one of ours. `sounds`: spelling → sound, in
    order. `spelled_out`: words read as several ("twice" as "two times"). `ordinals`: places in a list,
    -1 the last. `months`, `weekdays` (Monday is 0), `stretches` (word → days), `counts` ("never" is 0, "daily" 7).
    `during`, `exercising`, `not_yet`: a word of the first two with at most two between tells of exercises being done
    ("during the squats"), unless one of the third stands there too ("before doing my exercises").
    `talk`: words by their use, `first_person`; `before_name` and `behind_name`, phrases with semicolons between, by
    which a writer gives her own name; `died` behind a client's name tells of her death where nothing or one of
    `behind_died` follows and none of the words `laughs` stands in the text; `my`; `not`, `article` and `counted`, of which the first two before a number take
    it back ("not a 6"), unless the third stands behind it.
    `senses`: sense → words that carry it, for the trained judge alone. `marks_possessive`: an ending s on a day's name makes it that day's ("Thursday's today").
    """

    language: str
    concepts: Mapping[str, str]
    rules: Mapping[str, str]
    numbers: Mapping[str, float]
    near_numbers: Mapping[str, float]
    aliases: Mapping[str, str]
    common: frozenset[str]
    lookalikes: frozenset[str]
    sounds: tuple[tuple[str, str], ...]
    spelled_out: Mapping[str, str]
    ordinals: Mapping[str, int]
    months: Mapping[str, int]
    weekdays: Mapping[str, int]
    stretches: Mapping[str, int]
    counts: Mapping[str, int]
    senses: Mapping[str, str]
    during: str
    exercising: str
    not_yet: str
    talk: Mapping[str, str]
    marks_possessive: bool = False


def joined(*parts: Mapping[str, str]) -> dict[str, str]:
    """Return several tables as one; a name that stands in two has the words of both."""
    result: dict[str, str] = {}
    for part in parts:
        for name, words in part.items():
            result[name] = f"{result[name]}\n{words}" if name in result else words
    return result
