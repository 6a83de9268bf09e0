"""Conductors by size label: how a size is written, its area, its ampacity."""
