"""Mail through a real SMTP server on loopback."""

import socket
import threading
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime
from email import message_from_bytes
from email.message import EmailMessage
from email.policy import default

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from reminders.channels.email import EmailChannel
from reminders.core.channel import Outgoing
from reminders.core.mail_ids import message_id
from reminders.core.provider_codes import treatment
from reminders.errors import CannotSay, SendError
from reminders.settings import MailServer
from tests.standins.mail import SmtpServer, free_port

SENDER = "Elm Clinic <clinic@example.org>"
SECRET = b"kq0Zr7wV2mXc9LbT4nPd8sHg"
PARENT = "<r.00000000000000000000000000000000000000aa@example.org>"
MAIL = Outgoing(
    key="reminder:7:2027-03-01",
    to="ana@example.org",
    body="Hola Ana:\nA flexión en la pared 8 veces\n",
    subject="Ejercicios del lunes 1 de marzo",
    html="<p>Hola Ana:</p><p>A flexión en la pared 8 veces</p>",
    claimed_at=datetime(2027, 3, 1, 13, 30, tzinfo=UTC),
    headers={"In-Reply-To": PARENT, "References": f"<first@example.org> {PARENT}"},
    unsubscribe_url="https://reminders.example.org/unsubscribe/" + "t" * 90,
    reply_token="1c-k3J5h7_9f2",
)


@pytest.fixture(scope="module")
def server() -> Iterator[SmtpServer]:
    with SmtpServer() as running:
        yield running


@pytest.fixture
def smtp(server: SmtpServer) -> SmtpServer:
    server.keeper.envelopes.clear()
    return server


@pytest.fixture
def channel(smtp: SmtpServer) -> EmailChannel:
    return EmailChannel(MailServer("127.0.0.1", smtp.controller.port), SENDER, SECRET)


def arrived(smtp: SmtpServer) -> EmailMessage:
    """Return the last mail that arrived."""
    mail = message_from_bytes(smtp.mails[-1], policy=default)
    assert isinstance(mail, EmailMessage)
    return mail


def test_a_mail_arrives_with_a_plain_and_an_html_part(channel: EmailChannel, smtp: SmtpServer) -> None:
    channel.send(MAIL)
    mail = arrived(smtp)
    assert mail.get_content_type() == "multipart/alternative"
    plain, html = mail.iter_parts()
    assert isinstance(plain, EmailMessage)
    assert isinstance(html, EmailMessage)
    assert (plain.get_content_type(), html.get_content_type()) == ("text/plain", "text/html")
    assert plain.get_content().replace("\r\n", "\n") == MAIL.body
    assert html.get_content().strip() == MAIL.html
    assert (mail["From"], mail["To"], mail["Subject"]) == (SENDER, "ana@example.org", MAIL.subject)
    assert mail["Date"].datetime == MAIL.claimed_at
    envelope = smtp.keeper.envelopes[-1]
    assert (envelope.mail_from, envelope.rcpt_tos) == ("clinic@example.org", ["ana@example.org"])


def test_headers_thread_unsubscribe_and_say_that_no_person_wrote(channel: EmailChannel, smtp: SmtpServer) -> None:
    channel.send(MAIL)
    mail = arrived(smtp)
    # RFC 5322 section 3.6.4; RFC 3834 section 5; RFC 8058 section 3.1.
    assert (mail["In-Reply-To"], mail["References"]) == (PARENT, f"<first@example.org> {PARENT}")
    assert mail["Auto-Submitted"] == "auto-generated"
    assert mail["List-Unsubscribe"] == f"<{MAIL.unsubscribe_url}>"
    assert mail["List-Unsubscribe-Post"] == "List-Unsubscribe=One-Click"
    assert mail["Reply-To"] == "clinic+1c-k3J5h7_9f2@example.org"
    assert b"=?utf-8?q?=3C" not in smtp.mails[-1], "no address may be torn apart by folding"


def test_long_thread_headers_keep_the_line_limit_of_the_standard(channel: EmailChannel, smtp: SmtpServer) -> None:
    ids = " ".join(message_id(f"reminder:7:{n}", SECRET, SENDER) for n in range(60))
    channel.send(replace(MAIL, headers={"References": ids}))
    assert arrived(smtp)["References"] == ids
    # RFC 5322 section 2.1.1: at most 998 characters a line.
    assert max(len(line) for line in smtp.mails[-1].split(b"\r\n")) <= 998


def test_an_answer_says_that_it_was_replied_by_a_machine(channel: EmailChannel, smtp: SmtpServer) -> None:
    channel.send(replace(MAIL, headers={"Auto-Submitted": "auto-replied"}))
    assert arrived(smtp)["Auto-Submitted"] == "auto-replied"


def test_a_mail_tried_again_is_the_same_mail(channel: EmailChannel, smtp: SmtpServer) -> None:
    first = channel.send(MAIL)
    assert channel.send(replace(MAIL, attempt=2)) == first == arrived(smtp)["Message-ID"]
    assert channel.send(replace(MAIL, key="reminder:8:2027-03-01")) != first


def test_a_plain_mail_to_staff_has_no_list_headers(channel: EmailChannel, smtp: SmtpServer) -> None:
    channel.send(Outgoing(key="alert:3", to="ben@example.org", body="A.R. 12: alert 3", subject="Alert 3"))
    mail = arrived(smtp)
    assert mail.get_content_type() == "text/plain"
    assert not {"List-Unsubscribe", "Reply-To", "In-Reply-To"} & set(mail.keys())


# What a mail server says, and what the error must say: code, permanent, what is then done.
ANSWERS = {
    "no such mailbox": ("RCPT", "550 5.1.1 no such user", ("smtp:550 5.1.1", True, "unusable")),
    "no such mailbox, in old words": ("RCPT", "550 no such user", ("smtp:550", True, "unusable")),
    "mailbox full for now": ("RCPT", "452 4.2.2 over quota", ("smtp:452 4.2.2", False, "retry")),
    "greylisted": ("RCPT", "451 try again", ("smtp:451", False, "retry")),
    "refused by policy, which can be mended": ("DATA", "550 5.7.1 rejected", ("smtp:550 5.7.1", False, "operator")),
    "message refused": ("DATA", "554 5.6.0 no", ("smtp:554 5.6.0", True, "permanent")),
    "out of space": ("DATA", "452 4.3.1 disk full", ("smtp:452 4.3.1", False, "retry")),
}


@pytest.mark.parametrize(("step", "answer", "expected"), ANSWERS.values(), ids=ANSWERS)
def test_a_refusal_says_how_to_treat_it(
    step: str, answer: str, expected: tuple[str, bool, str], channel: EmailChannel, smtp: SmtpServer
) -> None:
    smtp.will_answer(step, answer)
    with pytest.raises(SendError) as caught:
        channel.send(MAIL)
    error = caught.value
    assert (error.code, error.permanent, treatment(error.code)) == expected
    assert not error.unknown
    assert "ana@" not in str(error)
    assert smtp.mails == []


def test_a_connection_cut_after_the_mail_was_taken_is_unknown(channel: EmailChannel, smtp: SmtpServer) -> None:
    smtp.keeper.drops_after_data = 1
    with pytest.raises(SendError) as caught:
        channel.send(MAIL)
    assert (caught.value.unknown, caught.value.permanent) == (True, False)
    first = arrived(smtp)["Message-ID"]
    assert channel.send(replace(MAIL, attempt=2)) == first


def test_nobody_listening_is_tried_again() -> None:
    with pytest.raises(SendError) as caught:
        EmailChannel(MailServer("127.0.0.1", free_port()), SENDER, SECRET).send(MAIL)
    assert (caught.value.unknown, caught.value.permanent, treatment(caught.value.code)) == (False, False, "retry")


def test_a_server_that_hangs_up_at_once_is_tried_again() -> None:
    with socket.create_server(("127.0.0.1", 0)) as listener:
        closer = threading.Thread(target=lambda: listener.accept()[0].close())
        closer.start()
        with pytest.raises(SendError) as caught:
            EmailChannel(MailServer("127.0.0.1", listener.getsockname()[1]), SENDER, SECRET).send(MAIL)
        closer.join()
    assert (caught.value.unknown, caught.value.permanent) == (False, False)


@pytest.mark.parametrize(
    "where",
    [MailServer("127.0.0.1", 0, tls="start"), MailServer("127.0.0.1", 0, user="clinic", password="m4ple")],
    ids=["no STARTTLS", "no sign-in"],
)
def test_a_server_that_lacks_what_is_set_gets_nothing(where: MailServer, smtp: SmtpServer) -> None:
    with pytest.raises(SendError) as caught:
        EmailChannel(replace(where, port=smtp.controller.port), SENDER, SECRET).send(MAIL)
    assert treatment(caught.value.code) == "operator"
    assert "m4ple" not in str(caught.value)
    assert smtp.mails == []


def test_a_mail_server_cannot_say(channel: EmailChannel) -> None:
    with pytest.raises(CannotSay):
        channel.find(MAIL, datetime(2027, 3, 1, tzinfo=UTC), frozenset())


# A value that would break out of its header, where it stands.
INJECTIONS = {
    "in the address": {"to": "ana@example.org\r\nBcc: cleo@example.org"},
    "a second address": {"to": "ana@example.org, cleo@example.org"},
    "a name with an address": {"to": "Ana <ana@example.org>"},
    "an address that is none": {"to": "ana"},
    "an address beyond ASCII": {"to": "añа@example.org"},
    "in a thread header": {"headers": {"References": "<a@x.org>\r\nBcc: cleo@example.org"}},
    "a control character in a thread header": {"headers": {"References": "<a@x.org>\x00<b@x.org>"}},
    "a header that is not ours to set": {"headers": {"Bcc": "cleo@example.org"}},
    "a header's own name": {"headers": {"References: x\r\nBcc": "cleo@example.org"}},
    "in the unsubscribe address": {"unsubscribe_url": "https://x.example.org/\r\nBcc: cleo@example.org"},
    "in the reply token": {"reply_token": "abcdefgh\r\nBcc: cleo"},
}


@pytest.mark.parametrize("change", INJECTIONS.values(), ids=INJECTIONS)
def test_a_value_that_would_break_out_is_refused(
    change: dict[str, object], channel: EmailChannel, smtp: SmtpServer
) -> None:
    with pytest.raises(SendError) as caught:
        channel.send(replace(MAIL, **change))  # type: ignore[arg-type]
    assert caught.value.permanent
    assert smtp.keeper.envelopes == []


@settings(max_examples=150, deadline=None)
@given(
    st.text(max_size=80),
    st.sampled_from(["\r\nBcc: cleo@example.org\r\n\r\nbody", "\n", "\r", "\u2028Bcc: x", "\x85", "\x00"]),
)
def test_no_subject_adds_a_header_or_a_line(words: str, breaker: str) -> None:
    channel = EmailChannel(MailServer("127.0.0.1", 1), SENDER, SECRET)
    subject = (words + breaker + words).encode("utf-8", "replace").decode("utf-8")
    plain = channel.mail(replace(MAIL, subject="x"))
    made = channel.mail(replace(MAIL, subject=subject))
    again = message_from_bytes(made.as_bytes(), policy=default)
    assert sorted(again.keys()) == sorted(plain.keys())
    assert again["To"] == "ana@example.org"
    assert "Bcc" not in again
