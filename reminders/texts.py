"""Renders a named text or e-mail in a language. The words live in templates/; a value that a text needs and is not given is an error."""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

from jinja2 import Environment, FileSystemLoader, StrictUndefined, Template, TemplateNotFound

LANGUAGES = ("en", "es")


def templates_folder() -> Path:
    """Return where the templates are: inside the installed package, or beside it in a checkout."""
    packed = Path(__file__).parent / "_templates"
    return packed if packed.is_dir() else Path(__file__).parent.parent / "templates"


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
        autoescape=lambda name: bool(name) and str(name).endswith(".html"),
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


def squeezed(text: str) -> str:
    """Return a text with runs of spaces made one and empty lines at either end gone; line breaks stay."""
    lines = [" ".join(line.split()) for line in text.strip().splitlines()]
    return "\n".join(lines)
