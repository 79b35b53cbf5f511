"""The API for other programs: what the console does, as JSON under /api/v1."""
