"""The sentences in English."""
