"""What a current through a body that nothing ends does: who is held, and from where breathing may stop."""

from __future__ import annotations

from calc.messages import Message, message
from calc.trace import Trace

LET_GO, BREATHING, PERCEPTION = "touch/let_go", "touch/breathing", "touch/perception"
CAN_KILL, CANNOT_LET_GO, FELT, HARDLY_FELT = "can-kill", "cannot-let-go", "felt", "hardly-felt"


def lasting_verdict(most: float, trace: Trace) -> str:
    """Judge a current, mA, that nothing ends: from where breathing may stop it can kill."""
    if most >= trace.cite(BREATHING).rows[0]["low"]:
        return CAN_KILL
    if most > least_let_go(trace):
        return CANNOT_LET_GO
    return FELT if most > trace.cite(PERCEPTION).value else HARDLY_FELT


def least_let_go(trace: Trace) -> float:
    """Return the current, mA, at which some grown people can no longer let go."""
    return min(row["nearly_all"] for row in trace.cite(LET_GO).rows)


def warn_of_a_lasting_current(milliampere: float, most: Message, trace: Trace) -> bool:
    """Warn if some cannot let go of a current that lasts, and tell whether it did. most: the current in words."""
    let_go = least_let_go(trace)
    if milliampere <= let_go:
        return False
    breathing = trace.cite(BREATHING).rows[0]["low"]
    words = {"most": most, "let_go": let_go, "breathing": breathing}
    if milliampere >= breathing:
        trace.warn(
            message(
                "Up to {most} through a body can kill: above {let_go} mA some cannot let go, from {breathing} mA "
                "breathing may stop. It lasts, so no limit for short shocks applies.",
                **words,
            ),
            grave=True,
        )
    else:
        trace.warn(
            message(
                "Up to {most} through a body is more than the {let_go} mA at which some cannot let go. It lasts, so "
                "no limit for short shocks applies. Skin breaks down and the current grows: it can kill.",
                **words,
            ),
            grave=True,
        )
    return True
