"""What a current that a clamp meter shows on metal, or on a whole feeder, may come from, and what to measure next."""

from __future__ import annotations

import math
from typing import Annotated

from calc.answer import Answer, Row, Table
from calc.calculator import calculator
from calc.electrodes.entered import number_for_code, shown
from calc.margin.declared import Margin
from calc.measure import clamp_fields as ask
from calc.measure.clamp_causes import CAUSES, NEIGHBOR, NEUTRAL_LOSS, SHARED, Signs, in_order
from calc.measure.clamp_outputs import CANNOT_TELL, OUTPUTS, REAL
from calc.messages import Message, message
from calc.shared_fields import UNKNOWN
from calc.trace import Trace

NAME = message("Current on metal")
OBJECTIONABLE = "naming/objectionable_current"
FILTER, FEW = "measure/filter_leakage", "measure/few_appliances"
MILLI = 1000
KNOWN = {"yes": True, "no": False, UNKNOWN: None}


@calculator(
    "clamp-reading",
    name=NAME,
    purpose=message(
        "A clamp meter shows current on a grounding conductor, a pipe or a whole feeder: why, and what next."
    ),
    submit=message("Find likely causes"),
    example={"edition": "2023", "where": "water-pipe-bond", "ampere": "2.6A", "empty": "0.02A", "off_ampere": "0.02A"},
    outputs=OUTPUTS,
    margin=Margin(("ampere", "empty", "digit"), verdict="verdict"),
)
def clamp_reading(
    *,
    trace: Trace,
    where: Annotated[str, ask.WHERE],
    ampere: Annotated[float, ask.AMPERE],
    empty: Annotated[float | None, ask.EMPTY] = None,
    off_ampere: Annotated[float | None, ask.OFF] = None,
    follows_load: Annotated[str, ask.FOLLOWS] = UNKNOWN,
    water_main: Annotated[str, ask.WATER_MAIN] = UNKNOWN,
    appliances: Annotated[int | None, ask.APPLIANCES] = None,
    digit: Annotated[float, ask.DIGIT] = 0,
    meter_percent: Annotated[float, ask.METER_PERCENT] = 0,
) -> Answer:
    """Return the likely causes of a steady current on metal in order, and for each what to measure next.

    When: alternating current on a grounded system that works, with no fault that clears. Not for the short current
    of a fault, for lightning, or for cathodic protection.

    Parameters:
        where: "electrode-conductor", "water-pipe-bond", "equipment-grounding-conductor" or "feeder-together".
        ampere: above 0, at most 10,000. empty: ampere with the jaws closed on nothing, None if nobody looked.
        off_ampere: ampere with the main, or the feeder's or circuit's own device, off; None if nobody looked.
        follows_load, water_main: "yes", "no" or "unknown". appliances: 0 to 10,000, None if not counted.
        digit: ampere, the meter's last digit; meter_percent: 0 to 50, its error.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold verdict ("real" or "cannot-tell"), ampere_low, ampere_high, causes
        (keys, the first to look at first), stays (with the device off: true, false, or null if not read) and
        appliances_for_filters (the fewest whose filters together may bring the current).
    Raises: nothing; bad input ends as `fix`.
    Source: Kirchhoff's current law; 250.6(A), 250.24, 250.142; rule measure/filter_leakage.

    Example:
    >>> result = clamp_reading(where="water-pipe-bond", ampere="2.6", off_ampere="0")
    >>> result.answer_code
    'neutral-loss-2.6-ampere'
    """
    _say_first_never_to_open_it(trace)
    low, high, doubt = _range(ampere, empty, digit, meter_percent, trace)
    real = low > 0
    stays = None if off_ampere is None else round(off_ampere - _doubt(off_ampere, empty, digit, meter_percent), 9) > 0
    falls = None if off_ampere is None else off_ampere + doubt < low
    most_stays = None if off_ampere is None else 2 * off_ampere >= ampere
    fewest, filters, small = _filters(where, low, high, appliances, trace)
    signs = Signs(real, stays, falls, most_stays, KNOWN[follows_load], KNOWN[water_main], filters, small)
    causes = in_order(where, signs)
    _say_what_the_signs_tell(where, signs, causes, trace)
    first = CAUSES[causes[0]]
    return Answer(
        name=NAME,
        headline=_headline(real, ampere, low, high),
        detail=_detail(where, signs, first.in_sentence, high),
        basis=OBJECTIONABLE,
        answer_code=f"{causes[0] if real else CANNOT_TELL}-{number_for_code(ampere)}-ampere",
        values={
            "verdict": REAL if real else CANNOT_TELL,
            "ampere_low": low,
            "ampere_high": high,
            "causes": list(causes),
            "stays": stays,
            "appliances_for_filters": fewest,
        },
        table=_table(causes),
    )


def _say_first_never_to_open_it(trace: Trace) -> None:
    trace.warn(
        message(
            "Never open this conductor, clamp or pipe: full voltage may be across the gap. If anyone feels a tingle: "
            "keep people away, shut the power off from a dry place, and call the utility and a qualified electrician."
        ),
        grave=True,
    )


def _doubt(ampere: float, empty: float | None, digit: float, meter_percent: float) -> float:
    return (empty or 0) + digit + ampere * meter_percent / 100


def _range(
    ampere: float, empty: float | None, digit: float, meter_percent: float, trace: Trace
) -> tuple[float, float, float]:
    """Return the least and the most current the reading stands for, and the doubt between, ampere."""
    doubt = trace.compute(
        message("What the meter may be off: its zero reading, its last digit, and its percentage."),
        "on_nothing + digit + reading * percent / hundred",
        "A",
        on_nothing=empty or 0,
        digit=digit,
        reading=ampere,
        percent=meter_percent,
        hundred=100,
    )
    low, high = round(max(ampere - doubt, 0), 9), round(ampere + doubt, 9)
    trace.step(
        message("The current is between {low} and {high}.", low=_shown(low), high=_shown(high)), cites=(OBJECTIONABLE,)
    )
    if empty is None:
        trace.note(
            message(
                "Take a zero reading with empty jaws at the same place too. What they show there is not in this "
                "conductor."
            )
        )
    return low, high, doubt


def _filters(
    where: str, low: float, high: float, appliances: int | None, trace: Trace
) -> tuple[int | None, bool | None, bool]:
    """Return how many appliances' filters it takes, whether those there explain it, and whether a few would.

    Those there may (True) or cannot (False).
    """
    if where in ask.AT_THE_SERVICE:
        return None, None, False
    each, few = trace.cite(FILTER).value, trace.cite(FEW).value
    small = round(high, 9) <= round(each * few / MILLI, 9)
    fewest = math.ceil(round(trace.compute(
        message("How many appliances it takes, if filters account for all of it."),
        "least * thousand / each",
        "appliances",
        cites=(FILTER,),
        least=low,
        thousand=MILLI,
        each=each,
    ), 9))  # fmt: skip
    trace.note(
        message(
            "One stationary appliance may let {each} mA through with nothing wrong ({section}). Drives and large "
            "filters may have more; see their data sheets.",
            each=each,
            section=trace.section(FILTER),
        )
    )
    if appliances is None:
        if small:
            trace.note(
                message(
                    "Up to {few} appliances are taken to be downstream of this point ({section}). Count them.",
                    few=few,
                    section=trace.section(FEW),
                )
            )
        return fewest, small or None, small
    most = each * appliances / MILLI
    if round(high, 9) <= round(most, 9):
        return fewest, True, small
    return fewest, False if low > most else None, small


def _say_what_the_signs_tell(where: str, signs: Signs, causes: tuple[str, ...], trace: Trace) -> None:
    if signs.stays is not None:
        trace.step(_of_the_switch(where, signs))
    if signs.follows is False and where not in ask.AT_THE_SERVICE:
        trace.step(message("It does not follow the load: a leak or filters are more likely than neutral current."))
    if signs.follows is True:
        trace.step(
            message("It follows the load: neutral current is more likely than a leak, unless that load itself leaks.")
        )
    if NEUTRAL_LOSS in causes:
        trace.warn(
            message(
                "With an open neutral everything may still work, because the pipe carries the current. Check the "
                "voltages first: all of it may depend on this metal."
            )
        )
    trace.warn(
        message("Lights that brighten and dim, or metal that is warm: have the power shut off now, then look for why."),
        grave=True,
    )
    if where == ask.PIPE or NEIGHBOR in causes:
        trace.warn(
            message(
                "Nobody cuts or opens the water pipe or removes the water meter before the pipe is jumpered across "
                "and the neutrals are known to be sound."
            ),
            grave=True,
        )
    if SHARED in causes:
        trace.note(
            message(
                "On a metal water main that houses share, part of every neutral's current flows with nothing broken. "
                "Plumbers still meet that current."
            )
        )
    if where == ask.FEEDER:
        trace.note(
            message(
                "All conductors of a sound feeder together read zero. What is left returns another way. Keep the "
                "equipment grounding conductor out of the jaws."
            )
        )
    trace.note(
        message(
            "The neutral stays isolated from metal downstream of the service ({section}).",
            section=trace.section("grounding/no_neutral_bond_on_load_side"),
        )
    )
    words = message("Currents from two sources may cancel here. Little or no current does not prove a path sound.")
    trace.note(words, grave=True)


def _of_the_switch(where: str, signs: Signs) -> Message:
    if where in ask.AT_THE_SERVICE:
        if not signs.stays:
            return message("With this building's main off, nothing is left: the current comes from this building.")
        if signs.falls:
            return message(
                "With this building's main off, part of it is left: some comes from outside, some from this building."
            )
        return message("With this building's main off, it is still there: it comes from outside.")
    if not signs.stays:
        return message("With its own breaker off, nothing is left: it belongs to this feeder or circuit.")
    if signs.falls:
        return message("With its own breaker off, part of it is left: other circuits put some of it on this metal.")
    return message("With its own breaker off, it is still there: other circuits put it on this metal.")


def _headline(real: bool, ampere: float, low: float, high: float) -> Message:
    if not real:
        return message("This meter cannot tell")
    if low == high:
        return message("{ampere} on metal", ampere=_shown(ampere))
    return message("{ampere} on metal, {low} to {high}", ampere=_shown(ampere), low=_shown(low), high=_shown(high))


def _detail(where: str, signs: Signs, first: Message, high: float) -> Message:
    words = {"first": first, "high": _shown(high)}
    if not signs.real:
        return message("It is within what the meter may be off. The current may be anywhere from 0 to {high}.", **words)
    look = message("Look first for {first}.", **words)
    if signs.stays:
        look = message("{stays} {look}", stays=_of_what_stays(where, bool(signs.falls)), look=look)
    return look


def _of_what_stays(where: str, falls: bool) -> Message:
    """Return what current that stays with the device off means. falls: some of it went."""
    if where not in ask.AT_THE_SERVICE:
        part = message("Part of it") if falls else message("It")
        return message("{part} stays with its own breaker off: treat this metal and its neutral as live.", part=part)
    if falls:
        return message("Part of it stays with the main off, from outside: report it to the utility, and open nothing.")
    return message("It stays with the main off, so it comes from outside: report it to the utility, and open nothing.")


def _shown(ampere: float) -> Message:
    if ampere < 1:
        return message("{value} mA", value=shown(MILLI * ampere))
    return message("{value} A", value=shown(ampere))


def _table(causes: tuple[str, ...]) -> Table:
    headings = {
        "cause": message("May be"),
        "measure": message("Measure next"),
        "tells": message("What that tells"),
    }
    rows = tuple(
        Row({"cause": CAUSES[key].words, "measure": CAUSES[key].measure, "tells": CAUSES[key].tells}) for key in causes
    )
    return Table(headings, rows)
