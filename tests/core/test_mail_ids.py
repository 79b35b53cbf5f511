import pytest

from reminders.core.mail_ids import message_id, message_ids, reply_address, reply_token

SENDER = "Elm Clinic <Clinic@Example.org>"


def test_a_key_has_one_message_id_and_another_key_another() -> None:
    first = message_id("reminder:7:2027-03-01", b"one secret", SENDER)
    assert first == message_id("reminder:7:2027-03-01", b"one secret", SENDER)
    assert first != message_id("reminder:8:2027-03-01", b"one secret", SENDER)
    assert message_ids(first) == (first,)
    assert first.endswith("@example.org>")


def test_a_message_id_cannot_be_guessed_without_the_secret() -> None:
    assert message_id("reminder:7:2027-03-01", b"a", SENDER) != message_id("reminder:7:2027-03-01", b"b", SENDER)


def test_a_reply_token_comes_back_from_the_address() -> None:
    address = reply_address(SENDER, "1c-k3J5h7_9f2")
    assert address == "Clinic+1c-k3J5h7_9f2@Example.org"
    assert reply_token(address) == "1c-k3J5h7_9f2"


@pytest.mark.parametrize("token", ["", "short", "with space1", "plus+plus1", "at@at.at.at", "a" * 49, "a\r\nBcc: x1"])
def test_a_token_that_could_not_come_back_is_refused(token: str) -> None:
    with pytest.raises(ValueError, match="reply token"):
        reply_address(SENDER, token)


@pytest.mark.parametrize("address", ["clinic@example.org", "clinic+x@example.org", "", "no address"])
def test_an_address_without_a_token_has_none(address: str) -> None:
    assert reply_token(address) == ""


def test_message_ids_are_taken_from_a_header_in_order() -> None:
    assert message_ids("<a@x.org>\r\n <b@y.org> junk <c>") == ("<a@x.org>", "<b@y.org>")
