"""The pain rules: severe pain, pain is up, and what follows below an alert (easy day, morning question, where).

Each rule looks at one session of a history. Danger signs in words stand in danger.py, levels in core/levels.py.
"""

from datetime import date, timedelta

from reminders.core.rules.history import Finding, History, Marks, Morning, SessionFact, marks, number


def severe_pain(history: History, place: int) -> Finding | None:
    """Pain of 8 or more during a session is a danger sign, whatever her usual is.

    Severe is 7-10: McCaffery & Beebe 1993, as NIH Clinical Center, Pain Intensity Instruments, 2003 carries it; 8
    for everyone is common practice.
    """
    session = history.sessions[place]
    ratings = [one for one in (session.pain, session.before, session.after) if one is not None]
    if not ratings or max(ratings) < history.levels.severe:
        return None
    because = {"on": session.on.isoformat(), "pain": max(ratings), "severe": history.levels.severe}
    return Finding("severe_pain", "urgent", "severe_rating", because, (session.id,), holds=True)


def pain_up_at_stop(history: History, place: int) -> Finding | None:
    """One rating at the stop level, the higher of 6 and her usual + 2.

    6-10 stop: NHS AHP Suffolk, Returning to Activity; above 5 not acceptable: the pain-monitoring model as now taught.
    Two points over her usual: Farrar et al. 2001, Pain 94(2):149-158.
    """
    session, level = history.sessions[place], marks(history, place)
    if session.judged is None or session.judged < level.stop or severe_pain(history, place):
        return None
    because = {**_of(session, level), "stop": number(level.stop)}
    return Finding("pain_up", "today", "stop", because, (session.id,), holds=True)


def pain_up_twice(history: History, place: int) -> Finding | None:
    """Two rated sessions running at the up level, whatever unrated ones lie between.

    4-5 change something: NHS AHP Suffolk, Returning to Activity; twice, since one pair of readings is noisy: Kovacs
    et al. 2008, BMC Musculoskelet Disord 9:43.
    """
    if severe_pain(history, place) or not history.is_up(place):
        return None
    before, after = history.rated_before(place), history.rated_after(place)
    if before is not None and history.is_up(before):
        pair = (before, place)
    # A report that comes late is judged together with the session after it, against the same usual.
    elif after is not None and history.is_up(after, usual_from=place):
        pair = (place, after)
    else:
        return None
    first, last = (history.sessions[at] for at in pair)
    because = {**_of(last, marks(history, place)), "pain_before": first.judged, "before_on": first.on.isoformat()}
    return Finding("pain_up", "today", "twice", because, (first.id, last.id))


def pain_up_in_the_morning(history: History, place: int) -> Finding | None:
    """A session at the up level that has not settled by the mornings after it.

    One morning 2 or more above that session's rating, or two running at the higher of 5 and usual + 2. No worse the
    next morning: NHS inform plantar-heel advice; settled within 24 hours: traffic-light pain page; not up the next
    morning: patient guide for patellofemoral pain. In the first two weeks of a dose ordinary soreness waits for the
    third morning (ACSM leaflet: peaks at 24-72 h; get in touch beyond 2-3 days: First Step to Active Health).
    """
    session, level = history.sessions[place], marks(history, place)
    if session.judged is None or not history.is_up(place):
        return None
    mornings = first_mornings(history, session)
    for count, morning in enumerate(mornings, start=1):
        worse = morning.pain >= session.judged + history.levels.settle_rise
        twice = count >= 2 and min(one.pain for one in mornings[count - 2 : count]) >= level.settle
        if (worse or twice) and not _may_be_soreness(history, session, morning, count):
            form = "morning_worse" if worse else "mornings_up"
            because = {**_of(session, level), "morning": morning.pain, "morning_on": morning.on.isoformat()}
            return Finding("pain_up", "today", form, because, (session.id,))
    return None


def first_mornings(history: History, session: SessionFact) -> tuple[Morning, ...]:
    """Return the mornings that are asked about: the first three days after a session, one rating a day, the highest."""
    last = session.on + timedelta(days=history.levels.morning_most)
    by_day: dict[date, Morning] = {}
    for morning in session.mornings:
        known = by_day.get(morning.on)
        if session.on < morning.on <= last and (known is None or known.pain < morning.pain):
            by_day[morning.on] = morning
    return tuple(by_day[day] for day in sorted(by_day))


def _may_be_soreness(history: History, session: SessionFact, morning: Morning, count: int) -> bool:
    levels = history.levels
    is_new_dose = (session.on - session.rung_on).days < levels.soreness_days
    waits = is_new_dose and morning.pain < levels.soreness_from and not morning.is_new
    return waits and count < levels.morning_most


def _of(session: SessionFact, level: Marks) -> dict[str, object]:
    return {
        "on": session.on.isoformat(),
        "pain": session.judged,
        "usual": number(level.usual),
        "up": number(level.up),
    }


def asks_for_an_easy_day(history: History, place: int) -> bool:
    """Return whether the next session is the easy day: this one was at the up level.

    Fewer repetitions, slower, more rest: NHS inform plantar-heel advice; lower the load: clinic teaching pages.
    """
    return history.is_up(place)


def asks_this_morning(history: History, place: int, today: date) -> bool:
    """Return whether the morning question about a session is due today, a day after it or up to three.

    The morning after a session at up, and again while the last answer is at the higher of 5 and usual + 2.
    """
    session, levels = history.sessions[place], history.levels
    since = (today - session.on).days
    if not 1 <= since <= levels.morning_most or not history.is_up(place):
        return False
    told = {morning.on: morning for morning in first_mornings(history, session)}
    if today in told:
        return False
    if since == 1:
        return True
    last = told.get(today - timedelta(days=1))
    return last is not None and last.pain >= marks(history, place).settle


def asks_where(history: History, place: int, asked_on: date | None, today: date) -> bool:
    """Return whether she is asked where it hurts: a rating above her usual, and not asked for four weeks."""
    session = history.sessions[place]
    if session.pain is None or session.pain <= history.usual_before(place):
        return False
    return asked_on is None or (today - asked_on).days >= history.levels.where_days
