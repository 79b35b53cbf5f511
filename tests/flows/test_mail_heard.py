"""What a mail says beside its plain words: programs that answer for her, quotes of ours, words under a quote."""

from typing import Any

from reminders.core.channel import Inbound
from reminders.flows import receive
from reminders.store.tables import Hold, InboundRow, Outbound
from tests.clinic import World
from tests.flows.hearing import answers, inbound, keep, reminded

MAIL = "ana@example.org"


def mailed(world: World, **columns: str) -> tuple[int, Outbound]:
    """Enrol Ana by mail alone and remind her; return her id and the reminder."""
    ana = reminded(world, **{"email": MAIL, "channel": "email", "mobile": "", **columns})
    return ana, world.queued("reminder")[0]


def mail(world: World, text: str, answered: Outbound | None, **fields: Any) -> Inbound:
    """Return a mail from her address, an answer to one of ours where that is given."""
    named = (answered.receipt,) if answered is not None else ()
    return inbound(text, "m1", world, **{"source": "email", "address": MAIL, "answers": named, **fields})


def hear(world: World, arrived: Inbound) -> InboundRow:
    keep(world, arrived)
    receive.handle_waiting(world.db, world.now)
    found: InboundRow = world.rows(InboundRow)[-1]
    return found


def test_danger_in_an_automatic_answer_is_judged_and_never_answered(world: World) -> None:
    ana, sent = mailed(world)

    row = hear(world, mail(world, "Out of office: I fell and hit my head", sent, automatic=True))

    assert [(one.rule, one.one_of_two) for one in world.alerts(ana)] == [("fall_or_injury", False)]
    assert len(world.rows(Hold, client_id=ana)) == 1
    assert answers(world, MAIL) == []
    assert row.outcome == "automatic"
    assert row.reading is not None
    assert world.reports(ana) == []


def test_danger_in_an_automatic_mail_that_only_bears_her_address_is_judged_too(world: World) -> None:
    ana, _ = mailed(world)

    hear(world, mail(world, "", None, automatic=True, whole_text="Away\nI fell and hit my head"))

    assert [one.rule for one in world.alerts(ana)] == ["fall_or_injury"]
    assert answers(world, MAIL) == []


def test_an_automatic_answer_opts_nobody_out(world: World) -> None:
    ana, sent = mailed(world)

    row = hear(world, mail(world, "unsubscribe", sent, automatic=True))

    assert world.client(ana).state == "active"
    assert row.reading is None


def test_our_own_text_quoted_from_another_address_of_hers_is_not_hers(world: World) -> None:
    ana, sent = mailed(world)
    quoted = "\n".join(f"> {line}" for line in sent.body.splitlines())
    whole = f"Re: x\ndone pain 1\nOn Wed Alder wrote:\n{quoted}"

    hear(world, mail(world, "done pain 1", sent, address="ana.alias@example.org", whole_text=whole))

    assert world.sessions(ana)[0].pain == 1
    assert world.alerts(ana) == []


def test_a_report_typed_below_our_text_under_a_head_without_marks_is_read(world: World) -> None:
    ana, sent = mailed(world)
    head = "From: Alder Hill Physio\nSent: Wednesday, March 3, 2027 8:30 AM\nTo: Ana\nSubject: Exercises"

    row = hear(world, mail(world, "", sent, whole_text=f"RE: Exercises\n{head}\n\n{sent.body}\n\nDone, pain 7"))

    assert world.sessions(ana)[0].pain == 7
    assert row.text == "Done, pain 7"
    assert [report.text for report in world.reports(ana)] == ["Done, pain 7"]
