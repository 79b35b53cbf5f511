"""The stand-ins that other tests lean on: they must speak as the provider does, in this process and in another."""

import json
import subprocess
import sys
import threading
import urllib.request
from collections.abc import Iterator
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import pytest

from reminders.channels import sms
from reminders.core.channel import Outgoing
from reminders.errors import SendError
from reminders.inbound.twilio import inbound_of, signed_form, status_of
from reminders.settings import Settings
from tests.standins.forms import ACCOUNT_SID, AUTH_TOKEN, SENDER
from tests.standins.sms_provider import SmsProvider

ANA = "+12025550101"


class Ear:
    """A small web server that keeps what is posted to it."""

    def __init__(self) -> None:
        self.heard: list[tuple[str, bytes, str]] = []
        ear = self

        class Handler(BaseHTTPRequestHandler):
            def do_POST(self) -> None:
                body = self.rfile.read(int(self.headers["Content-Length"]))
                ear.heard.append((self.path, body, self.headers["X-Twilio-Signature"]))
                self.send_response(200)
                self.send_header("Content-Length", "0")
                self.end_headers()

            def log_message(self, *_: object) -> None:
                """Say nothing."""

        self.server = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
        self.url = f"http://127.0.0.1:{self.server.server_port}"
        self.thread = threading.Thread(target=self.server.serve_forever, args=(0.05,), daemon=True)
        self.thread.start()


@pytest.fixture
def ear() -> Iterator[Ear]:
    one = Ear()
    yield one
    one.server.shutdown()
    one.server.server_close()
    one.thread.join()


def settings_for(api: str, public: str) -> Settings:
    return Settings(
        public_url=public,
        sms="twilio",
        twilio_account_sid=ACCOUNT_SID,
        twilio_auth_tokens=(AUTH_TOKEN,),
        twilio_sender=SENDER,
        twilio_api_url=api,
    )


def test_status_callbacks_come_signed_with_our_row_and_attempt(ear: Ear) -> None:
    with SmsProvider() as provider:
        settings = settings_for(provider.url, ear.url)
        provider.play.callbacks = ("sent", "undelivered")
        provider.play.callback_code = "30005"
        receipt = sms.build(settings).send(Outgoing(key="welcome:7", to=ANA, body="Welcome", row=41, attempt=2))
        provider.callbacks.settle()
    reports = []
    for target, body, signature in ear.heard:
        form = signed_form(settings, target, body, [signature])
        assert form is not None
        reports.append(status_of(form, body, target))
    assert [(one.provider_id, one.status, one.code) for one in reports] == [
        (receipt, "sent", ""),
        (receipt, "undelivered", "30005"),
    ]
    assert {(one.row, one.attempt) for one in reports} == {(41, 2)}


def test_a_text_that_comes_in_is_posted_signed_and_stands_in_the_list(ear: Ear) -> None:
    with SmsProvider(inbound_url=f"{ear.url}/sms/inbound") as provider:
        settings = settings_for(provider.url, ear.url)
        text = provider.hear(ANA, "sí, dolor 3")
        provider.callbacks.settle()
        (listed,) = sms.build(settings).inbound_since(text.created_at)
    ((target, body, signature),) = ear.heard
    form = signed_form(settings, target, body, [signature])
    assert form is not None
    posted = inbound_of(form, body, text.created_at)
    assert (posted.source, posted.provider_id, posted.text) == (listed.source, listed.provider_id, listed.text)


def call(url: str, document: object = None) -> dict[str, object]:
    """Call one of the stand-in's own routes."""
    data = None if document is None else json.dumps(document).encode()
    with urllib.request.build_opener(urllib.request.ProxyHandler({})).open(url, data, timeout=10) as answer:
        found: dict[str, object] = json.load(answer)
        return found


def test_as_a_process_of_its_own_it_is_played_over_http() -> None:
    root = Path(__file__).parent.parent.parent
    command = [sys.executable, "-m", "tests.standins.sms_provider"]
    with subprocess.Popen(command, stdout=subprocess.PIPE, cwd=root, text=True) as process:
        try:
            assert process.stdout is not None
            url = process.stdout.readline().strip()
            channel = sms.build(settings_for(url, "http://127.0.0.1:8000"))
            call(f"{url}/_control", {"acts": [{"kind": "drop after"}, {"kind": "refuse", "code": "21610"}]})
            codes = []
            for _ in range(2):
                with pytest.raises(SendError) as caught:
                    channel.send(Outgoing(key="welcome:7", to=ANA, body="Welcome"))
                codes.append((caught.value.code, caught.value.unknown))
            assert codes == [("", True), ("21610", False)]
            sent = call(f"{url}/_hear", {"from": ANA, "body": "Y3"})
            accepted = call(f"{url}/_accepted")
            assert accepted["asked"] == 2
            assert isinstance(accepted["accepted"], list)
            assert [one["body"] for one in accepted["accepted"]] == ["Welcome"]
            assert str(sent["sid"]).startswith("SM")
        finally:
            process.kill()


def test_chances_are_drawn_from_a_seed() -> None:
    runs = []
    for _ in range(2):
        with SmsProvider() as provider:
            provider.change({"chances": {"drop": 0.3, "throttle": 0.3}, "seed": 7})
            runs.append([provider.next_act().kind for _ in range(50)])
    assert runs[0] == runs[1]
    assert {"ok", "drop", "throttle"} == set(runs[0])
