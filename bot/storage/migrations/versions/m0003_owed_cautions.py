"""Finding the cautions that did not surely reach somebody without reading all said to them."""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the index."""
    owed = sa.text("kind = 'caution' AND state IN ('expired', 'unsure')")
    op.create_index("outbox_owed", "outbox", ["reader"], sqlite_where=owed, postgresql_where=owed)
