"""Adds to the registry what the product has and the registry lacks: `python -m tests.published [SLUG ...]`.

Anchors are read from the built site, so build it first. It takes nothing away and changes nothing: what is gone from
the product stays stated, and its test fails until the product has it again, under its old name too.
"""

import json
import sys

from calc import CALCULATORS, EDITIONS, permalink
from calc.batch import value_columns
from calc.calculator import Result
from calc.rulebook import aliases, rule_keys
from tests.published.anchors import new_anchors
from tests.published.registry import FOLDER, LISTS, document, names_in, opened, swept
from tests.site.pages import SITE

WIDTH = 118
MIXED = 60
NEW = """# What links to this calculator may use, for ever.

[[page]]
path = "calculators/{slug}.html"
anchors = ["safety"]

[[calculator]]
slug = "{slug}"
# Each parameter with the values or an example that links may carry; a default never changes.
parameters = []
"""
HEAD = """
# What programs and links read of its answers, for ever. The tests open every link: each is answered as it says, and
# together they show each name stated here. `python -m tests.published` adds what is new.
[calculator.answers]
"""


def main(slugs: list[str]) -> None:
    """Add what is new of these calculators, or of all, and of the rules."""
    for slug in slugs or CALCULATORS:
        add_parameters(slug)
        add_answers(slug)
    add_rules()
    if SITE.is_dir():
        add_anchors()


def add_parameters(slug: str) -> None:
    """Rewrite the parameters of a calculator with those it had, and the fields and choices that are new.

    A calculator that has no file yet gets one, with its page. A field without choices is stated with its example.
    """
    file = FOLDER / f"{slug}.toml"
    if not file.exists():
        file.write_text(NEW.format(slug=slug), encoding="utf-8")
    (row,) = document(slug)["calculator"]
    stated = {each["name"]: each for each in row["parameters"]}
    calculator, told = CALCULATORS[slug], []
    for name, field in calculator.fields.items():
        preset = calculator.defaults.get(name)
        shown = [choice.value for choice in field.choices] or [calculator.example.get(name) or preset]
        values = [str(value) for value in shown if value is not None]
        if name not in stated:
            default = {} if preset is None else {"default": str(preset)}
            stated[name] = {"name": name, "values": values} | default
            told += [f"{name}: {values}"]
        elif field.choices and (new := [value for value in values if value not in stated[name]["values"]]):
            stated[name]["values"] += new
            told += [f"{name}: {new}"]
    if told:
        before, _, rest = file.read_text(encoding="utf-8").partition("parameters = ")
        after = rest.partition("\n\n")[2]
        lines = "".join(f"    {{ {', '.join(map(pair, each.items()))} }},\n" for each in stated.values())
        file.write_text(f"{before}parameters = [\n{lines}]\n" + (f"\n{after}" if after else ""), encoding="utf-8")
        document.cache_clear()
    for words in told:
        print(f"{slug}.toml: parameters: {words}")


def pair(item: tuple[str, str | list[str]]) -> str:
    """Return a name and its text or texts as TOML."""
    return f"{item[0]} = {json.dumps(item[1], ensure_ascii=False)}"


def add_answers(slug: str) -> None:
    """Rewrite the part of a calculator's file about its answers, with every name and link it had, and those new."""
    file = FOLDER / f"{slug}.toml"
    calculator = CALCULATORS[slug]
    (row,) = document(slug)["calculator"]
    stated = row.get("answers", {name: [] for name in (*LISTS, "columns", "links")})
    results = [result for result in swept(slug, EDITIONS, MIXED) if result.outcome != "fix"]
    found = names_in(results) | {"columns": set(value_columns(calculator).values())}
    new = few(results, shows([opened(slug, query) for query in stated["links"]]))
    lists = {name: [*stated[name], *sorted(names - set(stated[name]))] for name, names in found.items()}
    lists["links"] = stated["links"] + [permalink.write(result).partition("?")[2] for result in new]
    before = file.read_text(encoding="utf-8").partition(HEAD)[0].rstrip("\n")
    body = "".join(f"{name} = {listed(values, one_a_line=name == 'links')}\n" for name, values in lists.items())
    file.write_text(f"{before}\n{HEAD}{body}", encoding="utf-8")
    tell(slug, stated, lists)


def few(results: list[Result], shown: set) -> list[Result]:
    """Return few results that show every name, every edition and every outcome which `shown` lacks."""
    shows_of = [(result, shows([result])) for result in results]
    chosen = []
    while left := set().union(*(names for _, names in shows_of)) - shown:
        result, names = max(shows_of, key=lambda pair: len(pair[1] & left))
        chosen.append(result)
        shown = shown | names
    return chosen


def shows(results: list[Result]) -> set[tuple[str, str]]:
    """Return the names that results show, each with its list, and their editions and outcomes."""
    named = {(kind, name) for kind, names in names_in(results).items() for name in names}
    return named | {("edition", each.edition) for each in results} | {("outcome", each.outcome) for each in results}


def add_rules() -> None:
    """Rewrite the list of rules, with every key it had, and those new."""
    stated = document("rules")["keys"]
    keys = [*stated, *sorted({*rule_keys(), *aliases()} - set(stated))]
    file = FOLDER / "rules.toml"
    head = file.read_text(encoding="utf-8").partition("keys = ")[0]
    file.write_text(f"{head}keys = {listed(sorted(keys))}\n", encoding="utf-8")
    tell("rules", {"keys": stated}, {"keys": keys})


def add_anchors() -> None:
    """Rewrite the anchors that were found on built pages, with every one stated there, and those new."""
    stated = {row["path"]: row["anchors"] for row in document("anchors")["page"]}
    new = new_anchors()
    file = FOLDER / "anchors.toml"
    head = file.read_text(encoding="utf-8").partition("\n[[page]]")[0]
    lists = {path: [*stated.get(path, []), *sorted(new.get(path, ()))] for path in sorted({*stated, *new})}
    written = (f'\n[[page]]\npath = "{path}"\nanchors = {listed(anchors)}\n' for path, anchors in lists.items())
    file.write_text(head + "".join(written), encoding="utf-8")
    tell("anchors", stated, lists)


def listed(values: list[str], *, one_a_line: bool = False) -> str:
    """Return texts as a list of TOML, broken into lines."""
    lines = [""]
    for value in map(json.dumps, values):
        if lines[-1] and (one_a_line or len(f"    {lines[-1]} {value},") > WIDTH):
            lines.append("")
        lines[-1] += f"{' ' if lines[-1] else ''}{value},"
    whole = lines[0].removesuffix(",")
    if len(lines) == 1 and len(whole) < WIDTH - 12:
        return f"[{whole}]"
    return "[\n" + "".join(f"    {line}\n" for line in lines) + "]"


def tell(name: str, stated: dict, lists: dict) -> None:
    """Say what was added to a file."""
    for kind, values in lists.items():
        for value in values[len(stated.get(kind, ())) :]:
            print(f"{name}.toml: {kind}: {value}")


if __name__ == "__main__":
    main(sys.argv[1:])
