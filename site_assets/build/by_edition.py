"""Text that differs by edition: every edition stands in the page, the one in force is shown."""

from __future__ import annotations

from collections.abc import Callable

from calc.editions import EDITIONS
from calc.rulebook import rule
from calc.words import say
from site_assets.render.answer import mark_html, text


def by_edition(render: Callable[[str], str], element: str = "span") -> str:
    """Give what `render` gives for each edition; editions with the same text share one element."""
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


def section(key: str) -> str:
    """Give where each edition states the rule `key`, with a mark where that is unverified."""

    def shown(edition: str) -> str:
        stated = rule(key, edition)
        unverified = f" {mark_html(stated.mark)}" if stated.mark == "memory" else ""
        return f"{text(stated.section)}{unverified}"

    return by_edition(shown)


def _label(editions: list[str], number: int) -> str:
    # The space between two parts is inside the label, so that it goes when the label goes.
    label = (
        say(" {editions}: ", editions=", ".join(editions))
        if number
        else say("{editions}: ", editions=", ".join(editions))
    )
    return text(label)
