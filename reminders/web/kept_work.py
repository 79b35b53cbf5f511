"""Work of a form that came too late, carried in a hidden field of the pages that ask who it is, and offered again.

It is in the browser alone and kept nowhere here. It is shown to nobody but the person who had filled it in.
"""

import base64
import json

from reminders.web.forms import Form

MOST_KEPT = 60_000


def packed(form: Form, staff_id: int) -> str:
    """Return a form's fields in one text for a hidden field; empty when there is too much, or a file."""
    if form.files:
        return ""
    fields = [[name, value] for name, values in form.values.items() if name != "csrf" for value in values]
    text = base64.urlsafe_b64encode(json.dumps([staff_id, fields]).encode()).decode()
    return text if len(text) <= MOST_KEPT else ""


def unpacked(text: str, staff_id: int) -> list[tuple[str, str]]:
    """Return the fields that `packed` put in one text, none for another person's or anything else."""
    try:
        whose, fields = json.loads(base64.urlsafe_b64decode(text.encode()))
        return [(str(name), str(value)) for name, value in fields] if whose == staff_id else []
    except (ValueError, TypeError):
        return []
