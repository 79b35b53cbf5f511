"""Why a request is turned away before its handler: what `access` raises and `errors` answers."""

from dataclasses import dataclass

from reminders.web.forms import Form


class Forbidden(Exception):
    """Your role may not do this."""


class ForgedForm(Exception):
    """The form was not made by this console for this session."""


class NoToken(Exception):
    """A valid bearer token is needed."""


class MissingScope(Exception):
    """The token does not carry the scope that this needs."""


@dataclass
class NeedsSignIn(Exception):
    """Nobody is signed in, or the session has ended; `kept` is the work of a form that came too late, and whose."""

    kept: Form | None = None
    staff_id: int = 0


@dataclass
class NeedsConfirming(Exception):
    """The person must prove again who she is before this."""

    kept: Form | None = None
    staff_id: int = 0
