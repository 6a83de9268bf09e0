"""What readings of the fall of potential are worth: whether they hold level where they should."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import accumulate, pairwise

from calc.calculator import FieldError
from calc.data_file import Data
from calc.electrodes.entered import shown
from calc.electrodes.soil import KINDS_OF_SOIL, least_resistivity
from calc.messages import Message, message
from calc.trace import Trace, shown_number
from calc.units import convert

PLATEAU, NO_PLATEAU, TOO_FLAT, TOO_LOW, DISTURBED, TOO_NEAR, NOT_ISOLATED = (
    "plateau",
    "no-plateau",
    "too-flat",
    "too-low",
    "disturbed",
    "too-near",
    "not-isolated",
)
FEWEST_COMPARED = 3
DECIMALS = 9  # decimals; 62 percent of a distance is not to miss a window by the last bit

Points = list[tuple[float, float]]  # distance of the potential probe, ft, and what was read, ohm


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
    readings: Points, probe: float, dimension: float, isolated: bool, trace: Trace
) -> Judged:
    """Judge readings (ft, ohm) in order of distance, the current probe at `probe` ft. Records each step.

    Raises: FieldError when too few readings are near the middle. Source: rules electrodes/potential_probe,
    electrodes/plateau_window, electrodes/plateau_reach, electrodes/plateau_spread, electrodes/plateau_slope,
    electrodes/probe_distance.
    """
    place, edges, compared = _compared(readings, probe, trace)
    ohm = _between(readings, place)
    trace.step(
        message("Reading at {place} ft, between the nearest two.", place=shown(place)),
        ohm,
        "ohm",
        cites=("electrodes/potential_probe",),
    )
    spread = max(abs(reading - ohm) for _, reading in compared) / ohm * 100
    trace.step(
        message(
            "{count} readings between {low} and {high} ft differ from it by at most this.",
            count=len(compared),
            low=shown(edges[0]),
            high=shown(edges[1]),
        ),
        spread,
        "%",
        cites=("electrodes/plateau_window",),
    )
    most = trace.cite("electrodes/plateau_spread").value
    trace.step(message("Level enough is {most} percent.", most=most), cites=("electrodes/plateau_spread",))
    far_enough = _far_enough(probe, dimension, trace)
    flat = _too_flat(compared, ohm, probe, dimension, trace)
    least = _least(dimension, trace)
    if not isolated:
        verdict = NOT_ISOLATED
    elif ohm < least:
        verdict = TOO_LOW
    elif not far_enough:
        verdict = TOO_NEAR
    elif _falls(readings, most):
        verdict = DISTURBED
    elif flat:
        verdict = TOO_FLAT
    else:
        verdict = PLATEAU if round(spread, DECIMALS) <= most else NO_PLATEAU
    return Judged(verdict, ohm, place, edges, spread)


def _compared(
    readings: Points, probe: float, trace: Trace
) -> tuple[float, tuple[float, float], Points]:
    share = trace.cite("electrodes/potential_probe").value
    window = trace.cite("electrodes/plateau_window").value
    place = share * probe
    reach = trace.cite("electrodes/plateau_reach").value
    edges = (round((share - window) * probe, DECIMALS), round((share + window) * probe, DECIMALS))
    near, far = round((share - reach) * probe, DECIMALS), round((share + reach) * probe, DECIMALS)
    compared = [(distance, ohm) for distance, ohm in readings if edges[0] <= distance <= edges[1]]
    if len(compared) < FEWEST_COMPARED or not (compared[0][0] <= near and far <= compared[-1][0]):
        raise FieldError(
            "distances",
            message(
                "At least {fewest} readings are needed between {low} and {high} ft, on both sides of {place} ft: one "
                "at {near} ft or less, one at {far} ft or more. Closer together they look level anywhere.",
                fewest=FEWEST_COMPARED,
                low=shown(edges[0]),
                high=shown(edges[1]),
                place=shown(place),
                near=shown(near),
                far=shown(far),
            ),
        )
    return place, edges, compared


def _between(readings: Points, place: float) -> float:
    for (near, low), (far, high) in pairwise(readings):
        if near <= place <= far:
            return low + (high - low) * (place - near) / (far - near)
    raise ValueError(place)


def _far_enough(probe: float, dimension: float, trace: Trace) -> bool:
    row = trace.cite("electrodes/probe_distance").rows[0]
    multiple = trace.compute(
        message("Distance to the current probe by the longest dimension of the electrode."),
        "probe / dimension",
        "times",
        cites=("electrodes/probe_distance",),
        probe=probe,
        dimension=dimension,
    )
    if row["least"] <= round(multiple, DECIMALS) < row["enough"]:
        trace.note(
            message(
                "The current probe is closer than {enough} times the electrode's dimension. Move it out to {feet} ft "
                "and check that the reading holds.",
                enough=row["enough"],
                feet=shown_number(row["enough"] * dimension),
            )
        )
    return round(multiple, DECIMALS) >= row["least"]


def _least(dimension: float, trace: Trace) -> float:
    """Return the ohms that no electrode of this dimension, ft, is under: those of a half ball of metal it fits into."""
    return trace.compute(
        message("In the wettest soil that was measured, no electrode of this size has less."),
        "soil / (2 * pi * dimension)",
        "ohm",
        cites=(KINDS_OF_SOIL,),
        soil=least_resistivity(trace),
        pi=math.pi,
        dimension=convert(dimension, "ft", "m"),
    )


def _too_flat(compared: Points, ohm: float, probe: float, dimension: float, trace: Trace) -> bool:
    """Tell whether readings rise by less than even soil makes them, the current probe being near.

    A small current probe adds to what an electrode of this dimension has by 1 + 1/p - 1/(1 - p) of soil / (2 pi probe),
    p the share of the way. The soil is not known, but no electrode has more ohms in it than the rule says.
    """
    if round(probe / dimension, DECIMALS) >= trace.cite("electrodes/probe_distance").rows[0]["enough"]:
        return False
    most = trace.cite("electrodes/plateau_slope").value
    (near, first), (far, last) = compared[0], compared[-1]
    least = ohm * dimension / probe / most * (_drawn(near / probe) - _drawn(far / probe))
    trace.step(
        message(
            "With the current probe this near, from {near} to {far} ft they rise at least:",
            near=shown_number(near),
            far=shown_number(far),
        ),
        least,
        "ohm",
        cites=("electrodes/plateau_slope",),
    )
    return last - first < least


def _drawn(share: float) -> float:
    return 1 + 1 / share - 1 / (1 - share)


def _falls(readings: list[tuple[float, float]], most: float) -> bool:
    """Tell whether a reading is lower than one nearer by more than `most` percent; in even soil none is."""
    ohms = [ohm for _, ohm in readings]
    return any(
        round(ohm, DECIMALS) < round(highest * (1 - most / 100), DECIMALS)
        for ohm, highest in zip(ohms, accumulate(ohms, max), strict=True)
    )


def series_of(readings: list[tuple[float, float]], found: Judged) -> list[Data]:
    """Return the series of a picture, ohm over ft: each a key, its words and its points [ft, ohm]."""
    level = [[each, found.ohm] for each in found.edges]
    return [
        _series("readings", message("Readings"), [list(each) for each in readings]),
        _series("compared", message("Where they should hold level"), level),
        _series("middle", message("About 62 percent of the way"), [[found.place, 0.0], [found.place, found.ohm]]),
    ]


def _series(key: str, words: Message, points: list[list[float]]) -> Data:
    return {"key": key, "words": str(words), "points": [[float(f"{each:.6g}") for each in point] for point in points]}
