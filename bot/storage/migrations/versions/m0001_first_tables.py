"""The first tables."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None

COUNTING = sa.BigInteger().with_variant(sa.Integer(), "sqlite")


def upgrade() -> None:
    """Make the tables."""
    op.create_table(
        "participant",
        sa.Column("id", sa.String(), primary_key=True),
        sa.Column("body", sa.String(), nullable=False),
        sa.Column("state", sa.String(), nullable=False),
        sa.Column("educator", sa.String(), index=True),
        sa.Column("made_real", sa.BigInteger(), nullable=False),
        sa.Column("last_entry", sa.BigInteger(), nullable=False),
        sa.Column("last_word_ms", sa.BigInteger()),
        sa.Column("next_wake_ms", sa.BigInteger(), index=True),
    )
    op.create_table(
        "chat",
        sa.Column("id", sa.String(), primary_key=True),
        sa.Column("participant", sa.String(), index=True),
        sa.Column("role", sa.String(), nullable=False),
        sa.Column("enrolment", sa.String()),
        sa.Column("group_told", sa.Boolean(), nullable=False),
        sa.Column("blocked", sa.Boolean(), nullable=False),
        sa.Column("since_real", sa.BigInteger(), nullable=False),
    )
    op.create_table(
        "invitation",
        sa.Column("code_hash", sa.String(), primary_key=True),
        sa.Column("body", sa.String(), nullable=False),
        sa.Column("expires_real", sa.BigInteger(), nullable=False),
        sa.Column("used_real", sa.BigInteger()),
    )
    op.create_table(
        "entry",
        sa.Column("participant", sa.String(), primary_key=True),
        sa.Column("id", sa.BigInteger(), primary_key=True, autoincrement=False),
        sa.Column("at_ms", sa.BigInteger(), nullable=False),
        sa.Column("offset_s", sa.Integer(), nullable=False),
        sa.Column("message", sa.String()),
        sa.Column("mends", sa.BigInteger()),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("body", sa.String(), nullable=False),
    )
    op.create_table(
        "seen",
        sa.Column("update", sa.BigInteger(), primary_key=True, autoincrement=False),
        sa.Column("at_real", sa.BigInteger(), nullable=False),
        sa.Column("error", sa.String()),
    )
    op.create_table(
        "heard",
        sa.Column("participant", sa.String(), primary_key=True),
        sa.Column("message", sa.String(), primary_key=True),
        sa.Column("at_ms", sa.BigInteger(), nullable=False, index=True),
        sa.Column("text", sa.String(), nullable=False),
    )
    op.create_table(
        "fact",
        sa.Column("name", sa.String(), primary_key=True),
        sa.Column("value", sa.String(), nullable=False),
    )
    _outbox()


def _outbox() -> None:
    op.create_table(
        "outbox",
        sa.Column("id", COUNTING, primary_key=True),
        sa.Column("reader", sa.String(), nullable=False),
        sa.Column("key", sa.String(), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("about", sa.String()),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("extras", sa.String()),
        sa.Column("to_make", sa.Boolean(), nullable=False),
        sa.Column("rank", sa.BigInteger(), nullable=False),
        sa.Column("due_ms", sa.BigInteger(), nullable=False),
        sa.Column("expires_ms", sa.BigInteger()),
        sa.Column("made_real", sa.BigInteger(), nullable=False),
        sa.Column("until_real", sa.BigInteger()),
        sa.Column("state", sa.String(), nullable=False),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("copies", sa.Integer(), nullable=False),
        sa.Column("parts_done", sa.Integer(), nullable=False),
        sa.Column("retry_real", sa.BigInteger(), nullable=False),
        sa.Column("lease_real", sa.BigInteger()),
        sa.Column("chat", sa.String()),
        sa.Column("message", sa.String()),
        sa.Column("settled_real", sa.BigInteger()),
    )
    op.create_index("outbox_said_once", "outbox", ["reader", "key"], unique=True)
    waiting, leased = sa.text("state = 'pending'"), sa.text("lease_real IS NOT NULL")
    op.create_index(
        "outbox_waiting",
        "outbox",
        ["rank", "id"],
        sqlite_where=waiting,
        postgresql_where=waiting,
    )
    op.create_index(
        "outbox_leased",
        "outbox",
        ["lease_real"],
        sqlite_where=leased,
        postgresql_where=leased,
    )
    op.create_index("outbox_receipt", "outbox", ["chat", "message"])
