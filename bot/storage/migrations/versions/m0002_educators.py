"""Educators: who they are, who stands in for them, when to look at their alerts."""

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the table."""
    op.create_table(
        "educator",
        sa.Column("id", sa.String(), primary_key=True),
        sa.Column("body", sa.String(), nullable=False),
        sa.Column("deputy", sa.String(), index=True),
        sa.Column("made_real", sa.BigInteger(), nullable=False),
        sa.Column("next_wake_ms", sa.BigInteger(), index=True),
    )
