"""One field of a form as HTML: its label, its control, “don't know”, and the place for what is wrong."""

from __future__ import annotations

import json
import re
from html import escape

from calc.calculator import Calculator, Choice, Field
from calc.messages import message
from calc.unknown.safe_side import offers_unknown
from calc.unknown.states import WORD
from site_assets.build.form_parts import begins_unchosen, is_needed
from site_assets.render.answer import text

FEW_CHOICES = 3
# Characters of a choice and of one of its words: with more, three do not stand side by side on a phone.
LONG_CHOICE, LONG_WORD = 24, 10
DO_NOT_KNOW = message("Don’t know")


def field_html(calculator: Calculator, name: str, first: tuple[str, ...]) -> str:
    """Return a field of a calculator's form. `first`: the fields of its first part."""
    field = calculator.fields[name]
    described = f'aria-describedby="{f"hint-{name} " if str(field.hint) else ""}error-{name}"'
    hint = f'<p class="hint" id="hint-{name}">{text(field.hint)}</p>' if str(field.hint) else ""
    error = f'<p class="field-error" id="error-{name}" hidden></p>'
    attributes = f'class="field" data-field="{name}"{_attributes(calculator, name, first)}'
    if field.several or (field.choices and len(field.choices) <= FEW_CHOICES):
        return (
            f"<fieldset {attributes} {described}><legend>{text(field.label)}</legend>{hint}"
            f'<div class="{_choices_class(field)}">{_options(calculator, name, first)}</div>{error}</fieldset>'
        )
    control = (_select if field.choices else _box)(calculator, name, described, first)
    return f'<div {attributes}><label for="field-{name}">{text(field.label)}</label>{hint}{control}{error}</div>'


def _attributes(calculator: Calculator, name: str, first: tuple[str, ...]) -> str:
    """Return what the scripts must know of a field: names it had, its default in links, when it counts, if needed."""
    field, default = calculator.fields[name], calculator.defaults.get(name)
    needed = is_needed(calculator, name, first)
    known = {
        "formerly": " ".join(field.formerly),
        "default": "" if default is None else str(default),
        "counts-with": json.dumps(dict(field.relevant_when)) if field.relevant_when else "",
        "unsettled": WORD if begins_unchosen(calculator, name, first) and not needed else "",
    }
    found = "".join(f' data-{key}="{escape(value)}"' for key, value in known.items() if value)
    return f"{found} data-needed" if needed else found


def _at_first(calculator: Calculator, name: str, first: tuple[str, ...]) -> str:
    """Return what a field holds before anyone touches it."""
    default = calculator.defaults.get(name)
    return "" if default is None or begins_unchosen(calculator, name, first) else str(default)


def _options(calculator: Calculator, name: str, first: tuple[str, ...]) -> str:
    field, chosen = calculator.fields[name], _at_first(calculator, name, first).split(",")
    kind = "checkbox" if field.several else "radio"
    options = "".join(
        f'<label class="choice"><input type="{kind}" name="{name}" value="{choice.value}"{_formerly(choice)}'
        f"{' checked' if choice.value in chosen else ''}{f' id=field-{name}' if number == 0 else ''}>"
        f"<span>{text(choice.label)}</span></label>"
        for number, choice in enumerate(field.choices)
    )
    if not offers_unknown(calculator.slug, name, field):
        return options
    return (
        f'{options}<label class="choice unknown"><input type="radio" name="{name}" value="{WORD}">'
        f"<span>{text(DO_NOT_KNOW)}</span></label>"
    )


def _select(calculator: Calculator, name: str, described: str, first: tuple[str, ...]) -> str:
    field, chosen = calculator.fields[name], _at_first(calculator, name, first)
    options = "" if chosen else f'<option value="" selected>{text(message("Choose"))}</option>'
    options += "".join(
        f'<option value="{choice.value}"{_formerly(choice)}{" selected" if choice.value == chosen else ""}>'
        f"{text(choice.label)}</option>"
        for choice in field.choices
    )
    if offers_unknown(calculator.slug, name, field):
        options += f'<option value="{WORD}">{text(DO_NOT_KNOW)}</option>'
    return f'<select id="field-{name}" name="{name}" {described}>{options}</select>'


def _box(calculator: Calculator, name: str, described: str, first: tuple[str, ...]) -> str:
    """Return the box for a number, a size or a text."""
    field, value = calculator.fields[name], escape(_at_first(calculator, name, first))
    if field.whole_numbers:
        low, high = field.whole_numbers
        return _beside(
            '<div class="stepper">'
            f'<button type="button" data-step="-1" aria-label="{text(message("One less"))}">−</button>'
            f'<input id="field-{name}" name="{name}" inputmode="numeric" autocomplete="off" value="{value}" '
            f'placeholder="?" data-low="{low}" data-high="{high}" {described}>'
            f'<button type="button" data-step="1" aria-label="{text(message("One more"))}">+</button></div>',
            calculator,
            name,
        )
    listed = "".join(f'<option value="{escape(each)}"></option>' for each in field.suggestions)
    keys = ' inputmode="decimal"' if field.number else ""
    box = (
        f'<input id="field-{name}" name="{name}" type="text"{keys} list="list-{name}" autocomplete="off" '
        f'autocapitalize="off" spellcheck="false" value="{value}" {described}>'
    )
    return f'{_beside(box, calculator, name)}<datalist id="list-{name}">{listed}</datalist>{_slider(name, field)}'


def _beside(control: str, calculator: Calculator, name: str) -> str:
    """Return a control with “don't know” beside it, which writes into it; as it is where that is not offered."""
    field = calculator.fields[name]
    if not offers_unknown(calculator.slug, name, field):
        return control
    words = text(DO_NOT_KNOW)
    label = text(message("{words}: {label}", words=DO_NOT_KNOW, label=field.label))
    return (
        f'<div class="may-be-unknown">{control}<button type="button" class="quiet" data-leaves-open="{name}" '
        f'data-value="{WORD}" aria-label="{label}">{words}</button></div>'
    )


def _formerly(choice: Choice) -> str:
    """Return the names that a choice had in earlier links, so that such a link fills the form too."""
    return f' data-formerly="{escape(" ".join(choice.formerly))}"' if choice.formerly else ""


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
    words = re.split(r"[\s-]", " ".join(labels))
    long = max(map(len, labels)) > LONG_CHOICE or (len(labels) > 2 and max(map(len, words)) > LONG_WORD)
    return "choices long" if long else "choices segments"
