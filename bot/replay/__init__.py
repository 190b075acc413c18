"""A story on virtual time: the live parts, with only the two edges exchanged."""
