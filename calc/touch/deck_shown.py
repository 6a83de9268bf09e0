"""How the profile of a pool deck is shown: as steps, as a comparison and as a chart."""

from __future__ import annotations

from collections.abc import Mapping

from calc.answer import Chart, Line, Row, Table
from calc.rounded import about
from calc.touch.deck import LIMITS, Metal
from calc.touch.deck_fields import SHELL
from calc.touch.deck_profile import CORNER, SIDE, Profile
from calc.words import Sentence, say
from calc.working import Working, shown_number

LOOKED_AT = (0.5, 1.5, 3.0, 6.0)
LINE_WORDS = {SIDE: say("out from the middle of a long side"), CORNER: say("out from a corner")}
CHARTED = {step / 2 for step in range(13)}  # ft


LEAST_VOLT = 0.0005


def volt_figure(volt: float) -> str | Sentence:
    """Give a voltage in two digits, since it may be off by a hundredth of the rise; never as nothing.

    >>> volt_figure(53.728), str(volt_figure(0.0003))
    ('54', 'less than 0.0005')
    """
    return about(volt) if volt >= LEAST_VOLT else say("less than {least}", least=shown_number(LEAST_VOLT))


def record_touch(metal: Metal, profile: Profile, rise: float, working: Working) -> None:
    """Record how the metal was solved, and the touch voltage at four distances from the wall."""
    working.step(
        say(
            "{metal}. A quarter of it is cut into {count} pieces, each with the current that gives all one voltage.",
            metal=metal.words,
            count=len(metal.bundles),
        ),
        cites=(LIMITS,),
    )
    for ft in LOOKED_AT:
        side, corner = (profile.touch(line, ft) for line in (SIDE, CORNER))
        working.step(
            say(
                "Touch voltage {ft} ft from the wall: {side} V out from a side, {corner} V out from a corner.",
                ft=shown_number(ft),
                side=volt_figure(rise * side),
                corner=volt_figure(rise * corner),
            )
        )


def record_steps(profile: Profile, rise: float, working: Working) -> None:
    """Record the largest steps and where the feet stand."""
    for words, found in (
        (say("Largest step inside the deck"), profile.inside),
        (say("Largest step across its edge"), profile.across),
    ):
        working.step(
            say(
                "{what}: {volt} V, feet {near} and {far} ft from the wall, {line}.",
                what=words,
                volt=volt_figure(rise * found.part),
                near=shown_number(round(found.near, 2)),
                far=shown_number(round(found.far, 2)),
                line=LINE_WORDS[found.line],
            )
        )


def compared(arrangement: str, profile: Profile, rise: float) -> Mapping[str, object]:
    """Give what is worst on one arrangement, volt."""
    return {
        "arrangement": arrangement,
        "touch_volt": rise * profile.worst[0],
        "step_inside_volt": rise * profile.inside.part,
        "step_across_volt": rise * profile.across.part,
    }


def compared_table(metals: Mapping[str, Metal], profiles: Mapping[str, Profile], rise: float, width: float) -> Table:
    """Give every arrangement at the same rise, a row each."""

    def volt(part: float) -> Sentence:
        return say("{volt} V", volt=volt_figure(rise * part))

    headings = {
        "metal": say("Bonded metal"),
        "touch": say("Highest touch within {width} ft, corners too", width=shown_number(width)),
        "inside": say("Largest step inside"),
        "across": say("Largest step across the edge"),
    }
    rows = tuple(
        Row(
            {
                "metal": metal.words,
                "touch": volt(profiles[each].worst[0]),
                "inside": volt(profiles[each].inside.part),
                "across": volt(profiles[each].across.part),
            }
        )
        for each, metal in metals.items()
    )
    return Table(headings, rows)


def touch_chart(metals: Mapping[str, Metal], profiles: Mapping[str, Profile], arrangement: str, rise: float) -> Chart:
    """Give the touch voltage over the distance from the wall, beside that with nothing in the deck."""
    shown_lines = [(arrangement, SIDE), (arrangement, CORNER)]
    if arrangement != SHELL:
        shown_lines.append((SHELL, SIDE))
    lines = tuple(
        Line(
            say("{metal}, {line}", metal=metals[each].words, line=LINE_WORDS[line]),
            tuple((away, rise * part) for away, part in profiles[each].lines[line] if away in CHARTED),
        )
        for each, line in shown_lines
    )
    return Chart(
        "deck",
        "straight",
        say("Touch voltage over the distance from the wall"),
        say("From the wall, ft"),
        say("Touch voltage, V"),
        say("{across} ft, {up} V", across="{across}", up="{up}"),
        lines,
    )
