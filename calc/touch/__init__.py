<<<<<<< HEAD
"""Voltage on the ground and what a body takes from it."""
=======
"""Voltages that people can touch: soil above buried metal, pool decks, and what a body takes."""
>>>>>>> deck
