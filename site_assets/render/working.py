"""The working of an answer, step by step, and the sections and sources it rests on."""

from __future__ import annotations

from calc.calculator import Result
from calc.json_output import citation_to_dict
from calc.messages import message
from calc.rulebook import Rule
from calc.trace import Step, shown_of_model
from site_assets.render.marks import key_html, mark_html, mark_with_words_html
from site_assets.render.text import text, unbroken


def working_html(result: Result) -> str:
    """Return the steps of an answer, each with its sections, and what their marks mean; "" without steps."""
    steps = result.trace.steps
    if not steps:
        return ""
    rows = "".join(map(_step, steps))
    key = key_html(cited.mark for step in steps for cited in step.citations)
    return f'<section class="working"><h3>{text(message("Working"))}</h3><ol class="steps">{rows}</ol>{key}</section>'


def _step(step: Step) -> str:
    numbers = step.numbers
    if not numbers and step.value is not None:
        shown = step.value if isinstance(step.value, str) else shown_of_model(step.value)
        numbers = f"{shown} {step.unit}".strip()
    formula = f'<p class="step-formula">{text(step.formula)}</p>' if step.formula else ""
    shown_numbers = f'<p class="step-numbers">{unbroken(text(numbers))}</p>' if numbers else ""
    # Two rules can stand in one section: its name and mark are shown once.
    places = dict.fromkeys((cited.section, cited.mark) for cited in step.citations)
    cites = "".join(f'<p class="step-cite">{text(section)}\u00a0{mark_html(mark)}</p>' for section, mark in places)
    words = unbroken(text(step.words))
    return f'<li class="step"><p class="step-words">{words}</p>{formula}{shown_numbers}{cites}</li>'


def citations_html(result: Result) -> str:
    """Return the sections cited, what each states and how it was checked, folded."""
    head = "".join(
        f"<th>{text(words)}</th>" for words in (
            message("Section"), message("What it states"), message("How it was checked")
        )
    )
    rows = "".join(_citation(cited) for cited in result.trace.citations)
    heading = text(message("Sections and sources, {edition} edition", edition=result.edition))
    return (
        f'<details class="citations"><summary>{heading}</summary>'
        f'<table class="facts"><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table></details>'
    )


def _citation(cited: Rule) -> str:
    seen = "; ".join(citation_to_dict(cited)["sources"])
    checked = ". ".join(filter(None, [mark_with_words_html(cited.mark), text(seen), text(cited.note)]))
    return f"<tr><td>{text(cited.section)}</td><td>{text(cited.title)}</td><td>{checked}</td></tr>"
