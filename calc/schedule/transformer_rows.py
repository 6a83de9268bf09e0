"""The rows that only a transformer has: its primary, its electrode, and secondary conductors that were taken."""

from __future__ import annotations

from calc.data_file import Data
from calc.grounding.electrode_conductor_place import SEVERAL_DERIVED
from calc.grounding.electrode_limit import DRIVEN, ELECTRODES
from calc.grounding.equipment_grounding_conductor import equipment_grounding_conductor
from calc.grounding.grounding_electrode_conductor import grounding_electrode_conductor
from calc.grounding.supply_conductors import shown_set
from calc.messages import Message, message
from calc.schedule.electrodes import warn_of_a_lone_electrode
from calc.schedule.equipment_conductor import INCREASE
from calc.schedule.part_list import PartList
from calc.shared_fields import METAL_WORDS
from calc.trace import shown_number


def add_primary(parts: PartList, device: float | None, metal: str) -> None:
    """Add the equipment grounding conductor of the primary by its device, or ask what carries a fault back there."""
    part = message("Primary equipment grounding conductor")
    start, end = message("Panel that feeds the transformer"), message("Transformer enclosure")
    if device is None:
        parts.ask(
            "equipment-grounding-conductor-primary",
            "naming/equipment_grounding_conductor_size",
            "naming/equipment_conductor_types",
            part=part,
            start=start,
            end=end,
            question=message(
                "What is the fault return path for the primary? For a wire, enter the primary overcurrent device; for "
                "a metal raceway or cable, check that it qualifies."
            ),
        )
        return
    parts.size(
        "equipment-grounding-conductor-primary",
        equipment_grounding_conductor,
        {"device": device, "metal": metal},
        part=part,
        start=start,
        end=end,
        why=message(
            "A primary fault to the case opens the primary overcurrent device through it. It must be increased where "
            "the hot conductors are upsized ({section}).",
            section=parts.trace.section(INCREASE),
        ),
    )


def add_electrode(parts: PartList, electrode: str, inputs: Data, shared: bool, bonded: Message) -> None:
    """Add the grounding electrode conductor to `electrode`, and ask whether that is joined to the building's others.

    inputs: conductor, sets, conductor_metal, metal, ring. shared: several sources have one conductor, with taps.
    """
    parts.size(
        "grounding-electrode-conductor",
        grounding_electrode_conductor,
        inputs | {"electrode": electrode, "place": SEVERAL_DERIVED if shared else "separately-derived-system"},
        part=message("Grounding electrode conductor"),
        start=message("Point of the system bonding jumper, through a tap") if shared else bonded,
        end=ELECTRODES[electrode],
        why=message("Connects the new neutral and its metal to the building's grounding electrode system."),
    )
    if electrode in DRIVEN:
        warn_of_a_lone_electrode([electrode], parts.trace)
    parts.ask(
        "other-electrodes",
        "grounding/derived_electrode",
        "naming/electrodes_joined",
        part=message("The building's other electrodes"),
        start=ELECTRODES[electrode],
        end=message("Each other electrode of the building"),
        question=message(
            "Is this electrode bonded to all others of the building? An indoor transformer uses the building's "
            "electrodes; its own ground rod does not replace them."
        ),
    )


def ask_for_conductor(parts: PartList, conductor: str, sets: int, metal: str, device: float) -> None:
    """Ask which secondary conductors run there, where `conductor` was taken and not entered."""
    parts.ask(
        "secondary-conductors",
        "conductors/secondary_no_next_size_up",
        part=message("Secondary conductors"),
        start=message("Transformer"),
        end=message("First disconnect"),
        question=message(
            "Which conductors are installed? Assumed here: {conductor} {metal}, the smallest good for {device} A at 75 "
            "°C. Larger ones make the parts of this schedule larger: enter them.",
            conductor=shown_set(sets, conductor),
            metal=METAL_WORDS[metal],
            device=shown_number(device),
        ),
    )
