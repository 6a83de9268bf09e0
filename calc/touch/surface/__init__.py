"""The voltage that buried live metal gives the ground above it."""
