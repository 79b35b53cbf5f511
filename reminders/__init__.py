"""Reminders: home exercise by text and e-mail, the answers read, the record kept, the therapist told."""
