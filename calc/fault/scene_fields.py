"""What may be asked of the scene: where the fault is, which bond is missing, loose or one too many, who touches it."""

from __future__ import annotations

from calc.declare import Choice
from calc.fault.scene_words import ADDED_WORDS, BOND_WORDS, PART_WORDS
from calc.vocabulary import one_of, quantity, several_of
from calc.words import say

MOST_OHM = 100_000
MOST_FEET = 2000


FAULT = one_of(
    say("Where the hot conductor touches metal"),
    say("One fault at a time."),
    (Choice("none", say("Nowhere: no fault")), *(Choice(part, words) for part, words in PART_WORDS.items())),
)
MISSING = several_of(
    say("Taken away"), say("Each one missing or broken."), tuple(Choice(*each) for each in BOND_WORDS.items())
)
LOOSE = several_of(
    say("Loose"),
    say("There, but with some ohms in it."),
    tuple(Choice(*each) for each in BOND_WORDS.items()),
    rare=True,
)
LOOSE_OHM = quantity(
    say("Ohms of a loose joint"), say("It counts for what is loose."), "ohm", 0.001, 1000, example="1", rare=True
)
ADDED = several_of(
    say("One too many, or in the wrong place"),
    say("Things found on site that should not be there."),
    tuple(Choice(*each) for each in ADDED_WORDS.items()),
)
TOUCHED = one_of(
    say("Someone touches"),
    say("Standing on the earth, far from the electrodes."),
    (
        Choice("none", say("Nobody")),
        *(Choice(part, words) for part, words in PART_WORDS.items() if part != "buried-elbow"),
    ),
)
FEEDER_PATH = one_of(
    say("Grounding path of the feeder"),
    say("From the panel back to the first disconnect."),
    (
        Choice("wire", say("A wire")),
        Choice("raceway", say("The steel raceway alone")),
        Choice("both", say("Wire and steel raceway")),
    ),
    rare=True,
)
BRANCH_PATH = one_of(
    say("Grounding path of the machine"),
    say("From the machine back to the panel."),
    (
        Choice("wire", say("A wire")),
        Choice("flexible-raceway", say("A flexible raceway alone, without a jumper")),
        Choice("both", say("Wire and flexible raceway")),
    ),
    rare=True,
)
SOURCE = one_of(
    say("Source"),
    say("The first disconnect is the service disconnect, or that of the transformer."),
    (
        Choice("utility", say("Utility, 120/240 V single phase")),
        Choice("transformer", say("A transformer of its own, 208Y/120 V")),
    ),
)
LOADS = one_of(
    say("Other loads"),
    say("About 20 A on one hot conductor and 5 A on the other."),
    (Choice("on", say("On")), Choice("off", say("Off"))),
    rare=True,
)
PERSON_OHM = quantity(
    say("Resistance of that person"),
    say("1000 ohm is the usual figure; wet and barefoot 500."),
    "ohm",
    100,
    MOST_OHM,
    example="1000",
    rare=True,
)
ELECTRODE_OHM = quantity(
    say("Electrode at the first disconnect, to earth"),
    say("A rod in ordinary soil: tens of ohms."),
    "ohm",
    0.1,
    10_000,
    example="25",
    rare=True,
)
SUPPLY_LENGTH = quantity(say("Length of the supply"), say("One way."), "ft", 1, MOST_FEET, example="75 ft", rare=True)
FEEDER_LENGTH = quantity(say("Length of the feeder"), say("One way."), "ft", 1, MOST_FEET, example="50 ft", rare=True)
BRANCH_LENGTH = quantity(
    say("Length of the branch circuit"), say("One way."), "ft", 1, MOST_FEET, example="50 ft", rare=True
)
