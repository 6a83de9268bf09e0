"""What a shock means: who can let go, what water changes, what the model leaves out."""

from __future__ import annotations

from calc.declare import NotCovered
from calc.rounded import at_most
from calc.touch.body import Currents
from calc.touch.lasting_current import BREATHING, CAN_KILL, CANNOT_LET_GO, FELT, HARDLY_FELT, LET_GO
from calc.touch.shock_fields import (
    DRY,
    FOOT_FOOT,
    HAND_FEET,
    HAND_HAND,
    HANDS_FEET,
    SALT_WET,
    WATER_WET,
)
from calc.touch.surface_words import feel_a_tingle
from calc.words import Sentence, say
from calc.working import Working

WET_CONTACT = "touch/wet_contact_limit"
INTERRUPTER_VOLTAGE = "fault/interrupter_class_a_voltage"
PATH_WORDS = {
    HAND_FEET: say("from one hand to both feet"),
    HAND_HAND: say("from hand to hand"),
    HANDS_FEET: say("from both hands to both feet"),
    FOOT_FOOT: say("from foot to foot"),
}
SKIN_WORDS = {DRY: say("dry"), WATER_WET: say("wet"), SALT_WET: say("wet with salt water or sweat")}
WORST_FIRST = (CAN_KILL, CANNOT_LET_GO, FELT, HARDLY_FELT)
ASSUMPTIONS = (
    say("alternating current of 50 or 60 Hz, the whole voltage across the body"),
    say("a large, firm contact, as when a hand grips"),
    say("no shoes, gloves or floor in the way"),
    say("hand to hand is as dangerous as hand to feet; the standards count it as less, which is disputed"),
    say("a grown person in good health; children, and people with a heart device, bear less"),
)


def held(many: bool, path: str) -> Sentence:
    """Give who a current holds. many: more than half of people. From foot to foot no hand holds on: the legs fail."""
    if path == FOOT_FOOT:
        return say("Most fall") if many else say("Legs cramp and some fall")
    return say("Most cannot let go") if many else say("Some cannot let go")


def in_the_water() -> NotCovered:
    """Give why someone in water has no number here."""
    return NotCovered(
        say(
            "In water the skin gives no help, current enters everywhere, and a few milliampere that only tingle on "
            "land can stop a swimmer's arms and drown them. No voltage is known to be harmless there."
        ),
        say(
            "Switch off first, throw something that floats, never jump in. Then see the pages on pools and docks, and "
            "have the water measured by a qualified person."
        ),
    )


def warn_first(condition: str, working: Working) -> None:
    """Warn what to do, before any number."""
    feel_a_tingle(working)
    working.warn(say("Someone is held: switch off first, do not touch them. Then call for help; no breath, begin CPR."))
    if condition != DRY:
        limit = working.cite(WET_CONTACT).rows[0]
        working.warn(
            say(
                "These numbers are for wet skin on land. In a pool, at a dock or in a bath it is worse. The code's "
                "{volt} V for wet contact leaves out everyone in water ({section}).",
                volt=limit["sine"],
                section=working.section(WET_CONTACT),
            )
        )


def tell_of_letting_go(currents: Currents, path: str, working: Working) -> None:
    """Record who can let go and from where breathing stops."""
    women, men = working.cite(LET_GO).rows
    breathing = working.cite(BREATHING).rows[0]
    words = {
        "women": women["nearly_all"],
        "half_women": women["half"],
        "men": men["nearly_all"],
        "half_men": men["half"],
        "most": at_most(currents.most),
    }
    working.step(
        say(
            "Of 200 women all but one let go at {women} mA, half at {half_women}; of men at {men} and {half_men} mA. "
            "Here it is up to {most} mA.",
            **words,
        ),
        cites=(LET_GO,),
    )
    if path == FOOT_FOOT:
        working.note(say("Whoever falls has hands and chest on the ground: then the current crosses the chest."))
    working.note(
        say(
            "A hand that cannot let go keeps the shock going. From {low} to {high} mA across the chest breathing may "
            "stop.",
            low=breathing["low"],
            high=breathing["high"],
        )
    )


def tell_of_interrupters(
    fastest: float | None, slowest: float | None, volt: float, path: str, working: Working
) -> None:
    """Record what a class A interrupter does and does not: its longest time, s, at the most and at the least current.

    None stands for a current at which it need not open. volt: across the body; above its rating no time is told.
    """
    rated = working.cite(INTERRUPTER_VOLTAGE).value
    if volt > rated:
        working.note(
            say("Class A ground-fault interrupters are made for {rated} V or less. Count on none here.", rated=rated)
        )
    elif fastest is None:
        working.note(say("A class A ground-fault interrupter need not open at this current."))
    else:
        words = {"fastest": at_most(fastest), "slowest": at_most(slowest) if slowest else ""}
        if slowest is None:
            working.note(
                say(
                    "A class A ground-fault interrupter opens within {fastest} s at the most current. In people who "
                    "take little it need not open.",
                    **words,
                )
            )
        else:
            working.note(
                say(
                    "A class A ground-fault interrupter opens within {fastest} s at the most current, {slowest} s at "
                    "the least.",
                    **words,
                )
            )
        working.note(say("It shortens a shock and does not make it smaller."))
    working.note(say("It sees only current that leaves the circuit. A hand on each of its two wires it does not see."))
    if path == HAND_HAND:
        working.note(say("From hand to hand the current crosses the chest."))


def state_the_body(working: Working) -> None:
    """Note that this is a model of people, and what it assumes."""
    working.note(say("A model for teaching and checking: people differ threefold. Never try it on anyone."))
    for assumption in ASSUMPTIONS:
        working.note(say("Assumed: {assumption}", assumption=assumption))
