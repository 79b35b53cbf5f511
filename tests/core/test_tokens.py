"""Tokens of links: made and read, for one use, with one or two secrets."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.tokens import ALERT_PAGE, CLIENT_PAGE, in_36, make_token, read_token

OLD, NEW = "an old secret of our own", "a new secret of our own"


@given(st.integers(min_value=0, max_value=2**63))
def test_a_token_names_its_row_and_no_other_use(number: int) -> None:
    token = make_token([NEW], CLIENT_PAGE, number)

    assert read_token([NEW], CLIENT_PAGE, token) == number
    assert read_token([NEW], ALERT_PAGE, token) is None


def test_both_secrets_verify_while_the_secret_is_changed() -> None:
    token = make_token([OLD], CLIENT_PAGE, 7)

    assert read_token([NEW, OLD], CLIENT_PAGE, token) == 7
    assert read_token([NEW], CLIENT_PAGE, token) is None


@pytest.mark.parametrize("token", ["", "7", "7-", "7-" + "A" * 20, "é-" + "A" * 20, "7-AAAA", "A7-" + "A" * 20])
def test_a_text_that_we_did_not_make_names_nothing(token: str) -> None:
    assert read_token([NEW], CLIENT_PAGE, token) is None


def test_another_row_number_with_a_proof_of_ours_names_nothing() -> None:
    token = make_token([NEW], CLIENT_PAGE, 7)

    assert read_token([NEW], CLIENT_PAGE, "8" + token[1:]) is None


def test_a_row_number_is_never_negative() -> None:
    with pytest.raises(ValueError, match="not negative"):
        in_36(-1)
