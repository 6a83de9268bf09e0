"""The runtime bundle: whole, small, the same wherever it is made, and running."""

import importlib.util
import tomllib
import zipfile

import brotli
import pytest

from calc import CALCULATORS, EDITIONS, rulebook
from calc.json_output import result_to_dict
from site_assets.build import runtime
from site_assets.runtime import standard_library
from site_assets.setup.paths import CACHE

WIRE_BUDGET = 4_200_000  # bytes, brotli 11


@pytest.fixture(scope="module")
def cache(tmp_path_factory):
    return tmp_path_factory.mktemp("cache")


@pytest.fixture(scope="module")
def bundle(cache, tmp_path_factory):
    """The folder of a bundle made from nothing, and what build_runtime told."""
    folder = tmp_path_factory.mktemp("bundle")
    return folder, runtime.build_runtime(folder, cache)


def sent_size(path, digest):
    """The size on the wire; remembered by content, as compressing takes most of a minute."""
    remembered = CACHE / "brotli" / digest
    if not remembered.exists():
        remembered.parent.mkdir(parents=True, exist_ok=True)
        remembered.write_text(str(len(brotli.compress(path.read_bytes()))))
    return int(remembered.read_text())


def test_bundle_holds_what_it_says(bundle):
    folder, told = bundle
    assert sorted(path.name for path in folder.iterdir()) == [file["name"] for file in told["files"]]
    assert told["files"] == [runtime.described(folder / file["name"]) for file in told["files"]]


def test_two_bundles_made_apart_are_equal_to_the_byte(bundle, tmp_path):
    folder, told = bundle
    again = runtime.build_runtime(tmp_path / "elsewhere" / "deeper", tmp_path / "cache")
    assert again == told
    for file in told["files"]:
        assert (folder / file["name"]).read_bytes() == (tmp_path / "elsewhere/deeper" / file["name"]).read_bytes()


def test_second_build_compiles_nothing(bundle, cache, tmp_path, monkeypatch):
    monkeypatch.setattr(runtime, "make", None)
    assert runtime.build_runtime(tmp_path, cache) == bundle[1]


def test_changed_calculator_makes_another_bundle(bundle, tmp_path, monkeypatch):
    with_more = {**runtime.own(), "calc/one_more.py": b"value = 1\n"}
    monkeypatch.setattr(runtime, "own", lambda: with_more)
    assert runtime.build_runtime(tmp_path / "bundle", tmp_path / "cache")["id"] != bundle[1]["id"]


def test_bundle_is_stored_without_sources_or_machine_paths(bundle):
    folder, _ = bundle
    with zipfile.ZipFile(folder / runtime.ARCHIVE) as archive:
        for entry in archive.infolist():
            assert entry.compress_type == zipfile.ZIP_STORED
            assert not entry.filename.endswith(".py")
            data = archive.read(entry)
            assert str(runtime.ROOT).encode() not in data, entry.filename
            if entry.filename.endswith(".pyc"):
                assert data[:4] == importlib.util.MAGIC_NUMBER, entry.filename


def test_bundle_carries_every_calculator_and_every_rule_that_one_reads(bundle, monkeypatch):
    folder, _ = bundle
    names = set(zipfile.ZipFile(folder / runtime.ARCHIVE).namelist())
    for place in ("calc", "site_assets/render"):
        wanted = [path for path in (runtime.ROOT / place).rglob("*") if path.suffix in (".py", ".txt")]
        assert wanted
        for path in wanted:
            name = path.relative_to(runtime.ROOT).as_posix()
            if name.startswith(tuple(runtime.contents()["not_run"])):
                assert f"{name}c" not in names
                continue
            assert (f"{name}c" if path.suffix == ".py" else name) in names
    assert {f"calc/rules/{rulebook.file_of(key)}.toml" for key in rules_read(monkeypatch)} <= names


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


def test_a_rule_that_only_pages_cite_stays_out(bundle):
    names = zipfile.ZipFile(bundle[0] / runtime.ARCHIVE).namelist()
    assert "calc/rules/places/clean_surfaces.toml" not in names


def test_docstrings_go_and_every_line_stays_where_it_was():
    source = b'"""What it is."""\n\ndef one():\n    """Give one.\n\n    At length.\n    """\n    return 1\n'
    assert runtime.without_docstrings(source) == b'""\n\ndef one():\n    ""\n\n\n\n    return 1\n'


def test_a_docstring_on_the_line_of_its_class_stays_and_a_form_feed_ends_no_line():
    source = b'class One(Exception): """One."""\n\x0c\ndef two():\n    """Give two."""\n    return 2\n'
    assert runtime.without_docstrings(source) == source.replace(b'"""Give two."""', b'""')


def test_bundle_carries_the_licence_of_every_package_in_it(bundle):
    names = zipfile.ZipFile(bundle[0] / runtime.ARCHIVE).namelist()
    for package in runtime.contents()["distributions"]:
        assert any(name.startswith(f"licences/{package}/LICENSE") for name in names), package


def test_everything_a_page_can_reach_imports_in_the_bundle(bundle):
    reached = standard_library.reach(bundle[0], runtime.contents()["extras"])
    assert {"calc.registry", "site_assets.render.page_response", "pint"} <= set(reached["imported"])
    assert reached["missing"] == {}, "python -m site_assets.runtime.standard_library records anew what is reached"


def test_reach_tells_of_a_module_that_the_bundle_lacks(bundle):
    reached = standard_library.reach(bundle[0], ["tkinter"])
    assert set(reached["missing"]) == {"tkinter"}


def test_bundle_fits_the_wire_budget(bundle):
    folder, told = bundle
    sent = {file["name"]: sent_size(folder / file["name"], file["sha256"]) for file in told["files"]}
    assert sum(sent.values()) <= WIRE_BUDGET, sent
