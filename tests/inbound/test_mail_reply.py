import time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.inbound.mail_reply import own_words

HEAD = "On Mon, Mar 1, 2027 at 8:30 AM Elm Clinic <clinic@example.org> wrote:"

# How mail programs lay an answer out (their usual forms, from memory), and what she wrote.
MAILS = {
    "words alone": ("done 2x10 pain 3", "done 2x10 pain 3"),
    "above a quote": (
        f"Y3\n\n{HEAD}\n\n> Hi Ana\n> A sit to stand\n",
        "Y3",
    ),
    "above a quote whose head is two lines long": (
        "Y3\n\nOn Mon, Mar 1, 2027 at 8:30 AM Elm Clinic and its people\n<clinic@example.org> wrote:\n\n> Hi Ana\n",
        "Y3",
    ),
    "between quoted lines": (
        f"{HEAD}\n> A sit to stand 10 times, twice\ndid 8\n> B wall push 8 times\nskipped, pain 4\n> C heel raise\n",
        "did 8\nskipped, pain 4",
    ),
    "above and between quoted lines": (
        f"mostly done\n\n{HEAD}\n> A sit to stand 10 times\ndid 8\n> B wall push 8 times\n",
        "mostly done\ndid 8",
    ),
    "below a quote": (
        f"{HEAD}\n> Hi Ana\n> A sit to stand\n\nall done, no pain\n",
        "all done, no pain",
    ),
    "in Spanish above a quote": (
        "Hecho, dolor 3\n\nEl lun, 1 mar 2027 a las 8:30, Elm Clinic (<clinic@example.org>) escribió:\n\n> Hola Ana\n",
        "Hecho, dolor 3",
    ),
    "above an unmarked quote": (
        "Y3\n\nFrom: Elm Clinic\nSent: Monday\nTo: Ana\nSubject: Exercises\n\nHi Ana\n",
        "Y3",
    ),
    "above an unmarked quote behind a rule": (
        "Y3\n________________________________\nFrom: Elm Clinic\nSent: Monday\nTo: Ana\nSubject: E\n\nHi",
        "Y3",
    ),
    "above an unmarked Spanish quote": (
        "hecho\n\nDe: Elm Clinic <clinic@example.org>\nEnviado el: lunes\nPara: Ana\nAsunto: Ejercicios\n\nHola Ana\n",
        "hecho",
    ),
    "all of it below an unmarked quote's head": (
        "From: Elm Clinic\nSent: Monday\nTo: Ana\nSubject: E\n\nHi Ana\nI fell\n",
        "",
    ),
    "with a marked signature": ("pain 3\n\n-- \nAna Ruiz\n202-555-0101", "pain 3"),
    "with a farewell and a name": ("pain 3\n\nThanks,\nAna", "pain 3"),
    "with a farewell, a name and a number": ("pain 3\n\nBest regards\nAna Ruiz\n(202) 555-0101", "pain 3"),
    "with a phone's own line": ("pain 3\n\nSent from my phone", "pain 3"),
    "with a phone's own line in Spanish": ("dolor 3\n\nEnviado desde mi iPhone", "dolor 3"),
    "with words after the phone's own line": ("did it\nSent from my iPhone\nbut pain 7", "did it\nbut pain 7"),
    "a thanks that goes on is no signature": ("done\nThanks, pain was 7 though", "done\nThanks, pain was 7 though"),
    "a rating under a farewell is kept": ("Thanks,\nI did 8 of 10\npain 6", "Thanks,\nI did 8 of 10\npain 6"),
    "a whole sentence under a farewell is kept": (
        "done\nThanks,\nmy back hurts a lot after the second set",
        "done\nThanks,\nmy back hurts a lot after the second set",
    ),
    "a postscript is kept": ("done\n\nThanks,\nAna\nPS my knee", "done\n\nThanks,\nAna\nPS my knee"),
    "a list with hyphens is no signature": ("- A 2x10\n- B 8\n- pain 3", "- A 2x10\n- B 8\n- pain 3"),
    "nothing but a signature": ("-- \nAna", ""),
    "nothing": ("", ""),
}


@pytest.mark.parametrize(("text", "expected"), MAILS.values(), ids=MAILS)
def test_what_she_wrote_is_kept_and_what_we_wrote_is_cut_off(text: str, expected: str) -> None:
    assert own_words(text) == expected
    assert own_words(text.replace("\n", "\r\n")) == expected


def test_a_paragraph_on_one_long_line_is_kept_to_its_end() -> None:
    words = " ".join(f"word{n}" for n in range(400))
    assert own_words(f"{words} and pain 7").split() == [*words.split(), "and", "pain", "7"]


# Texts made to slow a pattern down: each took seconds or more before lines and lengths were bounded.
SLOW = {
    "blank lines": "\n" * 20_000 + "x",
    "blank lines with blanks": "\n \n" * 8_000,
    "a head that never ends": "On " + "a " * 30_000,
    "many such": ("On " + "a " * 500 + "\n") * 60,
    "heads of heads": "From: \n" * 5_000,
    "farewells": "Thanks,\n" * 5_000,
    "phones": "Sent from my\n\n" * 3_000 + "9",
    "Spanish heads": ("El " + "a " * 140 + "\n") * 300,
    "quote marks": "> " * 20_000,
    "rules": "-" * 50_000,
}


@pytest.mark.parametrize("text", SLOW.values(), ids=SLOW)
def test_no_mail_holds_the_reader_up(text: str) -> None:
    begun = time.perf_counter()
    own_words(text)
    assert time.perf_counter() - begun < 3


@given(st.text(max_size=300))
def test_no_text_is_too_odd_to_be_read(text: str) -> None:
    assert isinstance(own_words(text), str)


@given(st.lists(st.sampled_from(["done", "pain 3", "I fell", "2x10", "no", "dolor 4", ""]), max_size=6))
def test_plain_short_lines_are_never_lost(lines: list[str]) -> None:
    assert own_words("\n".join(lines)).split() == " ".join(lines).split()
