"""What the parts, bonds and branches of the scene are called, alone and inside a sentence."""

from __future__ import annotations

from calc.messages import message

PART_WORDS = {
    "supply-raceway": message("Metal raceway ahead of the first disconnect"),
    "service": message("Enclosure of the first disconnect"),
    "panel": message("Panel"),
    "machine": message("Machine"),
    "buried-elbow": message("Buried metal elbow in plastic conduit"),
}
PART_IN_SENTENCE = {
    "supply-raceway": message("the metal raceway ahead of the first disconnect"),
    "service": message("the enclosure of the first disconnect"),
    "panel": message("the panel"),
    "machine": message("the machine"),
    "buried-elbow": message("the buried metal elbow"),
}
PART_IN_PICTURE = {
    "supply-raceway": message("raceway"),
    "service": message("disconnect"),
    "panel": message("panel"),
    "machine": message("machine"),
    "buried-elbow": message("elbow"),
}
BOND_WORDS = {
    "main-bonding-jumper": message("Main bonding jumper (at a transformer: system bonding jumper)"),
    "supply-side-bonding-jumper": message("Supply-side bonding jumper of the raceway ahead"),
    "feeder-return": message("Grounding path from the panel back to the first disconnect"),
    "branch-return": message("Grounding path from the machine back to the panel"),
    "supply-neutral": message("Neutral between source and first disconnect"),
    "feeder-neutral": message("Neutral between first disconnect and panel"),
}
ADDED_WORDS = {
    "neutral-bond-at-panel": message("Neutral bonded to metal in the panel too"),
    "machine-electrode": message("A ground rod at the machine"),
    "electrode-on-enclosure": message("The electrode on the enclosure instead of the neutral"),
}
BRANCH_WORDS = {
    "supply-hot-a": message("Hot supply conductor that feeds the fault"),
    "supply-neutral": message("Supply neutral"),
    "feeder-neutral": message("Neutral of the feeder"),
    "main-bonding-jumper": message("Main bonding jumper"),
    "supply-side-bonding-jumper": message("Supply-side bonding jumper"),
    "feeder-grounding-conductor": message("Equipment grounding conductor of the feeder"),
    "feeder-raceway": message("Steel raceway of the feeder"),
    "branch-grounding-conductor": message("Equipment grounding conductor of the machine"),
    "flexible-raceway": message("Flexible raceway of the machine"),
    "neutral-bond-at-panel": message("Second neutral bond, in the panel"),
    "service-electrode": message("Electrode at the first disconnect"),
    "electrode-on-enclosure": message("Electrode on the enclosure"),
    "machine-electrode": message("Ground rod at the machine"),
    "source-electrode": message("Electrode at the source"),
    "elbow-soil": message("Soil around the buried elbow"),
    "person": message("Person"),
}
DEVICE_WORDS = {
    "branch": message("20 A breaker of the branch circuit"),
    "feeder": message("60 A breaker of the feeder"),
    "supply": message("100 A breaker of the first disconnect"),
}
