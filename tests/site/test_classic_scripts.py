"""Modules joined into one classic script do what they do as modules."""

from __future__ import annotations

import subprocess

import pytest

from site_assets.build.classic_scripts import ModuleError, classic_script
from site_assets.setup.paths import node

MODULES = {
    "entry.js": """
import { total, count as howMany, } from "./sums.js";
import { label } from "./words.js";

const name = "of the entry"; // every module has names of its own
export function shown() { return [total(2, 3), howMany(), label, name, typeof import.meta.url]; }
console.log(JSON.stringify(shown()));
""",
    "sums.js": """
import { label } from "./words.js";
/*
export function left_out() {}
*/
const name = "of the sums";
let calls = 0;
export function total(...numbers) { calls += 1; return numbers.reduce((sum, number) => sum + number, 0); }
export const count = () => `${calls} call, ${label}, ${name}`;
export async function unused() { return (await import("./chart.js")).default; }
""",
    "words.js": 'export const label = "said once";\n',
    "chart.js": 'function chart() { return "drawn"; }\nexport { chart as default };\n',
}


def written(folder, modules):
    for name, code in modules.items():
        (folder / name).write_text(code, encoding="utf-8")
    return folder / "entry.js"


def run(script):
    done = subprocess.run([str(node()), "-"], input=script, capture_output=True, text=True, timeout=60, check=True)
    return done.stdout.strip()


def test_joined_modules_keep_their_names_apart_and_run_once(tmp_path):
    script = classic_script(written(tmp_path, MODULES), address="'file:///a/page.js'")
    assert run(script) == '[5,"1 call, said once, of the sums","said once","of the entry","string"]'


def test_a_module_that_is_imported_later_is_run_then_and_once(tmp_path):
    modules = {
        "entry.js": """
const chart = async () => (await import("./chart.js")).default;
chart().then(async (draw) => console.log(draw(), await chart() === draw));
console.log("first");
""",
        "chart.js": f'console.log("run");\n{MODULES["chart.js"]}',
    }
    assert run(classic_script(written(tmp_path, modules), address="''")).split() == ["first", "run", "drawn", "true"]


def test_a_module_that_fails_when_it_is_imported_later_leaves_the_others_alive(tmp_path):
    modules = {
        "entry.js": 'import("./chart.js").catch(({ message }) => console.log(message));\nconsole.log("alive");\n',
        "chart.js": 'throw new Error("no charts here");\n',
    }
    assert run(classic_script(written(tmp_path, modules), address="''")).splitlines() == ["alive", "no charts here"]


def test_a_module_that_is_imported_for_what_it_does_runs_first(tmp_path):
    modules = {
        "entry.js": 'import "./first.js"; // before all else\nconsole.log(globalThis.ready);\n',
        "first.js": 'globalThis.ready = "made ready";\n',
    }
    assert run(classic_script(written(tmp_path, modules), address="''")) == "made ready"


def test_a_module_named_only_by_its_address_is_asked_of_what_brings_files(tmp_path):
    modules = {"entry.js": "const folder = 'f/';\nimport(`${folder}python.mjs`).then(console.log);\n"}
    script = classic_script(written(tmp_path, modules), address="''")
    bring = "globalThis.importFile = async (address) => `brought ${address}`;"
    assert run(f"{bring}\n{script}") == "brought f/python.mjs"


def test_a_name_that_is_not_declared_is_a_fault_as_in_a_module(tmp_path):
    script = classic_script(written(tmp_path, {"entry.js": "undeclared = 1;\n"}), address="''")
    assert run(f"try {{ {script} }} catch (fault) {{ console.log(fault.name); }}") == "ReferenceError"


@pytest.mark.parametrize(
    ("modules", "words"),
    [
        ({"entry.js": 'import other from "./other.js";\n', "other.js": ""}, "entry.js imports or exports in a way"),
        ({"entry.js": "export default 1;\n"}, "entry.js imports or exports in a way"),
        ({"entry.js": 'import * as other from "./other.js";\n', "other.js": ""}, "entry.js imports or exports"),
        (
            {"entry.js": 'import { a } from "./b.js";\n', "b.js": 'import { c } from "./entry.js";\n'},
            "entry.js imports itself by way of b.js",
        ),
        (
            {"entry.js": 'import { a } from "./b.js";\nimport("./b.js");\n', "b.js": "export const a = 1;\n"},
            "b.js is imported later, and at once too",
        ),
    ],
)
def test_what_would_be_joined_wrongly_stops_the_build(tmp_path, modules, words):
    with pytest.raises(ModuleError, match=words):
        classic_script(written(tmp_path, modules), address="''")
