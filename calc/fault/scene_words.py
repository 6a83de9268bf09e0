"""What the parts, bonds and branches of the scene are called, alone and inside a sentence."""

from __future__ import annotations

from calc.words import say

PART_WORDS = {
    "supply-raceway": say("Metal raceway ahead of the first disconnect"),
    "service": say("Enclosure of the first disconnect"),
    "panel": say("Panel"),
    "machine": say("Machine"),
    "buried-elbow": say("Buried metal elbow in plastic conduit"),
}
PART_IN_SENTENCE = {
    "supply-raceway": say("the metal raceway ahead of the first disconnect"),
    "service": say("the enclosure of the first disconnect"),
    "panel": say("the panel"),
    "machine": say("the machine"),
    "buried-elbow": say("the buried metal elbow"),
}
PART_IN_PICTURE = {
    "supply-raceway": say("raceway"),
    "service": say("disconnect"),
    "panel": say("panel"),
    "machine": say("machine"),
    "buried-elbow": say("elbow"),
}
BOND_WORDS = {
    "main-bonding-jumper": say("Main bonding jumper (at a transformer: system bonding jumper)"),
    "supply-side-bonding-jumper": say("Supply-side bonding jumper of the raceway ahead"),
    "feeder-return": say("Grounding path from the panel back to the first disconnect"),
    "branch-return": say("Grounding path from the machine back to the panel"),
    "supply-neutral": say("Neutral between source and first disconnect"),
    "feeder-neutral": say("Neutral between first disconnect and panel"),
}
ADDED_WORDS = {
    "neutral-bond-at-panel": say("Neutral bonded to metal in the panel too"),
    "machine-electrode": say("A ground rod at the machine"),
    "electrode-on-enclosure": say("The electrode on the enclosure instead of the neutral"),
}
BRANCH_WORDS = {
    "supply-hot-a": say("Hot conductor of the supply that feeds the fault"),
    "supply-neutral": say("Neutral of the supply"),
    "feeder-neutral": say("Neutral of the feeder"),
    "main-bonding-jumper": say("Main bonding jumper"),
    "supply-side-bonding-jumper": say("Supply-side bonding jumper"),
    "feeder-grounding-conductor": say("Grounding conductor of the feeder"),
    "feeder-raceway": say("Steel raceway of the feeder"),
    "branch-grounding-conductor": say("Grounding conductor of the machine"),
    "flexible-raceway": say("Flexible raceway of the machine"),
    "neutral-bond-at-panel": say("Second neutral bond, in the panel"),
    "service-electrode": say("Electrode at the first disconnect"),
    "electrode-on-enclosure": say("Electrode on the enclosure"),
    "machine-electrode": say("Ground rod at the machine"),
    "source-electrode": say("Electrode at the source"),
    "elbow-soil": say("Soil around the buried elbow"),
    "person": say("Person"),
}
DEVICE_WORDS = {
    "branch": say("20 A breaker of the branch circuit"),
    "feeder": say("60 A breaker of the feeder"),
    "supply": say("100 A breaker of the first disconnect"),
}
