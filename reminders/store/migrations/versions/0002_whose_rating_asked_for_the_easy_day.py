"""Which session's rating alone asks for the next easy day."""

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    op.add_column("client", sa.Column("easy_session_id", sa.Integer(), nullable=True))
