"""The client's and the alert's page in a real browser: without scripts, by keyboard alone, at both widths."""

import re

import pytest
from playwright.sync_api import Page, expect

from reminders.store.tables import Alert, InboundRow
from tests.web.busy import ANA
from tests.web.scene import CHROMIUM, Scene, opened

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


@pytest.mark.parametrize("width", [360, 1280])
def test_a_client_reports_without_scripts_and_is_warned_on_the_next_page(scene: Scene, width: int) -> None:
    world = scene.desk.world
    window = scene.context(None, width, scripts=False)
    page, _ = opened(window, scene.base + scene.busy.client_page)
    page.locator("label.choice", has_text="All of them").click()
    page.locator("label.choice", has_text=re.compile(r"^\s*3\b")).click()
    page.get_by_label("Anything else?").fill("felt fine")
    page.get_by_role("button", name="Send").click()
    expect(page.get_by_role("heading", name="Thank you. This is what we wrote down:")).to_be_visible()
    expect(page.get_by_text("pain 3")).to_be_visible()

    page.get_by_role("link", name="Not right? Change it here.").click()
    expect(page.get_by_role("heading", name="You sent this before")).to_be_visible()
    page.locator("label.choice", has_text=re.compile(r"^\s*9\b")).click()
    page.get_by_role("button", name="Send").click()
    expect(page.get_by_role("alert")).to_contain_text("Alder Hill Physio")
    expect(page.get_by_role("heading", name="You marked 9. Is that number right?")).to_be_visible()
    page.locator("label.choice", has_text=re.compile(r"^\s*4\b")).click()
    page.get_by_role("button", name="Change the number").click()
    expect(page.get_by_text("pain 4")).to_be_visible()
    assert world.rows(InboundRow, source="page")[-1].text == ""
    window.close()


def test_a_client_reports_in_spanish_with_the_keyboard_alone(scene: Scene) -> None:
    window = scene.context(None, 360)
    page, said = opened(window, scene.base + scene.busy.spanish_page)
    for _ in range(40):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.name") == "done":
            break
    page.keyboard.press("Space")
    page.keyboard.press("Tab")
    page.keyboard.press("ArrowDown")
    tab_to(page, "Enviar")
    page.keyboard.press("Enter")

    expect(page.get_by_role("heading", name="Gracias. Esto es lo que anotamos:")).to_be_visible()
    assert said == []
    window.close()


def test_an_alert_is_acknowledged_by_its_link_without_scripts(scene: Scene) -> None:
    world = scene.desk.world
    world.hear("my chest feels tight", ANA)
    from tests.web.desk import alert_path

    alert = [one for one in world.alerts() if one.rule == "chest_or_breathing"][-1]
    window = scene.context(None, 360, scripts=False)
    page, _ = opened(window, scene.base + alert_path(scene.desk.world, alert.id or 0))
    assert "Ana" not in page.content()
    assert "chest" not in page.content()
    page.get_by_role("button", name="I am on it").click()
    expect(page.locator("#main .done", has_text="Acknowledged. It stays open until")).to_be_visible()
    after = world.rows(Alert, id=alert.id)[0]
    assert (after.state, after.acknowledged_how) == ("acknowledged", "link")
    window.close()
