"""Every sentence the bot says.

What lives here: sentences, and the choosing and filling of them. A language is a set of frozen
dataclass instances with the same fields, so that a missing sentence is a type error. What must
not live here: any decision on whether something is said, and any sum.
"""
