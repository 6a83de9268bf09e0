"""The figures of supply-side bonding jumpers against texts read apart from the rules.

230.43(15) in NFPA 70-2017 and California 2022 (2020), 230.43(14) in NFPA 70-2023: flexible conduit, 6 ft (1.8 m).
"""

from calc.editions import EDITIONS
from calc.rulebook import rule


def test_flexible_conduit_on_a_service_is_six_feet_or_shorter():
    for edition in EDITIONS:
        assert rule("jumpers/flexible_service_raceway", edition).value == 6
