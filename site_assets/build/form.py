"""A calculator's form as static HTML, from its declaration."""

from __future__ import annotations

import json
import re
from html import escape

from calc.calculator import Calculator, Choice, Field
from calc.data_file import Data
from calc.editions import EDITIONS
from calc.messages import message
from calc.unknown.safe_side import offers_unknown
from calc.unknown.states import WORD
from site_assets.build.batch import batch_html
from site_assets.build.state_words import START_WORDS
from site_assets.render.answer import text

FEW_CHOICES = 3
# Characters of a choice and of one of its words: with more, two do not stand side by side on a phone.
LONG_CHOICE, LONG_WORD = 24, 8
DO_NOT_KNOW = message("Don’t know")
NO_SCRIPTS = message(
    "Scripts are turned off in this browser, so the form cannot calculate. The example and the steps below still apply."
)


def form_html(calculator: Calculator, runtime: Data) -> str:
    """Return the form of `calculator`, the place for its answer and the part for tables.

    runtime: tells its script where Python is.
    """
    fields = calculator.fields.items()
    shown = "".join(_field(calculator, name, field) for name, field in fields if not field.rare)
    rare = "".join(_field(calculator, name, field) for name, field in fields if field.rare)
    if rare:
        rare = f'<details class="more-fields"><summary>{text(message("Less common cases"))}</summary>{rare}</details>'
    return (
        f'<form class="calculator" data-calculator="{calculator.slug}" data-editions="{" ".join(EDITIONS)}" '
        f'data-runtime="{escape(json.dumps(runtime))}" novalidate>{shown}{rare}'
        f'<div class="form-actions"><button class="primary" type="submit">{text(calculator.submit)}</button>'
        f'<button class="quiet" type="reset">{text(message("Clear"))}</button></div>{_state()}</form>'
        f'<div class="result" data-result aria-live="off"></div>{batch_html(calculator)}'
        f'<p class="warning no-scripts">{text(NO_SCRIPTS)}</p>'
    )


def _field(calculator: Calculator, name: str, field: Field) -> str:
    preset = calculator.defaults.get(name)
    default = "" if preset is None else str(preset)
    words = text(field.hint)
    hint = f'<p class="hint" id="hint-{name}">{words}</p>' if words else ""
    described = f'aria-describedby="{f"hint-{name} " if words else ""}error-{name}"'
    error = f'<p class="field-error" id="error-{name}" hidden></p>'
    if field.several or (field.choices and len(field.choices) <= FEW_CHOICES):
        kind = "checkbox" if field.several else "radio"
        options = "".join(
            f'<label class="choice"><input type="{kind}" name="{name}" value="{choice.value}"{_formerly(choice)}'
            f"{' checked' if choice.value in default.split(',') else ''}"
            f"{f' id=field-{name}' if number == 0 else ''}><span>{text(choice.label)}</span></label>"
            for number, choice in enumerate(field.choices)
        )
        if offers_unknown(calculator.slug, name, field):
            options += (
                f'<label class="choice unknown"><input type="radio" name="{name}" value="{WORD}">'
                f"<span>{text(DO_NOT_KNOW)}</span></label>"
            )
        return (
            f'<fieldset class="field" data-field="{name}"{_formerly(field)} {described}>'
            f"<legend>{text(field.label)}</legend>{hint}{error}"
            f'<div class="{_choices_class(field)}">{options}</div></fieldset>'
        )
    label = f'<label for="field-{name}">{text(field.label)}</label>'
    if field.choices:
        options = "" if preset is not None else f'<option value="" selected>{text(message("Choose"))}</option>'
        options += "".join(
            f'<option value="{choice.value}"{_formerly(choice)}{" selected" if choice.value == default else ""}>'
            f"{text(choice.label)}</option>"
            for choice in field.choices
        )
        if offers_unknown(calculator.slug, name, field):
            options += f'<option value="{WORD}">{text(DO_NOT_KNOW)}</option>'
        control = f'<select id="field-{name}" name="{name}" {described}>{options}</select>'
    elif field.whole_numbers:
        low, high = field.whole_numbers
        control = (
            '<div class="stepper">'
            f'<button type="button" data-step="-1" aria-label="{text(message("One less"))}">−</button>'
            f'<input id="field-{name}" name="{name}" inputmode="numeric" autocomplete="off" value="{default}" '
            f'data-low="{low}" data-high="{high}" {described}>'
            f'<button type="button" data-step="1" aria-label="{text(message("One more"))}">+</button></div>'
        )
        control = _beside(control, calculator, name, field)
    else:
        listed = "".join(f'<option value="{escape(each)}"></option>' for each in field.suggestions)
        keys = ' inputmode="decimal"' if field.number else ""
        control = (
            f'<input id="field-{name}" name="{name}" type="text"{keys} list="list-{name}" autocomplete="off" '
            f'autocapitalize="off" spellcheck="false" value="{escape(default)}" {described}>'
        )
        control = (
            f'{_beside(control, calculator, name, field)}<datalist id="list-{name}">{listed}</datalist>'
            f"{_slider(name, field)}"
        )
    return f'<div class="field" data-field="{name}"{_formerly(field)}>{label}{hint}{error}{control}</div>'


def _beside(control: str, calculator: Calculator, name: str, field: Field) -> str:
    """Return a control with “don't know” beside it, which writes into it; as it is where that is not offered."""
    if not offers_unknown(calculator.slug, name, field):
        return control
    words = text(DO_NOT_KNOW)
    label = text(message("{words}: {label}", words=DO_NOT_KNOW, label=field.label))
    return (
        f'<div class="may-be-unknown">{control}<button type="button" class="quiet" data-leaves-open="{name}" '
        f'data-value="{WORD}" aria-label="{label}">{words}</button></div>'
    )


def _formerly(named: Field | Choice) -> str:
    """Return the names that a field or a choice had in earlier links, so that such a link fills the form too."""
    return f' data-formerly="{escape(" ".join(named.formerly))}"' if named.formerly else ""


def _slider(name: str, field: Field) -> str:
    """Return the slider of an amount; its script writes into the field, which alone is sent."""
    if field.slider is None:
        return ""
    low, high, unit = field.slider
    words = text(message("Slide: {label}", label=field.label))
    return (
        f'<input class="slider" type="range" data-slides="{name}" data-unit="{unit}" min="{low}" max="{high}" step="1" '
        f'value="{low}" aria-label="{words}">'
    )


def _choices_class(field: Field) -> str:
    if field.several:
        return "choices several"
    labels = [str(choice.label) for choice in field.choices]
    long = max(map(len, labels)) > LONG_CHOICE or max(map(len, re.split(r"[\s-]", " ".join(labels)))) > LONG_WORD
    return "choices long" if long else "choices"


def _state() -> str:
    words = START_WORDS | {
        "copied": message("Link copied"),
        "copy-yourself": message("Copy this link yourself:"),
        "earlier": message("Calculated earlier in this tab. Calculating it again."),
        "linked": message("Calculating the answer for this link."),
    }
    attributes = " ".join(f'data-{name}="{text(sentence)}"' for name, sentence in words.items())
    return f'<p class="runtime-state" role="status" {attributes}></p>'
