// Starts a runtime bundle under Node and runs the Python program it reads from standard input.
// Prints one line of JSON: the program's last value as text, and the milliseconds taken.
//   node under_node.mjs PYODIDE_MODULE BUNDLE_FOLDER LOCK ARCHIVE...
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { joinedArchives } from "../scripts/archive.js";

const [modulePath, folder, lock, ...archives] = process.argv.slice(2);
const program = readFileSync(0, "utf8");
const scratch = mkdtempSync(join(tmpdir(), "bundle-"));
const library = join(scratch, "library.zip");
writeFileSync(library, joinedArchives(archives.map((archive) => new Uint8Array(readFileSync(archive)))));

const started = performance.now();
// The module comes from its npm package, where Node finds what it needs; all else from the bundle.
const { loadPyodide } = await import(pathToFileURL(resolve(modulePath)));
const python = await loadPyodide({
  indexURL: resolve(folder),
  stdLibURL: library,
  lockFileContents: JSON.parse(lock),
  packageBaseUrl: resolve(folder),
});
rmSync(scratch, { recursive: true });
const ready = performance.now();
const value = String(python.runPython(program));
const done = performance.now();
console.log(JSON.stringify({ value, start: ready - started, run: done - ready }));
