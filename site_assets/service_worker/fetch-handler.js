// Answers the pages' requests: from this version's saved files first, then from the network.

const NOT_FOUND = '404.html';

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const untouched = request.method !== 'GET'
    || request.headers.has('range')
    || !request.url.startsWith(SCOPE);
  if (untouched) return;
  const file = fileAt(request.url);
  if (file || request.mode === 'navigate') event.respondWith(answer(request, file));
});

/** The listed file at an address; its query is the reader's input and names no other file. */
function fileAt(address) {
  const path = pathOf(address);
  if (path === '' || path.endsWith('/')) return FILES.get(`${path}index.html`);
  return FILES.get(path) ?? FILES.get(`${path}.html`);
}

function pathOf(address) {
  const { pathname } = new URL(address);
  const path = pathname.slice(new URL(SCOPE).pathname.length);
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}

async function answer(request, file) {
  if (!file) return unlisted(request);
  // Never what the server has there now: that may be another version's.
  const copy = await keptCopy(file) ?? await mended(file);
  if (copy) return file.path === NOT_FOUND ? withStatus(404, copy) : copy;
  return request.mode === 'navigate' ? withoutPage(request) : Response.error();
}

/** A file that the device has lost, fetched whole and kept again; undefined when the server has no such file. */
async function mended(file) {
  const copy = await verifiedCopy(file).catch(() => undefined);
  // After a reset this worker still answers open pages, and nothing must be kept.
  if (copy && await caches.has(STORE)) await put(file, copy.clone()).catch(() => {});
  // The server may have moved on to a version that can be had whole.
  if (!copy) self.registration.update().catch(() => {});
  await broadcast({ kind: copy ? 'mended' : 'lacking' });
  return copy;
}

/** A page that the device has lost and the server does not have: it is out of reach or has moved on. */
async function withoutPage(request) {
  const { pathname, search } = new URL(request.url);
  const lost = pathname.slice(new URL(SCOPE).pathname.length) + search;
  // With nothing kept to show, the page is one of the server's, with the server's own scripts.
  return await toNotFound({ lost }) ?? fetch(request);
}

async function unlisted(request) {
  try {
    return await fetch(request);
  } catch (error) {
    const told = await toNotFound({ wanted: pathOf(request.url) });
    if (told) return told;
    throw error;
  }
}

/** Shown at its own address, because its links start from the top folder; undefined when it is lost too. */
async function toNotFound(said) {
  if (!await keptCopy(FILES.get(NOT_FOUND))) return undefined;
  return Response.redirect(`${SCOPE}${NOT_FOUND}?${new URLSearchParams(said)}`);
}

function withStatus(status, { body, headers }) {
  return new Response(body, { status, headers });
}
