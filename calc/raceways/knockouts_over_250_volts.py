"""Which bonding an entry of a metal raceway or cable needs: at a service, over 250 V to ground, or elsewhere."""

from __future__ import annotations

from typing import Annotated

from calc.calculator import Answer, NotCovered, calculator
from calc.known import known
from calc.margin.declared import Margin
from calc.messages import Message, message
from calc.output import YES_OR_NO, Output
from calc.raceways import entry_fields as ask
from calc.raceways.entry_bonding import (
    BONDING_FITTING,
    JUMPER,
    JUMPER_IF_PATH,
    NEEDS,
    ORDINARY,
    OVER,
    SERVICE,
    is_enough,
    need_as_path,
    need_at_service,
    need_by_voltage,
    voltage_of_entry,
)
from calc.raceways.entry_notes import notes_on_entry
from calc.scope import OutOfScope, SectionOf, require_scope
from calc.trace import Trace, shown_number

JUMPERS = (JUMPER, JUMPER_IF_PATH)
WHERE = {
    "load-side": message("On the load side of a breaker or fuse"),
    "derived-system": message("Between a transformer or generator and its first disconnect"),
}
MAX_VOLT = 1000  # a limit of this calculator
_VOLTAGE_KNOWN = message("where it was entered or its system is known")

OUT_OF_SCOPE = (
    OutOfScope(
        "raceway",
        ask.NONMETALLIC,
        message("A nonmetallic raceway has no metal to bond at the entry."),
        message(
            "Look under equipment grounding conductor ({section}): a wire-type conductor bonds the enclosure.",
            section=SectionOf("naming/equipment_grounding_conductor_size"),
        ),
        ("equipment-grounding-conductor",),
    ),
    OutOfScope(
        "location",
        "hazardous",
        message(
            "In a hazardous location, service-type bonding is required at every voltage, and other requirements "
            "apply."
        ),
        message(
            "Look under bonding in hazardous locations ({section}) and the article of the class or zone.",
            section=SectionOf("raceways/hazardous_location"),
        ),
    ),
)


@calculator(
    "knockouts-over-250-volts",
    name=message("Bonding at a knockout"),
    purpose=message("Whether a raceway or cable needs a bonding jumper or bonding fitting where it enters a box."),
    submit=message("Check the entry"),
    example={
        "edition": "2023",
        "system": "480Y/277",
        "knockout": "rings",
        "raceway": "electrical-metallic-tubing",
        "fitting": "shoulder-connector",
    },
    outputs=(
        Output("need", message("Bonding required at the entry"), "choice", choices=NEEDS),
        Output("enough", message("Whether the fitting entered provides it"), "choice", choices=YES_OR_NO),
        Output("voltage_to_ground", message("Voltage to ground used"), "number", "V", when=_VOLTAGE_KNOWN),
    ),
    margin=Margin(("voltage_to_ground",)),
)
def knockouts_over_250_volts(
    *,
    trace: Trace,
    place: Annotated[str, ask.PLACE] = "load-side",
    system: Annotated[str, ask.SYSTEM] = ask.NOT_GIVEN,
    voltage_to_ground: Annotated[float | None, ask.VOLTAGE] = None,
    knockout: Annotated[str, ask.KNOCKOUT] = "rings",
    enclosure: Annotated[str, ask.ENCLOSURE] = "cabinet",
    raceway: Annotated[str, ask.ENTERING_RACEWAY],
    fitting: Annotated[str | None, ask.FITTING] = None,
    location: Annotated[str, ask.LOCATION] = "ordinary",
) -> Answer:
    """Tell which bonding one entry of a metal raceway or cable needs, and whether its fitting gives it.

    When: metal raceways and metal-sheathed cables into boxes and enclosures, up to 1000 V. Not for
    nonmetallic raceways or hazardous locations: those end as not covered.

    Parameters:
        place: "load-side", "service" or "derived-system" (from the source to its first disconnect).
        system: such as "480Y/277"; voltage_to_ground: volt, 1 to 100,000. One of them is needed except at a
            service; a voltage that is entered counts.
        knockout: "right-size", "rings" or "oversized". enclosure: "cabinet", "outlet-box", "marked-enclosure".
        raceway: a kind, such as "rigid-metal-conduit". fitting: what holds it, such as "two-locknuts";
            needed where ordinary fittings may do.
        location: "ordinary" or "hazardous".
        edition: "2017", "2020", "2023" or "2026" (read by every calculator).

    Returns: a Result; its answer's `values` hold need, enough, voltage_to_ground. A need of
        "jumper-if-path": a jumper where the raceway itself is the supply-side bonding jumper.
    Raises: nothing; bad or missing input ends as `fix`, other cases as `not_covered`.
    Source: 250.92(B), 250.97 and its exception, 250.96(A), 300.10.

    Example:
    >>> entry = {"fitting": "two-locknuts", "raceway": "rigid-metal-conduit", "knockout": "rings"}
    >>> knockouts_over_250_volts(edition="2023", system="480Y/277", **entry).answer_code
    'jumper'
    """
    require_scope(OUT_OF_SCOPE, trace, raceway=raceway, location=location)
    if place == "service":
        volt = voltage_to_ground
        _stay_under_1000_volts(volt, trace)
        need = need_at_service(knockout, trace)
    else:
        volt = voltage_of_entry(system, voltage_to_ground, trace)
        _stay_under_1000_volts(volt, trace)
        need = need_by_voltage(volt, knockout, enclosure, trace)
    if place == "derived-system":
        need = need_as_path(need, raceway, knockout, enclosure, trace)
    enough = is_enough(fitting, raceway, need, trace)
    notes_on_entry(need, place, knockout, fitting, trace)
    headline, detail = _words(need, enough, place, volt, raceway, knockout, fitting)
    return Answer(
        name=message("Bonding at a knockout"),
        headline=headline,
        detail=detail,
        basis=SERVICE if place == "service" else OVER,
        answer_code=need if need == ORDINARY else "enough" if enough else need if need in JUMPERS else BONDING_FITTING,
        values={"need": need, "enough": "yes" if enough else "no", "voltage_to_ground": volt},
    )


def _stay_under_1000_volts(volt: float | None, trace: Trace) -> None:
    if volt and volt > MAX_VOLT:
        raise NotCovered(
            message("Over {most} V, additional rules apply.", most=MAX_VOLT),
            message("Look under systems over 1000 V ({section}).", section=trace.section("naming/over_1000_volts")),
        )


def _words(
    need: str, enough: bool, place: str, volt: float | None, raceway: str, knockout: str, fitting: str | None
) -> tuple[Message, Message]:
    if need == ORDINARY:
        return message("No jumper required"), message(
            "{where}, {volt} V to ground, not a hazardous location. Standard fittings made for it, all tight, paint "
            "removed",
            where=WHERE[place],
            volt=shown_number(known(volt)),
        )
    if enough:
        return message("Nothing more required"), message(
            "{fitting}: sufficient here", fitting=ask.FITTING_WORDS[known(fitting)]
        )
    if need == JUMPER:
        past = message("around the rings") if knockout == "rings" else message("around the oversized knockout")
        return message("Jumper required"), message("Bonding bushing with a jumper to the enclosure, {past}", past=past)
    if need == JUMPER_IF_PATH:
        return message("Jumper required where the raceway is the bonding jumper"), message(
            "With a wire-type supply-side bonding jumper, standard fittings made up tight are permitted"
        )
    if need == BONDING_FITTING:
        return message("Bonding fitting required"), message(
            "Bonding locknut, threaded hub, or bonding bushing with a jumper"
        )
    tight = (
        message("Two locknuts, one inside and one outside")
        if raceway in ask.RIGID
        else message("Connector with a shoulder outside and a locknut inside")
    )
    return message("Better fitting required"), message(
        "{tight}; or a bonding locknut, threaded hub or bushing", tight=tight
    )
