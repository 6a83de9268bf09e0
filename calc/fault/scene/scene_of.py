"""The scene that the fields describe: its impedances from sizes, lengths, bonds and what is wrong with them."""

from __future__ import annotations

from typing import Any

from calc.conductors.impedance import impedance
from calc.data_file import Data
from calc.fault.scene.scene import GOOD_JOINT, Scene
from calc.fault.source.sources import line_to_ground_impedance, split_phase_source, transformer_source
from calc.raceways.return_impedance import between, return_impedance
from calc.rulebook import rule

HOT = 75  # °C: conductors in use let the least current through
VOLT = 120
MAX_STEEL = 2
SIZES = {
    "supply": ("2/0", "aluminum"),
    "feeder": ("6", "copper"),
    "branch": ("12", "copper"),
    "feeder-grounding-conductor": ("10", "copper"),
    "branch-grounding-conductor": ("12", "copper"),
}
FEEDER_RACEWAY = ("electrical-metallic-tubing", "1")
RATINGS = {"branch": 20, "feeder": 60, "supply": 100}
UTILITY: Data = dict(kva=25, percent_r=1.2, percent_x=1.6)
TRANSFORMER: Data = dict(system="208Y/120", kva=30, percent_r=2.0, percent_x=2.5)
DEGREES = {"utility": 180, "transformer": 120}
LOADS = {"load-a": 6.0, "load-b": 24.0}
SOURCE_ELECTRODE = 10.0
MACHINE_ELECTRODE = 25.0


def scene_of(
    *,
    source: str,
    fault: str,
    missing: str | None,
    loose: str | None,
    loose_ohm: float,
    added: str | None,
    touched: str,
    person_ohm: float,
    feeder_path: str,
    branch_path: str,
    loads: str,
    electrode_ohm: float,
    supply_length: float,
    feeder_length: float,
    branch_length: float,
    edition: str,
    degrees: float = HOT,
    volt: float = VOLT,
    steel: float = MAX_STEEL,
) -> Scene:
    """Return the scene for values of the fields in `calc.fault.scene.scene_fields`.

    degrees: conductor temperature, °C; volt: at the source; steel: place of a raceway between its low (0), likely (1)
    and high (2) impedance. The defaults let the least current through.
    """
    gone, shaky, extra = (set(each.split(",") if each else ()) for each in (missing, loose, added))
    supplied = split_phase_source(**UTILITY) if source == "utility" else transformer_source(**TRANSFORMER)

    def run(name: str, feet: float) -> complex:
        size, metal = SIZES[name]
        return impedance(size, metal, "nonmetallic", degrees) * feet

    runs = {
        "supply-hot-a": run("supply", supply_length),
        "supply-hot-b": run("supply", supply_length),
        "supply-neutral": run("supply", supply_length),
        "feeder-hot-a": run("feeder", feeder_length),
        "feeder-hot-b": run("feeder", feeder_length),
        "feeder-neutral": run("feeder", feeder_length),
        "branch-hot": run("branch", branch_length),
    }
    bonds = {
        "main-bonding-jumper": GOOD_JOINT,
        "supply-side-bonding-jumper": GOOD_JOINT,
        "feeder-grounding-conductor": run("feeder-grounding-conductor", feeder_length),
        "feeder-raceway": between(return_impedance(*FEEDER_RACEWAY), steel) * feeder_length,
        "branch-grounding-conductor": run("branch-grounding-conductor", branch_length),
        "flexible-raceway": rule("fault/flexible_raceway_resistance", edition).value,
        "neutral-bond-at-panel": GOOD_JOINT if "neutral-bond-at-panel" in extra else None,
    }
    if feeder_path == "wire":
        bonds["feeder-raceway"] = None
    elif feeder_path == "raceway":
        bonds["feeder-grounding-conductor"] = None
    if branch_path == "wire":
        bonds["flexible-raceway"] = None
    elif branch_path == "flexible-raceway":
        bonds["branch-grounding-conductor"] = None
    whole: dict[str, Any] = runs | bonds  # ohm, None for what is missing
    for name in shaky:
        for branch in _branches_of(name, whole)[:1]:  # a loose raceway leaves the wire beside it tight
            whole[branch] += loose_ohm
    for name in gone:
        for branch in _branches_of(name, whole):
            whole[branch] = None
    return Scene(
        volt=volt,
        source=line_to_ground_impedance(supplied),
        degrees=DEGREES[source],
        runs={name: whole[name] for name in runs},
        bonds={name: whole[name] for name in bonds},
        electrodes={
            "source-electrode": SOURCE_ELECTRODE,
            "service-electrode": None if "electrode-on-enclosure" in extra else electrode_ohm,
            "electrode-on-enclosure": electrode_ohm if "electrode-on-enclosure" in extra else None,
            "machine-electrode": MACHINE_ELECTRODE if "machine-electrode" in extra else None,
        },
        loads=LOADS if loads == "on" else {},
        fault=None if fault == "none" else fault,
        touched=None if touched == "none" else touched,
        person=person_ohm,
    )


def _branches_of(name: str, whole: dict[str, complex | None]) -> list[str]:
    """Return the branches of a bond that are there, the raceway first."""
    named = {
        "feeder-return": ("feeder-raceway", "feeder-grounding-conductor"),
        "branch-return": ("flexible-raceway", "branch-grounding-conductor"),
    }.get(name, (name,))
    return [branch for branch in named if whole.get(branch) is not None]
