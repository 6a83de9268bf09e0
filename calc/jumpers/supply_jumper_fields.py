"""What a supply-side bonding jumper is and where it runs: the fields, and what each rules out."""

from __future__ import annotations

from calc import places
from calc.calculator import Choice, FieldError, NotCovered
from calc.conductors.arrangement import raceways_of
from calc.identify.supply_jumper_place import AT_SERVICE
from calc.messages import Message, message
from calc.raceways.kind import FLEXIBLE, KIND_WORDS, kind_choices
from calc.raceways.raceway_as_supply_jumper import NONFLEXIBLE, may_be_supply_jumper
from calc.shared_fields import one_of, quantity
from calc.trace import Trace, shown_number

OUTSIDE_LONGEST = "raceways/jumper_outside_longest"
MAX_FEET = 1000
NOT_GIVEN = "not-given"
_KINDS = (*NONFLEXIBLE, *FLEXIBLE, "nonmetallic-raceway")

FORM = one_of(
    message("Type of jumper"),
    message("A wire, a busbar, or the metal raceway itself."),
    (
        Choice("wire", message("Wire")),
        Choice("busbar", message("Busbar")),
        Choice("raceway", message("Metal raceway, no wire")),
    ),
)
RACEWAY = one_of(
    message("Type of raceway"),
    message("Required only where the raceway itself is the jumper."),
    (
        Choice(NOT_GIVEN, message("Not required for a wire or bus")),
        *kind_choices(*_KINDS),
    ),
)
RACEWAYS = raceways_of(message("Number of raceways or cables the sets are run in."))
ARRANGEMENT = one_of(
    message("Number of jumpers"),
    message("With one raceway, both choices give the same answer."),
    (
        Choice("one-per-raceway", message("One per raceway")),
        Choice("single", message("One for all raceways together")),
    ),
)
RUN = one_of(
    message("Jumper routing"),
    message("A wire or bus may run inside the raceway or enclosure, or outside with it."),
    (places.INSIDE, places.OUTSIDE, places.OUTSIDE_AT_POLE),
    rare=True,
)


LENGTH = quantity(
    message("Length of the jumper outside the raceway"),
    message("Applies only where the jumper runs outside."),
    "ft",
    0,
    MAX_FEET,
    example=message("6 ft or 1.8 m"),
    zero=False,
    rare=True,
)


def require_whole_sets(sets: int, raceways: int, trace: Trace) -> None:
    """Raise NotCovered where the sets do not divide evenly into the raceways."""
    if sets % raceways:
        raise NotCovered(
            message(
                "{sets} sets in parallel do not divide evenly into {raceways} raceways.", sets=sets, raceways=raceways
            ),
            message(
                "Each raceway must hold the same number of complete sets ({section}). Enter one raceway and its sets.",
                section=trace.section("conductors/parallel_minimum"),
            ),
        )


def require_length_within_limit(run: str, length: float | None, trace: Trace) -> None:
    """Raise NotCovered where a jumper outside its raceway is longer than the edition allows."""
    if run != "outside":
        return
    longest = trace.cite(OUTSIDE_LONGEST)
    if length is not None and length > longest.value:
        raise NotCovered(
            message(
                "Outside, a bonding jumper must be no longer than {longest} ft ({section}). This one is {length} ft.",
                longest=longest.value,
                section=longest.section,
                length=shown_number(length),
            ),
            message(
                "Run it inside the raceway, or shorten it. Outdoor poles have an exception ({section}).",
                section=trace.section("jumpers/jumper_outside_at_poles"),
            ),
        )


def against_the_raceway(raceway: str, place: str, trace: Trace) -> Message | None:
    """Return why the raceway may not be the jumper, None where it may. Raises: FieldError without its kind."""
    if raceway == NOT_GIVEN:
        raise FieldError("raceway", message("Choose the type of raceway used as the jumper."))
    if raceway == "nonmetallic-raceway":
        return message("A nonmetallic raceway is not a fault-current path. Install a wire.")
    if place == "generator-joined-neutral":
        return message(
            "The rule for this generator requires a sized jumper and does not name a raceway ({section}). Install a "
            "wire.",
            section=trace.section("jumpers/generator_supply_side_jumper"),
        )
    if may_be_supply_jumper(raceway):
        return None
    if place not in AT_SERVICE:
        return message(
            "{kind} is not permitted as the jumper: only a nonflexible metal raceway is ({section}). Install a wire.",
            kind=KIND_WORDS[raceway],
            section=trace.section("raceways/supply_side_raceway"),
        )
    flexible = trace.cite("jumpers/flexible_service_raceway")
    if raceway == "flexible-metallic-tubing":
        raise NotCovered(
            message("This edition does not name flexible metallic tubing for services."),
            message(
                "It names flexible metal conduit and liquidtight flexible metal conduit, no longer than {longest} ft, "
                "with a bonding jumper ({section}).",
                longest=flexible.value,
                section=flexible.section,
            ),
        )
    return message(
        "{kind} on a service must be no longer than {longest} ft and needs a wire-type bonding jumper with it "
        "({section}).",
        kind=KIND_WORDS[raceway],
        longest=flexible.value,
        section=flexible.section,
    )
