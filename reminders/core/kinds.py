"""Every kind of message we send, with the rules that hold for it. Whoever adds a kind adds one row here.

The order when a client's text caps are full, and what windows, holds, pauses and consent mean for a kind, are decided
here and nowhere else.
"""

from dataclasses import dataclass


@dataclass(frozen=True)
class Kind:
    """What holds for one kind of message.

    `priority`: 0 urgent, 1 answers, 2 the rest. `order_full`: place in line when the caps are full (0: outside caps).
    `waits`: when full it waits a day instead of being dropped. `needs_consent`, `ends_with_hold`, `ends_with_pause`:
    read again right before each call. `expires_minutes`: how long after its due time it may still go (0: no limit).
    """

    priority: int = 2
    order_full: int = 0
    waits: bool = True
    is_answer: bool = False
    needs_consent: bool = True
    ends_with_hold: bool = False
    ends_with_pause: bool = False
    expires_minutes: int = 0
    to_staff: bool = False


ANSWER = Kind(priority=1, is_answer=True)
CLOSED_ANSWER = Kind(priority=1, is_answer=True, needs_consent=False)
DANGER = Kind(priority=0, is_answer=True, needs_consent=False)

KINDS: dict[str, Kind] = {
    # begun by the service, to a client
    "welcome": Kind(order_full=1),
    "hold_cleared": Kind(order_full=1, ends_with_hold=True),  # another hold may have begun since
    "therapist_note": Kind(order_full=2),
    "reminder": Kind(order_full=3, ends_with_hold=True, ends_with_pause=True, expires_minutes=240),
    "morning": Kind(order_full=4, ends_with_hold=True, ends_with_pause=True, expires_minutes=240),
    "reason": Kind(order_full=5, ends_with_hold=True, ends_with_pause=True),
    "question": Kind(order_full=6, ends_with_hold=True, ends_with_pause=True),
    "evening": Kind(order_full=7, waits=False, ends_with_hold=True, ends_with_pause=True, expires_minutes=120),
    "praise": Kind(order_full=8, waits=False, ends_with_hold=True, ends_with_pause=True),
    # answers to a client
    "thanks": ANSWER,
    "ask": ANSWER,
    "said_back": ANSWER,
    "resend": Kind(priority=1, is_answer=True, ends_with_hold=True),
    "started": ANSWER,
    "stop_level": Kind(priority=0, is_answer=True),
    "danger": DANGER,
    "read_by": ANSWER,  # who has read an urgent alert's words
    "stopped": CLOSED_ANSWER,  # the one confirmation after STOP
    "help": CLOSED_ANSWER,
    "stranger": DANGER,  # danger wording, or HELP, from a number nobody knows
    "sympathy": CLOSED_ANSWER,
    # to staff
    "alert": Kind(priority=0, needs_consent=False, to_staff=True),
    "note": Kind(needs_consent=False, to_staff=True),  # today and routine alerts, at the hours she chose
    "digest": Kind(needs_consent=False, to_staff=True),
    "desk": Kind(needs_consent=False, to_staff=True),
    "operator": Kind(needs_consent=False, to_staff=True),
    "staff_answer": Kind(priority=1, needs_consent=False, to_staff=True),
    "sign_in": Kind(priority=1, needs_consent=False, to_staff=True),
}


def kind_of(name: str) -> Kind:
    """Return the rules for a kind of message; raises KeyError for one that nobody wrote down."""
    return KINDS[name]
