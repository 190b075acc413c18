"""The sentences in Spanish: neutral Latin American, `usted`, as a clinic speaks to older adults."""
