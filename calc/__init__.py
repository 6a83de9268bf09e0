"""Electrical bonding and grounding, computed: pure Python that knows no web page."""

from calc.catalogue import CALCULATORS
from calc.editions import EDITIONS
from calc.grounding.grounding_electrode_conductor import grounding_electrode_conductor
from calc.jumpers.main_bonding_jumper import main_bonding_jumper

__all__ = ["CALCULATORS", "EDITIONS", "grounding_electrode_conductor", "main_bonding_jumper"]
