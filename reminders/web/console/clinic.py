"""The clinic's own details and the wording of its messages, within what is safe."""

from fastapi import APIRouter
from starlette.responses import Response

from reminders.core.languages import LANGUAGES
from reminders.errors import BadInput
from reminders.flows import clinic
from reminders.store import clients
from reminders.web.deps import AppDep, FormDep, PersonDep
from reminders.web.pages import PagesDep, see

router = APIRouter(include_in_schema=False)


@router.get("/clinic")
def clinic_page(app: AppDep, pages: PagesDep, person: PersonDep) -> Response:
    """Show the clinic's details."""
    with app.db.read() as tx:
        found = clients.the_clinic(tx, person.clinic_id)
    return pages.show("clinic.html", clinic=found, given=found.model_dump(), wrong="")


@router.post("/clinic")
def save_clinic(app: AppDep, pages: PagesDep, person: PersonDep, form: FormDep) -> Response:
    """Keep changed details; all or nothing."""
    now = app.clock()
    given = {name: form.text(name) for name in clinic.FIELDS}
    try:
        with app.db.begin() as tx:
            clinic.change(tx, clients.the_clinic(tx, person.clinic_id), given, person.email, now)
    except BadInput as error:
        with app.db.read() as tx:
            found = clients.the_clinic(tx, person.clinic_id)
        typed = {**given, "closed_days": given["closed_days"].replace(",", " ").split()}
        return pages.show("clinic.html", status=422, clinic=found, given=typed, wrong=str(error))
    return see("/clinic", "saved")


@router.get("/wording")
def wording_page(app: AppDep, pages: PagesDep, person: PersonDep) -> Response:
    """Show the messages that a clinic may word for itself."""
    return wording_shown(app, pages, person, "", "", "")


def wording_shown(app: AppDep, pages: PagesDep, person: PersonDep, key: str, words: str, wrong: str) -> Response:
    """Show each text in both languages: ours, the clinic's own, or what was just typed."""
    with app.db.read() as tx:
        own = clients.the_clinic(tx, person.clinic_id).wording
    rows = [
        {
            "key": f"{language}/{name}",
            "name": name.replace("_", " "),
            "language": language,
            "ours": clinic.ours(app.texts, language, name),
            "own": words if key == f"{language}/{name}" else own.get(f"{language}/{name}", ""),
            "wrong": wrong if key == f"{language}/{name}" else "",
            "keeps": clinic.WORDABLE[name],
        }
        for name in clinic.WORDABLE
        for language in LANGUAGES
    ]
    return pages.show("wording.html", status=422 if wrong else 200, rows=rows)


@router.post("/wording")
def save_wording(app: AppDep, pages: PagesDep, person: PersonDep, form: FormDep) -> Response:
    """Keep the clinic's own wording of one text, or bring ours back."""
    now = app.clock()
    key, words = form.text("key", most=60), form.text("words")
    language, _, name = key.partition("/")
    try:
        with app.db.begin() as tx:
            row = clients.the_clinic(tx, person.clinic_id)
            clinic.reword(tx, row, app.texts, language, name, words, person.email, now)
    except BadInput as error:
        return wording_shown(app, pages, person, key, words, str(error))
    return see("/wording", "saved", key.replace("/", "-"))
