"""What changed between two editions, from the rules themselves."""

from __future__ import annotations

from calc.messages import Message, message
from calc.rulebook import Rule, rule, rule_keys
from site_assets.build.rule_values_page import figures_of_rule
from site_assets.render.marks import mark_html
from site_assets.render.text import text

# Practice and physics do not change with an edition.
OF_THE_CODE = ("confirmed", "memory")
NOT_SEEN = "No text of the {edition} edition was seen"


def edition_changes_html(older: str, newer: str) -> str:
    """Return every rule whose figures, conditions or place differ between two editions, and how many do not differ."""
    stated = [(rule(key, older), rule(key, newer)) for key in rule_keys()]
    pairs = [pair for pair in stated if any(each.mark in OF_THE_CODE for each in pair)]
    changed = [pair for pair in pairs if _says_otherwise(*pair)]
    moved = [pair for pair in pairs if pair not in changed and pair[0].section != pair[1].section]
    reported = [pair for pair in pairs if pair not in [*changed, *moved] and _is_reported(*pair)]
    words = message(
        "Of the {all} rules in this handbook, {changed} say something different in {newer} than in {older}; {moved} "
        "only moved to another number. For the rest, no difference is known.",
        all=len(pairs),
        changed=len(changed),
        moved=len(moved),
        older=older,
        newer=newer,
    )
    return (
        f"<p>{text(words)}</p>{_unread(pairs, newer)}"
        f"{_group('changed', message('The requirement changed'), changed)}"
        f"{_group('reported', message('Reported, not seen in the book'), reported)}"
        f"{_group('moved', message('Only the number changed'), moved)}"
    )


def _says_otherwise(before: Rule, after: Rule) -> bool:
    """Tell whether figures differ, or a text that was seen carries a note of its own."""
    figures = (str(before.value), str(before.rows)) != (str(after.value), str(after.rows))
    noted = str(after.note) not in ("", str(before.note)) and after.mark != "memory"
    return figures or noted


def _is_reported(before: Rule, after: Rule) -> bool:
    """Tell whether an unread edition's note says more than that it was not read."""
    unread = NOT_SEEN.format(edition=after.edition)
    more = str(after.note).replace(f"{unread}; taken as in {before.edition}", "").replace(unread, "").strip(" .;")
    return after.mark == "memory" and bool(more) and str(after.note) != str(before.note)


def _unread(pairs: list[tuple[Rule, Rule]], newer: str) -> str:
    unread = sum(after.mark == "memory" for _, after in pairs)
    if not unread:
        return ""
    words = message(
        "{unread} rules are unverified for {newer}: we have not seen its text. Open the book before you rely on one.",
        unread=unread,
        newer=newer,
    )
    return f'<p class="warning">{text(words)}</p>'


def _group(anchor: str, words: Message, pairs: list[tuple[Rule, Rule]]) -> str:
    if not pairs:
        return ""
    return f'<h2 id="{anchor}">{text(words)}</h2>{"".join(_change(*pair) for pair in pairs)}'


def _change(before: Rule, after: Rule) -> str:
    figures_differ = figures_of_rule(before) != figures_of_rule(after)
    lines = "".join(f"<li>{_stated(each, figures=figures_differ)}</li>" for each in (before, after))
    return f'<h3 id="{after.key.replace("/", "-")}">{text(after.title)}</h3><ul>{lines}</ul>'


def _stated(each: Rule, *, figures: bool) -> str:
    place = text(message("{edition}: {section}", edition=each.edition, section=each.section))
    mark = f" {mark_html(each.mark)}" if each.mark != "confirmed" else ""
    note = f" {text(each.note)}" if str(each.note) else ""
    return f"{place}{mark}{note}{figures_of_rule(each) if figures else ''}"
