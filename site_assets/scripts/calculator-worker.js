// Runs Python beside the page. In: {start: {...}} once, then {id, slug, query}, or {id, slug, table},
// {id, slug, ranges} or {id, slug, check}; {id, stop} ends any of them. Or {id, examples}. Out: {restoring, target}, {loaded, total}, {ready},
// {id, part}, {id, reply}, {gone}, {missing}, {failed}.

import "./worker-reach.js"; // before all else
import { loadPython, runtimeFor, writeLibrary } from "./runtime-files.js";
import { readSnapshot } from "./snapshot-store.js";

const ROWS_AT_ONCE = 50; // between two of them the form is answered, progress told and a stop heard
const CIRCUITS_AT_ONCE = 8; // a few take less than a frame

let pyodide;
let python; // for one answer
let tables; // for many
let ranges; // for how far a drawn circuit may move
let bringLibrary; // what a first answer does not need
const stopped = new Set();

/* With `hash` from memory that was not approved yet, `fromFiles` from none. */
async function start({ page, scope, hash, fromFiles }) {
  const runtime = await runtimeFor(page);
  if (!runtime) {
    postMessage({ gone: true });
    await new Promise(() => {}); // what was asked is not answered from here
  }
  const target = { scope, key: runtime.id };
  // Storage that cannot be read holds nothing.
  const memory = fromFiles ? undefined : await readSnapshot(target, hash).catch(() => undefined);
  postMessage({ restoring: Boolean(memory), target });
  pyodide = await loadPython(runtime, {
    snapshot: memory,
    onProgress: (loaded, total) => postMessage({ loaded: Math.min(loaded, total), total }),
    onMissing: (missing) => postMessage({ missing }),
  });
  bringLibrary = once(() => writeLibrary(pyodide, runtime));
  const begin = () => pyodide.pyimport("site_assets.render.page_response");
  try {
    python = begin();
  } catch {
    await bringLibrary(); // a module that was thought to be needed later only
    python = begin();
  }
  postMessage({ ready: true });
  // After what was asked meanwhile. Memory waits for a question: its answers need nothing.
  if (!memory) setTimeout(() => bringLibrary().catch(() => {}));
}

/** Does it once, and again only where it failed. */
function once(action) {
  let result;
  return () => (result ??= action().catch((error) => { result = undefined; throw error; }));
}

async function answer(question) {
  if (stopped.delete(question.id)) return postMessage({ id: question.id, reply: { stopped: true } });
  try {
    await answerInParts(question);
  } catch {
    // It needs what comes after the first answer, or what memory lacks; each part holds those before it.
    await bringLibrary();
    await answerInParts(question);
  }
  bringLibrary().catch(() => {}); // asked for again when it is needed
}

/* How entries are read, without an answer. */
async function answerCheck({ id, slug, check }) {
  const read = () => postMessage({ id, reply: JSON.parse(python.read_entries(slug, check)) });
  try {
    read();
  } catch {
    await bringLibrary();
    read();
  }
}

/* Between two parts other questions are answered, and a stop is heard. */
async function answerInParts({ id, slug, query }) {
  const parts = python.answer_parts(slug, query);
  try {
    for (const text of parts) {
      const reply = JSON.parse(text);
      if (!reply.unfinished) return postMessage({ id, reply });
      postMessage({ id, part: reply });
      await new Promise((resolve) => setTimeout(resolve));
      if (stopped.delete(id)) return postMessage({ id, reply: { stopped: true } });
    }
  } finally {
    parts.destroy();
  }
}

async function answerTable({ id, slug, table }) {
  await bringLibrary();
  tables ??= pyodide.pyimport("site_assets.render.table_parts");
  const bytes = pyodide.toPy(await bytesOf(table.rows));
  try {
    const parts = tables.table_parts(slug, bytes, table.edition, ROWS_AT_ONCE);
    // The page keeps rows unread: tens of megabytes of text would stop it when they are put together.
    await give(id, parts, (part) => ({ ...part, text: new Blob([part.text]) }));
  } finally {
    bytes.destroy();
  }
}

/* What was pasted counts as a file that a spreadsheet saved: UTF-8 with its mark, which the answered table then has too. */
async function bytesOf(rows) {
  return typeof rows === "string" ? new TextEncoder().encode(`\uFEFF${rows}`) : new Uint8Array(await rows.arrayBuffer());
}

async function answerRanges({ id, slug, ranges: query }) {
  await bringLibrary();
  ranges ??= pyodide.pyimport("site_assets.render.scene_range_parts");
  await give(id, ranges.scene_range_parts(slug, query, CIRCUITS_AT_ONCE));
}

async function give(id, parts, packed = (part) => part) {
  try {
    for (const part of parts) {
      postMessage({ id, part: packed(JSON.parse(part)) });
      await new Promise((resolve) => setTimeout(resolve));
      if (stopped.has(id)) break;
    }
  } finally {
    parts.destroy();
  }
  postMessage({ id, reply: { stopped: stopped.delete(id) } });
}

/** Asked of memory alone, as the first question of a page is. */
function answerExamples({ id }) {
  const examples = pyodide.pyimport("site_assets.render.examples");
  postMessage({ id, reply: { replies: examples.example_replies() } });
}

let started;

self.onmessage = async ({ data }) => {
  try {
    if (data.start) {
      started = start(data.start);
      await started;
    } else if (data.stop) {
      stopped.add(data.id);
    } else {
      await started;
      if (data.examples) answerExamples(data);
      else if (data.table) await answerTable(data);
      else if (data.ranges !== undefined) await answerRanges(data);
      else if (data.check !== undefined) await answerCheck(data);
      else await answer(data);
    }
  } catch (error) {
    if (error?.missing) postMessage({ missing: error.missing });
    else postMessage({ id: data.id, failed: String(error?.message ?? error) });
  }
};
