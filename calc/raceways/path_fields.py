"""The fields of the calculator of raceways as grounding path."""

from __future__ import annotations

from calc import places
from calc.calculator import Choice
from calc.messages import message
from calc.raceways.flexible_path import NOT_GIVEN, SIZES
from calc.shared_fields import device_rating, one_of, quantity, trade_size, yes_or_no

MAX_FEET = 1000
MAX_SQUARE_INCH = 100

DEVICE = device_rating(message("Overcurrent device ahead"), message("The largest one that protects conductors in it."))
TRADE_SIZE = trade_size(
    message("Trade size"),
    message("It decides for flexible conduit only."),
    SIZES,
    Choice(NOT_GIVEN, message("Not flexible conduit")),
)
LENGTH = quantity(
    message("Flexible length in the fault path"),
    message("In feet: all flexible metal pieces in the same path, added. It decides for flexible conduit only."),
    "ft",
    0,
    MAX_FEET,
    example=message("6 ft or 1.8 m"),
)
FLEXIBILITY = one_of(
    message("Vibration or movement after installation"),
    message("A motor, a pump, equipment that moves: flexibility is needed when the work is done."),
    (Choice("not-needed", message("None")), Choice("needed", message("It vibrates or moves"))),
)
FITTINGS = one_of(
    message("Fittings"),
    message("At both ends and at every joint."),
    (
        Choice("listed", message("Listed for it, all tight, paint removed")),
        Choice("not-listed", message("Not listed, loose or missing")),
    ),
)
LISTED = yes_or_no(
    message("Listed or identified for it"),
    message(
        "Flexible conduit, wireway, gutter, surface raceway: listed. Metal-clad cable, tray: identified for "
        "grounding. Armored cable: with a strip under the armor."
    ),
)
SMALL_FLEXIBLE = yes_or_no(
    message("Another flexible piece of trade size 3/8 or 1/2 in the path"),
    message("It counts for liquidtight flexible metal conduit over 1/2."),
)
STAINLESS = yes_or_no(message("Stainless steel conduit or core"), message("It counts for flexible conduit."))
TRAY_METAL = one_of(
    message("Metal of the tray"), message(""), (
        Choice("steel", message("Steel")), Choice("aluminum", message("Aluminum"))
    ), rare=True
)
TRAY_AREA = quantity(
    message("Metal area of the tray"),
    message("As marked on it, in²: both side rails together, or the one piece. It decides for a tray only."),
    "in2",
    0,
    MAX_SQUARE_INCH,
    example="0.7",
    rare=True,
)
QUALIFIED = yes_or_no(
    message("Only qualified persons service the tray"), message("Maintenance and supervision see to it.")
)
SIDE = one_of(
    message("Where it runs"),
    message(""),
    (places.LOAD_SIDE, places.SUPPLY_SIDE),
    rare=True,
)
LOCATION = one_of(
    message("Location"),
    message(""),
    (places.ORDINARY, places.HAZARDOUS, places.PATIENT_CARE),
    rare=True,
)
