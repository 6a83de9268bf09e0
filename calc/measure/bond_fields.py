"""What is asked about a resistance test of a bond."""

from __future__ import annotations

from dataclasses import replace

from calc.calculator import Choice
from calc.fault.source.source_fields import TEMPERATURE
from calc.messages import message
from calc.shared_fields import TABLE_METALS, conductor_size, metal_of, one_of, quantity, whole_number, yes_or_no

TWO_WIRE, FOUR_WIRE, VOLTAGE_DROP, BOND_TESTER = "two-wire", "four-wire", "voltage-drop", "bond-tester"
NO_LIMIT, OWN_LIMIT = "none", "own"
OF_WIRE, OF_RACEWAY = "wire", "raceway"
LIMIT_RULES = {
    "ground-path": "measure/limit_of_ground_path",
    "patient-receptacle": "measure/limit_of_patient_receptacle",
    "appliance-cord": "measure/limit_of_appliance_cord",
    "aircraft-bond": "measure/limit_of_aircraft_bond",
    "military-bond": "measure/limit_of_military_bond",
}
BELOW_THE_LIMIT = ("appliance-cord", "aircraft-bond")  # their texts say "less than"
MAX_JOINTS = 200


METHOD = one_of(
    message("How it was measured"),
    message(""),
    (
        Choice(TWO_WIRE, message("Two-lead ohmmeter")),
        Choice(FOUR_WIRE, message("Four-wire low-resistance meter, read in both directions")),
        Choice(VOLTAGE_DROP, message("High-current DC test, with the voltage drop on the bond")),
        Choice(BOND_TESTER, message("Bond tester that shows ohms at a set current")),
    ),
)
DEAD = yes_or_no(
    message("Was it de-energized, isolated and tested for absence of voltage"),
    message("Service de-energized and locked out, and a clamp meter shows no current in the conductor."),
    rare=False,
)
CONDUCTOR = conductor_size(
    message("Wire size"), message("Of the bond or of the whole path measured. Leave it empty for a bare joint.")
)
METAL = metal_of(message("Wire material"), TABLE_METALS)
LENGTH = quantity(
    message("Length of the wire"),
    message("Between the two points touched. 0 for a bare joint."),
    "ft",
    0,
    5000,
    example="25 ft",
)
JOINTS = whole_number(
    message("Joints in the path"), message("Lugs, clamps, screws and splices, both ends too."), 0, MAX_JOINTS
)
JOINT_KIND = one_of(
    message("Type of joints"),
    message("A joint of a wire has less resistance than one of a raceway."),
    (
        Choice(OF_WIRE, message("Lugs, clamps or splices of wire")),
        Choice(OF_RACEWAY, message("Couplings or locknuts of a steel raceway")),
    ),
)
CELSIUS = replace(TEMPERATURE, label=message("Temperature of the wire"), hint=message("When it was measured, in °C."))
BESIDE = yes_or_no(
    message("Is other metal in parallel with it"),
    message("A raceway, pipe, rack or second bond between the same two parts."),
    rare=False,
)
READING = quantity(
    message("Reading"),
    message("In ohms unless you add the unit: 0.8 mohm is 0.0008. Four-wire: the forward reading."),
    "ohm",
    0,
    1000,
    example="0.35",
)
REVERSE = quantity(
    message("Reading with the current reversed"),
    message("Four-wire only. The average of both cancels what warm joints add."),
    "ohm",
    0,
    1000,
    example="0.8 mohm",
)
LEAD_OHM = quantity(
    message("Lead resistance (probe tips shorted)"),
    message("0 if the meter was nulled."),
    "ohm",
    0,
    1000,
    example="0.2",
    rare=True,
)
LEAD_SPREAD = quantity(
    message("How much the leads vary, ±"),
    message("Two-lead only. Short the tips five times: half of highest minus lowest."),
    "ohm",
    0,
    100,
    example="0.02",
)
CURRENT = quantity(
    message("Test current"), message("Needed for a voltage drop and a bond tester."), "A", 0.0001, 2000, example="10"
)
DROP = quantity(
    message("Voltage drop on the bond"),
    message("Touched on the bond itself, inside the current clips."),
    "V",
    0,
    300,
    example="20 mV",
)
DROP_OFF = quantity(
    message("Voltage there with the current off"), message("It is subtracted."), "V", 0, 300, example="1 mV", rare=True
)
DIGIT = quantity(
    message("Meter resolution"),
    message("Its last digit. A meter that shows 0.1 goes in steps of 0.1 ohm."),
    "ohm",
    0,
    100,
    example="0.1",
    rare=True,
)
METER_PERCENT = quantity(
    message("Meter accuracy, ± percent of the reading"),
    message("From its data sheet. 0: not known, and a usual error is used."),
    "%",
    0,
    50,
    example="2",
)
LIMIT = one_of(
    message("A published limit to compare with"),
    message("Only where it applies to the job. A limit without the wire's length says little."),
    (
        Choice(NO_LIMIT, message("None: compare with the wire alone")),
        Choice("ground-path", message("Main grounding path, point to point")),
        Choice("patient-receptacle", message("Receptacle in a patient care area, new work")),
        Choice("appliance-cord", message("Patient care appliance with a cord")),
        Choice("aircraft-bond", message("Aircraft, equipment to structure")),
        Choice("military-bond", message("Military communications plant")),
        Choice(OWN_LIMIT, message("The limit in my job's specifications")),
    ),
    rare=True,
)
LIMIT_OHM = quantity(
    message("Limit in your specifications"),
    message("Needed for the limit in your specifications."),
    "ohm",
    0,
    1000,
    example="0.1",
    rare=True,
)
