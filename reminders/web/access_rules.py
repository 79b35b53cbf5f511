"""The table of who may call what: one line a route, in the order of the pages. A route without a line is for nobody.

Adding a page means adding its line here; tests/web/test_access.py then calls it as every role, from another clinic,
without a session and with a stale one.
"""

from dataclasses import dataclass

SAFE_METHODS = ("GET", "HEAD", "OPTIONS")
ADMIN, THERAPIST, ASSISTANT, LEAD, RECORDS = "admin", "therapist", "assistant", "lead", "records"
ROLES = (ADMIN, THERAPIST, ASSISTANT, LEAD, RECORDS)


@dataclass(frozen=True)
class Rule:
    """Who may call a route.

    `is_open`: anybody, since the route needs no sign-in or proves the caller itself. `scope`: a bearer token with this
    scope. `confirms`: only within ten minutes of having proved who she is.
    """

    roles: tuple[str, ...] = ()
    is_open: bool = False
    scope: str = ""
    confirms: bool = False


OPEN = Rule(is_open=True)
ANYONE = Rule(ROLES)
CARE = Rule((THERAPIST, ASSISTANT, LEAD))
DECIDES = Rule((THERAPIST, LEAD))
DESK = Rule((ADMIN,))
DESK_OR_CARE = Rule((ADMIN, THERAPIST, ASSISTANT, LEAD))
DESK_OR_DECIDES = Rule((ADMIN, THERAPIST, LEAD))
PAPERS = Rule((ADMIN, RECORDS, LEAD))
DESK_SURE = Rule((ADMIN,), confirms=True)
PAPERS_SURE = Rule((ADMIN, RECORDS, LEAD), confirms=True)
SELF_SURE = Rule(ROLES, confirms=True)

CONSOLE: dict[str, Rule] = {
    # everyone who works here
    "GET /": ANYONE,
    "POST /sign-out": ANYONE,
    "POST /stay": ANYONE,
    "GET /confirm": ANYONE,
    "POST /confirm": ANYONE,
    "GET /settings": ANYONE,
    "POST /settings": ANYONE,
    "POST /settings/password": SELF_SURE,
    "POST /settings/code": SELF_SURE,
    # the therapist's day
    "GET /today": CARE,
    "POST /alerts/{alert_id}/acknowledge": CARE,
    "POST /alerts/{alert_id}/close": DECIDES,
    "POST /alerts/{alert_id}/hers": DECIDES,
    "POST /notes/{note_id}/close": DESK_OR_CARE,
    "POST /notes/{note_id}/hers": DECIDES,
    "POST /proposals/{proposal_id}": DECIDES,
    "GET /clients": DESK_OR_CARE,
    "GET /clients/{client_id}": CARE,
    "POST /clients/{client_id}/write": CARE,
    "POST /clients/{client_id}/hold": CARE,
    "POST /clients/{client_id}/clear": DECIDES,
    "POST /clients/{client_id}/easy": DECIDES,
    "POST /clients/{client_id}/dose": DECIDES,
    "POST /clients/{client_id}/note": CARE,
    "POST /reports/{report_id}/correct": CARE,
    "POST /sessions/{session_id}/correct": CARE,
    "GET /clients/{client_id}/program": CARE,
    "POST /clients/{client_id}/program": DECIDES,
    "POST /clients/{client_id}/program/end": DECIDES,
    "GET /clients/{client_id}/sheet": DESK_OR_CARE,
    "GET /clients/{client_id}/levels": DECIDES,
    "POST /clients/{client_id}/levels": DECIDES,
    "GET /levels": DECIDES,
    "POST /levels": DECIDES,
    "POST /levels/rehearse": DECIDES,
    "GET /digest": DECIDES,
    # the desk
    "GET /work": DESK,
    "GET /enrol": DESK_OR_DECIDES,
    "POST /enrol": DESK_OR_DECIDES,
    "GET /enrol/{client_id}": DESK_OR_DECIDES,
    "GET /enrol/{client_id}/status": DESK_OR_DECIDES,
    "GET /enrol-file": DESK,
    "POST /enrol-file": DESK,
    "GET /clients/{client_id}/details": DESK_OR_CARE,
    "POST /clients/{client_id}/details": DESK_OR_DECIDES,
    "POST /clients/{client_id}/contacts": DESK_OR_DECIDES,
    "POST /clients/{client_id}/pause": DESK_OR_DECIDES,
    "POST /clients/{client_id}/resume": DESK_OR_DECIDES,
    "POST /clients/{client_id}/consent": DESK_OR_DECIDES,
    "GET /clients/{client_id}/consent-sheet": DESK_OR_CARE,
    "POST /clients/{client_id}/close": DESK_OR_DECIDES,
    "POST /clients/{client_id}/reopen": DESK_OR_DECIDES,
    "GET /clients/{client_id}/record": PAPERS,
    "POST /clients/{client_id}/export": PAPERS_SURE,
    "POST /clients/{client_id}/erase": PAPERS_SURE,
    "GET /staff": DESK,
    "POST /staff": DESK_SURE,
    "POST /staff/{staff_id}": DESK_SURE,
    "POST /staff/{staff_id}/link": DESK_SURE,
    "POST /staff/{staff_id}/move": DESK_SURE,
    "GET /clinic": DESK,
    "POST /clinic": DESK,
    "GET /wording": DESK,
    "POST /wording": DESK,
    "GET /delivery": DESK,
    "GET /audit": PAPERS,
    "POST /audit/export": PAPERS_SURE,
}
OUTSIDE: dict[str, Rule] = {
    # signing in
    "GET /sign-in": OPEN,
    "POST /sign-in": OPEN,
    "POST /sign-in/link": OPEN,
    "POST /sign-in/code": OPEN,
    "POST /sign-in/carry-on": OPEN,
    "GET /sign-in/{token}": OPEN,
    "POST /sign-in/{token}": OPEN,
    # links that prove themselves
    "GET /c/{token}": OPEN,
    "POST /c/{token}": OPEN,
    "GET /a/{token}": OPEN,
    "POST /a/{token}": OPEN,
    "GET /unsubscribe/{token}": OPEN,
    "POST /unsubscribe/{token}": OPEN,
    # what proves itself by a signature, and what machines ask
    "POST /sms/inbound": OPEN,
    "POST /sms/status": OPEN,
    "GET /healthz": OPEN,
    "GET /readyz": OPEN,
    "GET /metrics": OPEN,
    "GET /static/{name}": OPEN,
    "GET /favicon.ico": OPEN,
    "GET /api/v1/openapi.json": OPEN,
}
# Other programs: each scope with its routes below /api/v1.
API_SCOPES: dict[str, tuple[str, ...]] = {
    "clients:read": (
        "GET /clients",
        "GET /clients/{client_id}",
        "GET /clients/{client_id}/consents",
        "GET /clients/{client_id}/program",
    ),
    "clients:write": (
        "POST /clients",
        "PATCH /clients/{client_id}",
        "POST /clients/{client_id}/consents",
        "POST /clients/{client_id}/pause",
        "POST /clients/{client_id}/resume",
        "POST /clients/{client_id}/close",
        "POST /clients/{client_id}/reopen",
    ),
    "record:write": (
        "PUT /clients/{client_id}/program",
        "POST /clients/{client_id}/program/extend",
        "POST /clients/{client_id}/program/rechecked",
        "POST /clients/{client_id}/messages",
        "POST /clients/{client_id}/hold",
        "POST /clients/{client_id}/clear",
        "POST /clients/{client_id}/easy-day",
        "POST /clients/{client_id}/dose",
        "POST /clients/{client_id}/notes",
        "POST /sessions/{session_id}/correction",
    ),
    "record:read": (
        "GET /clients/{client_id}/sessions",
        "GET /clients/{client_id}/reports",
        "GET /clients/{client_id}/messages",
        "GET /digests/{week}",
    ),
    "record:export": (
        "POST /clients/{client_id}/export",
        "POST /clients/{client_id}/erase",
    ),
    "alerts:read": (
        "GET /alerts",
        "GET /inbox",
        "GET /proposals",
    ),
    "alerts:write": (
        "POST /alerts/{alert_id}/acknowledge",
        "POST /alerts/{alert_id}/close",
        "POST /alerts/{alert_id}/hers",
        "POST /inbox/{note_id}/settle",
        "POST /proposals/{proposal_id}",
    ),
    "clinic:read": (
        "GET /clinic",
        "GET /staff",
        "GET /levels",
        "GET /work-list",
        "GET /delivery",
    ),
    "clinic:write": (
        "PATCH /clinic",
        "POST /staff",
        "PATCH /staff/{staff_id}",
        "POST /staff/{staff_id}/link",
        "POST /staff/{staff_id}/move",
        "PUT /levels",
        "PUT /wording",
    ),
    "audit:read": ("GET /audit",),
}
API: dict[str, Rule] = {
    rule.replace(" ", " /api/v1", 1): Rule(scope=scope) for scope, rules in API_SCOPES.items() for rule in rules
}
# A demo's own pages; where the database is none these routes do not exist.
DEMO: dict[str, Rule] = {
    "GET /demo": OPEN,
    "GET /demo/sign-in/{staff_id}": OPEN,
    "POST /demo/sign-in/{staff_id}": OPEN,
    "GET /demo/phone/{client_id}": OPEN,
    "POST /demo/phone/{client_id}": OPEN,
}
RULES: dict[str, Rule] = DEMO | OUTSIDE | CONSOLE | API
