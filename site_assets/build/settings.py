"""What mkdocs.yml says that every stage needs: the order of the menu, the name of the site, where it will stand."""

from __future__ import annotations

import os
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

import yaml

FILE = "mkdocs.yml"
DISK_EDITION = "handbook-disk.zip"  # at the top of the site
type Entry = str | dict[str, str | list[Entry]]  # of the menu: a page, or a heading and what stands below it


class _Loader(yaml.SafeLoader):
    """Reads `!ENV [NAME, otherwise]` as well, which mkdocs.yml has for the address."""


def _from_environment(loader: yaml.SafeLoader, node: yaml.SequenceNode) -> object:
    *names, otherwise = loader.construct_sequence(node)
    return next((os.environ[name] for name in names if name in os.environ), otherwise)


_Loader.add_constructor("!ENV", _from_environment)


@dataclass(frozen=True)
class MenuEntry:
    """A row of the menu: a page, "parts/bonding.html" and so on, or a heading with the pages below it."""

    title: str
    path: str = ""
    below: tuple[MenuEntry, ...] = ()

    @property
    def paths(self) -> tuple[str, ...]:
        """The pages below a heading, in order."""
        return tuple(entry.path for entry in self.below)


@dataclass(frozen=True)
class Settings:
    """`menu` is every page, "parts/bonding" and so on, in order, `entries` the same by heading."""

    name: str
    address: str
    menu: tuple[str, ...]
    description: str = ""
    entries: tuple[MenuEntry, ...] = ()


def settings(root: Path) -> Settings:
    """Return what the mkdocs.yml of a project says."""
    said = yaml.load((root / FILE).read_text(encoding="utf-8"), _Loader)  # noqa: S506 (it is a SafeLoader)
    menu = tuple(_pages(said["nav"]))
    entries = tuple(_entries(said["nav"]))
    return Settings(said["site_name"], said.get("site_url") or "", menu, said["site_description"], entries)


def _entries(nav: Sequence[dict[str, str | list[Entry]]]) -> Iterator[MenuEntry]:
    for row in nav:
        ((title, below),) = row.items()
        if isinstance(below, str):
            yield MenuEntry(title, f"{below.removesuffix('.md')}.html")
        else:
            yield MenuEntry(title, below=tuple(_entries([entry for entry in below if isinstance(entry, dict)])))


def _pages(entries: Sequence[Entry]) -> Iterator[str]:
    for entry in entries:
        below = next(iter(entry.values())) if isinstance(entry, dict) else entry
        if isinstance(below, str):
            yield below.removesuffix(".md")
        else:
            yield from _pages(below)
