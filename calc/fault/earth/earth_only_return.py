"""What happens when the earth, through electrodes alone, is the only way back for a fault."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, Choice, NotCovered, calculator
from calc.electrodes.entered import number_for_code, shown
from calc.fault.caution import state_the_model
from calc.fault.device.device import DOES_NOT_OPEN, NOT_ASSURED
from calc.fault.earth.earth_outputs import OUTPUTS
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.shared_fields import SMALLEST, device_rating, one_of, quantity
from calc.trace import Trace, shown_number

NAME = message("Return path through the earth only")
NEVER_THE_PATH = "naming/auxiliary_electrode"

VOLTAGE_TO_GROUND = quantity(
    message("Voltage to ground"), message("For example 120, 277 or 347 V."), "V", 1, 1000, example="120"
)
DEVICE = device_rating(message("Upstream breaker or fuse"), message("Of the circuit with the fault."))
ELECTRODE_OHM = quantity(
    message("Resistance of the electrode on the metal"),
    message("To remote earth. A rod in ordinary soil has tens of ohms."),
    "ohm",
    0.01,
    1_000_000,
    example="25",
)
SOURCE_OHM = quantity(
    message("Resistance of the electrodes at the source"),
    message("All electrodes connected to the neutral, together. Leave 0 to see the most current that can flow."),
    "ohm",
    0,
    1_000_000,
    example="10",
    finest=SMALLEST,
)
RETURN_PATH = one_of(
    message("Ground-fault return path"),
    message("A metal water main that neighbors share is not earth: it is a pipe from house to house."),
    (
        Choice("rods", message("Through the earth from electrode to electrode")),
        Choice("water-main", message("A shared metal water main")),
    ),
)


@calculator(
    "earth-only-return",
    name=NAME,
    purpose=message(
        "The current through ground rods alone, whether the device opens, and the voltage left on the metal."
    ),
    submit=message("See what flows"),
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
    trace: Trace,
    device: Annotated[float, DEVICE],
    voltage_to_ground: Annotated[float, VOLTAGE_TO_GROUND] = 120,
    electrode_ohm: Annotated[float, ELECTRODE_OHM] = 25,
    source_ohm: Annotated[float, SOURCE_OHM] = 0,
    return_path: Annotated[str, RETURN_PATH] = "rods",
) -> Answer:
    """Return the current of a fault that returns through electrodes alone, and what becomes of device and metal.

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
    >>> result.answer_code, result.answer.values["ampere"]
    ('does-not-open-4.8-ampere', 4.8)
    """
    if return_path == "water-main":
        raise _water_main(trace)
    loop = trace.compute(
        message("Through the earth: both electrodes in series. The wires add a little and are left out."),
        "electrode + source",
        "ohm",
        electrode=electrode_ohm,
        source=source_ohm,
    )
    ampere = trace.compute(
        message("The most current that can flow."), "volt / loop", "A", volt=voltage_to_ground, loop=loop
    )
    multiple = trace.compute(
        message("As a multiple of the device's rating."), "current / rating", "times", current=ampere, rating=device
    )
    metal = trace.compute(
        message("Voltage of the metal to remote earth, for as long as it lasts."),
        "current * electrode",
        "V",
        current=ampere,
        electrode=electrode_ohm,
    )
    source = trace.compute(
        message("Voltage of the neutral at the source, and of all metal bonded to it."),
        "current * source",
        "V",
        current=ampere,
        source=source_ohm,
    )
    loop_for_rating = trace.compute(
        message("The whole loop would have to be under this for even the rated current to flow."),
        "volt / rating",
        "ohm",
        cites=(NEVER_THE_PATH,),
        volt=voltage_to_ground,
        rating=device,
    )
    verdict = DOES_NOT_OPEN if multiple <= 1 else NOT_ASSURED
    _say_what_it_means(source_ohm, source, voltage_to_ground, trace)
    state_the_model(trace, ASSUMPTIONS)
    return Answer(
        name=NAME,
        headline=message("Does not open") if verdict == DOES_NOT_OPEN else message("Do not count on it"),
        detail=_detail(verdict, device, (ampere, metal), (voltage_to_ground, electrode_ohm, source_ohm)),
        basis=NEVER_THE_PATH,
        answer_code=f"{verdict}-{number_for_code(ampere)}-ampere",
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
    message("the electrodes are far enough apart not to affect each other"),
    message("nothing else connects the metal to the source: no wire, raceway, pipe or cable shield"),
    message("the person touching the metal stands on remote earth; nearer the rod, the voltage is less"),
)


def _detail(verdict: str, device: float, found: tuple[float, float], at: tuple[float, float, float]) -> Message:
    """Return what becomes of device and metal, found as ampere and volt, and the volts and ohms that it is for."""
    (ampere, metal), (volt, electrode, source) = found, at
    words = {"ampere": shown(ampere), "rating": shown_number(device), "volt": shown(metal)}
    sentence = message(
        "Nothing assures that {ampere} A opens a {rating} A device. Until it does, the metal is at {volt} V to earth",
        **words,
    )
    if verdict == DOES_NOT_OPEN:
        sentence = message(
            "A {rating} A device can carry {ampere} A indefinitely. The metal stays at {volt} V to earth", **words
        )
    return message(
        "{sentence}. Based on {driving} V, {electrode} ohm at the metal, {source} ohm at the source.",
        sentence=sentence,
        driving=shown_number(volt),
        electrode=shown_number(electrode),
        source=shown_number(source),
    )


def _say_what_it_means(source_ohm: float, source: float, volt: float, trace: Trace) -> None:
    limit = trace.cite("grounding/rod_needs_second")
    trace.warn(
        message(
            "The earth is not an effective fault path ({section}, {path}). Metal needs a bonded metal path back to "
            "the source.",
            section=trace.section(NEVER_THE_PATH),
            path=trace.section("grounding/effective_fault_path"),
        ),
        grave=True,
    )
    trace.note(
        message(
            "{limit} ohm ({section}) only decides whether a single rod, pipe or plate needs a second electrode. "
            "Meeting it proves nothing about clearing a fault.",
            limit=limit.value,
            section=limit.section,
        ),
        grave=True,
    )
    if source_ohm:
        trace.note(
            message(
                "The neutral and everything bonded to it rises too: {volt} V to earth, even in buildings with no "
                "fault.",
                volt=shown(source),
            ),
            grave=True,
        )
        trace.note(
            message(
                "With fewer ohms at the source, the metal's voltage is higher, up to the full {volt} V.",
                volt=shown_number(volt),
            )
        )
    trace.note(message("An electrode is for lightning, and for holding the system near earth voltage."))
    trace.note(message("A GFCI may open at this current. It does not replace the bond."))


def _water_main(trace: Trace) -> NotCovered:
    return NotCovered(
        message(
            "A shared metal water main is a metal path to the source through the neighbors' neutrals, not the earth."
        ),
        message(
            "See “stray neutral current” and {section}. The pipe may carry a lot of current; nobody may rely on it.",
            section=trace.section("naming/objectionable_current"),
        ),
        "stray-neutral-current",
    )
