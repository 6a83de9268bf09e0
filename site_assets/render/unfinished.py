"""What an answer says of itself while parts of it are still worked out, as HTML; a whole answer says nothing."""

from __future__ import annotations

from calc.answer import Answer, Unfinished
from calc.messages import Message, message
from site_assets.render.text import text


def unfinished_words(unfinished: Unfinished) -> Message:
    """Return that an answer is not whole, and what of it is there."""
    return message("This answer is not finished. {so_far}", so_far=unfinished.words)


def unfinished_html(answer: Answer) -> str:
    """Return how far the answer is, with the button that stops the rest and the one that goes on after that."""
    unfinished = answer.unfinished
    if unfinished is None:
        return ""
    stopped = message("Stopped. {words}", words=unfinished_words(unfinished))
    return (
        f'<div class="unfinished" data-unfinished data-stopped="{text(stopped)}">'
        f"<p>{text(unfinished_words(unfinished))}</p>"
        f'<progress max="{unfinished.total}" value="{unfinished.done}" '
        f'aria-label="{text(message("Finished so far"))}"></progress> '
        f'<button type="button" class="quiet" data-action="stop">{text(message("Stop"))}</button>'
        f'<button type="button" class="quiet" data-action="finish" hidden>{text(message("Finish it"))}</button></div>'
    )
