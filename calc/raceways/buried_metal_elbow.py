"""Must a metal elbow in an underground run of nonmetallic raceway be bonded, and with what?"""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, calculator
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.found.verdict import SIZE
from calc.grounding.aluminum_near_earth import OF_BONDS, warn_of_aluminum_near_earth
from calc.grounding.either_size import record_the_smaller, words_of_smaller
from calc.grounding.size_for_circuit import BREAKS
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.output import Output
from calc.raceways import elbow_fields as ask
from calc.raceways.elbow_bond import NAME_WORDS, how_to_size, jumper_of, note_the_bond, size_of_bond
from calc.raceways.elbow_isolation import CONCRETE_OF_OTHERS, reasons_to_bond
from calc.shared_fields import METAL_WORDS
from calc.shared_outputs import reasons, wire
from calc.trace import Trace

NAME = message("Buried metal elbow")

_BONDED = message("where it must be bonded")


@calculator(
    "buried-metal-elbow",
    name=NAME,
    purpose=message("Whether a metal elbow in an underground nonmetallic raceway run must be bonded, and with what."),
    submit=message("Check the elbow"),
    example={"edition": "2023", "circuit": "service", "cover": "17in", "conductor": "3/0", "metal": "copper"},
    outputs=(
        Output("bond", message("Whether the elbow must be bonded"), "yes-no"),
        reasons(message("Why it must be bonded")),
        Output("jumper", message("Type of bonding jumper"), "choice", choices=tuple(NAME_WORDS), when=_BONDED),
        *wire(
            message("Minimum size of the jumper"),
            when=_BONDED,
            sized=message("where it must be bonded and the conductor or device that sizes it was entered"),
        ),
    ),
    site_check=SIZE,
    margin=Margin(("cover", "conductor", "sets", "device"), breaks={"device": BREAKS}),
)
def buried_metal_elbow(
    *,
    trace: Trace,
    circuit: Annotated[str, ask.CIRCUIT] = "service",
    cover: Annotated[float | None, ask.COVER] = None,
    concrete: Annotated[float | None, ask.CONCRETE] = None,
    joined: Annotated[str, ask.JOINED] = "nonmetallic",
    conductor: Annotated[str | None, ask.CONDUCTOR] = None,
    sets: Annotated[int, ask.SETS] = 1,
    conductor_metal: Annotated[str, ask.CONDUCTOR_METAL] = "copper",
    device: Annotated[float | None, ask.DEVICE] = None,
    metal: Annotated[str, ask.METAL] = "copper",
) -> Answer:
    """Tell whether a metal elbow must be bonded, with which jumper and, where the fields allow, of what size.

    When: metal elbows and other metal raceway parts in runs of nonmetallic raceway, alternating current
    up to 1000 V. Not for hazardous locations, which ask for more.

    Parameters:
        circuit: "service", "derived-system" (ahead of its first overcurrent device) or "feeder-or-branch".
        cover: inches over the shallowest point, 0 to 1000; needed unless concrete or `joined` decides.
        concrete: inches on the thinnest side, 0 to 1000; None for none. It does not count for services.
        joined: "nonmetallic" raceway at both ends, or "metal" at one.
        conductor: size label of the largest hot conductor in this raceway, and sets: of them in parallel
            in it, 1 to 30. They size the bond of a service or derived system.
        device: ampere, 1 to 10,000. It sizes the bond of a feeder or branch circuit.
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        found: on site: a size and its metal, "6 copper", or "listed" or "unknown"; the answer then holds a verdict.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold bond, reasons and, where it is bonded, jumper, size,
        metal, area_cmil (size and area_cmil are None where the field that sizes it was left out).
    Raises: nothing; bad or missing input ends as `fix`, other cases as `not_covered`.
    Source: 250.80, 250.86 Exception No. 3, 250.102(C) to (E), Tables 250.102(C)(1) and 250.122.

    Example:
    >>> result = buried_metal_elbow(edition="2023", circuit="service", cover="17in", conductor="3/0")
    >>> result.answer_code, result.answer.values["area_cmil"]
    ('bond-4-copper', 41740)
    """
    connected = "raceways/service_raceway_connected" if circuit == "service" else "raceways/other_raceway_connected"
    trace.step(message("Metal raceway parts must be bonded unless an exception applies."), cites=(connected,))
    basis, reasons = reasons_to_bond(circuit, joined, cover, concrete, trace)
    if not reasons:
        _note_the_ground(cover, joined, trace)
        return Answer(
            NAME, message("No bond required"), _spared(basis), basis, "no-bond", {"bond": False, "reasons": []}
        )
    sized = size_of_bond(circuit, conductor, sets, conductor_metal, device, metal, trace)
    size = sized.size if sized else None
    jumper = NAME_WORDS[jumper_of(circuit)]
    if size is not None:
        trace.note(message("Bond it with the {jumper}, this size or larger.", jumper=jumper))
    note_the_bond(circuit, joined, trace)
    _note_the_ground(cover, joined, trace)
    warn_of_aluminum_near_earth(metal, OF_BONDS, trace)
    values = {
        "bond": True,
        "reasons": [str(reason) for reason in reasons],
        "jumper": jumper_of(circuit),
        "size": size,
        "metal": metal,
        "area_cmil": size and area(size, trace.edition),
    }
    why = _joined(reasons)
    if sized is None or size is None:
        detail = message(
            "{reasons} Bond it with the {jumper}. {how}", reasons=why, jumper=jumper, how=how_to_size(circuit)
        )
        return Answer(NAME, message("Bond it"), detail, basis, "bond", values)
    headline = message("Bond it: {size} {metal}", size=shown_size(size), metal=METAL_WORDS[metal])
    smaller = words_of_smaller(sized, metal, conductor)
    if smaller:
        record_the_smaller(sized, conductor, trace)
        why = message("{reasons} {smaller}.", reasons=why, smaller=smaller)
    return Answer(NAME, headline, why, basis, f"bond-{size}-{metal}", values)


def _spared(basis: str) -> Message:
    if basis == CONCRETE_OF_OTHERS:
        return message("Every part has enough concrete around it, and there is nonmetallic raceway at both ends.")
    return message("Every part has enough cover, and there is nonmetallic raceway at both ends.")


def _joined(sentences: list[Message]) -> Message:
    first, *rest = sentences
    return message("{first} {rest}", first=first, rest=_joined(rest)) if rest else first


def _note_the_ground(cover: float | None, joined: str, trace: Trace) -> None:
    if cover is not None and joined == "nonmetallic":
        trace.note(
            message(
                "Measure cover at the shallowest point, from the top of the metal to finished grade or slab "
                "({section}). An elbow that turns up is shallow at its end.",
                section=trace.section("raceways/cover_measured"),
            )
        )
    trace.note(
        message(
            "In earth or concrete, the metal or its coating must be approved for that location ({section}).",
            section=trace.section("raceways/metal_in_earth"),
        )
    )
