// Makes a memory snapshot, in a Python of its own that never sees what a reader enters.
// In: {page, target} once. Out: {hash, replies}, what its calculators answered before, or {failed}.

import "./worker-reach.js"; // before all else
import { loadPython, runtimeFor } from "./runtime-files.js";
import { putSnapshot } from "./snapshot-store.js";

self.onmessage = async ({ data: { page, target } }) => {
  try {
    const runtime = await runtimeFor(page);
    if (runtime?.id !== target.key) throw new Error("other files"); // a newer version came meanwhile
    const python = await loadPython(runtime, { forSnapshot: true });
    const examples = python.pyimport("site_assets.render.examples");
    const replies = examples.fill_memory();
    examples.destroy();
    postMessage({ hash: await putSnapshot(target, python.makeMemorySnapshot()), replies });
  } catch (error) {
    postMessage({ failed: String(error?.message ?? error) });
  }
};
