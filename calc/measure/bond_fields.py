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
        Choice(TWO_WIRE, message("Ohmmeter with two leads")),
        Choice(FOUR_WIRE, message("Low-resistance meter with four leads, read both ways")),
        Choice(VOLTAGE_DROP, message("Large direct current, and the voltage drop on the bond")),
        Choice(BOND_TESTER, message("Bond tester that shows ohms at a set current")),
    ),
)
DEAD = yes_or_no(
    message("Was it dead, isolated and proven dead"),
    message("Service de-energized and locked out, and the conductor proven free of current with a clamp."),
    rare=False,
)
CONDUCTOR = conductor_size(
    message("Size of the wire"), message("Of the bond or of the whole path measured. Leave it empty for a bare joint.")
)
METAL = metal_of(message("Metal of the wire"), TABLE_METALS)
LENGTH = quantity(
    message("Length of the wire"),
    message("Between the two points touched. 0 for a bare joint."),
    "ft",
    0,
    5000,
    example="25 ft",
)
JOINTS = whole_number(
    message("Joints in it"), message("Lugs, clamps, screws and splices, both ends too."), 0, MAX_JOINTS
)
JOINT_KIND = one_of(
    message("These joints are"),
    message("A joint of a wire has less resistance than one of a raceway."),
    (
        Choice(OF_WIRE, message("Lugs, clamps or splices of wire")),
        Choice(OF_RACEWAY, message("Couplings or locknuts of a steel raceway")),
    ),
)
CELSIUS = replace(TEMPERATURE, label=message("Temperature of the wire"), hint=message("When it was measured, in °C."))
BESIDE = yes_or_no(
    message("Is other metal joined beside it"),
    message("A raceway, pipe, rack or second bond between the same two parts."),
    rare=False,
)
READING = quantity(
    message("Reading"),
    message("In ohm unless you add the unit: 0.8 mohm is 0.0008. Four wires: forward."),
    "ohm",
    0,
    1000,
    example="0.35",
)
REVERSE = quantity(
    message("Reading with the current reversed"),
    message("Four wires only. The middle of both is free of what warm joints add."),
    "ohm",
    0,
    1000,
    example="0.8 mohm",
)
LEAD_OHM = quantity(
    message("Leads joined tip to tip still read"),
    message("0 when the meter was nulled."),
    "ohm",
    0,
    1000,
    example="0.2",
    rare=True,
)
LEAD_SPREAD = quantity(
    message("How unsteady the leads read"),
    message("Two leads only. Join the tips five times: half of highest minus lowest."),
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
    message("Voltage there with the current off"), message("It is taken off."), "V", 0, 300, example="1 mV", rare=True
)
DIGIT = quantity(
    message("Last digit of the meter"),
    message("A meter that shows 0.1 steps by 0.1 ohm."),
    "ohm",
    0,
    100,
    example="0.1",
    rare=True,
)
METER_PERCENT = quantity(
    message("Error of the meter in percent of the reading"),
    message("From its data sheet. 0: not known, and a usual error is counted."),
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
        Choice(OWN_LIMIT, message("The limit in my job's papers")),
    ),
    rare=True,
)
LIMIT_OHM = quantity(
    message("That limit"), message("Needed for the limit of your papers."), "ohm", 0, 1000, example="0.1", rare=True
)
