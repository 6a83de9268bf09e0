"""The content policy: what it allows, where it stands, and what stops the build."""

from __future__ import annotations

import base64
import hashlib
import re
from pathlib import Path

import pytest

from site_assets.build.csp import CspError, apply_csp

HEAD = '<meta charset="utf-8"><meta name="generator" content="some generator"><title>Page</title>'


def site_with(folder: Path, **pages: str) -> Path:
    """Write one page for each name, with this in its body."""
    for name, body in pages.items():
        (folder / f"{name}.html").write_text(f"<!doctype html><html><head>{HEAD}</head><body>{body}</body></html>")
    return folder


def page(folder: Path, name: str = "index") -> str:
    return (folder / f"{name}.html").read_text()


def hash_of(script: str) -> str:
    return "'sha256-" + base64.b64encode(hashlib.sha256(script.encode()).digest()).decode() + "'"


def scripts_allowed(csp: str) -> list[str]:
    return re.search(r"script-src ([^;]*)", csp).group(1).split()


def test_policy_without_inline_scripts_allows_our_own_files_only(tmp_path):
    assert apply_csp(site_with(tmp_path, index="<p>Words</p>")) == (
        "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'; connect-src 'self'; "
        "manifest-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; base-uri 'none'; "
        "form-action 'none'"
    )


def test_every_page_gets_the_same_policy_with_the_inline_scripts_of_all(tmp_path):
    one, two = "var a = 1 && 2;", 'b("é")\n'
    site = site_with(tmp_path, index=f"<script>{one}</script>", **{"404": f"<script>{two}</script>"})
    csp = apply_csp(site)
    assert set(scripts_allowed(csp)) == {"'self'", "'wasm-unsafe-eval'", hash_of(one), hash_of(two)}
    for name in ("index", "404"):
        assert f'http-equiv="Content-Security-Policy" content="{csp}"' in page(site, name)


def test_data_blocks_and_script_files_need_no_hash(tmp_path):
    body = '<script type="application/json">{"a": 1}</script><script src="kit/a.js"></script>'
    assert scripts_allowed(apply_csp(site_with(tmp_path, index=body))) == ["'self'", "'wasm-unsafe-eval'"]


def test_policy_stands_before_everything_a_page_loads_and_the_charset_in_the_first_kilobyte(tmp_path):
    site = site_with(tmp_path, index="".join(f"<script>a({number})</script>" for number in range(30)))
    apply_csp(site)
    html = page(site)
    assert html.index("charset") < html.index("Content-Security-Policy") < html.index("<title")
    assert html.index("charset") < 1024


def test_generator_is_removed_and_a_second_run_changes_nothing(tmp_path):
    site = site_with(tmp_path, index="<script>a()</script>")
    first = apply_csp(site)
    once = page(site)
    assert "generator" not in once
    assert apply_csp(site) == first
    assert page(site) == once


@pytest.mark.parametrize(
    ("body", "said"),
    [
        ('<td style="text-align: right;">4</td>', "a style attribute on <td>"),
        ("<style>p { color: red }</style>", "a <style> element"),
        ('<button onclick="go()">Go</button>', "an onclick attribute on <button>"),
        ('<a href="javascript:void(0)">Go</a>', "a javascript: address on <a>"),
        ('<script src="https://example.org/a.js"></script>', "<script> loads from outside"),
        ('<script src="//example.org/a.js"></script>', "<script> loads from outside"),
        ('<link rel="stylesheet" href="http://example.org/a.css">', "<link> loads from outside"),
        ('<img src="a.png" srcset="b.png 1x, https://example.org/c.png 2x">', "<img> loads from outside"),
        ('<svg><use href="https://example.org/a.svg#b"/></svg>', "<use> loads from outside"),
        ('<form action="https://example.org/"></form>', "<form> loads from outside"),
    ],
)
def test_build_stops_and_names_the_page_that_the_policy_would_break(tmp_path, body, said):
    site = site_with(tmp_path, index="<p>Fine</p>", faulty=body)
    before = page(site)
    with pytest.raises(CspError) as stopped:
        apply_csp(site)
    assert "faulty.html, line 1: " in str(stopped.value)
    assert said in str(stopped.value)
    assert page(site) == before, "a page was written although the build stopped"


def test_a_link_the_reader_follows_may_lead_outside(tmp_path):
    body = '<a href="https://example.org/source">source</a><link rel="canonical" href="https://example.org/">'
    apply_csp(site_with(tmp_path, index=body))


def test_no_page_has_a_browser_fetch_another_one_ahead(tmp_path):
    site = site_with(tmp_path, index='<link rel="prev" href="a.html"><link rel="next" href="b.html"><p>Words</p>')
    apply_csp(site)
    assert "<link" not in page(site)


@pytest.mark.parametrize("rule", ['@import "https://example.org/a.css";', "p { background: url(//example.org/a.png) }"])
def test_build_stops_at_a_style_sheet_that_loads_from_outside(tmp_path, rule):
    site = site_with(tmp_path, index="<p>Words</p>")
    (site / "a.css").write_text(rule)
    with pytest.raises(CspError, match=r"a\.css: loads from outside"):
        apply_csp(site)


def test_build_stops_at_a_folder_without_pages(tmp_path):
    with pytest.raises(CspError, match="no pages"):
        apply_csp(tmp_path)
