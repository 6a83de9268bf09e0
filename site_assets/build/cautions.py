"""The cautions special to a place: shown at the top of its page and in the safety text at its end."""

from calc.words import say

CAUTIONS = {
    "live-service": say(
        "Service conductors stay live when the main is off. Only the utility can make them dead. Available fault current "
        "is at its highest here."
    ),
    "generator": say(
        "A generator can start by itself. Block its start and open every source before you prove dead. Check for a "
        "second source."
    ),
    "pool": say(
        "Water and wet skin make small voltages dangerous. Clear the water of people first. If anyone felt a tingle, "
        "keep everyone out and shut off the power from a dry place."
    ),
    "water-edge": say(
        "Current in water can stop a swimmer's muscles. Never enter the water to look or to help. Shut off shore power "
        "first, and reach or throw from land."
    ),
    "solar": say(
        "Sunlight keeps an array live with every switch open. A battery stays live too. A bonding break in an array can "
        "hold full array voltage."
    ),
    "livestock": say(
        "Animals feel a few volts that you do not. A stock that balks at water may be the first sign. Wet concrete "
        "conducts."
    ),
    "patient": say(
        "Patients may be tied to equipment and unable to move or speak. Ask the staff before you switch anything off."
    ),
    "explosive": say(
        "A spark can set off an explosion. Get clearance that the area is free of gas, vapor or dust before you open, "
        "strike or test anything."
    ),
    "lightning": say("Stop work on down conductors, roofs and electrodes when a storm is near."),
    "roof": say("Work at height: tie off and mind the edge. Metal roofs can carry a fault from below."),
    "gas": say("Never use gas pipe as an electrode. Do not open gas pipe before a bond across the gap is in place."),
}
