"""What is asked about a resistance test of a bond."""

from __future__ import annotations

from dataclasses import replace

from calc.declare import Choice
from calc.fault.source_fields import TEMPERATURE
from calc.vocabulary import TABLE_METALS, conductor_size, metal_of, one_of, quantity, whole_number, yes_or_no
from calc.words import say

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
MOST_JOINTS = 200


METHOD = one_of(
    say("How it was measured"),
    say(""),
    (
        Choice(TWO_WIRE, say("Ohmmeter with two leads")),
        Choice(FOUR_WIRE, say("Low-resistance meter with four leads, read both ways")),
        Choice(VOLTAGE_DROP, say("Large direct current, and the voltage drop on the bond")),
        Choice(BOND_TESTER, say("Bond tester that shows ohms at a set current")),
    ),
)
DEAD = yes_or_no(
    say("Was it dead, isolated and proven dead"),
    say("Service de-energized and locked out, and the conductor proven free of current with a clamp."),
    rare=False,
)
CONDUCTOR = conductor_size(
    say("Size of the wire"), say("Of the bond or of the whole path measured. Leave it empty for a bare joint.")
)
METAL = metal_of(say("Metal of the wire"), TABLE_METALS)
LENGTH = quantity(
    say("Length of the wire"),
    say("Between the two points touched. 0 for a bare joint."),
    "ft",
    0,
    5000,
    example="25 ft",
)
JOINTS = whole_number(say("Joints in it"), say("Lugs, clamps, screws and splices, both ends too."), 0, MOST_JOINTS)
JOINT_KIND = one_of(
    say("These joints are"),
    say("A joint of a wire has less resistance than one of a raceway."),
    (
        Choice(OF_WIRE, say("Lugs, clamps or splices of wire")),
        Choice(OF_RACEWAY, say("Couplings or locknuts of a steel raceway")),
    ),
)
CELSIUS = replace(TEMPERATURE, label=say("Temperature of the wire"), hint=say("When it was measured, in °C."))
BESIDE = yes_or_no(
    say("Is other metal joined beside it"),
    say("A raceway, pipe, rack or second bond between the same two parts."),
    rare=False,
)
READING = quantity(
    say("Reading"),
    say("In ohm unless you add the unit: 0.8 mohm is 0.0008. Four wires: forward."),
    "ohm",
    0,
    1000,
    example="0.35",
)
REVERSE = quantity(
    say("Reading with the current reversed"),
    say("Four wires only. The middle of both is free of what warm joints add."),
    "ohm",
    0,
    1000,
    example="0.8 mohm",
)
LEAD_OHM = quantity(
    say("Leads joined tip to tip still read"),
    say("0 when the meter was nulled."),
    "ohm",
    0,
    1000,
    example="0.2",
    rare=True,
)
LEAD_SPREAD = quantity(
    say("How unsteady the leads read"),
    say("Two leads only. Join the tips five times: half of highest minus lowest."),
    "ohm",
    0,
    100,
    example="0.02",
)
CURRENT = quantity(
    say("Test current"), say("Needed for a voltage drop and a bond tester."), "A", 0.0001, 2000, example="10"
)
DROP = quantity(
    say("Voltage drop on the bond"),
    say("Touched on the bond itself, inside the current clips."),
    "V",
    0,
    300,
    example="20 mV",
)
DROP_OFF = quantity(
    say("Voltage there with the current off"), say("It is taken off."), "V", 0, 300, example="1 mV", rare=True
)
DIGIT = quantity(
    say("Last digit of the meter"),
    say("A meter that shows 0.1 steps by 0.1 ohm."),
    "ohm",
    0,
    100,
    example="0.1",
    rare=True,
)
METER_PERCENT = quantity(
    say("Error of the meter in percent of the reading"),
    say("From its data sheet. 0: not known, and a usual error is counted."),
    "%",
    0,
    50,
    example="2",
)
LIMIT = one_of(
    say("A published limit to compare with"),
    say("Only where it applies to the job. A limit without the wire's length says little."),
    (
        Choice(NO_LIMIT, say("None: compare with the wire alone")),
        Choice("ground-path", say("Main grounding path, point to point")),
        Choice("patient-receptacle", say("Receptacle in a patient care area, new work")),
        Choice("appliance-cord", say("Patient care appliance with a cord")),
        Choice("aircraft-bond", say("Aircraft, equipment to structure")),
        Choice("military-bond", say("Military communications plant")),
        Choice(OWN_LIMIT, say("The limit in my job's papers")),
    ),
    rare=True,
)
LIMIT_OHM = quantity(
    say("That limit"), say("Needed for the limit of your papers."), "ohm", 0, 1000, example="0.1", rare=True
)
