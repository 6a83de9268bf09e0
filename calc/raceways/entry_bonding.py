"""What an entry needs so that a fault passes from raceway to enclosure: a jumper, a bonding fitting, or a tight one."""

from __future__ import annotations

from calc.calculator import require
from calc.messages import message
from calc.raceways.entry_fields import NOT_GIVEN, RIGID
from calc.raceways.raceway_as_supply_jumper import PATH, bridged_as_path, may_be_supply_jumper
from calc.systems import system_called
from calc.trace import Trace, shown_number

OVER = "raceways/over_250_volts_to_ground"
EXCEPTION = "raceways/over_250_volts_exception"
SERVICE = "raceways/service_fittings"
BOXES = "raceways/boxes_listed_for_bonding"
OF_SYSTEM = "raceways/voltage_to_ground_of_system"
JUMPER, BONDING_FITTING, TIGHT_FITTING, ORDINARY = "jumper", "bonding-fitting", "tight-fitting", "ordinary"
JUMPER_IF_PATH = "jumper-if-path"
NEEDS = (JUMPER, JUMPER_IF_PATH, BONDING_FITTING, TIGHT_FITTING, ORDINARY)


def voltage_of_entry(system: str, voltage_to_ground: float | None, trace: Trace) -> float:
    """Return the voltage to ground, volt, as entered or by the system. Raises: Missing when neither is given."""
    if system == NOT_GIVEN:
        return require(voltage_to_ground, "voltage_to_ground")
    volt = next(row["volt"] for row in trace.cite(OF_SYSTEM).rows if row["system"] == system)
    if voltage_to_ground not in (None, volt):
        trace.warn(
            message(
                "{system} has {volt} V to ground ({section}). The {entered} V entered is used.",
                system=system_called(system).label,
                volt=volt,
                section=trace.section(OF_SYSTEM),
                entered=shown_number(voltage_to_ground),
            )
        )
        return voltage_to_ground
    trace.step(
        message("{system}: {volt} V to ground.", system=system_called(system).label, volt=volt),
        f"{volt}",
        "V",
        (OF_SYSTEM,),
    )
    return volt


def need_at_service(knockout: str, trace: Trace) -> str:
    """Return the need of an entry that holds service conductors. Source: rule raceways/service_fittings."""
    if knockout == "right-size":
        trace.step(
            message("Service conductors: standard locknuts and bushings alone are never enough, at any voltage."),
            cites=(SERVICE,),
        )
        return BONDING_FITTING
    trace.step(
        message(
            "Service conductors: install a bonding jumper around {hole}, whatever the box is listed for.",
            hole=_hole(knockout),
        ),
        cites=(SERVICE,),
    )
    return JUMPER


def need_by_voltage(volt: float, knockout: str, enclosure: str, trace: Trace) -> str:
    """Return the need of any other entry by its voltage to ground, its hole and its box."""
    limit = trace.cite(OVER).value
    if volt <= limit:
        trace.step(
            message("{volt} V to ground is not over {limit} V.", volt=shown_number(volt), limit=limit), cites=(OVER,)
        )
        return ORDINARY
    trace.step(message("{volt} V to ground is over {limit} V.", volt=shown_number(volt), limit=limit), cites=(OVER,))
    if knockout == "right-size":
        trace.step(
            message("The knockout fits, with no rings left: standard fittings made up tight are permitted."),
            cites=(EXCEPTION,),
        )
        return TIGHT_FITTING
    if knockout == "rings" and _listed(enclosure, trace):
        trace.step(
            message("The box is listed for bonding through its rings: standard fittings made up tight are permitted."),
            cites=(EXCEPTION, BOXES),
        )
        return TIGHT_FITTING
    if knockout == "rings":
        words, cites = (
            message(
                "Rings are left, and the box is not listed for bonding through them: a bonding jumper is required."
            ),
            (OVER, BOXES),
        )
    else:
        words, cites = (
            message("The knockout is oversized: a bonding jumper is required. A listing for rings does not cover it."),
            (OVER, EXCEPTION),
        )
    trace.step(words, cites=(*cites, SERVICE))
    return JUMPER


def need_as_path(need: str, raceway: str, knockout: str, enclosure: str, trace: Trace) -> str:
    """Return the need of an entry between a derived system and its first disconnect, by `need` for its voltage.

    There the raceway itself may be the supply-side bonding jumper; with a wire beside it the voltage alone decides.
    """
    spoiled = knockout == "oversized" or (knockout == "rings" and not _listed(enclosure, trace))
    if need != ORDINARY or not spoiled or not may_be_supply_jumper(raceway):
        return need
    trace.step(bridged_as_path(trace), cites=(PATH, OVER))
    return JUMPER_IF_PATH


def is_enough(fitting: str | None, raceway: str, need: str, trace: Trace) -> bool:
    """Tell whether `fitting` on `raceway` meets `need`; the values are those of the fields.

    Raises: FieldError for a fitting left out where it decides: where a tight ordinary one may do.
    """
    if need == ORDINARY:
        return True
    if need == TIGHT_FITTING:
        require(fitting, "fitting")
    bridged = need in (JUMPER, JUMPER_IF_PATH)
    bonding = {row["fitting"] for row in trace.cite(SERVICE).rows if not bridged or row["knockout"] == "any"}
    if fitting in bonding:
        return True
    if need != TIGHT_FITTING:
        return False
    wiring = ("any", "rigid") if raceway in RIGID else ("any",)
    return any(row["fitting"] == fitting and row["wiring"] in wiring for row in trace.cite(EXCEPTION).rows)


def _listed(enclosure: str, trace: Trace) -> bool:
    return any(row["enclosure"] == enclosure and row["rings"] == "listed" for row in trace.cite(BOXES).rows)


def _hole(knockout: str):
    return message("the rings") if knockout == "rings" else message("the oversized knockout")
