"""Every bonding and grounding part of a service."""

from __future__ import annotations

from typing import Annotated

from calc.declare import Answer, Mend, calculator, needed
from calc.editions import SHOWN_UNTIL_CHOSEN
from calc.grounding.grounded_conductor import grounded_conductor
from calc.grounding.supply_conductors import other_conductors, sets_of
from calc.jumpers.main_bonding_jumper import main_bonding_jumper
from calc.jumpers.supply_side_bonding_jumper import supply_side_bonding_jumper
from calc.naming.jumper_place import SYSTEM_GROUNDING
from calc.rulebook import rule
from calc.schedule import fields
from calc.schedule.metal_parts import add_electrodes, add_metal_parts
from calc.schedule.part_list import PartList
from calc.vocabulary import conductor_size
from calc.words import Sentence, say
from calc.working import Working

MOST_DISCONNECTS = rule("services/disconnects_maximum", SHOWN_UNTIL_CHOSEN).value

CONDUCTOR = conductor_size(
    say("Largest ungrounded (hot) service conductor"),
    say("The one that feeds the disconnect, or the wireway ahead of several, for example 3/0 or 500 kcmil."),
)
DISCONNECTS = other_conductors(
    say("Conductors to each disconnect, where there are several"),
    say("One entry for each enclosure. Leave it empty for a single one."),
    MOST_DISCONNECTS,
)


@calculator(
    "service-schedule",
    name=say("Service schedule"),
    purpose=say("Every bonding and grounding part of a service, sized and placed, each with its section."),
    submit=say("List the parts"),
    example={
        "edition": "2023",
        "conductor": "500kcmil",
        "sets": "2",
        "raceways": "2",
        "electrodes": "water-pipe,concrete-encased,rod",
        "metal_parts": "water-pipe,structural-metal",
    },
)
def service_schedule(
    *,
    working: Working,
    conductor: Annotated[str, CONDUCTOR],
    sets: Annotated[int, fields.SETS] = 1,
    conductor_metal: Annotated[str, fields.CONDUCTOR_METAL] = "copper",
    metal: Annotated[str, fields.METAL] = "copper",
    raceways: Annotated[int, fields.RACEWAYS] = 1,
    raceway: Annotated[str, fields.RACEWAY] = "metal",
    electrodes: Annotated[str | None, fields.ELECTRODES] = None,
    metal_parts: Annotated[str | None, fields.METAL_PARTS] = None,
    disconnects: Annotated[str | None, DISCONNECTS] = None,
    piping_device: Annotated[float | None, fields.PIPING_DEVICE] = None,
    ring: Annotated[str | None, fields.RING] = None,
    system_grounding: Annotated[str, SYSTEM_GROUNDING] = "solidly-grounded",
) -> Answer:
    """Give every bonding and grounding part of a service: part, size, from, to, why, section.

    When: a service up to 1000 V, one to six disconnect enclosures. Voltage, phases and load are not asked: the
    conductors entered carry them. Each part is sized by its own calculator; a case that one does not cover is
    listed as not covered.

    Parameters:
        conductor: size label of the largest ungrounded conductor ahead of the disconnects, "18" to "2000kcmil".
        sets: conductors in parallel a phase, 1 to 30; raceways: in how many raceways or cables, 1 to 30.
        conductor_metal, metal: "copper", "aluminum" or "copper-clad-aluminum".
        raceway: "metal" or "nonmetallic".
        electrodes: those present, with commas: "water-pipe", "structural-metal", "concrete-encased", "ring", "rod",
            "pipe", "plate", "other". ring: size label of the ring's copper conductor, needed for a ring.
        metal_parts: "water-pipe", "structural-metal", "other-metal", with commas; piping_device: ampere, 1 to
            10,000, needed for "other-metal".
        disconnects: conductors to each of several enclosures, "3/0,2x250kcmil"; None for a single one.
        system_grounding: how the system is grounded.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold parts and sizes (by part), its table one row a part.
    Raises: nothing; bad or missing input ends as `fix`.
    Source: the calculators of the parts; 250.50, 250.53.

    Example:
    >>> result = service_schedule(edition="2023", conductor="500kcmil", sets=2, raceways=2, electrodes="rod")
    >>> result.answer.values["sizes"]["main-bonding-jumper"]
    '2/0-copper'
    """
    needed(electrodes, "electrodes")
    parts = PartList(working)
    metals = {"conductor_metal": conductor_metal, "metal": metal}
    supply = {"conductor": conductor, "sets": sets, **metals}
    grounding = {"system_grounding": system_grounding}
    served = sets_of(disconnects) or [(sets, conductor)]
    if disconnects and len(served) == 1:
        raise Mend(
            "disconnects", say("Enter the conductors to two or more disconnects. For a single one leave it empty.")
        )
    several = len(served) > 1

    _add_supply_side(parts, supply | grounding, raceways, raceway, several)
    for number, (own_sets, own_conductor) in enumerate(served, start=1):
        own = {"conductor": own_conductor, "sets": own_sets, **metals, **grounding}
        _add_disconnect(parts, own, number, len(served), raceways if not several else 1)
    first, *others = served
    add_electrodes(
        parts,
        electrodes,
        _electrode_conductor_start(several, system_grounding),
        {
            "conductor": first[1],
            "sets": first[0],
            **metals,
            **grounding,
            "ring": ring,
            "other_conductors": ",".join(f"{count}x{size}" if count > 1 else size for count, size in others) or None,
        },
    )
    add_metal_parts(
        parts,
        metal_parts,
        say("Service enclosure or neutral bar, or a grounding electrode conductor that is large enough"),
        "water",
        {"supply": "service"},
        supply,
        None,
        piping_device,
    )
    return parts.answer(say("Service schedule"), say("for this service"))


def _add_supply_side(parts: PartList, supply: dict, raceways: int, raceway: str, several: bool) -> None:
    if several:
        parts.size(
            "supply-side-bonding-jumper-wireway",
            supply_side_bonding_jumper,
            supply | {"place": "ahead-of-service-disconnects", "raceways": 1, "arrangement": "single"},
            part=say("Supply-side bonding jumper of the wireway or meter"),
            start=say("Neutral in the wireway or meter"),
            end=say("Metal of the wireway, the meter and the nipples to the disconnects"),
            why=say("Ahead of the first device only the neutral carries a fault back; the metal must reach it."),
        )
    if raceway == fields.METAL_RACEWAY:
        parts.size(
            "supply-side-bonding-jumper",
            supply_side_bonding_jumper,
            supply | {"place": "service-raceway", "raceways": raceways, "arrangement": "one-per-raceway"},
            part=say("Supply-side bonding jumper of each service raceway"),
            start=say("Bonding bushing or other service bonding fitting on the raceway"),
            end=say("Metal or neutral bar of the enclosure it enters"),
            why=say("No device protects this raceway; locknuts alone do not count as its bond."),
        )


def _add_disconnect(parts: PartList, own: dict, number: int, count: int, raceways: int) -> None:
    place, key = say("Service disconnect"), ""
    neutral, jumper = say("Grounded conductor (neutral), at least"), say("Main bonding jumper")
    if count > 1:
        place, key = say("Service disconnect {number}", number=number), f"-{number}"
        neutral = say("Grounded conductor (neutral) to disconnect {number}, at least", number=number)
        jumper = say("Main bonding jumper in disconnect {number}", number=number)
    parts.size(
        f"grounded-conductor{key}",
        grounded_conductor,
        _only(
            grounded_conductor,
            own | {"metal": own["conductor_metal"], "raceways": raceways, "place": "service-disconnect"},
        ),
        part=neutral,
        start=say("Utility"),
        end=say("{place}: neutral bar", place=place),
        why=say("It is the way back for a fault, whatever the neutral load."),
    )
    parts.size(
        f"main-bonding-jumper{key}",
        main_bonding_jumper,
        own | {"enclosures": count},
        part=jumper,
        start=say("{place}: neutral bar", place=place),
        end=say("Its enclosure and the bar of the equipment grounding conductors"),
        why=say("Joins all the metal past it to the neutral, so that a fault opens the device."),
    )


def _electrode_conductor_start(several: bool, system_grounding: str) -> Sentence:
    if several:
        return say("Taps from each disconnect to one common conductor")
    if system_grounding == "ungrounded":
        return say("Metal enclosure of the service conductors, up to and in the disconnect")
    if system_grounding == "impedance-grounded":
        return say("Grounded side of the impedance")
    return say("Neutral bar of the service disconnect, or another point of the neutral ahead of it")


def _only(calculator, inputs: dict) -> dict:
    return {name: value for name, value in inputs.items() if name in calculator.fields}
