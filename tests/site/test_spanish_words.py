"""The Spanish of the glossary, from Spanish to English, each word with its mark."""

import re

from site_assets.build.glossary import terms
from tests.site.pages import SITE, article


def rows() -> list[str]:
    html = (SITE / "glossary-spanish.html").read_text(encoding="utf-8")
    return re.findall(r"<li>(.*?)</li>", article(html))


def test_every_spanish_word_leads_to_its_english():
    listed = rows()
    for term in terms():
        for words in filter(None, term.spanish.split("; ")):
            (row,) = [row for row in listed if row.startswith(f"{words}: ")]
            assert f'href="glossary.html#{term.anchor}"' in row or f"href=glossary.html#{term.anchor}" in row


def test_a_word_that_was_not_seen_in_print_is_marked_and_no_other():
    for term in terms():
        for row in (row for row in rows() if f'glossary.html#{term.anchor}"' in row):
            assert row.count('data-mark="memory"') >= (not term.spanish_seen)
            if len(re.findall("glossary.html#", row)) == 1:
                assert ('data-mark="memory"' in row) is not term.spanish_seen, row
