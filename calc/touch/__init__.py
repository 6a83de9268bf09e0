"""Voltages that people can touch: soil above buried metal, pool decks, and what a body takes."""
