"""The calls that the SMS provider's stand-in makes: signed, from a thread of its own, in order."""

import queue
import threading
import urllib.error
import urllib.request
from collections.abc import Mapping

from tests.standins.forms import signed_form, status_fields


class Callbacks:
    """Posts signed forms one after the other and keeps what each was answered with (0: no answer)."""

    def __init__(self, token: str) -> None:
        self.token = token
        self.answers: list[tuple[str, int]] = []
        self.waiting: queue.Queue[tuple[str, Mapping[str, str]] | None] = queue.Queue()
        self.thread: threading.Thread | None = None
        self.lock = threading.Lock()
        # Loopback is never reached through a proxy of the environment.
        self.opener = urllib.request.build_opener(urllib.request.ProxyHandler({}))

    def report(self, url: str, sid: str, status: str, to: str, code: str = "") -> None:
        """Queue one status callback."""
        self.post(url, status_fields(sid, status, to, code=code if status in ("failed", "undelivered") else ""))

    def post(self, url: str, fields: Mapping[str, str]) -> None:
        """Queue one signed form."""
        with self.lock:
            if self.thread is None:
                self.thread = threading.Thread(target=self.work, daemon=True)
                self.thread.start()
        self.waiting.put((url, fields))

    def work(self) -> None:
        """Post until told to end."""
        while (job := self.waiting.get()) is not None:
            self.answers.append((job[0], self.call(*job)))
            self.waiting.task_done()
        self.waiting.task_done()

    def call(self, url: str, fields: Mapping[str, str]) -> int:
        """Post one signed form and return the HTTP status, 0 when nobody answers."""
        body, headers = signed_form(url, fields, self.token)
        request = urllib.request.Request(url, body, headers, method="POST")
        try:
            with self.opener.open(request, timeout=15) as answer:
                answer.read()
                return int(answer.status)
        except urllib.error.HTTPError as error:
            error.close()
            return error.code
        except (urllib.error.URLError, OSError):
            return 0

    def settle(self) -> None:
        """Wait until all that was queued has been posted."""
        self.waiting.join()

    def close(self) -> None:
        """End the thread."""
        if self.thread is not None:
            self.waiting.put(None)
            self.thread.join(timeout=20)
