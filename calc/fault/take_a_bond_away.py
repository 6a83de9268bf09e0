"""Take a bond away and watch: what a fault drives, what opens, and what stays on the metal."""

from __future__ import annotations

from typing import Annotated

from calc.answer import Answer, Row, Table
from calc.declare import Mend, calculator
from calc.fault import scene_fields as ask
from calc.fault.caution import state_the_model
from calc.fault.device import Opening, opening
from calc.fault.network import Solution
from calc.fault.scene import EARTH, PARTS, solved_scene
from calc.fault.scene_fields import PART_WORDS
from calc.fault.scene_of import RATINGS, scene_of
from calc.words import Sentence, say
from calc.working import Working, shown_number

DEVICES = {"branch": "branch-hot", "feeder": "feeder-hot-a", "supply": "supply-hot-a"}
DEVICE_WORDS = {
    "branch": say("20 A breaker of the branch circuit"),
    "feeder": say("60 A breaker of the feeder"),
    "supply": say("100 A breaker of the first disconnect"),
}
AHEAD = {"machine": ("branch", "feeder", "supply"), "buried-elbow": ("branch", "feeder", "supply"),
         "panel": ("feeder", "supply"), "service": (), "supply-raceway": ()}  # fmt: skip
BEST_FIRST = ("assured", "likely", "slow", "not-assured", "does-not-open")
METAL_PATHS = ("feeder-grounding-conductor", "feeder-raceway", "branch-grounding-conductor", "flexible-raceway",
               "main-bonding-jumper", "neutral-bond-at-panel")  # fmt: skip


@calculator(
    "take-a-bond-away",
    name=say("Take a bond away"),
    purpose=say(
        "A drawn circuit: remove, loosen or double a bond and see the fault current, what opens, and every voltage."
    ),
    submit=say("Watch"),
    example={"edition": "2023", "fault": "machine", "missing": "main-bonding-jumper"},
)
def take_a_bond_away(
    *,
    working: Working,
    fault: Annotated[str, ask.FAULT] = "machine",
    missing: Annotated[str | None, ask.MISSING] = None,
    added: Annotated[str | None, ask.ADDED] = None,
    touched: Annotated[str, ask.TOUCHED] = "none",
    source: Annotated[str, ask.SOURCE] = "utility",
    loose: Annotated[str | None, ask.LOOSE] = None,
    loose_ohm: Annotated[float, ask.LOOSE_OHM] = 1,
    feeder_path: Annotated[str, ask.FEEDER_PATH] = "wire",
    branch_path: Annotated[str, ask.BRANCH_PATH] = "wire",
    loads: Annotated[str, ask.LOADS] = "off",
    person_ohm: Annotated[float, ask.PERSON_OHM] = 1000,
    electrode_ohm: Annotated[float, ask.ELECTRODE_OHM] = 25,
    supply_length: Annotated[float, ask.SUPPLY_LENGTH] = 75,
    feeder_length: Annotated[float, ask.FEEDER_LENGTH] = 50,
    branch_length: Annotated[float, ask.BRANCH_LENGTH] = 50,
) -> Answer:
    """Give the fault current of a drawn circuit, which device sees it, and the voltage of every metal part.

    When: to teach and to check reasoning. The circuit is fixed but for what the fields change: 120 V to ground,
    2/0 aluminum supply, 6 AWG feeder behind 60 A, 12 AWG branch circuit behind 20 A. Not for choosing a device.

    Parameters:
        fault: "none", "supply-raceway", "service", "panel", "machine" or "buried-elbow".
        missing, loose: bonds with commas: "main-bonding-jumper", "supply-side-bonding-jumper", "feeder-return",
            "branch-return", "supply-neutral", "feeder-neutral". loose_ohm: 0.001 to 1000.
        added: "neutral-bond-at-panel", "machine-electrode", "electrode-on-enclosure", with commas.
        touched: a part someone touches; person_ohm: 100 to 100,000.
        source: "utility" or "transformer". loads: "on" or "off".
        feeder_path: "wire", "raceway", "both"; branch_path: "wire", "flexible-raceway", "both".
        electrode_ohm: 0.1 to 10,000; supply_length, feeder_length, branch_length: feet, 1 to 2000.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold fault_ampere, verdict, device, volts (by part) and currents (by
        branch of the drawing), its table the voltage of every part to earth and to other parts.
    Raises: nothing; bad input ends as `fix`.
    Source: nodal analysis, calc.fault.network; impedances of Chapter 9; openings of calc.fault.device.

    Example:
    >>> result = take_a_bond_away(edition="2023", fault="machine", missing="main-bonding-jumper")
    >>> result.answer.values["verdict"], round(result.answer.values["volts"]["machine"])
    ('does-not-open', 120)
    """
    if touched != "none" and touched == "buried-elbow":
        raise Mend("touched")
    inputs = dict(
        source=source, fault=fault, missing=missing, loose=loose, loose_ohm=loose_ohm, added=added, touched=touched,
        person_ohm=person_ohm, feeder_path=feeder_path, branch_path=branch_path, loads=loads,
        electrode_ohm=electrode_ohm, supply_length=supply_length, feeder_length=feeder_length,
        branch_length=branch_length, edition=working.edition,
    )  # fmt: skip
    solved = solved_scene(scene_of(**inputs))
    ampere = abs(solved.currents.get("fault", 0))
    device, seen = _what_opens(fault, solved, working)
    volts = {part: abs(solved.voltages[part]) for part in PARTS if part in solved.voltages}
    highest = max((part for part in volts if part != "buried-elbow"), key=volts.get)
    _say_what_happens(fault, ampere, device, seen, solved, highest, volts, touched, working)
    verdict = seen.verdict if seen else ("no-fault" if fault == "none" else "does-not-open")
    state_the_model(working, _assumptions())
    return Answer(
        name=say("Take a bond away"),
        headline=_headline(fault, device, seen),
        detail=say(
            "{ampere} A of fault current; {volt} V to earth on {part}",
            ampere=_shown(ampere),
            volt=_shown(volts[highest]),
            part=PART_WORDS[highest],
        ),
        basis=None,
        said=f"{verdict}-{_shown(ampere).replace(',', '')}A-{_shown(volts[highest])}V",
        values={
            "fault_ampere": ampere,
            "verdict": verdict,
            "device": device or "none",
            "volts": {part: round(volt, 3) for part, volt in volts.items()},
            "currents": {
                name: round(abs(current), 4)
                for name, current in solved.currents.items()
                if not name.startswith(("dirt-", "source-a", "source-b"))
            },
        },
        table=_voltages(solved),
    )


def _what_opens(fault: str, solved: Solution, working: Working) -> tuple[str | None, Opening | None]:
    """Give the device that opens most surely, and how surely; None where no device here is ahead of the fault."""
    openings = {}
    for device in AHEAD.get(fault, ()):
        rating = RATINGS[device]
        seen = abs(solved.currents[DEVICES[device]])
        openings[device] = opening(seen / rating, "inverse-time-breaker", rating)
        working.step(
            say(
                "{device}: {ampere} A, {multiple} times its rating. {words}",
                device=DEVICE_WORDS[device],
                ampere=_shown(seen),
                multiple=_shown(seen / rating),
                words=openings[device].words,
            )
        )
    if not openings:
        return None, None
    best = min(openings, key=lambda device: BEST_FIRST.index(openings[device].verdict))
    return best, openings[best]


def _headline(fault: str, device: str | None, seen: Opening | None) -> Sentence:
    if fault == "none":
        return say("No fault")
    if device is None or seen.verdict == "does-not-open":
        return say("Nothing opens")
    if seen.verdict in ("likely", "assured"):
        return say("The {rating} A breaker should open", rating=RATINGS[device])
    return say("Nothing surely opens")


def _say_what_happens(fault, ampere, device, seen, solved, highest, volts, touched, working: Working) -> None:
    if fault in ("service", "supply-raceway"):
        working.warn(
            say(
                "Ahead of the first device nothing in the building opens this fault. The utility's or the "
                "transformer's primary device may take minutes, or never open."
            )
        )
    if fault != "none" and (seen is None or seen.verdict in ("does-not-open", "not-assured")):
        working.warn(
            say(
                "The metal stays live: {volt} V to earth on {part}, for as long as no one finds it.",
                volt=_shown(volts[highest]),
                part=PART_WORDS[highest],
            )
        )
    if touched != "none":
        through = abs(solved.currents["person"])
        working.warn(say("{milliampere} mA through the person.", milliampere=_shown(1000 * through)))
    stray = {name: abs(solved.currents[name]) for name in METAL_PATHS if name in solved.currents}
    if fault == "none" and max(stray.values(), default=0) > 0.1:
        most = max(stray, key=stray.get)
        working.warn(
            say(
                "With no fault at all {ampere} A of neutral current runs over metal ({path}).",
                ampere=_shown(stray[most]),
                path=most.replace("-", " "),
            )
        )
    earth = abs(solved.currents.get("service-electrode", 0)) + abs(solved.currents.get("machine-electrode", 0))
    if fault != "none" and ampere > 0:
        working.note(
            say(
                "{earth} A of it goes through the electrodes here: earth is no way back that opens a device.",
                earth=_shown(earth),
            )
        )


def _voltages(solved: Solution) -> Table:
    shown = [part for part in PARTS if part in solved.voltages]
    columns = {"part": say("Metal part"), "earth": say("To earth")} | {
        part: say("To: {part}", part=PART_WORDS[part]) for part in ("service", "panel", "machine")
    }
    rows = []
    for part in shown:
        cells = {"part": PART_WORDS[part], "earth": _volt(solved, part, EARTH)}
        cells |= {other: _volt(solved, part, other) for other in ("service", "panel", "machine")}
        rows.append(Row(cells))
    return Table(columns, tuple(rows))


def _volt(solved: Solution, one: str, other: str) -> Sentence:
    return say("{volt} V", volt=_shown(abs(solved.voltages[one] - solved.voltages[other])))


def _shown(value: float) -> str:
    """Give a number to three digits, no more than a model is good for."""
    if value < 0.0005:
        return "0"
    return shown_number(float(f"{value:.3g}"))


def _assumptions() -> list[Sentence]:
    return [
        say("120 V to ground at the source, conductors at 75 °C, 60 Hz."),
        say("Supply 2/0 AWG aluminum, feeder 6 AWG copper, branch circuit 12 AWG copper, in nonmetallic raceway."),
        say("A tight joint has half a milliohm; the fault itself is metal to metal, without an arc."),
        say("The electrode at the source has 10 ohm, a rod at the machine 25 ohm, in even soil."),
        say("The person stands on remote earth, away from every electrode."),
    ]
