"""Cutting a long text into what a chat program takes."""


def pieces(text: str, limit: int) -> list[str]:
    """Cut a text at line ends or spaces so that no piece is longer than `limit` UTF-16 units."""
    found: list[str] = []
    rest = text
    while len(rest.encode("utf-16-le")) // 2 > limit:
        head = rest[: limit // 2] if not rest.isascii() else rest[:limit]
        cut = max(head.rfind("\n"), head.rfind(" "))
        cut = cut if cut > 0 else len(head)
        found.append(rest[:cut].rstrip())
        rest = rest[cut:].lstrip()
    return [*found, rest] if rest else found
