"""The one error for what a person can mend."""


class Mendable(Exception):
    """Something that the person at the command line can mend; its text is one clear line.

    The program prints it on standard error and ends with 1. It never holds a token, a
    message's text or a value.
    """
