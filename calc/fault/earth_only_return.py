"""What happens when the earth, through electrodes alone, is the only way back for a fault."""

from __future__ import annotations

from typing import Annotated

from calc.declare import Answer, Choice, NotCovered, calculator
from calc.electrodes.entered import said_number, shown
from calc.fault.caution import state_the_model
from calc.fault.device import DOES_NOT_OPEN, NOT_ASSURED
from calc.fault.earth_outputs import OUTPUTS
from calc.margin.declared import Margin
from calc.vocabulary import SMALLEST, device_rating, one_of, quantity
from calc.words import Sentence, say
from calc.working import Working, shown_number

NAME = say("Earth as the only return")
NEVER_THE_PATH = "naming/auxiliary_electrode"

VOLTAGE_TO_GROUND = quantity(
    say("Voltage to ground"), say("For example 120, 277 or 347 V."), "V", 1, 1000, example="120"
)
DEVICE = device_rating(say("Overcurrent device ahead"), say("Of the circuit that has the fault."))
ELECTRODE_OHM = quantity(
    say("Resistance of the electrode on the metal"),
    say("To remote earth. A rod in ordinary soil has tens of ohms."),
    "ohm",
    0.01,
    1_000_000,
    example="25",
)
SOURCE_OHM = quantity(
    say("Resistance of the electrodes at the source"),
    say("All that the neutral is joined to, together. Leave 0 to see the most current that can flow."),
    "ohm",
    0,
    1_000_000,
    example="10",
    finest=SMALLEST,
)
RETURN_PATH = one_of(
    say("The way back"),
    say("A metal water main that neighbors share is not earth: it is a pipe from house to house."),
    (
        Choice("rods", say("Through the earth from electrode to electrode")),
        Choice("water-main", say("A shared metal water main")),
    ),
)


@calculator(
    "earth-only-return",
    name=NAME,
    purpose=say("The current through ground rods alone, whether the device opens, and the voltage left on the metal."),
    submit=say("See what flows"),
    example={
        "edition": "2023",
        "device": "20A",
        "voltage_to_ground": "120V",
        "electrode_ohm": "25",
        "source_ohm": "10",
    },
    outputs=OUTPUTS,
    margin=Margin(("electrode_ohm", "source_ohm"), verdict="verdict"),
)
def earth_only_return(
    *,
    working: Working,
    device: Annotated[float, DEVICE],
    voltage_to_ground: Annotated[float, VOLTAGE_TO_GROUND] = 120,
    electrode_ohm: Annotated[float, ELECTRODE_OHM] = 25,
    source_ohm: Annotated[float, SOURCE_OHM] = 0,
    return_path: Annotated[str, RETURN_PATH] = "rods",
) -> Answer:
    """Give the current of a fault that returns through electrodes alone, and what becomes of device and metal.

    When: a hot conductor touches metal that has an electrode and no other way back to a grounded source. Not for a
    metal water main or other metal that reaches the source: that is a metallic path.

    Parameters:
        device: ampere, 1 to 10,000. voltage_to_ground: V, 1 to 1000.
        electrode_ohm: ohm of the electrode on the metal, 0.01 to 1,000,000.
        source_ohm: ohm of the electrodes at the source, 0 to 1,000,000; 0 gives the most current.
        return_path: "rods" or "water-main".
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold verdict ("does-not-open" or "not-assured"), ampere, multiple (of the
        rating), metal_volt and source_volt (to remote earth), loop_ohm and loop_ohm_for_rating.
    Raises: nothing; bad input ends as `fix`, a water main as `not_covered`.
    Source: Ohm's law; 250.4(A)(5) and 250.54 (the earth is not the fault path).

    Example:
    >>> result = earth_only_return(device=20, electrode_ohm=25)
    >>> result.said, result.answer.values["ampere"]
    ('does-not-open-4.8-ampere', 4.8)
    """
    if return_path == "water-main":
        raise _water_main(working)
    loop = working.compute(
        say("Through the earth: both electrodes in a row. The wires add a little and are left out."),
        "electrode + source",
        "ohm",
        electrode=electrode_ohm,
        source=source_ohm,
    )
    ampere = working.compute(say("Most current that flows."), "volt / loop", "A", volt=voltage_to_ground, loop=loop)
    multiple = working.compute(
        say("Beside the rating of the device."), "current / rating", "times", current=ampere, rating=device
    )
    metal = working.compute(
        say("Voltage of the metal to remote earth, for as long as it lasts."),
        "current * electrode",
        "V",
        current=ampere,
        electrode=electrode_ohm,
    )
    source = working.compute(
        say("Voltage of the neutral at the source, and of all metal bonded to it."),
        "current * source",
        "V",
        current=ampere,
        source=source_ohm,
    )
    loop_for_rating = working.compute(
        say("The whole loop would need fewer ohms than this to bring even the rating."),
        "volt / rating",
        "ohm",
        cites=(NEVER_THE_PATH,),
        volt=voltage_to_ground,
        rating=device,
    )
    verdict = DOES_NOT_OPEN if multiple <= 1 else NOT_ASSURED
    _say_what_it_means(source_ohm, source, voltage_to_ground, working)
    state_the_model(working, ASSUMPTIONS)
    return Answer(
        name=NAME,
        headline=say("Does not open") if verdict == DOES_NOT_OPEN else say("Do not count on it"),
        detail=_detail(verdict, device, (ampere, metal), (voltage_to_ground, electrode_ohm, source_ohm)),
        basis=NEVER_THE_PATH,
        said=f"{verdict}-{said_number(ampere)}-ampere",
        values={
            "verdict": verdict,
            "ampere": ampere,
            "multiple": multiple,
            "metal_volt": metal,
            "source_volt": source,
            "loop_ohm": loop,
            "loop_ohm_for_rating": loop_for_rating,
        },
    )


ASSUMPTIONS = (
    say("the electrodes are far enough apart not to share their soil"),
    say("nothing else joins the metal to the source: no wire, raceway, pipe or cable shield"),
    say("whoever touches the metal stands on remote earth; nearer the rod the difference is less"),
)


def _detail(verdict: str, device: float, found: tuple[float, float], at: tuple[float, float, float]) -> Sentence:
    """Give what becomes of device and metal, found as ampere and volt, and the volts and ohms that it is for."""
    (ampere, metal), (volt, electrode, source) = found, at
    words = {"ampere": shown(ampere), "rating": shown_number(device), "volt": shown(metal)}
    told = say(
        "Nothing assures that {ampere} A opens a {rating} A device. Until then the metal is at {volt} V to earth",
        **words,
    )
    if verdict == DOES_NOT_OPEN:
        told = say("A {rating} A device may carry {ampere} A for good. The metal stays at {volt} V to earth", **words)
    return say(
        "{told}. Taken: {driving} V, {electrode} ohm at the metal, {source} ohm at the source.",
        told=told,
        driving=shown_number(volt),
        electrode=shown_number(electrode),
        source=shown_number(source),
    )


def _say_what_it_means(source_ohm: float, source: float, volt: float, working: Working) -> None:
    limit = working.cite("grounding/rod_needs_second")
    working.warn(
        say(
            "The earth is no fault path ({section}, {path}). Metal needs a bonded metallic way back to the source.",
            section=working.section(NEVER_THE_PATH),
            path=working.section("grounding/effective_fault_path"),
        )
    )
    working.note(
        say(
            "{limit} ohm ({section}) only decides whether a single rod, pipe or plate needs a second electrode. "
            "Passing it proves nothing about clearing.",
            limit=limit.value,
            section=limit.section,
        )
    )
    if source_ohm:
        working.note(
            say(
                "The neutral and everything bonded to it rises too: {volt} V to earth, in sound buildings as well.",
                volt=shown(source),
            )
        )
        working.note(
            say(
                "With fewer ohms at the source the metal's voltage is higher, up to all of {volt} V.",
                volt=shown_number(volt),
            )
        )
    working.note(say("An electrode is for lightning and for holding the system near the earth's voltage."))
    working.note(say("A ground-fault device for people may open at this current. It is no substitute for the bond."))


def _water_main(working: Working) -> NotCovered:
    return NotCovered(
        say("A shared metal water main is a metal path to the source through the neighbors' neutrals, not the earth."),
        say(
            "Look under “stray neutral current” and {section}. It may carry much current; nobody may rely on it.",
            section=working.section("naming/objectionable_current"),
        ),
        "stray-neutral-current",
    )
