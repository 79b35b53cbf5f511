"""The web application served on a port of this machine, as a browser or another program meets it."""

import socket
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager

import uvicorn
from fastapi import FastAPI


@contextmanager
def served(web: FastAPI, listening: socket.socket) -> Iterator[str]:
    """Serve an application in a thread until the block ends; gives its address."""
    server = uvicorn.Server(uvicorn.Config(web, log_level="error", access_log=False, lifespan="off"))
    thread = threading.Thread(target=server.run, kwargs={"sockets": [listening]}, daemon=True)
    thread.start()
    deadline = time.monotonic() + 20
    while not server.started and time.monotonic() < deadline:
        time.sleep(0.02)
    assert server.started, "the test's server did not start"
    try:
        yield f"http://127.0.0.1:{listening.getsockname()[1]}"
    finally:
        server.should_exit = True
        thread.join(timeout=20)


def a_port() -> socket.socket:
    """Return a socket that listens on a free port of this machine."""
    listening = socket.socket()
    listening.bind(("127.0.0.1", 0))
    return listening
