"""The finite domain over which every release tells which sizing answers changed. It is declared here and nowhere else.

Each grid is a table of a field to its values, as they are written; all their combinations are asked, the last field
fastest. A release says of these answers whether each is the same as before; it says nothing of others.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator, Mapping
from itertools import product

from calc.registry import CALCULATORS

METALS = ("copper", "aluminum")
SETS = ("1", "2", "3", "5")
SIZES = (
    *("8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0", "250kcmil", "300kcmil", "350kcmil", "400kcmil"),
    *("500kcmil", "600kcmil", "700kcmil", "750kcmil", "800kcmil", "900kcmil", "1000kcmil", "1250kcmil", "1750kcmil"),
)
DEVICES = (
    *("15", "20", "25", "30", "40", "50", "60", "70", "90", "100", "110", "150", "200", "225", "300", "400", "450"),
    *("500", "600", "700", "800", "1000", "1200", "1600", "2000", "2500", "3000", "4000", "5000", "6000"),
)
LENGTHS = ("5", "6", "7")
_SUPPLY = {"conductor_metal": METALS, "metal": METALS, "sets": SETS, "conductor": SIZES}
_DEVICE = {"metal": METALS, "device": DEVICES}
_FLEXIBLE = ("flexible-metal-conduit", "liquidtight-flexible-metal-conduit", "flexible-metallic-tubing")
_RIGID = ("rigid-metal-conduit", "electrical-metallic-tubing", "nonmetallic-raceway", "metal-clad-cable")

DOMAIN: Mapping[str, tuple[Mapping[str, tuple[str, ...]], ...]] = {
    "main-bonding-jumper": (_SUPPLY,),
    "system-bonding-jumper": (_SUPPLY,),
    "supply-side-bonding-jumper": (_SUPPLY, {"sets": ("2", "3"), "raceways": ("1", "2", "3"), "conductor": SIZES}),
    "grounded-conductor": ({"place": ("service-disconnect", "first-disconnect"), **_SUPPLY},),
    "grounding-electrode-conductor": (
        _SUPPLY,
        {"metal": METALS, "electrode": ("rod", "concrete-encased"), "conductor": SIZES},
    ),
    "water-pipe-bonding": (
        {"piping": ("water",), **_SUPPLY},
        {"piping": ("water-isolated-unit", "other-metal"), **_DEVICE},
    ),
    "structural-metal-bonding": (_SUPPLY,),
    "buried-metal-elbow": (
        {"circuit": ("service",), "cover": ("10",), **_SUPPLY},
        {"circuit": ("feeder-or-branch",), "cover": ("10", "17", "18"), **_DEVICE},
    ),
    "equipment-grounding-conductor": (
        _DEVICE,
        {"sets": ("1", "2", "3"), "device": DEVICES, "installed_conductor": ("8", "4", "3/0", "500kcmil")},
    ),
    "equipment-bonding-jumper": (
        _DEVICE,
        {"routing": ("outside",), "length": LENGTHS, "device": DEVICES},
    ),
    "raceway-as-grounding-path": (
        {"raceway": _RIGID, "listed": ("yes",), **_DEVICE},
        {"raceway": _FLEXIBLE, "trade_size": ("1/2", "3/4"), "length": LENGTHS, "device": DEVICES[:8]},
        {"raceway": _FLEXIBLE[:2], "trade_size": ("1", "1-1/4", "1-1/2"), "length": LENGTHS, "device": DEVICES[:8]},
    ),
    "knockouts-over-250-volts": (
        {
            "place": ("load-side", "service"),
            "knockout": ("right-size", "rings", "oversized"),
            "raceway": ("rigid-metal-conduit", "electrical-metallic-tubing", "flexible-metal-conduit"),
            "system": ("208Y/120", "480Y/277", "600Y/347"),
        },
    ),
}


def inputs_of(slug: str) -> Iterator[dict[str, str]]:
    """Return every case of a calculator in the domain, in the order of the record."""
    for grid in DOMAIN[slug]:
        for values in product(*grid.values()):
            yield dict(zip(grid, values, strict=True))


def answers(slug: str, edition: str) -> list[str]:
    """Return what a calculator answers to each case: the code of its answer, the fields to correct, not-covered."""
    calculator = CALCULATORS[slug]
    results = (calculator.work([("edition", edition), *inputs.items()]) for inputs in inputs_of(slug))
    return [
        f"fix:{','.join(each.field for each in result.fix)}" if result.outcome == "fix" else result.answer_code
        for result in results
    ]


def declared(slug: str) -> str:
    """Return a short name for what is asked of a calculator; another domain has another name."""
    return hashlib.sha256(json.dumps(DOMAIN[slug]).encode()).hexdigest()[:12]
