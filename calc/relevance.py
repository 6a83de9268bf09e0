"""Which inputs count only under other choices: what lies outside a condition here changes no answer, whatever it is.

A field that is not named, or whose condition is no equality of choices (a list that holds a part, a number that was
entered), always counts. Fields given outside their condition are ignored, but for those in `REFUSED`.
"""

from __future__ import annotations

from collections.abc import Mapping

When = Mapping[str, tuple[str, ...]]

SOLID = ("solidly-grounded",)
NOT_BEHIND_IMPEDANCE = ("solidly-grounded", "ungrounded")
FLEXIBLE_CONDUIT = ("flexible-metal-conduit", "liquidtight-flexible-metal-conduit")
FLEXIBLE = (*FLEXIBLE_CONDUIT, "flexible-metallic-tubing")
STEEL_RACEWAYS = ("electrical-metallic-tubing", "intermediate-metal-conduit", "rigid-metal-conduit")
LISTED_ONES = (*FLEXIBLE_CONDUIT, "armored-cable", "metal-clad-cable", "metal-wireway", "auxiliary-gutter",
               "surface-metal-raceway", "cable-tray")  # fmt: skip
TRANSFORMER, GIVEN, GENERATOR = "transformer", "given-current", "generator"
SUPPLIES = ("service", "feeder-or-branch", "separately-derived-system")
LIKE_A_POOL = ("in-ground-conductive", "in-ground-nonconductive", "above-ground", "spa-outdoors")
CONCRETE_FLOORS = ("indoor-concrete", "outdoor-slab", "slatted")
EQUIPMENT_WITH_PLANE = ("service", "disconnect")
WATERS = ("body", "dock", "floating-building")


def _each(names: str, **when: tuple[str, ...]) -> dict[str, When]:
    """Return one condition for several fields."""
    return dict.fromkeys(names.split(), when)


_MAIN_PLACE = {"place": ("service-disconnect",)}
_SYSTEM_PLACES = ("source", "first-disconnect")
_SUPPLY_PLACES = {
    "place": ("service-raceway", "ahead-of-service-disconnects", "separately-derived-system",
              "generator-joined-neutral"),
}  # fmt: skip
_SUPPLY = _SUPPLY_PLACES | {"system_grounding": NOT_BEHIND_IMPEDANCE}
_LOAD = {"side": ("load-side",)}
_JOINED_OUTSIDE = _LOAD | {"joins": ("raceway", "flexible-raceway", "expansion-fitting")}
_CIRCUIT = {"circuit": ("feeder-or-branch", "feeder-tap", "motor", "motor-instantaneous-trip")}
_MOTOR = {"circuit": ("motor-instantaneous-trip",)}
_GROUNDED_PLACE = {"place": ("service-disconnect", "first-disconnect")}
_FRAME = {"supply": SUPPLIES, "frame": ("interconnected",), "exposed": ("yes",)}
_PATH = _LOAD | {"location": ("ordinary",)}
_IN_PLANE = {"animals": ("livestock",), "metal": ("yes",), "area": CONCRETE_FLOORS}
_SHOCK = {"condition": ("dry", "water-wet", "salt-water-wet")}

RELEVANT_WHEN: Mapping[str, Mapping[str, When]] = {
    "conductor-name": _each("generator_neutral generator_device", where=("generator",)),
    "transformer-schedule": _each("ring", electrode=("ring",)),
    "generator-schedule": _each("device minimum_conductor", breaker=("yes",))
    | _each("electrodes metal_parts place piping_device ring", neutral=("switched",)),
    "separate-building-schedule": _each("metal_path", wires=("existing-without",))
    | _each("ground_fault_protection", wires=("existing-without",), metal_path=("no",)),
    "main-bonding-jumper": _each(
        "conductor sets conductor_metal metal enclosures form conductor_basis", **_MAIN_PLACE, system_grounding=SOLID
    )
    | {"system_grounding": _MAIN_PLACE},
    "system-bonding-jumper": _each(
        "conductor sets conductor_metal metal enclosures form", place=_SYSTEM_PLACES, system_grounding=SOLID
    ),
    "supply-side-bonding-jumper": _each("conductor sets raceways arrangement conductor_metal metal form run", **_SUPPLY)
    | _each("raceway", **_SUPPLY, form=("raceway",))
    | _each("length", **_SUPPLY, run=("outside",))
    | {"system_grounding": _SUPPLY_PLACES},
    "equipment-bonding-jumper": _each(
        "device metal joins other_devices installed_conductor minimum_conductor conductor_metal sets increase_reason",
        **_LOAD,
    )
    | _each("routing", **_JOINED_OUTSIDE)
    | _each("length along", **_JOINED_OUTSIDE, routing=("outside",)),
    "equipment-grounding-conductor": _each(
        "metal installed_conductor minimum_conductor conductor_metal sets raceways increase_reason raceway circuits",
        **_CIRCUIT,
    )
    | _each("motor motor_current", **_MOTOR)
    | _each("device", circuit=("feeder-or-branch", "feeder-tap", "motor")),
    "grounded-conductor": _each(
        "conductor sets raceways conductor_metal metal load_size enclosures",
        **_GROUNDED_PLACE,
        system_grounding=("solidly-grounded", "corner-grounded"),
    )
    | {"system_grounding": _GROUNDED_PLACE},
    "grounding-electrode-conductor": _each(
        "conductor sets conductor_metal metal electrode continues_to ring other_conductors",
        system_grounding=NOT_BEHIND_IMPEDANCE,
    ),
    "water-pipe-bonding": _each("sets", piping=("water", "water-derived-system", "water-separate-building"))
    | _each("device", piping=("water-isolated-unit", "water-separate-building", "other-metal")),
    "structural-metal-bonding": _each("conductor sets conductor_metal metal", **_FRAME)
    | _each("energized bonded", supply=("service", "feeder-or-branch"))
    | _each("electrode", supply=("separately-derived-system",)),
    "raceway-as-grounding-path": _each("device metal raceway", **_PATH)
    | {"location": _LOAD}
    | _each("fittings listed", **_PATH)
    | _each("listed", **_PATH, raceway=LISTED_ONES)
    | _each("trade_size length", **_PATH, raceway=FLEXIBLE)
    | _each("flexibility stainless", **_PATH, raceway=FLEXIBLE_CONDUIT)
    | _each("small_flexible", **_PATH, raceway=("liquidtight-flexible-metal-conduit",))
    | _each("tray_metal tray_area qualified", **_PATH, raceway=("cable-tray",)),
    "buried-metal-elbow": _each("cover", joined=("nonmetallic",))
    | _each("concrete", joined=("nonmetallic",), circuit=("derived-system", "feeder-or-branch"))
    | _each("device", circuit=("feeder-or-branch",)),
    "knockouts-over-250-volts": _each("place voltage_to_ground knockout fitting", location=("ordinary",))
    | _each("system", location=("ordinary",), place=("load-side", "derived-system"))
    | _each("enclosure", location=("ordinary",), place=("load-side", "derived-system"), knockout=("rings",)),
    "take-a-bond-away": _each("person_ohm", touched=("supply-raceway", "service", "panel", "machine")),
    "available-fault-current": _each("kva", source=(TRANSFORMER, GENERATOR))
    | _each(
        "percent_z percent_r percent_x tolerance utility_kva utility_current primary_voltage utility_x_over_r",
        source=(TRANSFORMER,),
    )
    | _each("x_over_r", source=(TRANSFORMER, GIVEN))
    | _each("three_phase_current line_to_ground_current", source=(GIVEN,))
    | _each("subtransient zero_sequence", source=(GENERATOR,)),
    "ground-fault-loop": _each("return_conductor metal", wiring=("wire", "both", "wire-apart"))
    | _each("raceway trade_size", wiring=("raceway", "both"))
    | _each("spacing", wiring=("wire-apart",))
    | _each("instantaneous_multiple instantaneous_read", device_kind=("inverse-time-breaker",))
    | _each("fuse_class", device_kind=("fuse", "fuse-time-delay")),
    "longest-return-path": _each(
        "return_conductor metal", wiring=("wire-in-nonmetallic", "wire-in-steel", "wire-apart")
    )
    | _each("trade_size", wiring=STEEL_RACEWAYS)
    | _each("spacing", wiring=("wire-apart",)),
    "stray-neutral-current": _each("grounding_conductor", where=("second-bond",)),
    "device-clearing": _each("instantaneous_multiple instantaneous_read", device_kind=("inverse-time-breaker",))
    | _each("fuse_class", device_kind=("fuse", "fuse-time-delay")),
    "earth-only-return": _each("voltage_to_ground device electrode_ohm source_ohm", return_path=("rods",)),
    "voltage-between": _each("voltage leak_ampere leak_ohm", cause=("leak",))
    | _each("neutral_volt", cause=("utility",)),
    "electrode-resistance": _each("resistivity", soil=("resistivity",))
    | _each("pin_spacing pin_ohm", soil=("four-pin",))
    | _each("rods spacing layout", electrode=("rod",))
    | _each("depth", electrode=("ring", "buried-wire", "plate", "concrete-encased"))
    | _each("diameter", electrode=("rod", "ring", "buried-wire", "concrete-encased"))
    | _each("conductor", electrode=("ring", "buried-wire", "concrete-encased"))
    | _each("width", electrode=("ring", "plate", "concrete-encased"))
    | _each("height concrete_resistivity", electrode=("concrete-encased",)),
    "pool-bonding-plan": _each("rim_height", kind=("spa-outdoors",), listed_spa=("yes",))
    | _each("listed_spa", kind=("spa-outdoors", "spa-indoors"))
    | _each("surfaces way wall_height water_contact", kind=(*LIKE_A_POOL, "spa-indoors"))
    | _each("water_area", kind=(*LIKE_A_POOL, "spa-indoors"), water_contact=("surface",))
    | _each("other_height height_from", kind=LIKE_A_POOL),
    "livestock-equipotential-plane": _each("plane tied way_out bond_conductor bond_kind", **_IN_PLANE)
    | _each("metal", animals=("livestock",))
    | _each("resistor", meter=("with-resistor",)),
    "waterside-equipotential-plane": _each("equipment wet_metal reach bond_conductor bond_kind", water=WATERS)
    | _each("metal depth", water=("body",), equipment=EQUIPMENT_WITH_PLANE)
    | _each("voltage_to_ground", water=("dock", "floating-building")),
    "bond-measurement": _each("reverse_reading", method=("four-wire",))
    | _each("lead_ohm lead_spread", method=("two-wire",))
    | _each("drop drop_off", method=("voltage-drop",))
    | _each("current", method=("voltage-drop", "bond-tester"))
    | _each("reading", method=("two-wire", "four-wire", "bond-tester"))
    | _each("beside", dead=("yes",))
    | _each("limit_ohm", limit=("own",)),
    "surface-voltage": _each("resistivity", soil=("resistivity",))
    | _each("pin_spacing pin_ohm", soil=("four-pin",))
    | _each("trade_size", shape=("elbow", "pipe"))
    | _each("length", shape=("pipe",))
    | _each("diameter", shape=("fitting",))
    | _each("bend lies", shape=("elbow",)),
    "shock-limits": _each("voltage path clears", **_SHOCK) | _each("time", **_SHOCK, clears=("yes",)),
    "deck-voltage": _each(
        "arrangement rise pool_length pool_width distance ring_distance depth mesh_width spacing conductor step shell "
        "shell_depth detail",
        form=("rectangle",),
    ),
}

# Given outside their condition these are no mere surplus: the reader is told to take them away (`fix`).
REFUSED: Mapping[str, tuple[str, ...]] = {
    "ground-fault-loop": ("instantaneous_multiple", "fuse_class"),
    "device-clearing": ("instantaneous_multiple", "fuse_class"),
    "electrode-resistance": ("rods",),
}
