"""The tree: fixed top level, no addresses of registries or machines, no sentence or figure in scripts."""

import re
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
TOP = {"README.md", "DEVELOPERS.md", "LICENSE", "mkdocs.yml", "pyproject.toml", "docs", "calc", "tests", "site_assets"}
OUTSIDE = re.compile(
    r"py"
    r"pi\.org|python"
    r"hosted|npm"
    r"js\.|jsdeliv"
    r"r|unp"
    r"kg|google"
    r"apis|/ro"
    r"ot/|/ho"
    r"me/|debian\."
    r"org"
)


def tracked() -> list[Path]:
    listed = subprocess.run(
        ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
        cwd=ROOT,
        capture_output=True,
        check=True,
    ).stdout.decode()
    return [ROOT / path for path in listed.split("\0") if path and (ROOT / path).is_file()]


def test_the_top_level_holds_only_what_is_agreed():
    names = {path.relative_to(ROOT).parts[0] for path in tracked()}
    assert {each for each in names if not each.startswith(".")} == TOP


def test_no_file_names_a_registry_or_a_machine_path():
    found = [
        f"{path.relative_to(ROOT)}: {line.strip()[:80]}"
        for path in tracked()
        for line in path.read_text(encoding="utf-8", errors="ignore").splitlines()
        if OUTSIDE.search(line)
    ]
    assert found == []


@pytest.mark.parametrize(
    "path",
    sorted(path for folder in ("scripts", "disk") for path in (ROOT / "site_assets" / folder).glob("*.js")),
    ids=lambda path: path.name,
)
def test_no_script_of_ours_asks_any_outside_host_or_writes_code(path):
    script = path.read_text(encoding="utf-8")
    # By its name alone it is taken away from a worker.
    assert not re.search(r"https?://|\beval\b(?!\",)|new Function|document\.write", script)


@pytest.mark.parametrize("path", sorted((ROOT / "calc").rglob("*.py")), ids=lambda path: path.name)
def test_calc_files_stay_readable(path):
    lines = path.read_text(encoding="utf-8").splitlines()
    assert len(lines) <= 300
    assert max(map(len, lines), default=0) <= 120


def test_one_place_of_calc_knows_addresses_and_only_the_formats_that_carry_them_ask_it():
    """A calculator, an answer and a link know a slug and its inputs; JSON and tables carry whole addresses."""
    calc = ROOT / "calc"
    files = set(calc.rglob("*.py")) - set((calc / "editing").glob("*.py"))  # that writes pages for contributors
    texts = {path.relative_to(calc).as_posix(): path.read_text(encoding="utf-8") for path in files}
    assert {name for name, text in texts.items() if ".html" in text or "calculators/" in text} == {"address.py"}
    asking = re.compile(r"^\s*(?:from|import) calc\.address|^from calc import .*address", re.M)
    assert {name for name, text in texts.items() if asking.search(text)} == {"json_output.py", "batch.py"}


def test_calc_knows_nothing_of_the_site_but_where_it_adds_an_edition():
    for path in set((ROOT / "calc").rglob("*.py")) - set((ROOT / "calc" / "editing").glob("*.py")):
        assert not re.search(r"site_assets|mkdocs|jinja|</\w+>", path.read_text(encoding="utf-8"))


def test_only_the_hooks_know_the_generator_and_its_templates_know_nothing_of_us():
    importing = [
        path.name
        for path in (ROOT / "site_assets").rglob("*.py")
        if re.search(r"^\s*(?:import|from) (?:mkdocs|material)\b", path.read_text(encoding="utf-8"), re.MULTILINE)
    ]
    assert importing == ["hooks.py"]
    for path in (ROOT / "site_assets" / "templates").rglob("*.html"):
        assert not re.search(r"\bmessage\b|\bkit\b|edition|caution", path.read_text(encoding="utf-8")), path.name


def test_the_themes_own_names_stand_in_one_file_for_styles_and_one_for_all_else():
    names = re.compile(r"\bm" r"d-[a-z]|__(?:sea" r"rch|pal" r"ette|dra" r"wer)")
    naming = {
        path.name
        for path in tracked()
        if path.suffix in (".css", ".js", ".mjs", ".html", ".py") and names.search(path.read_text(encoding="utf-8"))
    }
    assert naming == {"theme.css", "theme.py"}
