"""Every calculator by slug, in the order a reader meets them. Each is loaded when it is first asked for."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from importlib import import_module
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from calc.declare import Calculator

# Room and slug: the module and its calculator are named like the slug.
LISTED = (
    "naming/conductor-name",
    "schedule/service-schedule",
    "schedule/transformer-schedule",
    "schedule/generator-schedule",
    "schedule/separate-building-schedule",
    "jumpers/main-bonding-jumper",
    "jumpers/system-bonding-jumper",
    "jumpers/supply-side-bonding-jumper",
    "jumpers/equipment-bonding-jumper",
    "grounding/equipment-grounding-conductor",
    "grounding/grounded-conductor",
    "grounding/grounding-electrode-conductor",
    "grounding/water-pipe-bonding",
    "grounding/structural-metal-bonding",
    "raceways/raceway-as-grounding-path",
    "raceways/buried-metal-elbow",
    "raceways/knockouts-over-250-volts",
    "fault/take-a-bond-away",
    "fault/available-fault-current",
    "fault/ground-fault-loop",
    "fault/longest-return-path",
    "fault/stray-neutral-current",
    "fault/device-clearing",
    "fault/jumper-withstand",
    "fault/earth-only-return",
    "fault/voltage-between",
    "electrodes/electrode-resistance",
    "electrodes/measured-electrode",
    "planes/pool-bonding-plan",
    "planes/livestock-equipotential-plane",
    "planes/waterside-equipotential-plane",
    "measure/bond-measurement",
    "measure/clamp-reading",
    "touch/surface-voltage",
    "touch/shock-limits",
    "touch/deck-voltage",
    "comparison/compare-editions",
)


class Catalogue(Mapping):
    """Calculators by slug. A page asks for one of them, and a phone need not load the others."""

    def __init__(self, listed: tuple[str, ...]):
        self._rooms = dict(reversed(each.split("/")) for each in listed)

    def __getitem__(self, slug: str) -> Calculator:
        """Give a calculator. Raises: KeyError for a slug that is not listed."""
        name = slug.replace("-", "_")
        return getattr(import_module(f"calc.{self._rooms[slug]}.{name}"), name)

    def __iter__(self) -> Iterator[str]:
        """Give the slugs in their order."""
        return iter(self._rooms)

    def __len__(self) -> int:
        """Give how many calculators there are."""
        return len(self._rooms)

    def __contains__(self, slug: object) -> bool:
        """Tell whether a slug is listed, without loading it."""
        return slug in self._rooms


CALCULATORS = Catalogue(LISTED)
