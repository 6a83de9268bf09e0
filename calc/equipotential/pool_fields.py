"""What the plan of a pool's bonding asks: what is there, how far and how high, and what touches the water."""

from __future__ import annotations

from calc.calculator import Choice, Field
from calc.messages import Message, message
from calc.shared_fields import SMALLEST, one_of, quantity, several_of, yes_or_no

CONDUCTIVE, NONCONDUCTIVE, ABOVE_GROUND = "in-ground-conductive", "in-ground-nonconductive", "above-ground"
STORABLE, SPA_OUTDOORS, SPA_INDOORS = "storable", "spa-outdoors", "spa-indoors"
FOUNTAIN, THERAPEUTIC_TUB = "fountain", "therapeutic-tub"
THERAPEUTIC_PORTABLE, HYDROMASSAGE = "therapeutic-portable", "hydromassage"
LIKE_A_POOL = (CONDUCTIVE, NONCONDUCTIVE, ABOVE_GROUND, SPA_OUTDOORS)
LIKE_A_TUB = (SPA_INDOORS, THERAPEUTIC_TUB)

KIND = one_of(
    message("Kind of pool"),
    message("Permanent therapeutic pool: choose it by its shell."),
    (
        Choice(CONDUCTIVE, message("In-ground: concrete, gunite (sprayed concrete) or block")),
        Choice(NONCONDUCTIVE, message("In-ground: vinyl liner or fiberglass")),
        Choice(ABOVE_GROUND, message("Above-ground, permanent")),
        Choice(STORABLE, message("Storable, set up for a season")),
        Choice(SPA_OUTDOORS, message("Spa or hot tub outdoors")),
        Choice(SPA_INDOORS, message("Spa or hot tub indoors")),
        Choice(FOUNTAIN, message("Fountain, permanent")),
        Choice(THERAPEUTIC_TUB, message("Therapeutic tub, fixed or not easily moved")),
        Choice(THERAPEUTIC_PORTABLE, message("Therapeutic tub, portable")),
        Choice(HYDROMASSAGE, message("Whirlpool bathtub, emptied after each use")),
    ),
)
AMENDMENT = yes_or_no(
    message("With the amendment of April 2023"),
    message("It changed the rule for the surface around the pool. It applies to the 2023 edition only."),
)
PARTS = {
    "rebar": message("Bare steel bars in the shell"),
    "coated-rebar": message("Coated steel bars in the shell"),
    "wall-panels": message("Metal wall panels, braces or frame"),
    "hoops": message("Metal bands around wooden staves"),
    "metal-light": message("Underwater light in a metal shell or bracket"),
    "plastic-light": message("Listed low-voltage light in a plastic shell"),
    "ladder": message("Ladder and its sockets"),
    "rail": message("Rail and its sockets"),
    "diving-board": message("Diving board or its stand"),
    "water-feature": message("Slide, spout or other metal feature on the pool"),
    "small-fitting": message("Small isolated metal fitting"),
    "cover-anchors": message("Metal anchors of a pool cover"),
    "pump": message("Pump with a metal motor"),
    "double-insulated-pump": message("Double-insulated pump"),
    "heater": message("Heater"),
    "large-heater": message("Large heater with its own bonding instructions"),
    "cover-motor": message("Pool cover motor"),
}
THERE = several_of(
    message("What is there"),
    message("Tick all that the pool has. Surfaces and metal nearby come below."),
    tuple(Choice(value, words) for value, words in PARTS.items()),
)
PAVED, UNPAVED, OFF_EARTH = "paved", "unpaved", "off-earth"
SURFACE_WORDS = {
    PAVED: message("Paving beside the pool"),
    UNPAVED: message("Bare ground, grass or gravel beside the pool"),
    OFF_EARTH: message("Nonconductive deck, kept off the earth"),
}
SURFACES = several_of(
    message("Surface around the pool"),
    message("What lies beside the pool, where people walk."),
    tuple(Choice(value, words) for value, words in SURFACE_WORDS.items()),
)
STEEL, MESH, GRID, RING, OPEN = "steel", "mesh", "grid", "ring", "open"
WAY_WORDS = {
    STEEL: message("bare steel bars, tied together"),
    MESH: message("steel mesh"),
    GRID: message("a copper grid"),
    RING: message("one copper wire around the pool"),
}
WAY = one_of(
    message("How you plan to bond that surface"),
    message(""),
    (
        Choice(OPEN, message("Not decided: show what is permitted")),
        Choice(STEEL, message("Bare steel bars, tied together")),
        Choice(MESH, message("Steel mesh")),
        Choice(GRID, message("Copper grid")),
        Choice(RING, message("One copper wire around the pool")),
    ),
)


def _feet(label: Message, hint: Message, most: float = 1000, *, rare: bool = False) -> Field:
    return quantity(label, hint, "ft", 0, most, example="4", finest=SMALLEST, rare=rare)


FENCE, DOOR, PIPING, RACEWAY, OTHER_METAL = "fence", "door", "piping", "raceway", "other_metal"
NEAR_METAL = {
    FENCE: message("Metal fence or gate"),
    DOOR: message("Metal door or window frame"),
    PIPING: message("Metal piping"),
    RACEWAY: message("Metal raceway or metal-sheathed cable"),
    OTHER_METAL: message("Other fixed metal"),
}
_FROM_WALL = message("Horizontally from the inside wall. Leave empty if there is none.")
FENCE_FEET = _feet(message("Metal fence: distance"), _FROM_WALL)
DOOR_FEET = _feet(message("Metal door or window frame: distance"), _FROM_WALL)
PIPING_FEET = _feet(message("Metal piping: distance"), _FROM_WALL)
RACEWAY_FEET = _feet(message("Metal raceway or metal-sheathed cable: distance"), _FROM_WALL)
OTHER_FEET = _feet(
    message("Other fixed metal: distance"), message("An awning, post, sign or box. Leave empty if there is none.")
)
OTHER_HEIGHT = _feet(
    message("Other fixed metal: height"),
    message("Height of its lowest part. Say below what you measured from. Leave empty if it is low."),
    rare=True,
)
NOT_GIVEN, FROM_WATER, FROM_STRUCTURE = "not-given", "water", "structure"
HEIGHT_FROM = one_of(
    message("Height measured from"),
    message("Only for other fixed metal that is high."),
    (
        Choice(NOT_GIVEN, message("No height entered")),
        Choice(FROM_WATER, message("The highest water level: no stand, tower, platform or diving structure is there")),
        Choice(FROM_STRUCTURE, message("The top of the highest stand, tower, platform or diving structure")),
    ),
    rare=True,
)
BARRIER = several_of(
    message("Behind a permanent barrier"),
    message("Metal that a wall or fence keeps out of anyone's reach."),
    tuple(Choice(value, words) for value, words in NEAR_METAL.items()),
    rare=True,
)
BY_PART, BY_SURFACE, BY_NONE = "part", "surface", "none"
WATER_CONTACT = one_of(
    message("Bonded metal that the water always touches"),
    message(""),
    (
        Choice(BY_PART, message("A bonded part, such as a light's shell or a ladder")),
        Choice(BY_SURFACE, message("A metal surface put in for it")),
        Choice(BY_NONE, message("None, or not known")),
    ),
)
WATER_AREA = quantity(
    message("Area of that metal surface"),
    message("What the water touches at all times. Needed only for a surface put in for it."),
    "in2",
    0,
    10_000,
    example="9",
    finest=SMALLEST,
    rare=True,
)
LISTED_SPA = yes_or_no(
    message("Spa listed as self-contained"),
    message(
        "Outdoors: for aboveground use, not indoors only, set on or above grade per its instructions. Indoors: above "
        "a finished floor."
    ),
)
RIM_HEIGHT = quantity(
    message("Height of the spa's rim"),
    message("Above every surface near it, leaving out nonconductive steps. For a listed spa outdoors."),
    "in",
    0,
    240,
    example="28 in",
    finest=SMALLEST,
    rare=True,
)
WALL_HEIGHT = _feet(
    message("Height of a permanent wall or building beside the pool"),
    message("Leave empty if there is none between the pool and a surface near it."),
    rare=True,
)
POOL_LENGTH = quantity(
    message("Length of the pool"),
    message("Inside the walls. Freeform pool: the rectangle around it."),
    "ft",
    1,
    1000,
    example="32",
)
POOL_WIDTH = quantity(message("Width of the pool"), message("Measured like the length."), "ft", 1, 1000, example="16")
