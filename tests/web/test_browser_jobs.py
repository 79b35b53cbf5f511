"""Each person's whole job in a real browser: with scripts and without, by keyboard alone, at both widths."""

import re

import pytest
from playwright.sync_api import Page, expect

from reminders.store.tables import Alert, Client, ExerciseSession, Hold, Outbound, Staff, WebSession
from tests.web.busy import EVA, PASSWORD, ROSA
from tests.web.scene import CHROMIUM, EMAILS, Scene, opened

pytestmark = [
    pytest.mark.browser,
    pytest.mark.skipif(not CHROMIUM.exists(), reason="no Chromium at /usr/bin/chromium: apt-get install chromium"),
]


def tab_to(page: Page, words: str, most: int = 120) -> None:
    """Press Tab until the focus stands on something with these words."""
    for _ in range(most):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.textContent.trim()").startswith(words):
            return
    raise AssertionError(f"Tab never reached {words!r}")


def test_a_therapist_signs_in_and_works_her_list_with_the_keyboard_alone(scene: Scene) -> None:
    window = scene.context(None)
    page, said = opened(window, f"{scene.base}/sign-in")
    page.keyboard.press("Tab")
    page.keyboard.press("Tab")
    page.keyboard.type("ben@example.org")
    page.keyboard.press("Tab")
    page.keyboard.type(PASSWORD)
    page.keyboard.press("Enter")
    expect(page.get_by_role("heading", name="Today,")).to_be_visible()

    tab_to(page, "I have it")
    page.keyboard.press("Enter")
    expect(page.locator("#main .done", has_text="Acknowledged. It stays on the list")).to_be_visible()
    assert page.url.endswith("/today"), "she never left the page"

    tab_to(page, "Close")
    page.keyboard.press("Enter")
    page.keyboard.press("Tab")
    page.keyboard.type("rang her, she is resting")
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    expect(page.locator("#main .done", has_text="Closed.")).to_be_visible()

    alert = scene.desk.world.rows(Alert, id=scene.busy.ids["alert_id"])[0]
    eva = scene.desk.world.rows(Client, name="Eva Stone")[0]
    closed = [one for one in scene.desk.world.rows(Alert) if one.state == "closed"]
    assert [(one.outcome, one.note, one.closed_by) for one in closed] == [
        ("called", "rang her, she is resting", "ben@example.org")
    ]
    assert closed[0].client_id in (eva.id, alert.client_id)
    assert said == []
    window.close()


@pytest.mark.parametrize("scripts", [True, False])
@pytest.mark.parametrize("width", [360, 1280])
def test_a_therapist_writes_back_holds_and_clears(scene: Scene, width: int, scripts: bool) -> None:
    world = scene.desk.world
    window = scene.context(EMAILS["therapist"], width, scripts=scripts)
    page, said = opened(window, f"{scene.base}/today")
    before = len(world.queued("therapist_note"))
    row = page.locator(".row", has_text="Rosa Díaz").first
    row.get_by_text("Write back").click()
    row.get_by_label("Your words").fill("Descanse hoy. La llamo a las 3.")
    row.get_by_role("button", name="Send").click()
    expect(page.locator("#main .done", has_text="Your words are on their way.")).to_be_visible()
    assert len(world.queued("therapist_note")) == before + 1
    assert world.queued("therapist_note")[-1].to == ROSA

    rosa = world.rows(Client, name="Rosa Díaz")[0].id
    page.goto(f"{scene.base}/clients/{rosa}")
    if world.rows(Hold, client_id=rosa)[-1].ended_at is None:
        page.get_by_role("button", name="Clear the hold").click()
        expect(page.locator("#main .done", has_text="Cleared. The next session is an easy day")).to_be_visible()
    page.locator("summary", has_text="Hold").click()
    page.get_by_label("Why (for your colleagues)").fill("sees her tomorrow")
    page.get_by_role("button", name="Hold now").click()
    expect(page.locator("#main .done", has_text="Held. No reminders go out")).to_be_visible()
    assert world.rows(Hold, client_id=rosa)[-1].note == "sees her tomorrow"
    assert said == []
    window.close()


@pytest.mark.parametrize("scripts", [True, False])
def test_a_therapist_corrects_a_reading_and_changes_a_program(scene: Scene, scripts: bool) -> None:
    world, client_id = scene.desk.world, scene.busy.ids["client_id"]
    window = scene.context(EMAILS["therapist"], scripts=scripts)
    page, said = opened(window, f"{scene.base}/clients/{client_id}")
    row = page.locator(f"#session-{scene.busy.ids['session_id']}")
    row.locator("summary", has_text="Correct").click()
    row.get_by_label("Pain 0-10").fill("2")
    row.get_by_label("Why", exact=True).fill("she meant 2")
    row.get_by_role("button", name="Keep the correction").click()
    expect(page.locator("#main .done", has_text="The correction is kept beside")).to_be_visible()
    assert world.rows(ExerciseSession, id=scene.busy.ids["session_id"])[0].pain == 2

    page.goto(f"{scene.base}/clients/{client_id}/program")
    page.get_by_label("low bone density").check()
    page.get_by_label("none known").uncheck()
    page.locator("#ladder0_0").fill("1x8; 2x8; 2x10 for 21 days")
    page.get_by_role("button", name="Only check").click()
    expect(page.get_by_role("heading", name="To know before you save")).to_be_visible()
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.locator("#main .done", has_text="Saved.")).to_be_visible()
    expect(page.locator("#ladder0_0")).to_have_value("1x8; 2x8; 2x10 for 21 days")
    page.locator("#ladder0_0").fill("plenty")
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.get_by_role("alert")).to_contain_text('The dose "plenty" cannot be read')
    assert [words for words in said if "422" not in words] == []
    window.close()


@pytest.mark.parametrize(("scripts", "width"), [(True, 360), (True, 1280), (False, 360)])
def test_an_admin_enrols_a_client_and_sees_whether_the_text_arrived(scene: Scene, scripts: bool, width: int) -> None:
    world = scene.desk.world
    number = f"+1202555017{width % 7}" if scripts else "+12025550178"
    window = scene.context(EMAILS["admin"], width, scripts=scripts)
    page, said = opened(window, f"{scene.base}/enrol")
    page.get_by_label("Name").fill("Nora Vale")
    page.get_by_label("Mobile (or give an e-mail below)").fill(number)
    page.get_by_label("Program").select_option("falls-balance")
    page.get_by_label("none known").check()
    page.get_by_label("The client agrees to these messages today").check()
    page.get_by_role("button", name="Save and text her now").click()
    expect(page.get_by_role("heading", name="Nora Vale is enrolled")).to_be_visible()
    expect(page.locator("#main").get_by_text(f"{number} by text: queued")).to_be_visible()

    world.send()
    world.hear("ok thanks", number)
    if not scripts:
        page.get_by_role("link", name="Look again").click()
    expect(page.locator("#main").get_by_text(f"{number} by text: sent")).to_be_visible()
    expect(page.locator("#main").get_by_text("She answered.")).to_be_visible()
    assert said == []
    window.close()


def test_an_enrolment_that_does_not_fit_says_so_beside_the_field_and_keeps_what_was_typed(scene: Scene) -> None:
    window = scene.context(EMAILS["admin"], 360)
    page, _ = opened(window, f"{scene.base}/enrol")
    page.get_by_label("Name").fill("Otto Hale")
    page.get_by_label("Mobile (or give an e-mail below)").fill("12")
    page.get_by_role("button", name="Save and text her now").click()

    expect(page.get_by_role("alert")).to_contain_text("mobile")
    expect(page.get_by_label("Name")).to_have_value("Otto Hale")
    expect(page.get_by_label("Mobile (or give an e-mail below)")).to_have_attribute("aria-invalid", "true")
    window.close()


def test_a_file_is_shown_row_by_row_before_anything_is_kept(scene: Scene) -> None:
    world = scene.desk.world
    window = scene.context(EMAILS["admin"])
    page, said = opened(window, f"{scene.base}/enrol-file")
    head = "name,mobile,therapist,program,precautions\n"
    bad = head + "Ida Moss,+12025550181,ben@example.org,spine-strength,none known\nJon Moss,x,nobody@example.org,x,\n"
    send = {"name": "people.csv", "mimeType": "text/csv", "buffer": bad.encode()}
    page.get_by_label("A CSV file").set_input_files(files=[send])  # type: ignore[list-item]
    page.get_by_role("button", name="Show me every row first").click()
    expect(page.get_by_role("heading", name="2 rows, 1 with errors")).to_be_visible()
    expect(page.get_by_text("there is no program 'x'")).to_be_visible()
    assert world.rows(Client, name="Ida Moss") == []

    good = {**send, "buffer": (head + "Ida Moss,+12025550181,ben@example.org,spine-strength,none known\n").encode()}
    page.get_by_label("A CSV file").set_input_files(files=[good])  # type: ignore[list-item]
    page.get_by_role("button", name="Show me every row first").click()
    assert world.rows(Client, name="Ida Moss") == []
    page.get_by_role("button", name="Enrol all 1").click()
    expect(page.locator("#main .done", has_text="Enrolled.")).to_be_visible()
    assert len(world.rows(Client, name="Ida Moss")) == 1
    assert said == []
    window.close()


@pytest.mark.parametrize("scripts", [True, False])
def test_an_admin_adds_somebody_and_moves_clients_before_switching_off(scene: Scene, scripts: bool) -> None:
    world = scene.desk.world
    email = f"pia{'s' if scripts else 'n'}@example.org"
    window = scene.context(EMAILS["admin"], scripts=scripts)
    page, said = opened(window, f"{scene.base}/staff")
    page.get_by_label("Name").fill("Pia Lott")
    page.get_by_label("E-mail").fill(email)
    page.get_by_role("button", name="Add and mail a sign-in link").click()
    expect(page.locator("#main .done", has_text="Added. The sign-in link is on its way by e-mail.")).to_be_visible()
    assert world.queued("sign_in")[-1].to == email

    ben = page.locator(f"#staff-{scene.busy.ids['staff_id']}")
    ben.locator("summary", has_text="Change").click()
    ben.get_by_label("May sign in and gets alerts").uncheck()
    ben.get_by_role("button", name="Save").click()
    expect(page.get_by_text(re.compile(r"still has \d+ clients"))).to_be_visible()
    assert world.rows(Staff, email="ben@example.org")[0].is_active
    assert [words for words in said if "409" not in words] == []
    window.close()


def test_she_is_warned_a_minute_before_the_session_ends_and_may_stay(scene: Scene) -> None:
    world = scene.desk.world
    window = scene.context(EMAILS["therapist"])
    world.pass_time(minutes=14, seconds=5)  # the page itself moves the idle end on: look at the browser's own count
    page = window.new_page()
    page.clock.install()
    page.goto(f"{scene.base}/today")
    page.locator("details summary").first.click()
    page.clock.fast_forward("14:01")
    dialog = page.get_by_role("dialog", name="Still there?")
    expect(dialog).to_be_visible()
    seen = max(one.seen_at for one in world.rows(WebSession))
    world.pass_time(minutes=14)
    dialog.get_by_role("button", name="Stay signed in").click()
    expect(dialog).to_be_hidden()
    assert max(one.seen_at for one in world.rows(WebSession)) > seen
    window.close()


def test_signing_out_shows_on_every_page_and_ends_the_session(scene: Scene) -> None:
    window = scene.context(EMAILS["records"], 360)
    page, _ = opened(window, f"{scene.base}/audit")
    page.get_by_role("button", name="Sign out").click()
    expect(page.get_by_role("heading", name="Sign in")).to_be_visible()
    page.goto(f"{scene.base}/audit")
    expect(page.get_by_role("heading", name="Sign in")).to_be_visible()
    window.close()


def test_the_list_answers_in_place_and_takes_arrow_keys(scene: Scene) -> None:
    scene.desk.world.hear("Is the towel pull ok with my wrist?", EVA)
    window = scene.context(EMAILS["therapist"], 1280)
    page, said = opened(window, f"{scene.base}/today")
    rows = page.locator(".row[id]")
    rows.first.locator("a").first.focus()
    page.keyboard.press("ArrowDown")
    assert page.evaluate("document.activeElement.id") == rows.nth(1).get_attribute("id")
    page.keyboard.press("ArrowUp")
    assert page.evaluate("document.activeElement.id") == rows.first.get_attribute("id")
    question = page.locator(".row", has_text="towel pull")
    page.evaluate("window.stays = true")
    question.get_by_role("button", name="Done with this").click()
    expect(question).to_have_count(0)
    assert page.evaluate("window.stays"), "the page was not loaded anew"
    assert scene.desk.world.rows(Outbound) != []
    assert said == []
    window.close()


@pytest.mark.parametrize("scripts", [True, False])
def test_work_sent_after_the_session_ended_is_saved_after_signing_in(scene: Scene, scripts: bool) -> None:
    world = scene.desk.world
    window = scene.context(EMAILS["therapist"], scripts=scripts)
    page, _ = opened(window, f"{scene.base}/today")
    row = page.locator(".row", has_text="Rosa Díaz").first
    row.get_by_text("Write back").click()
    row.get_by_label("Your words").fill(f"Sent too late, {scripts}")
    world.pass_time(minutes=20)
    row.get_by_role("button", name="Send").click()

    expect(page.get_by_text("You were signed out. Sign in again and you can carry on")).to_be_visible()
    page.get_by_label("E-mail").first.fill("ben@example.org")
    page.get_by_label("Password").fill(PASSWORD)
    page.get_by_role("button", name="Sign in", exact=True).click()
    expect(page.get_by_text(f"Sent too late, {scripts}")).to_be_visible()
    page.get_by_role("button", name="Save it now").click()
    expect(page.locator("#main .done", has_text="Your words are on their way.")).to_be_visible()
    assert world.queued("therapist_note")[-1].details["words"] == f"Sent too late, {scripts}"
    window.close()
