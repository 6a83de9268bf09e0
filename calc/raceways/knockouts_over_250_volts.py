"""Which bonding an entry of a metal raceway or cable needs: at a service, over 250 V to ground, or elsewhere."""

from __future__ import annotations

from typing import Annotated

from calc.declare import Answer, NotCovered, calculator
from calc.margin.declared import Margin
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
from calc.words import Sentence, say
from calc.working import Working, shown_number

JUMPERS = (JUMPER, JUMPER_IF_PATH)
WHERE = {
    "load-side": say("Past a breaker or fuse"),
    "derived-system": say("Between a transformer or generator and its first disconnect"),
}
MOST_VOLT = 1000  # a limit of this calculator
_VOLTAGE_KNOWN = say("where it was entered or its system is known")


@calculator(
    "knockouts-over-250-volts",
    name=say("Bonding at a knockout"),
    purpose=say("Whether a raceway or cable needs a jumper or a bonding fitting where it enters a box."),
    submit=say("Check the entry"),
    example={
        "edition": "2023",
        "system": "480Y/277",
        "knockout": "rings",
        "raceway": "electrical-metallic-tubing",
        "fitting": "shoulder-connector",
    },
    outputs=(
        Output("need", say("Bonding that the entry needs"), "choice", choices=NEEDS),
        Output("enough", say("Whether the fitting entered gives it"), "choice", choices=YES_OR_NO),
        Output("voltage_to_ground", say("Voltage to ground that counts"), "number", "V", when=_VOLTAGE_KNOWN),
    ),
    margin=Margin(("voltage_to_ground",)),
)
def knockouts_over_250_volts(
    *,
    working: Working,
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
    >>> knockouts_over_250_volts(edition="2023", system="480Y/277", **entry).said
    'jumper'
    """
    _stay_with_ordinary_metal(raceway, location, working)
    volt = voltage_to_ground
    if place != "service":
        volt = voltage_of_entry(system, voltage_to_ground, working)
    _stay_under_1000_volts(volt, working)
    if place == "service":
        need = need_at_service(knockout, working)
    else:
        need = need_by_voltage(volt, knockout, enclosure, working)
    if place == "derived-system":
        need = need_as_path(need, raceway, knockout, enclosure, working)
    enough = is_enough(fitting, raceway, need, working)
    notes_on_entry(need, place, knockout, fitting, working)
    headline, detail = _words(need, enough, place, volt, raceway, knockout, fitting)
    return Answer(
        name=say("Bonding at a knockout"),
        headline=headline,
        detail=detail,
        basis=SERVICE if place == "service" else OVER,
        said=need if need == ORDINARY else "enough" if enough else need if need in JUMPERS else BONDING_FITTING,
        values={"need": need, "enough": "yes" if enough else "no", "voltage_to_ground": volt},
    )


def _stay_with_ordinary_metal(raceway: str, location: str, working: Working) -> None:
    if raceway == ask.NONMETALLIC:
        raise NotCovered(
            say("A nonmetallic raceway has no metal to bond where it enters."),
            say(
                "Look under equipment grounding conductor ({section}): a wire bonds the enclosure.",
                section=working.section("naming/equipment_grounding_conductor_size"),
            ),
            "equipment-grounding-conductor",
        )
    if location == "hazardous":
        raise NotCovered(
            say("In a hazardous location the bonding of services is needed at every voltage, and more with it."),
            say(
                "Look under bonding in hazardous locations ({section}) and the article of the class or zone.",
                section=working.section("raceways/hazardous_location"),
            ),
        )


def _stay_under_1000_volts(volt: float | None, working: Working) -> None:
    if volt and volt > MOST_VOLT:
        raise NotCovered(
            say("Over {most} V other rules come on top.", most=MOST_VOLT),
            say("Look under systems over 1000 V ({section}).", section=working.section("naming/over_1000_volts")),
        )


def _words(need, enough, place, volt, raceway, knockout, fitting) -> tuple[Sentence, Sentence]:
    if need == ORDINARY:
        return say("No jumper needed"), say(
            "{where}, {volt} V to ground, no hazardous location. Ordinary fittings made for it, all tight, paint "
            "removed",
            where=WHERE[place],
            volt=shown_number(volt),
        )
    if enough:
        return say("Nothing more needed"), say("{fitting}: enough here", fitting=ask.FITTING_WORDS[fitting])
    if need == JUMPER:
        past = say("past the rings") if knockout == "rings" else say("past the oversized hole")
        return say("Jumper needed"), say("Bonding bushing with a jumper to the enclosure, {past}", past=past)
    if need == JUMPER_IF_PATH:
        return say("Jumper needed where the raceway is the bonding jumper"), say(
            "With a wire as the supply-side bonding jumper, tight ordinary fittings will do"
        )
    if need == BONDING_FITTING:
        return say("Bonding fitting needed"), say("Bonding locknut, threaded hub, or bonding bushing with a jumper")
    tight = (
        say("Two locknuts, one inside and one outside")
        if raceway in ask.RIGID
        else say("Connector with a shoulder outside and a locknut inside")
    )
    return say("Better fitting needed"), say("{tight}; or a bonding locknut, threaded hub or bushing", tight=tight)
