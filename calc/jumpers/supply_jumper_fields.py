"""What a supply-side bonding jumper is and where it runs: the fields, and what each rules out."""

from __future__ import annotations

from calc import places
from calc.conductors.arrangement import raceways_of
from calc.declare import Choice, Mend, NotCovered
from calc.naming.supply_jumper_place import AT_SERVICE
from calc.raceways.kind import FLEXIBLE, KIND_WORDS, kind_choices
from calc.raceways.raceway_as_supply_jumper import NONFLEXIBLE, may_be_supply_jumper
from calc.vocabulary import one_of, quantity
from calc.words import Sentence, say
from calc.working import Working, shown_number

OUTSIDE_LONGEST = "raceways/jumper_outside_longest"
MOST_FEET = 1000
NOT_GIVEN = "not-given"
_KINDS = (*NONFLEXIBLE, *FLEXIBLE, "nonmetallic-raceway")

FORM = one_of(
    say("What the jumper is"),
    say("A wire, a bus, or the metal raceway itself."),
    (
        Choice("wire", say("Wire")),
        Choice("busbar", say("Busbar")),
        Choice("raceway", say("The raceway itself, no wire")),
    ),
)
RACEWAY = one_of(
    say("Kind of raceway"),
    say("Needed only where the raceway itself is to be the jumper."),
    (
        Choice(NOT_GIVEN, say("Not needed for a wire or bus")),
        *kind_choices(*_KINDS),
    ),
)
RACEWAYS = raceways_of(say("In how many raceways or cables the sets run."))
ARRANGEMENT = one_of(
    say("Jumpers"),
    say("With one raceway both are the same."),
    (
        Choice("one-per-raceway", say("One for each raceway")),
        Choice("single", say("One for all raceways together")),
    ),
)
RUN = one_of(
    say("Where the jumper runs"),
    say("A wire or bus may run inside the raceway or enclosure, or outside along it."),
    (places.INSIDE, places.OUTSIDE, places.OUTSIDE_AT_POLE),
    rare=True,
)


LENGTH = quantity(
    say("Length of the jumper outside"),
    say("It counts where the jumper runs outside."),
    "ft",
    0,
    MOST_FEET,
    example=say("6 ft or 1.8 m"),
    zero=False,
    rare=True,
)


def stay_with_whole_sets(sets: int, raceways: int, working: Working) -> None:
    """Raise NotCovered where the sets do not divide evenly into the raceways."""
    if sets % raceways:
        raise NotCovered(
            say("Parallel sets ({sets}) do not divide evenly into {raceways} raceways.", sets=sets, raceways=raceways),
            say(
                "Each raceway holds the same number of whole sets ({section}). Enter one raceway and its sets.",
                section=working.section("conductors/parallel_minimum"),
            ),
        )


def stay_within_the_length(run: str, length: float | None, working: Working) -> None:
    """Raise NotCovered where a jumper outside its raceway is longer than the edition allows."""
    if run != "outside":
        return
    longest = working.cite(OUTSIDE_LONGEST)
    if length is not None and length > longest.value:
        raise NotCovered(
            say(
                "Outside, a bonding jumper is at most {longest} ft long ({section}). This one is {length} ft.",
                longest=longest.value,
                section=longest.section,
                length=shown_number(length),
            ),
            say(
                "Run it inside the raceway, or shorten it. Poles outdoors have an exception ({section}).",
                section=working.section("jumpers/jumper_outside_at_poles"),
            ),
        )


def against_the_raceway(raceway: str, place: str, working: Working) -> Sentence | None:
    """Give why the raceway may not be the jumper, None where it may. Raises: Mend without its kind."""
    if raceway == NOT_GIVEN:
        raise Mend("raceway", say("Choose the kind of raceway that is to be the jumper."))
    if raceway == "nonmetallic-raceway":
        return say("A nonmetallic raceway is no path. It needs a wire.")
    if place == "generator-joined-neutral":
        return say(
            "The rule for such a generator asks for a sized jumper and names no raceway ({section}). Run a wire.",
            section=working.section("jumpers/generator_supply_side_jumper"),
        )
    if may_be_supply_jumper(raceway):
        return None
    if place not in AT_SERVICE:
        return say(
            "{kind} may not be the jumper: only a nonflexible metal raceway may ({section}). It needs a wire.",
            kind=KIND_WORDS[raceway],
            section=working.section("raceways/supply_side_raceway"),
        )
    flexible = working.cite("jumpers/flexible_service_raceway")
    if raceway == "flexible-metallic-tubing":
        raise NotCovered(
            say("The edition does not name flexible metallic tubing for services."),
            say(
                "It names flexible metal conduit and its liquidtight kind, at most {longest} ft, with a jumper along "
                "it ({section}).",
                longest=flexible.value,
                section=flexible.section,
            ),
        )
    return say(
        "{kind} on a service is at most {longest} ft long and needs a wire along it ({section}).",
        kind=KIND_WORDS[raceway],
        longest=flexible.value,
        section=flexible.section,
    )
