"""What pages get without asking: parts and places their other names, and calculators too what to see also."""

from __future__ import annotations

from calc.messages import message
from site_assets.build.by_edition import section
from site_assets.build.glossary import spanish_html, terms_of
from site_assets.build.page_data import ROOMS, linked_pages, page_data, title_of
from site_assets.render.answer import text


def framed(page: str, markdown: str) -> str:
    """Return the Markdown of a page with what its room adds: other names after the lead, links at the end."""
    room = page.partition("/")[0]
    if room in ROOMS:
        lead, heading, rest = markdown.partition("\n## ")
        markdown = f"{lead.rstrip()}\n\n{_also_called(page)}{heading}{rest}"
    return f"{markdown.rstrip()}\n\n{_see_also(page)}"


def _also_called(page: str) -> str:
    own = terms_of(page)
    called = list(dict.fromkeys([*page_data(page).also_called, *(name for each in own for name in each.also)]))
    lines = [message("Also called: {names}", names=", ".join(called))] if called else []
    rows = [f"<p class=also-called>{text(words)}</p>" for words in lines]
    if spanish := spanish_html(own):
        rows.append(f"<p class=also-called>{text(message('Spanish:'))} {spanish}</p>")
    about = page_data(page).about
    if about:
        rows.append(f"<p class=also-called>{text(message('Sections:'))} {section(*about)}</p>")
    return "".join(f"{row}\n" for row in rows)


def _see_also(page: str) -> str:
    others = linked_pages().get(page)
    if not others:
        return ""
    to_top = "../" * page.count("/")
    rows = "\n".join(f"- [{title_of(other)}]({to_top}{other}.md)" for other in others)
    return f"## {message('See also')} {{ #see-also }}\n\n<div class=\"to-press names\" markdown>\n\n{rows}\n\n</div>\n"
