"""The family of our errors.

ReminderError
├── BadInput          a person gave something that cannot be used: one sentence, exit 2, HTTP 422
│   └── NotFound      what was named is not there: exit 2, HTTP 404
├── Refused           asked for something that the rules forbid: exit 2, HTTP 409
├── DatabaseNotReady  the database is missing, old or newer: exit 1
├── SendError         a channel could not hand a message over (`permanent`: trying again cannot help)
└── CannotSay         a provider could not tell whether it has a message
"""


class ReminderError(Exception):
    """Something went wrong that a person can act on."""

    def __init__(self, sentence: str = "") -> None:
        """Keep the sentence; the class docstring stands in where none is given."""
        super().__init__(sentence or (self.__doc__ or "").splitlines()[0])


class BadInput(ReminderError):
    """The input cannot be used."""


class NotFound(BadInput):
    """What was named does not exist."""


class Refused(ReminderError):
    """The rules forbid this."""


class DatabaseNotReady(ReminderError):
    """The database is missing, older or newer than this program."""


class CannotSay(ReminderError):
    """The provider cannot say whether it has the message."""


class SendError(ReminderError):
    """The message could not be handed over."""

    def __init__(
        self,
        sentence: str = "",
        *,
        permanent: bool = False,
        unknown: bool = False,
        code: str = "",
        retry_after: float | None = None,
    ) -> None:
        """Keep how the failure is to be treated.

        `permanent`: trying again cannot help. `unknown`: the attempt was cut off, and the provider may have it.
        `code`: the provider's own code. `retry_after`: seconds the provider asked us to wait.
        """
        super().__init__(sentence)
        self.permanent = permanent
        self.unknown = unknown
        self.code = code
        self.retry_after = retry_after
