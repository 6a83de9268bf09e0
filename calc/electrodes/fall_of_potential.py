"""What readings of the fall of potential are worth: whether they hold level where they should."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import accumulate, pairwise

from calc.declare import Mend
from calc.electrodes.entered import shown
from calc.words import Sentence, say
from calc.working import Working, shown_number

PLATEAU, NO_PLATEAU, DISTURBED, TOO_NEAR, NOT_ISOLATED = (
    "plateau",
    "no-plateau",
    "disturbed",
    "too-near",
    "not-isolated",
)
FEWEST_COMPARED = 3
FINEST = 9  # decimals; 62 percent of a distance is not to miss a window by the last bit


@dataclass(frozen=True)
class Judged:
    """A test judged: the verdict, ohm in the middle of the plateau, and the readings compared with it.

    place: ft to where the middle is; edges: ft between which readings were compared; spread: percent.
    """

    verdict: str
    ohm: float
    place: float
    edges: tuple[float, float]
    spread: float


def judged(
    readings: list[tuple[float, float]], probe: float, dimension: float, isolated: bool, working: Working
) -> Judged:
    """Judge readings (ft, ohm) in order of distance, the current probe at `probe` ft. Records each step.

    Raises: Mend when too few readings are near the middle. Source: rules electrodes/potential_probe,
    electrodes/plateau_window, electrodes/plateau_spread, electrodes/probe_distance.
    """
    place, edges, compared = _compared(readings, probe, working)
    ohm = _between(readings, place)
    working.step(
        say("Reading at {place} ft, between the nearest two.", place=shown(place)),
        ohm,
        "ohm",
        cites=("electrodes/potential_probe",),
    )
    spread = max(abs(reading - ohm) for _, reading in compared) / ohm * 100
    working.step(
        say(
            "{count} readings between {low} and {high} ft differ from it by at most this.",
            count=len(compared),
            low=shown(edges[0]),
            high=shown(edges[1]),
        ),
        spread,
        "%",
        cites=("electrodes/plateau_window",),
    )
    most = working.cite("electrodes/plateau_spread").value
    working.step(say("Level enough is {most} percent.", most=most), cites=("electrodes/plateau_spread",))
    far_enough = _far_enough(probe, dimension, working)
    if not isolated:
        verdict = NOT_ISOLATED
    elif not far_enough:
        verdict = TOO_NEAR
    elif _falls(readings, most):
        verdict = DISTURBED
    else:
        verdict = PLATEAU if round(spread, FINEST) <= most else NO_PLATEAU
    return Judged(verdict, ohm, place, edges, spread)


def _compared(readings, probe: float, working: Working):
    share = working.cite("electrodes/potential_probe").value
    window = working.cite("electrodes/plateau_window").value
    place = share * probe
    edges = (round((share - window) * probe, FINEST), round((share + window) * probe, FINEST))
    compared = [(distance, ohm) for distance, ohm in readings if edges[0] <= distance <= edges[1]]
    if len(compared) < FEWEST_COMPARED or not compared[0][0] <= place <= compared[-1][0]:
        raise Mend(
            "distances",
            say(
                "At least {fewest} readings are needed between {low} and {high} ft, on both sides of {place} ft.",
                fewest=FEWEST_COMPARED,
                low=shown(edges[0]),
                high=shown(edges[1]),
                place=shown(place),
            ),
        )
    return place, edges, compared


def _between(readings: list[tuple[float, float]], place: float) -> float:
    for (near, low), (far, high) in pairwise(readings):
        if near <= place <= far:
            return low + (high - low) * (place - near) / (far - near)
    raise ValueError(place)


def _far_enough(probe: float, dimension: float, working: Working) -> bool:
    row = working.cite("electrodes/probe_distance").rows[0]
    multiple = working.compute(
        say("Distance to the current probe by the longest dimension of the electrode."),
        "probe / dimension",
        "times",
        cites=("electrodes/probe_distance",),
        probe=probe,
        dimension=dimension,
    )
    if row["least"] <= round(multiple, FINEST) < row["enough"]:
        working.note(
            say(
                "The current probe is less than {enough} times the electrode away. Move it out to {feet} ft and see "
                "that the reading stays.",
                enough=row["enough"],
                feet=shown_number(row["enough"] * dimension),
            )
        )
    return round(multiple, FINEST) >= row["least"]


def _falls(readings: list[tuple[float, float]], most: float) -> bool:
    """Tell whether a reading is lower than one nearer by more than `most` percent; in even soil none is."""
    ohms = [ohm for _, ohm in readings]
    return any(
        round(ohm, FINEST) < round(highest * (1 - most / 100), FINEST)
        for ohm, highest in zip(ohms, accumulate(ohms, max), strict=True)
    )


def series_of(readings: list[tuple[float, float]], found: Judged) -> list[dict]:
    """Give the series of a picture, ohm over ft: each a key, its words and its points [ft, ohm]."""
    level = [[each, found.ohm] for each in found.edges]
    return [
        _series("readings", say("Readings"), [list(each) for each in readings]),
        _series("compared", say("Where they should hold level"), level),
        _series("middle", say("About 62 percent of the way"), [[found.place, 0.0], [found.place, found.ohm]]),
    ]


def _series(key: str, words: Sentence, points: list[list[float]]) -> dict:
    return {"key": key, "words": str(words), "points": [[float(f"{each:.6g}") for each in point] for point in points]}
