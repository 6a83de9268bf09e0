"""The conditions under which a metal cable tray may be the equipment grounding conductor. All must hold."""

from __future__ import annotations

from calc.calculator import FieldError
from calc.messages import Message, message
from calc.trace import Trace, shown_number

AREA = "raceways/tray_metal_area"


def tray(tray_metal: str, tray_area: float | None, device: float, qualified: str, trace: Trace) -> list[Message]:
    """Return the reasons against a tray: its metal, "steel" or "aluminum"; its metal area, in²; the largest device, A.

    Raises: FieldError when the area is missing or 0. Source: rules raceways/tray_*.
    """
    against: list[Message] = []
    trace.cite("raceways/tray_supervision")
    trace.cite("raceways/tray_conditions")
    if qualified == "no":
        against.append(message("Nothing ensures that only qualified persons service the tray."))
    rows = [row for row in trace.cite(AREA).rows if tray_metal in row]
    row = next((row for row in rows if device <= row["through_ampere"]), None)
    if row is None:
        last = shown_number(rows[-1]["through_ampere"])
        against.append(message("A tray of this metal is limited to a {last} A overcurrent device.", last=last))
        return against
    if not tray_area:
        raise FieldError(
            "tray_area", message("The answer depends on it. Enter the area marked on the tray, for example 0.7.")
        )
    least, given = shown_number(row[tray_metal]), shown_number(tray_area)
    trace.step(
        message(
            "Minimum metal area for a {device} A device: {least} in². Entered: {area} in².",
            device=shown_number(device),
            least=least,
            area=given,
        ),
        least,
        "in²",
        (AREA,),
    )
    if tray_area < row[tray_metal]:
        against.append(message("The tray has {area} in² of metal, less than {least} in².", area=given, least=least))
    return against
