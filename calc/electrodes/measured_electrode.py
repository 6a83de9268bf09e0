"""What a fall-of-potential test says of an electrode: its resistance, or why the readings prove nothing."""

from __future__ import annotations

from itertools import pairwise
from typing import Annotated

from calc.answer import Answer, Chart, Line
from calc.calculator import FieldError, calculator
from calc.electrodes import measured_fields as ask
from calc.electrodes.entered import FIGURES, shown
from calc.electrodes.fall_of_potential import (
    DECIMALS,
    DISTURBED,
    NO_PLATEAU,
    NOT_ISOLATED,
    PLATEAU,
    TOO_FLAT,
    TOO_LOW,
    TOO_NEAR,
    Judged,
    judged,
    series_of,
)
from calc.electrodes.measured_outputs import OUTPUTS
from calc.messages import Message, message
from calc.trace import Trace

NAME = message("Measured electrode")
SECOND = "grounding/rod_needs_second"
PLACE = "electrodes/potential_probe"
ERROR = "measure/meter_error"
WHAT_TO_DO = {
    NOT_ISOLATED: message(
        "It was still connected: the reading is that of everything bonded to it, the utility's electrodes too. It "
        "says nothing about this electrode."
    ),
    TOO_NEAR: message("The current probe is too close for an electrode this large. Move it out and read again."),
    DISTURBED: message(
        "A reading falls where it should rise. Buried metal or stray current is nearby: take another direction."
    ),
    TOO_FLAT: message(
        "The readings are level where they cannot be: with the current probe this close they must rise toward it. "
        "Check leads and probes, move the current probe farther out and read again."
    ),
    TOO_LOW: message(
        "No electrode of this size has so few ohms in any soil that was measured. Something is still connected to "
        "it: find it and read again."
    ),
    NO_PLATEAU: message("The readings do not hold level. Move the current probe farther out and read again."),
}


@calculator(
    "measured-electrode",
    name=NAME,
    purpose=message(
        "What fall-of-potential readings prove. First: isolate an electrode only with the service de-energized and "
        "its conductor tested free of current."
    ),
    submit=message("Check the readings"),
    example={
        "edition": "2023",
        "isolated": "yes",
        "dimension": "8ft",
        "probe": "80ft",
        "distances": "20,40,45,50,55,70",
        "readings": "29.7,31.1,31.3,31.6,32,34.6",
    },
    outputs=OUTPUTS,
)
def measured_electrode(
    *,
    trace: Trace,
    isolated: Annotated[str, ask.ISOLATED] = "no",
    kind: Annotated[str, ask.KIND] = "single",
    dimension: Annotated[float, ask.DIMENSION],
    probe: Annotated[float, ask.PROBE],
    distances: Annotated[str, ask.DISTANCES],
    readings: Annotated[str, ask.READINGS],
) -> Answer:
    """Judge a fall-of-potential test: whether the readings hold level around 62 percent, and at how many ohms.

    When: an electrode apart from everything else, three points in one line. Not for clamp-on testers, for
    electrodes that stay connected, or for large sites, whose probe would stand a street away.

    Parameters:
        isolated: "yes" or "no". kind: "single" rod, pipe or plate, or "other".
        dimension: ft, the longest of the electrode, 0.1 to 10,000. probe: ft to the current probe, 1 to 10,000.
        distances: ft to the potential probe, and readings: ohm at each, 3 to 50 of them, commas between.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold verdict ("plateau", "no-plateau", "too-flat", "too-low",
        "disturbed", "too-near", "not-isolated"), ohm (None unless the readings hold level), ohm_at_place, place_ft,
        spread_percent and series for a picture (each key, words, points [ft, ohm]).
    Raises: nothing; bad or too few readings end as `fix`.
    Source: rules electrodes/potential_probe, plateau_window, plateau_reach, plateau_spread, plateau_slope,
        probe_distance; 250.53(A)(2) Exception.

    Example:
    >>> result = measured_electrode(
    ...     isolated="yes", dimension=8, probe=80, distances="40,49.44,58", readings="20,20.5,21"
    ... )
    >>> result.answer_code
    'plateau-20.5-ohm'
    """
    _say_first_how_to_isolate(trace)
    pairs = _in_order(distances, readings, probe)
    found = judged(pairs, probe, dimension, isolated == "yes", trace)
    ohms = _shown_beside(found.ohm, trace.cite(SECOND).value)
    headline, detail = _verdict(found, ohms, kind, trace)
    _note_what_it_is_worth(trace)
    proven = found.verdict == PLATEAU
    return Answer(
        name=NAME,
        headline=headline,
        detail=detail,
        basis=SECOND if proven and kind == "single" else PLACE,
        answer_code=f"{PLATEAU}-{ohms.replace(',', '')}-ohm" if proven else found.verdict,
        values={
            "verdict": found.verdict,
            "ohm": found.ohm if proven else None,
            "ohm_at_place": found.ohm,
            "place_ft": found.place,
            "spread_percent": found.spread,
            "series": series_of(pairs, found),
        },
        charts=(_picture(pairs, found),),
    )


def _picture(pairs: list[tuple[float, float]], found: Judged) -> Chart:
    lines = tuple(
        Line(each["words"], tuple(tuple(point) for point in each["points"])) for each in series_of(pairs, found)
    )
    return Chart(
        "fall-of-potential",
        "straight",
        message("Readings over the distance of the potential probe"),
        message("Distance, ft"),
        message("Reading, ohm"),
        message("{across} ft, {up} ohm", across="{across}", up="{up}"),
        lines,
    )


def _say_first_how_to_isolate(trace: Trace) -> None:
    trace.warn(
        message(
            "Isolate an electrode for a test only with the service de-energized and its conductor tested free of "
            "current. Opened live, it can put full voltage across your hands and on the metal."
        ),
        grave=True,
    )
    trace.warn(message("Put it back and check it before the service is energized again."))


def _in_order(distances: str, readings: str, probe: float) -> list[tuple[float, float]]:
    """Return (ft, ohm) by distance. Raises: FieldError for lists of unlike length and for distances that cannot be."""
    feet, ohms = ask.amounts(distances), ask.amounts(readings)
    if len(feet) != len(ohms):
        raise FieldError(
            "readings", message("There are {count} distances. Enter one reading for each.", count=len(feet))
        )
    pairs = sorted(zip(feet, ohms, strict=True))
    if any(near == far for (near, _), (far, _) in pairwise(pairs)):
        raise FieldError("distances", message("One distance is entered twice. Keep one reading for each."))
    if pairs[-1][0] >= probe:
        raise FieldError(
            "distances",
            message(
                "The potential probe goes between electrode and current probe: below {probe} ft.", probe=shown(probe)
            ),
        )
    return pairs


def _shown_beside(ohm: float, limit: float) -> str:
    """Return a reading in three digits, in more where three would hide that it is over the limit.

    >>> _shown_beside(24.96, 25), _shown_beside(25.04, 25), _shown_beside(39.915, 25)
    ('25', '25.04', '39.9')
    """
    figures = FIGURES
    while float(f"{ohm:.{figures}g}") <= limit < round(ohm, DECIMALS):
        figures += 1
    return shown(ohm) if figures == FIGURES else f"{ohm:.{figures}g}"


def _verdict(found: Judged, ohms: str, kind: str, trace: Trace) -> tuple[Message, Message]:
    if found.verdict != PLATEAU:
        return message("Not proven"), WHAT_TO_DO[found.verdict]
    headline = message("{ohm} ohm", ohm=ohms)
    if kind != "single":
        return headline, message("The readings hold level around {place} ft.", place=shown(found.place))
    limit = trace.cite(SECOND)
    words = {"limit": limit.value, "section": limit.section}
    off = trace.cite(ERROR).value
    if limit.value < round(found.ohm * (1 + off / 100), DECIMALS) and round(found.ohm, DECIMALS) <= limit.value:
        return headline, message(
            "At most {limit} ohm as read, over it if the meter is {off} percent off: a single rod, pipe or plate may "
            "be used alone ({section}).",
            off=off,
            **words,
        )
    if round(found.ohm, DECIMALS) <= limit.value:
        return headline, message(
            "At most {limit} ohm: a single rod, pipe or plate may be used alone ({section}).", **words
        )
    return headline, message("Over {limit} ohm: add a second electrode ({section}).", **words)


def _note_what_it_is_worth(trace: Trace) -> None:
    season = trace.cite("electrodes/season").rows[0]
    trace.note(
        message(
            "One test on one day: season, rain and frost change it {least} to {most} times.",
            least=season["least"],
            most=season["most"],
        )
    )
    trace.note(
        message(
            "The middle reading holds for a small electrode in uniform soil. In layered soil, read at several probe "
            "distances."
        )
    )
    trace.note(
        message(
            "A good reading says nothing about clearing a fault: the earth is never the fault path ({section}).",
            section=trace.section("naming/auxiliary_electrode"),
        ),
        grave=True,
    )
