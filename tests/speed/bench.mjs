// Times the start to the first result and a later one, milliseconds: stock Pyodide, or ours.

const root = new URL("./", import.meta.url).href;

async function stock() {
  const { loadPyodide } = await import(`${root}stock/pyodide.mjs`);
  const pyodide = await loadPyodide({ indexURL: `${root}stock/` });
  const packages = await (await fetch(`${root}stock/packages.zip`)).arrayBuffer();
  pyodide.unpackArchive(packages, "zip", { extractDir: "/packages" });
  pyodide.runPython("import sys; sys.path.insert(0, '/packages'); import pint; units = pint.UnitRegistry()");
  return () => pyodide.runPython("units.Quantity(133100, 'circular_mil').to('millimeter**2').magnitude");
}

async function ours() {
  const { loadPyodide } = await import(`${root}ours/pyodide.mjs`);
  const lock = await (await fetch(`${root}lock.json`)).text();
  const folder = `${root}ours/`;
  const pyodide = await loadPyodide({
    indexURL: folder, stdLibURL: `${folder}handbook.zip`, packageBaseUrl: folder, lockFileContents: lock,
  });
  const python = pyodide.pyimport("site_assets.render.page_response");
  return () => python.answer_request("main-bonding-jumper", "edition=2023&conductor=500kcmil&sets=2&form=busbar");
}

export async function timed(kind) {
  const started = performance.now();
  const calculate = await (kind === "stock" ? stock() : ours());
  calculate();
  const first = performance.now() - started;
  const again = performance.now();
  for (let turn = 0; turn < 10; turn += 1) calculate();
  return [first, (performance.now() - again) / 10];
}
