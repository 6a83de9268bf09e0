"""What an answer about a device must say beside its verdict, and the cases it does not take."""

from __future__ import annotations

from calc.calculator import FieldError, NotCovered
from calc.fault.device.device_limits import (
    BREAKER,
    EQUIPMENT_PROTECTION,
    FUSE,
    FUSE_TIME_DELAY,
    HOUSEHOLD,
    INTERRUPTER,
    INTERRUPTER_RULE,
    TOLERANCE_RULE,
    rows,
    value,
)
from calc.messages import message
from calc.trace import Trace, shown_number

FUSES = (FUSE, FUSE_TIME_DELAY)
SETTING = "fault/equipment_ground_fault_setting"
CLASS_LARGEST, CLASS_CC_LARGEST = "fault/fuse_class_largest", "fault/fuse_class_cc_largest"
HOUSEHOLD_OPENS = "fault/household_breaker_opens"


def require_one_device(
    device_kind: str, device: float, instantaneous_multiple: float | None, fuse_class: str, trace: Trace
) -> None:
    """Raise FieldError for inputs that do not go together, NotCovered for a device outside its standard."""
    if instantaneous_multiple is not None and device_kind != BREAKER:
        raise FieldError(
            "instantaneous_multiple", message("Leave it empty. It is only for inverse-time circuit breakers.")
        )
    if fuse_class != "general" and device_kind not in FUSES:
        raise FieldError("fuse_class", message("Choose “Another class”. The device is not a fuse."))
    if device_kind == EQUIPMENT_PROTECTION and device > trace.cite(SETTING).value:
        raise FieldError(
            "device",
            message(
                "Enter the setting, {most} A at most ({section}).",
                most=shown_number(value(SETTING)),
                section=trace.section(SETTING),
            ),
        )
    if device_kind in FUSES:
        _require_class(device, fuse_class, trace)
    last = rows(HOUSEHOLD_OPENS)[-1]["through_ampere"]
    if device_kind in HOUSEHOLD and device > last:
        raise NotCovered(
            message(
                "The standard for household breakers stops at {last} A ({section}).",
                last=last,
                section=trace.section(HOUSEHOLD_OPENS),
            ),
            message("See the published curve of the breaker, one made to IEC 60947-2."),
        )


def note_the_device(device_kind: str, device: float, fuse_class: str, trace: Trace) -> None:
    """Note what a reader must know about the kind of device."""
    if device_kind == BREAKER:
        trace.note(
            message(
                "A breaker is tested at 25 °C. In a warm panel it may trip below its rating; in the cold it trips "
                "later."
            )
        )
        tolerance = trace.cite(TOLERANCE_RULE).rows[0]
        trace.note(
            message(
                "An adjustable instantaneous trip may act as much as {high} percent over its setting ({section}).",
                high=tolerance["high"],
                section=trace.section(TOLERANCE_RULE),
            )
        )
    if (
        device_kind in FUSES
        and fuse_class == "general"
        and device > rows("fault/fuse_at_200_percent")[-1]["through_ampere"]
    ):
        trace.warn(
            message("The times here stop at {last} A.", last=rows("fault/fuse_at_200_percent")[-1]["through_ampere"])
        )
    if device_kind in FUSES and fuse_class == "c" and device <= rows("fault/fuse_class_c")[0]["over_ampere"]:
        trace.warn(message("No published time was seen for a class C fuse of this rating."))
    if device_kind == EQUIPMENT_PROTECTION:
        trace.note(
            message(
                "It protects equipment, not people, and only what is downstream of its sensor. A fault upstream "
                "opens nothing here."
            ),
            grave=True,
        )
    if device_kind == INTERRUPTER:
        trace.note(
            message(
                "It protects people from small leakage currents ({section}). It does not replace the equipment "
                "grounding conductor, and the breaker or fuse must clear a short circuit.",
                section=trace.section(INTERRUPTER_RULE),
            )
        )


def _require_class(device: float, fuse_class: str, trace: Trace) -> None:
    if fuse_class == "general":
        return
    if fuse_class == "cc":
        most = trace.cite(CLASS_CC_LARGEST).value
    else:
        most = next(row["ampere"] for row in trace.cite(CLASS_LARGEST).rows if row["fuse_class"] == fuse_class)
    if device > most:
        raise FieldError(
            "device", message("Fuses of this class stop at {most} A. Enter its rating.", most=shown_number(most))
        )
