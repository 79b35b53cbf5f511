"""Where the text of a setting comes from: the environment, a `.env` file, a file named by NAME_FILE.

What a setting means and which values are right is in `reminders.settings`. No sentence of ours repeats a secret.
"""

import difflib
import re
from collections.abc import Collection, Mapping
from pathlib import Path

from reminders.errors import BadInput

NAME = re.compile(r"[A-Za-z_][A-Za-z0-9_]*")
QUOTED = re.compile(r"""(?P<quote>["'])(?P<inside>.*)(?P=quote)\s*(#.*)?""")
PLACEHOLDER = re.compile(
    r"<.*>|\$\{.*\}|\.{3,}|x+|.*change[-_ ]?(me|this).*|.*replace[-_ ]?(me|this|with).*|your[-_ ].*"
    r"|(my[-_ ]?)?(secret|password|passphrase|token|key|auth[-_ ]?token|secret[-_ ]?key)s?"
    r"|placeholder.*|example.*|default|todo|none|null|test|dev(elopment)?|insecure.*",
    re.IGNORECASE,
)


def dotenv(path: Path | None, known: Collection[str]) -> dict[str, str]:
    """Return what a `.env` file sets, empty when there is none; raises BadInput naming a line that sets nothing known.

    Lines are `NAME=value`, `export NAME=value`, comments and blanks; a value may stand in quotes. Nothing is expanded.
    Only here is an unknown name of ours an error: clusters put names such as REMINDERS_PORT into the environment.
    """
    if path is None or not path.is_file():
        return {}
    values: dict[str, str] = {}
    for number, line in enumerate(path.read_text(encoding="utf-8-sig").splitlines(), 1):
        bare = line.strip().removeprefix("export ").strip()
        if not bare or bare.startswith("#"):
            continue
        name, equals, value = bare.partition("=")
        name = name.strip()
        if not equals or not NAME.fullmatch(name):
            raise BadInput(f"Line {number} of {path} is not of the form NAME=value.")
        if name.startswith("REMINDERS_") and name.removesuffix("_FILE") not in known:
            near = difflib.get_close_matches(name, known, 1)
            raise BadInput(
                f"Line {number} of {path} sets {name}, which is no setting"
                + (f"; did you mean {near[0]}?" if near else ".")
            )
        values[name] = dotenv_value(value.strip())
    return values


def dotenv_value(text: str) -> str:
    """Return the value without its quotes or, where it has none, without a comment behind it."""
    quoted = QUOTED.fullmatch(text)
    return quoted["inside"] if quoted else re.sub(r"(^|\s+)#.*", "", text)


class Environment:
    """The texts of all settings; the environment wins over the `.env` file, and an empty text counts as not given."""

    def __init__(self, environ: Mapping[str, str], file: Mapping[str, str]) -> None:
        self.values = {name: text for name, text in {**file, **environ}.items() if text.strip()}

    def text(self, name: str, default: str = "") -> str:
        """Return a setting's text without surrounding blanks; control characters are refused."""
        text = self.values.get(name, default).strip()
        if any(ord(sign) < 32 or ord(sign) == 127 for sign in text):
            raise BadInput(f"{name} holds a line break or another control character.")
        return text

    def secret(self, name: str) -> str:
        """Return a secret given by itself or in the file that NAME_FILE names; raises BadInput for both at once."""
        path = self.text(f"{name}_FILE")
        if not path:
            return self.text(name)
        if self.text(name):
            raise BadInput(f"{name} and {name}_FILE are both given; keep one of them.")
        try:
            text = Path(path).read_text(encoding="utf-8").strip()
        except (OSError, UnicodeDecodeError):
            raise BadInput(f"{name}_FILE names a file that cannot be read: {path}.") from None
        if not text:
            raise BadInput(f"{name}_FILE names an empty file: {path}.")
        return text

    def secrets(self, name: str, at_least: int) -> tuple[str, ...]:
        """Return one secret, or two while it is changed, refusing placeholders and what is shorter than `at_least`."""
        given = tuple(part.strip() for part in self.secret(name).split(",")) if self.secret(name) else ()
        if len(given) > 2 or not all(given):
            raise BadInput(f"{name} takes one value, or two separated by one comma while it is changed.")
        for one in given:
            refuse_placeholder(name, one)
            if len(one) < at_least:
                raise BadInput(f"{name} is too short; give it at least {at_least} random characters.")
        return given


def refuse_placeholder(name: str, text: str) -> None:
    """Raise BadInput when a secret still holds the words of an example."""
    if PLACEHOLDER.fullmatch(text) or len(set(text)) < min(len(text), 3):
        raise BadInput(f"{name} still holds a placeholder; put the real value there.")
