"""The weekly digest behind sign-in: as it was made, or as it would be now."""

from datetime import timedelta
from typing import Any

from fastapi import APIRouter
from sqlmodel import col, select
from starlette.responses import Response

from reminders.core.digest import week_days, week_of
from reminders.core.schedule import local_date
from reminders.errors import BadInput, NotFound
from reminders.flows import audit, digest
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Staff
from reminders.web import sight
from reminders.web.auth import Person
from reminders.web.deps import AppDep, PersonDep
from reminders.web.pages import PagesDep

router = APIRouter(include_in_schema=False)

PART = 50  # on one page: clients, and those who need somebody


@router.get("/digest")
def digest_page(
    app: AppDep,
    pages: PagesDep,
    person: PersonDep,
    week: str = "",
    therapist: int = 0,
    now_too: str = "",
    part: int = 1,
) -> Response:
    """Show a week's digest of her own clients, the last one without a week; a lead may choose a therapist.

    A kept digest is shown as it was made. Any other is worked out anew from every session, which takes a moment.
    """
    now = app.clock()
    with app.db.begin() as tx:
        clinic = clients.the_clinic(tx, person.clinic_id)
        this_week = week_of(local_date(now, clinic.time_zone))
        wanted = checked(week) if week else digest.week_due(clinic.time_zone, now)
        chosen = therapist_of(tx, person, therapist)
        kept = None if now_too else digest.kept(tx, chosen, wanted)
        is_kept = kept is not None or digest.is_kept(tx, chosen, wanted)
        values = kept.values if kept else digest.computed(tx, clinic, chosen, wanted, now)
        team = colleagues(tx, person.clinic_id) if person.role == "lead" else [chosen]
        audit.record(tx, clinic.id, person.email, "digest viewed", None, {"therapist": chosen.id, "week": wanted}, now)
    monday, _ = week_days(wanted)
    return pages.show(
        "digest.html",
        **parted(values, part),
        made_at=kept.made_at if kept else None,
        is_kept=is_kept,
        now_too=now_too,
        week=wanted,
        earlier=week_of(monday - timedelta(days=7)),
        later=week_of(monday + timedelta(days=7)) if wanted < this_week else "",
        chosen=chosen,
        team=team,
    )


def parted(values: dict[str, Any], part: int) -> dict[str, Any]:
    """Return one part of a digest for the page, and which of how many it is."""
    asking, everyone = len(values["attention"]), len(values["clients"])
    parts = max(1, -(-everyone // PART))
    place = min(max(part, 1), parts)
    here = slice((place - 1) * PART, place * PART)
    shown = {**values, "attention": values["attention"][here], "clients": values["clients"][here]}
    return {
        "digest": digest.with_words(shown),
        "part": place,
        "parts": parts,
        "size": PART,
        "asking": asking,
        "asking_parts": -(-asking // PART),
    }


def checked(week: str) -> str:
    """Return an ISO week as it is written; raises BadInput."""
    try:
        return week_of(week_days(week)[0])
    except ValueError as error:
        raise BadInput(f"The week: {error}.") from None


def therapist_of(tx: Tx, person: Person, staff_id: int) -> Staff:
    """Return whose digest is meant; raises NotFound for one that is not hers to see."""
    if staff_id and staff_id != person.staff_id and person.role != "lead":
        raise NotFound("There is nobody like that on the staff.")
    return sight.staff_seen(tx, person.clinic_id, staff_id or person.staff_id)


def colleagues(tx: Tx, clinic_id: int) -> list[Staff]:
    """Return who has clients."""
    rows = tx.exec(
        select(Staff)
        .where(Staff.clinic_id == clinic_id, col(Staff.role).in_(("therapist", "lead")))
        .order_by(Staff.name)
    )
    return list(rows)
