"""What an API token may be allowed to do, by name. A token carries some of these, joined by spaces."""

SCOPES = {
    "clients:read": "see clients, contacts, days, programs and consents",
    "clients:write": "enrol clients, change their details, record consent, close",
    "record:read": "see sessions, reports, messages and pain",
    "record:write": "correct readings, write to clients, hold and clear, change doses and programs",
    "alerts:read": "see alerts, the clinic's inbox and proposals",
    "alerts:write": "acknowledge and close alerts, settle inbox items and proposals",
    "clinic:read": "see the clinic's settings, staff, levels, delivery and digests",
    "clinic:write": "change the clinic's settings, staff, levels and wording",
    "audit:read": "see the audit log",
    "record:export": "take a client's record out, and erase it",
}


def read_scopes(text: str) -> tuple[str, ...]:
    """Return the scopes that a text names, joined by spaces, commas or plus signs; raises ValueError for an unknown
    one."""
    names = text.replace(",", " ").replace("+", " ").split()
    unknown = [name for name in names if name not in SCOPES]
    if unknown:
        raise ValueError(f"{unknown[0]!r} is no scope; use {', '.join(SCOPES)}")
    if not names:
        raise ValueError(f"no scope is named; use {', '.join(SCOPES)}")
    return tuple(name for name in SCOPES if name in names)
