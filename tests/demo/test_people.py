import re
from string import Formatter

import pytest

from reminders.core.enrolment import Defaults, read_row
from reminders.core.program_data import STARTER_PROGRAMS
from reminders.core.programs import program_days
from reminders.demo import habits, people
from reminders.demo.building import FIRST_DAY
from reminders.demo.habits import Habit
from reminders.demo.people import PEOPLE, STAFF
from reminders.demo.phrases import ANSWERS, PHRASES

FICTION = re.compile(r"\+1[2-9][0-9]{2}55501[0-9]{2}")  # numbers 555-0100 to 555-0199 are kept for fiction
HABITS = {name: one for name, one in vars(habits).items() if isinstance(one, Habit)}


def defaults() -> Defaults:
    days = {code: "+".join(program_days(one)) for code, one in STARTER_PROGRAMS.items()}
    return Defaults("America/New_York", "08:00-20:00", days, FIRST_DAY)


@pytest.mark.parametrize("count", [1, 6, 24, 60, people.MOST_CLIENTS])
def test_a_clinic_of_any_size_can_be_enrolled(count: int) -> None:
    everyone = people.people(count)

    assert len(everyone) == count
    assert [read_row(one.row, defaults())[1] for one in everyone] == [[]] * count


def test_every_number_and_address_is_kept_for_fiction() -> None:
    rows = [one.row for one in people.people(people.MOST_CLIENTS)]
    numbers = [row["mobile"] for row in rows if row.get("mobile")] + [one.mobile for one in STAFF if one.mobile]
    addresses = [row["email"] for row in rows if row.get("email")] + [one.email for one in STAFF]

    assert [one for one in numbers if not FICTION.fullmatch(one)] == []
    assert [one for one in addresses if not one.endswith("@example.org")] == []


def test_only_the_couple_share_a_number() -> None:
    numbers = [one.row["mobile"] for one in people.people(people.MOST_CLIENTS) if one.row.get("mobile")]

    assert {one for one in numbers if numbers.count(one) > 1} == {PEOPLE[3].row["mobile"]}


def test_no_client_has_a_number_of_the_staff() -> None:
    numbers = {one.row["mobile"] for one in people.people(people.MOST_CLIENTS)} - {""}

    assert not numbers & {one.mobile for one in STAFF}


def test_the_written_clients_have_a_habit_each_and_every_habit_is_lived() -> None:
    lived = [one.habit for one in PEOPLE]

    assert len({id(one) for one in lived}) == len(PEOPLE) - 1, "the couple share one"
    assert {id(one) for one in [*lived, *habits.ORDINARY]} == {id(one) for one in HABITS.values()}


@pytest.mark.parametrize("habit", HABITS.values(), ids=HABITS)
def test_a_habits_chances_are_chances_and_its_pain_is_on_the_scale(habit: Habit) -> None:
    assert 0 <= habit.answers <= 1
    assert 0 <= habit.full + habit.part <= 1
    assert [spell for spell in habit.pain if not 0 <= spell[1] <= spell[2] <= 10] == []
    assert habit.pain[0][0] == 1


FILLED = {"p": 3, "m": 2, "dose": "2x10", "left": "heel raise", "me": "Odile", "date": "1/20"}


def test_every_phrase_can_be_filled_in() -> None:
    spoken = [
        text for style in PHRASES.values() for kinds in style.values() for texts in kinds.values() for text in texts
    ]
    spoken += [text for kinds in ANSWERS.values() for texts in kinds.values() for text in texts]

    assert [text for text in spoken if {name for _, name, _, _ in Formatter().parse(text) if name} - set(FILLED)] == []


@pytest.mark.parametrize("language", PHRASES)
def test_every_language_has_the_plain_kinds_and_an_answer_to_every_question(language: str) -> None:
    assert set(PHRASES[language]["plain"]) == set(PHRASES["en"]["plain"])
    assert set(ANSWERS[language]) == set(ANSWERS["en"])
