import pytest

from reminders.core.provider_codes import furthest, is_final, state_of, treatment

# Twilio, "Error and Warning Dictionary" (twilio.com/docs/api/errors), the page of each number; RFC 3463 and RFC 5321
# section 4.2.1 for mail.
CODES = {
    "receiver opted out": ("21610", "opted_out"),
    "number is none": ("21211", "unusable"),
    "not a mobile": ("21614", "unusable"),
    "unknown number": ("30005", "unusable"),
    "landline": ("30006", "unusable"),
    "another landline": ("21635", "unusable"),
    "phone off": ("30003", "retry"),
    "queue full": ("21611", "retry"),
    "too many requests": ("20429", "retry"),
    "service unavailable": ("20503", "retry"),
    "filtered": ("30007", "operator"),
    "unregistered sender": ("30034", "operator"),
    "region not enabled": ("21408", "operator"),
    "too long": ("21617", "permanent"),
    "validity ran out": ("30036", "permanent"),
    "a code that we do not know": ("39999", "permanent"),
    "server trouble": ("http:502", "retry"),
    "wrong token": ("http:401", "operator"),
    "a request that can never work": ("http:400", "permanent"),
    "no code at all": ("", "retry"),
    "mailbox unknown": ("smtp:550 5.1.1", "unusable"),
    "mailbox unknown, without an enhanced code": ("smtp:550", "unusable"),
    "mailbox full for now": ("smtp:452 4.2.2", "retry"),
    "greylisted": ("smtp:451", "retry"),
    "policy": ("smtp:550 5.7.1", "operator"),
    "sign-in refused": ("smtp:535 5.7.8", "operator"),
    "message refused": ("smtp:554", "permanent"),
    "a bounce's status": ("smtp:5.1.1", "unusable"),
    "a bounce's full mailbox": ("smtp:5.2.2", "permanent"),
    "a delay's status": ("smtp:4.4.1", "retry"),
}


@pytest.mark.parametrize(("code", "expected"), CODES.values(), ids=CODES)
def test_what_a_code_asks_for(code: str, expected: str) -> None:
    assert treatment(code) == expected


def test_what_the_operator_can_mend_is_tried_again_and_a_filtered_text_is_not() -> None:
    assert not is_final("20003")
    assert not is_final("smtp:535 5.7.8")
    assert is_final("30007")
    assert is_final("21610")
    assert not is_final("20429")


def test_the_furthest_status_stands_whatever_the_order() -> None:
    assert furthest("delivered", "sent") == "delivered"
    assert furthest("sent", "delivered") == "delivered"
    assert furthest("undelivered", "queued") == "undelivered"
    assert furthest("sending", "a word of next year") == "sending"


def test_states_follow_the_status() -> None:
    assert [state_of(s) for s in ("queued", "sent", "delivered", "read", "undelivered", "failed")] == [
        "accepted",
        "accepted",
        "delivered",
        "delivered",
        "failed",
        "failed",
    ]
