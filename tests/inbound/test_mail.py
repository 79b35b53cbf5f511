"""A mail's bytes, turned into what a person wrote."""

from datetime import UTC, datetime
from email.message import EmailMessage

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from reminders.core.mail_ids import message_id
from reminders.inbound.mail import inbound_of

NOW = datetime(2027, 3, 1, 14, 2, tzinfo=UTC)
CLINIC = "Elm Clinic <clinic@example.org>"
OURS = message_id("reminder:7:2027-03-01", b"kq0Zr7wV2mXc9LbT4nPd8sHg", CLINIC)
HEAD = f"""Return-Path: <ana@example.org>
From: "Ana Ruiz" <Ana@Example.org>
To: Elm Clinic <clinic+1c-k3J5h7_9f2@example.org>
Subject: Re: Exercises for Monday 1 March
Message-ID: <answer-1@mail.example.org>
In-Reply-To: {OURS}
References: <first@example.org> {OURS}
Date: Mon, 1 Mar 2027 09:01:00 -0500
MIME-Version: 1.0
"""


def mail(body: str, kind: str = "text/plain; charset=utf-8", head: str = HEAD, **more: str) -> bytes:
    """Return a mail's bytes; `more` are headers, underscores for hyphens."""
    lines = "".join(f"{name.replace('_', '-')}: {value}\n" for name, value in more.items())
    return f"{head}{lines}Content-Type: {kind}\n\n{body}".replace("\n", "\r\n").encode()


def test_an_answer_says_who_wrote_what_and_to_which_mail_of_ours() -> None:
    raw = mail("done 2x10 pain 3\n\nOn Mon, Mar 1, 2027 Elm Clinic <clinic@example.org> wrote:\n> A sit to stand\n")
    inbound = inbound_of(raw, NOW)
    assert (inbound.source, inbound.text, inbound.address) == ("email", "done 2x10 pain 3", "ana@example.org")
    assert inbound.to == "clinic+1c-k3j5h7_9f2@example.org"
    assert inbound.reply_token == "1c-k3J5h7_9f2"
    assert inbound.answers == (OURS, "<first@example.org>")
    assert (inbound.raw, inbound.received_at) == (raw, NOW)
    assert (inbound.automatic, inbound.bounce_of, inbound.verified) == (False, "", False)
    assert inbound.whole_text.startswith("Re: Exercises for Monday 1 March\ndone 2x10 pain 3")
    assert "> A sit to stand" in inbound.whole_text


def multipart(*parts: tuple[str, str], kind: str = "alternative") -> bytes:
    """Return a mail of several parts, each a type and a body."""
    body = "".join(f"--b\n{'Content-Type: ' + part}\n\n{words}\n" for part, words in parts)
    return mail(f"{body}--b--\n", f'multipart/{kind}; boundary="b"')


# What is laid out how, the text that must be read, and how many pictures.
LAYOUTS = {
    "plain before HTML": (multipart(("text/plain", "plain words"), ("text/html", "<p>html words")), "plain words", 0),
    "HTML where plain is blank": (multipart(("text/plain", " \n"), ("text/html", "<p>html words")), "html words", 0),
    "HTML alone": (mail("<div>pain 3<blockquote>ours</blockquote></div>", "text/html"), "pain 3", 0),
    "text around a picture": (
        multipart(("text/plain", "before"), ("image/png", "iVBOR"), ("text/plain", "after"), kind="mixed"),
        "before\nafter",
        1,
    ),
    "an attached file is not her words": (
        multipart(("text/plain", "see file"), ("text/plain\nContent-Disposition: attachment", "pain 9"), kind="mixed"),
        "see file",
        0,
    ),
    "a mail inside the mail is not her words": (
        multipart(("text/plain", "look"), ("message/rfc822", "Subject: x\n\npain 9"), kind="mixed"),
        "look",
        0,
    ),
    "a picture alone": (mail("iVBOR", "image/jpeg"), "", 1),
    "an unknown charset": (mail("dolor 3", 'text/plain; charset="x-nobody-knows"'), "dolor 3", 0),
    "a charset that is not true": (mail("sí, dolor 3", "text/plain; charset=ascii"), "sí, dolor 3", 0),
    "no type at all": (HEAD.replace("MIME-Version: 1.0\n", "").encode() + b"\npain 3", "pain 3", 0),
    "soft line breaks are closed": (
        mail("I did two \nsets and my \nback is fine\n", "text/plain; format=flowed"),
        "I did two sets and my back is fine",
        0,
    ),
    "a type that is none": (mail("pain 3", ";;;"), "pain 3", 0),
}


@pytest.mark.parametrize(("raw", "text", "pictures"), LAYOUTS.values(), ids=LAYOUTS)
def test_her_words_are_found_however_the_mail_is_laid_out(raw: bytes, text: str, pictures: int) -> None:
    inbound = inbound_of(raw, NOW)
    assert (inbound.text, inbound.pictures) == (text, pictures)


def test_transfer_encodings_and_latin_letters_are_read() -> None:
    made = EmailMessage()
    made["From"] = "Añá <ana@example.org>"
    made["Subject"] = "Me caí ayer"
    made.set_content("Sí, dolor 3 ½\n", charset="iso-8859-1", cte="base64")
    inbound = inbound_of(made.as_bytes(), NOW)
    assert inbound.text == "Sí, dolor 3 ½"
    assert inbound.whole_text.startswith("Me caí ayer\n")
    assert inbound.address == "ana@example.org"


FROM = {
    "a name with a comma": ('"Ruiz, Ana" <ana@example.org>', "ana@example.org"),
    "a name that is another's address": ('"cleo@example.org" <ana@example.org>', "ana@example.org"),
    "no angle brackets": ("ANA@example.org", "ana@example.org"),
    "a comment": ("ana@example.org (Ana)", "ana@example.org"),
    "no address": ("Ana", ""),
    "letters beyond ASCII, not encoded": ("Añá <ana@example.org>", "ana@example.org"),
}


@pytest.mark.parametrize(("header", "address"), FROM.values(), ids=FROM)
def test_the_senders_address_is_the_one_that_a_mail_program_would_answer(header: str, address: str) -> None:
    assert inbound_of(f"From: {header}\nSubject: x\n\nhello".encode(), NOW).address == address


def test_the_same_mail_by_another_way_has_the_same_name_and_another_mail_another() -> None:
    first = inbound_of(mail("pain 3"), NOW)
    again = inbound_of(b"Received: from elsewhere\r\n by here\r\n" + mail("pain 3"), NOW)
    other = inbound_of(mail("pain 4"), NOW)
    assert first.provider_id == again.provider_id != other.provider_id


def test_danger_words_at_the_end_of_a_long_mail_are_in_the_whole_text() -> None:
    long = inbound_of(mail("word " * 20_000 + "\nI fell"), NOW)
    assert long.whole_text.endswith("I fell")


def test_a_mail_of_parts_within_parts_without_end_is_kept() -> None:
    raw = HEAD.encode() + b"".join(
        f'Content-Type: multipart/mixed; boundary="b{n}"\n\n--b{n}\n'.encode() for n in range(3000)
    )
    inbound = inbound_of(raw + b"Content-Type: text/plain\n\nI fell\n", NOW)
    assert "I fell" in inbound.whole_text
    assert inbound.address == "ana@example.org"


@settings(max_examples=300, deadline=None)
@given(
    st.binary(max_size=400),
    st.sampled_from(
        [b"", HEAD.encode(), b"From: \xff\xfe<a@b.c>\nSubject: =?utf-8?b?////?=\nContent-Type: multipart/x\n"]
    ),
)
def test_no_mail_is_too_broken_to_be_kept(body: bytes, head: bytes) -> None:
    inbound = inbound_of(head + b"\n" + body, NOW)
    assert inbound.raw == head + b"\n" + body
    for text in (inbound.text, inbound.whole_text, inbound.address, inbound.subject):
        assert "\x00" not in text
        assert text.encode("utf-8") is not None


@settings(max_examples=200, deadline=None)
@given(
    st.sampled_from(
        [
            "From",
            "To",
            "Cc",
            "Subject",
            "In-Reply-To",
            "References",
            "Content-Type",
            "Content-Disposition",
            "Delivered-To",
            "Auto-Submitted",
        ]
    ),
    st.text(alphabet=st.sampled_from(list("<>@,;:\"'=?()[]\\ab1é\t _-.%*")), max_size=60),
)
def test_no_header_is_too_broken(name: str, value: str) -> None:
    raw = f"{name}: {value}\nMessage-ID: <1@x.org>\n\nI fell".encode()
    inbound = inbound_of(raw, NOW)
    assert "I fell" in inbound.whole_text or name.startswith("Content-")
