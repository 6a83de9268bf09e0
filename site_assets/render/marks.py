"""How a figure was checked, as a small ring. Whoever hears or copies a page gets its words; one sentence tells all."""

from __future__ import annotations

from collections.abc import Iterable

from calc.messages import Message, message
from calc.trace import MARK_WORDS
from site_assets.render.text import text

NOT_VERIFIED = message("not verified: read the book before you rely on it")


def mark_html(mark: str) -> str:
    """Return the ring of a mark, its words for whoever does not see it."""
    return f'<span class="mark" data-mark="{mark}"><span class="unseen">{text(MARK_WORDS[mark])}</span></span>'


def ring_html(mark: str) -> str:
    """Return the ring of a mark, where its words stand beside it."""
    return f'<span class="mark" data-mark="{mark}"></span>'


def mark_with_words_html(mark: str) -> str:
    """Return the ring of a mark and its words, where no sentence of the page tells what the ring is."""
    return f'<span class="marked">{ring_html(mark)} {text(MARK_WORDS[mark])}</span>'


def with_rings(html: str) -> str:
    """Return words in which a mark in brackets, "250.52(A)(1) (unverified: read the book)", is its ring."""
    for mark, words in MARK_WORDS.items():
        html = html.replace(f" ({text(words)})", f"\u00a0{mark_html(mark)}")
    return html


def key_html(marks: Iterable[str]) -> str:
    """Return the one sentence that tells what the rings above it mean, "" where there are none."""
    used = set(marks)
    told = "; ".join(f"{ring_html(mark)} {text(_told(mark))}" for mark in MARK_WORDS if mark in used)
    return f'<p class="marks-key">{told}.</p>' if told else ""


def _told(mark: str) -> Message:
    return NOT_VERIFIED if mark == "memory" else MARK_WORDS[mark]
