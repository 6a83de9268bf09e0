"""Every calculator by slug, in the order a reader meets them. Each is loaded when it is first asked for."""

from calc.comparison.compare_editions import compare_editions
from calc.fault.available_fault_current import available_fault_current
from calc.fault.longest_return_path import longest_return_path
from calc.fault.take_a_bond_away import take_a_bond_away
from calc.fault.device_clearing import device_clearing
from calc.fault.ground_fault_loop import ground_fault_loop
from calc.fault.jumper_withstand import jumper_withstand
from calc.fault.longest_return_path import longest_return_path
from calc.fault.stray_neutral_current import stray_neutral_current
from calc.electrodes.electrode_resistance import electrode_resistance
from calc.electrodes.measured_electrode import measured_electrode
from calc.fault.earth_only_return import earth_only_return
from calc.grounding.equipment_grounding_conductor import equipment_grounding_conductor
from calc.grounding.grounded_conductor import grounded_conductor
from calc.grounding.grounding_electrode_conductor import grounding_electrode_conductor
from calc.grounding.structural_metal_bonding import structural_metal_bonding
from calc.grounding.water_pipe_bonding import water_pipe_bonding
from calc.jumpers.equipment_bonding_jumper import equipment_bonding_jumper
from calc.jumpers.main_bonding_jumper import main_bonding_jumper
from calc.jumpers.supply_side_bonding_jumper import supply_side_bonding_jumper
from calc.jumpers.system_bonding_jumper import system_bonding_jumper
from calc.naming.conductor_name import conductor_name
from calc.raceways.buried_metal_elbow import buried_metal_elbow
from calc.raceways.knockouts_over_250_volts import knockouts_over_250_volts
from calc.raceways.raceway_as_grounding_path import raceway_as_grounding_path
from calc.schedule.generator_schedule import generator_schedule
from calc.schedule.separate_building_schedule import separate_building_schedule
from calc.schedule.service_schedule import service_schedule
from calc.schedule.transformer_schedule import transformer_schedule

CALCULATORS = {
    each.slug: each
    for each in (
        conductor_name,
        service_schedule,
        transformer_schedule,
        generator_schedule,
        separate_building_schedule,
        main_bonding_jumper,
        system_bonding_jumper,
        supply_side_bonding_jumper,
        equipment_bonding_jumper,
        equipment_grounding_conductor,
        grounded_conductor,
        grounding_electrode_conductor,
        water_pipe_bonding,
        structural_metal_bonding,
        raceway_as_grounding_path,
        buried_metal_elbow,
        knockouts_over_250_volts,
        available_fault_current,
        ground_fault_loop,
        longest_return_path,
        take_a_bond_away,
        stray_neutral_current,
        device_clearing,
        jumper_withstand,
        earth_only_return,
        electrode_resistance,
        measured_electrode,
        compare_editions,
    )
}  # fmt: skip
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
    "fault/available-fault-current",
    "fault/ground-fault-loop",
    "fault/longest-return-path",
    "fault/stray-neutral-current",
    "fault/device-clearing",
    "fault/jumper-withstand",
    "fault/earth-only-return",
    "electrodes/electrode-resistance",
    "electrodes/measured-electrode",
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
