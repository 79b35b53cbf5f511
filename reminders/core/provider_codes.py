"""What a provider's refusal or status means for us.

Codes are strings: the SMS provider's own (`21610`), an HTTP status where it gave none (`http:502`), or a mail
server's answer (`smtp:550 5.1.1`). What is then done about it is the flows' business.
"""

from typing import Literal

Treatment = Literal["retry", "permanent", "unusable", "operator", "opted_out"]
StatusState = Literal["accepted", "delivered", "failed"]

# Where no other source stands beside a code: Twilio, "Error and Warning Dictionary", twilio.com/docs/api/errors/CODE.
RETRY = frozenset(
    {
        "20429",  # too many requests at once; was not processed, try again with growing waits
        "20503",  # service unavailable, likewise
        "21611",  # the sender's queue is full
        "30001",  # queue overflow (from memory)
        "30003",  # handset off or without cover; a later try may work
        "30008",  # unknown error on the way (from memory)
        "30017",  # carrier's network congested (from memory)
        "30022",  # carrier's rate for a registered number exceeded (from memory)
        "http:408",
        "http:429",
        "http:503",  # RFC 9110, section 15.6.4: a temporary condition, Retry-After may say how long
    }
)
UNUSABLE = frozenset(
    {
        "21211",  # To is no valid number
        "21214",  # To cannot be reached (from memory)
        "21217",  # To does not look like a number (from memory)
        "21614",  # To is not a mobile number
        "21635",  # To is a landline
        "30004",  # destination blocked (from memory)
        "30005",  # unknown number, may no longer exist
        "30006",  # landline or unreachable carrier: no retry
    }
)
NO_WORDS = "no words"  # our own: a text could not be filled in, so nothing was handed over
# The operator must act; what was refused may go once it is mended.
OPERATOR_CAN_MEND = frozenset(
    {
        "20003",  # wrong account or token (from memory)
        "20005",  # account not active (from memory)
        "30002",  # account suspended (from memory)
        "63038",  # account's messages of the day used up (from memory)
        "http:401",
        "http:403",
        "http:404",  # the base address or the account is wrong
    }
)
OPERATOR = OPERATOR_CAN_MEND | frozenset(
    {
        NO_WORDS,
        "21212",  # From is no valid number (from memory)
        "21408",  # sending to this region is not enabled
        "21603",  # From is missing (from memory)
        "21606",  # From is not ours or cannot text (from memory)
        "21609",  # status callback address is not usable
        "21703",  # messaging service has no number (from memory)
        "30007",  # filtered by provider or carrier: do not send the same text again
        "30023",  # carrier's day limit for a registered brand reached (from memory)
        "30024",  # sender's number is not set up
        "30032",  # toll-free number not verified (from memory)
        "30034",  # ten-digit number not registered
        "30540",  # opt-in confirmation lacks what a campaign must have
    }
)
OPTED_OUT = frozenset({"21610"})  # receiver opted out at the provider; HTTP 400, do not retry

# Enhanced mail status codes, RFC 3463, sections 3.2 to 3.8, and RFC 7505 for 5.1.10.
MAIL_UNUSABLE = ("5.1.1", "5.1.2", "5.1.3", "5.1.6", "5.1.10", "5.2.1")
# RFC 5321, section 4.2.3 and RFC 4954, section 6: the server will not serve us until someone changes something.
MAIL_OPERATOR = frozenset({"500", "501", "502", "503", "504", "521", "530", "534", "535", "538"})


def treatment(code: str) -> Treatment:
    """Return what a failure with this code asks for.

    `unusable`: the contact cannot be reached and the clinic is told. `operator`: the operator is told once.
    An unknown code is `permanent`, save a 5xx HTTP status and a 4xx mail answer, which ask for a retry.
    """
    if code in OPTED_OUT:
        return "opted_out"
    if code in RETRY:
        return "retry"
    if code in UNUSABLE:
        return "unusable"
    if code in OPERATOR:
        return "operator"
    if code.startswith("smtp:"):
        return mail_treatment(code.removeprefix("smtp:"))
    return "retry" if code.startswith("http:5") or not code else "permanent"


def mail_treatment(answer: str) -> Treatment:
    """Return what a mail server's answer asks for, such as `550 5.1.1`, `452` or a bounce's `5.2.2`."""
    reply, _, enhanced = answer.partition(" ")
    if "." in reply:
        reply, enhanced = "", reply
    if reply.startswith("4") or (not reply and enhanced.startswith("4")):
        return "retry"
    if enhanced in MAIL_UNUSABLE or (not enhanced and reply in ("550", "551", "553")):
        return "unusable"
    if enhanced.startswith("5.7.") or reply in MAIL_OPERATOR:
        return "operator"
    return "permanent"


def is_final(code: str) -> bool:
    """Whether the same message must not be handed over again at once; the operator's own faults can be mended."""
    wanted = treatment(code)
    if wanted != "operator":
        return wanted != "retry"
    return code not in OPERATOR_CAN_MEND and not code.startswith("smtp:")


# Twilio, "Message resource", status values, and "Outbound message status in status callbacks": callbacks may come
# out of order and more than once, so the furthest stands. Delivered beats failed: a phone that has it has it.
STATUS_RANK = {
    "accepted": 0,
    "scheduled": 0,
    "queued": 1,
    "sending": 2,
    "sent": 3,
    "canceled": 4,
    "failed": 4,
    "undelivered": 4,
    "partially_delivered": 4,
    "delivered": 5,
    "read": 6,
}


def furthest(first: str, second: str) -> str:
    """Return whichever of two statuses lies further on the way; an unknown one never displaces a known one."""
    return second if STATUS_RANK.get(second, -1) > STATUS_RANK.get(first, -1) else first


def state_of(status: str) -> StatusState:
    """Return our state for the provider's status of a text that it accepted."""
    if status in ("delivered", "read"):
        return "delivered"
    if status in ("failed", "undelivered", "canceled", "partially_delivered"):
        return "failed"
    return "accepted"
