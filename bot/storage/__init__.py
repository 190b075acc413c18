"""The database: the only truth about people, their records and what is still to be said.

What lives here: tables, the store and its transactions, the outbox, migrations, backup. What
it must not know: the chat program, the clock (instants are arguments), what is due and why.
One store serves SQLite and PostgreSQL; what only SQLite needs stands in `sqlite.py`.
"""
