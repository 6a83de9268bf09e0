"""Modules that come after the first answer: who imports one before is told so, and asks again when it is here."""

from __future__ import annotations

import sys
from importlib import invalidate_caches
from pkgutil import get_data


class NotHereYet(BaseException):
    """A module is asked for that is still on its way.

    No ImportError, which code that can do without a module would take for its absence, and go on otherwise.
    """


class Expected:
    """Asked last for a module that nobody found."""

    def __init__(self, names: list[str]) -> None:
        self.names = frozenset(names)

    def find_spec(self, name: str, *_: object) -> None:
        """Return nothing, as for any unknown module. Raises: NotHereYet."""
        if name in self.names:
            raise NotHereYet(name)


def expect_modules() -> None:
    """Note the modules that the archive lacks and says it lacks."""
    listed = get_data("site_assets.render", "later.txt") or b""
    sys.meta_path.append(Expected(listed.decode().split()))


def all_here() -> None:
    """Find the modules that stand in the archive now."""
    sys.meta_path[:] = [finder for finder in sys.meta_path if not isinstance(finder, Expected)]
    invalidate_caches()
