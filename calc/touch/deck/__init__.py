"""The voltage that a bonded pool leaves on its deck."""
