"""What sizes an equipment grounding conductor beside conductors that may be larger than the device needs."""

from __future__ import annotations

from calc.calculator import FieldError
from calc.conductors.ampacity import size_of_ampacity
from calc.conductors.area import area
from calc.conductors.size import shown_size
from calc.data_file import Data
from calc.grounding.size_by_device import size_by_device
from calc.jumpers.supply_side_size import PARALLEL
from calc.messages import message
from calc.rulebook import rule
from calc.trace import Trace, shown_number

INCREASE = "grounding/equipment_grounding_increase"


def by_device_and_conductor(
    device: float, metal: str, conductor: str, minimum: str | None, conductor_metal: str, sets: int, edition: str
) -> Data:
    """Return the inputs of the equipment grounding conductor's calculator for hot conductors that are known.

    conductor, minimum: size labels of one hot conductor, the one that runs and the smallest that would do, None
    where that was not entered. Raises: FieldError for `minimum_conductor` where the conductors carry more than the
    device asks for: then this conductor grows with them, and only who chose them knows from what.
    """
    by_device = {"device": device, "metal": metal, "sets": sets}
    if minimum is None:
        if _larger_than_needed(device, conductor, conductor_metal, sets, edition):
            raise FieldError(
                "minimum_conductor",
                message(
                    "{conductor} is larger than {device} A requires at 75 °C, so the equipment grounding conductor "
                    "must be increased in proportion ({section}). Enter the minimum hot conductor size before "
                    "upsizing; enter {conductor} again if nothing smaller is permitted.",
                    conductor=shown_size(conductor),
                    device=shown_number(device),
                    section=Trace(edition).section(INCREASE),
                ),
            )
        return by_device
    if area(minimum, edition) > area(conductor, edition):
        words = message(
            "{conductor} is the installed size. Enter this size or a smaller one.",
            conductor=shown_size(conductor),
        )
        raise FieldError("minimum_conductor", words)
    return by_device | {
        "installed_conductor": conductor,
        "minimum_conductor": minimum,
        "conductor_metal": conductor_metal,
    }


def _larger_than_needed(device: float, conductor: str, metal: str, sets: int, edition: str) -> bool:
    carrying = size_of_ampacity(device / sets, metal, edition)
    if carrying is None:
        return False
    # Behind a small device a hot conductor is no smaller than its equipment grounding conductor, whatever it carries.
    floor = size_by_device(device, metal, Trace(edition)) if sets == 1 else rule(PARALLEL, edition).value
    return area(conductor, edition) > max(area(size, edition) for size in (carrying, floor))
