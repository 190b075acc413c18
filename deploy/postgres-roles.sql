-- Once for each bot, as the server's superuser, with psql:
--
--     psql -v owner_password=... -v bot_password=... -f deploy/postgres-roles.sql
--
-- `afterplate_owner` owns the tables: `migrate` and `copy` run as this role, and nothing else does.
-- `afterplate_bot` is what `serve` and the other commands run as: it reads and writes rows, and
-- can neither make, change nor drop a table. docs/postgresql.md tells more.
\set ON_ERROR_STOP on

CREATE ROLE afterplate_owner LOGIN PASSWORD :'owner_password';
CREATE ROLE afterplate_bot LOGIN PASSWORD :'bot_password';
CREATE DATABASE afterplate OWNER afterplate_owner ENCODING 'UTF8' TEMPLATE template0;

REVOKE ALL ON DATABASE afterplate FROM PUBLIC;
GRANT CONNECT ON DATABASE afterplate TO afterplate_bot;

\connect afterplate

ALTER SCHEMA public OWNER TO afterplate_owner;
REVOKE ALL ON SCHEMA public FROM PUBLIC;
GRANT USAGE ON SCHEMA public TO afterplate_bot;

-- Whatever `migrate` makes from now on, the bot may use: no grant is ever forgotten.
ALTER DEFAULT PRIVILEGES FOR ROLE afterplate_owner IN SCHEMA public
    GRANT SELECT, INSERT, UPDATE, DELETE ON TABLES TO afterplate_bot;
ALTER DEFAULT PRIVILEGES FOR ROLE afterplate_owner IN SCHEMA public
    GRANT USAGE, SELECT ON SEQUENCES TO afterplate_bot;
