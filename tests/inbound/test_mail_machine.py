"""Mails by machines: automatic answers, reports that a mail could not be delivered, and what only looks like one."""

import pytest

from reminders.channels.email import EmailChannel
from reminders.core.channel import Outgoing
from reminders.core.provider_codes import treatment
from reminders.inbound.mail import inbound_of
from reminders.settings import MailServer
from tests.inbound.test_mail import CLINIC, HEAD, NOW, OURS, mail

# Mails by machines: RFC 3834 sections 2 and 5; the others common practice.
MACHINES = {
    "it says so": {"Auto_Submitted": "auto-replied"},
    "it says so with a comment": {"Auto_Submitted": "auto-generated; owner=x"},
    "bulk": {"Precedence": "bulk"},
    "a list": {"List_Id": "<news.example.org>"},
    "an old mark": {"X_Autoreply": "yes"},
}


@pytest.mark.parametrize("more", MACHINES.values(), ids=MACHINES)
def test_a_mail_by_a_machine_is_marked(more: dict[str, str]) -> None:
    assert inbound_of(mail("I am away", **more), NOW).automatic
    assert not inbound_of(mail("I am away", Auto_Submitted="no"), NOW).automatic


@pytest.mark.parametrize(
    "subject",
    [
        "Out of Office: Re: Exercises",
        "Automatic reply: x",
        "Respuesta automática: x",
        "=?utf-8?q?Respuesta_autom=C3=A1tica?=",
    ],
)
def test_an_absence_that_says_so_only_in_its_subject_is_marked(subject: str) -> None:
    raw = mail("I am away", head=HEAD.replace("Re: Exercises for Monday 1 March", subject))
    assert inbound_of(raw, NOW).automatic
    assert inbound_of(raw, NOW).text == "I am away"


BOUNCE = """--b
Content-Type: text/plain

Your message could not be delivered.
--b
Content-Type: message/delivery-status

Reporting-MTA: dns; mail.example.org

Final-Recipient: rfc822; ana@example.org
Action: {action}
Status: {status}

--b
Content-Type: {kind}

Message-ID: {lost}
Subject: Exercises for Monday 1 March

Hi Ana
--b--
"""
DAEMON = """Return-Path: <>
From: Mail Delivery System <MAILER-DAEMON@mail.example.org>
To: clinic@example.org
Subject: Undelivered
MIME-Version: 1.0
"""
REPORT = 'multipart/report; report-type=delivery-status; boundary="b"'


def report(action: str, status: str, kind: str = "message/rfc822") -> bytes:
    """Return a delivery report (RFC 3464)."""
    return mail(BOUNCE.format(action=action, status=status, kind=kind, lost=OURS), REPORT, head=DAEMON)


# A report and what it must say: the mail that was lost, why, and what is then done.
REPORTS = {
    "failed, the mail given back": (report("failed", "5.1.1"), (OURS, "smtp:5.1.1"), "unusable"),
    "failed, its head given back": (
        report("failed", "5.2.2", "text/rfc822-headers"),
        (OURS, "smtp:5.2.2"),
        "permanent",
    ),
    "failed without a status": (report("failed", "none"), (OURS, "smtp:5.0.0"), "permanent"),
    "only delayed": (report("delayed", "4.4.1"), ("", ""), ""),
    "delivered": (report("delivered", "2.0.0"), ("", ""), ""),
    "in words alone": (
        mail(f"550 5.1.1 user unknown\n\nMessage-ID: {OURS}\n", head=DAEMON),
        (OURS, "smtp:5.1.1"),
        "unusable",
    ),
    "in words alone, a delay": (mail(f"4.4.1 still trying\n\nMessage-ID: {OURS}\n", head=DAEMON), ("", ""), ""),
    "in words alone, an older server's": (
        mail(f"550 no such user here\n\nMessage-ID: {OURS}\n", head=DAEMON),
        (OURS, "smtp:5.0.0"),
        "permanent",
    ),
    "in words alone, without a code": (
        mail(
            f"This is a permanent error. Unrouteable address\n\nMessage-ID: {OURS}\n",
            head=f"{DAEMON}Auto-Submitted: auto-replied\n",
        ),
        (OURS, "smtp:5.0.0"),
        "permanent",
    ),
    "in words alone that name no failure": (
        mail(f"Your mail waits in our queue\n\nMessage-ID: {OURS}\n", head=DAEMON),
        ("", ""),
        "",
    ),
    "about a mail that is not ours": (mail("550 5.1.1 user unknown", head=DAEMON), ("", ""), ""),
}


@pytest.mark.parametrize(("raw", "expected", "then"), REPORTS.values(), ids=REPORTS)
def test_a_bounce_names_the_mail_that_was_lost_and_why(raw: bytes, expected: tuple[str, str], then: str) -> None:
    inbound = inbound_of(raw, NOW)
    assert (inbound.bounce_of, inbound.bounce_code) == expected
    assert inbound.automatic
    if then:
        assert treatment(inbound.bounce_code) == then


def test_an_absence_note_with_the_null_sender_is_no_bounce() -> None:
    head = f"Return-Path: <>\nAuto-Submitted: auto-replied\nIn-Reply-To: {OURS}\n{HEAD}"
    inbound = inbound_of(mail("I am away until Monday, room 5.1.1", head=head), NOW)
    assert (inbound.bounce_of, inbound.automatic) == ("", True)
    assert inbound.text == "I am away until Monday, room 5.1.1"


def test_a_null_sender_alone_is_no_daemon() -> None:
    head = f"Return-Path: <>\nIn-Reply-To: {OURS}\n{HEAD}"
    inbound = inbound_of(mail("I am away until Monday", head=head), NOW)
    assert (inbound.bounce_of, inbound.automatic) == ("", True)


def test_a_person_who_quotes_a_bounce_is_no_bounce() -> None:
    inbound = inbound_of(mail(f"I got this: 550 5.1.1 {OURS}"), NOW)
    assert (inbound.bounce_of, inbound.automatic) == ("", False)


def test_our_own_mail_come_back_is_a_machines() -> None:
    made = EmailChannel(MailServer("127.0.0.1", 1), CLINIC, b"secret").mail(
        Outgoing(key="reminder:7:2027-03-01", to="ana@example.org", body="Hi Ana", subject="Exercises")
    )
    assert inbound_of(made.as_bytes(), NOW).automatic
