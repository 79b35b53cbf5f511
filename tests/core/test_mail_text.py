import pytest

from reminders.core.mail_text import less_ours, under_head

OURS = """Exercises for Monday 1 March
Hi Ana, today:
A sit to stand 10 times, twice
B wall push 8 times
When done reply Y and your worst pain 0-10 while doing them, like Y3.
Fall or chest pain? Call 911.
A computer reads this line."""

CASES = {
    "her words alone stay": ("I fell in the bath", "I fell in the bath"),
    "our quoted lines go": ("> A sit to stand 10 times, twice\nI fell\n> B wall push 8 times", "I fell"),
    "our lines wrapped by her mail program go": (
        "> When done reply Y and your worst pain 0-10 while\n> doing them, like Y3.\nno",
        "no",
    ),
    "our lines quoted without marks go": ("dizzy\nHi Ana, today:\nFall or chest pain? Call 911.", "dizzy"),
    "the lines above a quote go": (
        "ok\nOn Mon, 1 Mar 2027 at 08:30 Elm Clinic <clinic@example.org> wrote:\n> Hi Ana, today:",
        "ok",
    ),
    "Spanish ones too": ("vale\nEl lun, 1 mar 2027 a las 8:30, Elm Clinic escribió:\n> Hi Ana, today:", "vale"),
    "and those of a quote without marks": (
        "From: Elm Clinic\nSent: Monday\nTo: Ana\nSubject: Re: mine\nmy chest hurts",
        "Subject: Re: mine\nmy chest hurts",
    ),
    "her words are hers though ours hold them too": ("chest pain", "chest pain"),
    "what she wrote behind a quote mark stays": (
        "> A sit to stand 10 times, twice - I fell",
        "A sit to stand 10 times, twice - I fell",
    ),
    "an older mail of hers, quoted, stays": ("> my foot is numb", "my foot is numb"),
}


@pytest.mark.parametrize(("whole", "expected"), CASES.values(), ids=CASES)
def test_only_our_own_lines_are_taken_off(whole: str, expected: str) -> None:
    assert less_ours(whole, OURS) == expected


def test_without_a_text_of_ours_everything_she_quotes_stays() -> None:
    assert less_ours("> chest pain since noon", "") == "chest pain since noon"


HEAD = "RE: Exercises\nFrom: Elm Clinic\nSent: Monday\nTo: Ana\nSubject: Exercises\n\n"
WRAPPED = OURS.replace("them, like", "them,\nlike")
BETWEEN = OURS.replace("times, twice", "times, twice\ndid 8")
UNDER = {
    "below our text": (f"{HEAD}{OURS}\n\nDone, pain 7\n", "Done, pain 7"),
    "between our lines": (f"{HEAD}{BETWEEN}", "did 8"),
    "our text alone": (f"{HEAD}{OURS}", ""),
    "our lines wrapped without marks": (f"{HEAD}{WRAPPED}", ""),
    "wrapped, and hers below": (f"{HEAD}{WRAPPED}\nY4", "Y4"),
    "a subject alone": ("a picture", ""),
}


@pytest.mark.parametrize(("whole", "expected"), UNDER.values(), ids=UNDER)
def test_what_she_typed_under_an_unmarked_head_is_hers(whole: str, expected: str) -> None:
    assert under_head(whole, OURS) == expected
