"""Electrical bonding and grounding, computed: pure Python that knows no web page."""

from calc.catalogue import CALCULATORS
from calc.editions import EDITIONS
from calc.jumpers.main_bonding_jumper import main_bonding_jumper
from calc.jumpers.system_bonding_jumper import system_bonding_jumper

__all__ = ["CALCULATORS", "EDITIONS", "main_bonding_jumper", "system_bonding_jumper"]
