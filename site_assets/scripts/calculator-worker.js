// Runs Python beside the page. In: {start: {...}} once, then {id, slug, query}, or {id, slug, table} or
// {id, slug, ranges}, which {id, stop} ends. Out: {loaded, total} while fetching, {ready}, {id, part}, {id, reply}, {missing}, {failed}.

import "./worker-reach.js"; // before all else

const ROWS_AT_ONCE = 50; // between two of them the form is answered, progress told and a stop heard
const CIRCUITS_AT_ONCE = 8; // a few take less than a frame

let pyodide;
let python; // for one answer
let tables; // for many
let ranges; // for how far a drawn circuit may move
const stopped = new Set();

function countBytes(total) {
  // Pyodide fetches its own files; counting what passes is the only progress there is.
  const fetchFile = self.fetch.bind(self);
  let loaded = 0;
  self.fetch = async (...request) => {
    const response = await fetchFile(...request).catch(() => Response.error());
    // Pyodide waits for ever for a file that does not come, so a missing one is told at once.
    if (!response.ok) postMessage({ missing: String(request[0]?.url ?? request[0]) });
    if (!response.ok || !response.body) return response;
    const counted = response.body.pipeThrough(new TransformStream({
      transform(chunk, stream) {
        loaded += chunk.byteLength;
        postMessage({ loaded: Math.min(loaded, total), total });
        stream.enqueue(chunk);
      },
    }));
    return new Response(counted, { status: response.status, headers: response.headers });
  };
}

async function start({ folder, library, total, lock }) {
  countBytes(total);
  const { loadPyodide } = await import(`${folder}pyodide.mjs`);
  pyodide = await loadPyodide({
    indexURL: folder,
    stdLibURL: library,
    packageBaseUrl: folder,
    lockFileContents: lock,
  });
  python = pyodide.pyimport("site_assets.render.page_response");
}

async function answerTable({ id, slug, table }) {
  tables ??= pyodide.pyimport("site_assets.render.table_parts");
  const bytes = pyodide.toPy(await bytesOf(table.rows));
  try {
    await give(id, tables.table_parts(slug, bytes, table.edition, ROWS_AT_ONCE));
  } finally {
    bytes.destroy();
  }
}

/* What was pasted counts as a file that a spreadsheet saved: UTF-8 with its mark, which the answered table then has too. */
async function bytesOf(rows) {
  return typeof rows === "string" ? new TextEncoder().encode(`\uFEFF${rows}`) : new Uint8Array(await rows.arrayBuffer());
}

async function answerRanges({ id, slug, ranges: query }) {
  ranges ??= pyodide.pyimport("site_assets.render.scene_range_parts");
  await give(id, ranges.scene_range_parts(slug, query, CIRCUITS_AT_ONCE));
}

async function give(id, parts) {
  try {
    for (const part of parts) {
      postMessage({ id, part: JSON.parse(part) });
      await new Promise((resolve) => setTimeout(resolve));
      if (stopped.has(id)) break;
    }
  } finally {
    parts.destroy();
  }
  postMessage({ id, reply: { stopped: stopped.delete(id) } });
}

let started;

self.onmessage = async ({ data }) => {
  try {
    if (data.start) {
      started = start(data.start);
      await started;
      postMessage({ ready: true });
    } else if (data.stop) {
      stopped.add(data.id);
    } else if (data.table) {
      await started;
      await answerTable(data);
    } else if (data.ranges !== undefined) {
      await started;
      await answerRanges(data);
    } else {
      await started;
      postMessage({ id: data.id, reply: JSON.parse(python.answer_request(data.slug, data.query)) });
    }
  } catch (error) {
    postMessage({ id: data.id, failed: String(error?.message ?? error) });
  }
};
