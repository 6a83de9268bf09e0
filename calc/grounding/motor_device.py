"""The device that counts in a motor circuit behind an instantaneous-trip breaker: the largest dual-element fuse."""

from __future__ import annotations

from calc.calculator import NotCovered
from calc.messages import message
from calc.trace import Trace, shown_number

DEVICE = "grounding/instantaneous_trip_device"
PERCENT = "grounding/motor_fuse_percent"
NEXT = "grounding/motor_fuse_next_rating"
RATINGS = "grounding/standard_fuse_ratings"


def largest_dual_element_fuse(current: float, motor: str, trace: Trace) -> float:
    """Return the rating, ampere, of the largest dual-element time-delay fuse for a motor of `current` ampere.

    motor: "ac" or "wound-rotor-or-dc". Raises: NotCovered above the last standard rating.
    Source: rules grounding/motor_fuse_percent, motor_fuse_next_rating, standard_fuse_ratings.
    """
    trace.step(
        message(
            "Do not use the setting of the instantaneous-trip breaker. Use the largest dual-element fuse permitted."
        ),
        cites=(DEVICE,),
    )
    percent = next(row["percent"] for row in trace.cite(PERCENT).rows if row["motor"] == motor)
    fuse = trace.compute(
        message("Largest dual-element time-delay fuse, from the percentage."),
        "percent * full_load_current / 100",
        "A",
        (PERCENT,),
        exact=True,
        percent=percent,
        full_load_current=current,
    )
    ratings = [row["ampere"] for row in trace.cite(RATINGS).rows]
    rating = next((ampere for ampere in ratings if ampere >= fuse), None)
    if rating is None:
        raise NotCovered(
            message("The motor would require a fuse larger than {last} A.", last=shown_number(ratings[-1])),
            message("Ask the equipment manufacturer or an engineer ({section}).", section=trace.section(DEVICE)),
        )
    trace.step(message("Standard rating: {rating} A.", rating=shown_number(rating)), rating, "A", (NEXT, RATINGS))
    return rating
