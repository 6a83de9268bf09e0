"""Why current flows where none should: each cause, what to measure next, and what that reading tells."""

from __future__ import annotations

from dataclasses import dataclass

from calc.measure.clamp_fields import AT_THE_SERVICE, ELECTRODE, FEEDER, GROUNDING, PIPE
from calc.messages import Message, message


@dataclass(frozen=True)
class Cause:
    """A cause in words, the same inside a sentence, what to measure next, and what the next reading tells."""

    words: Message
    in_sentence: Message
    measure: Message
    tells: Message


NEUTRAL_LOSS, NEIGHBOR, SHARED, UTILITY = "neutral-loss", "neighbor", "shared-main", "utility"
SECOND_BOND, BORROWED, LEAK, FILTERS = "second-bond", "borrowed-neutral", "leak", "filters"
INDUCTION, METER = "induction", "meter"

CAUSES = {
    NEUTRAL_LOSS: Cause(
        message("This building's neutral is open or has a poor connection"),
        message("an open or poor neutral in this building"),
        message("Each hot conductor to neutral at the service, with a large 120 V load on and off."),
        message(
            "One rises while the other falls: the neutral is failing. Call the utility now. Both steady: look further."
        ),
    ),
    NEIGHBOR: Cause(
        message("A neighbor's neutral current comes over the water main"),
        message("a neighbor's neutral on the water main"),
        message("The same place with this building's main switched off."),
        message(
            "It stays: report it to the utility, which checks each neutral of that transformer. It goes away: it "
            "comes from this building."
        ),
    ),
    SHARED: Cause(
        message("A sound neutral and the shared water main carry the return together"),
        message("the shared water main beside a sound neutral"),
        message("Clamp the service neutral too, and all service conductors together."),
        message(
            "Together they show what the water main carries. If the neutral carries less than that, it is suspect "
            "even if voltages look good."
        ),
    ),
    UTILITY: Cause(
        message("The utility's own neutral sends current into the earth here"),
        message("the utility's own neutral current"),
        message(
            "With this building's main off: the current here, and volts from the neutral to a rod driven far away."
        ),
        message("Both stay and change with the hour, not with your loads: ask the utility to look."),
    ),
    SECOND_BOND: Cause(
        message("Neutral bonded to metal a second time, downstream of the service"),
        message("a second bond of the neutral"),
        message("All conductors of each feeder together, then the grounding conductor or raceway beside it."),
        message(
            "The feeder that shows the same current as its metal has the second bond downstream of that point. First "
            "check that its neutral and grounding path are intact: the bond may be all that they have. Take it out "
            "only de-energized, locked out and tested for absence of voltage."
        ),
    ),
    BORROWED: Cause(
        message("Two circuits share or swap a neutral"),
        message("a neutral shared between circuits"),
        message("The other feeders and circuits from the same panel, each all together."),
        message("Two that show the same current belong together: one goes out on this, back on that."),
    ),
    LEAK: Cause(
        message("A hot conductor leaks to metal: a heater, a motor, a damp cable"),
        message("a leak from a hot conductor"),
        message("Switch circuits off one by one, then measure the insulation of the one that matters, de-energized."),
        message("It drops at one circuit, and the insulation there is low: repair it. It may grow into a fault."),
    ),
    FILTERS: Cause(
        message("Filters and long cables let a little current through, all day"),
        message("filters of appliances"),
        message("Unplug appliances one by one."),
        message("It falls in small steps that add up: filters. One large step: that appliance leaks."),
    ),
    INDUCTION: Cause(
        message("A metal loop picks up current from nearby conductors"),
        message("a loop that picks up current"),
        message(
            "The same conductor at its other end, with its own circuit off and the heavy ones nearby on, then off."
        ),
        message(
            "The same at both ends, there with its own circuit off, gone with the others: the loop is driven from "
            "outside."
        ),
    ),
    METER: Cause(
        message("The meter shows current that is not there"),
        message("the meter itself"),
        message("Jaws clean, fully closed and empty, beside the conductor; turn the meter over. Use a finer meter."),
        message("What it shows with empty jaws is not current in this conductor. Only what is above that is real."),
    ),
}
USUAL_ORDER = {
    ELECTRODE: (NEUTRAL_LOSS, NEIGHBOR, SHARED, SECOND_BOND, UTILITY, LEAK, INDUCTION, METER),
    PIPE: (NEUTRAL_LOSS, NEIGHBOR, SHARED, SECOND_BOND, UTILITY, LEAK, INDUCTION, METER),
    GROUNDING: (SECOND_BOND, LEAK, FILTERS, INDUCTION, METER),
    FEEDER: (SECOND_BOND, BORROWED, LEAK, FILTERS, METER),
}
FROM_OUTSIDE = (NEIGHBOR, UTILITY)
OWN_LOAD = (NEUTRAL_LOSS, SHARED, SECOND_BOND, BORROWED)
OWN_CIRCUIT = (LEAK, FILTERS)


@dataclass(frozen=True)
class Signs:
    """What is known beside the reading; None for what is not.

    real: more than the meter shows on nothing. stays: some of it stays with the main or device off; falls: some of
    it goes then; most_stays: the larger part stays. follows: it follows the load. water_main: metal joins the
    neighbors. filters: filters may explain all of it (True) or not (False). small: no more than filters often bring.
    """

    real: bool
    stays: bool | None = None
    falls: bool | None = None
    most_stays: bool | None = None
    follows: bool | None = None
    water_main: bool | None = None
    filters: bool | None = None
    small: bool = False


def in_order(where: str, signs: Signs) -> tuple[str, ...]:
    """Return the causes that fit, the likeliest and the most pressing first."""
    rank = dict.fromkeys(USUAL_ORDER[where], 0)
    if signs.water_main is False:
        for cause in (NEIGHBOR, SHARED):
            rank.pop(cause, None)

    def nearer(*causes: str, by: int = -1) -> None:
        for cause in causes:
            if cause in rank:
                rank[cause] += by

    outside, inside = FROM_OUTSIDE, (*OWN_LOAD, *OWN_CIRCUIT)
    if where not in AT_THE_SERVICE:  # with its own device off a circuit still carries what others put on metal
        outside, inside = (SECOND_BOND, BORROWED, INDUCTION), OWN_CIRCUIT
    if signs.stays and signs.most_stays:
        nearer(*outside)
        if not signs.falls:
            nearer(*inside, by=1)
    if signs.stays is False:
        nearer(*(FROM_OUTSIDE if where in AT_THE_SERVICE else (INDUCTION,)), by=1)
    if signs.follows is True:
        nearer(*OWN_CIRCUIT, by=1)
    elif signs.follows is False:
        nearer(*OWN_CIRCUIT)
        if signs.stays is not False:
            nearer(*FROM_OUTSIDE)
        nearer(*OWN_LOAD, by=1)
    if signs.filters is True and not (signs.stays and not signs.falls):
        nearer(FILTERS, by=-3)
    elif signs.filters is False:
        nearer(FILTERS, by=1)
    if signs.small:
        nearer(SECOND_BOND, BORROWED, by=1)  # they bring a share of the load
    rank[METER] = 9 if signs.real else -9
    return tuple(sorted(rank, key=lambda cause: rank[cause]))
