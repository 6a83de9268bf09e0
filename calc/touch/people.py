"""What people draw from a voltage that they meet: wet, with dry bare skin and in shoes, and what that means."""

from __future__ import annotations

from collections.abc import Mapping

from calc.rounded import at_least, at_most
from calc.touch.body import BODY, IMPEDANCE, PATHS, Currents, currents_behind
from calc.touch.lasting_current import CANNOT_LET_GO, lasting_verdict
from calc.touch.shock_fields import DRY, FOOT_FOOT, HAND_FEET, WATER_WET
from calc.touch.shock_words import held
from calc.words import Sentence, say
from calc.working import Working

SHOE = "touch/shoe_resistance"
WET, BARE, SHOD = "wet", "bare", "shod"
PEOPLE_WORDS = {
    WET: say("wet"),
    BARE: say("dry and barefoot"),
    SHOD: say("dry and in shoes"),
}
MEANING_WORDS = {
    "can-kill": say("it can kill"),
    "cannot-let-go": say("some cannot let go"),
    "felt": say("it is felt"),
    "hardly-felt": say("it is hardly felt"),
}
GLANCE_WORDS = {
    "can-kill": say("It can kill"),
    "cannot-let-go": say("Some cannot let go"),
    "felt": say("It is felt"),
    "hardly-felt": say("Hardly felt on land"),
}
LEAST = 0.001  # mA


def people_at(volt: float, working: Working, behind: float = 0.0) -> dict[str, Currents]:
    """Give the currents, mA, from one hand to both feet, of people who meet a voltage: those of shock-limits.

    volt: with no one there, at most 1000. behind: ohms of what drives it. Shoes count for the least only: wet or worn
    ones add nothing.
    """
    shoes = working.cite(SHOE).rows[0]["high"] / 2
    wet = currents_behind(volt, HAND_FEET, WATER_WET, working, behind)
    bare = currents_behind(volt, HAND_FEET, DRY, working, behind)
    shod = currents_behind(volt, HAND_FEET, DRY, working, behind + shoes)
    return {WET: wet, BARE: bare, SHOD: Currents(shod.few, shod.half, bare.most)}


def record_people(people: Mapping[str, Currents], working: Working) -> None:
    """Record the currents of each and what they mean."""
    for who, currents in people.items():
        working.step(
            say(
                "Through a body from one hand to both feet, {who}: {range} from few people to the most; {meaning}.",
                who=PEOPLE_WORDS[who],
                range=range_words(currents),
                meaning=meaning_of(currents, working),
            ),
            currents.most,
            "mA",
            (IMPEDANCE, PATHS, BODY, SHOE),
        )


def range_words(currents: Currents) -> Sentence:
    """Give the currents from few people to the most in words; never as nothing."""
    if currents.most < LEAST:
        return say("less than {least} mA", least=LEAST)
    return say("{few} to {most} mA", few=at_least(currents.few), most=at_most(currents.most))


def meaning_of(currents: Currents, working: Working) -> Sentence:
    """Give what the most of a current that lasts means."""
    return MEANING_WORDS[lasting_verdict(currents.most, working)]


def told_in_short(people: Mapping[str, Currents], working: Working) -> Sentence:
    """Give all of them in one line, the worst with what it means."""
    return say(
        "Through a body: wet {wet}, {meaning}; dry and barefoot {bare}, in shoes {shod}.",
        wet=range_words(people[WET]),
        meaning=meaning_of(people[WET], working),
        bare=range_words(people[BARE]),
        shod=range_words(people[SHOD]),
    )


def told_at_a_glance(most: float, in_a_step: bool, working: Working) -> Sentence:
    """Give what the most current of all, mA, means: from hand to feet, or in a step, where no hand holds on."""
    verdict = lasting_verdict(most, working)
    words = {"meaning": GLANCE_WORDS[verdict], "most": at_most(max(most, LEAST))}
    if not in_a_step:
        return say("{meaning}: up to {most} mA if wet.", **words)
    if verdict == CANNOT_LET_GO:
        words["meaning"] = held(False, FOOT_FOOT)
    return say("{meaning}: up to {most} mA if wet, in a step.", **words)


def people_values(people: Mapping[str, Currents], before: str = "") -> dict[str, float]:
    """Give the currents for programs, mA: of few and of the most, each of wet, bare and shod."""
    return {
        f"{before}milliampere_{who}_{share}": getattr(currents, share)
        for who, currents in people.items()
        for share in ("few", "most")
    }
