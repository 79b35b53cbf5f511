"""Rules in words: what each is called, and the sentence that says why it fired. The words stand in templates/rules."""

import tomllib
from collections.abc import Mapping
from datetime import date
from functools import lru_cache
from typing import Any

from reminders.core.languages import LANGUAGES
from reminders.texts_folder import templates_folder
from reminders.texts_said import said_date


@lru_cache(maxsize=8)
def rule_words(language: str) -> dict[str, Any]:
    """Return a language's words for rules, levels and reasons; English for a language that has none."""
    name = language if language in LANGUAGES else "en"
    return tomllib.loads((templates_folder() / "rules" / f"{name}.toml").read_text(encoding="utf-8"))


def rule_name(rule: str, language: str = "en") -> str:
    """Return what a rule is called, in two words."""
    return str(rule_words(language)["names"].get(rule, rule.replace("_", " ")))


def sentence(rule: str, form: str, values: Mapping[str, Any], language: str = "en") -> str:
    """Return why a rule fired, with its values; dates are said as a person says them."""
    forms = rule_words(language)["sentences"]
    if values.get("count") == 1:
        form = f"{form}_one" if f"{form}_one" in forms.get(rule, {}) else form
    template = forms.get(rule, {}).get(form) or forms["any"].get(form) or forms["any"]["told"]
    said = {name: said_value(name, value, language) for name, value in values.items()}
    return str(template).format(**{"rule": rule_name(rule, language), "code": "", **said})


def said_value(name: str, value: Any, language: str) -> Any:
    """Return a value as a sentence shows it: a date in words, anything else as it is."""
    if isinstance(value, str) and (name == "on" or name.endswith("_on")):
        return said_date(date.fromisoformat(value), language)
    return value


def reason(name: str, values: Mapping[str, Any], language: str = "en") -> str:
    """Return one reason for a dose step in words."""
    return str(rule_words(language)["reasons"][name]).format(**values)


def step_sentence(name: str, values: Mapping[str, Any], language: str) -> str:
    """Return what a client is told about a change of her dose."""
    return str(rule_words(language)["steps"][name]).format(**values)


def initials(name: str) -> str:
    """Return a person's initials, as staff texts show them."""
    letters = [word[0].upper() for word in name.replace("-", " ").split() if word[0].isalpha()]
    return "".join(f"{letter}." for letter in letters[:3]) or "?"
