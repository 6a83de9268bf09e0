"""What the plan of a pool's bonding asks: what is there, how far and how high, and what touches the water."""

from __future__ import annotations

from calc.declare import Choice
from calc.vocabulary import SMALLEST, one_of, quantity, several_of, yes_or_no
from calc.words import say

CONDUCTIVE, NONCONDUCTIVE, ABOVE_GROUND = "in-ground-conductive", "in-ground-nonconductive", "above-ground"
STORABLE, SPA_OUTDOORS, SPA_INDOORS = "storable", "spa-outdoors", "spa-indoors"
FOUNTAIN, THERAPEUTIC_TUB = "fountain", "therapeutic-tub"
THERAPEUTIC_PORTABLE, HYDROMASSAGE = "therapeutic-portable", "hydromassage"
LIKE_A_POOL = (CONDUCTIVE, NONCONDUCTIVE, ABOVE_GROUND, SPA_OUTDOORS)
LIKE_A_TUB = (SPA_INDOORS, THERAPEUTIC_TUB)

KIND = one_of(
    say("Kind of pool"),
    say("A permanent pool for therapy: choose it by its shell."),
    (
        Choice(CONDUCTIVE, say("In the ground: concrete, sprayed concrete or block")),
        Choice(NONCONDUCTIVE, say("In the ground: vinyl liner or fiberglass")),
        Choice(ABOVE_GROUND, say("Above ground, permanent")),
        Choice(STORABLE, say("Storable, set up for a season")),
        Choice(SPA_OUTDOORS, say("Spa or hot tub outdoors")),
        Choice(SPA_INDOORS, say("Spa or hot tub indoors")),
        Choice(FOUNTAIN, say("Fountain, permanent")),
        Choice(THERAPEUTIC_TUB, say("Therapeutic tub, fixed or not easily moved")),
        Choice(THERAPEUTIC_PORTABLE, say("Therapeutic tub, portable")),
        Choice(HYDROMASSAGE, say("Whirlpool bathtub, emptied after each use")),
    ),
)
AMENDMENT = yes_or_no(
    say("With the amendment of April 2023"),
    say("It changed the rule for the surface around the pool. It counts for the 2023 edition only."),
)
PARTS = {
    "rebar": say("Bare steel bars in the shell"),
    "coated-rebar": say("Coated steel bars in the shell"),
    "wall-panels": say("Metal wall panels, braces or frame"),
    "hoops": say("Metal bands around wooden staves"),
    "metal-light": say("Underwater light in a metal shell or bracket"),
    "plastic-light": say("Listed low-voltage light in a plastic shell"),
    "ladder": say("Ladder and its sockets"),
    "rail": say("Rail and its sockets"),
    "diving-board": say("Diving board or its stand"),
    "water-feature": say("Slide, spout or other metal feature on the pool"),
    "small-fitting": say("Small metal fitting that stands alone"),
    "cover-anchors": say("Metal anchors of a pool cover"),
    "pump": say("Pump with a metal motor"),
    "double-insulated-pump": say("Double-insulated pump"),
    "heater": say("Heater"),
    "large-heater": say("Large heater with its own bonding instructions"),
    "cover-motor": say("Motor of a pool cover"),
}
THERE = several_of(
    say("What is there"),
    say("Tick all that the pool has. Surfaces and metal nearby come below."),
    tuple(Choice(value, words) for value, words in PARTS.items()),
)
PAVED, UNPAVED, OFF_EARTH = "paved", "unpaved", "off-earth"
SURFACE_WORDS = {
    PAVED: say("Paving beside the pool"),
    UNPAVED: say("Bare ground, grass or gravel beside the pool"),
    OFF_EARTH: say("Deck that does not conduct, kept off the earth"),
}
SURFACES = several_of(
    say("Surface around the pool"),
    say("What lies beside the pool, where people walk."),
    tuple(Choice(value, words) for value, words in SURFACE_WORDS.items()),
)
STEEL, MESH, GRID, RING, OPEN = "steel", "mesh", "grid", "ring", "open"
WAY_WORDS = {
    STEEL: say("bare steel bars, tied together"),
    MESH: say("steel mesh"),
    GRID: say("a copper grid"),
    RING: say("one copper wire around the pool"),
}
WAY = one_of(
    say("How you mean to bond that surface"),
    say(""),
    (
        Choice(OPEN, say("Not decided: show what is allowed")),
        Choice(STEEL, say("Bare steel bars, tied together")),
        Choice(MESH, say("Steel mesh")),
        Choice(GRID, say("Copper grid")),
        Choice(RING, say("One copper wire around the pool")),
    ),
)


def _feet(label, hint, most=1000, *, rare=False):
    return quantity(label, hint, "ft", 0, most, example="4", finest=SMALLEST, rare=rare)


FENCE, DOOR, PIPING, RACEWAY, OTHER_METAL = "fence", "door", "piping", "raceway", "other_metal"
NEAR_METAL = {
    FENCE: say("Metal fence or gate"),
    DOOR: say("Metal door or window frame"),
    PIPING: say("Metal piping"),
    RACEWAY: say("Metal raceway or metal-sheathed cable"),
    OTHER_METAL: say("Other fixed metal"),
}
_FROM_WALL = say("Sideways from the inside wall. Leave it empty if there is none.")
FENCE_FEET = _feet(say("Metal fence: distance"), _FROM_WALL)
DOOR_FEET = _feet(say("Metal door or window frame: distance"), _FROM_WALL)
PIPING_FEET = _feet(say("Metal piping: distance"), _FROM_WALL)
RACEWAY_FEET = _feet(say("Metal raceway or metal-sheathed cable: distance"), _FROM_WALL)
OTHER_FEET = _feet(say("Other fixed metal: distance"), say("An awning, post, sign or box. Leave it empty if none."))
OTHER_HEIGHT = _feet(
    say("Other fixed metal: height"),
    say("Of its lowest part. Say below from where. Empty if it is low."),
    rare=True,
)
NOT_GIVEN, FROM_WATER, FROM_STRUCTURE = "not-given", "water", "structure"
HEIGHT_FROM = one_of(
    say("That height is measured from"),
    say("Only for other fixed metal that is high."),
    (
        Choice(NOT_GIVEN, say("No height entered")),
        Choice(FROM_WATER, say("The highest water: no stand, tower, platform or diving structure is there")),
        Choice(FROM_STRUCTURE, say("The top of the highest stand, tower, platform or diving structure")),
    ),
    rare=True,
)
BARRIER = several_of(
    say("Behind a permanent barrier"),
    say("Metal that a wall or fence keeps out of anyone's reach."),
    tuple(Choice(value, words) for value, words in NEAR_METAL.items()),
    rare=True,
)
BY_PART, BY_SURFACE, BY_NONE = "part", "surface", "none"
WATER_CONTACT = one_of(
    say("Bonded metal that the water always touches"),
    say(""),
    (
        Choice(BY_PART, say("A bonded part, such as a light's shell or a ladder")),
        Choice(BY_SURFACE, say("A metal surface put in for it")),
        Choice(BY_NONE, say("None, or not known")),
    ),
)
WATER_AREA = quantity(
    say("Area of that metal surface"),
    say("What the water touches at all times. Needed only for a surface put in for it."),
    "in2",
    0,
    10_000,
    example="9",
    finest=SMALLEST,
    rare=True,
)
LISTED_SPA = yes_or_no(
    say("Spa listed as self-contained"),
    say("Outdoors: for use above ground, not for indoors only, set on or above grade as its maker says. Indoors: above "
        "a finished floor."),
)
RIM_HEIGHT = quantity(
    say("Height of the spa's rim"),
    say("Above every surface near it; steps that do not conduct do not count. For a listed spa outdoors."),
    "in",
    0,
    240,
    example="28 in",
    finest=SMALLEST,
    rare=True,
)
WALL_HEIGHT = _feet(
    say("Height of a permanent wall or building beside the pool"),
    say("Empty if none stands between the pool and a surface near it."),
    rare=True,
)
POOL_LENGTH = quantity(
    say("Length of the pool"),
    say("Inside the walls; of a free form, the rectangle around it."),
    "ft",
    1,
    1000,
    example="32",
)
POOL_WIDTH = quantity(say("Width of the pool"), say("As the length."), "ft", 1, 1000, example="16")
