"""One case in two editions."""
