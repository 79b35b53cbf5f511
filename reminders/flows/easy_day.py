"""The easy day of the next session: set by a rating, by staff or after a hold, and taken back with the rating.

Which rating asks for one stands in core/rules; when the easy day has been sent is counted in flows/outcomes.
"""

from reminders.store.tables import Client


def after_rating(client: Client, session_id: int, is_asked: bool) -> None:
    """Make the next session an easy day, or take back one that this session's rating alone had asked for."""
    if is_asked:
        is_alone = not client.next_session_easy or client.easy_session_id == session_id
        client.next_session_easy, client.easy_session_id = True, session_id if is_alone else None
    elif client.easy_session_id == session_id:
        client.next_session_easy, client.easy_session_id = False, None


def ease(client: Client) -> None:
    """Make the next session an easy day whatever becomes of a rating: after a hold, or as staff decided."""
    client.next_session_easy, client.easy_session_id = True, None


def spend(client: Client) -> None:
    """Count the easy day that a reminder announced."""
    client.next_session_easy, client.easy_session_id = False, None
    client.easy_sessions_left = max(0, client.easy_sessions_left - 1)


def give_back(client: Client, *, by_wish: bool, by_count: bool) -> None:
    """Let an easy day that was counted stand before her again: its reminder never arrived."""
    if by_wish:
        client.next_session_easy = True
    if by_count:
        client.easy_sessions_left += 1
