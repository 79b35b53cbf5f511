"""Replies put together from two labelled ones: what was done beside what hurts, thanks, or a sign.

People say both in any order, and a judge that has met each only by itself takes "my knee hurts a bit" behind "I did
them" for a bit of the session. The label of the whole follows from the labels of its halves.
"""

import random
import re
from collections.abc import Iterable
from typing import Any

Row = dict[str, Any]
JOINTS = (". ", ". ", ", ", " ", "\n")
LONGEST, SHORT = 10, 8  # words of a half, of a rating
NUMBER = re.compile(r"\d|\b(?:one|two|three|four|five|six|dos|tres|cuatro|cinco|seis)\b", re.IGNORECASE)
NUMBERED_INTENTS = ("report", "skip", "chat", "question", "later", "reschedule", "resend", "pause")
SIGNS = 2  # of so many rows with a sign one is taken, or they would outnumber all else


def composed(rows: Iterable[Row]) -> list[Row]:
    """Return the composed rows: the same for the same rows in the same order."""
    chance, result = random.Random(11), []
    plain = [row for row in rows if _is_plain(row)]
    for session in sorted({row["session"] for row in plain}):
        here = [row for row in plain if row["session"] == session]
        told = [row for row in here if tells_session(row)]
        beside = [row for row in here if stands_beside(row)]
        signs = [row for row in beside if row["expect"]["red_flags"]]
        beside = [row for row in beside if not row["expect"]["red_flags"]] + signs[::SIGNS]
        if not told or not beside:
            continue
        pairs = [(one, chance.choice(beside)) for one in told]
        pairs += [(chance.choice(told), one) for one in beside]
        result += [together(one, other, chance) for one, other in pairs]
    return result


def _is_plain(row: Row) -> bool:
    """Tell whether a row may be a half: short, unasked, no correction."""
    return row["asked"] is None and not row["expect"]["correction"] and len(row["text"].split()) <= LONGEST


def tells_session(row: Row) -> bool:
    """Tell whether a row says how much was done, and nothing of pain or danger."""
    expect = row["expect"]
    is_told = expect["intent"] in ("report", "skip") and expect["completed"] is not None
    return is_told and expect["pain"] is None and not expect["red_flags"]


def stands_beside(row: Row) -> bool:
    """Tell whether a row says nothing of the session: pain, a sign, thanks."""
    expect = row["expect"]
    says = expect["intent"] in ("pain", "chat") or (expect["intent"] == "report" and bool(expect["red_flags"]))
    return says and expect["completed"] is None and not expect["by_exercise"]


def together(told: Row, other: Row, chance: random.Random) -> Row:
    """Return one row of two."""
    first, second = (told, other) if chance.random() < 0.6 else (other, told)
    text = first["text"].rstrip(" .,!") + chance.choice(JOINTS) + second["text"].lstrip()
    expect = told["expect"] | {name: other["expect"][name] for name in ("pain", "red_flags")}
    return {**told, "text": text, "expect": expect}


def numbers_beside(rows: Iterable[Row]) -> list[Row]:
    """Return ratings beside sentences with other numbers, two for each such sentence; the rating stays the label."""
    chance, result = random.Random(17), []
    plain = [row for row in rows if row["asked"] is None and not row["expect"]["correction"]]
    for session in sorted({row["session"] for row in plain}):
        here = [row for row in plain if row["session"] == session]
        numbered, rated = [row for row in here if has_other_numbers(row)], [row for row in here if is_rated(row)]
        for one in numbered if rated else ():
            for other in (chance.choice(rated), chance.choice(rated)):
                first, second = (one, other) if chance.random() < 0.5 else (other, one)
                text = first["text"].rstrip(" .,!") + chance.choice(JOINTS) + second["text"]
                result.append({**other, "text": text})
    return result


def has_other_numbers(row: Row) -> bool:
    """Tell whether a row has numbers and none of them rates pain."""
    is_numbered = NUMBER.search(row["text"]) is not None and row["expect"]["pain"] is None
    return is_numbered and row["expect"]["intent"] in NUMBERED_INTENTS


def is_rated(row: Row) -> bool:
    """Tell whether a row rates pain and says little else."""
    is_short = len(row["text"].split()) <= SHORT
    return row["expect"]["pain"] is not None and is_short and row["expect"]["intent"] in ("report", "pain")
