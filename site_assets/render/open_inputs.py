"""What nobody knew or entered, as HTML: an answer that depends, the defaults that decide, what the edition decides."""

from __future__ import annotations

from calc.calculator import Result
from calc.known import known
from calc.messages import message
from calc.unknown.assumed import MAX_SHOWN, Assumption
from calc.unknown.conditions import lower
from calc.unknown.outcomes import Alternative
from site_assets.render.text import text


def depends_html(result: Result, below: str) -> str:
    """Return an answer that depends: the safe one first, the question that settles most, then each with its condition.

    below: the HTML of what every answer has under it.
    """
    depends = known(result.depends)
    name = message("{name}: it depends", name=result.calculator.name)
    over = f'<p class="safe-name">{text(message("On the safe side in every case:"))}</p>' if depends.safe else ""
    more = f'<p>{text(message("{count} more answers are possible.", count=depends.more))}</p>' if depends.more else ""
    return (
        '<section class="answer depends" data-outcome="depends" tabindex="-1">'
        f"{head_html(result, text(name))}{over}"
        f'<p class="answer-size"><span class="size words">{text(depends.safe_words)}</span></p>{edition_html(result)}'
        f'{_question(result)}<p class="what-decides">{text(message("What decides, and the answer then:"))}</p>'
        f'<ul class="alternatives">{"".join(map(_alternative, depends.alternatives))}</ul>{more}{below}</section>'
    )


def _question(result: Result) -> str:
    ask = known(result.depends).ask
    button = f'<a class="button" href="#field-{text(ask.field)}">{text(ask.label)}</a>'
    return f'<p class="one-question"><b>{text(message("One question settles most:"))}</b> {button} {text(ask.why)}</p>'


def _alternative(each: Alternative) -> str:
    return f'<li><b>{text(message("{condition}.", condition=each.when))}</b> {text(each.words)}</li>'


def edition_html(result: Result) -> str:
    """Return that the answer is the same in all editions, where none was chosen and it is so."""
    check = result.edition_check
    return f'<p class="answer-editions">{text(check.words)}</p>' if check and check.same else ""


def assumed_html(result: Result) -> str:
    """Return the inputs that nobody entered and that decide the answer, each with what it would be otherwise."""
    deciding = [one for one in result.assumed if one.decides]
    if not deciding:
        return ""
    rows, more = "".join(map(_assumed, deciding[:MAX_SHOWN])), deciding[MAX_SHOWN:]
    if more:
        labels = "; ".join(str(one.label) for one in more)
        words = message("Also assumed: {labels}", labels=labels)
        others = "".join(map(_assumed, more))
        rows += f'<li class="more"><details><summary>{text(words)}</summary><ul>{others}</ul></details></li>'
    return f'<div class="assumed"><p>{text(message("Assumed, because not entered:"))}</p><ul>{rows}</ul></div>'


def _assumed(one: Assumption) -> str:
    words = message("{label}: {value}", label=one.label, value=one.shown)
    link = f'<a href="#field-{text(one.field)}">{text(words)}</a>'
    other = str(one.otherwise).rstrip(".")
    return f'<li>{link}. {text(message("If {other}: {otherwise}.", other=lower(one.other), otherwise=other))}</li>'


def head_html(result: Result, name: str) -> str:
    """Return the head of an answer's card: what it is, `name` as HTML, and the edition it is of."""
    edition = message("NEC {edition}", edition=result.edition)
    if not result.edition_chosen:
        edition = message("NEC {edition}, not picked", edition=result.edition)
    return (
        f'<header class="answer-head"><h2 class="answer-name">{name}</h2>'
        f'<p class="answer-edition">{text(edition)}</p></header>'
    )
