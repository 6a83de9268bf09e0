"""Sizing of equipment grounding, grounded and grounding electrode conductors, and of bonds to piping and steel."""
