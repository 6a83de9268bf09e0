"""The list of the runtime's files, and the pages that it belongs to."""

import json
import re
from html import unescape

from site_assets.build.runtime_list import FILE, FOLDER, UNSET, bind_pages, runtime_of_page, write_list
from tests.site.pages import SITE, html_files


def runtime_in(html: str) -> dict:
    (told,) = re.findall(r'data-runtime="([^"]*)"', html)
    return json.loads(unescape(told))


def test_no_page_names_a_file_of_the_runtime_so_a_figure_changes_only_pages_that_show_it():
    listed = json.loads((SITE / FOLDER / FILE).read_text(encoding="utf-8"))
    folders = {file["path"].partition("/")[0] for file in listed["files"].values()}
    assert len(folders) == len(listed["files"]) - 2  # Pyodide's three stand in one
    for path in html_files():
        html = path.read_text(encoding="utf-8")
        assert not [folder for folder in folders if folder in html], path


def test_every_page_with_a_form_stands_in_the_list_with_its_version():
    listed = json.loads((SITE / FOLDER / FILE).read_text(encoding="utf-8"))["pages"]
    pages = {path.relative_to(SITE).as_posix(): path.read_text(encoding="utf-8") for path in html_files()}
    with_form = {path: runtime_in(html) for path, html in pages.items() if "data-runtime=" in html}
    assert {path: told["version"] for path, told in with_form.items()} == listed
    assert all(told["page"] == path for path, told in with_form.items())
    assert all((SITE / path).parent.joinpath(told["list"]).is_file() for path, told in with_form.items())


def test_a_page_has_another_version_when_any_word_in_it_is_another_and_the_same_when_none_is(tmp_path):
    def versions(words: str) -> dict:
        for name, text in {"one": words, "two": "the same"}.items():
            told = json.dumps(runtime_of_page(name, "")).replace('"', "&quot;")
            (tmp_path / f"{name}.html").write_text(f'<form data-runtime="{told}"></form>{text}')
        (tmp_path / FOLDER).mkdir(exist_ok=True)
        write_list(tmp_path / FOLDER, {"files": {}})
        bind_pages(tmp_path)
        assert UNSET not in (tmp_path / "one.html").read_text()
        return json.loads((tmp_path / FOLDER / FILE).read_text())["pages"]

    before, after = versions("18 inches"), versions("24 inches")
    assert before["one.html"] != after["one.html"] and before["two.html"] == after["two.html"]
