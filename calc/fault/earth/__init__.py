"""The earth as the only way back for a fault."""
