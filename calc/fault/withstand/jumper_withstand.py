"""Whether a bonding jumper survives a fault until the device opens, and the smallest one that does."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, FieldError, NotCovered, calculator
from calc.conductors.area import AREA_RULE, area, next_listed_size
from calc.conductors.size import shown_size
from calc.data_file import Data
from calc.fault.caution import state_the_model
from calc.fault.device import device_fields as ask_device
from calc.fault.device.device_limits import BREAKER
from calc.fault.withstand import adiabatic
from calc.fault.withstand import withstand_fields as ask
from calc.fault.withstand.fault_energy import LARGEST_RATIO, fault_energy, time_to_open, with_offset
from calc.fault.withstand.withstand_outputs import OUTPUTS
from calc.known import known
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.shared_fields import METAL_WORDS
from calc.trace import Trace, shown_number

LIMIT, START = "fault/withstand_limit", "fault/withstand_start"


@calculator(
    "jumper-withstand",
    name=message("Jumper in a fault"),
    purpose=message(
        "Whether a bonding jumper survives a fault until the device opens, and the smallest one that does."
    ),
    submit=message("Check the jumper"),
    example={"edition": "2023", "fault_current": "5000", "clearing_time": "0.1 s", "size": "4"},
    outputs=OUTPUTS,
    margin=Margin(("fault_current", "clearing_time", "size"), needs={"fault_current": "clearing_time"}),
)
def jumper_withstand(
    *,
    trace: Trace,
    fault_current: Annotated[float, ask.FAULT_CURRENT],
    clearing_time: Annotated[float | None, ask.CLEARING_TIME] = None,
    device_kind: Annotated[str, ask.DEVICE_KIND] = BREAKER,
    device: Annotated[float | None, ask.DEVICE] = None,
    instantaneous_multiple: Annotated[float | None, ask_device.INSTANTANEOUS_MULTIPLE] = None,
    size: Annotated[str | None, ask.SIZE] = None,
    metal: Annotated[str, ask.METAL] = "copper",
    limit: Annotated[str, ask.LIMIT] = "thermoplastic",
    start_celsius: Annotated[float | None, ask.START] = None,
    let_through: Annotated[float | None, ask.LET_THROUGH] = None,
    formula: Annotated[str, ask.FORMULA] = ask.DAMAGE_CURVE,
    x_over_r: Annotated[float | None, ask.X_OVER_R] = None,
) -> Answer:
    """Return the smallest jumper that survives a fault, or whether one size does.

    When: one copper or aluminum wire and faults that last 0.1 to 5 s, or shorter ones whose energy the maker
    states. Not for raceways, busbars, several wires in parallel, or the mechanical forces of a fault.

    Parameters:
        fault_current: through the jumper, ampere, 1 to 200,000.
        clearing_time: second, typed; else device_kind, device (rating, ampere) and instantaneous_multiple give it.
        size: size label to check, left out for the smallest that survives. metal: "copper" or "aluminum".
        limit: "thermoplastic", "thermoset" or "bolted-joint". start_celsius: before the fault, °C, 0 to 240.
        let_through: energy, A²·s, which counts alone where entered. formula: "damage-curve" or "factor-k".
        x_over_r: at the fault, 0 to 100; left out, the largest that is usual, and it is asked for where it decides.
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold size (the smallest that survives), metal, area_cmil, needed_cmil,
        other_size (by the other formula), energy, time_second, checked_size, survives, end_celsius, melts_second.
    Raises: nothing; bad or missing input ends as `fix`, other cases as `not_covered`.
    Source: ICEA P-32-382, IEC 60364-5-54; the fusing formula of Onderdonk.

    Example:
    >>> result = jumper_withstand(edition="2023", fault_current="5000", clearing_time="12 cycles")
    >>> result.answer.values["size"], result.answer.values["other_size"]
    ('3', '3')
    """
    if let_through is None:
        second = time_to_open(clearing_time, device_kind, device, instantaneous_multiple, fault_current, trace)
        bare = fault_energy(fault_current, second, trace)
        energy = with_offset(bare, second, x_over_r, trace)
    else:
        second, bare, energy = None, let_through, let_through
        trace.step(
            message("Let-through energy of the device, as entered. Only this is used, not a time."), energy, "A²s"
        )
    start, end = _temperatures(start_celsius, limit, trace)
    needed = _needed_areas(energy, metal, start, end, trace)
    without_offset = next_listed_size(_areas(bare, metal, start, end)[formula], trace.edition)
    sizes = {name: next_listed_size(cmil, trace.edition) for name, cmil in needed.items()}
    smallest = sizes.pop(formula)
    (other,) = sizes.values()
    if smallest is None:
        raise NotCovered(
            message("{needed} cmil is needed. No single listed wire is that large.", needed=_shown(needed[formula])),
            message("Use a faster device, or ask the equipment engineer."),
        )
    trace.step(
        message(
            "{formula} is used here. Next listed size up: {size}.",
            formula=ask.FORMULA_WORDS[formula],
            size=shown_size(smallest),
        ),
        shown_size(smallest),
        "",
        (AREA_RULE,),
    )
    _note_what_it_leaves(metal, x_over_r, let_through, trace)
    values = {
        "size": smallest,
        "metal": metal,
        "area_cmil": area(smallest, trace.edition),
        "needed_cmil": needed[formula],
        "other_size": other,
        "energy": energy,
        "time_second": second,
    }
    words = dict(metal=METAL_WORDS[metal], size=shown_size(smallest))
    if size is None:
        return Answer(
            name=message("Smallest jumper that survives"),
            headline=message("{size}", **words),
            detail=_or_larger(words, known(without_offset), smallest),
            basis=_rule_of(formula, metal),
            answer_code=f"{smallest}-{metal}",
            values=values,
        )
    survives = area(size, trace.edition) >= needed[formula]
    if not survives and x_over_r is None and area(size, trace.edition) >= _areas(bare, metal, start, end)[formula]:
        raise FieldError("x_over_r", _it_decides(size, trace))
    checked = _checked(size, metal, energy, start, fault_current, formula, survives, trace)
    shown = dict(checked=shown_size(size), **words)
    return Answer(
        name=message("Jumper in a fault"),
        headline=message("It survives") if survives else message("Too small"),
        detail=message("{checked} {metal}; the smallest that survives is {size}", **shown),
        basis=_rule_of(formula, metal),
        answer_code="survives" if survives else "too-small",
        values=values | checked,
    )


def _it_decides(size: str, trace: Trace) -> Message:
    return message(
        "Enter X/R at the fault. It decides here: {size} survives without the first-cycle offset, but not with the "
        "most there can be. If nobody knows it, enter {most}.",
        size=shown_size(size),
        most=shown_number(trace.cite(LARGEST_RATIO).value),
    )


def _or_larger(words: Data, without_offset: str, smallest: str) -> Message:
    if without_offset == smallest:
        return message("{metal} wire or larger", **words)
    return message(
        "{metal} wire or larger; {other} only where the first cycles have no offset",
        other=shown_size(without_offset),
        **words,
    )


def _temperatures(start_celsius: float | None, limit: str, trace: Trace) -> tuple[float, float]:
    end = next(row["celsius"] for row in trace.cite(LIMIT).rows if row["limit"] == limit)
    start = trace.cite(START).value if start_celsius is None else start_celsius
    if start >= end:
        raise FieldError("start_celsius")
    cites = (LIMIT, START) if start_celsius is None else (LIMIT,)
    trace.step(
        message("It starts at {start} °C and is allowed to reach {end} °C.", start=shown_number(start), end=end),
        cites=cites,
    )
    return start, end


def _areas(energy: float, metal: str, start: float, end: float) -> dict[str, float]:
    return {
        ask.DAMAGE_CURVE: adiabatic.area_by_damage_curve(energy, metal, start, end),
        ask.FACTOR_K: adiabatic.area_by_factor_k(energy, metal, start, end),
    }


def _needed_areas(energy: float, metal: str, start: float, end: float, trace: Trace) -> dict[str, float]:
    areas = _areas(energy, metal, start, end)
    for formula, cmil in areas.items():
        words = message("Smallest area by {formula}.", formula=ask.FORMULA_WORDS[formula])
        trace.step(words, round(cmil, 1), "cmil", (_rule_of(formula, metal),))
    return areas


def _checked(
    size: str,
    metal: str,
    energy: float,
    start: float,
    fault_current: float,
    formula: str,
    survives: bool,
    trace: Trace,
) -> Data:
    cmil = area(size, trace.edition)
    reached = melts = None
    if survives:
        end = adiabatic.end_by_damage_curve if formula == ask.DAMAGE_CURVE else adiabatic.end_by_factor_k
        reached = end(energy, cmil, metal, start)
        trace.step(message("Temperature that {size} reaches.", size=shown_size(size)), round(reached, 1), "°C")
    if metal == "copper":
        melts = adiabatic.fusing_energy(cmil, start) / fault_current**2
        trace.step(
            message("At this current {size} would melt in this time, if no heat escaped.", size=shown_size(size)),
            float(f"{melts:.3g}"),
            "s",
            (adiabatic.FUSING,),
        )
    return {
        "checked_size": size,
        "survives": "yes" if survives else "no",
        "end_celsius": reached,
        "melts_second": melts,
    }


def _rule_of(formula: str, metal: str) -> str:
    return adiabatic.DAMAGE_CURVES[metal] if formula == ask.DAMAGE_CURVE else adiabatic.HEATING


def _shown(cmil: float) -> str:
    return shown_number(round(cmil))


def _note_what_it_leaves(metal: str, x_over_r: float | None, let_through: float | None, trace: Trace) -> None:
    trace.note(
        message(
            "The code's tables set a minimum size too. Use the larger of the two ({section}).",
            section=trace.section("grounding/effective_fault_path"),
        )
    )
    trace.note(message("A smaller current that lasts longer may heat it more. Check that one too."))
    state_the_model(
        trace,
        (
            message("all heat stays in one {metal} wire, evenly", metal=METAL_WORDS[metal]),
            _of_the_energy(x_over_r, let_through, trace),
            message("every joint is sound"),
        ),
    )


def _of_the_energy(x_over_r: float | None, let_through: float | None, trace: Trace) -> Message:
    if let_through is not None:
        return message("the energy is what the manufacturer states for this current")
    if x_over_r is not None:
        return message("the current stays what was entered, after the offset of its first cycles")
    return message(
        "the current stays what was entered; its first cycles are offset as much as X/R {ratio} allows",
        ratio=shown_number(trace.cite(LARGEST_RATIO).value),
    )
