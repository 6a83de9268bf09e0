// Runs Python beside the page. In: {start: {...}} once, then {id, slug, query}.
// Out: {loaded, total} while fetching, {ready}, {id, reply}, {failed}.

let python;

function countBytes(total) {
  // Pyodide fetches its own files; counting what passes is the only progress there is.
  const fetchFile = self.fetch.bind(self);
  let loaded = 0;
  self.fetch = async (...request) => {
    const response = await fetchFile(...request).catch(() => Response.error());
    // Pyodide waits for ever for a file that does not come, so a missing one is told at once.
    if (!response.ok) postMessage({ failed: response.url });
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
  const pyodide = await loadPyodide({
    indexURL: folder,
    stdLibURL: library,
    packageBaseUrl: folder,
    lockFileContents: lock,
  });
  python = pyodide.pyimport("site_assets.render.reply");
}

let started;

self.onmessage = async ({ data }) => {
  try {
    if (data.start) {
      started = start(data.start);
      await started;
      postMessage({ ready: true });
    } else {
      await started;
      postMessage({ id: data.id, reply: JSON.parse(python.reply(data.slug, data.query)) });
    }
  } catch (error) {
    postMessage({ id: data.id, failed: String(error?.message ?? error) });
  }
};
