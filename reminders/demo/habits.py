"""How the fictional clients live with their exercises: habits as data. What comes of a day is drawn in `answering`."""

from collections.abc import Mapping
from dataclasses import dataclass, field

# What she writes at a moment of her own: (minutes after the reminder or the message before, her words).
Said = tuple[int, str]


@dataclass(frozen=True)
class Habit:
    """How one client answers. Chances are 0-1, waits in minutes.

    `words` is what the account says of her. `answers`: whether she answers a reminder at all; `evening`: whether the
    evening prompt gets an answer when the reminder got none; `late`: whether she writes the next morning instead.
    `full` and `part`: how much she does (the rest is "not today"). `no_number`: she leaves out the rating. `pain`:
    (from which of her reminders on, least, most). `silent`: the reminders, first and last, in which she says nothing.
    `moments`: what she writes after that reminder of hers instead of an ordinary answer. `dated`: (day of the story,
    local hour, words) out of her own head. `says`: her own answers to our questions, by kind.
    """

    words: str
    style: str = "plain"
    answers: float = 0.78
    wait: tuple[int, int] = (25, 240)
    evening: float = 0.4
    late: float = 0.0
    full: float = 0.86
    part: float = 0.09
    no_number: float = 0.06
    pain: tuple[tuple[int, int, int], ...] = ((1, 1, 2),)
    silent: tuple[int, int] = (0, 0)
    moments: Mapping[int, tuple[Said, ...]] = field(default_factory=dict)
    dated: tuple[tuple[int, str, str], ...] = ()
    says: Mapping[str, str] = field(default_factory=dict)


KEEN = Habit("keen: answers within the hour, nearly always in full", "keen", 0.99, (8, 55), full=0.97, part=0.02,
             no_number=0.02, says={"effort": "easy", "days": "7"})  # fmt: skip
SORE = Habit("sore: pain climbs from the third week on until the service stops it", "plain",
             pain=((1, 2, 2), (8, 5, 5), (10, 7, 7), (11, 2, 3)),
             says={"settling": "4", "where": "my right hip", "effort": "hard"})  # fmt: skip
SPANISH = Habit("writes Spanish, in whole sentences", "plain", pain=((1, 1, 3),))
COUPLE = Habit("shares one phone with the other half of the couple, and signs most texts with a name", "couple", 0.85,
               (30, 150), pain=((1, 0, 2),), no_number=0.03)  # fmt: skip
FALLS = Habit("falls at home in the first week", "plain", moments={
    2: ((35, "I fell in the kitchen last night and my hip is very sore"),)}, says={"falls": "1"})  # fmt: skip
OPTS_OUT = Habit("ends the texts in the fourth week, hours after a text about pain", "terse", 0.8, evening=0.2,
                 full=0.6, moments={7: ((15, "done pain 7"), (190, "STOP"))})  # fmt: skip
CORRECTS = Habit("types in a hurry and corrects herself", "plain", moments={
    3: ((40, "Y5"), (4, "Sorry, wrong key. It was 2, not 5")),
    7: ((55, "Not today"), (180, "Did them after all, pain 1"))})  # fmt: skip
TERSE = Habit(
    "terse: two or three signs a text",
    "terse",
    0.88,
    (10, 120),
    no_number=0.1,
    moments={12: ((25, "Felt a sharp crack in my back lifting the shopping"),)},
)
SILENT = Habit("silent: has not answered once", "plain", 0.0, evening=0.0)
CHATTY = Habit("chatty: tells of the soup, the cat and the grandchildren", "chatty", 0.9, (40, 300), no_number=0.1,
               moments={5: ((30, "Is the sit to stand meant to be with my arms crossed or not?"),),
               11: ((75, "My calf is hot and swollen since this morning"),)})  # fmt: skip
BY_MAIL = Habit("e-mail only, signs every mail", "mail", 0.85, (60, 330), evening=0.0, no_number=0.0)
DAUGHTER = Habit("her daughter holds the phone and answers for her", "helper", 0.8, (45, 260), pain=((1, 1, 3),),
                 moments={15: ((50, "Mum is dizzy and nearly fainted doing the sit to stand"),)})  # fmt: skip
CHEST = Habit("writes of a tight chest in the third week", "terse", moments={
    8: ((20, "tight chest and short of breath after the first exercise"),)})  # fmt: skip
SURGERY = Habit("goes into hospital for her other hip in the fourth week", "plain", moments={
    11: ((60, "I am having surgery on my other hip on Thursday, I will be in hospital"),)})  # fmt: skip
FLARE = Habit("has a flare of arthritis in the fifth week", "plain", pain=((1, 2, 3), (13, 4, 5), (17, 2, 3)),
              moments={13: ((50, "My arthritis is flaring up again. Did all of them, pain 5"),)},
              says={"settling": "3"})  # fmt: skip
DIZZY = Habit("writes Spanish; was dizzy once on standing up, and says so", "plain", pain=((1, 1, 2),), moments={
    6: ((45, "Me mareé mucho al levantarme y casi me desmayo"),)})  # fmt: skip
PARTLY = Habit(
    "does some of it on most days", "plain", 0.75, full=0.4, part=0.5, pain=((1, 1, 3), (7, 4, 5), (10, 1, 3))
)
OTHER_DAYS = Habit("asks for other days", "plain", moments={
    4: ((70, "Could we move to Tuesday, Thursday and Saturday? Monday is choir"),)})  # fmt: skip
GOES_QUIET = Habit("writes Spanish; goes quiet for two weeks in the fourth", "plain", silent=(10, 14),
                   says={"reason": "se me olvidó"})  # fmt: skip
NUMBERS = Habit("reports the amounts she did", "numbers", 0.9, (20, 200), pain=((1, 0, 2),))
HOLIDAY = Habit("visits her sister for two weeks and pauses", "plain", moments={
    9: ((90, "Going to my sister's tomorrow, please pause my reminders until Feb 14"),)})  # fmt: skip
FORGETFUL = Habit("forgetful: answers the evening prompt, or the next morning, or not at all", "typos", 0.35,
                  (200, 520), evening=0.55, late=0.5, silent=(8, 11))  # fmt: skip
TERSE_SPANISH = Habit("writes Spanish, one letter and one digit", "terse", 0.85, (10, 150), no_number=0.04,
                      pain=((1, 1, 2), (9, 4, 5), (12, 1, 2)))  # fmt: skip
JOINS_LATE = Habit("was invited, starts with a text on the second day, and reports the amounts done", "numbers", 0.85,
                   (20, 200), pain=((1, 0, 2),), moments={10: ((40, "1x10 pain 8"),)},
                   dated=((1, "11:05", "START"),))  # fmt: skip

# Those that more clients than the first ones share, in turn: mostly quiet lives, as in a real clinic.
ORDINARY = (
    *(KEEN, TERSE, FORGETFUL, PARTLY, SPANISH, NUMBERS, CHATTY, TERSE_SPANISH),
    *(KEEN, GOES_QUIET, OTHER_DAYS, TERSE, SORE, KEEN, CORRECTS, FLARE),
)
SPEAK_SPANISH = (SPANISH, DIZZY, GOES_QUIET, TERSE_SPANISH)
