"""A process beside the web process which handles the texts that came in a crowd, so that the web process only answers.

One interpreter runs one thread at a time: a text that is read and judged would hold up each call that is to be
answered. Both talk by single bytes: one for each text left, and one back for each that has been looked after.
"""

import logging
import os
import subprocess
import sys
import threading

LOG = logging.getLogger("reminders.receive")
KEPT_TEXTS = "--kept-texts"  # what `reminders work` is told
AGAIN_AFTER_SECONDS = 1.0
ENDS_WITHIN_SECONDS = 30.0


class Beside:
    """Keeps the process running; what is left while it is away is the caller's own to handle."""

    def __init__(self) -> None:
        """Begin with no process."""
        self.lock = threading.Lock()
        self.child: subprocess.Popen[bytes] | None = None
        self.asked = self.answered = 0
        self.stop = threading.Event()

    def start(self) -> None:
        """Start the process, and start it again each time that it ends, until told to stop."""
        threading.Thread(target=self.keep_running, name="beside", daemon=True).start()

    def keep_running(self) -> None:
        """Run the process and listen to it."""
        command = [sys.executable, "-m", "reminders", "work", KEPT_TEXTS]
        while not self.stop.is_set():
            pipes = subprocess.PIPE
            try:
                with subprocess.Popen(command, stdin=pipes, stdout=pipes) as child:  # noqa: S603 - our own program
                    self.listen(child)
            except OSError as error:
                LOG.warning("no process beside this one", extra={"error": type(error).__name__})
            self.stop.wait(AGAIN_AFTER_SECONDS)

    def listen(self, child: subprocess.Popen[bytes]) -> None:
        """Take what a process answers until it ends."""
        assert child.stdin is not None
        assert child.stdout is not None
        os.set_blocking(child.stdin.fileno(), False)
        with self.lock:
            self.child, self.asked, self.answered = child, 0, 0
        try:
            while answer := os.read(child.stdout.fileno(), 1024):
                with self.lock:
                    self.answered += len(answer)
        finally:
            with self.lock:
                self.child = None

    def leave(self) -> bool:
        """Leave what is kept to the process; False when there is none."""
        with self.lock:
            if self.child is None or self.child.stdin is None:
                return False
            try:
                self.asked += os.write(self.child.stdin.fileno(), b".")
            except BlockingIOError:
                return True  # so much is left to it that it will look again anyway
            except OSError:
                return False
            return True

    def is_behind(self) -> bool:
        """Return whether it still has to look after something."""
        with self.lock:
            return self.child is not None and self.asked > self.answered

    def end(self) -> None:
        """End the process; what it is doing is done first."""
        self.stop.set()
        with self.lock:
            child = self.child
        if child is not None and child.stdin is not None:
            child.terminate()
            child.wait(timeout=ENDS_WITHIN_SECONDS)
