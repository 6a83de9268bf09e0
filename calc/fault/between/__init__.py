"""The voltage between two metal parts, bonded and apart."""
