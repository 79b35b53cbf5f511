"""The API for other programs: what the console does, as JSON under /api/v1. Its routers stand in `routers`."""
