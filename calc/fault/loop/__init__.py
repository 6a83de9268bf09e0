"""The loop of one ground fault: its current, what opens, and what stays on the metal."""
