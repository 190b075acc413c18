"""The record as files: JSON lines, CSV, FHIR, a printable page. Pure over a record; commands and delivery write."""
