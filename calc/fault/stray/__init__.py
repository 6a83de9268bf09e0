"""Neutral current that runs over metal."""
