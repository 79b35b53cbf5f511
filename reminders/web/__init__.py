"""What people and other programs see and touch over HTTP: the console, the client's page, the API, the webhooks."""
