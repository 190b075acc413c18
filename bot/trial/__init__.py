"""A chat on this machine: a stand-in Bot API server, a chat page, and stories played live.

What lives here: the server that the real client talks to over loopback, faults to order of it,
a ledger of what the bot sent, and the stepping clock that plays a story through the live parts.
What it must not know: how a message is read or answered. Nothing here decides what the bot says.
"""
