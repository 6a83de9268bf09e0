"""The fields of the calculator of raceways as grounding path."""

from __future__ import annotations

from calc import places
from calc.calculator import Choice
from calc.messages import message
from calc.raceways.flexible_path import NOT_GIVEN, SIZES
from calc.shared_fields import device_rating, one_of, quantity, trade_size, yes_or_no

MAX_FEET = 1000
MAX_SQUARE_INCH = 100

DEVICE = device_rating(
    message("Upstream breaker or fuse"), message("The largest one protecting conductors in the raceway.")
)
TRADE_SIZE = trade_size(
    message("Trade size"),
    message("Applies only to flexible conduit."),
    SIZES,
    Choice(NOT_GIVEN, message("Not flexible conduit")),
)
LENGTH = quantity(
    message("Total flexible length in the fault path"),
    message("In feet: total of all flexible metal pieces in the same path. Applies only to flexible conduit."),
    "ft",
    0,
    MAX_FEET,
    example=message("6 ft or 1.8 m"),
)
FLEXIBILITY = one_of(
    message("Vibration or movement after installation"),
    message("A motor, a pump, equipment that moves: flexibility is needed after installation."),
    (Choice("not-needed", message("None")), Choice("needed", message("Vibrates or moves"))),
)
FITTINGS = one_of(
    message("Fittings"),
    message("At both ends and at every joint or coupling."),
    (
        Choice("listed", message("Listed for the use, all tight, paint removed")),
        Choice("not-listed", message("Not listed, loose or missing")),
    ),
)
LISTED = yes_or_no(
    message("Listed or identified for grounding"),
    message(
        "Flexible conduit, wireway, gutter, surface raceway: listed. Metal-clad cable, tray: identified for grounding. "
        "Armored cable: with a bonding strip under the armor."
    ),
)
SMALL_FLEXIBLE = yes_or_no(
    message("Another flexible piece of trade size 3/8 or 1/2 in the path"),
    message("Applies to liquidtight flexible metal conduit larger than 1/2."),
)
STAINLESS = yes_or_no(message("Stainless steel conduit or core"), message("Applies to flexible conduit."))
TRAY_METAL = one_of(
    message("Tray material"), message(""), (
        Choice("steel", message("Steel")), Choice("aluminum", message("Aluminum"))
    ), rare=True
)
TRAY_AREA = quantity(
    message("Cross-sectional metal area of the tray"),
    message("As marked on the tray, in²: total of both side rails, or the one-piece tray. Applies only to a tray."),
    "in2",
    0,
    MAX_SQUARE_INCH,
    example="0.7",
    rare=True,
)
QUALIFIED = yes_or_no(
    message("Only qualified persons service the tray"), message("Ensured by maintenance and supervision.")
)
SIDE = one_of(
    message("Location in the circuit"),
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
