"""What people draw from a voltage that they meet: wet, with dry bare skin and in shoes, and what that means."""

from __future__ import annotations

from collections.abc import Mapping

from calc.messages import Message, message
from calc.rounded import at_least, at_most
from calc.touch.shock.body import BODY, IMPEDANCE, PATHS, Currents, currents_behind
from calc.touch.shock.lasting_current import CANNOT_LET_GO, lasting_verdict
from calc.touch.shock.shock_fields import DRY, FOOT_FOOT, HAND_FEET, WATER_WET
from calc.touch.shock.shock_words import held
from calc.trace import Trace

SHOE = "touch/shoe_resistance"
WET, BARE, SHOD = "wet", "bare", "shod"
PEOPLE_WORDS = {
    WET: message("wet"),
    BARE: message("dry and barefoot"),
    SHOD: message("dry and in shoes"),
}
MEANING_WORDS = {
    "can-kill": message("it can kill"),
    "cannot-let-go": message("some cannot let go"),
    "felt": message("it is felt"),
    "hardly-felt": message("it is hardly felt"),
}
GLANCE_WORDS = {
    "can-kill": message("It can kill"),
    "cannot-let-go": message("Some cannot let go"),
    "felt": message("It is felt"),
    "hardly-felt": message("Hardly felt on land"),
}
LEAST = 0.001  # mA


def people_at(volt: float, trace: Trace, behind: float = 0.0) -> dict[str, Currents]:
    """Return the currents, mA, from one hand to both feet, of people who meet a voltage: those of shock-limits.

    volt: with no one there, at most 1000. behind: ohms of what drives it. Shoes count for the least only: wet or worn
    ones add nothing.
    """
    shoes = trace.cite(SHOE).rows[0]["high"] / 2
    wet = currents_behind(volt, HAND_FEET, WATER_WET, trace, behind)
    bare = currents_behind(volt, HAND_FEET, DRY, trace, behind)
    shod = currents_behind(volt, HAND_FEET, DRY, trace, behind + shoes)
    return {WET: wet, BARE: bare, SHOD: Currents(shod.few, shod.half, bare.most)}


def record_people(people: Mapping[str, Currents], trace: Trace) -> None:
    """Record the currents of each and what they mean."""
    for who, currents in people.items():
        trace.step(
            message(
                "Through a body from one hand to both feet, {who}: {range}, from those who get least to those who "
                "get most; {meaning}.",
                who=PEOPLE_WORDS[who],
                range=range_words(currents),
                meaning=meaning_of(currents, trace),
            ),
            currents.most,
            "mA",
            (IMPEDANCE, PATHS, BODY, SHOE),
        )


def range_words(currents: Currents) -> Message:
    """Return the currents from few people to the most in words; never as nothing."""
    if currents.most < LEAST:
        return message("less than {least} mA", least=LEAST)
    return message("{few} to {most} mA", few=at_least(currents.few), most=at_most(currents.most))


def meaning_of(currents: Currents, trace: Trace) -> Message:
    """Return what the most of a current that lasts means."""
    return MEANING_WORDS[lasting_verdict(currents.most, trace)]


def told_in_short(people: Mapping[str, Currents], trace: Trace) -> Message:
    """Return all of them in one line, the worst with what it means."""
    return message(
        "Through a body: wet {wet}, {meaning}; dry and barefoot {bare}, in shoes {shod}.",
        wet=range_words(people[WET]),
        meaning=meaning_of(people[WET], trace),
        bare=range_words(people[BARE]),
        shod=range_words(people[SHOD]),
    )


def told_at_a_glance(most: float, in_a_step: bool, trace: Trace) -> Message:
    """Return what the most current of all, mA, means: from hand to feet, or in a step, where no hand holds on."""
    verdict = lasting_verdict(most, trace)
    words = {"meaning": GLANCE_WORDS[verdict], "most": at_most(max(most, LEAST))}
    if not in_a_step:
        return message("{meaning}: up to {most} mA if wet.", **words)
    if verdict == CANNOT_LET_GO:
        words["meaning"] = held(False, FOOT_FOOT)
    return message("{meaning}: up to {most} mA if wet, in a step.", **words)


def people_values(people: Mapping[str, Currents], before: str = "") -> dict[str, float]:
    """Return the currents for programs, mA: of few and of the most, each of wet, bare and shod."""
    return {
        f"{before}milliampere_{who}_{share}": getattr(currents, share)
        for who, currents in people.items()
        for share in ("few", "most")
    }
