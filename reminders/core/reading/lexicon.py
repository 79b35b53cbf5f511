"""Words → concepts → one signature character a word, for one leading language with the others behind it.

Spelling is mended here, against the words the reader knows. What patterns do with the signatures is not decided here.
"""

from collections.abc import Callable, Iterable, Iterator, Mapping
from functools import cached_property

from reminders.core.reading.kept import Kept
from reminders.core.reading.normal import fold
from reminders.core.reading.patterns import literals
from reminders.core.reading.signatures import BUT, COMMA, NAMED, NAMED_ON, QUESTION, SECONDS, STOP, USED
from reminders.core.reading.spelling import REPAIR_FROM, cuts, index_neighbours, one_off, spellings, undouble
from reminders.core.words.vocabulary import Vocabulary

# A word as the reader spells it, as it was typed, its number, the number behind its stroke, its signature character.
Token = tuple[str, str, float | None, float | None, str]
SMILE = "emojismile"  # dropped when a text says something else too; alone it is chat
UNKNOWN = "\u4e00"
_FIRST = 0x4E01
_NOTHING: frozenset[str] = frozenset()
_SWAP_FROM = 4
_CACHE = 60_000  # words kept with what was found for them; a flood of nonsense starts the cache afresh
# Concepts of tokens that are no words: numbers by their size and shape.
NUMBER_SHAPES: dict[str, tuple[str, ...]] = {
    "zero": ("#", "SMALL", "N0"),
    "one": ("#", "SMALL", "N1"),
    "few": ("#", "SMALL", "FEW"),
    "small": ("#", "SMALL"),
    "ten": ("#", "SMALL", "TEN"),
    "big": ("#", "BIG"),
    "hundred": ("#", "BIG", "N100"),
    "year": ("#", "BIG", "YEAR"),
    "clock": ("CLOCK",),
    "frac10": ("FRAC10",),
    "frac": ("FRAC",),
    "pressure": ("PRESSURE",),
    "phone": ("PHONE",),
    "date": ("DATE",),
}

_FIGURES = ("FRAC10", "FRAC", "CLOCK", "DATE", "PHONE", "PRESSURE")


class Lexicon:
    """All words known when `leading` is the language of the text."""

    def __init__(self, leading: Vocabulary, others: Iterable[Vocabulary]) -> None:
        """Join the languages; a word of the leading one never means something in another."""
        self.languages = (leading, *others)
        self._growing: dict[str, set[str]] = {}  # word → its concepts, while they are gathered
        self._stems: dict[str, set[str]] = {}
        self.numbers: dict[str, float] = {}
        self.near_numbers: dict[str, float] = {}
        self.spelled_out: dict[str, list[str]] = {}
        owned: set[str] = set()
        for vocabulary in self.languages:
            self._join(vocabulary, owned)
            owned |= set(self._growing) | vocabulary.common
        for vocabulary in self.languages:
            for block in vocabulary.rules.values():
                for word in literals(block):
                    self._growing.setdefault(word, set()).add(word)
            for block in vocabulary.aliases.values():
                for word in block.replace(";", " ").replace("?", " ").split():
                    self._growing.setdefault(word, set())
        self.letter_words = frozenset(
            word for vocabulary in self.languages for word in vocabulary.concepts.get("LETTERWORD", "").split()
        )
        self.ordinals = {
            word: place for vocabulary in reversed(self.languages) for word, place in vocabulary.ordinals.items()
        }
        self.months = _merged(self.languages, "months")
        self.weekdays = _merged(self.languages, "weekdays")
        self.stretches = _merged(self.languages, "stretches")
        self.counts = _merged(self.languages, "counts")
        self._blocked = frozenset().union(*(one.lookalikes | one.common for one in self.languages))
        self._assign()
        pool: dict[frozenset[str], frozenset[str]] = {}  # thousands of words share a few hundred sets
        self._of_word = {word: pool.setdefault(some, some) for word, some in self._grown()}
        self.words: Kept[str, tuple[Token, ...]] = Kept(self._tokens_of, _CACHE)  # word as typed → its tokens
        self.others: dict[str, tuple[Token, ...]] = {}  # sign or small number → its tokens, of those that came before

    def _join(self, vocabulary: Vocabulary, owned: set[str]) -> None:
        """Add one language's words, except those a language before it owns."""
        for concept, words in vocabulary.concepts.items():
            for word in words.split():
                if word.endswith("*"):
                    self._stems.setdefault(word[:-1], set()).add(concept)
                elif word not in owned:
                    self._growing.setdefault(word, set()).add(concept)
        for stem, concepts in self._stems.items():
            for word, known in self._growing.items():
                if word.startswith(stem):
                    known |= concepts
        for word, several in vocabulary.spelled_out.items():
            if word not in owned:
                self.spelled_out[word] = several.split()
        for word, value in vocabulary.numbers.items():
            if word not in owned:
                self.numbers[word] = value
                self._growing.setdefault(word, set())
        for word, value in vocabulary.near_numbers.items():
            if word not in owned:
                self.near_numbers[word] = value
                self._growing.setdefault(word, set())

    def _grown(self) -> Iterator[tuple[str, frozenset[str]]]:
        """Yield each word with its concepts, which grow no more; what they grew in is let go."""
        for word in list(self._growing):
            yield word, frozenset(self._growing.pop(word))

    def _assign(self) -> None:
        """Give each set of concepts its own character, and each concept its characters."""
        self._char_of: dict[frozenset[str], str] = {frozenset(): UNKNOWN}
        self._chars: dict[str, set[str]] = {}
        for concepts in self._growing.values():
            self._char(frozenset(concepts))
        for concepts in self._stems.values():
            self._char(frozenset(concepts))
        self.shape_chars = {shape: self._char(frozenset(names)) for shape, names in NUMBER_SHAPES.items()}
        fixed = {
            "STOP": STOP + QUESTION,
            "COMMA": COMMA,
            "BUT": BUT,
            "@": NAMED + NAMED_ON,
            "USED": USED,
            "SECNUM": SECONDS,
        }
        for concept, chars in fixed.items():
            self._chars.setdefault(concept, set()).update(chars)
        self.number_chars = frozenset(self._chars["#"])
        self.shape_char_of_dash = self._char(frozenset({"DASH", "RANGE"}))
        self.half_char = self._char(frozenset({"PART", "HALFWORD"}))
        self._frozen = {concept: frozenset(self._chars.pop(concept)) for concept in list(self._chars)}
        # The signature characters that carry a concept (a lower-case name is that one word): a mere look-up in a
        # table, no function of ours, since every rule of thumb asks for them.
        self.chars: Callable[[str], frozenset[str]] = Kept(self._chars_of, _CACHE).__getitem__
        self._either: dict[tuple[str, ...], frozenset[str]] = {}
        self.figures = self.number_chars.union(*(self._frozen[shape] for shape in _FIGURES))
        self.kinds_of = Kept(self._kinds_of, _CACHE).__getitem__  # the concepts less the plain words among them
        self._concepts_of = {char: tuple(sorted(names)) for names, char in self._char_of.items()}

    def _char(self, concepts: frozenset[str]) -> str:
        """Return the character of a set of concepts, a new one at first sight."""
        char = self._char_of.get(concepts)
        if char is None:
            char = chr(_FIRST + len(self._char_of))
            self._char_of[concepts] = char
            for concept in concepts:
                self._chars.setdefault(concept, set()).add(char)
        return char

    def _chars_of(self, concept: str) -> frozenset[str]:
        """Return the signature characters that carry a concept, for the table."""
        return self._frozen.get(concept, _NOTHING)

    def either(self, *concepts: str) -> frozenset[str]:
        """Return the signature characters that carry any of several concepts."""
        found = self._either.get(concepts)
        if found is None:
            found = self._either[concepts] = _NOTHING.union(*map(self.chars, concepts))
        return found

    def concepts_of(self, char: str) -> tuple[str, ...]:
        """Return the concepts that a signature carries."""
        return self._concepts_of.get(char, ())

    def _kinds_of(self, char: str) -> tuple[str, ...]:
        return tuple(filter(str.isupper, self.concepts_of(char)))

    def is_in(self, concept: str, char: str) -> bool:
        """Tell whether a signature carries a concept."""
        return char in self._frozen.get(concept, _NOTHING)

    def senses_of(self, word: str) -> tuple[str, ...]:
        """Return the senses of a word, which no rule looks at; the leading language's where it is a word of hers."""
        return self._senses.get(word, ())

    @cached_property
    def sets_of_senses(self) -> tuple[tuple[str, ...], ...]:
        """The different senses that words have together, none first, in one order."""
        return tuple(dict.fromkeys(((), *self._senses.values())))

    @cached_property
    def _senses(self) -> dict[str, tuple[str, ...]]:
        """Word → its senses."""
        found: dict[str, tuple[str, ...]] = {}
        for vocabulary in self.languages:
            own: dict[str, list[str]] = {}
            for sense, words in vocabulary.senses.items():
                for word in words.split():
                    own.setdefault(word, []).append(sense)
            for word, senses in own.items():
                found.setdefault(word, tuple(senses))
        return found

    def knows(self, word: str) -> bool:
        """Tell whether a spelling is a word of ours, or a real word that must not be taken for one."""
        return word in self._of_word or word in self._blocked

    def plain(self, word: str) -> str:
        """Return a word as the reader spells it: small letters, no accents."""
        return fold(word).strip()

    def is_small(self, word: str) -> bool:
        """Tell whether a word is one of a language's frequent small words."""
        return any(word in vocabulary.common for vocabulary in self.languages)

    def _tokens_of(self, piece: str) -> tuple[Token, ...]:
        """Return the tokens of a word as typed: one, several for "twice" ("two times"), none for a smile."""
        found: list[Token] = []
        for typed in () if piece == SMILE else self.spelled_out.get(piece, (piece,)):
            word, char = self.look_up(typed)
            found.append((word, typed, self.numbers.get(word), None, char))
        return tuple(found)

    def look_up(self, word: str) -> tuple[str, str]:
        """Return the known spelling of a word and its signature; an unknown word comes back as it was.

        It is looked for as typed, without drawn-out letters, by its stem, by its sound, and one letter off.
        """
        for spelling in spellings(word):
            concepts = self._of_word.get(spelling)
            if concepts is not None:
                return spelling, self._char(concepts) if concepts else UNKNOWN
        if word in self._blocked:
            return word, UNKNOWN
        for cut in range(len(word), 2, -1):
            if word[:cut] in self._stems:
                return word, self._char(frozenset(self._stems[word[:cut]]))
        mended = self._mend(word)
        if mended is None:
            return word, UNKNOWN
        concepts = self._of_word[mended]
        return mended, self._char(concepts) if concepts else UNKNOWN

    def make_ready_to_mend(self) -> None:
        """Make the tables that the first misspelled word needs."""
        self._mend("misspelled")

    @cached_property
    def _neighbours(self) -> Mapping[str, tuple[str, ...]]:
        """Spelling with one letter left out → known words; made for the first word that needs mending."""
        return index_neighbours(frozenset(self._of_word))

    @cached_property
    def _sounds(self) -> dict[str, str]:
        """How a known word sounds → the word; made likewise."""
        return {self._sound(word): word for word in self._of_word if len(word) >= 4}

    def _mend(self, word: str) -> str | None:
        """Return the known word that this one was most likely meant to be."""
        if len(word) >= 3:
            by_sound = self._sounds.get(self._sound(word))
            if by_sound is not None and abs(len(by_sound) - len(word)) <= 2:
                return by_sound
        if len(word) < REPAIR_FROM:
            return self._swapped(word)
        best: str | None = None
        for cut in cuts(word):
            for known in self._neighbours.get(cut, ()):
                if known[0] == word[0] and one_off(word, known) and (best is None or known < best):
                    best = known
        return best

    def _swapped(self, word: str) -> str | None:
        """Return the known word that a short one becomes when two neighbouring letters change places: "teh"."""
        if len(word) < _SWAP_FROM:
            return None
        swaps = (word[:at] + word[at + 1] + word[at] + word[at + 2 :] for at in range(len(word) - 1))
        return next((swap for swap in swaps if self._of_word.get(swap)), None)

    def _sound(self, word: str) -> str:
        """Return how the leading language would hear a word."""
        for spelling, sound in self.languages[0].sounds:
            word = word.replace(spelling, sound)
        return undouble(word)


def _merged(languages: Iterable[Vocabulary], name: str) -> dict[str, int]:
    """Return one table of all languages; the leading one has the last word."""
    return {word: number for one in reversed(tuple(languages)) for word, number in getattr(one, name).items()}
