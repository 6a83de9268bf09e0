"""The conditions under which a flexible metal raceway may be the equipment grounding conductor. All must hold."""

from __future__ import annotations

from fractions import Fraction

from calc.calculator import FieldError
from calc.messages import Message, message
from calc.trace import Trace, shown_number

SIZES = ("3/8", "1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "3-1/2", "4", "5", "6")
NOT_GIVEN = "not-given"
LARGEST_DEVICE = "raceways/flexible_device_largest"
TUBING_SIZES = "raceways/flexible_metallic_tubing_size"
LONGEST = "raceways/flexible_length_longest"


def inches(trade_size: str) -> Fraction:
    """Return a trade size as a number, only to compare sizes.

    >>> inches("1-1/4")
    Fraction(5, 4)
    """
    return sum((Fraction(part) for part in trade_size.split("-")), Fraction(0))


def device_and_size(raceway: str, trade_size: str, device: float, trace: Trace) -> list[Message]:
    """Return the reasons against, from the device (A) and the trade size. Raises: FieldError without the size."""
    if raceway == "flexible-metallic-tubing" and trade_size != NOT_GIVEN:
        _require_made_size(trade_size, trace)
    rows = [row for row in trace.cite(LARGEST_DEVICE).rows if row["raceway"] == raceway]
    if "largest" in rows[0]:
        if trade_size == NOT_GIVEN:
            raise FieldError("trade_size", message("The answer depends on it. Choose the trade size of the conduit."))
        size = inches(trade_size)
        rows = [row for row in rows if inches(row["smallest"]) <= size <= inches(row["largest"])]
        if not rows:
            return [message("The list does not include this type of conduit in trade size {size}.", size=trade_size)]
    most = shown_number(rows[0]["ampere"])
    shown_device = shown_number(device)
    trace.step(
        message(
            "Largest overcurrent device permitted for this raceway: {most} A. Entered: {device} A.",
            most=most,
            device=shown_device,
        ),
        most,
        "A",
        (LARGEST_DEVICE,),
    )
    if device <= rows[0]["ampere"]:
        return []
    return [message("The overcurrent device is {device} A, over the {most} A limit.", device=shown_device, most=most)]


def _require_made_size(trade_size: str, trace: Trace) -> None:
    """Raise FieldError for a trade size not made in flexible metallic tubing; note where the smallest is permitted."""
    made = {row["trade_size"]: row["use"] for row in trace.cite(TUBING_SIZES).rows}
    section = trace.section(TUBING_SIZES)
    if trade_size not in made:
        raise FieldError(
            "trade_size",
            message(
                "Flexible metallic tubing comes in trade sizes {sizes} ({section}). Choose one of these, or another "
                "raceway: yours may be flexible metal conduit.",
                sizes=", ".join(made),
                section=section,
            ),
        )
    if made[trade_size] == "exceptions":
        trace.note(
            message(
                "Trade size {size} is permitted only in ducts and spaces for environmental air, or in short lengths "
                "for a listed assembly or to a luminaire ({section}).",
                size=trade_size,
                section=section,
            )
        )


def length_in_path(length: float | None, trace: Trace) -> list[Message]:
    """Return the reason against, from the flexible length in the whole path, ft. Raises: FieldError without one."""
    if not length:
        raise FieldError(
            "length",
            message("The answer depends on it. Enter the total of all flexible pieces in the path, for example 4 ft."),
        )
    limit = trace.cite(LONGEST).value
    longest, feet = shown_number(limit), shown_number(length)
    trace.step(
        message(
            "Maximum flexible length in one path: {longest} ft. Total entered: {length} ft.",
            longest=longest,
            length=feet,
        ),
        longest,
        "ft",
        (LONGEST,),
    )
    if length <= limit:
        return []
    return [message("The flexible pieces total {length} ft, more than {longest} ft.", length=feet, longest=longest)]


def small_piece(raceway: str, trade_size: str, small_flexible: str, trace: Trace) -> list[Message]:
    """Return the reason against, from a small flexible piece elsewhere in the path of a larger liquidtight one."""
    if raceway != "liquidtight-flexible-metal-conduit" or inches(trade_size) <= inches("1/2"):
        return []
    section = trace.section("raceways/small_flexible_in_path")
    if small_flexible == "no":
        return []
    return [message("Another flexible piece of trade size 3/8 or 1/2 is in the path ({section}).", section=section)]


def movement_and_core(raceway: str, flexibility: str, stainless: str, trace: Trace) -> list[Message]:
    """Return the reasons against, from movement after installation and stainless steel, as the edition has them."""
    if raceway == "flexible-metallic-tubing":
        if flexibility == "needed":
            trace.warn(
                message(
                    "The list has no requirement for flexible metallic tubing that moves or vibrates. Install a wire "
                    "anyway."
                )
            )
        return []
    against: list[Message] = []
    trace.cite("raceways/flexibility_after_installation")
    if flexibility == "needed":
        section = trace.section("raceways/flexibility_after_installation")
        against.append(
            message(
                "The raceway needs flexibility after installation: it moves or vibrates ({section}).",
                section=section,
            )
        )
    if stainless == "yes":
        if trace.cite("raceways/stainless_steel").value == "not-named":
            trace.warn(
                message(
                    "The {edition} edition does not mention stainless steel; the 2023 edition requires a wire or "
                    "jumper there. Install one.",
                    edition=trace.edition,
                )
            )
        else:
            section = trace.section("raceways/stainless_steel")
            against.append(message("The conduit or its core is stainless steel ({section}).", section=section))
    return against
