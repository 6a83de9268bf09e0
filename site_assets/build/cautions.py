"""The cautions special to a place: shown at the top of its page and in the safety text at its end."""

from calc.messages import message

CAUTIONS = {
    "live-service": message(
        "Service conductors stay live when the main is off. Only the utility can make them dead. Available fault "
        "current is at its highest here."
    ),
    "generator": message(
        "A generator can start by itself. Block it from starting and open every source, then test for absence of "
        "voltage. Check for a second source."
    ),
    "pool": message(
        "Water and wet skin make small voltages dangerous. Clear the water of people first. If anyone felt a tingle, "
        "keep everyone out and shut off the power from a dry place."
    ),
    "water-edge": message(
        "Current in water can paralyze a swimmer's muscles. Never get in the water to look or to help. Shut off shore "
        "power first, and reach or throw from land."
    ),
    "solar": message(
        "Sunlight keeps an array live with every switch open. A battery stays live too. A bonding break in an array "
        "can hold full array voltage."
    ),
    "livestock": message(
        "Animals feel a few volts that you do not. Animals that balk at the waterer may be the first sign. Wet "
        "concrete conducts."
    ),
    "patient": message(
        "Patients may be connected to equipment and unable to move or speak. Ask the staff before you turn anything "
        "off."
    ),
    "explosive": message(
        "A spark can set off an explosion. Get clearance that the area is free of gas, vapor or dust before you open, "
        "strike or test anything."
    ),
    "lightning": message("Stop work on down conductors, roofs and electrodes when a storm is near."),
    "roof": message("Work at height: tie off and watch the edge. A fault below can make a metal roof live."),
    "gas": message(
        "Never use gas pipe as an electrode. Do not open gas pipe until a bonding jumper is in place across the gap."
    ),
}
