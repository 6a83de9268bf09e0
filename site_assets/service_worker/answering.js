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
  const copy = file && await savedCopy(file);
  if (copy) return file.path === NOT_FOUND ? withStatus(404, copy) : copy;
  if (file?.group === 'calculating' && await isWhole('reading')) {
    // The pages are this version's, so the calculators must be too, or none.
    return fetch(file.address, { integrity: file.integrity });
  }
  try {
    return await fetch(request);
  } catch (error) {
    if (request.mode === 'navigate' && await isWhole('reading')) return toNotFound(request);
    throw error;
  }
}

function withStatus(status, { body, headers }) {
  return new Response(body, { status, headers });
}

// Shown at its own address, because its links start from the top folder.
function toNotFound(request) {
  const wanted = new URLSearchParams({ wanted: pathOf(request.url) });
  return Response.redirect(`${SCOPE}${NOT_FOUND}?${wanted}`);
}
