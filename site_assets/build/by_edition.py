"""Text that differs by edition: every edition stands in the page, the one in force is shown."""

from __future__ import annotations

from collections.abc import Callable

from calc.editions import EDITIONS
from calc.messages import message
from calc.rulebook import rule
from calc.trace import MARK_WORDS
from site_assets.render.answer import text

SHORT_MARKS = {"memory": message("unverified"), "practice": message("common practice")}


def by_edition(render: Callable[[str], str], element: str = "span") -> str:
    """Return what `render` gives for each edition; editions with the same text share one element."""
    rendered: dict[str, list[str]] = {}
    for edition in EDITIONS:
        rendered.setdefault(render(edition), []).append(edition)
    if len(rendered) == 1:
        return next(iter(rendered))
    parts = "".join(
        f'<{element} data-edition="{" ".join(editions)}"><span class="edition-label">{_label(editions, number)}</span>'
        f"{shown}</{element}>"
        for number, (shown, editions) in enumerate(rendered.items())
    )
    return f'<{element} class="by-edition">{parts}</{element}>'


def section(*keys: str) -> str:
    """Return where each edition states the rules `keys`, each place once, with a mark where that is unverified.

    Styles know it as `cited`: on a page that a link set to an edition, the edition stands beside it.
    """

    def shown(edition: str) -> str:
        marks: dict[str, str] = {}
        for stated in (rule(key, edition) for key in keys):
            if marks.get(stated.section) != "memory":
                marks[stated.section] = stated.mark
        return "; ".join(
            f"{text(place)} {short_mark(mark)}" if mark == "memory" else text(place) for place, mark in marks.items()
        )

    return f'<span class="cited">{by_edition(shown)}</span>'


def short_mark(mark: str) -> str:
    """Return a mark for running text: one word, the rest of it where the pointer rests."""
    return (
        f'<span class="mark short" data-mark="{mark}" title="{text(MARK_WORDS[mark])}">{text(SHORT_MARKS[mark])}</span>'
    )


def _label(editions: list[str], number: int) -> str:
    # The space between two parts is inside the label, so that it goes when the label goes.
    label = (
        message(" {editions}: ", editions=", ".join(editions))
        if number
        else message("{editions}: ", editions=", ".join(editions))
    )
    return text(label)
