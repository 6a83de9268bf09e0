"""Voltages that people and animals can touch: on the ground, on a deck, across a body."""
