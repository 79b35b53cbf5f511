"""An index over the questions whose words still wait for a name."""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None

WAITS = sa.text("kind = 'who' AND closed_how NOT IN ('answered', 'unanswered')")


def upgrade() -> None:
    op.create_index(
        "ix_question_waits_for_a_name", "question", ["lapses_at"], sqlite_where=WAITS, postgresql_where=WAITS
    )
