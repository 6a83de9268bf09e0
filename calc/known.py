"""A value that may be missing by its type, and is there by the cases that came before."""

from __future__ import annotations


def known[T](value: T | None) -> T:
    """Return a value that the cases before have made sure of. Raises: TypeError where they have not: the code is wrong.

    >>> known(0)
    0
    """
    if value is None:
        raise TypeError("a value that must be known here is missing")
    return value
