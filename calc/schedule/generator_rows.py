"""The rows that only a generator has: by its neutral, which makes it a source of its own or not."""

from __future__ import annotations

from calc.data_file import Data
from calc.jumpers.supply_side_bonding_jumper import supply_side_bonding_jumper
from calc.jumpers.supply_side_size import PARALLEL
from calc.messages import message
from calc.schedule.derived_source import AT_DISCONNECT, add_derived_source, ask_for_feeder_neutral
from calc.schedule.part_list import PartList

GENERATOR = message("Generator")


def add_own_system(parts: PartList, supply: Data, place: str, raceways: int, protected: bool) -> None:
    """Add the rows of a generator whose neutral is switched, so that it is a separately derived system.

    supply: conductor, sets, conductor_metal, metal. place: "source" or "first-disconnect". protected: a device is at
    the generator; the bond is then at the source, whatever `place` says.
    """
    parts.trace.step(
        message("The neutral is switched: the generator is a separately derived system."),
        cites=("grounding/generator_separately_derived",),
    )
    if protected and place == AT_DISCONNECT:
        parts.trace.warn(
            message(
                "With a breaker or fuse at the generator, the system bonding jumper is at the generator, not in a "
                "downstream disconnect."
            )
        )
    add_derived_source(parts, supply, "source" if protected else place, raceways, GENERATOR, device_at_source=protected)


def add_joined_neutral(parts: PartList, supply: Data, raceways: int, protected: bool) -> None:
    """Add the rows of a generator whose neutral stays joined to that of the service; parameters as above."""
    parts.trace.step(
        message(
            "The neutral is not switched: the generator is not a separately derived system. The neutral-to-ground bond "
            "is at the service."
        ),
        cites=("naming/same_system_as_service",),
    )
    parts.never(
        "neutral-bond",
        "naming/same_system_as_service",
        part=message("Neutral-to-ground bond at the generator"),
        start=message("Generator: neutral"),
        end=message("Generator: frame"),
        why=message("The neutral is bonded at the service. A second bond puts neutral current on metal."),
    )
    if protected:
        ask_for_feeder_neutral(parts, GENERATOR, message("Transfer switch"))
        return
    parts.size(
        "supply-side-bonding-jumper",
        supply_side_bonding_jumper,
        supply | {"place": "generator-joined-neutral", "raceways": raceways, "arrangement": "one-per-raceway"},
        part=message("Supply-side bonding jumper in each raceway"),
        start=message("Generator: frame"),
        end=message("First disconnect: grounding bar"),
        why=message("There is no overcurrent device ahead of it, so it is sized from the conductors."),
    )
    parts.ask(
        "neutral",
        "grounding/generator_fault_conductors",
        "naming/neutral_load",
        part=message("Neutral from the generator"),
        start=message("Generator: neutral, isolated from its frame"),
        end=message("First disconnect: neutral bar"),
        question=message(
            "What size does its load require? It also carries fault current from the service bond back to the "
            "generator, so it is no smaller than the supply-side bonding jumper; in parallel, {least} AWG or larger.",
            least=parts.trace.cite(PARALLEL).value,
        ),
    )


def ask_whether_it_is_fixed(parts: PartList) -> None:
    """Ask whether the set is portable or on a vehicle, which this list is not for."""
    parts.ask(
        "portable",
        "places/portable_generator",
        "places/vehicle_generator",
        part=message("Frame of a portable or vehicle-mounted generator"),
        start=message("Generator: frame"),
        end=message("What it feeds"),
        question=message(
            "Is the generator portable or vehicle-mounted? Then other rules apply; this schedule is for a permanently "
            "installed one."
        ),
    )
