"""Who is in the fictional clinic: its staff and its clients with their habits. All that is told of them is invented.

Numbers are of the 555-0100 to 555-0199 range that is kept for fiction, addresses of example.org.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field

from reminders.demo import habits
from reminders.demo.habits import Habit

CLINIC: Mapping[str, str] = {
    "name": "Tern Harbor Bone and Balance",
    "phone": "+1 202 555 0100",
    "time_zone": "America/New_York",
    "hours": "mon-fri/08:00-17:00",
    "lead_email": "ines@example.org",
}
LINE = "+12025550199"  # the number that the clinic's texts come from


@dataclass(frozen=True)
class Member:
    """Someone who works there. `takes`: minutes until she takes an urgent alert, least and most."""

    role: str
    name: str
    email: str
    mobile: str = ""
    takes: tuple[int, int] = (4, 12)


STAFF = (
    Member("therapist", "Mara Ellingsen", "mara@example.org", "+12025550190", (4, 12)),
    Member("therapist", "Tobias Quill", "tobias@example.org", "+12025550191", (10, 40)),
    Member("lead", "Ines Varga", "ines@example.org", "+12025550192", (3, 9)),
    Member("admin", "Greta Holm", "greta@example.org"),
)
MARA, TOBIAS = STAFF[0].email, STAFF[1].email


@dataclass(frozen=True)
class Person:
    """A client: the row she is enrolled with, by column, and her habit."""

    habit: Habit
    row: Mapping[str, str] = field(default_factory=dict)

    @property
    def name(self) -> str:
        """Her full name."""
        return self.row["name"]

    @property
    def first_name(self) -> str:
        """The name that texts use."""
        return self.name.split()[0]

    @property
    def language(self) -> str:
        """Her language."""
        return self.row.get("language") or "en"


def _one(habit: Habit, name: str, number: int, **row: str) -> Person:
    mobile = f"+1202555{number:04d}" if number else ""
    given = {"name": name, "mobile": mobile, "program": "falls-balance", "precautions": "none known", **row}
    return Person(habit, given)


# In the order in which a smaller clinic takes them.
PEOPLE = (
    _one(habits.KEEN, "Alma Whitcombe", 101, program="whole-body", therapist=MARA, birth_year="1955"),
    _one(habits.SORE, "Henrietta Voss", 102, therapist=TOBIAS, usual_pain="2", birth_year="1948"),
    _one(habits.SPANISH, "Rosa Quintanilla", 103, language="es", therapist=MARA, time="10:00", birth_year="1951"),
    _one(habits.COUPLE, "Odile Lacey", 104, holder="shared", therapist=MARA, birth_year="1944"),
    _one(
        habits.COUPLE,
        "Bertram Lacey",
        104,
        holder="shared",
        therapist=MARA,
        days="tue+fri",
        program="spine-strength",
        birth_year="1942",
    ),
    _one(habits.FALLS, "Winifred Sark", 105, therapist=TOBIAS, precautions="lives alone+poor sight", birth_year="1940"),
    _one(
        habits.CHEST,
        "Lionel Prideaux",
        106,
        therapist=MARA,
        precautions="heart or blood-pressure limit",
        birth_year="1946",
    ),
    _one(
        habits.CORRECTS,
        "Philippa Nnaji",
        107,
        days="mon+fri",
        program="spine-strength",
        therapist=MARA,
        birth_year="1957",
    ),
    _one(
        habits.OPTS_OUT,
        "Desmond Achterberg",
        108,
        days="mon+fri",
        program="spine-strength",
        therapist=TOBIAS,
        birth_year="1950",
    ),
    _one(habits.FORGETFUL, "Walter Pym", 109, therapist=TOBIAS, time="10:00", birth_year="1943"),
    _one(habits.SILENT, "Cora Ashdown", 110, therapist=TOBIAS, birth_year="1949"),
    _one(
        habits.TERSE,
        "Cornelius Abbey",
        111,
        therapist=MARA,
        days="mon+thu",
        program="spine-strength",
        birth_year="1953",
    ),
    _one(
        habits.CHATTY,
        "Josephine Marchetti",
        112,
        days="mon+fri",
        program="spine-strength",
        therapist=MARA,
        time="10:00",
        birth_year="1945",
    ),
    _one(
        habits.BY_MAIL,
        "Evangeline Roper",
        0,
        email="evangeline@example.org",
        channel="email",
        therapist=TOBIAS,
        program="spine-strength",
        birth_year="1954",
    ),
    _one(
        habits.DAUGHTER,
        "Theodora Finch",
        113,
        holder="helper",
        therapist=TOBIAS,
        precautions="walking aid",
        birth_year="1937",
    ),
    _one(
        habits.SURGERY,
        "Agnes Kowalczyk",
        114,
        therapist=MARA,
        precautions="joint replacement with limits",
        birth_year="1947",
    ),
    _one(habits.FLARE, "Bettina Osgood", 115, therapist=TOBIAS, usual_pain="3", time="10:00", birth_year="1952"),
    _one(habits.DIZZY, "Consuelo Arriaga", 116, language="es", therapist=MARA, time="10:00", birth_year="1946"),
    _one(
        habits.TERSE_SPANISH,
        "Ignacio Belmonte",
        117,
        language="es",
        therapist=TOBIAS,
        days="tue+fri",
        program="spine-strength",
        birth_year="1956",
    ),
    _one(
        habits.PARTLY,
        "Hubert Langley",
        118,
        days="mon+thu",
        program="spine-strength",
        therapist=TOBIAS,
        time="10:00",
        birth_year="1948",
    ),
    _one(habits.OTHER_DAYS, "Mirabel Sutcliffe", 119, therapist=MARA, birth_year="1955"),
    _one(habits.GOES_QUIET, "Ramona Delgadillo", 120, language="es", therapist=TOBIAS, birth_year="1950"),
    _one(
        habits.HOLIDAY,
        "Beatrix Holloway",
        121,
        email="beatrix@example.org",
        channel="sms+email",
        days="mon+thu",
        program="spine-strength",
        therapist=MARA,
        time="10:00",
        birth_year="1951",
    ),
    _one(
        habits.JOINS_LATE,
        "Percival Dunmore",
        122,
        therapist=MARA,
        days="mon+fri",
        program="spine-strength",
        birth_year="1958",
    ),
)


def words_of(text: str) -> list[str]:
    """Return the words of a text."""
    return text.split()


FIRST = words_of(
    "Ada Bess Clement Dora Edmund Flora Gideon Harriet Isidor Judith Konrad Lavinia Magnus Nora Oswald Petra "
    "Quentin Rhoda Silas Tabitha Ursula Verity Wilfred Yvonne"
)
LAST = words_of(
    "Ackroyd Bramley Cardew Dunstan Elphick Fairburn Garrick Hathersage Inchbold Jellicoe Kestrel Lambourne "
    "Merriman Norcross Ormerod Pettifer Quayle Ravenhill Selwyn Thackray Underhill Vickery Wetherby Yarrow Zeller"
)
FIRST_ES = words_of("Amparo Benicio Carmela Domingo Elvira Fermín Graciela Hilario Inés Jacinto Leonor Matías")
LAST_ES = words_of("Alcántara Barragán Cisneros Durán Escamilla Figueroa Guerrero Hinojosa Jaramillo Lozano Montalvo")
AREA_CODES = (202, 303, 312, 415, 503, 512, 617, 702, 713, 804, 907, 916)
FIRST_FREE, NUMBERS_EACH = 123, 66  # 0123 to 0188 of each area code; what lies above is the clinic's own
MOST_CLIENTS = len(PEOPLE) + NUMBERS_EACH * len(AREA_CODES)


def people(count: int) -> tuple[Person, ...]:
    """Return so many clients: the written ones first, then others who share their habits."""
    return (PEOPLE + tuple(more(count - len(PEOPLE))))[:count]


def more(count: int) -> Iterator[Person]:
    """Yield clients beyond the written ones, each with a name and number of her own."""
    for place in range(max(0, count)):
        habit = habits.ORDINARY[place % len(habits.ORDINARY)]
        is_spanish = habit in habits.SPEAK_SPANISH
        firsts, lasts = (FIRST_ES, LAST_ES) if is_spanish else (FIRST, LAST)
        name = f"{firsts[place % len(firsts)]} {lasts[(place // len(firsts) + place % len(firsts)) % len(lasts)]}"
        mobile = f"+1{AREA_CODES[place // NUMBERS_EACH]}555{FIRST_FREE + place % NUMBERS_EACH:04d}"
        row = {
            "name": name,
            "mobile": mobile,
            "language": "es" if is_spanish else "en",
            "therapist": MARA if place % 2 else TOBIAS,
            "program": ("falls-balance", "spine-strength", "falls-balance", "whole-body")[place % 4],
            "precautions": "none known",
            "time": ("08:30", "10:00")[place % 2],
        }
        yield Person(habit, row)
