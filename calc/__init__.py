"""Electrical bonding and grounding, computed: pure Python that knows no web page."""

from calc.catalogue import CALCULATORS
from calc.editions import EDITIONS
from calc.grounding.equipment_grounding_conductor import equipment_grounding_conductor
from calc.jumpers.main_bonding_jumper import main_bonding_jumper

__all__ = ["CALCULATORS", "EDITIONS", "equipment_grounding_conductor", "main_bonding_jumper"]
