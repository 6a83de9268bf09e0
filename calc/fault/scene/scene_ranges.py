"""How far the drawn circuit's answer may move: voltage, temperature, steel and electrode anywhere in their ranges."""

from __future__ import annotations

from collections.abc import Iterator

from calc.calculator import Result
from calc.data_file import Data
from calc.fault.circuit.ranges import Between, Ranged, ranged_in_steps
from calc.fault.return_path.return_path import RANGE_RULE
from calc.fault.scene.scene import PARTS, solved_scene
from calc.fault.scene.scene_of import VOLT, scene_of
from calc.fault.scene.scene_opening import shown
from calc.fault.scene.scene_words import PART_WORDS
from calc.messages import Message, message
from calc.rulebook import rule

SEASON = "electrodes/season"
INPUT_WORDS = {
    "volt": message("voltage of the source"),
    "degrees": message("temperature of the wires"),
    "steel": message("steel of the raceway and its joints"),
    "electrode_ohm": message("soil around the electrode"),
}


def scene_ranges(result: Result, at_once: int) -> Iterator[list[Message] | None]:
    """Yield None after each `at_once` circuits solved, then the sentences on how far the answer may move.

    result: an answer of take_a_bond_away. The fault current and every part's voltage get their lowest and highest.
    Source: rules fault/wire_and_voltage_range and electrodes/season.
    """
    inputs, edition = dict(result.inputs), result.edition
    for found in ranged_in_steps(_moving(inputs, edition), lambda at: _at(inputs, edition, at), at_once):
        yield found and _told(found, inputs)


def _moving(inputs: Data, edition: str) -> dict[str, Between]:
    rows = {row["length"]: row for row in rule(RANGE_RULE, edition).rows}
    least = rule(SEASON, edition).rows[0]["least"]
    shares, celsius = ([rows[name][key] for name in ("low", "high")] for key in ("voltage_share", "celsius"))
    moving = {
        "volt": Between(VOLT * min(shares), VOLT, VOLT * max(shares)),
        "degrees": Between(min(celsius), max(celsius), max(celsius)),
        "electrode_ohm": Between(
            inputs["electrode_ohm"] / least, inputs["electrode_ohm"], inputs["electrode_ohm"] * least
        ),
    }
    if inputs["feeder_path"] != "wire":
        moving["steel"] = Between(0, 2, 2)
    return moving


def _at(inputs: Data, edition: str, at: dict[str, float]) -> dict[str, float]:
    fields: Data = {**inputs, **at}
    solved = solved_scene(scene_of(**fields, edition=edition))
    volts = {part: abs(solved.voltages[part]) for part in PARTS}
    return {"fault": abs(solved.currents.get("fault", 0))} | volts


def _told(found: Ranged, inputs: Data) -> list[Message]:
    current = found.results["fault"]
    told: list[Message] = []
    if inputs["fault"] != "none":
        told.append(
            message(
                "Fault current: {low} to {high} A. The lowest decides.",
                low=shown(current.low),
                high=shown(current.high),
            )
        )
        shares = [(name, share) for name, share in found.influence["fault"] if share >= 0.01]
        if shares and current.high > 0:
            told.append(
                message(
                    "What changes it most: {inputs}.",
                    inputs=", ".join(f"{INPUT_WORDS[name]} {round(100 * share)} %" for name, share in shares),
                )
            )
    return told + [
        message(
            "{part}: {low} to {high} V to earth.",
            part=PART_WORDS[part],
            low=shown(found.results[part].low),
            high=shown(found.results[part].high),
        )
        for part in PARTS
    ]
