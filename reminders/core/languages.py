"""The languages that clients may have.

What a language needs elsewhere is words in core/words and texts in templates/.
"""

LANGUAGES = ("en", "es")  # the first is what stands in for one that we do not have
