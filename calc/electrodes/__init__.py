"""Electrodes in the earth: what resistance they may have, and what a reading of one is worth."""
