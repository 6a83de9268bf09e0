"""The runtime bundle: whole, small, the same wherever it is made, and running."""

import gzip
import hashlib
import importlib.util
import json
import tomllib
import zipfile

import brotli
import pytest

from calc import CALCULATORS, EDITIONS, rulebook
from calc.json_output import result_to_dict
from site_assets.build import runtime
from site_assets.runtime import standard_library
from site_assets.setup.paths import CACHE

# Bytes, the list of the files and Pyodide among them.
FIRST_CALCULATOR = 3_200_000  # as a host sends it that compresses with brotli 11
FIRST_ON_A_PLAIN_HOST = 5_500_000  # as one sends it that compresses nothing
ALL = 4_000_000  # brotli 11


@pytest.fixture(scope="module")
def cache(tmp_path_factory):
    return tmp_path_factory.mktemp("cache")


@pytest.fixture(scope="module")
def bundle(cache, tmp_path_factory):
    """The folder of a bundle as it stands in a site, and what build_runtime told."""
    folder = tmp_path_factory.mktemp("bundle")
    return folder, runtime.build_runtime(folder, cache)


@pytest.fixture(scope="module")
def made(bundle, cache):
    """The folder that a bundle is copied from: Pyodide and the archives, side by side."""
    (folder,) = cache.glob("runtime-*")
    return folder


def names_in(made, *archives):
    return [name for archive in archives for name in zipfile.ZipFile(made / archive).namelist()]


def sent_size(path, digest):
    """The size on the wire; remembered by content, as compressing takes most of a minute."""
    remembered = CACHE / "brotli" / hashlib.sha256(digest.encode()).hexdigest()
    if not remembered.exists():
        remembered.parent.mkdir(parents=True, exist_ok=True)
        remembered.write_text(str(len(brotli.compress(path.read_bytes()))))
    return int(remembered.read_text())


def test_bundle_holds_what_it_says_with_a_twin_where_one_is_shorter(bundle):
    folder, told = bundle
    files = told["files"].values()
    twins = {f"{file['path']}.gz" for file in files if file["packed"]}
    assert {path.relative_to(folder).as_posix() for path in folder.rglob("*.*")} == {
        *(file["path"] for file in files),
        *twins,
    }
    for file in files:
        whole = folder / file["path"]
        assert runtime.described(whole) == {"size": file["size"], "integrity": file["integrity"]}
        if file["packed"]:
            assert gzip.decompress((folder / f"{file['path']}.gz").read_bytes()) == whole.read_bytes()
    assert {name for name, file in told["files"].items() if not file["packed"]} == {"pyodide.mjs", "pyodide.asm.js"}


def test_two_bundles_made_apart_are_equal_to_the_byte(bundle, tmp_path):
    folder, told = bundle
    again = runtime.build_runtime(tmp_path / "elsewhere" / "deeper", tmp_path / "cache")
    assert again == told
    for path in folder.rglob("*.*"):
        assert path.read_bytes() == (tmp_path / "elsewhere/deeper" / path.relative_to(folder)).read_bytes()


def test_second_build_compiles_nothing(bundle, cache, tmp_path, monkeypatch):
    monkeypatch.setattr(runtime, "make", None)
    assert runtime.build_runtime(tmp_path, cache) == bundle[1]


@pytest.mark.parametrize(
    ("name", "archive"),
    [
        ("calc/rules/raceways/elbow_cover_other.toml", "rules.zip"),
        ("calc/rules/sources.toml", "rules.zip"),
        ("calc/jumpers/main_bonding_jumper.pyc", "calculators.zip"),
        ("site_assets/render/answer.pyc", "calculators.zip"),
        ("calc/units.txt", "calculators.zip"),
        ("calc/touch/deck/deck_voltage.pyc", "later.zip"),
        ("json/decoder.pyc", "library.zip"),
        ("pint/registry.pyc", "later.zip"),
    ],
)
def test_a_changed_figure_or_sentence_changes_one_archive(made, name, archive):
    files = {}
    for each in standard_library.EVERY_ARCHIVE:
        with zipfile.ZipFile(made / each) as whole:
            files |= {path: whole.read(path) for path in whole.namelist() if path != "site_assets/render/later.txt"}
    before, after = runtime.parted(files), runtime.parted(files | {name: files[name] + b"changed"})
    assert [each for each in before if before[each] != after[each]] == [archive]


@pytest.mark.parametrize("name", standard_library.EVERY_ARCHIVE)
def test_an_archive_is_stored_without_sources_or_machine_paths(made, name):
    with zipfile.ZipFile(made / name) as archive:
        assert archive.comment == b""  # the page looks for its end where it is without one
        for entry in archive.infolist():
            assert entry.compress_type == zipfile.ZIP_STORED
            assert not entry.filename.endswith(".py")
            data = archive.read(entry)
            assert str(runtime.ROOT).encode() not in data, entry.filename
            if entry.filename.endswith(".pyc"):
                assert data[:4] == importlib.util.MAGIC_NUMBER, entry.filename


def test_no_file_stands_in_two_archives(made):
    names = names_in(made, *standard_library.EVERY_ARCHIVE)
    assert len(names) == len(set(names))


def test_bundle_carries_every_calculator_and_every_rule_that_one_reads(made, monkeypatch):
    names = set(names_in(made, *standard_library.EVERY_ARCHIVE))
    for place in ("calc", "site_assets/render"):
        wanted = [path for path in (runtime.ROOT / place).rglob("*") if path.suffix in (".py", ".txt")]
        assert wanted
        for path in wanted:
            name = path.relative_to(runtime.ROOT).as_posix()
            if name.startswith(tuple(runtime.contents()["not_run"])):
                assert f"{name}c" not in names
                continue
            assert (f"{name}c" if path.suffix == ".py" else name) in names
    read = {f"calc/rules/{rulebook.file_of(key)}.toml" for key in rules_read(monkeypatch)}
    assert read <= set(names_in(made, "rules.zip"))


def rules_read(monkeypatch):
    """Every rule that is read while all worked cases are computed in all editions."""
    read = set()
    document = rulebook._document.__wrapped__
    monkeypatch.setattr(rulebook, "_document", lambda key: (read.add(key), document(key))[1])
    rulebook.forget()
    for slug, calculator in CALCULATORS.items():
        for edition in EDITIONS:
            for inputs in (dict(calculator.example), *worked_inputs(slug)):
                result_to_dict(calculator(**{**inputs, "edition": edition}))
    rulebook.forget()
    return read


def worked_inputs(slug):
    """The inputs of a calculator's worked cases."""
    (file,) = (runtime.ROOT / "tests" / "cases").rglob(f"{slug.replace('-', '_')}.toml")
    return [case["inputs"] for case in tomllib.loads(file.read_text(encoding="utf-8"))["case"]]


def test_a_rule_that_only_pages_cite_stays_out(made):
    names = names_in(made, "rules.zip")
    assert "calc/rules/places/clean_surfaces.toml" not in names


def test_docstrings_go_and_every_line_stays_where_it_was():
    source = b'"""What it is."""\n\ndef one():\n    """Give one.\n\n    At length.\n    """\n    return 1\n'
    assert runtime.without_docstrings(source) == b'""\n\ndef one():\n    ""\n\n\n\n    return 1\n'


def test_a_docstring_on_the_line_of_its_class_stays_and_a_form_feed_ends_no_line():
    source = b'class One(Exception): """One."""\n\x0c\ndef two():\n    """Give two."""\n    return 2\n'
    assert runtime.without_docstrings(source) == source.replace(b'"""Give two."""', b'""')


def test_bundle_carries_the_licence_of_every_package_in_it(made):
    names = names_in(made, *standard_library.EVERY_ARCHIVE)
    for package in runtime.contents()["distributions"]:
        assert any(name.startswith(f"licences/{package}/LICENSE") for name in names), package


RECORD = "python -m site_assets.runtime.standard_library records anew what is reached"


def test_everything_a_page_can_reach_imports_in_the_bundle(made):
    reached = standard_library.reach(made, runtime.contents()["extras"])
    assert {"calc.registry", "site_assets.render.page_response", "pint"} <= set(reached["imported"])
    assert reached["missing"] == {}, RECORD


def test_reach_tells_of_a_module_that_the_bundle_lacks(made):
    reached = standard_library.reach(made, ["tkinter"])
    assert set(reached["missing"]) == {"tkinter"}


def test_the_first_calculators_answer_from_what_comes_first_and_need_all_of_it(made):
    needed = standard_library.first(made, runtime.FIRST)
    assert needed == runtime.FIRST_MODULES.read_text(encoding="utf-8").split(), RECORD


ASKED_EARLY = """
from site_assets.render import later
later.expect_modules()
from site_assets.render.page_response import answer_request
told = []
for attempt in range(2):
    try:
        answer_request("deck-voltage", "")
    except Exception:
        told.append("an error that code may expect")
    except later.NotHereYet as missing:
        told.append(str(missing))
",".join(told)
"""


def test_who_asks_for_more_than_has_come_is_told_so_in_a_way_that_no_code_passes_over(made):
    early, again = standard_library.run(ASKED_EARLY, made, runtime.FIRST)["value"].split(",")
    assert early == again and early in names_of_modules(made, "later.zip")


def names_of_modules(made, archive):
    return {runtime.module_name(name) for name in names_in(made, archive)}


def test_bundle_fits_the_wire_budgets(bundle):
    folder, told = bundle
    files = told["files"]
    first = [name for name in files if name not in told["later"]]
    sent = {name: sent_size(folder / file["path"], file["integrity"]) for name, file in files.items()}
    plain = {
        name: (folder / f"{file['path']}{'.gz' if file['packed'] else ''}").stat().st_size
        for name, file in files.items()
    }
    the_list = len(json.dumps(told).encode())  # as it is, uncompressed; the pages come to it
    print(f"brotli: {sent}; without compression: {plain}; list: {the_list}")
    assert the_list + sum(sent[name] for name in first) <= FIRST_CALCULATOR, sent
    assert the_list + sum(plain[name] for name in first) <= FIRST_ON_A_PLAIN_HOST, plain
    assert sum(sent.values()) <= ALL, sent
