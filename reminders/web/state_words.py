"""What became of a message, and why, as a person says it; the record itself keeps the short words of the sender."""

STATE_WORDS = {
    "waiting": "queued",
    "claimed": "queued",
    "accepted": "sent",
    "delivered": "delivered",
    "unknown": "not known yet",
}
NOT_DELIVERED = "NOT delivered"
WHY_WORDS = {
    "cap": "no room left that day or week",
    "reported": "she had answered",
    "session settled": "the session was settled",
    "too late": "",
}


def delivery_word(state: str) -> str:
    """Return a message's state as a person says it."""
    return STATE_WORDS.get(state, NOT_DELIVERED)


def state_word(state: str) -> str:
    """Return a message's state for a list of messages: what was taken back or came too late was never sent."""
    return {"withdrawn": "taken back", "expired": "not sent, too late"}.get(state) or delivery_word(state)


def why_word(why: str) -> str:
    """Return why a message was not sent, or failed."""
    return WHY_WORDS.get(why, why)
