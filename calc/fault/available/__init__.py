"""The available fault current, for the interrupting ratings of equipment."""
