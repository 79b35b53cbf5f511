"""The languages the reader knows, a row each. A new language is a folder of words and one row here."""

from reminders.core.words import en, es
from reminders.core.words.vocabulary import Vocabulary

VOCABULARIES: dict[str, Vocabulary] = {
    "en": en.VOCABULARY,
    "es": es.VOCABULARY,
}
