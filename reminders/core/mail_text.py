"""What is hers in a mail that also holds ours: danger words are sought in the whole mail less our own text.

Cutting quotes and signatures off by their marks is in `inbound.mail_reply`; this needs the text that we sent.
"""

import re

# Shorter lines are too likely to be hers by chance: "chest pain" is in our safety lines too.
OURS_BY_WORDS = 5
QUOTE_MARK = re.compile(r"^(\s*[>|])+\s?")
# The lines that mail programs put above what they quote, English and Spanish.
QUOTE_HEAD = re.compile(
    r"\s*[*]*(On\b.{4,300}\bwrote:|El\b.{4,300}\bescribió:|-{3,}.*-{3,}|[_-]{5,}"
    r"|(From|Sent|To|Cc|Date|De|Enviado|Enviado el|Para|Fecha)\s*:.*)\s*",
    re.IGNORECASE,
)

SUBJECT = re.compile(r"\s*[*]*(Subject|Asunto)\s*:.*", re.IGNORECASE)


def under_head(whole: str, ours: str) -> str:
    """Return what she typed into a mail that stands all under a quote's head without marks, its subject left out.

    `whole` has the subject as its first line. A line that may be the rest of one of ours, wrapped, is not taken for
    hers: better asked than "Y3" read from ours.
    """
    _, _, body = whole.partition("\n")
    ours_words = f" {words(ours)} "
    kept, before = [], ""
    for line in body.splitlines():
        said = words(line)
        continues = bool(before) and f" {before} {said} " in ours_words
        before = said or before
        if not continues and not SUBJECT.fullmatch(line):
            kept.append(line)
    return less_ours("\n".join(kept), ours)


def less_ours(whole: str, ours: str) -> str:
    """Return the lines of a mail that are not from the text that we sent.

    A quoted line goes when its words stand in ours in this order, however it was wrapped. An unquoted one goes when it
    is a whole line of ours, or when five or more of its words stand there: a mail program that quotes without marks.
    """
    ours_words = f" {words(ours)} "
    ours_lines = {words(line) for line in ours.splitlines()}
    kept = []
    for line in whole.splitlines():
        bare = QUOTE_MARK.sub("", line)
        said = words(bare)
        is_quoted = bare != line
        if QUOTE_HEAD.fullmatch(bare) or (is_quoted and not said):
            continue
        is_long = is_quoted or len(said.split()) >= OURS_BY_WORDS
        if said and (said in ours_lines or (is_long and f" {said} " in ours_words)):
            continue
        kept.append(bare)
    return "\n".join(kept).strip()


def words(text: str) -> str:
    """Return the words and numbers of a text, lower-case, one blank apart."""
    return " ".join(re.findall(r"\w+", text.lower()))
