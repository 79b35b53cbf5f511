from datetime import UTC, datetime

import pytest

from reminders.channels.recording import RecordingChannel
from reminders.core.channel import Outgoing
from reminders.errors import SendError

NOW = datetime(2027, 3, 1, 13, 30, tzinfo=UTC)
TEXT = Outgoing(key="welcome:7", to="+12025550101", body="Welcome")


def test_it_fails_as_told_and_then_keeps_what_it_is_given() -> None:
    channel = RecordingChannel(errors=[SendError("no", code="21610", permanent=True)])
    with pytest.raises(SendError):
        channel.send(TEXT)
    assert channel.sent == []
    assert channel.send(TEXT) == "recorded-1"
    assert channel.sent == [TEXT]


@pytest.mark.parametrize("keeps", [True, False])
def test_an_attempt_cut_off_may_have_been_kept(keeps: bool) -> None:
    channel = RecordingChannel(errors=[SendError("cut", unknown=True)], keeps_unknown=keeps)
    with pytest.raises(SendError):
        channel.send(TEXT)
    assert channel.find(TEXT, NOW, frozenset()) == ("recorded-1" if keeps else None)
    assert channel.find(TEXT, NOW, frozenset({"recorded-1"})) is None
