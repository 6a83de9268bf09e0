"""What nobody knew or entered, as HTML: an answer that depends, the defaults that decide, what the edition decides."""

from __future__ import annotations

from calc.declare import Result
from calc.unknown.assumed import assumed_words
from calc.unknown.outcomes import Alternative
from calc.words import say
from site_assets.render.text import text


def depends_html(result: Result, below: str) -> str:
    """Give an answer that depends: the safe one first, the question that settles most, then each with its condition.

    below: the HTML of what every answer has under it.
    """
    depends = result.depends
    kind = "size words" if depends.safe else "size words none"
    safe = (
        f'<p class="safe-name">{text(say("On the safe side in every case:"))}</p>' if depends.safe else ""
    ) + f'<p class="answer-size"><span class="{kind}">{text(depends.safe_words)}</span></p>'
    rows = "".join(_alternative(each) for each in depends.alternatives)
    more = f'<p>{text(say("{count} more answers are possible.", count=depends.more))}</p>' if depends.more else ""
    edition = text(say("{edition} edition", edition=result.edition))
    return (
        '<section class="answer depends" data-outcome="depends" tabindex="-1">'
        f'<h2 class="answer-name">{text(say("{name}: it depends", name=result.calculator.name))}</h2>{safe}'
        f'<p class="answer-basis">{edition}</p>{edition_html(result)}{_question(result)}'
        f'<p>{text(say("What decides, and the answer then:"))}</p><ul class="alternatives">{rows}</ul>{more}{below}</section>'
    )


def _question(result: Result) -> str:
    ask = result.depends.ask
    link = f'<a href="#field-{text(ask.field)}">{text(ask.label)}</a>'
    return f'<p class="one-question"><b>{text(say("One question settles most:"))}</b> {link}. {text(ask.why)}</p>'


def _alternative(each: Alternative) -> str:
    return f'<li><b>{text(say("{condition}.", condition=each.when))}</b> {text(each.words)}</li>'


def edition_html(result: Result) -> str:
    """Give that the answer is the same in all editions, where none was chosen and it is so."""
    check = result.edition_check
    return f'<p class="answer-editions">{text(check.words)}</p>' if check and check.same else ""


def assumed_html(result: Result) -> str:
    """Give the inputs that nobody entered and that decide the answer."""
    words = assumed_words(result)
    if not words:
        return ""
    rows = "".join(f"<li>{text(each)}</li>" for each in words)
    return f'<div class="assumed"><p>{text(say("Assumed, because not entered:"))}</p><ul>{rows}</ul></div>'
