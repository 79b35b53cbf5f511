"""Runs migrations over the connection that store/schema.py hands in, inside its transaction."""

from alembic import context

from reminders.store import tables

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=tables.metadata,
    render_as_batch=True,
    transactional_ddl=True,
)
with context.begin_transaction():
    context.run_migrations()
