"""A calculator's form as static HTML, from its declaration."""

from __future__ import annotations

import json
from html import escape

from calc.calculator import Calculator
from calc.data_file import Data
from calc.editions import EDITIONS
from calc.messages import message
from calc.unknown.safe_side import safe_side
from calc.unknown_name import TRACKER_BEGINS, TRACKERS
from site_assets.build.batch import batch_html
from site_assets.build.form_field import field_html
from site_assets.build.form_parts import asked_first
from site_assets.build.state_words import START_WORDS
from site_assets.render.answer import text

MORE_QUESTIONS = message("More questions")
ABOUT_MORE = message(
    "What you leave here counts as it stands, and the answer says where that decides. It opens when the answer needs "
    "one of these."
)
NO_SCRIPTS = message(
    "Scripts are turned off in this browser, so the form cannot calculate. The example and the steps below still apply."
)


def form_html(calculator: Calculator, runtime: Data) -> str:
    """Return the form of `calculator`, the place for its answer, the dock and the part for tables.

    runtime: tells its script where Python is.
    """
    first = asked_first(calculator)
    shown = "".join(field_html(calculator, name, first) for name in first)
    return (
        f'<form class="calculator" data-calculator="{calculator.slug}" data-editions="{" ".join(EDITIONS)}" '
        f'data-trackers="{" ".join(TRACKERS)}" data-tracker-begins="{TRACKER_BEGINS}"'
        f'{"" if safe_side(calculator.slug).heavy else " data-live"} '
        f'data-runtime="{escape(json.dumps(runtime))}" novalidate>{shown}{_more(calculator, first)}'
        f'<div class="form-actions"><button class="primary" type="submit">{text(calculator.submit)}</button>'
        f'<button class="quiet" type="reset">{text(message("Clear"))}</button></div>{_state()}</form>'
        f'<div class="result" data-result aria-live="off"></div>{_dock()}{batch_html(calculator)}'
        f'<p class="warning no-scripts">{text(NO_SCRIPTS)}</p>'
    )


def _more(calculator: Calculator, first: tuple[str, ...]) -> str:
    """Return the second part of a form: what is not asked first, folded until it is needed."""
    rest = "".join(field_html(calculator, name, first) for name in calculator.fields if name not in first)
    if not rest:
        return ""
    return (
        f'<details class="more-fields"><summary>{text(MORE_QUESTIONS)}</summary>'
        f'<p class="hint">{text(ABOUT_MORE)}</p>{rest}</details>'
    )


def _state() -> str:
    words = START_WORDS | {
        "copied": message("Link copied"),
        "copy-yourself": message("Copy this link yourself:"),
        "earlier": message("Calculated earlier in this tab. Calculating it again."),
        "linked": message("Calculating the answer for this link."),
        "ignored": message("Ignored in the link, as it only counts visits: {names}.", names="{names}"),
    }
    attributes = " ".join(f'data-{name}="{text(sentence)}"' for name, sentence in words.items())
    return f'<p class="runtime-state" role="status" {attributes}></p>'


def _dock() -> str:
    """Return the dock: what is missing while it waits, then the answer in two lines; a tap leads to either."""
    words = {
        "missing": message("{count} to fill in", count="{count}"),
        "wrong": message("{count} to fix", count="{count}"),
        "working": message("Calculating"),
        "changed": message("Entries changed"),
        "outdated": message("The answer on this page is not for these entries."),
        "press": message("Nothing is missing. Press the button for the answer."),
        "ready": message("Ready to calculate"),
    }
    attributes = " ".join(f'data-{name}="{text(sentence)}"' for name, sentence in words.items())
    return (
        f'<div class="dock" data-dock data-state="waiting" {attributes} hidden>'
        '<button type="button" class="dock-face"><b class="dock-head"></b><span class="dock-line"></span></button>'
        f'<progress max="1" value="0" aria-label="{text(message("The calculator is starting"))}" hidden></progress>'
        '</div><p class="dock-told" data-dock-told role="status"></p>'
    )
