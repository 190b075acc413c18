"""Afterplate: paired glucose tests by text message.

The rooms and who may import whom: DEVELOPERS.md; the import rules of pyproject.toml hold them.
"""

__version__ = "0.1.0"
