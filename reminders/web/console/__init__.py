"""The console's pages, a module a page, put together in `routers`. Words are in templates/pages."""
