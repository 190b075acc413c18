"""Finding a message by the chat's id of it: only those that have one are in the index, so that
nothing is written there when a message is queued."""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the index anew."""
    came = sa.text("message IS NOT NULL")
    op.drop_index("outbox_receipt", "outbox")
    op.create_index(
        "outbox_receipt", "outbox", ["chat", "message"], sqlite_where=came, postgresql_where=came
    )
