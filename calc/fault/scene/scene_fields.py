"""What may be asked of the scene: where the fault is, which bond is missing, loose or one too many, who touches it."""

from __future__ import annotations

from calc.calculator import Choice
from calc.fault.scene.scene_words import ADDED_WORDS, BOND_WORDS, PART_WORDS
from calc.messages import message
from calc.shared_fields import one_of, quantity, several_of

MAX_OHM = 100_000
MAX_FEET = 2000


FAULT = one_of(
    message("Where a hot conductor touches metal"),
    message("One fault at a time."),
    (Choice("none", message("Nowhere: no fault")), *(Choice(part, words) for part, words in PART_WORDS.items())),
)
MISSING = several_of(
    message("Taken away"), message("Each one missing or broken."), tuple(Choice(*each) for each in BOND_WORDS.items())
)
LOOSE = several_of(
    message("Loose"),
    message("In place, but with some ohms in it."),
    tuple(Choice(*each) for each in BOND_WORDS.items()),
    rare=True,
)
LOOSE_OHM = quantity(
    message("Ohms of a loose joint"), message("Only for what is loose."), "ohm", 0.001, 1000, example="1", rare=True
)
ADDED = several_of(
    message("One too many, or in the wrong place"),
    message("Found on site, but should not be there."),
    tuple(Choice(*each) for each in ADDED_WORDS.items()),
)
TOUCHED = one_of(
    message("Someone touches"),
    message("Standing on the earth, far from the electrodes."),
    (
        Choice("none", message("Nobody")),
        *(Choice(part, words) for part, words in PART_WORDS.items() if part != "buried-elbow"),
    ),
)
FEEDER_PATH = one_of(
    message("Grounding path of the feeder"),
    message("From the panel back to the first disconnect."),
    (
        Choice("wire", message("Wire")),
        Choice("raceway", message("Steel raceway alone")),
        Choice("both", message("Wire and steel raceway")),
    ),
    rare=True,
)
BRANCH_PATH = one_of(
    message("Grounding path of the machine"),
    message("From the machine back to the panel."),
    (
        Choice("wire", message("Wire")),
        Choice("flexible-raceway", message("Flexible raceway alone, without a jumper")),
        Choice("both", message("Wire and flexible raceway")),
    ),
    rare=True,
)
SOURCE = one_of(
    message("Source"),
    message("The first disconnect is the service disconnect, or that of the transformer."),
    (
        Choice("utility", message("Utility, 120/240 V single phase")),
        Choice("transformer", message("Transformer (separately derived system), 208Y/120 V")),
    ),
)
LOADS = one_of(
    message("Other loads"),
    message("About 20 A on one hot conductor and 5 A on the other."),
    (Choice("on", message("On")), Choice("off", message("Off"))),
    rare=True,
)
PERSON_OHM = quantity(
    message("Resistance of the person"),
    message("1000 ohm is the usual figure; 500 if wet and barefoot."),
    "ohm",
    100,
    MAX_OHM,
    example="1000",
    rare=True,
)
ELECTRODE_OHM = quantity(
    message("Resistance of the electrode at the first disconnect"),
    message("To earth. A rod in ordinary soil: tens of ohms."),
    "ohm",
    0.1,
    10_000,
    example="25",
    rare=True,
)
SUPPLY_LENGTH = quantity(
    message("Length of the supply"), message("One way."), "ft", 1, MAX_FEET, example="75 ft", rare=True
)
FEEDER_LENGTH = quantity(
    message("Length of the feeder"), message("One way."), "ft", 1, MAX_FEET, example="50 ft", rare=True
)
BRANCH_LENGTH = quantity(
    message("Length of the branch circuit"), message("One way."), "ft", 1, MAX_FEET, example="50 ft", rare=True
)
