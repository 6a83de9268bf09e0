"""The rows from the utility to the service disconnects: bonds ahead of them, grounded conductors, their jumpers."""

from __future__ import annotations

from calc.calculator import Calculator, FieldError
from calc.data_file import Data
from calc.grounding.grounded_conductor import grounded_conductor
from calc.jumpers.main_bonding_jumper import main_bonding_jumper
from calc.jumpers.supply_side_bonding_jumper import supply_side_bonding_jumper
from calc.messages import Message, message
from calc.schedule.fields import METAL_RACEWAY
from calc.schedule.part_list import PartList

CORNER = "corner-grounded"
FROM = "conductor_field"  # of a supply: the field that its conductor was entered in, where that is not `conductor`


def add_supply_side(parts: PartList, supply: Data, raceway: str, several: bool) -> None:
    """Add the bonds of the metal ahead of the disconnects, and ask for the enclosures among it.

    supply: conductor, sets, raceways, conductor_metal, metal, system_grounding.
    """
    inputs = for_calculator(supply_side_bonding_jumper, supply)
    ungrounded = supply["system_grounding"] == "ungrounded"
    if several:
        parts.size(
            "supply-side-bonding-jumper-wireway",
            supply_side_bonding_jumper,
            inputs | {"place": "ahead-of-service-disconnects", "raceways": 1, "arrangement": "single"},
            part=message("Supply-side bonding jumper of the wireway or meter"),
            start=message("Grounding electrode conductor")
            if ungrounded
            else message("Grounded conductor in the wireway or meter"),
            end=message("Metal of the wireway, the meter enclosure and the nipples to the disconnects"),
            why=message(
                "No overcurrent device protects this metal. Bonded together, it is one return path for a second fault."
            )
            if ungrounded
            else message(
                "Only the grounded conductor carries fault current back here; the metal must be bonded to it."
            ),
        )
    if raceway == METAL_RACEWAY:
        parts.size(
            "supply-side-bonding-jumper",
            supply_side_bonding_jumper,
            inputs | {"place": "service-raceway", "arrangement": "one-per-raceway"},
            part=message("Supply-side bonding jumper of each service raceway"),
            start=message("Bonding bushing or other service bonding fitting on the raceway"),
            end=message("Metal of the enclosure it enters, or the grounded conductor there"),
            why=message(
                "No overcurrent device protects this raceway; standard locknuts alone are not enough to bond it."
            ),
        )
    if not several:
        parts.ask(
            "service-enclosures",
            "jumpers/service_parts_bonded",
            part=message("Meter enclosure and other metal ahead of the disconnect"),
            start=message("The grounded conductor there, or bonded metal"),
            end=message("Each metal enclosure of service conductors"),
            question=message(
                "How is each one bonded? By the grounded conductor in it, by a bonded metal raceway, or by a "
                "supply-side bonding jumper."
            ),
        )


def add_disconnects(
    parts: PartList, served: list[tuple[int, str]], supply: Data, share: str | None, bar: Message
) -> None:
    """Add the grounded conductor of the common supply, then the parts of each of several disconnects.

    served: (sets, size label) to each disconnect. share: whether the parallel sets of one run in "one" raceway or
    "each" in its own. Raises: FieldError without `share` where a disconnect has parallel sets.
    """
    _add_grounded_conductor(
        parts,
        "grounded-conductor-supply",
        supply,
        message("{name} of the common supply, at least", name=_grounded(supply)),
        message("Utility"),
        message("Wireway or meter ahead of the disconnects"),
    )
    for number, (sets, conductor) in enumerate(served, start=1):
        each = sets > 1 and _needed_share(share) == "each"
        own = supply | {"conductor": conductor, "sets": sets, "raceways": sets if each else 1, FROM: "disconnects"}
        place = message("Service disconnect {number}", number=number)
        _add_grounded_conductor(
            parts,
            f"grounded-conductor-{number}",
            own,
            message("{name} to disconnect {number}, at least", name=_grounded(supply), number=number),
            message("Wireway or meter"),
            message("{place}: {bar}", place=place, bar=bar),
        )
        _add_main_bonding_jumper(
            parts,
            f"main-bonding-jumper-{number}",
            own | {"enclosures": len(served)},
            message("Main bonding jumper in disconnect {number}", number=number),
            message("{place}: {bar}", place=place, bar=bar),
        )
    _note_other_arrangements(parts)


def add_disconnect(parts: PartList, supply: Data, bar: Message) -> None:
    """Add the grounded conductor and the main bonding jumper of a single disconnect."""
    end = message("Service disconnect: {bar}", bar=bar)
    part = message("{name}, at least", name=_grounded(supply))
    _add_grounded_conductor(parts, "grounded-conductor", supply, part, message("Utility"), end)
    _add_main_bonding_jumper(
        parts, "main-bonding-jumper", supply | {"enclosures": 1}, message("Main bonding jumper"), end
    )


def _needed_share(share: str | None) -> str:
    if share is None:
        raise FieldError(
            "disconnect_raceways",
            message(
                "Enter how the sets in parallel to one disconnect are run: one (raceway for all) or each (its own "
                "raceway)."
            ),
        )
    return share


def for_calculator(calculator: Calculator, inputs: Data) -> Data:
    """Return those of `inputs` that `calculator` asks for; a corner-grounded system is solidly grounded to most."""
    asked = {name: value for name, value in inputs.items() if name in calculator.fields}
    known = [choice.value for choice in calculator.fields["system_grounding"].choices]
    return asked if asked["system_grounding"] in known else asked | {"system_grounding": "solidly-grounded"}


def _grounded(supply: Data) -> Message:
    if supply["system_grounding"] == CORNER:
        return message("Grounded phase conductor")
    return message("Grounded conductor (neutral)")


def _add_grounded_conductor(
    parts: PartList, key: str, supply: Data, part: Message, start: Message, end: Message
) -> None:
    why = message("It is the ground-fault return path, whatever the neutral load.")
    if supply["system_grounding"] == CORNER:
        why = message(
            "A phase of the system: it carries as much as a hot conductor, and it is the ground-fault return path."
        )
    parts.size(
        key,
        grounded_conductor,
        for_calculator(grounded_conductor, supply | {"metal": supply["conductor_metal"]})
        | {"place": "service-disconnect"},
        part=part,
        start=start,
        end=end,
        why=why,
        conductor=supply.get(FROM, "conductor"),
    )


def _add_main_bonding_jumper(parts: PartList, key: str, supply: Data, part: Message, start: Message) -> None:
    parts.size(
        key,
        main_bonding_jumper,
        for_calculator(main_bonding_jumper, supply),
        part=part,
        start=start,
        end=message("Its enclosure and the equipment grounding bar"),
        why=message(
            "Connects all downstream metal to the grounded conductor, so a ground fault opens the overcurrent device."
        ),
        conductor=supply.get(FROM, "conductor"),
    )


def _note_other_arrangements(parts: PartList) -> None:
    section = parts.trace.section
    parts.trace.note(
        message(
            "Assumed here: separate enclosures fed from one wireway or meter, and taps to one common grounding "
            "electrode conductor. Count disconnects in one assembly listed for services as one ({assembly}). Without "
            "taps, each disconnect may have its own grounding electrode conductor, or one may start in the wireway and "
            "be sized from the conductors there ({each}).",
            assembly=section("grounding/grounded_conductor_to_listed_assembly"),
            each=section("grounding/electrode_conductor_each_disconnect"),
        )
    )
