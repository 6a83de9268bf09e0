"""The fields of the calculator of raceways as grounding path."""

from __future__ import annotations

from calc import places
from calc.declare import Choice
from calc.raceways.flexible_path import NOT_GIVEN, SIZES
from calc.vocabulary import device_rating, one_of, quantity, trade_size, yes_or_no
from calc.words import say

MOST_FEET = 1000
MOST_SQUARE_INCH = 100

DEVICE = device_rating(say("Overcurrent device ahead"), say("The largest one that protects conductors in it."))
TRADE_SIZE = trade_size(
    say("Trade size"),
    say("It decides for flexible conduit only."),
    SIZES,
    Choice(NOT_GIVEN, say("Not flexible conduit")),
)
LENGTH = quantity(
    say("Flexible length in the fault path"),
    say("In feet: all flexible metal pieces in the same path, added. It decides for flexible conduit only."),
    "ft",
    0,
    MOST_FEET,
    example=say("6 ft or 1.8 m"),
)
FLEXIBILITY = one_of(
    say("Vibration or movement after installation"),
    say("A motor, a pump, equipment that moves: flexibility is needed when the work is done."),
    (Choice("not-needed", say("None")), Choice("needed", say("It vibrates or moves"))),
)
FITTINGS = one_of(
    say("Fittings"),
    say("At both ends and at every joint."),
    (
        Choice("listed", say("Listed for it, all tight, paint removed")),
        Choice("not-listed", say("Not listed, loose or missing")),
    ),
)
LISTED = yes_or_no(
    say("Listed or identified for it"),
    say(
        "Flexible conduit, wireway, gutter, surface raceway: listed. Metal-clad cable, tray: identified for "
        "grounding. Armored cable: with a strip under the armor."
    ),
)
SMALL_FLEXIBLE = yes_or_no(
    say("Another flexible piece of trade size 3/8 or 1/2 in the path"),
    say("It counts for liquidtight flexible metal conduit over 1/2."),
)
STAINLESS = yes_or_no(say("Stainless steel conduit or core"), say("It counts for flexible conduit."))
TRAY_METAL = one_of(
    say("Metal of the tray"), say(""), (Choice("steel", say("Steel")), Choice("aluminum", say("Aluminum"))), rare=True
)
TRAY_AREA = quantity(
    say("Metal area of the tray"),
    say("As marked on it, in²: both side rails together, or the one piece. It decides for a tray only."),
    "in2",
    0,
    MOST_SQUARE_INCH,
    example="0.7",
    rare=True,
)
QUALIFIED = yes_or_no(say("Only qualified persons service the tray"), say("Maintenance and supervision see to it."))
SIDE = one_of(
    say("Where it runs"),
    say(""),
    (places.LOAD_SIDE, places.SUPPLY_SIDE),
    rare=True,
)
LOCATION = one_of(
    say("Location"),
    say(""),
    (places.ORDINARY, places.HAZARDOUS, places.PATIENT_CARE),
    rare=True,
)
