"""Run by Alembic: use the connection that `upgrade` was given, and its transaction."""

from alembic import context

from bot.storage.tables import METADATA

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=METADATA,
    render_as_batch=True,
    transaction_per_migration=False,
)
with context.begin_transaction():
    context.run_migrations()
