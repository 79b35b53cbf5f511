"""The fictional clinic: its people, their habits, the weeks they live through, and the account of them.

Nothing here is used by a real clinic, and nothing here decides anything: the people write, the service does the rest.
"""
