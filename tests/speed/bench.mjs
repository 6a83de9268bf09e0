// Times the start to the first result and a later one, milliseconds, and tells the bytes of memory: stock Pyodide, ours, or ours from a memory snapshot.

import { loadPython, runtimeFor } from "./scripts/runtime-files.js";
import { approveSnapshot, putSnapshot, readSnapshot } from "./scripts/snapshot-store.js";

const root = new URL("./", import.meta.url).href;
const target = { scope: root, key: "bench" };

async function stock() {
  const { loadPyodide } = await import(`${root}stock/pyodide.mjs`);
  const pyodide = await loadPyodide({ indexURL: `${root}stock/` });
  const packages = await (await fetch(`${root}stock/packages.zip`)).arrayBuffer();
  pyodide.unpackArchive(packages, "zip", { extractDir: "/packages" });
  pyodide.runPython("import sys; sys.path.insert(0, '/packages'); import pint; units = pint.UnitRegistry()");
  return [() => pyodide.runPython("units.Quantity(133100, 'circular_mil').to('millimeter**2').magnitude"), pyodide];
}

async function files() {
  const list = `${root}ours/files.json`;
  const { pages } = await (await fetch(list)).json();
  const [page, version] = Object.entries(pages)[0];
  return runtimeFor({ list, page, version, saved: true }); // whole, as the stock files come
}

async function ours(options) {
  const pyodide = await loadPython(await files(), options);
  const python = pyodide.pyimport("site_assets.render.page_response");
  return [() => python.answer_request("main-bonding-jumper", "edition=2023&conductor=500kcmil&sets=2&form=busbar"), pyodide];
}

const starts = {
  stock,
  ours: () => ours({ onProgress: () => {} }),
  snapshot: async () => ours({ snapshot: await readSnapshot(target) }),
};

/* Makes and keeps the snapshot that a later start is timed from, as a device does. */
export async function makeSnapshot() {
  const pyodide = await loadPython(await files(), { forSnapshot: true });
  const examples = pyodide.pyimport("site_assets.render.examples");
  examples.fill_memory();
  examples.destroy();
  await approveSnapshot(target, await putSnapshot(target, pyodide.makeMemorySnapshot()));
}

export async function timed(kind) {
  const started = performance.now();
  const [calculate, pyodide] = await starts[kind]();
  calculate();
  const first = performance.now() - started;
  const again = performance.now();
  for (let turn = 0; turn < 10; turn += 1) calculate();
  return [first, (performance.now() - again) / 10, pyodide._module.HEAPU8.length];
}
