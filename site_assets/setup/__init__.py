"""Prepares a bare machine: uv, Python, packages, Node's packages; a browser and a circuit simulator for the tests.

Runs on the standard library of Python 3.11, before anything is installed.
"""
