"""What one fictional client writes when something reaches her: drawn from her habit, the same for the same seed.

Only words and waits are made here. When they arrive and what the service makes of them stands in `story`.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from random import Random
from typing import Any

from reminders.demo.habits import Said
from reminders.demo.people import Person
from reminders.demo.phrases import ANSWERS, choices

THANKS, GREETS_BACK, ANSWERS_QUESTION = 0.05, 0.3, 0.92  # chances
ASKED_WEEKLY = 0.5  # whether she answers how many days of the week she did the daily items
UNSIGNED = 0.12  # a couple's text without a name
NEXT_MORNING = (1300, 1420)  # minutes after the reminder: the next morning, before the next one could come
SOON = (2, 25)


@dataclass(frozen=True)
class Reached:
    """Something that reached her: the message's kind, the question that is open for her now, what the session asks."""

    kind: str
    question: str = ""
    items: Sequence[dict[str, Any]] = ()
    on: date = date.min


@dataclass
class Life:
    """One client and what she remembers: how many reminders she had, whether she wrote since, her last rating."""

    person: Person
    draw: Random
    reminders: int = 0
    has_written: bool = True
    pain: int = 1
    is_in_a_moment: bool = False  # what she writes now is one of her moments, which keep their minutes

    def reached(self, what: Reached) -> list[Said]:
        """Return what she writes, each with the minutes after what reached her or after her text before."""
        self.is_in_a_moment = False
        if what.kind == "reminder":
            return self.reminded(what)
        if what.kind == "evening":
            return self.prompted(what)
        if what.question:
            return self.answer(what.question, what.on)
        if what.kind in ("welcome", "started"):
            return self.thank(GREETS_BACK)
        return self.thank(THANKS) if what.kind in ("thanks", "said_back") else []

    def reminded(self, what: Reached) -> list[Said]:
        """Return what follows a reminder: a moment of her own, an answer, one the next morning, or nothing."""
        habit = self.person.habit
        self.reminders += 1
        self.has_written = False
        self.pain = self.rating()
        if self.reminders in habit.moments:
            self.has_written = self.is_in_a_moment = True
            return list(habit.moments[self.reminders])
        if habit.silent[0] <= self.reminders <= habit.silent[1]:
            return []
        first = self.answer("settling", what.on) if what.question == "settling" and self.draw.random() < 0.6 else []
        if self.draw.random() < habit.answers:
            self.has_written = True
            return [*first, (self.draw.randint(*habit.wait), self.words(what))]
        if self.draw.random() < habit.late:
            words = self.pick("late") or self.words(what)
            return [*first, (self.draw.randint(*NEXT_MORNING), words.format(p=self.pain, me=self.person.first_name))]
        return first

    def prompted(self, what: Reached) -> list[Said]:
        """Return what she answers to the evening prompt, when she has not written since the reminder."""
        habit = self.person.habit
        is_silent = habit.silent[0] <= self.reminders <= habit.silent[1]
        if self.has_written or is_silent or self.draw.random() >= habit.evening:
            return []
        self.has_written = True
        return [(self.draw.randint(5, 70), self.words(what))]

    def words(self, what: Reached) -> str:
        """Return a report of today: all, part or none of it, now and then without a rating."""
        habit, roll = self.person.habit, self.draw.random()
        kind = "all" if roll < habit.full else "part" if roll < habit.full + habit.part else "none"
        if kind == "all" and self.draw.random() < habit.no_number:
            kind = "no_number"
        if kind == "all" and habit.style == "couple" and self.draw.random() < UNSIGNED:
            kind = "unsigned"
        names = [str(item["name"]) for item in what.items] or ["heel raise"]
        dosed = [item for item in what.items if item.get("reps")]
        dose = f"{dosed[0]['sets']}x{dosed[0]['reps']}" if dosed else "2x10"
        left = names[self.draw.randrange(len(names))]
        return self.pick(kind).format(p=self.pain, dose=dose, left=left, me=self.person.first_name)

    def rating(self) -> int:
        """Return her worst pain of today, 0-10, as her spell has it."""
        spells = [spell for spell in self.person.habit.pain if spell[0] <= self.reminders]
        _, least, most = spells[-1]
        return self.draw.randint(least, most)

    def answer(self, question: str, on: date) -> list[Said]:
        """Return her answer to a question of ours."""
        chance = ASKED_WEEKLY if question == "days" else ANSWERS_QUESTION
        if self.draw.random() >= chance or self.person.habit.answers == 0:
            return []
        own = self.person.habit.says.get(question)
        spoken = (own,) if own else ANSWERS[self.person.language].get(question, ())
        if not spoken:
            return []
        words = spoken[self.draw.randrange(len(spoken))]
        until = on + timedelta(days=9)
        said = words.format(
            p=self.pain, m=max(0, self.pain - 1), me=self.person.first_name, date=f"{until.month}/{until.day}"
        )
        return [(self.draw.randint(*SOON), said)]

    def thank(self, chance: float) -> list[Said]:
        """Return a word of thanks, now and then."""
        if self.draw.random() >= chance or self.person.habit.answers == 0:
            return []
        words = self.pick("chat")
        return [(self.draw.randint(*SOON), words)] if words else []

    def pick(self, kind: str) -> str:
        """Return one of her phrases for a kind of reply, empty when there is none."""
        spoken = choices(self.person.language, self.person.habit.style, kind)
        return spoken[self.draw.randrange(len(spoken))] if spoken else ""
