// Brings the files of the runtime and starts Python from them: the only place that knows which files these are.

import { joinedArchives } from "./archive.js";
import { bytesOfTwin, fetchUnlessSilent, integrityOf, isUncompressed } from "./packed.js";

const WASM = "pyodide.asm.wasm";
const browserFetch = self.fetch.bind(self);
let first; // the archives that Python was started from, until the others stand beside them

/* What the list of files says to a page, `{ list, page, version, saved }`; undefined when it belongs to another version
   of that page. `saved`: the service worker answers, and has unpacked what it gives. */
export async function runtimeFor({ list, page, version, saved }) {
  const response = await fetchUnlessSilent(list, { cache: "no-cache" });
  if (!response.ok) throw Object.assign(new Error(`${list}: ${response.status}`), { missing: list });
  const { pages, ...runtime } = await response.json();
  return pages[page] === version ? { ...runtime, root: new URL("./", list).href, saved } : undefined;
}

/* `snapshot`: bytes of memory to start from; no archive is needed then, and `writeLibrary` brings them later.
   `forSnapshot`: memory will be kept under the hashes of the list, so all archives come and no other file may.
   `onProgress` gets the bytes that came so far and all there will be, `onMissing` the address of what did not come. */
export async function loadPython(runtime, { snapshot, forSnapshot, onProgress, onMissing } = {}) {
  const archives = forSnapshot ? [...runtime.first, ...runtime.later] : runtime.first;
  const total = [WASM, ...archives].reduce((sum, name) => sum + runtime.files[name].size, 0);
  let loaded = 0;
  // A browser finds what it compiled before only with the response as it came.
  const onBytes = snapshot || !onProgress ? undefined : (count) => { loaded += count; onProgress(loaded, total); };
  // Pyodide waits for ever for a file that does not come, so a missing one is told at once.
  const failed = (error) => { onMissing?.(error.missing); return Response.error(); };
  const folder = runtime.root + runtime.folder;
  const library = `${runtime.root}library.zip`; // where Pyodide asks for it; nothing is there
  // All at once, long before Pyodide asks for them.
  import(`${folder}pyodide.asm.js`).catch(() => {});
  let compiled; // resolves when what the browser compiled as it came was found to be what is listed
  const onStream = (response) => {
    compiled = holdToHash(runtime, WASM, onBytes && response);
    compiled.catch(failed); // what is not may never start, nor fail
  };
  const answers = {
    [folder + WASM]: bring(runtime, WASM, onBytes, forSnapshot, onStream).catch(failed),
    [library]: snapshot ? new Response() : bringArchives(runtime, archives, onBytes).then((brought) => {
      first = brought;
      return new Response(joinedArchives(brought));
    }).catch(failed),
  };
  self.fetch = (...request) => answers[String(request[0]?.url ?? request[0])] ?? browserFetch(...request);
  try {
    const { loadPyodide } = await import(`${folder}pyodide.mjs`);
    const python = await loadPyodide({
      indexURL: folder,
      stdLibURL: library,
      packageBaseUrl: folder,
      lockFileContents: runtime.lock,
      env: { PYTHONHASHSEED: "0" }, // sets in the same order in every start
      _makeSnapshot: forSnapshot,
      _loadSnapshot: snapshot,
    });
    await Promise.all([compiled, holdScripts(runtime)]);
    if (snapshot) python.runPython("import random; random.seed()"); // else every start would draw the same
    else if (!forSnapshot) callOf(python, "expect_modules");
    return python;
  } catch (error) {
    await holdScripts(runtime); // one that came spoilt is why
    throw error;
  } finally {
    self.fetch = browserFetch;
  }
}

/** Puts the files that are not needed for a first answer beside the others; after a snapshot, all of them. */
export async function writeLibrary(python, runtime) {
  const [before, others] = await Promise.all([
    first ?? bringArchives(runtime, runtime.first),
    bringArchives(runtime, runtime.later),
  ]);
  const path = python.runPython("import sys; next(path for path in sys.path if path.endswith('.zip'))");
  python.FS.writeFile(path, joinedArchives([...before, ...others]));
  callOf(python, "all_here");
  first = undefined;
}

function callOf(python, name) {
  const later = python.pyimport("site_assets.render.later");
  later[name]();
  later.destroy();
}

function bringArchives(runtime, names, onBytes) {
  return Promise.all(names.map(async (name) => {
    const bytes = await (await bring(runtime, name, onBytes)).arrayBuffer();
    return new Uint8Array(await listedBytes(runtime, name, bytes));
  }));
}

/** These bytes, or what the server has where the browser kept others. */
async function listedBytes({ root, files }, name, bytes) {
  const { path, integrity } = files[name];
  if (await integrityOf(bytes) === integrity) return bytes;
  const anew = await browserFetch(root + path, { cache: "reload" }).then((response) => response.arrayBuffer()).catch(() => bytes);
  if (await integrityOf(anew) !== integrity) throw missing(root + path);
  return anew;
}

function holdScripts(runtime) {
  const scripts = Object.keys(runtime.files).filter((name) => name.endsWith("js"));
  return Promise.all(scripts.map((name) => holdToHash(runtime, name)));
}

/* Fails unless a file that the browser ran as it came is what is listed: nothing is answered before. */
async function holdToHash({ root, files, saved }, name, response) {
  if (saved) return; // the service worker gives nothing else
  const { path, integrity } = files[name];
  try {
    const came = response?.clone() ?? await browserFetch(root + path, { cache: "force-cache" });
    if (await integrityOf(await came.arrayBuffer()) === integrity) return;
  } catch {
    // It was cut on its way.
  }
  await browserFetch(root + path, { cache: "reload" }).catch(() => {}); // for the next try
  throw missing(root + path);
}

/* One file of the list as a response: compressed on its way by the host, else by the build. `checked`: its bytes are held
   to their hash here; elsewhere whoever reads them does so, or the browser compiles them as they come, after `onStream`
   was told. */
async function bring({ root, files, saved }, name, onBytes, checked = false, onStream = () => {}) {
  const { path, integrity, packed, size } = files[name];
  const address = root + path;
  let response = await browserFetch(address).catch(() => Response.error());
  if (response.ok && packed && !saved && isUncompressed(response)) {
    response.body.cancel(); // how it begins was enough
    let told = 0;
    // Each part is told as it comes, for a start without a sign of progress is given up.
    const onPart = (part) => { told += part * size; onBytes?.(part * size); };
    const bytes = await bytesOfTwin(address, {}, onPart).catch(() => undefined);
    const isListed = bytes && await integrityOf(bytes) === integrity;
    onBytes?.(isListed ? size - told : -told);
    if (isListed) return ofType(response, bytes);
    response = await browserFetch(address).catch(() => Response.error());
  }
  if (!response.ok) throw missing(address);
  if (checked) return ofType(response, await listedBytes({ root, files }, name, await response.arrayBuffer()));
  onStream(response);
  return onBytes ? counted(response, onBytes) : response;
}

function ofType({ headers }, bytes) {
  return new Response(bytes, { headers: { "content-type": headers.get("content-type") } });
}

function missing(address) {
  return Object.assign(new Error(`did not come whole: ${address}`), { missing: address });
}

function counted(response, onBytes) {
  const body = response.body.pipeThrough(new TransformStream({
    transform(chunk, stream) {
      onBytes(chunk.byteLength);
      stream.enqueue(chunk);
    },
  }));
  return new Response(body, { status: response.status, headers: response.headers });
}
