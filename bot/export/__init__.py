"""The record as files: JSON lines, CSV, FHIR, a printable page.

What lives here: the forms that a record takes outside. What it must not know: the store, the
chat, drawing (a function that draws is handed in), the clock. Everything is a function from a
record to text or bytes; commands and delivery write them where they belong.
"""
