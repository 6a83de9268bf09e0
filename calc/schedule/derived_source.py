"""The rows that transformer and generator share: bond of the new neutral, what runs to the first disconnect, where."""

from __future__ import annotations

from calc.data_file import Data
from calc.grounding.grounded_conductor import grounded_conductor
from calc.jumpers.supply_side_bonding_jumper import supply_side_bonding_jumper
from calc.jumpers.supply_side_size import PARALLEL
from calc.jumpers.system_bonding_jumper import system_bonding_jumper
from calc.messages import Message, message
from calc.schedule.part_list import PartList

AT_DISCONNECT = "first-disconnect"


def add_derived_source(
    parts: PartList, supply: Data, place: str, raceways: int, source: Message, *, device_at_source: bool = False
) -> None:
    """Add the system bonding jumper and, where no device is at the source, what runs to the first disconnect.

    place: "source" or "first-disconnect". supply: conductor, sets, conductor_metal, metal.
    """
    disconnect = message("First disconnect")
    bonded, other = (disconnect, source) if place == AT_DISCONNECT else (source, disconnect)
    parts.size(
        "system-bonding-jumper",
        system_bonding_jumper,
        supply | {"place": place},
        part=message("System bonding jumper"),
        start=message("{bonded}: neutral", bonded=bonded),
        end=message("{bonded}: its metal and the grounding bar", bonded=bonded),
        why=message("Gives fault current from this source its return path to the source."),
    )
    parts.never(
        "second-neutral-bond",
        "grounding/no_neutral_bond_past_system_jumper",
        part=message("Second neutral-to-ground bond"),
        start=message("{other}: neutral", other=other),
        end=message("{other}: its metal", other=other),
        why=message("Neutral current would flow on raceways and metal between the two."),
    )
    if device_at_source:
        ask_for_feeder_neutral(parts, source, disconnect)
        return
    parts.size(
        "supply-side-bonding-jumper",
        supply_side_bonding_jumper,
        supply | {"place": "separately-derived-system", "raceways": raceways, "arrangement": "one-per-raceway"},
        part=message("Supply-side bonding jumper in each raceway"),
        start=message("{source}: its metal", source=source),
        end=message("First disconnect: its metal and the grounding bar"),
        why=message(
            "Ahead of the first overcurrent device, this is the ground-fault return path for metal; a nonflexible "
            "metal raceway may serve instead."
        ),
    )
    if place == AT_DISCONNECT:
        parts.size(
            "grounded-conductor",
            grounded_conductor,
            supply | {"metal": supply["conductor_metal"], "place": AT_DISCONNECT, "raceways": raceways},
            part=message("Grounded conductor (neutral), at least"),
            start=message("{source}: neutral", source=source),
            end=message("First disconnect: neutral bar"),
            why=message("It carries fault current back, whatever the neutral load."),
        )
    else:
        parts.ask(
            "neutral",
            "naming/neutral_load",
            part=message("Neutral to the first disconnect"),
            start=message("{source}: neutral", source=source),
            end=message("First disconnect: neutral bar, isolated from metal"),
            question=message(
                "What size does its load require? With the system bonding jumper at the source, only the load sizes "
                "it. With that jumper in the first disconnect, it carries fault current and has a minimum size: choose "
                "that location."
            ),
        )


def ask_for_feeder_neutral(parts: PartList, source: Message, end: Message) -> None:
    """Ask for the neutral past a device: its load, and no smaller than the equipment grounding conductor."""
    parts.ask(
        "neutral",
        "naming/feeder_grounded_conductor",
        "naming/neutral_load",
        part=message("Neutral on the load side of the device"),
        start=message("{source}: neutral", source=source),
        end=message("{end}: neutral bar, isolated from metal", end=end),
        question=message(
            "What size does its load require? Use that size, but no smaller than the equipment grounding conductor "
            "required; in parallel, {least} AWG or larger.",
            least=parts.trace.cite(PARALLEL).value,
        ),
    )


def ask_for_outdoor_source(parts: PartList, source: Message) -> None:
    """Ask whether the source stands outdoors, where it has an electrode and its jumper at the source."""
    parts.ask(
        "outdoor-source",
        "jumpers/outdoor_source",
        part=message("Electrode and jumper at an outdoor source"),
        start=message("{source}: neutral", source=source),
        end=message("A grounding electrode at the source"),
        question=message(
            "Is it outside the building it feeds? Then it needs its own grounding electrode there, and the system "
            "bonding jumper at that point."
        ),
    )
