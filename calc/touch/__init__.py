"""Voltage on the ground and what a body takes from it."""
