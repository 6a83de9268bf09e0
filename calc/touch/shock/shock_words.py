"""What a shock means: who can let go, what water changes, what the model leaves out."""

from __future__ import annotations

from calc.calculator import NotCovered
from calc.messages import Message, message
from calc.rounded import at_most
from calc.touch.shock.body import Currents
from calc.touch.shock.lasting_current import BREATHING, CAN_KILL, CANNOT_LET_GO, FELT, HARDLY_FELT, LET_GO
from calc.touch.shock.shock_fields import (
    DRY,
    FOOT_FOOT,
    HAND_FEET,
    HAND_HAND,
    HANDS_FEET,
    SALT_WET,
    WATER_WET,
)
from calc.touch.surface.surface_words import feel_a_tingle
from calc.trace import Trace

WET_CONTACT = "touch/wet_contact_limit"
INTERRUPTER_VOLTAGE = "fault/interrupter_class_a_voltage"
PATH_WORDS = {
    HAND_FEET: message("from one hand to both feet"),
    HAND_HAND: message("from hand to hand"),
    HANDS_FEET: message("from both hands to both feet"),
    FOOT_FOOT: message("from foot to foot"),
}
SKIN_WORDS = {DRY: message("dry"), WATER_WET: message("wet"), SALT_WET: message("wet with salt water or sweat")}
WORST_FIRST = (CAN_KILL, CANNOT_LET_GO, FELT, HARDLY_FELT)
ASSUMPTIONS = (
    message("alternating current of 50 or 60 Hz, the whole voltage across the body"),
    message("a large, firm contact, as when a hand grips"),
    message("no shoes, gloves or floor in the way"),
    message(
        "hand to hand is treated as just as dangerous as hand to feet; the standards rate it lower, which is disputed"
    ),
    message("a healthy adult; children, and people with a heart device, can take less"),
)


def held(many: bool, path: str) -> Message:
    """Return who a current holds. many: more than half of people. From foot to foot no hand holds on: the legs fail."""
    if path == FOOT_FOOT:
        return message("Most fall") if many else message("Legs cramp and some fall")
    return message("Most cannot let go") if many else message("Some cannot let go")


def in_the_water() -> NotCovered:
    """Return why someone in water has no number here."""
    return NotCovered(
        message(
            "In water the skin gives no protection, current enters everywhere, and a few milliamps that only tingle "
            "on land can stop a swimmer's arms and drown them. No voltage is known to be harmless there."
        ),
        message(
            "Shut the power off first, throw something that floats, never jump in. Then see the pages on pools and "
            "docks, and have the water measured by a qualified person."
        ),
    )


def warn_first(condition: str, trace: Trace) -> None:
    """Warn what to do, before any number."""
    feel_a_tingle(trace)
    trace.warn(
        message(
            "If someone is held: shut the power off first, do not touch them. Then call for help; if they are not "
            "breathing, start CPR."
        ),
        grave=True,
    )
    if condition != DRY:
        limit = trace.cite(WET_CONTACT).rows[0]
        trace.warn(
            message(
                "These numbers are for wet skin on land. In a pool, at a dock or in a bath it is worse. The code's "
                "{volt} V for wet contact leaves out everyone in water ({section}).",
                volt=limit["sine"],
                section=trace.section(WET_CONTACT),
            )
        )


def tell_of_letting_go(currents: Currents, path: str, trace: Trace) -> None:
    """Record who can let go and from where breathing stops."""
    women, men = trace.cite(LET_GO).rows
    breathing = trace.cite(BREATHING).rows[0]
    words = {
        "women": women["nearly_all"],
        "half_women": women["half"],
        "men": men["nearly_all"],
        "half_men": men["half"],
        "most": at_most(currents.most),
    }
    trace.step(
        message(
            "Let-go current: of 200 women, all but one can let go at {women} mA, half at {half_women}; men, at {men} "
            "and {half_men} mA. Here it is up to {most} mA.",
            **words,
        ),
        cites=(LET_GO,),
    )
    if path == FOOT_FOOT:
        trace.note(
            message("A person who falls has hands and chest on the soil or floor: then the current crosses the chest.")
        )
    trace.note(
        message(
            "A hand that cannot let go keeps the shock going. From {low} to {high} mA across the chest breathing may "
            "stop.",
            low=breathing["low"],
            high=breathing["high"],
        )
    )


def tell_of_interrupters(
    fastest: float | None, slowest: float | None, volt: float, path: str, trace: Trace
) -> None:
    """Record what a class A interrupter does and does not: its longest time, s, at the most and at the least current.

    None stands for a current at which it need not open. volt: across the body; above its rating no time is told.
    """
    rated = trace.cite(INTERRUPTER_VOLTAGE).value
    if volt > rated:
        trace.note(message("Class A GFCIs are made for {rated} V or less. Count on none here.", rated=rated))
    elif fastest is None:
        trace.note(message("A Class A GFCI is not required to open at this current."))
    else:
        words = {"fastest": at_most(fastest), "slowest": at_most(slowest) if slowest else ""}
        if slowest is None:
            trace.note(
                message(
                    "A Class A GFCI opens within {fastest} s at the most current. For people who get little, it is "
                    "not required to open.",
                    **words,
                )
            )
        else:
            trace.note(
                message(
                    "A Class A GFCI opens within {fastest} s at the most current, {slowest} s at the least.",
                    **words,
                )
            )
        trace.note(message("It makes a shock shorter, not smaller."))
    trace.note(
        message("It sees only current that leaves the circuit. It does not see a hand on each of its two wires.")
    )
    if path == HAND_HAND:
        trace.note(message("From hand to hand the current crosses the chest."))


def state_the_body(trace: Trace) -> None:
    """Note that this is a model of people, and what it assumes."""
    trace.note(message("A model for teaching and checking: people differ threefold. Never try it on anyone."))
    for assumption in ASSUMPTIONS:
        trace.note(message("Assumed: {assumption}", assumption=assumption))
