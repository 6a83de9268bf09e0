"""The equipment bonding jumper: a link in the path of fault current, past an overcurrent device."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, calculator
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.data_file import Data
from calc.found.verdict import SIZE
from calc.grounding.aluminum_near_earth import OF_BONDS, warn_of_aluminum_near_earth
from calc.grounding.either_size import ask_for_the_smallest, words_of
from calc.grounding.equipment_grounding_scope import require_whole_conductors
from calc.grounding.size_by_device import TABLE
from calc.grounding.size_for_circuit import BREAKS, HotConductors, size_for_circuit
from calc.jumpers import load_side_fields as ask
from calc.jumpers.joined_parts import note_what_it_joins
from calc.jumpers.jumper_route import note_the_route, reasons_against_route
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.output import Output
from calc.scope import OutOfScope, SectionOf, require_scope
from calc.shared_fields import METAL_WORDS
from calc.shared_outputs import reasons, unless_increased, wire
from calc.trace import Trace, shown_number

OUT_OF_SCOPE = (
    OutOfScope(
        "side",
        "supply-side",
        message("Ahead of the first overcurrent device, there is no breaker or fuse to size the jumper from."),
        message(
            "Look under supply-side bonding jumper ({section}). It is sized from the conductors.",
            section=SectionOf("naming/supply_side_bonding_jumper"),
        ),
        ("supply-side-bonding-jumper",),
    ),
)


@calculator(
    "equipment-bonding-jumper",
    name=message("Equipment bonding jumper"),
    purpose=message(
        "Minimum size of a bonding jumper on the load side of an overcurrent device, and whether it may run outside "
        "the raceway."
    ),
    submit=message("Size the jumper"),
    example={"edition": "2023", "device": "100", "other_devices": "225,400", "routing": "outside", "length": "4ft"},
    outputs=(
        *wire(message("Minimum size of the equipment bonding jumper")),
        Output("device", message("Overcurrent device that sizes it: the largest entered"), "number", "A"),
        unless_increased(),
        Output("fits", message("Whether the jumper may run as entered"), "yes-no"),
        reasons(message("Why the jumper may not run as entered")),
    ),
    site_check=SIZE,
    margin=Margin(("device", "installed_conductor"), breaks={"device": BREAKS}),
)
def equipment_bonding_jumper(
    *,
    trace: Trace,
    device: Annotated[float, ask.DEVICE],
    metal: Annotated[str, ask.METAL] = "copper",
    side: Annotated[str, ask.SIDE] = "load-side",
    joins: Annotated[str, ask.JOINS] = "raceway",
    other_devices: Annotated[str | None, ask.OTHERS] = None,
    routing: Annotated[str, ask.ROUTING] = "inside",
    length: Annotated[float | None, ask.LENGTH] = None,
    along: Annotated[str, ask.ALONG] = "yes",
    installed_conductor: Annotated[str | None, ask.INSTALLED] = None,
    minimum_conductor: Annotated[str | None, ask.MINIMUM] = None,
    conductor_metal: Annotated[str, ask.CONDUCTOR_METAL] = "copper",
    sets: Annotated[int, ask.SETS] = 1,
    increase_reason: Annotated[str, ask.INCREASE] = "any",
) -> Answer:
    """Return the smallest equipment bonding jumper, and whether it may run as it does.

    When: metal parts on the load side of an overcurrent device, up to 1000 V. Ahead of the first
    device the part is a supply-side bonding jumper: that ends as not covered.

    Parameters:
        device: rating of the overcurrent device, ampere, 1 to 10,000.
        metal: of the jumper; conductor_metal: of the hot conductors. Each is "copper", "aluminum" or
            "copper-clad-aluminum".
        side: "load-side" or "supply-side".
        joins: "raceway", "flexible-raceway", "expansion-fitting" or "receptacle".
        other_devices: ratings of the other raceways on one common jumper, "100,225", at most 20.
        routing: "inside", "outside" or "outside-at-pole". length: ft, 0 to 1000, needed outside.
        along: "yes" where it follows the raceway, or "no".
        installed_conductor: size label of one hot conductor, where it is known; minimum_conductor: the
            smallest that would do, where the installed one is larger. sets: of them in parallel, 1 to 30.
        increase_reason: "any" or "ambient-or-bundling".
        found: on site: a size and its metal, "6 copper", or "listed" or "unknown"; the answer then holds a verdict.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold size, metal, area_cmil, device, fits, reasons,
    size_unless_increased (the same as size but where larger hot conductors are installed and nobody said why).
    Raises: nothing; bad or missing input ends as `fix`, other cases as `not_covered`.
    Source: 250.102(D) and (E), 250.122, Table 250.122, 250.146, 250.98, 250.64(A) and (B).

    Example:
    >>> result = equipment_bonding_jumper(edition="2023", device="100A", other_devices="225,400")
    >>> result.answer.values["size"], result.answer.values["device"]
    ('3', 400)
    """
    require_scope(OUT_OF_SCOPE, trace, side=side)
    trace.step(
        message("On the load side of an overcurrent device, the jumper is sized from that device."),
        cites=("raceways/jumper_size",),
    )
    require_whole_conductors(installed_conductor, minimum_conductor, conductor_metal, sets, 1, trace)
    counted = _device_that_counts(device, other_devices, trace)
    hot = HotConductors(
        installed_conductor,
        minimum_conductor,
        conductor_metal,
        sets,
        reason=increase_reason,
        limits=not other_devices,
    )
    if minimum_conductor and other_devices:
        trace.warn(message("Work out the increase for each circuit separately and use the largest answer."))
    sized = size_for_circuit(counted, metal, hot, trace)
    ask_for_the_smallest(sized, hot, trace)
    size = sized.size
    note_what_it_joins(joins, routing, trace)
    against = [] if joins == "receptacle" else reasons_against_route(routing, length, along, trace)
    if joins != "receptacle":
        note_the_route(size, routing, trace)
    warn_of_aluminum_near_earth(metal, OF_BONDS, trace)
    values = {
        "size": size,
        "metal": metal,
        "area_cmil": area(size, trace.edition),
        "device": counted,
        "size_unless_increased": sized.unless_increased or size,
        "fits": not against,
        "reasons": [str(reason) for reason in against],
    }
    name, words = message("Equipment bonding jumper"), {"size": shown_size(size), "metal": METAL_WORDS[metal]}
    if against:
        return Answer(name, *_not_like_this(against, words), TABLE, f"not-outside-{size}-{metal}", values)
    detail = words_of(sized, metal, hot, message("{metal} wire or larger", metal=METAL_WORDS[metal]), trace)
    return Answer(name, message("{size}", size=shown_size(size)), detail, TABLE, f"{size}-{metal}", values)


def _device_that_counts(device: float, other_devices: str | None, trace: Trace) -> float:
    ratings = [device, *ask.ratings_of(other_devices)]
    if len(ratings) == 1:
        return device
    largest = max(ratings)
    trace.step(
        message(
            "One continuous jumper for {count} raceways or cables is sized from the largest overcurrent device: "
            "{largest} A.",
            count=len(ratings),
            largest=shown_number(largest),
        ),
        shown_number(largest),
        "A",
        ("raceways/common_jumper",),
    )
    return largest


def _not_like_this(against: list[Message], words: Data) -> tuple[Message, Message]:
    first, *rest = against
    detail = message("{first} {rest}", first=first, rest=rest[0]) if rest else first
    remedy = message("{reasons} Reroute it, or run {size} {metal} inside the raceway.", reasons=detail, **words)
    return message("Not permitted outside as entered"), remedy
