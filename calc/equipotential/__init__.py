"""Planes of one voltage: around pools, under livestock, beside water. What is bonded, with what, and why."""
