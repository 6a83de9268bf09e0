"""Every arrangement of metal compared with the one chosen, one after the other: the answer grows by a row each time."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import replace

from calc.answer import Answer, Unfinished
from calc.messages import message
from calc.touch.deck.deck import Metal
from calc.touch.deck.deck_profile import Profile
from calc.touch.deck.deck_shown import compared, compared_table

Profiles = Mapping[str, Profile]


def compared_in_parts(
    answer: Answer,
    metals: Mapping[str, Metal],
    solved: Profiles,
    profile_of_metal: Callable[[Metal], Profile],
    rise: float,
    width: float,
) -> Iterator[Answer]:
    """Yield the answer with the arrangements compared that are solved by then; the last compares all.

    answer: all but the comparison. solved: the arrangements that it rests on. width: of the strip looked at, ft.
    """
    profiles = dict(solved)
    for each, metal in metals.items():
        if each in profiles:
            continue
        unfinished = Unfinished(
            message(
                "Compared so far: {done} of {total} decks. The figures for the deck you chose are complete.",
                done=len(profiles),
                total=len(metals),
            ),
            len(profiles),
            len(metals),
        )
        yield replace(_with_comparison(answer, metals, profiles, rise, width), unfinished=unfinished)
        profiles[each] = profile_of_metal(metal)
    yield _with_comparison(answer, metals, profiles, rise, width)


def _with_comparison(
    answer: Answer, metals: Mapping[str, Metal], profiles: Profiles, rise: float, width: float
) -> Answer:
    rows = [compared(each, profiles[each], rise) for each in metals if each in profiles]
    return replace(
        answer,
        values={**answer.values, "compared": rows},
        table=compared_table(metals, profiles, rise, width),
    )
