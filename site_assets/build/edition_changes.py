"""What changed between two editions, from the rules themselves: a table for each rule, what was beside what is."""

from __future__ import annotations

from calc.messages import Message, message
from calc.rulebook import Rule, rule, rule_keys
from site_assets.build.figure_words import figure_lines
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
    """Return what was beside what is: where it stands, what it says, and of its figures those that differ."""
    was, now = figure_lines(before), figure_lines(after)
    rows = [[_where(before), _where(after)]]
    if was != now:
        rows.append([_lines(was, now), _lines(now, was)])
    heads = (message("{edition}, was", edition=before.edition), message("{edition}, now", edition=after.edition))
    head = "".join(f'<th scope="col">{text(words)}</th>' for words in heads)
    body = "".join(f"<tr>{''.join(f'<td>{cell}</td>' for cell in row)}</tr>" for row in rows)
    return (
        f'<section class="edition-change"><h3 id="{after.key.replace("/", "-")}">{text(after.title)}</h3>'
        f'<table class="was-now"><thead><tr>{head}</tr></thead><tbody>{body}</tbody></table>'
        f"{_note(before)}{_note(after)}</section>"
    )


def _where(each: Rule) -> str:
    mark = f" {mark_html(each.mark)}" if each.mark != "confirmed" else ""
    return f"{text(each.section)}{mark}"


def _note(each: Rule) -> str:
    said = message("{edition}: {note}", edition=each.edition, note=each.note)
    return f"<p>{text(said)}</p>" if str(each.note) else ""


def _lines(own: list[str], others: list[str]) -> str:
    """Return the lines that the other edition has not, and how many both have."""
    differ = [line for line in own if line not in others]
    same = len(own) - len(differ)
    told = "".join(f"<li>{text(line)}</li>" for line in differ)
    if same:
        told += f"<li>{text(message('and {count} more, as in the other edition', count=same))}</li>"
    return f"<ul>{told or f'<li>{text(message("nothing stated"))}</li>'}</ul>"
