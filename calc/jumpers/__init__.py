"""Sizing of bonding jumpers: one calculator a file."""
