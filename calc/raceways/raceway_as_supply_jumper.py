"""What the entries of a metal raceway need that is itself the supply-side bonding jumper of a derived system.

One answer for two questions: of an entry (bonding at a knockout) and of the raceway (supply-side bonding jumper).
"""

from __future__ import annotations

from calc.messages import Message, message
from calc.trace import Trace

NONFLEXIBLE = ("rigid-metal-conduit", "intermediate-metal-conduit", "electrical-metallic-tubing", "metal-wireway")
PATH = "places/reason_for_bonding"
OVER = "raceways/over_250_volts_to_ground"


def may_be_supply_jumper(raceway: str) -> bool:
    """Tell whether `raceway` is of a kind that may be the supply-side bonding jumper of a derived system."""
    return raceway in NONFLEXIBLE


def bridged_as_path(trace: Trace) -> Message:
    """Return why rings and oversized knockouts are bridged there at any voltage, and what of it is the code's."""
    return message(
        "Where the raceway is the supply-side bonding jumper, install bonding jumpers around oversized knockouts, and "
        "around rings unless the box is listed for bonding through them: the entry carries the full fault current "
        "({path}). Over {volt} V to ground, the code requires it ({over}); below that, it is common practice, no "
        "source.",
        volt=trace.cite(OVER).value,
        path=trace.section(PATH),
        over=trace.section(OVER),
    )
