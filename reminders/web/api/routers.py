"""The API's routers, in the order of its description."""

from reminders.web.api import alerts, care, clients, clinic, description

ROUTERS = (description.router, clients.router, care.router, alerts.router, clinic.router)
