"""Spanish: the words of the files beside this one, put together."""

from reminders.core.words.vocabulary import Vocabulary

VOCABULARY = Vocabulary("es", {}, {}, {}, {}, {}, frozenset(), frozenset(), ())
