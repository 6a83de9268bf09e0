"""Every calculator by slug, in menu order. Each is loaded when it is first asked for."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from importlib import import_module
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from calc.calculator import Calculator

# Package and slug: the module and its calculator are named like the slug.
REGISTERED = (
    "identify/conductor-name",
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
    "fault/scene/take-a-bond-away",
    "fault/available/available-fault-current",
    "fault/loop/ground-fault-loop",
    "fault/return_path/longest-return-path",
    "fault/stray/stray-neutral-current",
    "fault/device/device-clearing",
    "fault/withstand/jumper-withstand",
    "fault/earth/earth-only-return",
    "fault/between/voltage-between",
    "electrodes/electrode-resistance",
    "electrodes/measured-electrode",
    "equipotential/pool-bonding-plan",
    "equipotential/livestock-equipotential-plane",
    "equipotential/waterside-equipotential-plane",
    "measure/bond-measurement",
    "measure/clamp-reading",
    "touch/surface/surface-voltage",
    "touch/shock/shock-limits",
    "touch/deck/deck-voltage",
    "comparison/compare-editions",
)


class Registry(Mapping[str, "Calculator"]):
    """Calculators by slug. A page asks for one of them, and a phone need not load the others."""

    def __init__(self, listed: tuple[str, ...]):
        self._packages = {slug: room for room, slug in (each.rsplit("/", maxsplit=1) for each in listed)}

    def __getitem__(self, slug: str) -> Calculator:
        """Return a calculator. Raises: KeyError for a slug that is not listed."""
        name = slug.replace("-", "_")
        return getattr(import_module(f"calc.{self._packages[slug].replace('/', '.')}.{name}"), name)

    def __iter__(self) -> Iterator[str]:
        """Return the slugs in their order."""
        return iter(self._packages)

    def __len__(self) -> int:
        """Return how many calculators there are."""
        return len(self._packages)

    def __contains__(self, slug: object) -> bool:
        """Tell whether a slug is listed, without loading it."""
        return slug in self._packages


CALCULATORS = Registry(REGISTERED)
