"""Whatever ships is named with its licence, for people on a page, for programs as a bill of materials."""

from __future__ import annotations

import json
import re
import zipfile
from fnmatch import fnmatchcase
from importlib.metadata import metadata

import jsonschema
import pytest
from packaging.licenses import canonicalize_license_expression

from site_assets.build import notices
from site_assets.build.bill_of_materials import FILE, bill_of_materials
from site_assets.build.notices import FOLDER, Component, bundled_by, components, source_maps
from site_assets.build.runtime import contents, kept_modules
from site_assets.setup.paths import PINS
from tests.site.pages import SITE, Page

# What CycloneDX 1.6 asks of the parts that the bill has, in words of our own.
NAME = {"type": "string", "minLength": 1}
COMPONENT = {
    "type": "object",
    "required": ["type", "name"],
    "additionalProperties": False,
    "properties": {
        "type": {"enum": ["application", "framework", "library", "file", "platform"]},
        "bom-ref": NAME,
        "name": NAME,
        "version": {"type": "string", "maxLength": 1024, "minLength": 1},
        "description": NAME,
        "purl": {"type": "string", "pattern": r"^pkg:(pypi|npm)/[a-z0-9.%-]+@[^@\s]+$"},
        "hashes": {
            "type": "array",
            "items": {
                "type": "object",
                "required": ["alg", "content"],
                "properties": {"alg": {"const": "SHA-512"}, "content": {"pattern": "^[0-9a-f]{128}$"}},
            },
        },
        "licenses": {
            "type": "array",
            "minItems": 1,
            "maxItems": 1,
            "items": {
                "oneOf": [
                    {
                        "type": "object",
                        "required": ["license"],
                        "additionalProperties": False,
                        "properties": {"license": {"type": "object", "required": ["id"]}},
                    },
                    {
                        "type": "object",
                        "required": ["expression"],
                        "additionalProperties": False,
                        "properties": {"expression": NAME},
                    },
                ]
            },
        },
    },
}
BILL = {
    "type": "object",
    "required": ["bomFormat", "specVersion", "serialNumber", "version", "metadata", "components", "dependencies"],
    "properties": {
        "bomFormat": {"const": "CycloneDX"},
        "specVersion": {"const": "1.6"},
        "serialNumber": {"pattern": "^urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$"},
        "version": {"type": "integer", "minimum": 1},
        "metadata": {
            "type": "object",
            "required": ["component", "tools"],
            "properties": {
                "component": COMPONENT,
                "tools": {"properties": {"components": {"type": "array", "items": COMPONENT}}},
            },
        },
        "components": {"type": "array", "items": COMPONENT, "minItems": 1},
    },
}


def files_of_site():
    """Return every file of the built site, by its path."""
    return [file.relative_to(SITE).as_posix() for file in SITE.rglob("*") if file.is_file()]


def test_every_file_that_ships_belongs_to_something_that_is_named():
    patterns = [pattern for each in components() for pattern in each.files]
    # Made for those who print, in the folder only where someone asked for it.
    unnamed = [
        path
        for path in files_of_site()
        if path != "handbook.pdf" and not any(fnmatchcase(path, pattern) for pattern in patterns)
    ]
    assert unnamed == []


def test_every_pattern_but_those_of_all_runtimes_fits_a_file():
    paths = files_of_site()
    for each in components():
        assert not each.files or any(fnmatchcase(path, pattern) for pattern in each.files for path in paths), each.id


def test_everything_that_python_can_import_in_the_page_belongs_to_something_that_is_named():
    named = {module for each in components() for module in each.modules}
    of_python = {module.partition(".")[0] for module in kept_modules()}
    archives = sorted(SITE.rglob("runtime/**/*.zip"))
    assert archives
    for archive in archives:
        tops = {name.partition("/")[0].removesuffix(".pyc") for name in zipfile.ZipFile(archive).namelist()}
        assert tops - named - of_python - {"licences"} == set(), archive.name


def test_what_the_theme_is_bundled_of_is_named():
    sources = [source for bundle in source_maps() for source in bundle["sources"]]
    bundled = {bundled_by(source) for source in sources} - {""}
    assert {"rxjs", "tslib"} <= bundled
    assert bundled == {each.id for each in components() if each.inside == "material"} - {"material-icons"}


def test_every_icon_of_the_theme_is_of_a_set_that_is_named():
    settings = (PINS.parents[1] / "mkdocs.yml").read_text(encoding="utf-8")
    used = set(re.findall(r"(?:icon|logo|edit|view|repo): (\w+)/", settings))
    assert used == {"material"}


def test_every_package_in_the_bundle_is_named_under_the_licence_that_it_states():
    named = {each.source.removeprefix("distribution:"): each for each in components()}
    for package in contents()["distributions"]:
        told = metadata(package)
        stated = told.get("License-Expression") or told.get("License")
        # One says "BSD" and means, by its text, the license of three clauses.
        assert named[package].license in (stated, {"BSD": "BSD-3-Clause"}.get(stated))


@pytest.mark.parametrize("part", components(), ids=lambda part: part.id)
def test_a_licence_is_one_that_spdx_lists_and_its_text_ships(part):
    assert canonicalize_license_expression(part.license) == part.license
    text = (SITE / FOLDER / f"{part.id}.txt").read_text(encoding="utf-8")
    assert text.startswith(part.name)
    signs = {
        "MIT": "Permission is hereby granted, free of charge",
        "BSD-3-Clause": "Redistribution and use in source and binary forms",
        "BSD-2-Clause": "Redistribution and use in source and binary forms",
        "MPL-2.0": "Mozilla Public License Version 2.0",
        "Apache-2.0": "TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION",
        "Python-2.0.1": "PYTHON SOFTWARE FOUNDATION LICENSE VERSION 2",
        "PSF-2.0": "PYTHON SOFTWARE FOUNDATION LICENSE VERSION 2",
        "0BSD": "Permission to use, copy, modify, and/or distribute this software",
        "Zlib": "This software is provided 'as-is'",
        "bzip2-1.0.6": "Altered source versions must be plainly marked",
        "NCSA": "Illinois",
        "OFL-1.1": "SIL OPEN FONT LICENSE Version 1.1",
        "W3C-20150513": "W3C Software and Document Notice and License",
    }
    for name in re.split(" AND | OR ", part.license):
        assert signs[name] in " ".join(text.split()), name


def test_the_page_names_everything_with_its_version_and_a_link_to_its_text():
    page = Page(SITE / "method" / "notices.html")
    links = {attributes.get("href") for tag, attributes in page.elements if tag == "a"}
    for each in components():
        assert f"../notices/{each.id}.txt" in links
        assert each.name in page.text
        assert each.version in page.text
    assert f"../notices/{FILE}" in links


def test_a_part_whose_text_is_nowhere_stops_the_build(tmp_path, monkeypatch):
    lacking = Component("lacking", "Lacking", "MIT", "", "none", ("distribution:pint/NO-SUCH-FILE",))
    monkeypatch.setattr(notices, "components", lambda: (lacking,))
    with pytest.raises(FileNotFoundError, match="NO-SUCH-FILE"):
        notices.write_notices(tmp_path)


def test_the_bill_of_materials_has_the_form_of_cyclonedx():
    bill = json.loads((SITE / FOLDER / FILE).read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator(BILL).validate(bill)
    named = [bill["metadata"]["component"], *bill["components"]]
    references = [each["bom-ref"] for each in named]
    assert len(set(references)) == len(references)
    for row in bill["dependencies"]:
        assert {row["ref"], *row["dependsOn"]} <= set(references)
    assert {each.id for each in components()} == set(references)


def test_the_bill_of_materials_names_uv_python_and_the_browsers_of_the_tests():
    tools = {each["name"]: each["version"] for each in bill_of_materials()["metadata"]["tools"]["components"]}
    assert f"uv=={tools['uv']} " in (PINS / "uv.txt").read_text()
    assert re.fullmatch(r"3\.13\.\d+", tools["CPython"])
    assert re.fullmatch(r"\d+(\.\d+){3}", tools["Chromium"])
    assert all(re.fullmatch(r"\d+(\.\d+){2}", tools[name]) for name in ("Firefox", "WebKitGTK"))


def test_equal_sources_make_an_equal_bill_and_others_another_number(monkeypatch):
    bill = bill_of_materials()
    assert bill_of_materials() == bill
    monkeypatch.setattr("site_assets.build.bill_of_materials.pinned_uv", lambda: "0.0.1")
    assert bill_of_materials()["serialNumber"] != bill["serialNumber"]
