"""Fault currents, what opens, and the voltage of every metal part meanwhile."""
