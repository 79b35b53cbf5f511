"""One PostgreSQL database for all tests of a process, emptied between them: to make one a test took half a second.

What a fresh database holds is kept beside the tables, in a schema of its own, and put back; numbers start anew. Where
a test changed the tables themselves the database is made again.
"""

from sqlalchemy import Connection, create_engine, text

# Of a database that has just been set up: its rows and how far its numbers have come.
KEEP = """
DO $$
DECLARE one record;
BEGIN
    CREATE SCHEMA kept;
    CREATE TABLE kept.numbers_so_far AS SELECT sequencename, last_value FROM pg_sequences WHERE schemaname = 'public';
    FOR one IN SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' LOOP
        EXECUTE format('CREATE TABLE kept.%1$I AS SELECT * FROM public.%1$I', one.name);
    END LOOP;
END $$
"""
EMPTY = """
DO $$
DECLARE one record; is_full boolean;
BEGIN
    SET LOCAL session_replication_role = replica;  -- rows go in any order
    FOR one IN SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' LOOP
        EXECUTE format('SELECT EXISTS (SELECT FROM public.%I)', one.name) INTO is_full;
        IF is_full AND pg_relation_size(format('public.%I', one.name)) > 200000 THEN
            EXECUTE format('TRUNCATE public.%I CASCADE', one.name);
        ELSIF is_full THEN
            EXECUTE format('DELETE FROM public.%I', one.name);
        END IF;
    END LOOP;
    FOR one IN SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' LOOP
        EXECUTE format('INSERT INTO public.%1$I SELECT * FROM kept.%1$I', one.name);
    END LOOP;
    FOR one IN SELECT now.sequencename AS name, was.last_value AS last
        FROM pg_sequences now JOIN kept.numbers_so_far was USING (sequencename)
        WHERE now.schemaname = 'public' AND now.last_value IS DISTINCT FROM was.last_value LOOP
        PERFORM setval(format('public.%I', one.name)::regclass, coalesce(one.last, 1), one.last IS NOT NULL);
    END LOOP;
END $$
"""
OTHERS = "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = :name AND pid <> pg_backend_pid()"
SHAPE = """
SELECT md5(string_agg(shape, ';' ORDER BY shape)) FROM (
    SELECT concat_ws(' ', c.relname, c.relkind, a.attname, a.atttypid, a.attnotnull) AS shape
    FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid AND NOT a.attisdropped
    WHERE c.relnamespace = 'public'::regnamespace
) AS shapes
"""
NAME = "emptied"


def named(uri: str, name: str) -> str:
    """Return a server's address with another database name."""
    base, _, query = uri.partition("?")
    return f"{base.rsplit('/', 1)[0]}/{name}?{query}"


class EmptiedDatabase:
    """The database that tests are lent one after the other, made from the server's `fresh`."""

    def __init__(self, server: str, admin: Connection) -> None:
        self.admin, self.url = admin, named(server, NAME)
        self.engine = create_engine(self.url, isolation_level="AUTOCOMMIT")
        self.make()
        self.shape = self.shape_now()

    def make(self) -> None:
        """Make it anew."""
        self.engine.dispose()
        self.admin.execute(text(f"DROP DATABASE IF EXISTS {NAME} WITH (FORCE)"))
        self.admin.execute(text(f"CREATE DATABASE {NAME} TEMPLATE fresh"))

    def shape_now(self) -> str:
        """Return what tells whether the tables, their columns and indexes are those of a fresh one."""
        with self.engine.connect() as connection:
            return str(connection.execute(text(SHAPE)).scalar_one())

    def empty(self) -> None:
        """Let it be as a fresh one, whoever is still connected to it."""
        self.admin.execute(text(OTHERS), {"name": NAME})
        self.engine.dispose()
        if self.shape_now() != self.shape:
            self.make()
            return
        with self.engine.connect() as connection:
            connection.execute(text(EMPTY))
