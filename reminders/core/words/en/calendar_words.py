"""English words for days, months and stretches of time."""

MONTHS = {
    "january": 1, "jan": 1, "february": 2, "feb": 2, "march": 3, "mar": 3, "april": 4, "apr": 4, "may": 5, "june": 6,
    "jun": 6, "july": 7, "jul": 7, "august": 8, "aug": 8, "september": 9, "sept": 9, "sep": 9, "october": 10, "oct": 10,
    "november": 11, "nov": 11, "december": 12, "dec": 12,
}  # fmt: skip
# Sat, sun, wed and mon are too often something else.
WEEKDAYS = {
    "monday": 0, "mondays": 0, "tuesday": 1, "tuesdays": 1, "tues": 1, "tue": 1, "wednesday": 2, "wednesdays": 2,
    "weds": 2, "thursday": 3, "thursdays": 3, "thurs": 3, "thu": 3, "friday": 4, "fridays": 4, "fri": 4, "saturday": 5,
    "saturdays": 5, "sunday": 6, "sundays": 6,
}  # fmt: skip
STRETCHES = {"day": 1, "days": 1, "week": 7, "weeks": 7, "wk": 7, "wks": 7, "fortnight": 14, "month": 30, "months": 30,
             "tomorrow": 1}  # fmt: skip
COUNTS = {"never": 0, "once": 1, "daily": 7, "everyday": 7, "all": 7, "every": 7}
