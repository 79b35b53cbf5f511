"""Renders a named text or e-mail in a language. The words live in templates/; a missing value is an error."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from pathlib import Path
from typing import Any

from jinja2 import Environment, FileSystemLoader, StrictUndefined, Template, TemplateNotFound, pass_context
from jinja2.runtime import Context

from reminders import texts_said
from reminders.texts_folder import templates_folder


@dataclass(frozen=True)
class Mail:
    """A rendered e-mail."""

    subject: str
    text: str
    html: str


def environment(folder: Path) -> Environment:
    """Return the template environment: HTML is escaped, plain text is not, and a missing value is an error."""
    return Environment(
        loader=FileSystemLoader(folder),
        undefined=StrictUndefined,
        autoescape=lambda name: bool(name) and str(name).endswith(".html"),  # noqa: S701 - texts are not HTML
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=False,
    )


class Texts:
    """Every text and e-mail we can send."""

    def __init__(self, folder: Path | None = None) -> None:
        """Read templates from a folder, by default our own."""
        self.folder = folder or templates_folder()
        self.jinja = environment(self.folder)
        self.jinja.filters["days"] = said_days
        self.jinja.filters["hour"] = said_time
        self.jinja.filters["day"] = said_day

    def text(
        self, name: str, language: str, values: Mapping[str, Any], wording: Mapping[str, str] | None = None
    ) -> str:
        """Return a text in a language; `wording` holds a clinic's own versions by "<lang>/<name>".

        `together` is several texts in one: `parts` names each, with values of its own.
        """
        if name == "together":
            said = (self.text(one["text"], language, {**values, **one["details"]}, wording) for one in values["parts"])
            return "\n".join(said)
        own = (wording or {}).get(f"{language}/{name}")
        template = self.jinja.from_string(own) if own else self.template(f"texts/{language}/{name}.txt")
        return squeezed(template.render(values))

    def mail(self, name: str, language: str, values: Mapping[str, Any]) -> Mail:
        """Return an e-mail's subject, plain part and HTML part."""
        base = f"emails/{language}/{name}"
        return Mail(
            " ".join(self.template(f"{base}/subject.txt").render(values).split()),
            self.template(f"{base}/body.txt").render(values).strip() + "\n",
            self.template(f"{base}/body.html").render(values),
        )

    def has_mail(self, name: str, language: str) -> bool:
        """Return whether a mail of this name is written in a language."""
        return (self.folder / "emails" / language / name / "subject.txt").is_file()

    def names(self, language: str) -> list[str]:
        """Return the names of all texts of a language."""
        return sorted(path.stem for path in (self.folder / "texts" / language).glob("*.txt"))

    @lru_cache(maxsize=512)  # noqa: B019 - one Texts a process, and templates do not change under it
    def template(self, path: str) -> Template:
        """Return a compiled template; raises LookupError naming what is missing."""
        try:
            return self.jinja.get_template(path)
        except TemplateNotFound:
            raise LookupError(f"There is no template {path}.") from None


@pass_context
def said_days(context: Context, days: str) -> str:
    """Say weekdays such as mon+wed+fri in the language of the text."""
    return texts_said.said_days(days, str(context["language"]))


@pass_context
def said_time(context: Context, hour: str) -> str:
    """Say a local hour such as 08:30 in the language of the text."""
    return texts_said.said_time(hour, str(context["language"]))


@pass_context
def said_day(context: Context, day: str) -> str:
    """Say an ISO date in the language of the text."""
    return texts_said.said_date(date.fromisoformat(day), str(context["language"]))


def squeezed(text: str) -> str:
    """Return a text with runs of spaces made one and empty lines at either end gone; line breaks stay."""
    lines = [" ".join(line.split()) for line in text.strip().splitlines()]
    return "\n".join(lines)
