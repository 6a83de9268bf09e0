"""What a current through a body that nothing ends does: who is held, and from where breathing may stop."""

from __future__ import annotations

from calc.words import Sentence, say
from calc.working import Working

LET_GO, BREATHING = "touch/let_go", "touch/breathing"


def warn_of_a_lasting_current(milliampere: float, most: Sentence, working: Working) -> bool:
    """Warn if some cannot let go of a current that lasts, and tell whether it did. most: the current in words."""
    let_go = min(row["nearly_all"] for row in working.cite(LET_GO).rows)
    if milliampere <= let_go:
        return False
    words = {"most": most, "let_go": let_go, "breathing": working.cite(BREATHING).rows[0]["low"]}
    if milliampere >= words["breathing"]:
        working.warn(
            say(
                "Up to {most} through a body can kill: above {let_go} mA some cannot let go, from {breathing} mA "
                "breathing may stop. It lasts, so no limit for short shocks holds.",
                **words,
            )
        )
    else:
        working.warn(
            say(
                "Up to {most} through a body is more than the {let_go} mA at which some cannot let go. It lasts, so "
                "no limit for short shocks holds. Skin gives way and the current grows: it can kill.",
                **words,
            )
        )
    return True
