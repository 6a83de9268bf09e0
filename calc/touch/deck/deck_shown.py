"""How the profile of a pool deck is shown: as steps, as a comparison and as a chart."""

from __future__ import annotations

from collections.abc import Mapping

from calc.answer import Chart, Line, Row, Table
from calc.messages import Message, message
from calc.rounded import about
from calc.touch.deck.deck import LIMITS, Metal
from calc.touch.deck.deck_fields import SHELL
from calc.touch.deck.deck_profile import CORNER, SIDE, Profile
from calc.trace import Trace, shown_number

LOOKED_AT = (0.5, 1.5, 3.0, 6.0)
LINE_WORDS = {SIDE: message("out from the middle of a long side"), CORNER: message("out from a corner")}
CHARTED = {step / 2 for step in range(13)}  # ft


MIN_VOLT = 0.0005


def volt_figure(volt: float) -> str | Message:
    """Return a voltage in two digits, since it may be off by a hundredth of the rise; never as nothing.

    >>> volt_figure(53.728), str(volt_figure(0.0003))
    ('54', 'less than 0.0005')
    """
    return about(volt) if volt >= MIN_VOLT else message("less than {least}", least=shown_number(MIN_VOLT))


def record_touch(metal: Metal, profile: Profile, rise: float, trace: Trace) -> None:
    """Record how the metal was solved, and the touch voltage at four distances from the wall."""
    trace.step(
        message(
            "{metal}. A quarter of it is cut into {count} pieces, each with the current that puts all of them at one "
            "voltage.",
            metal=metal.words,
            count=len(metal.bundles),
        ),
        cites=(LIMITS,),
    )
    for ft in LOOKED_AT:
        side, corner = (profile.touch(line, ft) for line in (SIDE, CORNER))
        trace.step(
            message(
                "Touch voltage {ft} ft from the wall: {side} V out from a side, {corner} V out from a corner.",
                ft=shown_number(ft),
                side=volt_figure(rise * side),
                corner=volt_figure(rise * corner),
            )
        )


def record_steps(profile: Profile, rise: float, trace: Trace) -> None:
    """Record the largest steps and where the feet stand."""
    for words, found in (
        (message("Largest step inside the deck"), profile.inside),
        (message("Largest step across its edge"), profile.across),
    ):
        trace.step(
            message(
                "{what}: {volt} V, feet {near} and {far} ft from the wall, {line}.",
                what=words,
                volt=volt_figure(rise * found.part),
                near=shown_number(round(found.near, 2)),
                far=shown_number(round(found.far, 2)),
                line=LINE_WORDS[found.line],
            )
        )


def compared(arrangement: str, profile: Profile, rise: float) -> Mapping[str, object]:
    """Return what is worst on one arrangement, volt."""
    return {
        "arrangement": arrangement,
        "touch_volt": rise * profile.worst[0],
        "step_inside_volt": rise * profile.inside.part,
        "step_across_volt": rise * profile.across.part,
    }


def compared_table(metals: Mapping[str, Metal], profiles: Mapping[str, Profile], rise: float, width: float) -> Table:
    """Return every arrangement at the same rise, a row each, also of those whose profile is still worked out."""

    def cells(profile: Profile | None) -> Mapping[str, Message]:
        if profile is None:
            return dict.fromkeys(("touch", "inside", "across"), message("not calculated yet"))
        parts = {"touch": profile.worst[0], "inside": profile.inside.part, "across": profile.across.part}
        return {key: message("{volt} V", volt=volt_figure(rise * part)) for key, part in parts.items()}

    headings = {
        "metal": message("Bonded metal"),
        "touch": message("Highest touch within {width} ft, corners too", width=shown_number(width)),
        "inside": message("Largest step inside"),
        "across": message("Largest step across the edge"),
    }
    rows = tuple(Row({"metal": metal.words, **cells(profiles.get(each))}) for each, metal in metals.items())
    return Table(headings, rows)


def touch_chart(metals: Mapping[str, Metal], profiles: Mapping[str, Profile], arrangement: str, rise: float) -> Chart:
    """Return the touch voltage over the distance from the wall, beside that with nothing in the deck."""
    shown_lines = [(arrangement, SIDE), (arrangement, CORNER)]
    if arrangement != SHELL:
        shown_lines.append((SHELL, SIDE))
    lines = tuple(
        Line(
            message("{metal}, {line}", metal=metals[each].words, line=LINE_WORDS[line]),
            tuple((away, rise * part) for away, part in profiles[each].lines[line] if away in CHARTED),
        )
        for each, line in shown_lines
    )
    return Chart(
        "deck",
        "straight",
        message("Touch voltage over the distance from the wall"),
        message("From the wall, ft"),
        message("Touch voltage, V"),
        message("{across} ft, {up} V", across="{across}", up="{up}"),
        lines,
    )
