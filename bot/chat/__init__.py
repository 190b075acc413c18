"""The chat: what comes in and what goes out, behind one port.

What lives here: the Bot API client, updates turned into `Incoming`, two ways of fetching
them, the sending pace, a recorder in its place. What it must not know: the database, turns,
what a message means.
"""
